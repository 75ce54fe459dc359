/** A straight way: one of six by number, +x, -x, +y, -y, +z, -z; or where it leads, at length 1. */
export type Way = number | readonly [x: number, y: number, z: number]

const names = ['+x', '-x', '+y', '-y', '+z', '-z'] as const

/** What is nearer to a plane of two axes than this lies in it, as a share: half a degree. */
const inPlane = 0.0087

/** A way in words: `+x`; `30° from +x to -z` where it lies between two axes; else `(0.8, 0.36, 0.48)`. */
export function wayWords(way: Way): string {
  if (typeof way === 'number') return names[way] ?? '?'
  const parts = way.map((part, axis) => ({
    size: Math.abs(part),
    name: names[2 * axis + (part < 0 ? 1 : 0)]!,
  }))
  const [most, next, least] = parts.sort((one, other) => other.size - one.size)
  if (least!.size > inPlane) return `(${way.map((part) => Number(part.toFixed(2))).join(', ')})`
  const degrees = (Math.atan2(next!.size, most!.size) * 180) / Math.PI
  return `${Number(degrees.toFixed(1))}° from ${most!.name} to ${next!.name}`
}
