import type { Step } from '../model/assembly.ts'

/** A step that turns the work over, and how many steps of the order come before it. */
export interface TurnedOver {
  readonly step: Step
  readonly at: number
  readonly turn: string
}

/** Steps that turn the work over: the first side that is named is how it lies, each other one is a turn. */
export function turnsOver(steps: readonly Step[]): readonly TurnedOver[] {
  let lies: string | null = null
  return steps.flatMap((step, at) => {
    const { turn } = step
    const turns = turn !== null && lies !== null && turn !== lies
    lies = turn ?? lies
    return turns ? [{ step, at, turn }] : []
  })
}
