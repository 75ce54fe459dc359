/** Why a 3MF file holds no device that can be used. */
export type ThreeMfFault =
  | { readonly fault: 'not a zip' }
  /** No model part among its files. */
  | { readonly fault: 'no model' }
  /** The files in it are larger, unpacked, than is read. */
  | { readonly fault: 'too large'; readonly bytes: number; readonly most: number }
  | { readonly fault: 'too many triangles'; readonly most: number }
  | { readonly fault: 'no triangles' }
  /** A number or index that is none; `line` is of the model text. */
  | { readonly fault: 'bad number'; readonly what: string; readonly found: string; readonly line: number }
  | { readonly fault: 'unknown unit'; readonly unit: string }
  | { readonly fault: 'unknown object'; readonly id: string }
  /** An object that has itself among its components, or lies deeper than is read. */
  | { readonly fault: 'in itself'; readonly id: string }
  /** Components in another file of the package, as a production extension allows. */
  | { readonly fault: 'several files'; readonly path: string }

/** Most that is read of one 3MF file. */
export interface ThreeMfBounds {
  readonly mostUnpackedBytes: number
  readonly mostTriangles: number
}

/** Bounds used where none are given. Common practice, no source. */
export const usualThreeMfBounds: ThreeMfBounds = {
  mostUnpackedBytes: 400_000_000,
  mostTriangles: 5_000_000,
}
