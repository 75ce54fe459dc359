import { type DesignatorFault, readDesignators } from './designators.ts'
import { type CsvCell, type CsvFault, type CsvSeparator, readCsv } from './read-csv.ts'

/** Which columns of the table hold what, by their heads; heads are compared without blanks around them. */
export interface PlacementColumns {
  readonly designator: string
  readonly value: string
  readonly package: string
  /** Top or bottom; `null` where the table does not say. */
  readonly side: string | null
}

/** One part in its place on the board. */
export interface Placement {
  readonly designator: string
  readonly value: string
  readonly package: string
  readonly side: string | null
  readonly line: number
}

interface Place {
  readonly line: number
  readonly column: number
}

/** What is wrong with a table of placements, at its place. */
export type PlacementFault =
  | CsvFault
  | (DesignatorFault & Place)
  | ({ readonly fault: 'no header row' } & Place)
  | ({ readonly fault: 'no such column'; readonly wanted: string; readonly heads: readonly string[] } & Place)
  | ({ readonly fault: 'column twice'; readonly wanted: string } & Place)
  | ({ readonly fault: 'row of another length'; readonly cells: number; readonly wanted: number } & Place)
  | ({ readonly fault: 'designator twice'; readonly designator: string; readonly firstLine: number } & Place)

/** All that was wrong with a table, in the order of its lines. */
export interface PlacementFaults {
  readonly fault: 'placements not read'
  readonly faults: readonly PlacementFault[]
}

/**
 * The parts of a board from a table with a header row; a row may list several designators.
 * Needs: the separator and the heads of the columns. Gives: at least a header; each designator once; or every fault.
 */
export function readPlacements(
  text: string,
  separator: CsvSeparator,
  columns: PlacementColumns,
): readonly Placement[] | PlacementFaults {
  const rows = readCsv(text, separator)
  if ('fault' in rows) return failed([rows])
  const [head, ...body] = rows
  if (!head) return failed([{ fault: 'no header row', line: 1, column: 1 }])
  const found = findColumns(head, columns)
  if ('fault' in found) return found
  const faults: PlacementFault[] = []
  const firstLines = new Map<string, number>()
  const placements = body.flatMap((row) => {
    const read = readRow(row, head.length, found)
    if ('fault' in read) {
      faults.push(read)
      return []
    }
    for (const { designator, line } of read) {
      const firstLine = firstLines.get(designator)
      const { column } = row[found.designator]!
      if (firstLine !== undefined)
        faults.push({ fault: 'designator twice', designator, firstLine, line, column })
      else firstLines.set(designator, line)
    }
    return read
  })
  return faults.length > 0 ? failed(faults) : placements
}

interface FoundColumns {
  readonly designator: number
  readonly value: number
  readonly package: number
  readonly side: number | null
}

function findColumns(head: readonly CsvCell[], columns: PlacementColumns): FoundColumns | PlacementFaults {
  const heads = head.map(({ text }) => text.trim())
  const faults: PlacementFault[] = []
  const find = (name: string): number => {
    const [wanted, at] = [name.trim(), heads.indexOf(name.trim())]
    if (at < 0) faults.push({ fault: 'no such column', wanted, heads, line: head[0]!.line, column: 1 })
    const again = heads.indexOf(wanted, at + 1)
    if (at >= 0 && again >= 0) {
      const { line, column } = head[again]!
      faults.push({ fault: 'column twice', wanted, line, column })
    }
    return at
  }
  const found = {
    designator: find(columns.designator),
    value: find(columns.value),
    package: find(columns.package),
    side: columns.side === null ? null : find(columns.side),
  }
  return faults.length > 0 ? failed(faults) : found
}

function readRow(
  row: readonly CsvCell[],
  wanted: number,
  found: FoundColumns,
): readonly Placement[] | PlacementFault {
  const { line, column } = row[0]!
  if (row.length !== wanted)
    return { fault: 'row of another length', cells: row.length, wanted, line, column }
  const cell = row[found.designator]!
  const designators = readDesignators(cell.text)
  if ('fault' in designators) return { ...designators, line: cell.line, column: cell.column }
  const text = (at: number) => row[at]!.text.trim()
  return designators.map((designator) => ({
    designator,
    value: text(found.value),
    package: text(found.package),
    side: found.side === null ? null : text(found.side),
    line,
  }))
}

function failed(faults: readonly PlacementFault[]): PlacementFaults {
  return { fault: 'placements not read', faults }
}
