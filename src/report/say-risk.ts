/** How sure the date is, in words. */
import { weekdayNames } from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { Lever, Risk, SpreadBy, TonightAction, WorthWhy } from '../model/risk.ts'
import { sayMinutes } from './make-cells.ts'
import { sayShort, sayTask } from './say-because.ts'

/** A share as whole per cent: `80 %`. */
export function sayShare(share: number): string {
  return `${Math.round(100 * share)} %`
}

/** Days with one decimal: `1.5 days`. */
export function sayDays(days: number): string {
  const said = days.toFixed(1)
  return `${said} ${said === '1.0' ? 'day' : 'days'}`
}

/** The date that 80 % of the samples keep, in words. */
export function saySure({ finishBy, samples }: Risk): string {
  const sure = finishBy.find(({ chance }) => chance === 0.8)?.finish ?? null
  return sure === null ? `fewer than 80 % of ${samples} samples are ever done` : `80 % by ${sayShort(sure)}`
}

/** How far a share counted on so many samples may be off: two standard errors at one half. Source: textbook binomial. */
export function sayDoubt(samples: number): string {
  return `${Math.ceil(100 / Math.sqrt(samples))} points of 100 either way`
}

/** What spreads the date, by what is drawn. */
export function saySpread(results: Results, { kind, of }: SpreadBy): string {
  switch (kind) {
    case 'time':
      return `how long it takes: ${sayTask(results, of)}`
    case 'lead':
      return `how long the vendor takes: ${of}`
    case 'transit':
      return `how long the parcel is on its way: ${of}`
    case 'fails':
      return `how often it fails: ${sayTask(results, of)}`
    default:
      return `how many pieces come out bad: ${of}`
  }
}

/** A change that brings the date nearer, as an order to oneself. */
export function sayLever({ kind, of, person, weekday }: Lever): string {
  switch (kind) {
    case 'order earlier':
      return `have ${of} ordered one working day earlier`
    case 'second machine':
      return `a second ${of}`
    case 'any hours':
      return `${of} at any hour, not in its hours alone`
    case 'one more user':
      return `${person} may use ${of} too`
    default:
      return `one more evening a week for ${of}: ${weekdayNames[weekday ?? 0]}`
  }
}

/** What searching as long for the levers brings without any of them; empty where that is nothing. */
export function saySearchAlone({ searchAlone }: Risk): string {
  if (searchAlone < 0.05) return ''
  return `A longer search alone brings ${sayDays(searchAlone)}: ask for more effort. No change here is given credit for that.`
}

/** Why something is worth doing now: what it does to the date, then why it matters. */
export function sayWorth(results: Results, { task, until, planned, share, why }: TonightAction): string {
  const moves = planned
    ? `left until ${sayShort(until)}, the date moves in ${sayShare(share)} of the samples`
    : `planned for ${sayShort(startOf(results, task))}; done now, the date comes nearer in ${sayShare(share)} of the samples`
  return [moves, ...why.map(sayWhy)].join('; ')
}

function startOf({ schedule }: Results, task: string): number {
  return schedule.tasks.get(task)!.start
}

function sayWhy(why: WorthWhy): string {
  switch (why.kind) {
    case 'starts waiting':
      return `it starts ${why.days} ${why.days === 1 ? 'day' : 'days'} of waiting for the vendor and the post`
    case 'starts running':
      return `it starts ${sayMinutes(why.minutes)} of ${why.machine ?? 'hardening or waiting'} without anybody's hands`
    case 'frees':
      return `it frees the ${why.machine}`
    case 'on chains':
      return `it is on ${sayShare(why.share)} of the chains that set the date`
    default:
      return `${why.tasks} tasks come after it`
  }
}
