/**
 * Finished grids: what the report hands to every emitter. Values are final; a cell that stays live carries an
 * expression over named cells together with its value, and an emitter only places addresses and fonts.
 */
import type { Day, Instant } from '../base/clock.ts'

/** Name of a cell, unique over the whole report, e.g. `price/magnet`. */
export type CellName = string

/**
 * An expression over named cells. `ref` names a cell; `sum` adds named cells (an emitter may write a range);
 * `round` rounds half away from zero to `digits`; `choose` is if/then/else.
 */
export type Expression =
  | { readonly op: 'ref'; readonly name: CellName }
  | { readonly op: 'number'; readonly value: number }
  | { readonly op: 'text'; readonly value: string }
  | { readonly op: 'sum'; readonly names: readonly CellName[] }
  | { readonly op: '+' | '-' | '*' | '/'; readonly left: Expression; readonly right: Expression }
  | { readonly op: 'round'; readonly of: Expression; readonly digits: number }
  | { readonly op: 'max' | 'min'; readonly of: readonly Expression[] }
  | {
      readonly op: '=' | '<>' | '<' | '<=' | '>' | '>='
      readonly left: Expression
      readonly right: Expression
    }
  | { readonly op: 'and' | 'or'; readonly of: readonly Expression[] }
  | {
      readonly op: 'choose'
      readonly when: Expression
      readonly yes: Expression
      readonly no: Expression
    }
  | { readonly op: 'join'; readonly of: readonly Expression[] }

/** How a number is shown. Money formats carry the currency code and its minor digits. */
export type Format =
  | { readonly as: 'count' }
  | { readonly as: 'number'; readonly digits: number; readonly unit?: string }
  | { readonly as: 'money'; readonly currency: string; readonly digits: number }
  /** A unit price: shown with up to `digits` decimals, at least the currency's own (`least`; 2 where absent). */
  | { readonly as: 'price'; readonly currency: string; readonly digits: number; readonly least?: number }
  | { readonly as: 'percent'; readonly digits: number }
  | { readonly as: 'day' }
  /** `short` leaves the year out, where dates stand close together and the year stands near. */
  | { readonly as: 'instant'; readonly short?: boolean }
  | { readonly as: 'minutes' }
  | { readonly as: 'hours' }

/** What a cell is, not how it looks; the emitter's style sheet decides fonts and fills. */
export type Role =
  | 'title'
  | 'subtitle'
  | 'heading'
  | 'head'
  | 'body'
  | 'label'
  | 'total'
  | 'note'
  | 'input'
  | 'tick'
  | 'blank'
  | 'error'
  | 'warning'
  | 'caution'
  | 'strong'
  | 'figure'

/** The value of a cell, final. */
export type Value =
  | { readonly type: 'text'; readonly text: string }
  | { readonly type: 'number'; readonly value: number; readonly format: Format }
  | { readonly type: 'day'; readonly day: Day }
  | { readonly type: 'instant'; readonly instant: Instant; readonly short?: boolean }
  | { readonly type: 'unknown'; readonly text: string }
  | { readonly type: 'empty' }

/** One finished cell. */
export interface Cell {
  readonly value: Value
  /** Live: recomputed by the spreadsheet from other named cells; `value` is what it must give today. */
  readonly live?: Expression
  /** So that expressions can point here. */
  readonly name?: CellName
  readonly role?: Role
  /** Columns this cell covers, itself included; 1 when absent. */
  readonly span?: number
  /** Rows this cell covers, itself included, unless a page begins among them; 1 when absent. The cells below are empty. */
  readonly down?: number
  readonly align?: 'left' | 'right' | 'center'
  /** Indent steps at the left. */
  readonly indent?: number
  /** A place in the workbook to jump to, by cell name. */
  readonly link?: CellName
  /** An outside link (http, https, mailto only). */
  readonly url?: string
  /** What a person may type here; absent: not an input. */
  readonly accepts?:
    | { readonly kind: 'number'; readonly least: number }
    | { readonly kind: 'list'; readonly values: readonly string[] }
    | { readonly kind: 'any' }
  /** Id of a picture that lies over the cell, which is empty, and over all rows that it covers. */
  readonly picture?: string
  /** A picture of the cell in the schedule chart: a fill with a mark that reads in black and white. */
  readonly mark?: Mark
}

/** One cell of the chart drawn in cells; every mark has a sign of its own beside its shade. */
export type Mark = 'work' | 'critical' | 'unattended' | 'away' | 'held' | 'closed' | 'wanted'

/** Head and width of a column of a table. */
export interface Column {
  readonly head: string
  /** Width in characters of the base font. */
  readonly width: number
  readonly align?: 'left' | 'right' | 'center'
  /** A narrow column of a chart drawn in cells: its head is small, and cells without a mark need no look. */
  readonly chart?: boolean
}

/** One row of finished cells. */
export interface Row {
  readonly cells: readonly Cell[]
  /** Outline depth, 0 to 7. */
  readonly level?: number
  /** Zero-based: this row starts a new printed page. */
  readonly pageBreak?: boolean
  /** Keep this row together with the next on a printed page. */
  readonly keep?: boolean
  /** Of free rows: has a rule below, as the rows of a table have. */
  readonly ruled?: boolean
  /** An empty row as high as the picture that lies over it still needs. */
  readonly fills?: boolean
}

/** How blocks run over printed pages: neighbours that say the same are one section. */
export interface Section {
  /** What a page begins with that the section runs on to, e.g. `motor block, continued`; a table's heads follow. */
  readonly continued: string
  /** Kept on one page where it fits on one. */
  readonly whole: boolean
}

/** A block of a sheet. Blocks stand one below the other and share the sheet's columns. */
export type Block =
  /** Free rows: titles, sentences, pairs. A text cell with `span` wraps over that many columns. */
  | { readonly kind: 'rows'; readonly id: string; readonly section?: Section; readonly rows: readonly Row[] }
  /** A headed table. `totals` rows are outside the filter. */
  | {
      readonly kind: 'table'
      readonly id: string
      readonly section?: Section
      readonly columns: readonly Column[]
      readonly rows: readonly Row[]
      readonly totals: readonly Row[]
      /** Filter arrows on the heads; at most one filtered table a sheet. */
      readonly filter: boolean
    }

/** One finished sheet of the workbook. */
export interface Sheet {
  /** ASCII, at most 31 characters, from our own fixed list. */
  readonly name: string
  /** Widths of the sheet's columns in characters, shared by its blocks. */
  readonly widths: readonly number[]
  readonly blocks: readonly Block[]
  readonly orientation: 'portrait' | 'landscape'
  /** Rows above and columns left of this stay in view: the head row of the block named, and so many columns. */
  readonly freeze: { readonly block: string; readonly columns: number } | null
  /** Whether computed cells are locked against slips (no password). */
  readonly guarded: boolean
  /** One of a few tab groups, for order by eye: overview, money, making, time, assembly, notes. */
  readonly group: 'overview' | 'money' | 'making' | 'time' | 'assembly' | 'notes'
  /** Printed foot text, left side. */
  readonly foot: string
}

/** A line drawing: SVG, so many millimetres wide and high in print. */
export interface Drawing {
  readonly svg: string
  readonly sizeMm: number
  readonly heightMm: number
  /** What it shows, for who cannot see it. */
  readonly says: string
}

/** A whole workbook, finished. */
export interface Workbook {
  readonly title: string
  readonly subject: string
  /** Stamps the file: derived from the project's date, never from a clock. */
  readonly day: Day
  /** Fingerprint of the source, kept hidden in the file. */
  readonly fingerprint: string
  readonly sheets: readonly Sheet[]
  /** What cells show, by id; absent: no cell shows a picture. */
  readonly pictures?: ReadonlyMap<string, Drawing>
}
