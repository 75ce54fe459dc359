import { dayOf, formatInstant } from '../base/clock.ts'
import type { PlanSchedule } from '../model/schedule.ts'

/** How much earlier than the plan a finish could still be, by the proved bound, in days and in words. */
export function sayGap({ finish, lowerBound }: Pick<PlanSchedule, 'finish' | 'lowerBound'>): {
  readonly finish: string
  readonly gapDays: number
  readonly says: string
} {
  const gapDays = dayOf(finish - 1) - dayOf(lowerBound - 1)
  const says =
    finish === lowerBound
      ? 'no earlier finish is possible with these orders of assembly'
      : gapDays === 0
        ? 'no earlier day is possible with these orders of assembly, only earlier on that day'
        : `at most ${gapDays} ${gapDays === 1 ? 'day' : 'days'} better is possible with these orders of assembly`
  return { finish: formatInstant(lowerBound), gapDays, says }
}
