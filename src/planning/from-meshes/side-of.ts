import {
  axesWith,
  axisOf,
  type Direction,
  directionAlong,
  directionNames,
  directions,
  goesUp,
  vectorOf,
} from '../../geometry/relations/directions.ts'
import type { Vector } from '../../geometry/relations/vector.ts'

/**
 * The direction that words for a side mean; `null`: none that is known. Sides as one stands before the device: front
 * is towards the reader. Common practice, no source.
 */
const sides: Readonly<Record<string, Direction>> = {
  right: 0,
  left: 1,
  rear: 2,
  back: 2,
  behind: 2,
  front: 3,
  top: 4,
  above: 4,
  up: 4,
  bottom: 5,
  below: 5,
  underside: 5,
  down: 5,
}

/** Words for sides that a misspelt one may mean: of the same first letter, and but one letter missing, added or changed, or two in the wrong order. */
export function sidesNear(text: string): readonly string[] {
  const word = text.trim().toLowerCase()
  return Object.keys(sides).filter(
    (side) =>
      side !== word &&
      side.length > 2 &&
      side[0] === word[0] &&
      lettersBeyond(side, word) <= 1 &&
      lettersBeyond(word, side) <= 1,
  )
}

/** How many letters a word has that another has not, or has less often. */
function lettersBeyond(word: string, other: string): number {
  return [...other].reduce((rest, letter) => rest.replace(letter, ''), word).length
}

/** The direction of the device that a text names: an axis such as `-y`, or a side such as `top`; `null`: none. */
export function sideOf(text: string | null): Direction | null {
  if (text === null) return null
  const word = text.trim().toLowerCase()
  const axis = directions.find((direction) => directionNames[direction] === word)
  return axis ?? (Object.hasOwn(sides, word) ? sides[word]! : null)
}

/** How near to its largest part another is as large: 45 degrees are on both sides. */
const asLarge = 0.99

/** The directions off the axes that lead to one of the six sides: nearer to it than to any other, or as near. */
export function tiltedTo(side: Direction, tilted: readonly Vector[]): readonly Direction[] {
  return axesWith(tilted)
    .slice(axesWith([]).length)
    .flatMap((axis) => [directionAlong(axis, true), directionAlong(axis, false)])
    .filter((direction) => {
      const way = vectorOf(direction, tilted)
      const along = (goesUp(side) ? 1 : -1) * way[axisOf(side)]!
      return along >= asLarge * Math.max(...way.map(Math.abs))
    })
}
