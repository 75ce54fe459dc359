/** A rectangle by its lower left corner, in whole micrometres. */
export interface Rectangle {
  readonly x: number
  readonly y: number
  readonly w: number
  readonly d: number
}

/** Which free room a part takes: least left over on the short side, least area left over, or lowest and leftmost. */
export type RoomRule = 'short side' | 'area' | 'lowest'

/** Where a part would lie, and how well it would. */
export interface Spot extends Rectangle {
  readonly turned: boolean
  readonly score: readonly [number, number]
}

/**
 * The best place for a part among the free rooms of a plate, turned by 90 degrees or not, or `null`.
 * Source: Jylänki, "A thousand ways to pack the bin" (2010), maximal rectangles, from memory.
 * Gives: of equally good places the lowest, then leftmost, then unturned one: the same every time.
 */
export function bestSpot(rooms: readonly Rectangle[], w: number, d: number, rule: RoomRule): Spot | null {
  let best: Spot | null = null
  for (const room of rooms)
    for (const turned of w === d ? [false] : [false, true]) {
      const [across, deep] = turned ? [d, w] : [w, d]
      if (across > room.w || deep > room.d) continue
      const spot = {
        x: room.x,
        y: room.y,
        w: across,
        d: deep,
        turned,
        score: scoreOf(room, across, deep, rule),
      }
      if (best === null || isBetter(spot, best)) best = spot
    }
  return best
}

/** The free rooms that are left when a part is put down: each as large as it can be, none inside another. */
export function roomsAfter(rooms: readonly Rectangle[], part: Rectangle): Rectangle[] {
  const whole = rooms.filter((room) => !overlap(room, part))
  const cut = rooms.filter((room) => overlap(room, part)).flatMap((room) => cutAround(room, part))
  const all = [...whole, ...cut]
  return all.filter(
    (room, i) => !all.some((other, j) => j !== i && inside(room, other) && (!inside(other, room) || j < i)),
  )
}

function scoreOf(room: Rectangle, w: number, d: number, rule: RoomRule): readonly [number, number] {
  const [spareW, spareD] = [room.w - w, room.d - d]
  const short = Math.min(spareW, spareD)
  if (rule === 'short side') return [short, Math.max(spareW, spareD)]
  if (rule === 'area') return [room.w * room.d - w * d, short]
  return [room.y + d, room.x]
}

function isBetter(a: Spot, b: Spot): boolean {
  const [left, right] = [
    [...a.score, a.y, a.x],
    [...b.score, b.y, b.x],
  ]
  const first = left.findIndex((value, i) => value !== right[i])
  return first >= 0 && left[first]! < right[first]!
}

function overlap(a: Rectangle, b: Rectangle): boolean {
  return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.d && b.y < a.y + a.d
}

function inside(a: Rectangle, b: Rectangle): boolean {
  return a.x >= b.x && a.y >= b.y && a.x + a.w <= b.x + b.w && a.y + a.d <= b.y + b.d
}

function cutAround(room: Rectangle, part: Rectangle): Rectangle[] {
  const [right, top] = [part.x + part.w, part.y + part.d]
  return [
    { ...room, w: part.x - room.x },
    { ...room, x: right, w: room.x + room.w - right },
    { ...room, d: part.y - room.y },
    { ...room, y: top, d: room.y + room.d - top },
  ].filter(({ w, d }) => w > 0 && d > 0)
}
