/** fettle as a library: check and plan a project file, and read its report. */
export {
  type Checked,
  type CompileOptions,
  check,
  type Planned,
  type PlanReport,
  plan,
  planReport,
} from './compile.ts'
export type { Diagnostic } from './diagnostics/message.ts'
export { renderGnu } from './diagnostics/render-gnu.ts'
export { writeWorkbook } from './emit/workbook/write-workbook.ts'
export type { Results } from './model/results.ts'
export type * from './report/report-model.ts'
export { version } from './version.ts'
