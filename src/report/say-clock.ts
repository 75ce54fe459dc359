import type { Minutes } from '../base/clock.ts'

/** A time of day: `12:00`. */
export function sayClock(minutes: Minutes): string {
  const two = (value: number): string => `${value}`.padStart(2, '0')
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`
}
