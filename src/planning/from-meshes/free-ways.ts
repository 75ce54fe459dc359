import { directions } from '../../geometry/relations/directions.ts'
import type { MeshStop, MoveDirection } from '../../model/from-meshes.ts'

/** The directions of which the stops are as asked, as a person is told them: along x, y and z; tilted ones only where none of those is. */
export function freeWays(
  stops: readonly (readonly MeshStop[])[],
  isFree: (stops: readonly MeshStop[], direction: MoveDirection) => boolean,
): readonly MoveDirection[] {
  const free = stops.flatMap((one, direction) => (isFree(one, direction) ? [direction] : []))
  const straight = free.filter((direction) => directions.includes(direction))
  return straight.length > 0 ? straight : free
}
