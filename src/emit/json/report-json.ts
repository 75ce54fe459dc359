import type { ReportModel } from '../../report/report-model.ts'

/** The report as JSON text. */
export function reportJson(report: ReportModel): string {
  return `${JSON.stringify(report, null, 2)}\n`
}
