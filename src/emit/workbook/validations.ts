import type { DataValidation, Worksheet } from 'exceljs'
import type { Cell } from '../../report/cells.ts'
import { a1 } from './addresses.ts'
import type { PlacedSheet } from './placing.ts'

type Accepts = NonNullable<Cell['accepts']>

/** Longest list that a rule holds within itself: from memory, the spreadsheet's own limit is 255 characters. */
const longestInline = 250

/** Keeps the longer lists of the book on the hidden sheet and says where each stands. */
export type ListKeeper = (values: readonly string[]) => string

/** Adds the rules for what may be typed, one rule for each run of alike cells down a column. */
export function addValidations(ws: Worksheet, placed: PlacedSheet, keepList: ListKeeper): void {
  for (const { range, accepts } of inputRuns(placed)) {
    const rule = ruleOf(accepts, keepList)
    if (rule) rulesOf(ws).add(range, rule)
  }
}

/** The library keeps the rules of a sheet here; its typings leave them out. */
function rulesOf(ws: Worksheet): { add(range: string, rule: DataValidation): void } {
  return (ws as unknown as { dataValidations: { add(range: string, rule: DataValidation): void } })
    .dataValidations
}

interface Run {
  readonly column: number
  readonly top: number
  bottom: number
  readonly accepts: Accepts
  readonly key: string
}

function inputRuns(placed: PlacedSheet): { range: string; accepts: Accepts }[] {
  const runs: Run[] = []
  const open = new Map<number, Run>()
  for (const row of placed.rows) {
    for (const { cell, column } of row.cells) {
      if (!cell.accepts) continue
      const key = JSON.stringify(cell.accepts)
      const run = open.get(column)
      if (run && run.key === key && run.bottom === row.number - 1) {
        run.bottom = row.number
      } else {
        const fresh = { column, top: row.number, bottom: row.number, accepts: cell.accepts, key }
        open.set(column, fresh)
        runs.push(fresh)
      }
    }
  }
  return runs.map(({ column, top, bottom, accepts }) => ({
    range: `${a1(top, column)}:${a1(bottom, column)}`,
    accepts,
  }))
}

function ruleOf(accepts: Accepts, keepList: ListKeeper): DataValidation | null {
  if (accepts.kind === 'any') return null
  const strict = { allowBlank: true, showErrorMessage: true, errorStyle: 'stop' } as const
  if (accepts.kind === 'number') {
    const error = `Please type a number, ${accepts.least} or more.`
    const limit = { operator: 'greaterThanOrEqual' as const, formulae: [accepts.least] }
    return { type: 'decimal', ...limit, ...strict, errorTitle: 'Not a number', error }
  }
  const error = 'Please choose one of the list.'
  return {
    type: 'list',
    formulae: [listOf(accepts.values, keepList)],
    ...strict,
    errorTitle: 'Not on the list',
    error,
  }
}

/** A comma or a quote would split or end a list written within the rule; such lists stand on the hidden sheet. */
function listOf(values: readonly string[], keepList: ListKeeper): string {
  const inline = values.join(',')
  const fits = inline.length <= longestInline && values.every((value) => /^[^",]+$/.test(value))
  return fits ? `"${inline}"` : keepList(values)
}
