import type { ThreePoint } from '../base/three-point.ts'
import { sayMinutes } from './make-cells.ts'

/** A time as the plan takes it: whole minutes of the mean, rounded up; `not stated` where there is none. */
export function sayTime(time: ThreePoint | null): string {
  return time === null ? 'not stated' : sayMinutes(Math.ceil(time.mean.div(60).valueOf() - 1e-9))
}

/** A time that is uncertain, as typed: `16..18..25 min`; empty where it is one figure. */
export function sayRange(time: ThreePoint | null): string {
  return time && !time.low.equals(time.high) ? time.text : ''
}

/** Sentences from those that say something, each with a capital letter and a full stop. */
export function sentences(...all: readonly (string | null)[]): string {
  return all
    .filter((one) => one !== null && one.trim() !== '')
    .map((one) => `${one![0]!.toUpperCase()}${one!.slice(1)}`)
    .map((one) => (/[.!?]$/.test(one) ? one : `${one}.`))
    .join(' ')
}

/** A thing with how many of it: `drive pin x2`. */
export function sayCount(part: string, count: number): string {
  return count === 1 ? part : `${part} x${count}`
}
