import type { Lesson } from './proof-state.ts'

/** How much to try and with which seed. Effort is the largest number of schedules tried, backward passes included. */
export interface SearchOptions {
  readonly effort: number
  readonly seed: number
  /** Told now and then how many schedules were tried; never changes what is found. */
  readonly progress?: (tried: number, effort: number) => void
  /** Most dead ends met in a search for a proof that nothing finishes earlier; 0 where not given. Plain problems only. */
  readonly nodes?: number
  /** Asked now and then; true ends the search. What is found then depends on when it said so. */
  readonly stop?: () => boolean
  /** Told every lesson of the proof search; never changes what is found. */
  readonly learned?: (lesson: readonly Lesson[]) => void
  /** Whether a good bound and a proof are wanted; true where not said. Without, the bound may be weak; never changes what is found by breeding. */
  readonly bounded?: boolean
  /** An order of tasks to begin with, by rank, lowest first; problems that are not plain only. */
  readonly first?: ArrayLike<number>
}
