import type { Place } from '../../base/place.ts'
import type { Step, Why } from '../../model/assembly.ts'
import type { BenchPlan } from './bench-plan.ts'
import { touched } from './touched.ts'
import type { Gathered } from './ways-in.ts'

/**
 * What only lies in place is fastened later, and nothing turns the work over in between: no step that says how the
 * work lies or from where it goes in otherwise than the step that laid it. Where that one is silent the step that
 * fastens tells; where both are, no step that says so comes in between.
 */
export function gatherLoose(bench: BenchPlan, step: Step, into: Gathered): void {
  for (const target of step.looseUntil) {
    const { at } = target
    for (const last of bench.stepsOf(target)) {
      into.constraints.push({ form: 'before', step: step.id, of: [last.id], at, why: 'loose_until' })
      const turning = bench.plan.steps.filter(
        (other) => other !== step && other !== last && turnsOver(other, step, last),
      )
      for (const other of turning) forbid(other, step, last, { at, why: 'loose_until' }, into)
    }
  }
}

function turnsOver(other: Step, step: Step, last: Step): boolean {
  const differs = (said: string, known: string | null): boolean =>
    known === null || plain(said) !== plain(known)
  if (other.turn !== null) return differs(other.turn, step.turn ?? last.turn)
  return other.from !== null && differs(other.from, step.from ?? last.from)
}

const plain = (text: string): string => text.trim().toLowerCase()

/**
 * Where a step must begin within some time of another, nothing that cures for longer comes between them on what the
 * step touches: it would have to wait for the cure.
 */
export function gatherCuresBetween(bench: BenchPlan, step: Step, into: Gathered): void {
  const hands = touched(step)
  for (const { before, minutes, at, why } of hurried(bench, step)) {
    const long = bench.plan.steps.filter(
      (other) =>
        other !== step &&
        other !== before &&
        other.cure !== null &&
        other.cure.mean.valueOf() > 60 * minutes &&
        [...touched(other)].some((part) => hands.has(part)),
    )
    for (const other of long) forbid(other, before, step, { at, why }, into)
  }
}

interface Hurry {
  readonly before: Step
  readonly minutes: number
  readonly at: Place
  readonly why: Why
}

function hurried(bench: BenchPlan, step: Step): readonly Hurry[] {
  const written = bench.plan.steps[step.index - 1]
  const own: readonly Hurry[] =
    step.within === null || !written
      ? []
      : [{ before: written, minutes: step.within, at: step.at, why: 'within' }]
  const named = step.after.flatMap(({ target, within, at }) =>
    within === null
      ? []
      : bench.stepsOf(target).map((before): Hurry => ({ before, minutes: within, at, why: 'after' })),
  )
  return [...own, ...named]
}

function forbid(
  other: Step,
  from: Step,
  until: Step,
  { at, why }: { readonly at: Place; readonly why: Why },
  into: Gathered,
): void {
  into.constraints.push({ form: 'not between', step: other.id, from: from.id, until: until.id, at, why })
}
