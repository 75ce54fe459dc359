/**
 * Orders of a small assembly played out at the bench, step by step, straight from its statements; shares nothing with
 * the planner and its rules. Each body is put by one step, or by several that all put it on something and not in.
 */
import type { AssemblyPlan, Step } from '../../src/model/assembly.ts'
import type { Target } from '../../src/model/project.ts'

/** Every order that may be played, with what it costs, in the order of step numbers. */
export interface Played {
  readonly order: readonly string[]
  /** Turnings over, tool changes, sum of the places of tests. */
  readonly cost: readonly number[]
}

/** All orders that keep every statement of a plan. */
export function playAll(plan: AssemblyPlan): readonly Played[] {
  const found: Played[] = []
  const play = (done: readonly Step[]): void => {
    if (done.length === plan.steps.length) found.push({ order: done.map(({ id }) => id), cost: costOf(done) })
    for (const step of plan.steps)
      if (!done.includes(step) && permits(plan, done, step)) play([...done, step])
  }
  play([])
  return found
}

/** The best of them: least cost, then the first by step numbers, in which they come. */
export function bestPlayed(all: readonly Played[]): Played | null {
  return all.reduce<Played | null>(
    (best, one) => (best && compare(best.cost, one.cost) <= 0 ? best : one),
    null,
  )
}

function compare(a: readonly number[], b: readonly number[]): number {
  const k = a.findIndex((value, at) => value !== b[at])
  return k < 0 ? 0 : a[k]! - b[k]!
}

function costOf(order: readonly Step[]): readonly number[] {
  let [turns, tools, places] = [0, 0, 0]
  let lies: { from: string | null; turn: string | null } = { from: null, turn: null }
  let hand: string | null = null
  for (const [k, { from, turn, tool, machine, test }] of order.entries()) {
    if (turn !== null && turn !== lies.turn) {
      if (k > 0) turns++
      lies = { from: null, turn }
    }
    if (from !== null && lies.from !== null && from !== lies.from) {
      if (k > 0) turns++
      lies = { from, turn: null }
    } else if (from !== null) lies = { ...lies, from }
    const wanted = tool?.text ?? machine
    if (wanted !== null && hand !== null && wanted !== hand) tools++
    hand = wanted ?? hand
    if (test !== null) places += k + 1
  }
  return [turns, tools, places]
}

const putting = (plan: AssemblyPlan, body: string): readonly Step[] =>
  plan.steps.filter(({ put, instances }) => put?.part === body || instances.includes(body))

const shutting = (plan: AssemblyPlan, body: string, opening: string): readonly Step[] =>
  plan.steps.filter(({ shuts }) => shuts.some((one) => one.body === body && one.opening === opening))

function meant(plan: AssemblyPlan, target: Target): readonly Step[] {
  if (target.kind === 'work') return []
  if (target.kind === 'part') return putting(plan, target.id)
  if (target.kind === 'opening') return shutting(plan, target.body, target.opening)
  return plan.steps.filter(({ id }) => id === target.id)
}

function permits(plan: AssemblyPlan, done: readonly Step[], step: Step): boolean {
  const all = (steps: readonly Step[]) => steps.every((one) => done.includes(one))
  const none = (steps: readonly Step[]) => !steps.some((one) => done.includes(one))
  const named = (target: Target) => meant(plan, target)
  const others = (target: Target) => named(target).filter((one) => target.kind === 'step' || one !== step)
  const last = step.beforeLastOf.map(named)
  return (
    bodiesThere(plan, done, step) &&
    step.after.every(({ target }) => all(named(target))) &&
    step.needs.every((target) => all(named(target))) &&
    (step.within === null || step.index === 0 || done.includes(plan.steps[step.index - 1]!)) &&
    step.before.every((target) => none(others(target)) && !others(target).includes(step)) &&
    (last.length === 0 || last.some(({ length }) => length === 0) || !all(last.flat())) &&
    waysOpen(plan, done, step) &&
    reachable(plan, done, step) &&
    takesTurns(plan, done, step) &&
    layUndisturbed(plan, done, step) &&
    waitsForNoCure(plan, done, step)
  )
}

function bodiesThere(plan: AssemblyPlan, done: readonly Step[], step: Step): boolean {
  const needed = [step.into?.body, step.onto?.body].filter((body) => body !== undefined)
  const handled = [...step.shuts, ...step.opens]
    .map(({ body }) => body)
    .filter((body) => !putting(plan, body).includes(step))
  return [...needed, ...handled].every((body) => isThere(plan, done, body))
}

function isThere(plan: AssemblyPlan, done: readonly Step[], body: string): boolean {
  const puts = putting(plan, body)
  return puts.length === 0 || puts.some((one) => done.includes(one))
}

/** An opening that some step opens again is as it was left; any other is shut by the last of the steps that shut it. */
function isOpen(plan: AssemblyPlan, done: readonly Step[], body: string, opening: string): boolean {
  const is = (one: { readonly body: string; readonly opening: string }) =>
    one.body === body && one.opening === opening
  if (!plan.steps.some(({ opens }) => opens.some(is))) {
    const shuts = shutting(plan, body, opening)
    return shuts.length === 0 || shuts.some((one) => !done.includes(one))
  }
  let open = true
  for (const { shuts, opens } of done) {
    if (opens.some(is)) open = true
    if (shuts.some(is)) open = false
  }
  return open
}

/** One opening of the body is open, and one of whatever that body was put in. */
function wayOpen(
  plan: AssemblyPlan,
  done: readonly Step[],
  step: Step,
  body: string,
  through: string | null,
  seen: readonly string[] = [],
): boolean {
  if (seen.includes(body)) return true
  const ways = through === null ? (plan.openings.get(body) ?? []) : [through]
  const open = ways.length === 0 || ways.some((one) => isOpen(plan, done, body, one))
  const around = putting(plan, body).flatMap((put) => (put.into && put !== step ? [put.into.body] : []))
  return open && around.every((outer) => wayOpen(plan, done, step, outer, null, [...seen, body]))
}

const waysOpen = (plan: AssemblyPlan, done: readonly Step[], step: Step): boolean =>
  !step.into || wayOpen(plan, done, step, step.into.body, step.into.through)

function reachable(plan: AssemblyPlan, done: readonly Step[], step: Step): boolean {
  return step.reaches.every(({ text }) => {
    const [body = '', opening = ''] = text.split('.')
    if (plan.openings.get(body)?.includes(opening))
      return isThere(plan, done, body) && wayOpen(plan, done, step, body, opening)
    const puts = putting(plan, text)
    const meantBy = puts.length > 0 ? puts : plan.steps.filter(({ id }) => id === text)
    if (meantBy.length === 0) return true
    return (
      meantBy.some((one) => done.includes(one)) &&
      meantBy.every(
        (one) => !one.into || one === step || wayOpen(plan, done, step, one.into.body, one.into.through),
      )
    )
  })
}

/** Where an opening is opened again, what opens finds it shut, and what shuts finds it open. */
function takesTurns(plan: AssemblyPlan, done: readonly Step[], step: Step): boolean {
  const opened = (body: string, opening: string) =>
    plan.steps.some(({ opens }) => opens.some((one) => one.body === body && one.opening === opening))
  const opensToo = (body: string, opening: string) =>
    step.opens.some((one) => one.body === body && one.opening === opening)
  return (
    step.opens.every(({ body, opening }) => !isOpen(plan, done, body, opening)) &&
    step.shuts.every(
      ({ body, opening }) =>
        !opened(body, opening) || opensToo(body, opening) || isOpen(plan, done, body, opening),
    )
  )
}

/** Nothing is turned over while something lies loose, and what lies loose is put before it is fastened. */
function layUndisturbed(plan: AssemblyPlan, done: readonly Step[], step: Step): boolean {
  const fastens = (one: Step) => one.looseUntil.flatMap((target) => meant(plan, target))
  if (fastens(step).some((one) => one === step || done.includes(one))) return false
  return done.every((loose) =>
    fastens(loose).every((last) => {
      if (last === step || done.includes(last)) return true
      if (step.turn !== null) return step.turn === (loose.turn ?? last.turn)
      return step.from === null || step.from === (loose.from ?? last.from)
    }),
  )
}

/** Nothing that cures for longer than a step may wait is begun between it and the step it must soon follow. */
function waitsForNoCure(plan: AssemblyPlan, done: readonly Step[], step: Step): boolean {
  if (!step.cure) return true
  const cure = step.cure.mean.valueOf()
  const bodies = ({ put, into, onto }: Step) => [put?.part, into?.body, onto?.body].filter((one) => one)
  return plan.steps.every((hasty) => {
    const first = plan.steps[hasty.index - 1]
    if (hasty === step || hasty.within === null || first === undefined || first === step) return true
    if (done.includes(hasty) || !done.includes(first) || cure <= 60 * hasty.within) return true
    return !bodies(hasty).some((body) => bodies(step).includes(body))
  })
}
