import Fraction from 'fraction.js'
import { dayOf, formatDay, weekday, weekdayNames } from '../base/clock.ts'
import { formatMoney, roundMoney } from '../base/money.ts'
import { toDecimals } from '../base/rounding.ts'
import { lim } from '../diagnostics/catalogue/lim.ts'
import type { Results } from '../model/results.ts'
import type { ResultCheck } from './check.ts'

const sayDay = (day: number): string => `${weekdayNames[weekday(day)]} ${formatDay(day)}`

/** The longest tasks of the driving chain, in its order. */
function driversOf({ schedule, network }: Results, most: number): readonly string[] {
  const titles = new Map(network.tasks.map((task) => [task.id, task.title]))
  const byLength = [...schedule.drivingChain].sort(
    (a, b) => b.finish - b.start - (a.finish - a.start) || a.start - b.start,
  )
  const longest = new Set(byLength.slice(0, most))
  return schedule.drivingChain
    .filter((step) => longest.has(step))
    .map((step) => titles.get(step.task) ?? step.task)
}

/** LIM01: the wanted date is missed. */
export const wantedMissed: ResultCheck = (results, report) => {
  const { wanted } = results.project.device
  // The finish lies on the day of its last minute.
  const finish = dayOf(results.schedule.finish - 1)
  if (!wanted || finish <= wanted.day) return
  const drivers = driversOf(results, 3)
  report(lim.wantedMissed, wanted.at, {
    finish: sayDay(finish),
    wanted: sayDay(wanted.day),
    days: finish - wanted.day,
    drivers,
  })
}

/** LIM02: the cash limit is exceeded. */
export const cashExceeded: ResultCheck = ({ project, money, purchase }, report) => {
  const limit = project.limits.cash
  if (!limit) return
  const most = roundMoney(limit.value, money.digits)
  const over = money.cash.known - most
  if (over <= 0) return
  const largest = [...purchase.carts].sort((a, b) => b.known - a.known || (a.id < b.id ? -1 : 1)).slice(0, 3)
  const say = (cents: number): string => formatMoney(cents, money.currency)
  report(lim.cashExceeded, limit.at, {
    cash: say(money.cash.known),
    limit: say(most),
    over: say(over),
    incomplete: money.cash.unknown.length > 0,
    largest: largest.map((cart) => `${cart.id} (${say(cart.known)})`),
  })
}

/** LIM03: one device is too heavy, by the masses that are given. */
export const massExceeded: ResultCheck = ({ project }, report) => {
  const limit = project.limits.mass
  if (!limit) return
  const counted = [...project.parts.values()].filter(
    (part) => (project.demand.get(part.id)?.perDevice ?? 0) > 0 && part.way.kind !== 'assembly',
  )
  const unknown = counted.filter((part) => part.mass === null).map((part) => part.id)
  const grams = counted.reduce(
    (sum, part) => (part.mass ? sum.add(part.mass.value.mul(project.demand.get(part.id)!.perDevice)) : sum),
    new Fraction(0),
  )
  if (grams.lte(limit.quantity.value)) return
  report(lim.massExceeded, limit.at, {
    mass: `${toDecimals(grams, 1)} g`,
    limit: limit.quantity.text,
    unknown,
  })
}
