/** How the surface runs over an edge. */
export const bends = {
  /** Two triangles that go on into each other. */
  smooth: 0,
  /** Two triangles at an angle that a person sees as an edge, or more than two. */
  sharp: 1,
  /** One triangle alone: a leak. */
  open: 2,
} as const

/** Every edge of a mesh once, by the numbers of its points. */
export interface EdgeTable {
  readonly count: number
  readonly from: Uint32Array
  readonly to: Uint32Array
  /** The third point of the first and second triangle at the edge; -1: there is none. */
  readonly one: Int32Array
  readonly two: Int32Array
  readonly bend: Uint8Array
}
