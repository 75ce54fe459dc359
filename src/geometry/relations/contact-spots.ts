import type { Point } from '../mesh.ts'
import { type Columns, columnsOf } from './columns.ts'
import { type Lattice, latticeOver, roomForCrossings } from './crossings.ts'
import { type Axis, axes, axisOf, type Direction, goesUp } from './directions.ts'
import { seenAlong, seenBack } from './seen-along.ts'
import type { Solid } from './solid.ts'
import { contactMm } from './sweep-pair.ts'
import type { Vector } from './vector.ts'

/** Where a body rests on others when it has come in. */
export interface ContactSpots {
  /** Points of its seat, the one that stands for all of it first. At least one. */
  readonly points: readonly [Point, ...Point[]]
  /** Number of the other that it rests on with the largest area. */
  readonly on: number
}

/** Cells of the footprint of a body. */
const wantedCells = 40_000
const finestMm = 0.05
/** Faces this near in height are one face, in mm. */
const levelMm = 0.3
/** Less than this is no seat, in mm2. */
const leastMm2 = 0.2

/**
 * Where a body that leaves in a direction rests on others with the faces that look the other way: of several levels
 * the largest. Its first point is the middle of the seat, also where a hole or shank is there; where the body is flat
 * over a hollow, points of the rim. `null`: it rests nowhere. `tilted`: the axes beside x, y and z.
 * Cost: O(triangles + cells).
 */
export function contactSpots(
  parts: readonly Solid[],
  around: readonly Solid[],
  leaving: Direction,
  tilted: readonly Vector[] = [],
): ContactSpots | null {
  const axis = axisOf(leaving)
  const seen = (solids: readonly Solid[]) => solids.map((solid) => seenAlong(solid, axis, tilted).solid)
  const [body, others] = [seen(parts), seen(around)]
  const lattice = footprint(body, axis < axes.length ? (axis as Axis) : 2)
  const up = goesUp(leaving)
  const room = roomForCrossings()
  const own = body.map((solid) => columnsOf(solid, lattice, room))
  const met = others.flatMap((solid, on) => {
    if (!body.some((one) => nearBoxes(one, solid))) return []
    const theirs = columnsOf(solid, lattice, room)
    return own.flatMap((mine) => contactsOf(mine, theirs, on, up))
  })
  if (met.length * lattice.cellMm ** 2 < leastMm2) return null
  const level = mainLevel(met.map(({ at }) => at))
  const seat = met.filter(({ at }) => Math.abs(at - level) <= levelMm)
  const [first, ...rest] = pointsOf(seat, own, { lattice, level, up })
  const back = (spot: Point): Point => seenBack(spot, axis, tilted)
  return { points: [back(first), ...rest.map(back)], on: mostMet(seat) }
}

/** A cell in which a body rests on another: how high. */
interface Contact {
  readonly cell: number
  readonly at: number
  readonly on: number
}

function footprint(body: readonly Solid[], axis: Axis): Lattice {
  const [u, v] = [(axis + 1) % 3, (axis + 2) % 3] as [Axis, Axis]
  const least = (k: Axis): number => Math.min(...body.map(({ low }) => low[k]))
  const most = (k: Axis): number => Math.max(...body.map(({ high }) => high[k]))
  const [low, high] = [[least(u), least(v)] as const, [most(u), most(v)] as const]
  const area = (high[0] - low[0]) * (high[1] - low[1])
  return latticeOver(axis, Math.max(finestMm, Math.sqrt(area / wantedCells)), low, high)
}

function nearBoxes(a: Solid, b: Solid): boolean {
  return axes.every(
    (axis) => a.low[axis] <= b.high[axis] + contactMm && b.low[axis] <= a.high[axis] + contactMm,
  )
}

function contactsOf(mine: Columns, theirs: Columns, on: number, up: boolean): readonly Contact[] {
  const found: Contact[] = []
  const [facing, faced] = up ? [0, 1] : [1, 0]
  for (let cell = 0; cell < mine.count.length; cell++) {
    for (let i = 0; i < mine.count[cell]!; i += 2) {
      const at = mine.bounds[mine.start[cell]! + i + facing]!
      if (endsAt(theirs, cell, faced, at)) found.push({ cell, at, on })
    }
  }
  return found
}

function endsAt({ start, count, bounds }: Columns, cell: number, end: number, at: number): boolean {
  for (let k = 0; k < count[cell]!; k += 2)
    if (Math.abs(bounds[start[cell]! + k + end]! - at) < contactMm) return true
  return false
}

/** Where the stretches of a cell begin, or where they end. */
function endsOf({ start, count, bounds }: Columns, cell: number, begin: boolean): readonly number[] {
  const first = start[cell]!
  return Array.from({ length: count[cell]! / 2 }, (_, k) => bounds[first + 2 * k + (begin ? 0 : 1)]!)
}

function mainLevel(heights: readonly number[]): number {
  const sorted = [...heights].sort((a, b) => a - b)
  let [best, most, first] = [sorted[0]!, 0, 0]
  for (const [i, height] of sorted.entries()) {
    while (height - sorted[first]! > levelMm) first++
    if (i - first + 1 > most) {
      most = i - first + 1
      best = sorted[first + ((i - first) >> 1)]!
    }
  }
  return best
}

function mostMet(seat: readonly Contact[]): number {
  const cells = new Map<number, number>()
  for (const { on } of seat) cells.set(on, (cells.get(on) ?? 0) + 1)
  return [...cells].reduce((best, one) => (one[1] > best[1] ? one : best))[0]
}

interface Level {
  readonly lattice: Lattice
  readonly level: number
  readonly up: boolean
}

function pointsOf(
  seat: readonly Contact[],
  own: readonly Columns[],
  { lattice, level, up }: Level,
): [Point, ...Point[]] {
  const cells = [...new Set(seat.map(({ cell }) => cell))].map((cell) => ({
    column: cell % lattice.columns,
    row: Math.floor(cell / lattice.columns),
  }))
  const ends = (pick: 'column' | 'row'): number => {
    const all = cells.map((one) => one[pick])
    return (least(all) - least(all.map((one) => -one))) / 2
  }
  const middle = { column: ends('column'), row: ends('row') }
  const around = [1, -1].flatMap((x) =>
    [1, -1].flatMap((y) => {
      const part = cells.filter(
        ({ column, row }) => (column - middle.column) * x >= 0 && (row - middle.row) * y >= 0,
      )
      return part.length > 0 ? [nearest(part, meanOf(part))] : []
    }),
  )
  const at = Math.floor(middle.row) * lattice.columns + Math.floor(middle.column)
  const touchesThere = nearest(cells, middle)
  const rests = Math.hypot(touchesThere.column - middle.column, touchesThere.row - middle.row) < 1
  const flat = own.some((mine) => endsOf(mine, at, up).some((end) => Math.abs(end - level) <= levelMm))
  const [first, ...rest] = (flat && !rests ? around : [middle, ...around]).map((one) =>
    point(one, lattice, level),
  )
  return [first!, ...rest]
}

interface Cell {
  readonly column: number
  readonly row: number
}

function least(list: readonly number[]): number {
  return list.reduce((best, one) => Math.min(best, one), Number.POSITIVE_INFINITY)
}

function meanOf(cells: readonly Cell[]): Cell {
  return {
    column: cells.reduce((sum, { column }) => sum + column, 0) / cells.length,
    row: cells.reduce((sum, { row }) => sum + row, 0) / cells.length,
  }
}

function nearest(cells: readonly Cell[], { column, row }: Cell): Cell {
  const far = (one: Cell): number => Math.hypot(one.column - column, one.row - row)
  return cells.reduce((best, one) => (far(one) < far(best) ? one : best))
}

function point({ column, row }: Cell, { axis, cellMm, left, low }: Lattice, level: number): Point {
  const spot: [number, number, number] = [0, 0, 0]
  spot[axis] = level
  spot[(axis + 1) % 3] = (left + column + 0.5) * cellMm
  spot[(axis + 2) % 3] = (low + row + 0.5) * cellMm
  return spot
}
