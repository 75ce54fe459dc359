import type { Facing } from './facings.ts'
import { productsOf, type Symmetric, strongest, valueAlong } from './symmetric.ts'
import type { Vector } from './vector.ts'

/** Shares of the surface that differ by no more are alike, and by more than the other are not. */
const alike = 0.02
const apart = 0.05

/**
 * The axis about which a surface is round, whatever its section: it looks as much to all sides across the axis, and
 * more or less along it. `null` for what is round about none, or as a ball about all.
 */
export function roundAxis(facings: readonly Facing[]): Vector | null {
  const sums: [number, number, number, number, number, number] = [0, 0, 0, 0, 0, 0]
  const total = facings.reduce((sum, { areaMm2 }) => sum + areaMm2, 0)
  for (const { areaMm2, normal } of facings)
    for (const [k, product] of productsOf(normal).entries()) sums[k]! += (areaMm2 / total) * product
  const [xx, yy, zz, xy, yz, zx] = sums
  const rest: Symmetric = [1 - xx, 1 - yy, 1 - zz, -xy, -yz, -zx]
  const [most, least] = [strongest(sums), strongest(rest)]
  const [high, low] = [valueAlong(sums, most), valueAlong(sums, least)]
  const middle = 1 - high - low
  if (middle - low < alike && high - middle > apart) return most
  return high - middle < alike && middle - low > apart ? least : null
}
