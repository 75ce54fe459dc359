import type { Place } from '../../base/place.ts'
import { srcAttached } from '../../diagnostics/catalogue/src-attached.ts'
import { decode } from '../../source/decode.ts'
import type { BoardWaySource, PlacementsSource } from '../../source/generated/project-types.ts'
import { field, isMapSpot, type Spot } from '../../source/spot.ts'
import { groupPlacements } from '../../trade/boards/group-placements.ts'
import { type Placement, type PlacementFault, readPlacements } from '../../trade/boards/placements.ts'
import type { PreferredSeries } from '../../trade/boards/preferred-values.ts'
import { type CsvCell, type CsvSeparator, readCsv } from '../../trade/boards/read-csv.ts'
import type { Context } from '../context.ts'

/** Components of one value in one package, and of one part where the file names parts. */
export interface PlacedGroup {
  readonly value: string
  readonly package: string
  readonly designators: readonly string[]
  /** As the file names it; `null`: it does not. */
  readonly part: string | null
  /** The value of the first of them. */
  readonly at: Place
  /** The part's name of the first of them. */
  readonly partAt: Place
}

/** The placements of a board, and the series its values must be in. */
export interface PlacedTable {
  readonly groups: readonly PlacedGroup[]
  /** `null`: any up to E192. */
  readonly series: PreferredSeries | null
}

/** Faults of one file that are told; more say no more. */
const mostFaults = 20

type Written = BoardWaySource['placements']
/** Columns by what they hold. */
type Heads = Readonly<Record<'reference' | 'value' | 'package' | 'part', string>>

const separators: Readonly<Record<string, CsvSeparator>> = { comma: ',', semicolon: ';', tab: '\t' }

/** The components that a board's placements list, grouped; none where no file is named or it is at fault (told). */
export function placementsAt(context: Context, spot: Spot<NonNullable<Written>> | null): PlacedTable {
  const nothing: PlacedTable = { groups: [], series: null }
  if (!spot) return nothing
  const map = isMapSpot(spot) ? (spot as Spot<unknown> as Spot<PlacementsSource>) : null
  const named = map ? field(map, 'file') : (spot as Spot<string>)
  const attached = named ? context.attached.get(named.text.trim()) : undefined
  if (!attached) return nothing
  const text = decode(attached.shown, attached.bytes, context.report)
  if (text === null) return nothing
  const said = (key: keyof Heads): string => (map && field(map, key)?.text.trim()) || key
  const heads: Heads = {
    reference: said('reference'),
    value: said('value'),
    package: said('package'),
    part: said('part'),
  }
  const typed = map ? field(map, 'separator')?.text : undefined
  const separator = separators[typed ?? ''] ?? separatorOf(text)
  const groups = readGroups(context, {
    file: attached.shown,
    text,
    separator,
    heads,
    wantsPart: !!(map && field(map, 'part')),
  })
  return { groups, series: (map && (field(map, 'series')?.value as PreferredSeries | undefined)) || null }
}

/** The sign that stands most in the first line. */
function separatorOf(text: string): CsvSeparator {
  const head = /^[^\r\n]*/.exec(text)![0]
  const count = (sign: string): number => head.split(sign).length
  return ([',', ';', '\t'] as const).reduce((best, sign) => (count(sign) > count(best) ? sign : best))
}

interface Table {
  readonly file: string
  readonly text: string
  readonly separator: CsvSeparator
  readonly heads: Heads
  /** Whether the project says which column names parts. */
  readonly wantsPart: boolean
}

function readGroups(context: Context, table: Table): readonly PlacedGroup[] {
  const { file, text, separator, heads } = table
  const read = readPlacements(text, separator, {
    designator: heads.reference,
    value: heads.value,
    package: heads.package,
    side: null,
  })
  if ('fault' in read) {
    for (const fault of read.faults.slice(0, mostFaults)) tellFault(context, table, fault)
    // That nothing asks for these would only follow from it.
    for (const { part } of context.components) context.names.suspected.add(part)
    return []
  }
  const rows = readCsv(text, separator)
  if ('fault' in rows) return []
  const columns = rows[0]?.map((cell) => cell.text.trim()) ?? []
  const partColumn = columns.indexOf(heads.part)
  if (partColumn < 0 && table.wantsPart)
    tellFault(context, table, {
      fault: 'no such column',
      wanted: heads.part,
      heads: columns,
      line: 1,
      column: 1,
    })
  const byLine = new Map(rows.slice(1).map((row) => [row[0]!.line, row]))
  const cellOf = ({ line }: Placement, column: number): CsvCell | undefined => byLine.get(line)?.[column]
  const valueColumn = columns.indexOf(heads.value)
  const placeOf = (cell: CsvCell | undefined, line: number): Place => ({
    file,
    line: cell?.line ?? line,
    column: cell?.column ?? 1,
    length: cell?.text.trim().length ?? 0,
  })
  const byDesignator = new Map(read.map((one) => [one.designator, one]))
  return groupPlacements(read).flatMap((group) => {
    const members = group.designators.map((designator) => byDesignator.get(designator)!)
    return byPart(members, (one) => cellOf(one, partColumn)?.text.trim() || null).map(
      ([part, some]): PlacedGroup => ({
        value: group.value,
        package: group.package,
        designators: some.map(({ designator }) => designator),
        part,
        at: placeOf(cellOf(some[0]!, valueColumn), some[0]!.line),
        partAt: placeOf(cellOf(some[0]!, partColumn), some[0]!.line),
      }),
    )
  })
}

function byPart(
  members: readonly Placement[],
  partOf: (one: Placement) => string | null,
): readonly (readonly [string | null, readonly Placement[]])[] {
  const parts = new Map<string | null, Placement[]>()
  for (const one of members) {
    const some = parts.get(partOf(one))
    if (some) some.push(one)
    else parts.set(partOf(one), [one])
  }
  return [...parts]
}

function tellFault(context: Context, { file, heads }: Table, fault: PlacementFault): void {
  const at = { file, line: fault.line, column: fault.column, length: 0 }
  if (fault.fault !== 'no such column') {
    context.report(srcAttached.tableFault, at, { why: fault })
    return
  }
  const key = Object.entries(heads).find(([, head]) => head === fault.wanted)?.[0] ?? 'value'
  context.report(srcAttached.noColumn, at, { wanted: fault.wanted, key, heads: fault.heads })
}
