import type { Charge, ChargeKind, LeftOver, Money, Slice, Source } from '../model/money.ts'
import { knownMoney } from './cart-table.ts'
import type { Block, Cell, Expression, Row } from './cells.ts'
import { choose, knownOr, portion, same, words } from './expressions.ts'
import { blank, constant, count, less, ref, rounded, text } from './make-cells.ts'
import { amountCell, flagCell, sayCause, sourceAmount, sourceOpen, sourcesById } from './money-names.ts'

/** What a charge is, in plain words. */
export const processWords: Readonly<Record<ChargeKind, string>> = {
  bought: 'bought',
  material: 'material',
  outside: 'outside work',
  machine: 'machine hours',
  hands: 'hands',
  cutter: 'cutters',
}

/** Every reason why these devices cost something, each a part of its source. */
export function chargesTable(all: Money): Block {
  return slicesTable('charges', 'What for', all, 'charge', all.charges, ({ cause }) => sayCause(cause))
}

/** What is still there when the devices are done. */
export function leftOverTable(all: Money): Block {
  return slicesTable('left over', 'Left over', all, 'left', all.leftovers, sayLeft)
}

function sayLeft({ part, why }: LeftOver): string {
  if (part === null) return 'bought over'
  return `${part}, kept as ${why === 'tool' ? 'a tool' : 'a spare'}`
}

function slicesTable<T extends Charge | LeftOver>(
  id: string,
  head: string,
  all: Money,
  list: 'charge' | 'left',
  slices: readonly T[],
  say: (each: T) => string,
): Block {
  const sources = sourcesById(all)
  return {
    kind: 'table',
    id,
    columns: [
      { head, width: 0 },
      { head: 'Out of', width: 0 },
      { head: 'Kind', width: 0 },
      { head: 'Takes', width: 0, align: 'right' },
      { head: 'Share', width: 0, align: 'right' },
      { head: 'Amount', width: 0, align: 'right' },
      { head: 'Unknown', width: 0 },
    ],
    rows: slices.map((each, at): Row => {
      const source = sources.get(each.slice.source)!
      return {
        cells: [text(say(each)), ...sliceCells(each, source), ...amountCells(each, source, list, at, all)],
      }
    }),
    totals: [],
    filter: false,
  }
}

function sliceCells({ process, slice }: Charge | LeftOver, source: Source): Cell[] {
  const share = slice.upTo.sub(slice.after).valueOf()
  return [
    text(sourceTitle(source)),
    text(processWords[process]),
    text(takes(source, slice), { align: 'right' }),
    { value: { type: 'number', value: share, format: { as: 'percent', digits: 1 } }, align: 'right' },
  ]
}

function sourceTitle(source: Source): string {
  if (source.kind === 'own stock') return `own ${source.title}`
  if (source.kind === 'hours') return source.resource
  return source.title
}

/** How many of how many units; hours are shared by minutes, but those of a print job by what is printed. */
function takes(source: Source, { units, of }: Slice): string {
  const said = `${short(units.valueOf())} of ${short(of.valueOf())}`
  if (source.kind !== 'hours') return said
  return of.equals(source.minutes) ? `${said} min` : 'by what is printed'
}

/** A number in few digits, for reading only. */
function short(value: number): string {
  return String(Number(value.toFixed(value >= 100 ? 0 : 3)))
}

function amountCells(
  each: Charge | LeftOver,
  source: Source,
  list: 'charge' | 'left',
  at: number,
  { currency, digits }: Money,
): Cell[] {
  const flag = { name: flagCell(list, at), live: choose(sourceOpen(source), constant(1), words('')) }
  const live = knownOr(same(ref(flag.name), constant(1)), sliceOf(each.slice, source, digits))
  return [
    knownMoney(each.known, each.amount === null, currency, { name: amountCell(list, at), live }),
    each.amount === null ? count(1, flag) : blank({ ...flag, align: 'right' }),
  ]
}

/** Source x `upTo` rounded, less source x `after` rounded. */
function sliceOf({ after, upTo }: Slice, source: Source, digits: number): Expression {
  const amount = sourceAmount(source)
  const whole = rounded(portion(amount, upTo), digits)
  return after.equals(0) ? whole : less(whole, rounded(portion(amount, after), digits))
}
