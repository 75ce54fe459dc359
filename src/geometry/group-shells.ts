import { boxOf, type MeshBox } from './measure-mesh.ts'
import type { Mesh } from './mesh.ts'

/** Boxes that reach out no further than this count as within, in mm: faces of rings that lie flush. */
const flushMm = 0.01

/**
 * Shells gathered into things of several pieces, such as a bearing of two rings and balls: each goes to the largest
 * that has it within its box. In the order of their first shells. Cost: O(shells squared).
 */
export function groupShells(shells: readonly Mesh[]): readonly Mesh[] {
  const boxes = shells.map(boxOf)
  const bySize = shells.map((_, k) => k).sort((a, b) => roomOf(boxes[b]!) - roomOf(boxes[a]!) || a - b)
  const groups = new Map<number, number[]>()
  for (const k of bySize) {
    const holder = [...groups.keys()].find((one) => isWithin(boxes[k]!, boxes[one]!))
    if (holder === undefined) groups.set(k, [k])
    else groups.get(holder)!.push(k)
  }
  return [...groups.values()]
    .map((group) => group.sort((a, b) => a - b))
    .sort(([a], [b]) => a! - b!)
    .map((group) => joined(group.map((k) => shells[k]!)))
}

const roomOf = ({ sizeMm }: MeshBox): number => sizeMm[0] * sizeMm[1] * sizeMm[2]

function isWithin(inner: MeshBox, outer: MeshBox): boolean {
  return inner.lowMm.every(
    (low, k) => low >= outer.lowMm[k]! - flushMm && inner.highMm[k]! <= outer.highMm[k]! + flushMm,
  )
}

function joined(all: readonly Mesh[]): Mesh {
  const corners = new Float64Array(all.reduce((sum, mesh) => sum + mesh.corners.length, 0))
  let at = 0
  for (const mesh of all) {
    corners.set(mesh.corners, at)
    at += mesh.corners.length
  }
  return { corners }
}
