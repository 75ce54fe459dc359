import { upright } from '../../geometry/drawing/view.ts'
import { type Direction, opposite } from '../../geometry/relations/directions.ts'
import { sideOf } from '../from-meshes/side-of.ts'

/**
 * The side of a device that lies up on the bench when a step's `turn` is done: `underside up`, `rear up`, `on its left`
 * (then the right side is up), `upside down`; upright for words that name no side.
 */
export function attitudeOf(turn: string): Direction {
  const words = turn.trim().toLowerCase()
  if (/^upside[ -]down$/.test(words)) return opposite(upright)
  const up = /^(?:the |its )?(.+?)(?: side| face)? up(?:ward|wards)?$/.exec(words)
  const on = /^on (?:the |its )?(.+?)(?: side| face)?$/.exec(words)
  const side = up ? sideOf(up[1]!) : null
  const below = on ? sideOf(on[1]!) : null
  if (side !== null) return side
  return below === null ? upright : opposite(below)
}
