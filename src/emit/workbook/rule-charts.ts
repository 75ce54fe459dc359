import type { Worksheet } from 'exceljs'
import { a1 } from './addresses.ts'
import { edge } from './palette.ts'
import type { PlacedSheet } from './placing.ts'

/** Rules the cells of a chart that show nothing, which are not written, by one condition over the whole of it. */
export function ruleCharts(ws: Worksheet, { rows }: PlacedSheet): void {
  const head = rows.find(({ stand, cells }) => stand === 'head' && cells.some(({ chart }) => chart))
  const last = rows.findLast(({ stand }) => stand === 'body')
  if (!head || !last) return
  const columns = head.cells.filter(({ chart }) => chart).map(({ column }) => column)
  const corner = a1(head.number + 1, columns[0]!)
  const style = { border: { bottom: edge('thin') } }
  ws.addConditionalFormatting({
    ref: `${corner}:${a1(last.number, columns.at(-1)!)}`,
    rules: [{ type: 'expression', priority: 1, formulae: [`${corner}=""`], style }],
  })
}
