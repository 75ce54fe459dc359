import type { Point } from '../mesh.ts'
import { leadingEnd } from './leading-end.ts'
import { type Lift, liftParts, movedBy, type Way } from './lift-parts.ts'
import type { Shape } from './shape.ts'

/** A part of a picture; what is left out is not among them. */
export interface PicturePart {
  readonly shape: Shape
  /** How it comes in; `null`: it is there already. */
  readonly way: Way | null
  /** Number of a part before it that it moves with as one body, by whose way it comes in; absent: none. */
  readonly fixedTo?: number
  /** A number written beside it, and beside no other of the same number; absent: none. */
  readonly label?: number
  /** Drawn heavy and hatched, with an arrow: what the picture is about. */
  readonly goesIn: boolean
}

/** A box along the axes, in millimetres. */
export interface Box {
  readonly lowMm: Point
  readonly highMm: Point
}

/** A part with where it is drawn. */
export interface PosedPart extends PicturePart {
  readonly lift: Lift
  /** From its place in the mesh to where it is drawn, in millimetres. */
  readonly moved: Point
  /** The box of all that moves with it as one. */
  readonly body: Box
  /** The box around that end of it which goes in first. */
  readonly lead: Box
}

/** Gap between a moved part and what it hangs clear of: its own largest side, within these shares of the device. */
const gapShares = { least: 0.09, most: 0.2 } as const

/** Parts with where each is drawn. Needs: parts in the order they go in. */
export function posedParts(parts: readonly PicturePart[]): readonly PosedPart[] {
  const members = parts.map((_, number) => parts.filter((one, i) => i === number || one.fixedTo === number))
  const bodies = members.map(boxAround)
  const device = largestSide(boxAround(parts))
  const lifts = liftParts(
    parts.map((part, i) => ({
      lowMm: part.shape.lowMm,
      highMm: part.shape.highMm,
      body: bodies[i]!,
      way: part.way,
      fixedTo: part.fixedTo ?? null,
      gapMm: Math.max(gapShares.least * device, Math.min(gapShares.most * device, largestSide(bodies[i]!))),
    })),
  )
  return parts.map((part, i) => {
    const body = bodies[i]!
    const shapes = members[i]!.map(({ shape }) => shape).filter(({ mesh }) => mesh.points.length > 0)
    const lead = part.way && shapes.length > 0 ? leadingEnd(shapes, part.way.from) : body
    return { ...part, lift: lifts[i]!, moved: movedBy(lifts[i]!), body, lead }
  })
}

function boxAround(parts: readonly PicturePart[]): Box {
  const low = (axis: 0 | 1 | 2): number =>
    parts.reduce((least, { shape }) => Math.min(least, shape.lowMm[axis]), Number.POSITIVE_INFINITY)
  const high = (axis: 0 | 1 | 2): number =>
    parts.reduce((most, { shape }) => Math.max(most, shape.highMm[axis]), Number.NEGATIVE_INFINITY)
  return { lowMm: [low(0), low(1), low(2)], highMm: [high(0), high(1), high(2)] }
}

function largestSide({ lowMm, highMm }: Box): number {
  return Math.max(highMm[0] - lowMm[0], highMm[1] - lowMm[1], highMm[2] - lowMm[2])
}
