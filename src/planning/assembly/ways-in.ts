import type { Place } from '../../base/place.ts'
import type { OrderConstraint, Step, VoidRule, Why } from '../../model/assembly.ts'
import type { BenchPlan } from './bench-plan.ts'

/** What a step must pass, and which statement says so. */
export interface WayIn {
  readonly step: Step
  readonly body: string
  /** The opening allowed; `null`: any. */
  readonly through: string | null
  readonly at: Place
  readonly why: Why
}

/** Constraints and rules that say nothing, as they are gathered. */
export interface Gathered {
  readonly constraints: OrderConstraint[]
  readonly void: VoidRule[]
}

/**
 * Gathers what keeps the way into a body open: one opening of the body, and one of each body it has been put in.
 * A body that is put `on` another passes no opening, so what is around that other one is not around it. Where
 * several steps put a body, the enclosure of each copy counts from when that copy is put; nothing tells which copy
 * is meant, so all of them must stay open.
 */
export function gatherWayIn(bench: BenchPlan, way: WayIn, into: Gathered): void {
  passBody(bench, way, { body: way.body, through: way.through, once: [] }, into, [])
}

interface Around {
  readonly body: string
  readonly through: string | null
  readonly once: readonly string[]
}

function passBody(
  bench: BenchPlan,
  way: WayIn,
  around: Around,
  into: Gathered,
  seen: readonly string[],
): void {
  const { body, through, once } = around
  if (seen.includes(body)) return
  const openings = through === null ? (bench.plan.openings.get(body) ?? []) : [through]
  if (openings.length > 0) passOneOf(bench, way, around, openings, into)
  const puts = bench.puts(body)
  for (const put of puts) {
    if (!put.into || put === way.step) continue
    const next = { body: put.into.body, through: null, once: puts.length > 1 ? [...once, put.id] : once }
    passBody(bench, way, next, into, [...seen, body])
  }
}

function passOneOf(
  bench: BenchPlan,
  way: WayIn,
  { body, once }: Around,
  openings: readonly string[],
  into: Gathered,
): void {
  const { at, why } = way
  const step = way.step.id
  const never = openings.find((opening) => bench.shuts(body, opening).length === 0)
  if (never !== undefined) {
    into.void.push({ step, body, opening: never, at, why })
    return
  }
  if (openings.some((opening) => bench.opens(body, opening).length > 0)) {
    into.constraints.push({ form: 'while open', step, body, openings, once, at, why })
    return
  }
  const shutters = openings.flatMap((opening) => bench.shuts(body, opening)).map(({ id }) => id)
  const of = [...new Set([...shutters, ...once])]
  // A shut takes effect at the step's end: what shuts is never shut out itself.
  if (!of.includes(step)) into.constraints.push({ form: 'before last of', step, of, at, why })
}
