import { cartFigures } from './cart-figures.ts'
import type { Block } from './cells.ts'
import { footOf } from './foot-of.ts'
import { line } from './make-cells.ts'
import { hoursTable, ratesTable } from './money-hours.ts'
import { chargesTable, leftOverTable } from './money-slices.ts'
import { missingTable, ownStockTable } from './money-sources.ts'
import { byDeviceTable, byPartTable, byProcessTable, byVendorTable, expectedLossTable } from './money-sums.ts'
import { moneyTop, moneyWide, viewsBlock } from './money-views.ts'
import type { SheetMaker } from './sheets.ts'

/** The money in three views that balance, and every amount they are made of, live from prices, rates and minutes. */
export const moneySheet: SheetMaker = ({ results }) => {
  const { money, project, purchase } = results
  const { currency } = project.device
  const openToday = (cart: (typeof purchase.carts)[number]): number => cartFigures(cart, currency).open
  return {
    name: 'Money',
    widths: [30, 27, 13, 17, 12, 13, 10],
    blocks: [
      moneyTop(results),
      viewsBlock(results),
      ...headed('Charged, added up', [byPartTable(money), byProcessTable(money), byDeviceTable(money)]),
      ...headed('Cash, added up', [byVendorTable(money, purchase.carts, openToday)]),
      ...headed('Rates', [ratesTable(money)]),
      ...headed('Hours', [hoursTable(money)]),
      ...headed('Drawn from own stock', [ownStockTable(money)]),
      ...headed('Without a vendor', [missingTable(money)]),
      ...headed('Expected loss', [expectedLossTable(money, project)]),
      ...headed('Charged, one by one', [chargesTable(money)]),
      ...headed('Left over, one by one', [leftOverTable(money)]),
    ],
    orientation: 'portrait',
    freeze: null,
    guarded: true,
    group: 'money',
    foot: footOf(project.device),
  }
}

/** Lines of a heading's tables that are worth a page break before them; more run on. */
const mostWhole = 12

/** Tables that have rows, under a heading; none where all are empty. */
function headed(words: string, tables: readonly Block[]): Block[] {
  const filled = tables.filter(({ rows }) => rows.length > 0)
  if (filled.length === 0) return []
  const lines = filled.reduce((sum, { rows }) => sum + rows.length, 0)
  const section = { continued: `${words}, continued`, whole: lines <= mostWhole }
  const heading = line(words, moneyWide, 'heading')
  return [
    { kind: 'rows', id: `heading ${words}`, section, rows: [heading] },
    ...filled.map((table) => ({ ...table, section })),
  ]
}
