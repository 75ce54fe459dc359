import type { MoveDirection } from './from-meshes.ts'

/** A line drawing, 60 mm wide for a step, 160 mm for a whole, and no higher than that. */
export interface LineDrawing {
  /** SVG, black on nothing. */
  readonly svg: string
  readonly sizeMm: number
  readonly heightMm: number
}

/** The picture of one step of a checklist. */
export interface StepPicture extends LineDrawing {
  /** The part of kind assembly; `null`: the device. */
  readonly of: string | null
  readonly step: string
  /** Place in the order of its assembly, from 1. */
  readonly number: number
  /** The sides of the device that are seen, the one that is turned most to the looker first. */
  readonly sees: readonly MoveDirection[]
  /** Whether all of it goes in by a straight way; else what has none is drawn in its seat. */
  readonly straight: boolean
}

/** The picture of an assembly taken apart. */
export interface WholePicture extends LineDrawing {
  /** The part of kind assembly; `null`: the device. */
  readonly of: string | null
}

/** Pictures from the meshes of a device. */
export interface Pictures {
  /** In the order of building: parts of kind assembly first, then the device. */
  readonly steps: readonly StepPicture[]
  /** Assemblies taken apart, in the order of building; those without an order, or with nothing to take apart, are left out. */
  readonly wholes: readonly WholePicture[]
  /** What there is too much of to draw anything; `null`: nothing. */
  readonly beyond: {
    readonly what: 'parts' | 'triangles'
    readonly found: number
    readonly most: number
  } | null
  /** Steps that put something of which no mesh stands in its assembled place. */
  readonly without: readonly { readonly of: string | null; readonly step: string }[]
}
