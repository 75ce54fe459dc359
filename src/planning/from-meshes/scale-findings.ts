import { axes } from '../../geometry/relations/directions.ts'
import type { MeshFinding, Where } from '../../model/from-meshes.ts'
import type { Project } from '../../model/project.ts'
import type { Studied } from './study-meshes.ts'

/** A device none of whose parts is as large as this is in another unit, mm. Common practice, no source. */
const smallMm = 5
/** So is one of many parts none of which is smaller than this, mm. Common practice, no source. */
const largeMm = 120
/** Fewer bodies than this may all be large. */
const fewBodies = 8
/** Of at least so many bodies, so large a share apart from all others says that they do not stand in their places. */
const leastApart = 4
const mostShare = 0.75

/** A device of a size that none is, or whose parts do not meet; then nothing else the meshes show means anything. */
export function scaleFindings(
  project: Project,
  { bodies, solids }: Studied,
  apart: number,
): readonly MeshFinding[] {
  const low = axes.map((k) => Math.min(...solids.map((solid) => solid.low[k])))
  const [x, y, z] = axes.map((k) => Math.max(...solids.map((solid) => solid.high[k])) - low[k]!)
  const sizes = solids.map((solid) => Math.max(...axes.map((k) => solid.high[k] - solid.low[k])))
  const common = {
    kind: 'odd scale',
    at: project.meshes[0]!.at,
    sizeMm: [x!, y!, z!] satisfies Where,
    parts: bodies.length,
    apart,
  } as const
  if (Math.max(...sizes) < smallMm) return [{ ...common, why: 'small' }]
  if (bodies.length >= fewBodies && Math.min(...sizes) > largeMm) return [{ ...common, why: 'large' }]
  if (bodies.length >= leastApart && apart >= mostShare * bodies.length) return [{ ...common, why: 'apart' }]
  return []
}
