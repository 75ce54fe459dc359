import type { ShaftLetter } from './fundamental-deviation.ts'

/** A tolerance class: position and grade, of a hole (`H7`) or a shaft (`m6`). */
export interface ToleranceClass {
  readonly text: string
  readonly gender: 'hole' | 'shaft'
  readonly letter: ShaftLetter
  readonly grade: number
}

/** What a drawing says of one size. */
export type SizeText =
  /** No tolerance of its own: the general one holds. */
  | { readonly kind: 'plain'; readonly nominalMm: number }
  | { readonly kind: 'class'; readonly nominalMm: number; readonly class: ToleranceClass }
  | {
      readonly kind: 'fit'
      readonly nominalMm: number
      readonly hole: ToleranceClass
      readonly shaft: ToleranceClass
    }
  | {
      readonly kind: 'deviations'
      readonly nominalMm: number
      readonly upperMm: number
      readonly lowerMm: number
    }
  | { readonly kind: 'limits'; readonly minMm: number; readonly maxMm: number }

/** A size as written. */
export type ReadSize = SizeText & {
  readonly text: string
  /** The sign for a diameter stood before it. */
  readonly isDiameter: boolean
  /** The unit written, or `mm` where none was. */
  readonly unit: string
  readonly unitFrom: 'written' | 'default'
}

/** Why a text is no toleranced size, where in it, and what was likely meant. */
export interface SizeFault {
  readonly fault:
    | 'empty'
    | 'not a size'
    /** A decimal comma. */
    | 'comma'
    /** No such position, or one that is not held here. */
    | 'letter'
    /** No such grade. */
    | 'grade'
    /** A fit of two holes or two shafts. */
    | 'same gender'
    /** Shaft before hole. */
    | 'order of fit'
    /** A single deviation, the other left out. */
    | 'one deviation'
    /** The lower limit lies above the upper. */
    | 'limits crossed'
    | 'left over'
  readonly text: string
  /** Characters before it, from 0. */
  readonly at: number
  readonly length: number
  readonly near: readonly string[]
}
