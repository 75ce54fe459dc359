import { plain } from '../tolerances/tidy.ts'
import { diameterStep } from './metric-tolerances.ts'
import type { EngagementGroup, Thread } from './thread.ts'

/** Which group a length of engagement belongs to, and the bounds of the normal group. */
export interface Engagement {
  readonly group: EngagementGroup
  /** From this length on, */
  readonly normalFromMm: number
  /** and up to this one, the usual classes hold; shorter asks for closer ones, longer for wider ones. */
  readonly normalToMm: number
  readonly turns: number
  readonly worked: string
}

/**
 * Group of a length of engagement; `null` for a diameter outside the steps of the standard or a length of no size.
 * Source: ISO 965-1: normal from 2.24 P d^0.2 to 6.7 P d^0.2; d the lower end of the diameter step, from memory
 * (printed
 * tables round the results, by up to 15 %).
 */
export function engagementGroup(
  { majorMm, pitchMm }: Pick<Thread, 'majorMm' | 'pitchMm'>,
  lengthMm: number,
): Engagement | null {
  const step = diameterStep(majorMm)
  if (step === null || !(lengthMm > 0 && lengthMm < 1e6)) return null
  const base = pitchMm * step.overMm ** 0.2
  const [from, to] = [2.24 * base, 6.7 * base]
  const bound = (factor: number, mm: number): string =>
    `${factor} x ${plain(pitchMm)} x ${step.overMm}^0.2 = ${plain(mm, 1)}`
  const group = lengthMm < from ? 'S' : lengthMm > to ? 'L' : 'N'
  return {
    group,
    normalFromMm: from,
    normalToMm: to,
    turns: lengthMm / pitchMm,
    worked: `${bound(2.24, from)} to ${bound(6.7, to)} mm is normal; ${plain(lengthMm)} mm is ${group}`,
  }
}
