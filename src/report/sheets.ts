import type { Diagnostic } from '../diagnostics/message.ts'
import type { Results } from '../model/results.ts'
import type { Sheet } from './cells.ts'
import type { ToldPictures } from './told-pictures.ts'

/** What every sheet is made from. */
export interface Told {
  readonly results: Results
  readonly findings: readonly Diagnostic[]
  readonly fettle: string
  /** Absent: nobody asked for pictures, or nothing has a mesh. */
  readonly pictures?: ToldPictures
}

/** Makes one sheet of the workbook. */
export type SheetMaker = (told: Told) => Sheet
