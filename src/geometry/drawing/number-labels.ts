import type { DepthBuffer } from './depth-buffer.ts'
import { numberStrokes, numberWidth } from './digit-strokes.ts'
import { type Sheet, stroke } from './picture-marks.ts'
import type { Mark } from './svg-text.ts'

/** Height of a number, its lines, and the line that leads to its part, in millimetres of paper. */
const sizes = { high: 2.8, line: 0.3, leader: 0.13, clear: 0.7 } as const
/** How far from its part a number may stand, in millimetres, and in how many directions it is tried. */
const reach = { nearest: 3.5, farthest: 100, step: 1, ways: 24 } as const
/** A line that crosses other parts is worse than one so much longer for each millimetre of crossing. */
const crossingWeighs = 2

interface Spot {
  readonly x: number
  readonly y: number
}

/** An upright box on the paper, in millimetres. */
interface Room extends Spot {
  readonly wide: number
  readonly high: number
}

/**
 * The numbers of the parts that have one, each once, beside the part of that number that is seen most, with a thin line
 * to it; where no room is free, a number is left out.
 * Cost: O(cells + numbers x tries).
 */
export function numberLabels({ parts, seen: { buffer }, sizeMm }: Sheet): readonly Mark[] {
  if (parts.every(({ label }) => label === undefined)) return []
  const paper: Paper = { buffer, perMm: buffer.across / sizeMm, sizeMm }
  const middles = middlesOf(
    buffer,
    parts.map((part) => part.label ?? null),
  )
  const taken: Room[] = []
  return [...middles].flatMap(([number, middle]): readonly Mark[] => {
    const at = { x: middle.x / paper.perMm, y: middle.y / paper.perMm }
    const room = roomFor(paper, at, { wide: numberWidth(number, sizes.high), high: sizes.high }, taken)
    if (!room) return []
    taken.push(room)
    const from = nearestOn(room, at)
    return [
      stroke(sizes.leader, [[from.x, from.y, at.x, at.y]]),
      stroke(sizes.line, numberStrokes(number, [room.x, room.y], sizes.high)),
    ]
  })
}

interface Paper {
  readonly buffer: DepthBuffer
  readonly perMm: number
  readonly sizeMm: number
}

/** By number a cell in the middle of the part that is seen most of all that have it, in the order of numbers. */
function middlesOf(buffer: DepthBuffer, labels: readonly (number | null)[]): ReadonlyMap<number, Spot> {
  const sums = labels.map(() => ({ count: 0, x: 0, y: 0 }))
  eachCell(buffer, (part, x, y) => {
    const sum = sums[part]!
    sum.count++
    sum.x += x
    sum.y += y
  })
  const most = new Map<number, number>()
  for (const [part, label] of labels.entries()) {
    const best = label === null ? undefined : most.get(label)
    if (label !== null && sums[part]!.count > (best === undefined ? 0 : sums[best]!.count))
      most.set(label, part)
  }
  const nearest = new Map<number, Spot & { readonly far: number }>()
  const wanted = new Map([...most].map(([label, part]) => [part, label] as const))
  eachCell(buffer, (part, x, y) => {
    if (!wanted.has(part)) return
    const { count, x: sumX, y: sumY } = sums[part]!
    const far = Math.hypot(x - sumX / count, y - sumY / count)
    if (far < (nearest.get(part)?.far ?? Number.POSITIVE_INFINITY)) nearest.set(part, { x, y, far })
  })
  return new Map([...most].sort(([a], [b]) => a - b).map(([label, part]) => [label, nearest.get(part)!]))
}

function eachCell({ across, part }: DepthBuffer, visit: (part: number, x: number, y: number) => void): void {
  for (let cell = 0; cell < part.length; cell++)
    if (part[cell]! >= 0) visit(part[cell]!, (cell % across) + 0.5, Math.floor(cell / across) + 0.5)
}

/** The free room that is nearest, by a line that crosses little else; `null`: none. */
function roomFor(
  paper: Paper,
  at: Spot,
  { wide, high }: { readonly wide: number; readonly high: number },
  taken: readonly Room[],
): Room | null {
  let [best, least]: [Room | null, number] = [null, Number.POSITIVE_INFINITY]
  for (let far: number = reach.nearest; far <= reach.farthest && far < least; far += reach.step)
    for (let way = 0; way < reach.ways; way++) {
      const angle = (2 * Math.PI * (way + 0.5)) / reach.ways
      const x = at.x + far * Math.cos(angle) - wide / 2
      const y = at.y - far * Math.sin(angle) - high / 2
      const room = { x, y, wide, high }
      if (!isFree(paper, room, taken)) continue
      const cost = far + crossingWeighs * crossed(paper, nearestOn(room, at), at)
      if (cost < least) {
        best = room
        least = cost
      }
    }
  return best
}

function isFree({ buffer, perMm, sizeMm }: Paper, room: Room, taken: readonly Room[]): boolean {
  const [left, top] = [room.x - sizes.clear, room.y - sizes.clear]
  const [right, bottom] = [room.x + room.wide + sizes.clear, room.y + room.high + sizes.clear]
  if (left < 0 || top < 0 || right > sizeMm || bottom > sizeMm) return false
  if (
    taken.some((one) => left < one.x + one.wide && right > one.x && top < one.y + one.high && bottom > one.y)
  )
    return false
  for (let row = Math.floor(top * perMm); row < Math.ceil(bottom * perMm); row++)
    for (let column = Math.floor(left * perMm); column < Math.ceil(right * perMm); column++)
      if (buffer.part[row * buffer.across + column]! >= 0) return false
  return true
}

/** Millimetres of other parts on the way from a number to its own. */
function crossed({ buffer, perMm }: Paper, from: Spot, to: Spot): number {
  const own = buffer.part[Math.floor(to.y * perMm) * buffer.across + Math.floor(to.x * perMm)]!
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const count = Math.max(1, Math.ceil(length * 4))
  let met = 0
  for (let i = 0; i < count; i++) {
    const share = (i + 0.5) / count
    const [x, y] = [from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)]
    const part = buffer.part[Math.floor(y * perMm) * buffer.across + Math.floor(x * perMm)]!
    if (part >= 0 && part !== own) met++
  }
  return (met / count) * length
}

/** The point on the rim of a room, a little off it, that is nearest to a spot outside. */
function nearestOn({ x, y, wide, high }: Room, at: Spot): Spot {
  const off = sizes.clear * 0.7
  return {
    x: Math.min(x + wide + off, Math.max(x - off, at.x)),
    y: Math.min(y + high + off, Math.max(y - off, at.y)),
  }
}
