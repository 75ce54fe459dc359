import type { Step } from '../model/assembly.ts'
import { type Bench, stepsOf } from './bench.ts'

/**
 * Why a step must not be done now although its way is free: it would turn the work over while something only lies in
 * place (`loose_until`), or start a cure that a step in a hurry (`within`) would have to wait for. `null`: it may.
 */
export function whyInterrupted(bench: Bench, step: Step): string | null {
  return whyFallsOut(bench, step) ?? whyHeldUp(bench, step)
}

function whyFallsOut(bench: Bench, step: Step): string | null {
  for (const loose of bench.done) {
    for (const target of loose.looseUntil) {
      const open = stepsOf(bench, target).find((last) => !bench.done.has(last) && last !== step)
      if (open && tips(step, [loose, open]))
        return `step \`${step.id}\` turns the work over while what \`${loose.id}\` put lies loose, against \`loose_until\` (line ${target.at.line})`
    }
  }
  for (const target of step.looseUntil) {
    const early = stepsOf(bench, target).find((last) => last === step || bench.done.has(last))
    if (early)
      return `step \`${step.id}\` comes after \`${early.id}\`, which fastens it, against \`loose_until\` (line ${target.at.line})`
  }
  return null
}

/** Whether a step says that the work lies, or is gone at from, otherwise than the first of these that says anything. */
function tips(step: Step, by: readonly Step[]): boolean {
  const key = step.turn === null ? 'from' : 'turn'
  const wanted = step[key]
  const lies = by.map((one) => one[key]).find((text) => text !== null)
  return wanted !== null && lies?.trim().toLowerCase() !== wanted.trim().toLowerCase()
}

function whyHeldUp(bench: Bench, step: Step): string | null {
  if (!step.cure) return null
  const seconds = Number(step.cure.mean.valueOf())
  for (const hasty of bench.plan.steps) {
    if (hasty === step || bench.done.has(hasty) || !share(step, hasty)) continue
    for (const { first, minutes } of hurries(bench, hasty)) {
      if (first !== step && bench.done.has(first) && seconds > minutes * 60)
        return `step \`${step.id}\` cures on what \`${hasty.id}\` touches, which must begin within ${minutes} min of \`${first.id}\` (line ${hasty.at.line})`
    }
  }
  return null
}

function hurries(bench: Bench, step: Step): readonly { readonly first: Step; readonly minutes: number }[] {
  const written = bench.plan.steps.filter(({ index }) => step.within !== null && index === step.index - 1)
  return [
    ...written.map((first) => ({ first, minutes: step.within! })),
    ...step.after
      .filter(({ within }) => within !== null)
      .flatMap(({ target, within }) => stepsOf(bench, target).map((first) => ({ first, minutes: within! }))),
  ]
}

const bodies = ({ put, into, onto }: Step): readonly (string | undefined)[] => [
  put?.part,
  into?.body,
  onto?.body,
]

const share = (one: Step, other: Step): boolean =>
  bodies(one).some((body) => body !== undefined && bodies(other).includes(body))
