import type { HoursSource, Money } from '../model/money.ts'
import { priceCell } from './cart-table.ts'
import type { Block, Row } from './cells.ts'
import { choose, isEmpty, sumOf, unknownWord, words } from './expressions.ts'
import { blank, constant, minutes, money, ref, rounded, text, times } from './make-cells.ts'
import { sourceCell } from './money-names.ts'

/** The cell with a machine's or a person's rate for an hour. */
export function rateCell({ of, resource }: Pick<HoursSource, 'of' | 'resource'>): string {
  return `rate/${of}/${resource}`
}

const plannedCell = ({ id }: HoursSource): string => `planned minutes/${id}`
/** The cell in which the minutes of a line may be changed. */
export const minutesCell = ({ id }: HoursSource): string => `minutes/${id}`
const changedCell = ({ id }: HoursSource): string => `minutes changed/${id}`

/** All hours that cost or could cost. */
export function hoursOf({ sources }: Money): HoursSource[] {
  return sources.filter((source) => source.kind === 'hours')
}

/** Rates of machines and people, which a person may change. */
export function ratesTable(all: Money): Block {
  const rated = new Map(hoursOf(all).map((source) => [rateCell(source), source]))
  return {
    kind: 'table',
    id: 'rates',
    columns: [
      { head: 'Machine or person', width: 0 },
      { head: 'Kind', width: 0 },
      { head: 'For an hour', width: 0, align: 'right' },
    ],
    rows: [...rated.values()].map(
      (source): Row => ({
        cells: [
          text(source.resource),
          text(source.of === 'machine' ? 'machine' : 'hands'),
          priceCell(source.rate, all.currency, { name: rateCell(source) }),
        ],
      }),
    ),
    totals: [],
    filter: false,
  }
}

/** Minutes of machines and hands by what they work on; minutes may be changed, and their money follows. */
export function hoursTable(all: Money): Block {
  return {
    kind: 'table',
    id: 'hours',
    columns: [
      { head: 'Machine or person', width: 0 },
      { head: 'Works on', width: 0 },
      { head: 'Minutes in the plan', width: 0, align: 'right' },
      { head: 'Minutes', width: 0, align: 'right' },
      { head: 'For an hour', width: 0, align: 'right' },
      { head: 'Amount', width: 0, align: 'right' },
      { head: 'Changed', width: 0 },
    ],
    rows: hoursOf(all).map((source) => hoursRow(source, all)),
    totals: [],
    filter: false,
  }
}

function hoursRow(source: HoursSource, { currency, digits }: Money): Row {
  const rate = rateCell(source)
  const shown = priceCell(source.rate, currency, { name: `rate of/${source.id}` })
  const { accepts: _, role: __, ...plain } = shown
  const perHour = {
    ...(source.rate ? plain : { ...plain, value: { type: 'unknown', text: unknownWord } as const }),
    live: choose(isEmpty(rate), words(unknownWord), ref(rate)),
  }
  const pay = times(ref(minutesCell(source)), ref(rate))
  const live = choose(
    isEmpty(rate),
    words(unknownWord),
    rounded({ op: '/', left: pay, right: constant(60) }, digits),
  )
  const differs = {
    op: '<>',
    left: ref(minutesCell(source)),
    right: ref(plannedCell(source)),
  } as const
  return {
    cells: [
      text(source.resource),
      text(worksOn(source)),
      minutes(source.minutes, { name: plannedCell(source) }),
      minutes(source.minutes, {
        name: minutesCell(source),
        role: 'input',
        accepts: { kind: 'number', least: 0 },
      }),
      perHour,
      money(source.amount, currency, { name: sourceCell(source), live }),
      blank({ name: changedCell(source), live: choose(differs, constant(1), words('')) }),
    ],
  }
}

/** `hands / ana / part base` without its first two words. */
function worksOn({ id, of, resource }: HoursSource): string {
  return id.slice(`${of} / ${resource} / `.length).replace(/^cart /, 'order ')
}

/** Minutes that differ from the plan. */
export function changedMinutes(all: Money) {
  return sumOf(...hoursOf(all).map(changedCell))
}
