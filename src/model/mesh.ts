import type { Place } from '../base/place.ts'

/** What the mesh of a part says of it, in millimetres. */
export interface MeshFacts {
  /** As the person named it. */
  readonly file: string
  readonly triangles: number
  /** `null` where the mesh has leaks or no room inside, so that its volume means nothing. */
  readonly volumeMm3: number | null
  readonly areaMm2: number
  readonly boxMm: readonly [x: number, y: number, z: number]
  /** Room below its overhangs as it stands, down to the lowest point. */
  readonly belowMm3: number
  readonly worked: readonly string[]
}

/** Triangles of a part where they stand in the device, as one file or one object of a file gave them. */
export interface PlacedMesh {
  readonly part: string
  /** Nine numbers a triangle, in millimetres and device coordinates. */
  readonly corners: Float32Array
  /** Whether several shells in it may be several copies of the part; else it is one copy. */
  readonly mayHoldCopies: boolean
  /** Where the person said that it stands there. */
  readonly at: Place
}
