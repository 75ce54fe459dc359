import Module, { type Manifold } from 'manifold-3d'
import type { Solid } from '../../../src/geometry/relations/solid.ts'
import { solidOf } from '../../../src/geometry/relations/solid.ts'

const wasm = await Module()
wasm.setup()

/** The second opinion: exact booleans on meshes (manifold-3d, Apache-2.0). */
export const kernel = wasm
export type { Manifold }

/** Loose triangles of a body, as an STL file would hold them. */
export function cornersOf(body: Manifold): Float32Array {
  const { triVerts, vertProperties, numProp } = body.getMesh()
  const corners = new Float32Array(3 * triVerts.length)
  for (const [k, vertex] of triVerts.entries())
    for (let i = 0; i < 3; i++) corners[3 * k + i] = vertProperties[numProp * vertex + i]!
  return corners
}

/** A body as relations take it. */
export function solidFrom(body: Manifold): Solid {
  return solidOf(cornersOf(body))
}

/** A box from its lowest corner. */
export function block(
  size: readonly [number, number, number],
  at: readonly [number, number, number],
): Manifold {
  return kernel.Manifold.cube([...size], false).translate([...at])
}

/** A cylinder upward along an axis from a point on it. */
export function rod(
  radius: number,
  length: number,
  at: readonly [number, number, number] = [0, 0, 0],
  axis: 'x' | 'y' | 'z' = 'z',
  facets = 48,
  topRadius = radius,
): Manifold {
  const upright = kernel.Manifold.cylinder(length, radius, topRadius, facets, false)
  const laid = { x: [0, 90, 0], y: [-90, 0, 0], z: [0, 0, 0] } as const
  return upright.rotate([...laid[axis]]).translate([...at])
}

/** A tube: a rod with a bore. */
export function tube(
  outer: number,
  inner: number,
  length: number,
  at: readonly [number, number, number] = [0, 0, 0],
  axis: 'x' | 'y' | 'z' = 'z',
  facets = 48,
): Manifold {
  const past = { x: [-1, 0, 0], y: [0, -1, 0], z: [0, 0, -1] }[axis]
  const from = at.map((each, i) => each + past[i]!) as [number, number, number]
  return rod(outer, length, at, axis, facets).subtract(rod(inner, length + 2, from, axis, facets))
}

/** A ball about a point. */
export function ball(
  radius: number,
  at: readonly [number, number, number] = [0, 0, 0],
  facets = 48,
): Manifold {
  return kernel.Manifold.sphere(radius, facets).translate([...at])
}
