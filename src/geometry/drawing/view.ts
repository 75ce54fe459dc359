import type { Point } from '../mesh.ts'
import type { Direction } from '../relations/directions.ts'

/** Where a picture is looked at from, in parallel: the turn about z and the height over the table, in degrees. */
export interface View {
  /** From the x axis towards the y axis to where the looker stands. */
  readonly turnDegrees: number
  /** Above the table; below it where negative. */
  readonly heightDegrees: number
  /** The side of the device that lies up on the table; upright where absent. */
  readonly up?: Direction
}

/** Directions of a view: to the right and upward on the paper, and towards the looker. */
export interface ViewAxes {
  readonly right: Point
  readonly up: Point
  readonly near: Point
}

/** Somewhat off the corner, so that no edge of a box falls on another. Common practice, no source. */
const turns: readonly number[] = [-52, 38, 128, 218]
const usualHeight = 31
const steepHeight = 56

/** Upright, as it is drawn. */
export const upright: Direction = 4

/** Views that are tried, the usual ones first: four from above, four steeply from above, four from below. */
export function usualViews(up: Direction): readonly View[] {
  return [usualHeight, steepHeight, -usualHeight].flatMap((heightDegrees) =>
    turns.map((turnDegrees) => ({ turnDegrees, heightDegrees, up })),
  )
}

/** From the table to a device that lies on it with a side up, turned over the shortest way. */
const laid: readonly ((onTable: Point) => Point)[] = [
  ([x, y, z]) => [z, y, -x],
  ([x, y, z]) => [-z, y, x],
  ([x, y, z]) => [x, z, -y],
  ([x, y, z]) => [x, -z, y],
  ([x, y, z]) => [x, y, z],
  ([x, y, z]) => [-x, y, -z],
]

/** The axes of a view in the device's own, each of length 1, at right angles. */
export function axesOf({ turnDegrees, heightDegrees, up = upright }: View): ViewAxes {
  const [turn, height] = [(turnDegrees * Math.PI) / 180, (heightDegrees * Math.PI) / 180]
  const [sin, cos, rise, reach] = [Math.sin(turn), Math.cos(turn), Math.sin(height), Math.cos(height)]
  const inDevice = laid[up]!
  return {
    right: inDevice([-sin, cos, 0]),
    up: inDevice([-rise * cos, -rise * sin, reach]),
    near: inDevice([reach * cos, reach * sin, rise]),
  }
}
