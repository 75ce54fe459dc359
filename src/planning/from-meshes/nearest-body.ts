import { axes } from '../../geometry/relations/directions.ts'
import { boxGap, nearestGap } from '../../geometry/relations/nearest-gap.ts'
import { touches } from '../../geometry/relations/relate-solids.ts'
import type { Studied } from './study-meshes.ts'

/** A body and how far it is away. */
export interface NearestBody {
  readonly body: number
  readonly mm: number
}

/** Gaps up to this are drawn play or glue, mm: what is no further away is not apart from everything. */
const apartMm = 0.5
/** A body no larger than this is a speck, as of a part saved in metres: it is too small to touch anything, mm. */
const speckMm = 1

/** The body nearest to one that touches nothing; `null`: it touches something, or nearly. */
export function apartFromAll({ bodies, solids, relations }: Studied, body: number): NearestBody | null {
  const others = bodies.map((_, other) => other).filter((other) => other !== body)
  if (others.some((other) => touches(relations, body, other))) return null
  const byBox = others
    .map((other) => ({ body: other, mm: boxGap(solids[body]!, solids[other]!) }))
    .sort((a, b) => a.mm - b.mm || a.body - b.body)
  let nearest: NearestBody | null = null
  for (const one of byBox) {
    if (nearest && nearest.mm <= one.mm) break
    const mm = nearestGap(solids[body]!, solids[one.body]!)
    if (!nearest || mm < nearest.mm) nearest = { body: one.body, mm }
  }
  const { low, high } = solids[body]!
  const size = Math.max(...axes.map((k) => high[k] - low[k]))
  return nearest && (nearest.mm > apartMm || size <= speckMm) ? nearest : null
}
