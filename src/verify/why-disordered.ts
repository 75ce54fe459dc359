import type { AssemblyPlan, Step } from '../model/assembly.ts'
import type { Target } from '../model/project.ts'
import { type Bench, blockedBy, emptyBench, finishStep, isOpen, isThere, keyOf, stepsOf } from './bench.ts'
import { whyInterrupted } from './why-interrupted.ts'
import { first } from './why-misplaced.ts'

/**
 * The first statement of an assembly that an order of its steps violates, as one sentence, or `null`.
 * Goes through the order at the bench: before each step it asks whether what the step touches is there, whether all
 * that must be done before it is done, and whether the way in is open; then it does the step.
 *
 * Reading: a body that no step puts is there from the start. Something goes in through one open opening of its body
 * and of every body that one has been put into by then. Openings shut and open at the end of a step, so the step that
 * shuts may itself put something in. An opening that no step opens again counts as open until the last of the steps
 * that shut it is done; one that is opened again is shut only where it is open. A target that lies outside this
 * assembly restricts its dates, not its order.
 */
export function whyDisordered(plan: AssemblyPlan, order: readonly string[]): string | null {
  const steps = new Map(plan.steps.map((step) => [step.id, step]))
  const miscounted = whyMiscounted(plan, order)
  if (miscounted !== null) return miscounted
  const bench = emptyBench(plan, order)
  return first(order, (id) => {
    const step = steps.get(id)!
    const said = whyNotNow(bench, step)
    finishStep(bench, step)
    return said
  })
}

function whyMiscounted(plan: AssemblyPlan, order: readonly string[]): string | null {
  const written = plan.steps.map((step) => step.id)
  const twice = order.find((id, i) => order.indexOf(id) < i)
  if (twice !== undefined) return `step \`${twice}\` stands twice in the order`
  const missing = written.find((id) => !order.includes(id))
  if (missing !== undefined) return `step \`${missing}\` is missing from the order`
  const unknown = order.find((id) => !written.includes(id))
  return unknown === undefined ? null : `step \`${unknown}\` is in the order but not in the assembly`
}

function whyNotNow(bench: Bench, step: Step): string | null {
  return (
    whyAbsent(bench, step) ??
    whyTooSoon(bench, step) ??
    whyTooLate(bench, step) ??
    whyNoWayIn(bench, step) ??
    whyOutOfReach(bench, step) ??
    whyInterrupted(bench, step)
  )
}

function whyAbsent(bench: Bench, step: Step): string | null {
  const touched = [step.into, step.onto].flatMap((there) => there ?? [])
  for (const { body, at } of touched) {
    if (!isThere(bench, body))
      return `step \`${step.id}\` needs \`${body}\`, which is not there yet (line ${at.line})`
  }
  for (const { body, opening, at } of [...step.shuts, ...step.opens]) {
    const putNow = bench.puts.get(body)?.includes(step)
    if (!putNow && !isThere(bench, body)) {
      return `step \`${step.id}\` shuts or opens \`${body}.${opening}\`, but \`${body}\` is not there yet (line ${at.line})`
    }
  }
  const shutAlready = step.shuts.find(
    (opening) =>
      bench.reopened.has(keyOf(opening)) &&
      bench.shut.has(keyOf(opening)) &&
      !step.opens.some((other) => keyOf(other) === keyOf(opening)),
  )
  if (shutAlready)
    return `step \`${step.id}\` shuts \`${keyOf(shutAlready)}\`, which is shut already (line ${shutAlready.at.line})`
  const stillOpen = step.opens.find((opening) => !bench.shut.has(keyOf(opening)))
  if (!stillOpen) return null
  return `step \`${step.id}\` opens \`${keyOf(stillOpen)}\`, which is not shut (line ${stillOpen.at.line})`
}

/** What must be done before this step, and is not. */
function whyTooSoon(bench: Bench, step: Step): string | null {
  const waitsFor = [
    ...step.after.map(({ target }) => ({ target, key: 'after' })),
    ...step.needs.map((target) => ({ target, key: 'needs' })),
  ]
  for (const { target, key } of waitsFor) {
    const open = stepsOf(bench, target).find((other) => !bench.done.has(other))
    if (open)
      return `step \`${step.id}\` comes before \`${open.id}\`, against \`${key}\` (line ${target.at.line})`
  }
  const previous = step.within === null ? undefined : bench.plan.steps.find((s) => s.index === step.index - 1)
  if (!previous || bench.done.has(previous)) return null
  return `step \`${step.id}\` comes before \`${previous.id}\`, against \`within\` (line ${step.at.line})`
}

/** What this step must be done before, and is done already. */
function whyTooLate(bench: Bench, step: Step): string | null {
  for (const target of step.before) {
    const others = target.kind === 'step' ? stepsOf(bench, target) : without(step, stepsOf(bench, target))
    const early = others.find((other) => other === step || bench.done.has(other))
    if (early)
      return `step \`${step.id}\` comes after \`${early.id}\`, against \`before\` (line ${target.at.line})`
  }
  return whyAfterTheLast(bench, step, step.beforeLastOf)
}

/**
 * The step may be the last itself: a shut takes effect at its end. A member that no step of this assembly stands for
 * is never done here, so the rule says nothing.
 */
function whyAfterTheLast(bench: Bench, step: Step, targets: readonly Target[]): string | null {
  const members = targets.map((target) => stepsOf(bench, target))
  const others = members.flat()
  const open = others.length === 0 || members.some((steps) => steps.length === 0)
  if (open || !others.every((other) => bench.done.has(other))) return null
  const last = others.reduce((a, b) => (bench.turn.get(a.id)! > bench.turn.get(b.id)! ? a : b))
  const line = targets[0]!.at.line
  return `step \`${step.id}\` comes after \`${last.id}\`, the last of \`before_last_of\` (line ${line})`
}

function whyNoWayIn(bench: Bench, step: Step): string | null {
  if (!step.into) return null
  const { body, through, at } = step.into
  const blocked = blockedBy(bench, body, through)
  if (blocked === null) return null
  const way =
    through !== null && blocked === body
      ? `\`${body}.${through}\` is shut`
      : `\`${blocked}\` is shut all round`
  return `step \`${step.id}\` goes into \`${body}\`, but ${way} (line ${at.line})`
}

/** A reach names an opening, a body with openings of its own way in, or words that restrict nothing. */
function whyOutOfReach(bench: Bench, step: Step): string | null {
  return first(step.reaches, ({ text, at }) => {
    const says = `step \`${step.id}\` must reach \`${text}\``
    const opening = openingCalled(bench, text)
    if (opening) {
      return isOpen(bench, opening.body, opening.opening) ? null : `${says}, which is shut (line ${at.line})`
    }
    const putting = bench.puts.get(text)
    if (!putting) return null
    const put = putting.filter((other) => bench.done.has(other))
    if (put.length === 0) return `${says}, which is not there yet (line ${at.line})`
    const reachable = put.some(
      (other) => !other.into || blockedBy(bench, other.into.body, other.into.through) === null,
    )
    return reachable ? null : `${says}, which is shut in (line ${at.line})`
  })
}

function openingCalled(
  bench: Bench,
  text: string,
): { readonly body: string; readonly opening: string } | null {
  for (const [body, openings] of bench.plan.openings) {
    const opening = openings.find((name) => keyOf({ body, opening: name }) === text)
    if (opening !== undefined) return { body, opening }
  }
  return null
}

function without(step: Step, steps: readonly Step[]): readonly Step[] {
  return steps.filter((other) => other !== step)
}
