import type Fraction from 'fraction.js'
import type { Quantity } from '../base/quantity.ts'

/** What is said of a printed part for its print; `null`: silent. */
export interface PrintSaid {
  /** As it stands, mm. */
  readonly height: Quantity | null
  readonly footprint: readonly [Quantity, Quantity] | null
  /** Share of the finished volume. */
  readonly supports: Quantity | null
  /** 0 to 1. */
  readonly infill: Fraction | null
  /** Lines around each layer. */
  readonly walls: number | null
  /** Thinnest wall and smallest hole, mm. */
  readonly wall: Quantity | null
  readonly hole: Quantity | null
  /** Share by which it shrinks. */
  readonly shrink: Quantity | null
}

/** How one piece of a printed part prints, worked out; `null`: too little is known. */
export interface PrintPiece {
  readonly heightMm: number | null
  readonly footprintMm: readonly [number, number] | null
  /** Drawn from bottle or spool, supports included. */
  readonly materialMm3: number | null
  /** Alone on its job, without heating. */
  readonly seconds: number | null
  readonly worked: readonly string[]
  readonly assumed: readonly string[]
}

/** One run of a printer: what is on the plate, and its time where nobody stated one. */
export interface PrintRun {
  readonly loads: readonly { readonly part: string; readonly pieces: number }[]
  /** Of the highest piece; `null`: of one piece it is not known. */
  readonly heightMm: number | null
  readonly layers: number | null
  /** `null`: too little is known. */
  readonly seconds: number | null
  readonly worked: readonly string[]
  readonly assumed: readonly string[]
}
