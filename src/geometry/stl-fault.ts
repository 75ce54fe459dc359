import type { FileKind } from './file-kind.ts'

/** Why a file holds no mesh that can be used. Triangles and lines count from 1, bytes are whole. */
export type StlFault =
  | { readonly fault: 'empty file' }
  | { readonly fault: 'too many bytes'; readonly bytes: number; readonly most: number }
  | { readonly fault: 'too many triangles'; readonly triangles: number; readonly most: number }
  | { readonly fault: 'no triangles' }
  /** Another kind of file, by what it opens with. */
  | { readonly fault: 'other kind'; readonly kind: FileKind }
  /** Neither the 84 bytes a binary file opens with, nor text that opens with `solid`. */
  | { readonly fault: 'not STL'; readonly bytes: number }
  /** The count in the header and the bytes behind it disagree; `room` is the number of whole triangles there. */
  | {
      readonly fault: 'wrong triangle count'
      readonly declared: number
      readonly room: number
      readonly spareBytes: number
    }
  | {
      readonly fault: 'unexpected word'
      readonly line: number
      readonly found: string
      readonly wanted: string
    }
  | { readonly fault: 'ends early'; readonly line: number; readonly wanted: string }
  /** A coordinate that is no number, endless, or past a kilometre. */
  | { readonly fault: 'bad coordinate'; readonly triangle: number; readonly found: string }

/** Most that is read of one file. */
export interface StlBounds {
  readonly mostBytes: number
  readonly mostTriangles: number
}

/** Bounds used where none are given: some 5 million triangles. Common practice, no source. */
export const usualStlBounds: StlBounds = { mostBytes: 300_000_000, mostTriangles: 5_000_000 }

/** Largest coordinate read, in millimetres: a kilometre. */
export const largestCoordinate = 1_000_000

/** Whether a coordinate can be used: a finite number within a kilometre. */
export function isUsable(coordinate: number): boolean {
  return Math.abs(coordinate) <= largestCoordinate
}
