import { groupByEach } from '../base/group-by.ts'
import type { AssemblyPlan, OpeningAt, Step } from '../model/assembly.ts'
import type { Target } from '../model/project.ts'

/** What the assembly looks like between two steps. */
export interface Bench {
  readonly plan: AssemblyPlan
  /** Place in the order of each step. */
  readonly turn: ReadonlyMap<string, number>
  /** Bodies some step puts, by part and by instance name, with those steps. */
  readonly puts: ReadonlyMap<string, readonly Step[]>
  /** Steps that shut each opening, and whether some step opens it again. */
  readonly shutters: ReadonlyMap<string, readonly Step[]>
  readonly reopened: ReadonlySet<string>
  readonly done: Set<Step>
  /** Openings shut since the last time they were opened. */
  readonly shut: Set<string>
}

/** The bench before the first step: nothing put, every opening open. */
export function emptyBench(plan: AssemblyPlan, order: readonly string[]): Bench {
  return {
    plan,
    turn: new Map(order.map((id, i) => [id, i])),
    puts: byKey(plan.steps, (step) => (step.put ? [step.put.part, ...step.instances] : [])),
    shutters: byKey(plan.steps, (step) => step.shuts.map(keyOf)),
    reopened: new Set(plan.steps.flatMap((step) => step.opens.map(keyOf))),
    done: new Set(),
    shut: new Set(),
  }
}

/** Does a step: what it puts is there, and at its end its openings are opened, then shut. */
export function finishStep(bench: Bench, step: Step): void {
  bench.done.add(step)
  for (const opening of step.opens) bench.shut.delete(keyOf(opening))
  for (const opening of step.shuts) bench.shut.add(keyOf(opening))
}

/** Whether a body is on the bench: it was put, or is never put and so is there from the start. */
export function isThere(bench: Bench, body: string): boolean {
  const putting = bench.puts.get(body)
  return !putting || putting.some((step) => bench.done.has(step))
}

/**
 * Whether an opening can be passed now. One that no step opens again counts as open until the last of the steps
 * that shut it is done; one that is opened again is as the last step left it.
 */
export function isOpen(bench: Bench, body: string, opening: string): boolean {
  const key = keyOf({ body, opening })
  if (bench.reopened.has(key)) return !bench.shut.has(key)
  const shutters = bench.shutters.get(key)
  return !shutters?.every((step) => bench.done.has(step))
}

/**
 * The first body on the way into `body` that lets nothing pass, or `null`: the body itself through one of the
 * openings allowed, then each enclosure it has been put into, through any opening.
 */
export function blockedBy(
  bench: Bench,
  body: string,
  through: string | null,
  seen: readonly string[] = [],
): string | null {
  if (seen.includes(body)) return null
  const openings = through === null ? (bench.plan.openings.get(body) ?? []) : [through]
  if (openings.length > 0 && !openings.some((opening) => isOpen(bench, body, opening))) return body
  const around = [...bench.done].filter((step) => step.into && putsBody(step, body))
  const ways = around.map((step) => blockedBy(bench, step.into!.body, null, [...seen, body]))
  // Of several copies of the body one that can be reached is enough.
  return ways.length === 0 || ways.includes(null) ? null : ways[0]!
}

/** Steps of this assembly that a target stands for; none where it lies elsewhere. */
export function stepsOf(bench: Bench, target: Target): readonly Step[] {
  if (target.kind === 'work') return []
  if (target.kind === 'part') return bench.puts.get(target.id) ?? []
  if (target.assembly !== bench.plan.of) return []
  if (target.kind === 'step') return bench.plan.steps.filter((step) => step.id === target.id)
  return bench.shutters.get(keyOf(target)) ?? []
}

/** `body.opening`. */
export function keyOf({ body, opening }: Pick<OpeningAt, 'body' | 'opening'>): string {
  return `${body}.${opening}`
}

function putsBody(step: Step, body: string): boolean {
  return step.put?.part === body || step.instances.includes(body)
}

function byKey(steps: readonly Step[], keys: (step: Step) => readonly string[]): Map<string, Step[]> {
  return groupByEach(steps, keys)
}
