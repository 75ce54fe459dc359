import Fraction from 'fraction.js'
import { groupBy } from '../base/group-by.ts'
import type { Charge, ExpectedLoss, Money, Share } from '../model/money.ts'
import type { Project } from '../model/project.ts'
import type { Cart } from '../model/purchase.ts'
import { knownMoney } from './cart-table.ts'
import type { Block, Cell, CellName, Expression, Row } from './cells.ts'
import {
  added,
  asOne,
  choose,
  isUnknown,
  knownOr,
  plus,
  portion,
  sumOf,
  unknownWord,
  words,
} from './expressions.ts'
import { cartCell } from './line-names.ts'
import { constant, less, money, number, ref, rounded, text } from './make-cells.ts'
import { amountCell, causeCell, causeKey, flagCell, sayCause, sourceCell } from './money-names.ts'
import { processWords } from './money-slices.ts'

const columns = (head: string) => [
  { head, width: 0 },
  { head: '', width: 0 },
  { head: '', width: 0 },
  { head: '', width: 0 },
  { head: '', width: 0 },
  { head: 'Amount', width: 0, align: 'right' as const },
  { head: 'Unknown', width: 0 },
]

/** One row of a sum: what it adds, how many of its amounts are unknown, and what both are today. */
interface Sum {
  readonly title: Cell
  readonly name: CellName
  readonly amounts: readonly CellName[]
  readonly open: Expression
  readonly known: number
  readonly unknown: number
}

function sumTable(id: string, head: string, sums: readonly Sum[], all: Money): Block {
  const rows = sums.map(
    ({ title, name, amounts, open, known, unknown }): Row => ({
      cells: [
        { ...title, span: 5 },
        knownMoney(known, unknown > 0, all.currency, {
          name,
          live: knownOr(someOpen(open), rounded(sumOf(...amounts), all.digits)),
        }),
        text(sayUnknown(unknown), { live: unknownSays(open), role: 'warning' }),
      ],
    }),
  )
  return { kind: 'table', id, columns: columns(head), rows, totals: [], filter: false }
}

function someOpen(open: Expression): Expression {
  return { op: '>', left: open, right: constant(0) }
}

function sayUnknown(unknown: number): string {
  return unknown === 0 ? '' : `${unknown} unknown`
}

/** `2 unknown`, or nothing where all is known. */
export function unknownSays(open: Expression): Expression {
  const says: Expression = { op: 'join', of: [open, words(' unknown')] }
  return choose({ op: '=', left: open, right: constant(0) }, words(''), says)
}

const causeOrder = ['part', 'device', 'work', 'cart']

/** Charged, by what it is for: parts by name, then assembly, work and ordering. */
export function byPartTable(all: Money): Block {
  const place = ({ cause }: Money['byPart'][number]): number => causeOrder.indexOf(cause.kind)
  const inOrder = [...all.byPart].sort(
    (a, b) => place(a) - place(b) || (causeKey(a.cause) < causeKey(b.cause) ? -1 : 1),
  )
  const byCause = groupBy(all.charges.entries(), ([, charge]) => causeKey(charge.cause))
  const sums = inOrder.map(({ cause, known }) =>
    chargeSum(byCause.get(causeKey(cause)) ?? [], text(sayCause(cause)), causeCell(cause), known),
  )
  return sumTable('by part', 'Charged, by what it is for', sums, all)
}

/** Charged, by kind. */
export function byProcessTable(all: Money): Block {
  const byProcess = groupBy(all.charges.entries(), ([, charge]) => charge.process)
  const sums = all.byProcess.map(({ process, known }) =>
    chargeSum(byProcess.get(process) ?? [], text(processWords[process]), `charged by kind/${process}`, known),
  )
  return sumTable('by process', 'Charged, by kind', sums, all)
}

/** A sum of charges, each with its place in the list of all. */
function chargeSum(
  mine: readonly (readonly [number, Charge])[],
  title: Cell,
  name: CellName,
  known: number,
): Sum {
  return {
    title,
    name,
    known,
    amounts: mine.map(([at]) => amountCell('charge', at)),
    open: sumOf(...mine.map(([at]) => flagCell('charge', at))),
    unknown: mine.filter(([, charge]) => charge.amount === null).length,
  }
}

/** Cash, by vendor. */
export function byVendorTable(all: Money, carts: readonly Cart[], openToday: (cart: Cart) => number): Block {
  const sums = all.byVendor.map(({ vendor, known }): Sum => {
    const mine = carts.filter((cart) => cart.vendor === vendor)
    const missing = vendor === null ? all.sources.filter(({ kind }) => kind === 'missing') : []
    return {
      title: text(vendor ?? 'nobody is known to sell it'),
      name: `cash by vendor/${vendor ?? ''}`,
      known,
      amounts: [...mine.map(({ id }) => cartCell(id, 'total')), ...missing.map(sourceCell)],
      open: plus(
        sumOf(...mine.map(({ id }) => cartCell(id, 'open'))),
        added(missing.map((source) => asOne(isUnknown(sourceCell(source))))),
      ),
      unknown: missing.length + mine.reduce((sum, cart) => sum + openToday(cart), 0),
    }
  })
  return sumTable('by vendor', 'Cash, by vendor', sums, all)
}

/** Charged, by device: differences of rounded running totals, so that they add up. */
export function byDeviceTable(all: Money): Block {
  const { byDevice, currency, digits } = all
  const charged = ref('money/charged')
  const upTo = (k: number): Expression => rounded(portion(charged, new Fraction(k, byDevice.length)), digits)
  const rows = byDevice.map(({ device, known }: { readonly device: number } & Share): Row => {
    const live = device === 0 ? upTo(1) : less(upTo(device + 1), upTo(device))
    return {
      cells: [
        text(`device ${device + 1}`, { span: 5 }),
        money(known, currency, { name: `money/device/${device + 1}`, live }),
      ],
    }
  })
  return {
    kind: 'table',
    id: 'by device',
    columns: columns('Charged, by device'),
    rows,
    totals: [],
    filter: false,
  }
}

/** What bad tries cost on average, beside the balance. */
export function expectedLossTable(all: Money, project: Project): Block {
  return {
    kind: 'table',
    id: 'expected loss',
    columns: [
      { head: 'Part', width: 0 },
      { head: '', width: 0 },
      { head: 'Tries each', width: 0, align: 'right' },
      { head: 'Cost of one try of all', width: 0, align: 'right' },
      { head: 'Good tries', width: 0, align: 'right' },
      { head: 'Expected loss', width: 0, align: 'right' },
    ],
    rows: all.expectedLoss.map((loss) => lossRow(loss, all, project)),
    totals: [],
    filter: false,
  }
}

/** The cell with a part's expected loss. */
export function lossCell(part: string): CellName {
  return `expected loss/${part}`
}

function lossRow(loss: ExpectedLoss, all: Money, project: Project): Row {
  const { currency, digits } = all
  const tries = project.parts.get(loss.part)?.tries ?? 1
  const attempts = `one try of/${loss.part}`
  const own = ownCells(loss.part, all)
  const cost = rounded(portion(rounded(sumOf(...own.amounts), digits), new Fraction(1, tries)), digits)
  const isOpen: Expression = { op: '>', left: sumOf(...own.flags), right: constant(0) }
  const odds = new Fraction(1).div(loss.yield).sub(1)
  const lost = rounded(portion(ref(attempts), odds), digits)
  return {
    cells: [
      text(loss.part, { span: 2 }),
      number(tries, 0, null),
      money(loss.attempts, currency, { name: attempts, live: choose(isOpen, words(unknownWord), cost) }),
      { value: { type: 'number', value: loss.yield.valueOf(), format: { as: 'percent', digits: 1 } } },
      money(loss.amount, currency, {
        name: lossCell(loss.part),
        live: choose(isUnknown(attempts), words(unknownWord), lost),
      }),
    ],
  }
}

/** Amounts of a part's own tries; pieces drawn from here are made already. */
function ownCells(part: string, all: Money): { amounts: CellName[]; flags: CellName[] } {
  const drawn = `own / ${part}`
  const charges = all.charges.flatMap(({ cause, slice }, at) =>
    cause.kind === 'part' && cause.id === part && slice.source !== drawn ? [['charge', at] as const] : [],
  )
  const left = all.leftovers.flatMap((each, at) =>
    each.part === part && each.slice.source !== drawn ? [['left', at] as const] : [],
  )
  const own = [...charges, ...left]
  return {
    amounts: own.map(([list, at]) => amountCell(list, at)),
    flags: own.map(([list, at]) => flagCell(list, at)),
  }
}
