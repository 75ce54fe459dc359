import type { Place } from '../../base/place.ts'
import type { UndoWhy } from '../../model/repair.ts'

/** So many of these steps are undone. */
export interface UndoneSome {
  readonly steps: readonly number[]
  readonly least: number
}

/** One way to meet a need: all of these hold. */
export type UndoneWay = readonly UndoneSome[]

/** What must be undone before something can be: one of the ways is enough. */
export interface ApartNeed {
  readonly ways: readonly UndoneWay[]
  readonly at: Place
  readonly why: UndoWhy
  /** Whether parts touch or stop each other or a way out is shut; otherwise words of order alone ask for it. */
  readonly sure: boolean
}

/** Whether a way is met where so many of some steps are undone. */
export function isMet(ways: readonly UndoneWay[], undone: (step: number) => boolean): boolean {
  return metWay(ways, undone) !== undefined
}

/** The first way that is met; `undefined`: none is. */
export function metWay(ways: readonly UndoneWay[], undone: (step: number) => boolean): UndoneWay | undefined {
  return ways.find((way) => way.every(({ steps, least }) => steps.filter(undone).length >= least))
}
