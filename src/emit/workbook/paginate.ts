import type { Drawing } from '../../report/cells.ts'
import { pageRoom, type Room, titleRow } from './page-room.ts'
import {
  type PictureSizes,
  pictureSizes,
  rowsUnderPicture,
  type Sized,
  withPictureRoom,
} from './picture-room.ts'
import type { PlacedRow, PlacedSheet } from './placing.ts'
import { columnWidths, type RowSize, rowSize } from './room.ts'

/** A sheet whose pages are settled, with widths of its columns in characters and sizes of its rows. */
export interface PagedSheet {
  readonly placed: PlacedSheet
  readonly widths: readonly number[]
  readonly sizes: readonly RowSize[]
  readonly sizeOf: PictureSizes
}

/**
 * The sheet with its printed pages settled: rows that belong together stay on one page where they fit, and where a
 * section or a table runs on, the page begins with its name and heads again. The format itself can do neither.
 * Gives: a filtered table as it is, because no row must be put into it. Cost: O(cells).
 */
export function paginate(
  placed: PlacedSheet,
  pictures: ReadonlyMap<string, Drawing> = new Map(),
): PagedSheet {
  const widths = columnWidths(placed)
  const sizeOf = pictureSizes(placed, widths, pictures)
  const sized = (row: PlacedRow): Sized => ({ row, size: rowSize(row, widths) })
  const all = withPictureRoom(placed.rows.map(sized), sizeOf)
  const rows = placed.filter ? all : paged(placed, all, { room: pageRoom(placed, widths), sized, sizeOf })
  return { placed: renumbered(placed, rows), widths, sizes: rows.map(({ size }) => size), sizeOf }
}

interface Means {
  readonly room: Room
  readonly sizeOf: PictureSizes
  readonly sized: (row: PlacedRow) => Sized
}

function paged(placed: PlacedSheet, all: readonly Sized[], { room, sized, sizeOf }: Means): readonly Sized[] {
  const out: Sized[] = []
  let used = 0
  for (const piece of pieces(all, room, sizeOf)) {
    const first = piece[0]!.row
    const high = heightOf(piece)
    const over = used > 0 && used + high > room.full && first.stand !== 'gap'
    const breaks = out.length > 0 && (first.pageBreak || over)
    const again = breaks && !first.pageBreak ? continuation(placed, out.at(-1)!.row, first).map(sized) : []
    const rows = [...again, ...piece].map((one, at) => ({
      ...one,
      row: { ...one.row, pageBreak: breaks && at === 0 },
    }))
    out.push(...rows)
    if (breaks) used = (first.number > room.titles.row ? room.titles.height : 0) + heightOf(again)
    used += high
  }
  return out
}

const heightOf = (rows: readonly Sized[]): number => rows.reduce((sum, { size }) => sum + size.height, 0)

/** What no page break parts: a section that fits on a page, else rows that keep with the next. */
function pieces(rows: readonly Sized[], { full }: Room, sizeOf: PictureSizes): readonly (readonly Sized[])[] {
  return sections(rows).flatMap((section) => {
    const whole = section[0]!.row.section?.whole === true
    if (whole && heightOf(section) <= full) return [section]
    return groups(section).flatMap((group) => {
      if (heightOf(group) <= full) return [group]
      const held = rowsUnderPicture(group, sizeOf)
      return [group.slice(0, held), ...group.slice(held).map((one) => [one])]
    })
  })
}

/** Neighbours of one section, up to a row that starts a page by itself. */
function sections(rows: readonly Sized[]): Sized[][] {
  const out: Sized[][] = []
  for (const one of rows) {
    const last = out.at(-1)
    const before = last?.at(-1)?.row.section?.continued
    if (last && before === one.row.section?.continued && !one.row.pageBreak) last.push(one)
    else out.push([one])
  }
  return out
}

/** A row, and after a row that keeps with the next, the next one too. */
function groups(rows: readonly Sized[]): Sized[][] {
  const out: Sized[][] = []
  let open = false
  for (const one of rows) {
    const last = out.at(-1)
    if (open && last && !one.row.pageBreak) last.push(one)
    else out.push([one])
    open = keepsWithNext(one.row, open)
  }
  return out
}

function keepsWithNext(row: PlacedRow, open: boolean): boolean {
  if (row.stand === 'gap') return open
  return (
    row.keep ||
    row.stand === 'head' ||
    row.cells.some(({ cell }) => cell.role === 'heading' || cell.role === 'title')
  )
}

/** What a page says again that goes on with `first`: the section's name, and the heads of a table begun before. */
function continuation(placed: PlacedSheet, before: PlacedRow, first: PlacedRow): readonly PlacedRow[] {
  const { section, heads } = first
  const again = { ...first, level: 0, keep: true, filtered: false, heads: null }
  const named = section !== null && section.continued === before.section?.continued
  const name: PlacedRow[] = named
    ? [{ ...again, stand: 'free', cells: [nameCell(section.continued, placed.columns)] }]
    : []
  const begun = heads !== null && heads === before.heads && titleRow(placed) === null
  return begun ? [...name, { ...again, stand: 'head', cells: heads }] : name
}

function nameCell(words: string, span: number): PlacedRow['cells'][number] {
  const cell = { value: { type: 'text', text: words }, role: 'heading', span } as const
  return { cell, column: 1, span, align: null, chart: false }
}

function renumbered(placed: PlacedSheet, rows: readonly Sized[]): PlacedSheet {
  const now = new Map<number, number>()
  // Rows said again carry the number of the row they stand before, which comes after them and is kept.
  for (const [at, { row }] of rows.entries()) now.set(row.number, at + 1)
  return {
    ...placed,
    rows: rows.map(({ row }, at) => ({ ...row, number: at + 1 })),
    starts: new Map([...placed.starts].map(([id, row]) => [id, now.get(row) ?? row])),
  }
}
