import Fraction from 'fraction.js'
import { type Cents, formatMoney, majorUnits, minorDigits, roundMoney } from '../base/money.ts'
import type { Money, Source } from '../model/money.ts'
import type { Results } from '../model/results.ts'
import { cartFigures, sayMark } from './cart-figures.ts'
import { markOf } from './cart-formulas.ts'
import type { Block, CellName, Expression, Row } from './cells.ts'
import { added, asOne, choose, isUnknown, plus, portion, sumOf, words } from './expressions.ts'
import { cartCell } from './line-names.ts'
import { constant, count, less, line, money, number, ref, rounded, text } from './make-cells.ts'
import { changedMinutes } from './money-hours.ts'
import { amountCell, flagCell, sourceCell } from './money-names.ts'
import { lossCell, unknownSays } from './money-sums.ts'

/** Columns that the sheet of the money has. */
export const moneyWide = 7

/** One of the views: a total, and what of it is unknown. */
interface View {
  readonly sign: string
  readonly title: string
  readonly name: CellName
  readonly amounts: readonly CellName[]
  readonly known: Cents
  /** How many amounts are unknown, live and today, and what they are called. */
  readonly open: Expression
  readonly openToday: number
  readonly called: readonly [string, string]
}

/** The three views of the money and their balance, live. */
export function viewsBlock({ money: all, purchase, project }: Results): Block {
  const home = project.device.currency
  const open = purchase.carts.reduce((sum, cart) => sum + cartFigures(cart, home).open, 0)
  const views = [
    cashView(
      all,
      purchase.carts.map(({ id }) => id),
      open,
    ),
    ownView(all),
    hoursView(all),
  ]
  const spent = [slicesView(all, 'charge'), slicesView(all, 'left')]
  return {
    kind: 'rows',
    id: 'views',
    rows: [
      ...[...views, ...spent].map((view) => viewRow(view, all)),
      balanceRow(all),
      ...limitRows(project, all),
      ...besideRows(all),
    ],
  }
}

function cashView(all: Money, carts: readonly string[], openInCarts: number): View {
  const missing = all.sources.filter(({ kind }) => kind === 'missing')
  return {
    sign: '+',
    title: 'Cash: all orders',
    name: 'money/cash',
    amounts: [...carts.map((id) => cartCell(id, 'total')), ...missing.map(sourceCell)],
    known: all.cash.known,
    open: plus(sumOf(...carts.map((id) => cartCell(id, 'open'))), unknownOf(missing)),
    openToday: openInCarts + missing.length,
    called: ['price', 'prices'],
  }
}

function ownView(all: Money): View {
  const own = all.sources.filter(({ kind }) => kind === 'own stock')
  return {
    sign: '+',
    title: 'Drawn from own stock',
    name: 'money/own stock',
    amounts: own.map(sourceCell),
    known: all.fromOwnStock.known,
    ...countOf(own),
    called: ['worth', 'worths'],
  }
}

function hoursView(all: Money): View {
  const hours = all.sources.filter(({ kind }) => kind === 'hours')
  return {
    sign: '+',
    title: 'Hours at their rates',
    name: 'money/hours',
    amounts: hours.map(sourceCell),
    known: all.hoursAtRate.known,
    ...countOf(hours),
    called: ['rate', 'rates'],
  }
}

function countOf(sources: readonly Source[]): Pick<View, 'open' | 'openToday'> {
  return { open: unknownOf(sources), openToday: sources.filter(({ amount }) => amount === null).length }
}

function unknownOf(sources: readonly Source[]): Expression {
  return added(sources.map((source) => asOne(isUnknown(sourceCell(source)))))
}

function slicesView(all: Money, list: 'charge' | 'left'): View {
  const [title, name, slices, total] =
    list === 'charge'
      ? (['Charged: used by these devices', 'money/charged', all.charges, all.charged] as const)
      : (['Left over: spares, tools, rests', 'money/left over', all.leftovers, all.leftOver] as const)
  return {
    sign: '-',
    title,
    name,
    amounts: slices.map((_, at) => amountCell(list, at)),
    known: total.known,
    open: sumOf(...slices.map((_, at) => flagCell(list, at))),
    openToday: slices.filter(({ amount }) => amount === null).length,
    called: ['amount', 'amounts'],
  }
}

function viewRow(view: View, { currency, digits }: Money): Row {
  const { sign, title, name, amounts, known, open, openToday, called } = view
  const counted = `${name}/unknown`
  return {
    keep: true,
    cells: [
      text(`${sign}  ${title}`, { role: 'strong', span: 2 }),
      money(known, currency, { name, role: 'strong', span: 2, live: rounded(sumOf(...amounts), digits) }),
      text(sayMark(openToday, ...called), {
        name: `${name}/mark`,
        span: 2,
        live: markOf(counted, ...called),
      }),
      number(openToday, 0, 'unknown', { name: counted, live: open, role: 'note' }),
    ],
  }
}

function balanceRow({ currency, digits, difference }: Money): Row {
  const came = sumOf('money/cash', 'money/own stock', 'money/hours')
  const went = sumOf('money/charged', 'money/left over')
  const live = rounded({ op: '-', left: came, right: went }, digits)
  return {
    cells: [
      text('=  Difference: must be zero', { role: 'strong', span: 2 }),
      money(difference, currency, { name: 'money/difference', role: 'strong', span: 2, live }),
      text('What came in is what these devices used and what is left over.', { role: 'note', span: 3 }),
    ],
  }
}

function limitRows({ limits }: Results['project'], { cash, currency, digits }: Money): Row[] {
  if (!limits.cash) return []
  const { value } = limits.cash
  const most = roundMoney(value, digits)
  const live = rounded(less(constant(value.valueOf()), ref('money/cash')), digits)
  return [
    {
      cells: [
        text(`Left under the cash limit of ${formatMoney(most, currency)}`, { span: 2 }),
        money(roundMoney(value.sub(majorUnits(cash.known, digits)), digits), currency, {
          name: 'money/cash room',
          span: 2,
          live,
        }),
        text('Below zero: the limit is passed.', { role: 'note', span: 3 }),
      ],
    },
  ]
}

function besideRows(all: Money): Row[] {
  const { currency, byDevice, digits, expectedLoss } = all
  const devices = byDevice.length
  const share = rounded(portion(ref('money/charged'), new Fraction(1, Math.max(1, devices))), digits)
  const least = `${(1 / 10 ** minorDigits(currency)).toFixed(minorDigits(currency))} ${currency}`
  const says = devices === 1 ? 'All that is charged.' : `Device 1; the others differ by at most ${least}.`
  const losses = expectedLoss.map(({ part }) => lossCell(part))
  const unknownLoss = expectedLoss.filter(({ amount }) => amount === null).length
  return [
    {
      cells: [
        text('Charged per device', { role: 'strong', span: 2 }),
        money(byDevice[0]?.known ?? 0, currency, {
          name: 'money/per device',
          role: 'strong',
          span: 2,
          live: share,
        }),
        text(says, { role: 'note', span: 3 }),
      ],
    },
    {
      cells: [
        text('Expected loss by bad tries', { span: 2 }),
        money(
          expectedLoss.reduce((sum, { amount }) => sum + (amount ?? 0), 0),
          currency,
          { name: 'money/expected loss', span: 2, live: rounded(sumOf(...losses), digits) },
        ),
        text('Beside the balance: an average, not in any sum above.', { role: 'note', span: 2 }),
        text(unknownLoss === 0 ? '' : `${unknownLoss} unknown`, {
          live: unknownSays(added(losses.map((name) => asOne(isUnknown(name))))),
        }),
      ],
    },
    changedRow(all),
  ]
}

/** What stands where minutes were changed and dates were not. */
export const datesStale = 'dates not recomputed: run plan'

function changedRow(all: Money): Row {
  const changed: Expression = { op: '>', left: ref('money/minutes changed'), right: constant(0) }
  return {
    cells: [
      text('Lines of minutes changed', { span: 2 }),
      count(0, { name: 'money/minutes changed', span: 2, live: changedMinutes(all) }),
      text('', {
        name: 'money/dates',
        span: 3,
        role: 'warning',
        live: choose(changed, words(datesStale), words('')),
      }),
    ],
  }
}

/** The head of the sheet. */
export function moneyTop({ project }: Results): Block {
  const { name, qty, currency } = project.device
  const devices = qty === 1 ? 'one device' : `${qty} devices`
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      line('Money', moneyWide, 'title'),
      line(`${name}: what ${devices} cost, in ${currency}`, moneyWide, 'subtitle'),
      line(
        'Cash leaves the wallet. Charged is what the devices used of it, of own stock and of hours. Left over is still there afterwards, at what it cost. Framed cells may be changed here; prices are on the sheet Orders.',
        moneyWide,
        'note',
      ),
    ],
  }
}
