import { facingsOf, roomForFacings } from './facings.ts'
import { ownAxes } from './own-axes.ts'
import type { Solid } from './solid.ts'
import { dot, type Vector } from './vector.ts'

/** Axes nearer than this are one, in degrees. */
const sameDeg = 0.5
/** Most tilted axes of a device. */
export const mostTilted = 6

/**
 * The axes off x, y and z that the parts of a device have by their own shape (`ownAxes`), those that the most parts
 * have first; none where all parts lie along x, y and z. Axes within half a degree are one, that of the largest part.
 * Cost: O(triangles).
 */
export function tiltedAxes(solids: readonly Solid[]): readonly Vector[] {
  const room = roomForFacings()
  const found = solids
    .flatMap(({ corners }) => ownAxes(facingsOf(corners, room)))
    .sort((one, other) => other.areaMm2 - one.areaMm2)
  const merged: { along: Vector; parts: number; areaMm2: number }[] = []
  for (const { along, main, areaMm2 } of found) {
    const known = merged.find((one) => isSame(one.along, along))
    // What a part slides along is more likely its way in than what lies across.
    const parts = main ? 1 : 0.5
    if (known) {
      known.parts += parts
      known.areaMm2 += areaMm2
    } else merged.push({ along: forward(along), parts, areaMm2 })
  }
  return merged
    .sort((one, other) => other.parts - one.parts || other.areaMm2 - one.areaMm2)
    .slice(0, mostTilted)
    .map(({ along }) => along)
}

/** Whether two directions lie along one line. */
export function isSame(one: Vector, other: Vector): boolean {
  return Math.abs(dot(one, other)) > Math.cos((sameDeg * Math.PI) / 180)
}

/** Of the two ways along a line the one whose first large part is above zero. */
export function forward(along: Vector): Vector {
  const most = Math.max(...along.map(Math.abs))
  const first = along.find((part) => Math.abs(part) > 0.9 * most)!
  return first < 0 ? [-along[0], -along[1], -along[2]] : along
}
