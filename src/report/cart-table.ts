import type Fraction from 'fraction.js'
import { type Cents, minorDigits } from '../base/money.ts'
import { toDecimals } from '../base/rounding.ts'
import type { CartLine, MoreWhy } from '../model/purchase.ts'
import { type CartFigures, lineState, sayMark } from './cart-figures.ts'
import * as formulas from './cart-formulas.ts'
import type { Block, Cell, Column, Row } from './cells.ts'
import { cartCell, cartShares, lineNames } from './line-names.ts'
import { blank, count, type More, money, number, text, tick } from './make-cells.ts'

/** Widths of the sheet of orders, column by column. */
export const orderWidths = [24, 11, 7, 7, 15, 11, 11, 10, 9, 9, 9, 9, 9, 10, 10, 10, 5] as const

const heads = [
  ['What', 'Order code', 'Needed', 'Bought', 'Why so many, note', 'Unit price', 'Goods as priced', 'Goods'],
  ['Freight', 'To least order', 'Duty', 'Tax', 'Clearance', 'Landed', 'Value up to here', 'Open', 'Here'],
].flat()

const columns: readonly Column[] = heads.map((head, at) => {
  const figure = [2, 3].includes(at) || (at >= 5 && at <= 14)
  return { head, width: orderWidths[at]!, ...(figure ? { align: 'right' as const } : {}) }
})

/** The lines of an order and its totals, live from the unit prices on. */
export function cartTable(order: formulas.CartMoney, figures: CartFigures, id: string): Block {
  const { cart, home } = order
  const foreign = cart.currency === home ? [] : [vendorRow(order)]
  return {
    kind: 'table',
    id,
    columns,
    rows: cart.lines.map((line, at) => lineRow(order, figures, line, at)),
    totals: [...foreign, totalRow(order, figures)],
    filter: false,
  }
}

function lineRow(order: formulas.CartMoney, figures: CartFigures, line: CartLine, at: number): Row {
  const { home } = order
  const names = lineNames(line.id)
  const { offer } = line
  const share = cartShares.map((what) =>
    money(figures.shares[what][at]!, home, { name: names[what], live: formulas.shareOf(order, what, at) }),
  )
  return {
    cells: [
      text(line.title, offer.url === null ? {} : { url: offer.url }),
      text(offer.code ?? ''),
      count(line.needed),
      count(line.quantity, { name: names.bought }),
      text(remarkOf(line)),
      priceCell(line.unitPrice, offer.currency, { name: names.price }),
      money(line.goodsForeign, offer.currency, {
        name: names.goodsForeign,
        live: formulas.goodsForeignOf(line),
      }),
      money(line.goods, home, { name: names.goods, live: formulas.goodsOf(line, home) }),
      ...share,
      knownMoney(line.known, line.landed === null, home, {
        name: names.landed,
        live: formulas.landedOf(order, line),
        role: 'strong',
      }),
      weightCell(order, figures, at),
      text(lineState(line), { name: names.state, live: formulas.stateOf(order, line), role: 'warning' }),
      tick(),
    ],
  }
}

function weightCell(order: formulas.CartMoney, figures: CartFigures, at: number): Cell {
  const { name, live } = {
    name: lineNames(order.cart.lines[at]!.id).weight,
    live: formulas.weightOf(order, at),
  }
  return number(figures.weights[at]!.valueOf(), minorDigits(order.home), null, { name, live })
}

/** What is known of an amount; `unknown` where nothing of it is. */
export function knownMoney(known: Cents, open: boolean, currency: string, more: More): Cell {
  return money(open && known === 0 ? null : known, currency, more)
}

/** An amount a person may type: money per piece or per order; empty while nobody knows it. */
export function priceCell(value: Fraction | null, currency: string, more: More): Cell {
  const least = minorDigits(currency)
  const accepts = { kind: 'number', least: 0 } as const
  if (value === null) return blank({ role: 'input', align: 'right', accepts, ...more })
  const digits = Math.max(least, decimalsOf(value))
  return {
    value: { type: 'number', value: value.valueOf(), format: { as: 'price', currency, digits, least } },
    align: 'right',
    role: 'input',
    accepts,
    ...more,
  }
}

/** Decimals a price needs, at most 6. */
function decimalsOf(value: Fraction): number {
  return (/\.(\d*?)0*$/.exec(toDecimals(value, 6))?.[1] ?? '').length
}

const whyWords: Readonly<Record<MoreWhy, string>> = {
  pack: 'whole packs',
  'least order': 'least order',
  cheaper: 'cheaper than fewer',
}

function remarkOf({ more, offer, breakFrom, unitPrice }: CartLine): string {
  const { minimum, pack, moq, currency } = offer
  const least = minimum ? `least charge ${toDecimals(minimum, minorDigits(currency))} ${currency}` : null
  const size = more === 'pack' ? ` of ${pack}` : more === 'least order' ? ` ${moq}` : ''
  const why = more ? whyWords[more] + size : null
  const from = unitPrice && breakFrom > 1 ? `price from ${breakFrom}` : null
  return [why, from, least, offer.note].filter((each) => each !== null).join('; ')
}

function vendorRow(order: formulas.CartMoney): Row {
  const { cart } = order
  const amount = (what: 'freight' | 'surcharge' | 'clearance', cents: Cents | null): Cell => {
    const live = {
      freight: formulas.freightForeignOf,
      surcharge: formulas.surchargeForeignOf,
      clearance: formulas.clearanceForeignOf,
    }[what](order)
    return money(cents, cart.currency, { name: cartCell(cart.id, `${what} in vendor currency`), live })
  }
  return {
    keep: true,
    cells: [
      text(`As charged in ${cart.currency}`, { span: 8 }),
      amount('freight', cart.freightForeign),
      amount('surcharge', cart.surchargeForeign),
      blank({ span: 2 }),
      amount('clearance', cart.clearanceForeign),
      blank({ span: 4 }),
    ],
  }
}

function totalRow(order: formulas.CartMoney, figures: CartFigures): Row {
  const { cart, home } = order
  const share = cartShares.map((what) =>
    money(cart[what], home, { name: cartCell(cart.id, what), live: amountOf(order, what) }),
  )
  const [one, many] = missingWords(order)
  const mark = {
    name: cartCell(cart.id, 'mark'),
    live: formulas.markOf(cartCell(cart.id, 'open'), one, many),
  }
  return {
    cells: [
      text('Total of the order', { span: 7 }),
      money(figures.goods, home, { name: cartCell(cart.id, 'goods'), live: formulas.cartGoodsOf(order) }),
      ...share,
      money(cart.known, home, { name: cartCell(cart.id, 'total'), live: formulas.cartTotalOf(order) }),
      text(sayMark(figures.open, one, many), { ...mark, span: 3, align: 'left', role: 'total' }),
    ],
  }
}

function amountOf(order: formulas.CartMoney, what: (typeof cartShares)[number]) {
  const { cart, home } = order
  if (what === 'duty') return formulas.dutyOf(order)
  if (what === 'tax') return formulas.taxOf(order)
  if (cart.currency !== home)
    return formulas.broughtHome(cartCell(cart.id, `${what} in vendor currency`), cart.currency, home)
  if (what === 'freight') return formulas.freightForeignOf(order)
  return what === 'surcharge' ? formulas.surchargeForeignOf(order) : formulas.clearanceForeignOf(order)
}

/** What may be missing in an order, one and many: a rate too where currencies meet. */
export function missingWords({ cart, home }: formulas.CartMoney): readonly [string, string] {
  const foreign = [cart.currency, ...cart.lines.map(({ offer }) => offer.currency)]
  return foreign.every((code) => code === home) ? ['price', 'prices'] : ['price or rate', 'prices or rates']
}
