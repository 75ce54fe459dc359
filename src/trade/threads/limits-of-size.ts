import type { ThreadClass, ThreadGender } from './thread.ts'

/** Smallest and largest size of one diameter; `null` where the standard leaves it open. */
export interface SizeLimits {
  readonly minMm: number | null
  readonly maxMm: number | null
}

/** What a gauge would find on a good thread. */
export interface ThreadLimits {
  readonly gender: ThreadGender
  readonly class: ThreadClass
  /** Whether the class was written, or is the usual one. */
  readonly classFrom: 'written' | 'usual'
  readonly major: SizeLimits
  readonly pitch: SizeLimits
  readonly minor: SizeLimits
  /** `formula` where at least one tolerance stands in no table: ask the maker of tap, mill or gauge. */
  readonly from: 'table' | 'formula'
  readonly worked: readonly string[]
}

/** Why a thread has no limits here. */
export interface NoThreadLimits {
  readonly fault: 'gender unknown' | 'gender differs' | 'outside the tables'
}
