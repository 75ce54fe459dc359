import { unit, type Vector } from './vector.ts'

/** A symmetric matrix by its six members: xx, yy, zz, xy, yz, zx. */
export type Symmetric = readonly [xx: number, yy: number, zz: number, xy: number, yz: number, zx: number]

/** The products of a vector with itself. */
export function productsOf([x, y, z]: Vector): Symmetric {
  return [x * x, y * y, z * z, x * y, y * z, z * x]
}

/** Squarings: as many doublings of the rounds in which a direction would come nearer. */
const squarings = 10

/** The direction of the largest proper value. Method: powers by squaring. Needs: no value below zero, one above. */
export function strongest(matrix: Symmetric): Vector {
  let power = matrix
  for (let k = 0; k < squarings; k++) power = squared(power)
  const [xx, yy, zz, xy, yz, zx] = power
  // All columns lead there by now: the longest is the surest.
  if (xx >= yy && xx >= zz) return unit([xx, xy, zx])
  return yy >= zz ? unit([xy, yy, yz]) : unit([zx, yz, zz])
}

/** What a matrix makes of a direction, along it: its proper value where it has one there. */
export function valueAlong([xx, yy, zz, xy, yz, zx]: Symmetric, [x, y, z]: Vector): number {
  return xx * x * x + yy * y * y + zz * z * z + 2 * (xy * x * y + yz * y * z + zx * z * x)
}

/** The square of a matrix, over the trace of it. */
function squared([xx, yy, zz, xy, yz, zx]: Symmetric): Symmetric {
  const by = 1 / (xx * xx + yy * yy + zz * zz + 2 * (xy * xy + yz * yz + zx * zx))
  return [
    by * (xx * xx + xy * xy + zx * zx),
    by * (xy * xy + yy * yy + yz * yz),
    by * (zx * zx + yz * yz + zz * zz),
    by * (xx * xy + xy * yy + zx * yz),
    by * (xy * zx + yy * yz + yz * zz),
    by * (zx * xx + yz * xy + zz * zx),
  ]
}
