import Fraction from 'fraction.js'
import type { Minutes } from '../../base/clock.ts'
import { type ThreePoint, threePoint } from '../../base/three-point.ts'

const zero = new Fraction(0)

/** Times one after the other, each so many times, in seconds; optimistic, likely and pessimistic values add up each. */
export function addTimes(times: readonly (readonly [ThreePoint | null, number])[]): ThreePoint {
  const sum = (of: (time: ThreePoint) => Fraction): Fraction =>
    times.reduce((total, [time, count]) => (time ? total.add(of(time).mul(count)) : total), zero)
  const points = threePoint(
    sum((t) => t.low),
    sum((t) => t.likely),
    sum((t) => t.high),
  )
  return { ...points, dims: 'time', unit: 'min', text: '' }
}

/** Seconds rounded up to whole minutes, once. */
export function wholeMinutes(seconds: Fraction): Minutes {
  return Number(seconds.div(60).ceil().valueOf())
}
