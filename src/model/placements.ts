import type { Place } from '../base/place.ts'
import type { Quantity } from '../base/quantity.ts'

/** Components of one value in one package, as the placements of a board list them. */
export interface ComponentGroup {
  readonly value: string
  readonly package: string
  readonly designators: readonly string[]
  /** The project's part; `null`: none was found (a diagnostic says so). */
  readonly part: string | null
  /** Line and column of the first in the file. */
  readonly at: Place
}

/** How the bare board is made, as said. */
export interface BoardMade {
  readonly at: Place
  readonly by: string | null
  /** Smallest features, mm. */
  readonly trace: Quantity | null
  readonly space: Quantity | null
  readonly hole: Quantity | null
}

/** The panel that boards are made on. */
export interface BoardPanel {
  /** Boards on one panel. */
  readonly boards: number
  readonly worked: readonly string[]
}

/** Pieces lost while soldering, bought on top. */
export type Attrition = { readonly fraction: number } | { readonly pieces: number }
