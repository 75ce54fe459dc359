import { prcModel } from '../diagnostics/catalogue/prc-model.ts'
import { srcAttached } from '../diagnostics/catalogue/src-attached.ts'
import { type MeshMeasure, measureMesh } from '../geometry/measure-mesh.ts'
import type { Mesh } from '../geometry/mesh.ts'
import { overhangOf } from '../geometry/overhang-of.ts'
import { readStl } from '../geometry/read-stl.ts'
import type { StlFault } from '../geometry/stl-fault.ts'
import type { MeshFacts } from '../model/mesh.ts'
import type { Spot } from '../source/spot.ts'
import type { Context } from './context.ts'

/** Faces that lean out further than this from the vertical want support. Source: four public design tables, 45 to 50. */
const steepestDegrees = 45

/**
 * What the mesh that a part names says; `null` where none is named or it cannot be read. Each file is read and told of
 * once, where it is first named.
 */
export function meshAt(context: Context, part: string, spot: Spot<string> | null): MeshFacts | null {
  const name = spot?.text.trim()
  const attached = name === undefined ? undefined : context.attached.get(name)
  if (!spot || name === undefined || !attached) return null
  const known = context.meshes.get(name)
  if (known !== undefined) return known
  const mesh = readStl(attached.bytes)
  const facts =
    'fault' in mesh ? unread(context, part, spot, attached.shown, mesh) : factsOf(context, spot, mesh)
  context.meshes.set(name, facts)
  return facts
}

function unread(context: Context, part: string, spot: Spot<string>, shown: string, why: StlFault): null {
  if (why.fault === 'unexpected word' || why.fault === 'ends early')
    context.report(
      srcAttached.meshLine,
      { file: shown, line: why.line, column: 1, length: 0 },
      { part, file: spot.text.trim(), named: spot.at, why },
    )
  else context.report(srcAttached.meshUnread, spot.at, { file: spot.text.trim(), why })
  return null
}

/** Longest sides that a part may have. Common practice, no source. */
const [leastLongestMm, mostLongestMm] = [0.001, 10_000]

function factsOf(context: Context, spot: Spot<string>, mesh: Mesh): MeshFacts | null {
  const file = spot.text.trim()
  const measure = measureMesh(mesh)
  const longestMm = Math.max(...measure.box.sizeMm)
  if (longestMm < leastLongestMm || longestMm > mostLongestMm) {
    const fault = longestMm > mostLongestMm ? 'too long' : 'too small'
    context.report(srcAttached.meshUnread, spot.at, { file, why: { fault, longestMm } })
    return null
  }
  const usable = measure.closed && measure.volumeMm3 > 0
  const found = troublesOf(measure)
  if (found.length > 0) context.report(prcModel.meshLeaks, spot.at, { file, found, usable })
  return {
    file,
    triangles: measure.triangles,
    volumeMm3: usable ? measure.volumeMm3 : null,
    areaMm2: measure.areaMm2,
    boxMm: measure.box.sizeMm,
    belowMm3: overhangOf(mesh, steepestDegrees)?.columnMm3 ?? 0,
    worked: [`mesh ${file}, ${measure.triangles} triangles`, ...measure.worked],
  }
}

/** What keeps a mesh from being closed, in words; none where it is sound. */
export function troublesOf({ seams, insideOut, closed, volumeMm3 }: MeshMeasure): readonly string[] {
  const count = (of: number, one: string, many: string) =>
    of === 0 ? [] : [`${of} ${of === 1 ? one : many}`]
  return [
    ...count(seams.openEdges, 'open edge', 'open edges'),
    ...count(seams.crowdedEdges, 'edge of more than two triangles', 'edges of more than two triangles'),
    ...count(seams.turnedFaces, 'triangle that looks the wrong way', 'triangles that look the wrong way'),
    ...count(seams.oneSidedEdges, 'edge of a surface with one side', 'edges of a surface with one side'),
    ...count(seams.flatTriangles, 'triangle without area', 'triangles without area'),
    ...(insideOut ? ['faces that all look inward'] : []),
    ...(closed && volumeMm3 === 0 ? ['no room inside'] : []),
  ]
}
