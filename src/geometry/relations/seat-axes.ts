import { axes } from './directions.ts'
import { type FacingRoom, facingsOf } from './facings.ts'
import { ownAxes } from './own-axes.ts'
import type { Solid } from './solid.ts'
import type { Vector } from './vector.ts'

/** How far round the smaller part the surface of the larger is looked at, in mm. */
const aroundMm = 0.5

/**
 * The axes off x, y and z of the place in which the smaller of two parts sits in the larger: of a bore that a ball
 * lies in, of a slot that a nut slides in. The largest area first.
 * Method: the axes (`ownAxes`) of the larger part's surface in the box of the smaller one; of a triangle that only partly
 * lies there, as large a part as of its box. Cost: O(triangles).
 */
export function seatAxes(one: Solid, other: Solid, room: FacingRoom): readonly Vector[] {
  const [small, large] = boxVolume(one) <= boxVolume(other) ? [one, other] : [other, one]
  const near = nearTo(small, large)
  return [...ownAxes(facingsOf(near, room))].sort((a, b) => b.areaMm2 - a.areaMm2).map(({ along }) => along)
}

function boxVolume({ low, high }: Solid): number {
  return axes.reduce<number>((volume, k) => volume * (high[k] - low[k]), 1)
}

/** The triangles of a part near another, each shrunk to the share of it that lies there. */
function nearTo({ low, high }: Solid, { corners }: Solid): Float32Array {
  const near: number[] = []
  for (let o = 0; o < corners.length; o += 9) {
    let share = 1
    for (const k of axes) {
      const [a, b, c] = [corners[o + k]!, corners[o + 3 + k]!, corners[o + 6 + k]!]
      const [from, to] = [Math.min(a, b, c), Math.max(a, b, c)]
      const inside = Math.min(to, high[k] + aroundMm) - Math.max(from, low[k] - aroundMm)
      share *= inside < 0 ? 0 : to > from ? inside / (to - from) : 1
    }
    if (share === 0) continue
    const by = Math.sqrt(share)
    for (let i = 0; i < 9; i++) {
      const first = corners[o + (i % 3)]!
      near.push(first + by * (corners[o + i]! - first))
    }
  }
  return Float32Array.from(near)
}
