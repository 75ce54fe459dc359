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
