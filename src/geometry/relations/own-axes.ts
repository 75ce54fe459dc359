import { axes } from './directions.ts'
import type { Facing } from './facings.ts'
import { roundAxis } from './round-axis.ts'
import { productsOf, strongest } from './symmetric.ts'
import { cross, dot, unit, type Vector } from './vector.ts'

/** An axis of a part by its own shape. */
export interface OwnAxis {
  readonly along: Vector
  /** Along which it slides or turns: of a round part the one it is round about. */
  readonly main: boolean
  /** Area that leads it along this axis, mm2. */
  readonly areaMm2: number
}

/** What is nearer than this lies along an axis of the device, in degrees: 0.3 mm over 70 mm. Common practice, no source. */
const alongDeg = 0.25
/** Faces nearer than this look alike: meshes are noisy. */
const alikeDeg = 1.5

const sine = (deg: number): number => Math.sin((deg * Math.PI) / 180)
const cosine = (deg: number): number => Math.cos((deg * Math.PI) / 180)

/** The least share of its surface that must lie along or across the main axis of a part. */
const leastShare = 0.6
/** And where its sides lead it as well both ways across. */
const leastEvenShare = 0.25
/** The share of the sides that leads the weaker way where they do: half of it is even. */
const even = 0.3
/** Faces of which the largest are crossed for a main axis. */
const crossed = 16

/**
 * The axes of a part off those of the device: the one that the most surface leads it along (of a screw, a pin, a tube or
 * an extruded shape its axis), and of a box the two across it. None where its shape is along the axes of the device, or
 * has no axis, as a ball.
 * Method: directions across two faces, by the area that leads both ways across (the smaller proper value of the
 * normals across), the best made exact over all faces; where there is none so clear, the axis of
 * what is round (`roundAxis`). Needs: facings, the largest first.
 */
export function ownAxes(facings: readonly Facing[]): readonly OwnAxis[] {
  const total = facings.reduce((sum, { areaMm2 }) => sum + areaMm2, 0)
  const straight = facings.reduce((sum, { areaMm2, normal }) => sum + (isAlong(normal) ? areaMm2 : 0), 0)
  if (facings.length === 0 || straight > 0.9 * total) return []
  const main = worldMain(facings, total) ?? tiltedMain(facings, total) ?? roundMain(facings)
  if (!main) return []
  const both = squareAcross(facings, main.along)
  return [{ ...main, main: true }, ...both.map((one) => ({ ...one, main: false }))].filter(
    ({ along }) => !isAlong(along),
  )
}

/** Whether a direction lies along an axis of the device. */
function isAlong(direction: Vector): boolean {
  return direction.some((part) => Math.abs(part) > cosine(alongDeg))
}

interface Led {
  readonly along: Vector
  readonly areaMm2: number
}

const worldAxes: readonly Vector[] = axes.map((axis) => [
  axis === 0 ? 1 : 0,
  axis === 1 ? 1 : 0,
  axis === 2 ? 1 : 0,
])

/** The axis of the device about which a part is clearly round or extruded; `null`: none is so clear. */
function worldMain(facings: readonly Facing[], total: number): Led | null {
  for (const along of worldAxes) {
    const { sideMm2, capMm2, leadsMm2 } = shareOf(facings, along, alongDeg)
    if (leadsMm2 > even * sideMm2 && sideMm2 + capMm2 > 0.8 * total) return { along, areaMm2: leadsMm2 }
  }
  return null
}

function tiltedMain(facings: readonly Facing[], total: number): Led | null {
  const most = facings.slice(0, crossed).map(({ normal }) => normal)
  const candidates = [
    ...worldAxes,
    ...most,
    ...most.flatMap((one, k) =>
      most.slice(k + 1).flatMap((other) => {
        const across = cross(one, other)
        return Math.hypot(...across) > sine(10) ? [unit(across)] : []
      }),
    ),
  ]
  let best: Led | null = null
  for (const along of candidates) {
    const { sideMm2, capMm2, leadsMm2 } = shareOf(facings, along, alikeDeg)
    if (sideMm2 + capMm2 < (leadsMm2 > even * sideMm2 ? leastEvenShare : leastShare) * total) continue
    // Of equal ones the first: an axis of the device goes before.
    if (leadsMm2 > (best?.areaMm2 ?? 0) * 1.001) best = { along, areaMm2: leadsMm2 }
  }
  return best && { ...best, along: exactly(facings, exactly(facings, best.along)) }
}

/** Of what has hardly a face along or across: cones, rings round in section, threads drawn as such. */
function roundMain(facings: readonly Facing[]): Led | null {
  const along = roundAxis(facings)
  return along && { along: exactly(facings, along), areaMm2: shareOf(facings, along, alikeDeg).leadsMm2 }
}

interface Share {
  readonly sideMm2: number
  readonly capMm2: number
  /** Twice over it leads both ways across; the smaller proper value of the normals of the sides. */
  readonly leadsMm2: number
}

/** How much of a surface lies along a direction and across it. */
function shareOf(facings: readonly Facing[], [wx, wy, wz]: Vector, deg: number): Share {
  const [aside, atop] = [sine(deg), cosine(deg)]
  let [side, cap] = [0, 0]
  let [xx, yy, zz, xy, yz, zx] = [0, 0, 0, 0, 0, 0]
  for (const {
    areaMm2,
    normal: [x, y, z],
  } of facings) {
    const along = Math.abs(x * wx + y * wy + z * wz)
    if (along > atop) cap += areaMm2
    if (along >= aside) continue
    side += areaMm2
    xx += areaMm2 * x * x
    yy += areaMm2 * y * y
    zz += areaMm2 * z * z
    xy += areaMm2 * x * y
    yz += areaMm2 * y * z
    zx += areaMm2 * z * x
  }
  // Two proper values are left, the third is about nothing: their sum is the trace, their product the sum of the minors.
  const product = xx * yy - xy * xy + yy * zz - yz * yz + zz * xx - zx * zx
  const root = Math.sqrt(Math.max(0, (side / 2) ** 2 - product))
  return { sideMm2: side, capMm2: cap, leadsMm2: Math.max(0, side / 2 - root) }
}

/** The direction that the faces along it and across it agree on best, by area: least squares by repeated products. */
function exactly(facings: readonly Facing[], near: Vector): Vector {
  const [aside, atop] = [sine(alikeDeg), cosine(alikeDeg)]
  const sums: [number, number, number, number, number, number] = [0, 0, 0, 0, 0, 0]
  let [side, used] = [0, 0]
  for (const { areaMm2, normal } of facings) {
    const along = Math.abs(dot(normal, near))
    if (along >= aside && along <= atop) continue
    const share = along > atop ? areaMm2 : -areaMm2
    used += areaMm2
    if (share < 0) side += areaMm2
    for (const [k, product] of productsOf(normal).entries()) sums[k]! += share * product
  }
  if (used === 0) return near
  // Along the axis its product is that of all the area, across it less.
  return strongest([sums[0] + side, sums[1] + side, sums[2] + side, sums[3], sums[4], sums[5]])
}

/** No other face so large looks within this of a flat one, in degrees: facets of what is round have neighbours. */
const aloneDeg = 50
/** The least share of the sides that the two flat faces of a box have. */
const leastSquare = 0.2
/** The share of the sides from which on one flat face makes a plate. */
const plateShare = 0.5

/** The two axes of a box across its main one, by the largest flat faces at right angles; none for what is round or has six sides. */
function squareAcross(facings: readonly Facing[], main: Vector): readonly Led[] {
  const sides = facings.filter(({ normal }) => Math.abs(dot(normal, main)) < sine(alikeDeg))
  const total = sides.reduce((sum, { areaMm2 }) => sum + areaMm2, 0)
  const faces = gathered(sides)
  const flats = faces.filter(
    (one) =>
      one.areaMm2 > 0.03 * total &&
      !faces.some(
        (other) =>
          other !== one &&
          2 * other.areaMm2 >= one.areaMm2 &&
          Math.abs(dot(one.normal, other.normal)) > cosine(aloneDeg),
      ),
  )
  const pairs = flats.flatMap((one, k) =>
    flats
      .slice(k + 1)
      .filter((other) => Math.abs(dot(one.normal, other.normal)) < sine(alikeDeg))
      .map((other) => ({ one, other, areaMm2: one.areaMm2 + other.areaMm2 })),
  )
  const best = pairs.reduce<(typeof pairs)[number] | null>(
    (most, pair) => (most && most.areaMm2 >= pair.areaMm2 ? most : pair),
    null,
  )
  const [largest] = flats
  // A plate lies by its faces, whatever its rim.
  if (largest && largest.areaMm2 > plateShare * total) return squareBy(main, largest, null)
  return best && best.areaMm2 > leastSquare * total ? squareBy(main, best.one, best.other) : []
}

/** Two axes across the main one and each other: the normals of two faces, or of one. */
function squareBy(main: Vector, one: Facing, other: Facing | null): readonly Led[] {
  const turned = other ? cross(other.normal, main) : one.normal
  const weight = (dot(turned, one.normal) < 0 ? -1 : 1) * (other?.areaMm2 ?? 0)
  const first = unit([
    one.areaMm2 * one.normal[0] + weight * turned[0],
    one.areaMm2 * one.normal[1] + weight * turned[1],
    one.areaMm2 * one.normal[2] + weight * turned[2],
  ])
  return [
    { along: first, areaMm2: one.areaMm2 },
    { along: cross(main, first), areaMm2: other?.areaMm2 ?? 0 },
  ]
}

/** Faces that look alike, as one each; the largest first. */
function gathered(facings: readonly Facing[]): readonly Facing[] {
  const found: Facing[] = []
  for (const { areaMm2, normal } of facings) {
    const at = found.findIndex((one) => Math.abs(dot(one.normal, normal)) > cosine(1))
    if (at < 0) found.push({ areaMm2, normal })
    else found[at] = { ...found[at]!, areaMm2: found[at]!.areaMm2 + areaMm2 }
  }
  return found
}
