import type { Vector } from './vector.ts'

/**
 * A straight way a part may move, by number: 0 to 5 for +x, -x, +y, -y, +z, -z; from 6 on two for each tilted axis of a
 * device, the even one forward.
 */
export type Direction = number

/** One of the three axes of a lattice: 0 to 2 for x, y, z. */
export type Axis = 0 | 1 | 2

/** The six directions along x, y and z. */
export const directions: readonly Direction[] = [0, 1, 2, 3, 4, 5]

/** The three axes. */
export const axes: readonly Axis[] = [0, 1, 2]

/** The six directions as they are written. */
export const directionNames: readonly string[] = ['+x', '-x', '+y', '-y', '+z', '-z']

/** All axes of a device by number: x, y, z, then the tilted ones. */
export function axesWith(tilted: readonly Vector[]): readonly number[] {
  return [...axes, ...tilted.map((_, k) => axes.length + k)]
}

/** The way up or down an axis. */
export function directionAlong(axis: number, up: boolean): Direction {
  return 2 * axis + (up ? 0 : 1)
}

/** The number of the axis of a direction: 0 to 2, from 3 on tilted. */
export function axisOf(direction: Direction): number {
  return direction >> 1
}

/** Whether a direction goes up its axis. */
export function goesUp(direction: Direction): boolean {
  return direction % 2 === 0
}

/** The opposite way. */
export function opposite(direction: Direction): Direction {
  return direction ^ 1
}

/** Where a direction leads. */
export function vectorOf(direction: Direction, tilted: readonly Vector[]): Vector {
  const axis = axisOf(direction)
  const sign = goesUp(direction) ? 1 : -1
  if (axis >= axes.length) {
    const [x, y, z] = tilted[axis - axes.length]!
    return [sign * x, sign * y, sign * z]
  }
  return [axis === 0 ? sign : 0, axis === 1 ? sign : 0, axis === 2 ? sign : 0]
}
