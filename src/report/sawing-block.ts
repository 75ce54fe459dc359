import type { CuttingPlan, CutUnit } from '../model/purchase.ts'
import type { Results } from '../model/results.ts'
import type { Block, Column, Row } from './cells.ts'
import { text, tick } from './make-cells.ts'
import { sayCount } from './say-time.ts'

/** Columns of the Making sheet, as wide as its own. */
export type SawingColumns = readonly Column[]

/** Which pieces come out of which bar or plate, so that a person can saw; none where nothing is sawn. */
export function sawingBlock({ purchase }: Results, columns: SawingColumns): readonly Block[] {
  const plans = purchase.cuts.filter(({ units }) => units.length > 0)
  if (plans.length === 0) return []
  return [
    {
      kind: 'table',
      id: 'making/sawing',
      columns,
      rows: plans.flatMap(rowsOf),
      totals: [],
      filter: false,
    },
  ]
}

function rowsOf(plan: CuttingPlan): readonly Row[] {
  return plan.units.map(
    (unit, at): Row => ({
      ruled: true,
      cells: [
        text(`${at + 1}`),
        text(at === 0 ? plan.form : ''),
        text(unit.own ? 'from own stock' : 'bought'),
        text(sayPieces(unit)),
        text(sayRest(unit)),
        text(at > 0 ? '' : plan.proved === true ? 'no plan costs less' : 'not proved best'),
        tick(),
      ],
    }),
  )
}

function sayPieces({ pieces }: CutUnit): string {
  const counts = new Map<string, number>()
  for (const { part } of pieces) counts.set(part, (counts.get(part) ?? 0) + 1)
  return [...counts].map(([part, count]) => sayCount(part, count)).join(', ')
}

function sayRest({ rest, places }: CutUnit & { readonly places?: unknown }): string {
  if (!rest) return ''
  const left = rest.valueOf()
  return places === undefined ? `${Math.floor(left)} mm left` : `${Math.round(100 * left)} % left`
}
