/**
 * A triangle mesh in millimetres as loose triangles: nine numbers each, three corners of x, y, z, counter-clockwise
 * seen from outside.
 */
export interface Mesh {
  readonly corners: Float64Array
}

/** A point or direction in space, in millimetres. */
export type Point = readonly [x: number, y: number, z: number]

/** How many triangles a mesh has. */
export function countTriangles({ corners }: Mesh): number {
  return corners.length / 9
}

/** Twice the area vector of a triangle: at right angles to it, outward where the corners are counter-clockwise. */
export function crossOf(corners: Float64Array, triangle: number): Point {
  const o = 9 * triangle
  const [ax, ay, az] = [corners[o]!, corners[o + 1]!, corners[o + 2]!]
  const [ux, uy, uz] = [corners[o + 3]! - ax, corners[o + 4]! - ay, corners[o + 5]! - az]
  const [vx, vy, vz] = [corners[o + 6]! - ax, corners[o + 7]! - ay, corners[o + 8]! - az]
  return [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx]
}
