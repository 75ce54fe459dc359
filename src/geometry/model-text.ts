import type { Transform } from './transform.ts'

/** An object used in a place. */
export interface Used {
  readonly id: string
  /** The model of the package that holds it, as `packagePath` gives it; `null`: the one that says so. */
  readonly path: string | null
  /** In millimetres. */
  readonly transform: Transform | null
  readonly partNumber: string | null
}

/** An object of a model: triangles, or other objects in their places. */
export interface ModelObject {
  readonly name: string | null
  readonly partNumber: string | null
  /** Whether it is of the device; supports and helpers of printing are not. */
  readonly counts: boolean
  /** x, y, z of each corner in millimetres, and three corners a triangle. */
  readonly vertices: readonly number[]
  readonly triangles: readonly number[]
  readonly components: readonly Used[]
}

/** A model of a package as written. */
export interface ModelText {
  readonly objects: ReadonlyMap<string, ModelObject>
  readonly items: readonly Used[]
}

/** What was read so far of all models of a package. */
export interface Totals {
  triangles: number
  vertices: number
}
