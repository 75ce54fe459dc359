import { minorDigits } from '../base/money.ts'
import type { Cart, CartLine } from '../model/purchase.ts'
import type { CellName, Expression } from './cells.ts'
import {
  added,
  allOf,
  anyOf,
  asOne,
  atMost,
  choose,
  isEmpty,
  isUnknown,
  joined,
  knownOr,
  plus,
  same,
  sumOf,
  unknownWord,
  words,
} from './expressions.ts'
import { cartCell, cartShares, exchangeCell, lineNames } from './line-names.ts'
import { constant, less, ref, rounded, times } from './make-cells.ts'

const unknown = words(unknownWord)
const nothing = constant(0)

/** Digits to which the value of an order is held against its vendor's limits where several currencies meet in it. */
const mixedDigits = 10

/** One order among the project's currencies. */
export interface CartMoney {
  readonly cart: Cart
  readonly home: string
}

/** Goods of a line in the offer's currency: price x quantity or the least charge, whichever is more, rounded. */
export function goodsForeignOf({ id, offer }: CartLine): Expression {
  const { price, bought } = lineNames(id)
  const extended = times(ref(price), ref(bought))
  const charged: Expression = offer.minimum
    ? { op: 'max', of: [extended, constant(offer.minimum.valueOf())] }
    : extended
  return choose(isEmpty(price), unknown, rounded(charged, minorDigits(offer.currency)))
}

/** Goods of a line in the project's currency. */
export function goodsOf({ id, offer }: CartLine, home: string): Expression {
  return broughtHome(lineNames(id).goodsForeign, offer.currency, home)
}

/** An amount converted at the exchange rate cell and rounded again; an unknown one stays unknown. */
export function broughtHome(amount: CellName, currency: string, home: string): Expression {
  if (currency === home) return ref(amount)
  const rate = exchangeCell(currency)
  const converted = choose(isEmpty(rate), unknown, rounded(times(ref(amount), ref(rate)), minorDigits(home)))
  return choose(isUnknown(amount), unknown, choose(same(ref(amount), nothing), nothing, converted))
}

/** How many lines of an order have no known goods. */
export function missingOf({ cart }: CartMoney): Expression {
  return added(cart.lines.map(({ id }) => asOne(isUnknown(lineNames(id).goods))))
}

/** Known goods in the vendor's currency, against which the vendor's limits are held. */
export function limitValueOf({ cart, home }: CartMoney): Expression {
  const [plain, mixed] = split(cart)
  const alike = sumOf(...plain.map(({ id }) => lineNames(id).goodsForeign))
  const all = mixed.reduce((sum, line) => plus(sum, inVendorCurrency(line, cart, home)), alike)
  return rounded(all, valueDigits(cart))
}

/** Digits to which the value of an order is reckoned. */
export function valueDigits(cart: Cart): number {
  return split(cart)[1].length > 0 ? mixedDigits : minorDigits(cart.currency)
}

function split(cart: Cart): readonly [readonly CartLine[], readonly CartLine[]] {
  const alike = cart.lines.filter(({ offer }) => offer.currency === cart.currency)
  return [alike, cart.lines.filter((line) => !alike.includes(line))]
}

function inVendorCurrency({ id, offer }: CartLine, { currency }: Cart, home: string): Expression {
  const foreign = [offer.currency, currency].filter((code) => code !== home)
  const rate = (code: string): Expression => (code === home ? constant(1) : ref(exchangeCell(code)))
  const sum = times(sumOf(lineNames(id).goodsForeign), rate(offer.currency))
  const converted: Expression = { op: '/', left: sum, right: rate(currency) }
  return choose(anyOf(...foreign.map((code) => isEmpty(exchangeCell(code)))), nothing, converted)
}

/** What the vendor charges for freight: nothing from the free limit on; unknown while a missing price may reach it. */
export function freightForeignOf({ cart }: CartMoney): Expression {
  const [rate, over] = [cartCell(cart.id, 'freight rate'), cartCell(cart.id, 'free over')]
  const reached = atMost(ref(over), ref(cartCell(cart.id, 'value')))
  const free = allOf({ op: '<>', left: ref(over), right: words('') }, reached)
  const settled = anyOf(noneMissing(cart), isEmpty(over), isEmpty(rate), reached)
  const charged = choose(free, nothing, rounded(sumOf(rate), minorDigits(cart.currency)))
  return choose(settled, charged, unknown)
}

/** What is added where the goods stay below the vendor's least order; unknown while a missing price may lift them. */
export function surchargeForeignOf({ cart }: CartMoney): Expression {
  const [least, value] = [cartCell(cart.id, 'minimum order'), cartCell(cart.id, 'value')]
  const reached = anyOf(isEmpty(least), atMost(ref(least), ref(value)))
  // Rounded finely first: a difference of binary numbers may fall short of half a cent that is exact in decimals.
  const lacking = rounded(less(sumOf(least), ref(value)), mixedDigits)
  const short = rounded(lacking, minorDigits(cart.currency))
  return choose(reached, nothing, choose(noneMissing(cart), short, unknown))
}

/** What the vendor or carrier charges for clearance. */
export function clearanceForeignOf({ cart }: CartMoney): Expression {
  return rounded(sumOf(cartCell(cart.id, 'clearance rate')), minorDigits(cart.currency))
}

/** Duty on goods, surcharge and freight. */
export function dutyOf(money: CartMoney): Expression {
  return levy(money, 'duty rate', ['surcharge', 'freight'])
}

/** Tax on goods, surcharge, freight, duty and clearance. */
export function taxOf(money: CartMoney): Expression {
  return levy(money, 'tax rate', ['surcharge', 'freight', 'duty', 'clearance'])
}

function levy(
  { cart, home }: CartMoney,
  rate: 'duty rate' | 'tax rate',
  on: readonly (typeof cartShares)[number][],
): Expression {
  const digits = minorDigits(home)
  const cells = on.map((what) => cartCell(cart.id, what))
  const base = rounded(sumOf(cartCell(cart.id, 'goods'), ...cells), digits)
  const open = anyOf(
    { op: '>', left: ref(cartCell(cart.id, 'missing')), right: nothing },
    ...cells.map(isUnknown),
  )
  const charged = rounded(times(base, ref(cartCell(cart.id, rate))), digits)
  return choose(same(sumOf(cartCell(cart.id, rate)), nothing), nothing, choose(open, unknown, charged))
}

/** Known goods of an order. */
export function cartGoodsOf({ cart, home }: CartMoney): Expression {
  return rounded(sumOf(...cart.lines.map(({ id }) => lineNames(id).goods)), minorDigits(home))
}

/** What is known of an order's total. */
export function cartTotalOf({ cart, home }: CartMoney): Expression {
  return rounded(sumOf(cartCell(cart.id, 'goods'), ...shareCells(cart)), minorDigits(home))
}

/** Prices that an order's total misses: lines without one, else 1 where an amount of the order itself is unknown. */
export function openOf({ cart }: CartMoney): Expression {
  const missing = ref(cartCell(cart.id, 'missing'))
  return choose(same(missing, nothing), asOne(anyOf(...shareCells(cart).map(isUnknown))), missing)
}

/** What a total says of itself: `complete`, or how many prices it misses. */
export function markOf(open: CellName, one: string, many: string): Expression {
  const missing = joined(words('known part; '), ref(open), words(` ${many} missing`))
  return choose(
    same(ref(open), nothing),
    words('complete'),
    choose(same(ref(open), constant(1)), words(`known part; 1 ${one} missing`), missing),
  )
}

/**
 * The running weight by which a line takes part in the order's shares: value of its known goods; alike where all values
 * are zero or none is known.
 */
export function weightOf({ cart, home }: CartMoney, at: number): Expression {
  const { goods } = lineNames(cart.lines[at]!.id)
  const whole = cartCell(cart.id, 'goods')
  const noneKnown = same(ref(cartCell(cart.id, 'missing')), constant(cart.lines.length))
  const alike = choose(isUnknown(goods), nothing, constant(1))
  const own = choose(noneKnown, constant(1), choose(same(sumOf(whole), nothing), alike, sumOf(goods)))
  if (at === 0) return own
  return rounded(plus(ref(lineNames(cart.lines[at - 1]!.id).weight), own), minorDigits(home))
}

/** A line's part of an amount of its order: the difference of two rounded running totals. */
export function shareOf(
  { cart, home }: CartMoney,
  what: (typeof cartShares)[number],
  at: number,
): Expression {
  const last = ref(lineNames(cart.lines.at(-1)!.id).weight)
  const amount = sumOf(cartCell(cart.id, what))
  const upTo = (k: number): Expression => {
    const running = times(amount, ref(lineNames(cart.lines[k]!.id).weight))
    return rounded({ op: '/', left: running, right: last }, minorDigits(home))
  }
  return at === 0 ? upTo(0) : less(upTo(at), upTo(at - 1))
}

/** Goods and shares of a line, as far as they are known. */
export function landedOf({ home }: CartMoney, { id }: CartLine): Expression {
  const names = lineNames(id)
  const shares = cartShares.map((what) => names[what])
  const open: Expression = { op: '<>', left: ref(names.state), right: words('') }
  return knownOr(open, rounded(sumOf(names.goods, ...shares), minorDigits(home)))
}

/** What is not settled about a line, in words; empty: nothing. */
export function stateOf({ cart }: CartMoney, { id }: CartLine): Expression {
  const shared = shareCells(cart)
  const some: Expression = { op: '<>', left: sumOf(...shared), right: nothing }
  const missing: Expression = { op: '>', left: ref(cartCell(cart.id, 'missing')), right: nothing }
  const open = anyOf(allOf(missing, some), ...shared.map(isUnknown))
  return choose(
    isUnknown(lineNames(id).goods),
    words('price unknown'),
    choose(open, words('shares open'), words('')),
  )
}

function shareCells(cart: Cart): CellName[] {
  return cartShares.map((what) => cartCell(cart.id, what))
}

function noneMissing(cart: Cart): Expression {
  return same(ref(cartCell(cart.id, 'missing')), nothing)
}
