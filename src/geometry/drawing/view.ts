import type { Point } from '../mesh.ts'

/** Where a picture is looked at from, in parallel: the turn about z and the height over the table, in degrees. */
export interface View {
  /** From the x axis towards the y axis to where the looker stands. */
  readonly turnDegrees: number
  /** Above the table; below it where negative. */
  readonly heightDegrees: number
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

/** Views that are tried, the usual ones first: four from above, four steeply from above, four from below. */
export const usualViews: readonly View[] = [usualHeight, steepHeight, -usualHeight].flatMap((heightDegrees) =>
  turns.map((turnDegrees) => ({ turnDegrees, heightDegrees })),
)

/** The axes of a view, each of length 1, at right angles. */
export function axesOf({ turnDegrees, heightDegrees }: View): ViewAxes {
  const [turn, height] = [(turnDegrees * Math.PI) / 180, (heightDegrees * Math.PI) / 180]
  const [sin, cos, rise, reach] = [Math.sin(turn), Math.cos(turn), Math.sin(height), Math.cos(height)]
  return {
    right: [-sin, cos, 0],
    up: [-rise * cos, -rise * sin, reach],
    near: [reach * cos, reach * sin, rise],
  }
}
