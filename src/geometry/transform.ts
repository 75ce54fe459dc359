/** Twelve numbers, row by row: the turn and scale, then the way moved. A point is a row before it. */
export type Transform = readonly number[]

/** Moves points, three numbers each, in place. */
export function movePoints(points: Float64Array, t: Transform): void {
  for (let o = 0; o < points.length; o += 3) {
    const [x, y, z] = [points[o]!, points[o + 1]!, points[o + 2]!]
    for (let k = 0; k < 3; k++) points[o + k] = x * t[k]! + y * t[3 + k]! + z * t[6 + k]! + t[9 + k]!
  }
}

/** Share of the volume of a box along the rows that is left below which a transform makes flat. */
const flat = 1e-9

/** What a transform does to what is within: keeps its sides, turns them over as a mirror does, or makes it flat. */
export function kindOfTransform(t: Transform): 'keeps' | 'mirrors' | 'flattens' {
  const [a, b, c, d, e, f, g, h, i] = t as [
    ...[number, number, number],
    ...[number, number, number],
    ...[number, number, number],
    ...number[],
  ]
  const determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
  const most = Math.hypot(a, b, c) * Math.hypot(d, e, f) * Math.hypot(g, h, i)
  if (!(Math.abs(determinant) > flat * most)) return 'flattens'
  return determinant < 0 ? 'mirrors' : 'keeps'
}
