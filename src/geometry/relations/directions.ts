/** The six straight ways a part may move: 0 to 5 for +x, -x, +y, -y, +z, -z. */
export type Direction = 0 | 1 | 2 | 3 | 4 | 5

/** One of the three axes: 0 to 2 for x, y, z. */
export type Axis = 0 | 1 | 2

/** All six directions. */
export const directions: readonly Direction[] = [0, 1, 2, 3, 4, 5]

/** The three axes. */
export const axes: readonly Axis[] = [0, 1, 2]

/** Directions as they are written. */
export const directionNames = ['+x', '-x', '+y', '-y', '+z', '-z'] as const

/** The way up or down an axis. */
export function directionAlong(axis: Axis, up: boolean): Direction {
  return (2 * axis + (up ? 0 : 1)) as Direction
}

/** The axis of a direction. */
export function axisOf(direction: Direction): Axis {
  return (direction >> 1) as Axis
}

/** Whether a direction goes up its axis. */
export function goesUp(direction: Direction): boolean {
  return direction % 2 === 0
}

/** The opposite way. */
export function opposite(direction: Direction): Direction {
  return (direction ^ 1) as Direction
}
