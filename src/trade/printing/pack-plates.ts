import type { OutOfDomain } from './domain.ts'
import { equalParts } from './equal-parts.ts'
import { figure } from './figure.ts'
import { type Copy, fillPlates, type LaidCopy } from './fill-plates.ts'
import { improveLayout } from './improve-layout.ts'
import {
  type Plate,
  type PlatePart,
  type TooLarge,
  type TooMany,
  usableRoom,
  whyUnpackable,
  withGap,
} from './why-unpackable.ts'

/** A part in its place: lower left corner of its footprint from the corner of the plate, in millimetres. */
export interface PlacedPart {
  readonly name: string
  /** Which of the copies, from 1. */
  readonly copy: number
  /** Which plate, from 1. */
  readonly plate: number
  readonly xMm: number
  readonly yMm: number
  readonly widthMm: number
  readonly depthMm: number
  readonly turned: boolean
}

/** Parts laid out on as few plates as were found. */
export interface PlatePacking {
  readonly plates: number
  readonly placed: readonly PlacedPart[]
  /** No layout takes fewer plates than this. */
  readonly leastPlates: number
  /** The layout takes the least: it cannot be bettered. */
  readonly proved: boolean
  /** Height of the highest part on each plate: what sets the time of a vat print. */
  readonly heightsMm: readonly number[]
  readonly worked: readonly string[]
}

/**
 * Parts laid out on plates by their footprints, with the gap between them, turned by 90 degrees where that helps.
 * Method: maximal rectangles, first plate with room, over four orders of the parts and three rules; equal parts also in
 * blocks; where the least is not met, exchanges in the order; the fewest plates win, the first found among equals.
 * Sizes are rounded up, the plate down, to a micrometre.
 * Needs: at most 500 copies. Cost: O(copies2 x free rooms).
 * Gives: no two footprints nearer than the gap, none past the edge; the same layout every time.
 */
export function packPlates(
  parts: readonly PlatePart[],
  plate: Plate,
): PlatePacking | OutOfDomain | TooLarge | TooMany {
  const why = whyUnpackable(parts, plate)
  if (why) return why
  const room = usableRoom(plate)
  const copies = parts.flatMap((part, of) =>
    Array.from({ length: part.count }, (_, i): Copy => ({ of, copy: i + 1, ...withGap(part, plate) })),
  )
  const leastPlates = leastOf(copies, room)
  const laid = fewest(copies, room, leastPlates)
  const plates = laid.reduce((most, { plate: on }) => Math.max(most, on), 0)
  const placed = laid.map((copy) => inMillimetres(copy, parts, plate))
  const area = copies.reduce((sum, { w, d }) => sum + w * d, 0) / 1e6
  return {
    plates,
    placed,
    leastPlates,
    proved: plates === leastPlates,
    heightsMm: heightsOf(laid, parts, plates),
    worked: [
      `footprints with gap ${figure(area)} mm2 / plate ${figure((room.w * room.d) / 1e6)} mm2: at least ${leastPlates}`,
      `laid out on ${plates}${plates === leastPlates ? ', the least there can be' : ', found by trial'}`,
    ],
  }
}

/** Copies of one part that fit a plate, their places, and the most that its area could hold. */
export interface PlateCapacity {
  readonly count: number
  readonly mostByArea: number
  readonly placed: readonly PlacedPart[]
  readonly worked: readonly string[]
}

/** How many copies of one part a plate holds, in one or two blocks, the second turned. Its `count` does not matter. */
export function plateCapacity(
  part: PlatePart,
  plate: Plate,
): PlateCapacity | OutOfDomain | TooLarge | TooMany {
  const why = whyUnpackable([{ ...part, count: 1 }], plate)
  if (why) return why
  const [room, { w, d }] = [usableRoom(plate), withGap(part, plate)]
  const mostByArea = Math.floor((room.w * room.d) / (w * d))
  if (mostByArea > mostCapacity) return { fault: 'too many parts', count: mostByArea, most: mostCapacity }
  const spots = equalParts(room, w, d)
  const placed = spots.map((spot, i) =>
    inMillimetres({ of: 0, copy: i + 1, plate: 1, ...spot, turned: spot.w !== w }, [part], plate),
  )
  const size = `${figure(part.widthMm)} x ${figure(part.depthMm)} mm`
  const line = `${size}, gap ${figure(plate.gapMm)} mm: ${spots.length} on a plate, by area at most ${mostByArea}`
  return { count: spots.length, mostByArea, placed, worked: [line] }
}

const mostCapacity = 100_000

/** By area; and parts whose short side passes half the long side of the plate can never share one. */
function leastOf(copies: readonly Copy[], room: { readonly w: number; readonly d: number }): number {
  const area = copies.reduce((sum, { w, d }) => sum + w * d, 0)
  const lonely = copies.filter(({ w, d }) => 2 * Math.min(w, d) > Math.max(room.w, room.d)).length
  return Math.max(Math.ceil(area / (room.w * room.d)), lonely)
}

const orders: readonly ((a: Copy, b: Copy) => number)[] = [
  (a, b) => b.w * b.d - a.w * a.d,
  (a, b) => Math.max(b.w, b.d) - Math.max(a.w, a.d),
  (a, b) => Math.min(b.w, b.d) - Math.min(a.w, a.d),
  (a, b) => b.w + b.d - a.w - a.d,
]

function fewest(copies: readonly Copy[], room: { w: number; d: number }, least: number): readonly LaidCopy[] {
  let best: readonly LaidCopy[] = []
  let fewestPlates = Number.POSITIVE_INFINITY
  for (const laid of tries(copies, room)) {
    const plates = laid.reduce((most, { plate }) => Math.max(most, plate), 0)
    if (plates < fewestPlates) [best, fewestPlates] = [laid, plates]
    if (fewestPlates <= least) return best
  }
  return improveLayout(copies, room, { laid: best, least })
}

function* tries(copies: readonly Copy[], room: { w: number; d: number }): Generator<readonly LaidCopy[]> {
  if (copies.every(({ w, d }) => w === copies[0]!.w && d === copies[0]!.d)) yield inBlocks(copies, room)
  for (const rule of ['short side', 'area', 'lowest'] as const)
    for (const order of orders) {
      const sorted = [...copies].sort((a, b) => order(a, b) || a.of - b.of || a.copy - b.copy)
      yield fillPlates(sorted, room, rule)
    }
}

function inBlocks(copies: readonly Copy[], room: { w: number; d: number }): LaidCopy[] {
  const spots = copies.length === 0 ? [] : equalParts(room, copies[0]!.w, copies[0]!.d)
  return copies.map((copy, i) => {
    const spot = spots[i % spots.length]!
    return { ...copy, ...spot, plate: Math.floor(i / spots.length) + 1, turned: spot.w !== copy.w }
  })
}

function inMillimetres(copy: LaidCopy, parts: readonly PlatePart[], { edgeMm }: Plate): PlacedPart {
  const part = parts[copy.of]!
  const [widthMm, depthMm] = copy.turned ? [part.depthMm, part.widthMm] : [part.widthMm, part.depthMm]
  const { plate, turned } = copy
  const [xMm, yMm] = [edgeMm + copy.x / 1000, edgeMm + copy.y / 1000]
  return { name: part.name, copy: copy.copy, plate, xMm, yMm, widthMm, depthMm, turned }
}

function heightsOf(laid: readonly LaidCopy[], parts: readonly PlatePart[], plates: number): number[] {
  const heights = new Array<number>(plates).fill(0)
  for (const { plate, of } of laid) heights[plate - 1] = Math.max(heights[plate - 1]!, parts[of]!.heightMm)
  return heights
}
