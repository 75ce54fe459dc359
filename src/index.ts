/** fettle as a library: check, plan and draw a project file, and read its report. */
export {
  type Checked,
  type CompileOptions,
  check,
  type Drawn,
  draw,
  type Planned,
  type PlanReport,
  picturedReport,
  plan,
  planReport,
} from './compile.ts'
export type { Diagnostic } from './diagnostics/message.ts'
export { renderGnu } from './diagnostics/render-gnu.ts'
export { svgToPng, type ToPng } from './emit/pictures/svg-to-png.ts'
export { writeWorkbook } from './emit/workbook/write-workbook.ts'
export type { LineDrawing, Pictures, StepPicture } from './model/pictures.ts'
export type { Results } from './model/results.ts'
export type * from './report/report-model.ts'
export { version } from './version.ts'
