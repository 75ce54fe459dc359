import { type Relations, touches } from '../../geometry/relations/relate-solids.ts'
import type { OrderConstraint, Step } from '../../model/assembly.ts'
import type { MeshMove } from '../../model/from-meshes.ts'
import { bodiesThere, type LaidPlan } from './lay-out-bodies.ts'
import { leastChoices } from './least-choices.ts'
import { bringers, type OpenWay, waysIn } from './ways-open.ts'

/** Most choices of one stop for each direction; past it the step is held to the direction that the fewest stop. */
const mostChoices = 2_000

/**
 * What the meshes ask of the order of the steps of one assembly, geometry first:
 * a step is done before the last of every least choice of one stop for each direction in which it can go in;
 * the base is first; a fastener follows what it touches; what goes in without
 * a typed place touches something that is there.
 * Source: the directional blocking graph of Wilson and Latombe (AAAI-92), here as sets for a sequencer; base first and
 * fasteners last: common practice, no source.
 */
export function compileMoves(
  laid: LaidPlan,
  moves: readonly MeshMove[],
  relations: Relations,
  base: string | null,
): readonly OrderConstraint[] {
  const by = bringers(moves)
  const steps = new Map(laid.plan.steps.map((step) => [step.id, step]))
  const into: Into = { found: new Map(), at: (step) => steps.get(step)!.at }
  for (const move of moves) stopRules(laid, move, by, into)
  for (const { step } of moves) if (base !== null) beforeLastOf(base, [step], into)
  for (const move of moves) if (move.role === 'fastener') followTouched(move, moves, relations, into)
  for (const move of moves)
    if (move.role === 'put')
      touchSomething(laid, move, moves, { relations, base, into }, steps.get(move.step)!)
  return [...into.found.values()]
}

interface Into {
  readonly found: Map<string, OrderConstraint>
  readonly at: (step: string) => OrderConstraint['at']
}

function beforeLastOf(step: string, of: readonly string[], into: Into): void {
  if (of.includes(step)) return
  const sorted = [...of].sort()
  const form = of.length === 1 ? ('before' as const) : ('before last of' as const)
  const key = JSON.stringify([step, sorted])
  if (!into.found.has(key)) into.found.set(key, { form, step, of: sorted, at: into.at(step), why: 'model' })
}

function stopRules(laid: LaidPlan, move: MeshMove, by: ReadonlyMap<number, MeshMove>, into: Into): void {
  const open = waysIn(laid, move, by)
  if (open.length === 0) return
  const choices = leastChoices(
    open.map(({ steps }) => steps),
    mostChoices,
  )
  // With a direction that nothing stops there is no choice at all.
  for (const choice of choices ?? easiest(open)) beforeLastOf(move.step, choice, into)
}

/** Before each of the steps that stop it in the direction that the fewest stop: more than is needed, and enough. */
function easiest(open: readonly OpenWay[]): readonly (readonly string[])[] {
  const least = open.reduce((best, one) => (one.steps.length < best.steps.length ? one : best))
  return least.steps.map((step) => [step])
}

function touching(move: MeshMove, other: MeshMove, relations: Relations): boolean {
  return move.bodies.some((a) => other.bodies.some((b) => touches(relations, a, b)))
}

function followTouched(move: MeshMove, moves: readonly MeshMove[], relations: Relations, into: Into): void {
  for (const other of moves) {
    if (other.role !== 'put' || other.step === move.step) continue
    // What the fastener must go in before cannot be what it follows.
    const earlier = into.found.has(JSON.stringify([move.step, [other.step]]))
    if (!earlier && touching(move, other, relations)) beforeLastOf(other.step, [move.step], into)
  }
}

function touchSomething(
  { plan, there }: LaidPlan,
  move: MeshMove,
  moves: readonly MeshMove[],
  {
    relations,
    base,
    into,
  }: { readonly relations: Relations; readonly base: string | null; readonly into: Into },
  step: Step,
): void {
  if (step.into || step.onto || step.id === base) return
  // Where what lies there from the start has no mesh, it may touch that.
  if (base === null && bodiesThere(plan).length > there.length) return
  if (there.some((body) => move.bodies.some((own) => touches(relations, own, body)))) return
  const near = moves.filter(
    (other) => other.role === 'put' && other.step !== move.step && touching(move, other, relations),
  )
  const needs = [...new Set(near.map((other) => other.step))].sort()
  if (needs.length === 0) return
  into.found.set(JSON.stringify(['touches', move.step, needs]), {
    form: 'presence',
    step: move.step,
    needs,
    at: step.at,
    why: 'model',
  })
}
