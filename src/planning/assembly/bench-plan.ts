import type { AssemblyPlan, Step } from '../../model/assembly.ts'
import type { Target } from '../../model/project.ts'

/** The steps of one assembly by what they put, shut and open. */
export interface BenchPlan {
  readonly plan: AssemblyPlan
  /** Steps that put a part or a named instance. */
  readonly puts: (name: string) => readonly Step[]
  /** Steps that shut an opening. */
  readonly shuts: (body: string, opening: string) => readonly Step[]
  /** Steps that open it again. */
  readonly opens: (body: string, opening: string) => readonly Step[]
  /** Steps of this assembly that a target stands for: a part for the steps that put it, an opening for those that shut it. */
  readonly stepsOf: (target: Target) => readonly Step[]
}

/** Indexes the steps of one assembly. */
export function benchPlan(plan: AssemblyPlan): BenchPlan {
  const puts = byKey(plan.steps, (step) => (step.put ? [step.put.part, ...step.instances] : []))
  const shuts = byKey(plan.steps, (step) => step.shuts.map(({ body, opening }) => key(body, opening)))
  const opens = byKey(plan.steps, (step) => step.opens.map(({ body, opening }) => key(body, opening)))
  const shutting = (body: string, opening: string) => shuts.get(key(body, opening)) ?? []
  const putting = (name: string) => puts.get(name) ?? []
  return {
    plan,
    puts: putting,
    shuts: shutting,
    opens: (body, opening) => opens.get(key(body, opening)) ?? [],
    stepsOf: (target) => {
      if (target.kind === 'work') return []
      if (target.kind === 'part') return putting(target.id)
      if (target.assembly !== plan.of) return []
      if (target.kind === 'opening') return shutting(target.body, target.opening)
      return plan.steps.filter(({ id }) => id === target.id)
    },
  }
}

const key = (body: string, opening: string): string => JSON.stringify([body, opening])

function byKey(steps: readonly Step[], keys: (step: Step) => readonly string[]): Map<string, Step[]> {
  const result = new Map<string, Step[]>()
  for (const step of steps) {
    for (const name of new Set(keys(step))) result.set(name, [...(result.get(name) ?? []), step])
  }
  return result
}
