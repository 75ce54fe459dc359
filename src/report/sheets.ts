import type { Diagnostic } from '../diagnostics/message.ts'
import type { Results } from '../model/results.ts'
import type { Sheet } from './cells.ts'

/** What every sheet is made from. */
export interface Told {
  readonly results: Results
  readonly findings: readonly Diagnostic[]
  readonly fettle: string
}

/** Makes one sheet of the workbook. */
export type SheetMaker = (told: Told) => Sheet
