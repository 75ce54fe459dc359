import { type Columns, columnsOf } from './columns.ts'
import { latticeOver, roomForCrossings } from './crossings.ts'
import { axisOf, type Direction, goesUp } from './directions.ts'
import { pairOf, type Relations } from './relate-solids.ts'
import { type Seen, seenAlong } from './seen-along.ts'
import type { Solid } from './solid.ts'
import { depthToleranceMm } from './sweep-pair.ts'
import { widestDisc } from './widest-disc.ts'

/** Most cells of a window: past it they grow. */
const mostCells = 100_000

/** How far a part can move before another stops it. */
export interface FreeTravel {
  /** The part that stops it first. */
  readonly by: number
  readonly mm: number
}

/**
 * How far a part can move in a direction before one of the others stops it more widely than the pair gives; `null`
 * where none does. Cost: the window of each pair, some ten times over.
 */
export function freeTravel(
  solids: readonly Solid[],
  relations: Relations,
  mover: number,
  others: readonly number[],
  direction: Direction,
): FreeTravel | null {
  let first: FreeTravel | null = null
  for (const by of others) {
    const pair = pairOf(relations, mover, by)
    const width = pair ? (pair.a === mover ? pair.aMm : pair.bMm)[direction]! : 0
    if (!pair || width <= pair.giveMm) continue
    const [mine, theirs] = [mover, by].map((part) =>
      seenAlong(solids[part]!, axisOf(direction), relations.tilted),
    ) as [Seen, Seen]
    const mm = travelOf(mine, theirs, goesUp(direction), pair.giveMm, relations.cellMm)
    if (first === null || mm < first.mm) first = { by, mm }
  }
  return first
}

/** How far a part that is known to be stopped moves; 0 where the stop is too narrow to be seen on these cells. */
function travelOf(
  { solid: mover, axis }: Seen,
  { solid: still }: Seen,
  up: boolean,
  giveMm: number,
  cellMm: number,
): number {
  const [u, v] = [(axis + 1) % 3, (axis + 2) % 3] as [0 | 1 | 2, 0 | 1 | 2]
  const edge = (pick: 'low' | 'high', k: 0 | 1 | 2) =>
    pick === 'low' ? Math.max(mover.low[k], still.low[k]) : Math.min(mover.high[k], still.high[k])
  const [low0, high0] = [
    [edge('low', u), edge('low', v)] as const,
    [edge('high', u), edge('high', v)] as const,
  ]
  const area = (high0[0] - low0[0]) * (high0[1] - low0[1])
  const lattice = latticeOver(axis, Math.max(cellMm, Math.sqrt(area / mostCells)), low0, high0)
  const room = roomForCrossings()
  const [a, b] = [columnsOf(mover, lattice, room), columnsOf(still, lattice, room)]
  const gaps = Float64Array.from({ length: lattice.columns * lattice.rows }, (_, cell) =>
    gapAt(stretches(a, cell), stretches(b, cell), up),
  )
  const widthAt = (mm: number): number => {
    const near = Uint8Array.from(gaps, (gap) => (gap <= mm ? 1 : 0))
    return widestDisc(lattice, near, 1)?.widthMm ?? 0
  }
  const finite = [...new Set(gaps)].filter(Number.isFinite).sort((one, other) => one - other)
  let [low, high] = [0, finite.length - 1]
  if (high < 0) return 0
  // On these cells the stop may look a little narrower than it is.
  const enough = Math.min(giveMm, widthAt(finite[high]!) - 1e-9)
  while (low < high) {
    const middle = (low + high) >> 1
    if (widthAt(finite[middle]!) > enough) high = middle
    else low = middle + 1
  }
  return Math.max(0, finite[low]!)
}

type Stretch = readonly [from: number, to: number]

function stretches({ start, count, bounds }: Columns, cell: number): readonly Stretch[] {
  const first = start[cell]!
  return Array.from({ length: count[cell]! / 2 }, (_, k) => [
    bounds[first + 2 * k]!,
    bounds[first + 2 * k + 1]!,
  ])
}

/** The least way from what moves, less what it has in common with the other, to the other; endless where none. */
function gapAt(mine: readonly Stretch[], theirs: readonly Stretch[], up: boolean): number {
  const rest = theirs
    .reduce<readonly Stretch[]>((left, cut) => left.flatMap((one) => without(one, cut)), mine)
    .filter(([from, to]) => to - from > depthToleranceMm)
  const gaps = rest.flatMap((one) =>
    theirs
      .map((other) => (up ? other[0] - one[1] : one[0] - other[1]))
      .filter((gap) => gap > -depthToleranceMm),
  )
  return gaps.length > 0 ? Math.max(0, Math.min(...gaps)) : Infinity
}

function without([from, to]: Stretch, [low, high]: Stretch): readonly Stretch[] {
  if (high <= from || low >= to) return [[from, to]]
  return [...(low > from ? [[from, low] as const] : []), ...(high < to ? [[high, to] as const] : [])]
}
