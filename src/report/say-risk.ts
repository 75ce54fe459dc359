/** How sure the date is, in words. */
import { weekdayNames } from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { Lever, Risk, SpreadBy, TonightAction } from '../model/risk.ts'
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
export function sayLever({ kind, of, weekday }: Lever): string {
  if (kind === 'order earlier') return `have ${of} ordered one working day earlier`
  if (kind === 'second machine') return `a second ${of}`
  return `one more evening a week for ${of}: ${weekdayNames[weekday ?? 0]}`
}

/** Why something is worth doing now. */
export function sayWorth({ until, share }: TonightAction): string {
  return `left until ${sayShort(until)}, the date moves in ${sayShare(share)} of the samples`
}
