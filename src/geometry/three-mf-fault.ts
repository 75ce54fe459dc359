/** Why a 3MF file holds no device that can be used. A `line` is of the file `path` within the package. */
export type ThreeMfFault =
  | { readonly fault: 'not a zip' }
  /** No model part among its files. */
  | { readonly fault: 'no model' }
  /** A file in it is not as the zip says; `what` says how. */
  | { readonly fault: 'damaged'; readonly path: string; readonly what: string }
  /** A file in it is locked by a password. */
  | { readonly fault: 'locked'; readonly path: string }
  /** The files in it are larger, unpacked, than is read. */
  | { readonly fault: 'too large'; readonly bytes: number; readonly most: number }
  | { readonly fault: 'too many triangles' | 'too many vertices' | 'too many bodies'; readonly most: number }
  | { readonly fault: 'no triangles' }
  /** A text neither in UTF-8 nor in UTF-16. */
  | { readonly fault: 'other encoding'; readonly path: string; readonly encoding: string }
  /** A document type, which could stand for text of any length. */
  | { readonly fault: 'document type'; readonly path: string }
  | { readonly fault: 'not XML'; readonly path: string; readonly line: number; readonly what: string }
  /** The outermost element is not the `model` of the core specification. */
  | { readonly fault: 'not a model'; readonly path: string; readonly root: string }
  /** An extension that must be understood and is not, by its namespace. */
  | { readonly fault: 'extension'; readonly extension: string }
  /** A number or index that is none. */
  | {
      readonly fault: 'bad number' | 'flat transform'
      readonly path: string
      readonly line: number
      readonly what: string
      readonly found: string
    }
  | {
      readonly fault: 'missing attribute'
      readonly path: string
      readonly line: number
      readonly what: string
      readonly of: string
    }
  | { readonly fault: 'doubled object'; readonly path: string; readonly line: number; readonly id: string }
  | { readonly fault: 'unknown unit'; readonly unit: string }
  | { readonly fault: 'unknown object' | 'empty object' | 'too far'; readonly id: string }
  /** An object that has itself among its components, or lies deeper than is read. */
  | { readonly fault: 'in itself'; readonly id: string }
  /** Objects of another file that the package does not hold. */
  | { readonly fault: 'missing file'; readonly path: string }

/** Most that is read of one 3MF file. */
export interface ThreeMfBounds {
  readonly mostUnpackedBytes: number
  readonly mostTriangles: number
  readonly mostVertices: number
  /** Meshes in their places, each use counted. */
  readonly mostBodies: number
}

/** Bounds used where none are given. Common practice, no source. */
export const usualThreeMfBounds: ThreeMfBounds = {
  mostUnpackedBytes: 400_000_000,
  mostTriangles: 5_000_000,
  mostVertices: 6_000_000,
  mostBodies: 100_000,
}
