import type { ReportModel } from '../../report/report-model.ts'
import type { ReportRepair } from '../../report/report-repair.ts'

/** A report as JSON text. */
export function reportJson(report: ReportModel | ReportRepair): string {
  return `${JSON.stringify(report, null, 2)}\n`
}
