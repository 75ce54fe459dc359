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
}

/** Pictures from the meshes of a device. */
export interface Pictures {
  /** In the order of building: parts of kind assembly first, then the device. */
  readonly steps: readonly StepPicture[]
  /** The device taken apart; `null`: it has no order yet, or nothing to take apart. */
  readonly whole: LineDrawing | null
  /** What there is too much of to draw anything; `null`: nothing. */
  readonly beyond: {
    readonly what: 'parts' | 'triangles'
    readonly found: number
    readonly most: number
  } | null
  /** Steps that put something of which no mesh stands in its assembled place. */
  readonly without: readonly { readonly of: string | null; readonly step: string }[]
}
