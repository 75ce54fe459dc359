import type { Instant } from '../base/clock.ts'
import { toDecimals } from '../base/rounding.ts'
import type { Cart } from '../model/purchase.ts'
import type { Results } from '../model/results.ts'
import type { ScheduledTask } from '../model/schedule.ts'
import type { TaskKind } from '../model/tasks.ts'
import { type CartFigures, cartFigures, sayMark } from './cart-figures.ts'
import * as formulas from './cart-formulas.ts'
import { cartTable, missingWords, orderWidths, priceCell } from './cart-table.ts'
import type { Block, Cell, Row } from './cells.ts'
import { footOf } from './foot-of.ts'
import { cartCell, exchangeCell } from './line-names.ts'
import { blank, count, line, money, number, ref, shortInstant, text, tick, writeHere } from './make-cells.ts'
import { sayClock } from './say-clock.ts'
import { sayTarget } from './say-target.ts'
import type { SheetMaker, Told } from './sheets.ts'

const wide = orderWidths.length

interface Order extends formulas.CartMoney {
  readonly number: number
  readonly figures: CartFigures
  readonly results: Results
}

/** The orders: when each goes out at the latest, what is in it, and what its lines cost when they are here. */
export const ordersSheet: SheetMaker = (told) => {
  const { results } = told
  const home = results.project.device.currency
  const orders = byLatest(results).map(
    (cart, at): Order => ({ cart, home, number: at + 1, figures: cartFigures(cart, home), results }),
  )
  return {
    name: 'Orders',
    widths: orderWidths,
    blocks: [
      top(told, orders),
      ...exchangeRates(results, orders),
      ...(orders.length > 0 ? [glance(orders)] : []),
      ...orders.flatMap(orderBlocks),
    ],
    orientation: 'landscape',
    freeze: null,
    guarded: true,
    group: 'money',
    foot: footOf(results.project.device),
  }
}

/** The most urgent order first. */
function byLatest(results: Results): readonly Cart[] {
  const latest = (cart: Cart): Instant => datesOf(cart, results).latest ?? Number.POSITIVE_INFINITY
  return [...results.purchase.carts].sort((a, b) => latest(a) - latest(b) || (a.id < b.id ? -1 : 1))
}

/** What the two latest dates of an order keep. */
const latestWords =
  'Latest, as planned: later than that the finish moves, with people and machines taken in the plan’s own order; so it is often minutes after the planned time. Latest for the goods alone: how long the wait for them leaves, if other work gives way; then plan again.'

function top({ results }: Told, orders: readonly Order[]): Block {
  const says =
    orders.length === 0
      ? 'Nothing has to be bought.'
      : 'Framed cells may be changed: prices, freight, duty, tax, clearance and exchange rates. Lines, shares and totals follow; quantities bought, price breaks and dates do not: for those, plan again. A price that nobody knows is left empty and counts as unknown, not as zero.'
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      line('Orders', wide, 'title'),
      line(`${results.project.device.name}: what to order, from whom, until when`, wide, 'subtitle'),
      line(says, wide, 'note'),
      ...(orders.length > 0 ? [line(latestWords, wide, 'note')] : []),
    ],
  }
}

function exchangeRates({ project }: Results, orders: readonly Order[]): Block[] {
  const home = project.device.currency
  const used = orders.flatMap(({ cart }) => [cart.currency, ...cart.lines.map(({ offer }) => offer.currency)])
  const codes = [...new Set(used)].filter((code) => code !== home).sort()
  if (codes.length === 0) return []
  const rows = codes.map((code): Row => {
    const rate = project.exchange.get(code)
    const input = { name: exchangeCell(code), role: 'input', accepts: { kind: 'number', least: 0 } } as const
    const cell = rate ? number(rate.valueOf(), 6, null, input) : blank({ ...input, align: 'right' })
    return { cells: [text(`1 ${code} in ${home}`, { role: 'label' }), cell] }
  })
  return [{ kind: 'rows', id: 'exchange', rows: [line('Exchange rates', wide, 'heading'), ...rows] }]
}

function glance(orders: readonly Order[]): Block {
  const head = (words: string, span: number): Cell => text(words, { role: 'head', span })
  const heads: Row = {
    keep: true,
    cells: [
      head('Order', 1),
      head('What is in it', 4),
      head('Order on', 2),
      head('Latest, as planned', 2),
      head('Latest for the goods alone', 2),
      head('Usable from', 2),
      { ...head('Total', 1), align: 'right' },
      head('Of the total', 2),
      { ...head('Sent', 1), align: 'center' },
    ],
  }
  return { kind: 'rows', id: 'glance', rows: [heads, ...orders.map(glanceRow)] }
}

function glanceRow({ cart, home, number: at, results, figures, ...order }: Order): Row {
  const dates = datesOf(cart, results)
  const total = cartCell(cart.id, 'total')
  const mark = cartCell(cart.id, 'mark')
  const today = sayMark(figures.open, ...missingWords({ cart, home, ...order }))
  return {
    ruled: true,
    cells: [
      text(`${at}. ${cart.id}`, { role: 'strong', link: `order/${cart.id}` }),
      text(cart.lines.map(({ title }) => title).join(', '), { span: 4 }),
      when(dates.order, 2),
      when(dates.latest, 2, 'strong'),
      when(dates.forGoods, 2),
      when(dates.usable, 2),
      money(cart.known, home, { live: ref(total) }),
      text(today, { span: 2, live: ref(mark) }),
      tick(),
    ],
  }
}

function when(moment: Instant | null, span: number, role: 'body' | 'strong' = 'body'): Cell {
  return moment === null
    ? text('no date', { span, role })
    : shortInstant(moment, { span, role, align: 'left' })
}

interface Dates {
  readonly order: Instant | null
  readonly latest: Instant | null
  readonly forGoods: Instant | null
  readonly usable: Instant | null
}

/** Planned and latest moments of ordering, and when the goods have come. */
function datesOf(cart: Cart, { network, schedule }: Results): Dates {
  const scheduled = (kind: TaskKind): ScheduledTask | undefined => {
    const task = network.tasks.find((each) => each.kind === kind && each.subject.cart === cart.id)
    return task && schedule.tasks.get(task.id)
  }
  const [order, delivery] = [scheduled('order'), scheduled('delivery')]
  return {
    order: order?.start ?? null,
    latest: order?.latestStart ?? null,
    forGoods: order?.latestAlone ?? null,
    usable: delivery?.finish ?? null,
  }
}

function orderBlocks(order: Order): Block[] {
  const { cart, number: at } = order
  const title = `${at}. ${cart.outside ? `Send out: ${cart.id} to ${cart.vendor}` : cart.id}`
  const section = { continued: `${title}, continued`, whole: true }
  const heading = text(title, {
    role: 'heading',
    span: wide,
    name: `order/${cart.id}`,
  })
  const rows = [
    { cells: [heading], keep: true },
    dateRow(order),
    ...safeRows(order),
    waitRow(order),
    chargesRow(order),
    limitsRow(order),
  ]
  return [
    { kind: 'rows', id: `order ${at}`, section, rows: rows.map((row) => ({ ...row, keep: true })) },
    { ...cartTable(order, order.figures, `lines ${at}`), section },
    { kind: 'rows', id: `remark ${at}`, section, rows: [remarkRow()] },
  ]
}

const label = (words: string, span = 1): Cell => text(words, { role: 'label', span })
/** A label that stands right before its input. */
const before = (words: string, span = 1): Cell => text(words, { role: 'label', span, align: 'right' })

function dateRow({ cart, results }: Order): Row {
  const dates = datesOf(cart, results)
  return {
    cells: [
      label('Order on'),
      when(dates.order, 2, 'strong'),
      before('latest, as planned', 2),
      when(dates.latest, 2, 'strong'),
      before('for the goods alone', 2),
      when(dates.forGoods, 2),
      before(cart.outside ? 'back and usable from' : 'usable from', 2),
      when(dates.usable, 4, 'strong'),
    ],
  }
}

/** The last evening that is safe, where it was asked for. */
function safeRows({ cart, results }: Order): readonly Row[] {
  const safe = results.risk?.safe.get(cart.id)
  if (!safe) return []
  const { wanted } = results.project.device
  const date = wanted ? 'the wanted day' : 'the date that 80 % of the samples keep'
  const says =
    safe.order === null
      ? `none: ${date} is kept in fewer than 80 % of the samples already`
      : `ordered so late, and the rest as planned, ${date} is still kept in 80 % of ${safe.samples} samples`
  return [
    {
      cells: [
        label('Safe until'),
        safe.order === null ? text('', { span: 2 }) : when(safe.order, 2, 'strong'),
        text(says, { span: 14 }),
      ],
    },
  ]
}

function waitRow({ cart, results }: Order): Row {
  const needs = cart.needs.map(sayTarget)
  const vendor = results.project.vendors.get(cart.vendor)
  const url = vendor?.url ?? null
  const cutoff = vendor ? `; an order before ${sayClock(vendor.cutoff)} counts that day` : ''
  const days = `${cart.leadDays} vendor days and ${cart.transitDays} carrier days on the way`
  return {
    cells: [
      label('Waits for'),
      text(needs.length === 0 ? 'nothing' : needs.join(', '), { span: 4 }),
      text(`${days}${cart.outside ? ', each way' : ''}${cutoff}`, { span: 8 }),
      text(url ?? '', { span: 4, ...(url === null ? {} : { url }) }),
    ],
  }
}

function chargesRow(order: Order): Row {
  const { cart, results } = order
  const { currency } = cart
  const vendor = results.project.vendors.get(cart.vendor)
  const price = (what: 'freight rate' | 'free over' | 'minimum order' | 'clearance rate'): Cell => {
    const value = {
      'freight rate': vendor?.freight,
      'free over': vendor?.freeOver,
      'minimum order': vendor?.minimumOrder,
      'clearance rate': vendor?.clearance,
    }[what]
    return priceCell(value ?? null, currency, { name: cartCell(cart.id, what) })
  }
  const rate = (what: 'duty rate' | 'tax rate'): Cell => ({
    value: {
      type: 'number',
      value: (what === 'duty rate' ? vendor?.duty : vendor?.tax)?.valueOf() ?? 0,
      format: { as: 'percent', digits: 1 },
    },
    role: 'input',
    accepts: { kind: 'number', least: 0 },
    name: cartCell(cart.id, what),
  })
  return {
    cells: [
      label('Vendor charges: freight'),
      price('freight rate'),
      before('free from', 2),
      price('free over'),
      before('least order'),
      price('minimum order'),
      before('clearance'),
      price('clearance rate'),
      before('duty'),
      rate('duty rate'),
      before('tax'),
      rate('tax rate'),
    ],
  }
}

/** What the formulas look at: goods held against the vendor's limits, lines without a price, what the total misses. */
function limitsRow(order: Order): Row {
  const { cart, figures } = order
  const digits = formulas.valueDigits(cart)
  const goods = Number(toDecimals(figures.value, digits))
  const cell = (what: 'value' | 'missing' | 'open') =>
    ({ name: cartCell(cart.id, what), role: 'note' }) as const
  return {
    cells: [
      text('Goods for these limits', { role: 'note' }),
      number(goods, digits, cart.currency, { ...cell('value'), live: formulas.limitValueOf(order) }),
      text('lines without a price', { role: 'note', span: 3, align: 'right' }),
      count(figures.missing, { ...cell('missing'), live: formulas.missingOf(order) }),
      text('missing in the total', { role: 'note', span: 3, align: 'right' }),
      count(figures.open, { ...cell('open'), live: formulas.openOf(order) }),
    ],
  }
}

function remarkRow(): Row {
  return { cells: [label('Own remark'), writeHere({ span: wide - 1 })] }
}
