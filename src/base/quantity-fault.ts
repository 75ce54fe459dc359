import type { DimensionName } from './dimension-names.ts'

/** Why a text is no quantity: facts alone; `perhaps` are whole texts that would read, likeliest first. */
export type QuantityFault =
  | { readonly fault: 'empty' }
  /** Longer than any quantity, in characters. */
  | { readonly fault: 'too long'; readonly text: string; readonly most: number }
  | { readonly fault: 'not a number'; readonly text: string }
  /** Infinite, not a number, or a fraction over zero. */
  | { readonly fault: 'not finite'; readonly text: string }
  /** More digits or a larger power of ten than are read exactly. */
  | {
      readonly fault: 'out of range'
      readonly text: string
      readonly digits: number
      readonly exponent: number
    }
  /** A comma between digits. */
  | { readonly fault: 'comma'; readonly text: string; readonly perhaps: readonly string[] }
  /** A number without its unit. */
  | { readonly fault: 'bare'; readonly text: string; readonly perhaps: readonly string[] }
  | {
      readonly fault: 'unknown unit'
      readonly text: string
      readonly unit: string
      readonly near: readonly string[]
    }
  /** More than one line in a unit. */
  | { readonly fault: 'two quotients'; readonly text: string; readonly unit: string }
  /** Several terms that are not all times. */
  | { readonly fault: 'not a time sum'; readonly text: string }
  /** Values of one range or list that measure different things, two currencies included. */
  | { readonly fault: 'two kinds'; readonly text: string; readonly units: readonly [string, string] }
  /** Times without spaces, or with `m` where minutes are meant. */
  | { readonly fault: 'run together'; readonly text: string; readonly perhaps: readonly string[] }
  | {
      readonly fault: 'wrong dimension'
      readonly text: string
      readonly wanted: readonly DimensionName[]
      /** Name of the dimension found, or its base dimensions. */
      readonly got: string
      readonly perhaps: readonly string[]
    }

/** Whether a reading failed. */
export function isFault<T extends object, F extends { readonly fault: string }>(read: T | F): read is F {
  return 'fault' in read
}
