import { readAs } from '../../base/quantity.ts'
import { isFault } from '../../base/quantity-fault.ts'
import { prcBoard } from '../../diagnostics/catalogue/prc-board.ts'
import { qty } from '../../diagnostics/catalogue/qty.ts'
import type { BoardPanel } from '../../model/placements.ts'
import type { Offer } from '../../model/project.ts'
import type { OfferSource } from '../../source/generated/project-types.ts'
import { entries, field, type Spot, withValue } from '../../source/spot.ts'
import type { Context } from '../context.ts'
import { offerAt } from '../offers.ts'
import { listed } from '../reading.ts'

/** What a board's offers count and measure by. */
export interface BoardSize {
  readonly areaMm2: number | null
  readonly panel: (BoardPanel & { readonly areaMm2: number }) | null
}

/** The offers for a bare board: prices by area are those of its area, and panels are counted in boards. */
export function boardOffersAt(
  context: Context,
  board: string,
  spot: Spot<OfferSource[]> | null,
  size: BoardSize,
): readonly Offer[] {
  return listed(spot).flatMap((one) => {
    const byPanel = field(one, 'per')?.value === 'panel'
    const priced = withAreaPrice(context, board, one, byPanel ? (size.panel?.areaMm2 ?? null) : size.areaMm2)
    const offer = offerAt(context, board, priced)
    if (!offer) return []
    if (!byPanel) return [offer]
    if (size.panel) return [inBoards(offer, size.panel.boards)]
    context.report(prcBoard.noPanel, one.at, { board, missing: 'panel' })
    return [offer]
  })
}

/** An offer by the panel as one by the board: only whole panels are sold. */
function inBoards(offer: Offer, boards: number): Offer {
  const sold = `sold by the panel of ${boards}`
  return {
    ...offer,
    prices:
      offer.prices?.map(({ from, price }) => ({ from: from * boards, price: price.div(boards) })) ?? null,
    pack: offer.pack * boards,
    moq: offer.moq * boards,
    note: offer.note === null ? sold : `${sold}; ${offer.note}`,
  }
}

interface AreaRow {
  readonly areaMm2: number
  readonly price: Spot<unknown>
}

/** An offer whose price is that of the smallest area which holds the board; as it is where it has no such prices. */
function withAreaPrice(
  context: Context,
  board: string,
  spot: Spot<OfferSource>,
  areaMm2: number | null,
): Spot<OfferSource> {
  const list = field(spot, 'area price')
  if (!list || field(spot, 'price')) return spot
  // Told already where there is none; a price of nought is never counted, since that is an error.
  const priced = (price: unknown): Spot<OfferSource> =>
    withValue(spot, { ...spot.value, price: price as NonNullable<OfferSource['price']> })
  if (areaMm2 === null) {
    context.report(prcBoard.noPanel, list.keyAt, { board, missing: 'outline' })
    return priced(0)
  }
  const rows = entries(list as Spot<Record<string, unknown>>).flatMap(([key, price]) =>
    areaRow(context, key, price as Spot<unknown>),
  )
  const fitting = rows.filter((row) => row.areaMm2 >= areaMm2 * (1 - 1e-9))
  const taken = fitting.reduce<AreaRow | null>(
    (best, row) => (best && best.areaMm2 <= row.areaMm2 ? best : row),
    null,
  )
  if (!taken && rows.length > 0)
    context.report(prcBoard.largerThanPrices, list.keyAt, {
      board,
      area: areaMm2 / 100,
      most: Math.max(...rows.map((row) => row.areaMm2)) / 100,
    })
  return priced(taken?.price.value ?? 0)
}

function areaRow(context: Context, key: string, price: Spot<unknown>): readonly AreaRow[] {
  const area = readAs(key, 'area')
  if (!isFault(area) && area.value.gt(0)) return [{ areaMm2: area.value.valueOf(), price }]
  context.report(qty.outOfBounds, price.keyAt, {
    key: 'area price',
    text: key,
    bound: 'an area such as `50 cm2`',
  })
  return []
}
