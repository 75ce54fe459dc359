import type { OrderConstraint, Step } from '../../model/assembly.ts'
import type { BenchPlan } from './bench-plan.ts'
import type { Condition, Rule } from './rules.ts'

/** Turns constraints into rules over step numbers. */
export type Compiler = (constraint: OrderConstraint) => readonly Rule[]

/** A compiler for one assembly: a step's number is its place in the plan. */
export function ruleCompiler(bench: BenchPlan): Compiler {
  const numbers = new Map(bench.plan.steps.map(({ id }, number) => [id, number]))
  const number = (id: string): number => numbers.get(id)!
  const numbersOf = (steps: readonly Step[]): number[] => steps.map(({ id }) => number(id))
  const shut = (body: string, opening: string, is: boolean): Condition => ({
    kind: 'shut',
    is,
    shuts: numbersOf(bench.shuts(body, opening)),
    opens: numbersOf(bench.opens(body, opening)),
  })
  const open = (body: string, opening: string): Condition =>
    bench.opens(body, opening).length > 0
      ? shut(body, opening, false)
      : { kind: 'not all done', of: numbersOf(bench.shuts(body, opening)) }
  return (constraint) => {
    const step = number(constraint.step)
    switch (constraint.form) {
      case 'presence':
        return [{ step, any: [{ kind: 'some done', of: constraint.needs.map(number) }] }]
      case 'before':
        return constraint.of.map((id) => ({ step: number(id), any: [{ kind: 'some done', of: [step] }] }))
      case 'before last of':
        if (constraint.of.length === 1)
          return [{ step: number(constraint.of[0]!), any: [{ kind: 'some done', of: [step] }] }]
        return [{ step, any: [{ kind: 'not all done', of: constraint.of.map(number) }] }]
      case 'while open': {
        const ways = constraint.openings.map((opening) => open(constraint.body, opening))
        const once = constraint.once.map(number)
        return [{ step, any: once.length > 0 ? [...ways, { kind: 'not all done', of: once }] : ways }]
      }
      case 'not between': {
        const [from, until] = [[number(constraint.from)], [number(constraint.until)]]
        return [
          {
            step,
            any: [
              { kind: 'not all done', of: from },
              { kind: 'some done', of: until },
            ],
          },
        ]
      }
      case 'while shut':
        return [{ step, any: [shut(constraint.body, constraint.opening, true)] }]
    }
  }
}
