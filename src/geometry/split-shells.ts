import { boxOf, type MeshBox } from './measure-mesh.ts'
import type { Mesh } from './mesh.ts'
import { samePlaces } from './same-places.ts'

/**
 * The bodies of a mesh: shells that share no corner, those that lie within the box of another counted to it (the wall
 * of a hollow). In the order of their first triangles; `null` where more than `most` share no corner.
 * Cost: O(triangles + shells squared).
 */
export function splitShells(mesh: Mesh, most = 1000): readonly Mesh[] | null {
  const joined = samePlaces(mesh.corners)
  const parent = Int32Array.from({ length: joined.count }, (_, place) => place)
  const rootOf = (place: number): number => {
    let at = place
    while (parent[at] !== at) {
      parent[at] = parent[parent[at]!]!
      at = parent[at]!
    }
    return at
  }
  for (let c = 0; c < joined.places.length; c += 3)
    for (const k of [1, 2]) parent[rootOf(joined.places[c + k]!)] = rootOf(joined.places[c]!)
  const triangles = new Map<number, number[]>()
  for (let c = 0; c < joined.places.length; c += 3) {
    const root = rootOf(joined.places[c]!)
    const known = triangles.get(root)
    if (known) known.push(c / 3)
    else triangles.set(root, [c / 3])
  }
  return triangles.size > most ? null : withHollows(mesh, [...triangles.values()])
}

function withHollows(mesh: Mesh, shells: readonly (readonly number[])[]): readonly Mesh[] {
  const boxes = shells.map((shell) => boxOf(meshOf(mesh, shell)))
  const within = boxes.map((box, k) => boxes.findIndex((other, i) => i !== k && isWithin(box, other)))
  return shells.flatMap((shell, k) =>
    within[k]! >= 0
      ? []
      : [meshOf(mesh, [...shell, ...shells.filter((_, i) => holderOf(within, i) === k).flat()])],
  )
}

/** The outermost shell around one that lies in another. */
function holderOf(within: readonly number[], shell: number): number {
  let at = within[shell]!
  while (at >= 0 && within[at]! >= 0) at = within[at]!
  return at
}

function isWithin(inner: MeshBox, outer: MeshBox): boolean {
  return inner.lowMm.every((low, k) => low > outer.lowMm[k]! && inner.highMm[k]! < outer.highMm[k]!)
}

function meshOf({ corners }: Mesh, triangles: readonly number[]): Mesh {
  const own = new Float64Array(9 * triangles.length)
  for (const [k, triangle] of triangles.entries())
    own.set(corners.subarray(9 * triangle, 9 * triangle + 9), 9 * k)
  return { corners: own }
}
