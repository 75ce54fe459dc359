import { type Columns, columnsOf } from './columns.ts'
import { latticeOver, roomForCrossings } from './crossings.ts'
import { axisOf, type Direction, goesUp } from './directions.ts'
import { pairOf, type Relations } from './relate-solids.ts'
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
    const mm = travelOf(solids[mover]!, solids[by]!, direction, pair.giveMm, relations.cellMm)
    if (mm !== null && (first === null || mm < first.mm)) first = { by, mm }
  }
  return first
}

function travelOf(
  mover: Solid,
  still: Solid,
  direction: Direction,
  giveMm: number,
  cellMm: number,
): number | null {
  const axis = axisOf(direction)
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
    gapAt(stretches(a, cell), stretches(b, cell), goesUp(direction)),
  )
  const stopsAt = (mm: number): boolean => {
    const near = Uint8Array.from(gaps, (gap) => (gap <= mm ? 1 : 0))
    return (widestDisc(lattice, near, 1)?.widthMm ?? 0) > giveMm
  }
  const finite = [...new Set(gaps)].filter(Number.isFinite).sort((one, other) => one - other)
  let [low, high] = [0, finite.length - 1]
  if (high < 0 || !stopsAt(finite[high]!)) return null
  while (low < high) {
    const middle = (low + high) >> 1
    if (stopsAt(finite[middle]!)) high = middle
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
