/** A line with the points left out that lie within `within` of it. Source: Ramer 1972, Douglas and Peucker 1973, from memory. */
export function thinOut(points: readonly number[], within: number): readonly number[] {
  const count = points.length / 2
  const keep = new Uint8Array(count)
  keep[0] = 1
  keep[count - 1] = 1
  const spans: (readonly [number, number])[] = [[0, count - 1]]
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [first, last] = span
    const { at, away } = farthest(points, first, last)
    if (away <= within) continue
    keep[at] = 1
    spans.push([first, at], [at, last])
  }
  return points.filter((_, i) => keep[i >> 1] === 1)
}

function farthest(points: readonly number[], first: number, last: number): { at: number; away: number } {
  const ax = points[2 * first]!
  const ay = points[2 * first + 1]!
  const dx = points[2 * last]! - ax
  const dy = points[2 * last + 1]! - ay
  const long = dx * dx + dy * dy
  let at = first
  let away = -1
  for (let i = first + 1; i < last; i++) {
    const px = points[2 * i]! - ax
    const py = points[2 * i + 1]! - ay
    const share = long === 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / long))
    const distance = Math.hypot(px - share * dx, py - share * dy)
    if (distance > away) {
      at = i
      away = distance
    }
  }
  return { at, away }
}
