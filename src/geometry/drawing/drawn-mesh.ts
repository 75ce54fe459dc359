/**
 * A triangle mesh as a picture takes it, in millimetres, in assembled position: corners by number, three numbers a
 * point and three numbers a triangle. Neither order nor side of the triangles matters.
 */
export interface DrawnMesh {
  readonly positions: Float32Array
  readonly triangles: Uint32Array
}

/** Why no picture can be made. Parts count from 0. */
export type DrawingFault =
  | { readonly fault: 'nothing to draw' }
  | { readonly fault: 'too many parts'; readonly parts: number; readonly most: number }
  | { readonly fault: 'too many triangles'; readonly triangles: number; readonly most: number }
  /** A coordinate that is no number, endless, or past a kilometre. */
  | { readonly fault: 'bad coordinate'; readonly part: number }
  /** A triangle that names a corner the mesh does not have. */
  | { readonly fault: 'bad triangle'; readonly part: number }

/** Most that one picture takes. */
export const drawingBounds = { mostParts: 2000, mostTriangles: 8_000_000, farthestMm: 1e6 } as const
