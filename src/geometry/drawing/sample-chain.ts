import type { ChainLink } from './chain-edges.ts'
import type { DepthBuffer } from './depth-buffer.ts'
import type { DrawnEdge } from './drawn-edges.ts'
import type { Projected } from './projection.ts'

/** What a stretch of a line separates, seen from where one looks. */
export type LineKind =
  /** What goes in from all around it. */
  | 'goes in'
  /** The device from what is around it. */
  | 'outer'
  /** One part from another. */
  | 'border'
  /** Two faces of one part, or a fold of it from what it hides. */
  | 'inner'

/** A picture as lines are judged by it. */
export interface Sight {
  readonly buffer: DepthBuffer
  /** By part: 1 where it goes in. */
  readonly goesIn: Uint8Array
  /** By part: the same number for parts that move as one. */
  readonly body: Int32Array
  /** By cell: 1 where it lies outside of the whole device, and outside of what goes in. */
  readonly aroundAll: Uint8Array
  readonly aroundGoing: Uint8Array
}

/** A short stretch of a chain, judged at its middle. */
export interface Sample {
  readonly kind: LineKind | null
  /** Cells. */
  readonly length: number
  /** Number of the link, and the share of its length where the stretch ends. */
  readonly link: number
  readonly until: number
}

/** Where the picture is asked beside a line: near enough to be beside it, far enough to be off it, in cells. */
const besideCells = 0.8
/** Surfaces steeper than this say little of what is beside them: a rise of so many cells a cell. */
const steepest = 3
/** A face narrower than this on the paper is seen edge-on and says nothing, in cells. */
const thinnest = 0.02
/** How much nearer something may be before it hides a line, and how much farther and still be the face, in cells. */
const eps = { face: 0.12, beyond: 0.5, behind: 2 } as const
/** A fold is drawn where what it hides lies farther behind than this, in cells. */
const jumpCells = 5

/**
 * Which stretches of a chain are seen, and what they separate. On either side of a line the picture must show nothing
 * nearer than the face that lies there, or than the line itself where no face does.
 * Cost: O(cells along the chain).
 */
export function sampleChain(
  sight: Sight,
  part: number,
  links: readonly ChainLink[],
  at: Projected,
): readonly Sample[] {
  const samples: Sample[] = []
  for (const [link, { edge, backward }] of links.entries()) {
    const length = Math.hypot(at.x[edge.to]! - at.x[edge.from]!, at.y[edge.to]! - at.y[edge.from]!)
    const count = Math.max(1, Math.ceil(length))
    const judge = edgeJudge(sight, part, edge, at)
    for (let i = 0; i < count; i++) {
      const share = (i + 0.5) / count
      const kind = length === 0 ? null : judge(backward ? 1 - share : share)
      samples.push({ kind, length: length / count, link, until: (i + 1) / count })
    }
  }
  return samples
}

/** Rise of depth from a line over a face beside it, for each cell along x and y; `null`: no face lies there. */
type Rise = readonly [alongX: number, alongY: number] | null

function edgeJudge(
  sight: Sight,
  part: number,
  edge: DrawnEdge,
  at: Projected,
): (share: number) => LineKind | null {
  const { x, y, z } = at
  const { from, to } = edge
  const [dx, dy, dz] = [x[to]! - x[from]!, y[to]! - y[from]!, z[to]! - z[from]!]
  const length = Math.hypot(dx, dy)
  const [nx, ny] = [-dy / length, dx / length]
  const rises = risesBeside(edge, at, [nx, ny])
  const along: Rise = [(dz * dx) / length ** 2, (dz * dy) / length ** 2]
  // Where a face lies flat enough to be told from what stands before it, the edge is seen just where the face is.
  const told = edge.sharp && rises.some((rise) => rise !== null && Math.hypot(...rise) < steepest)
  return (share) => {
    const spot: Spot = [x[from]! + share * dx, y[from]! + share * dy, z[from]! + share * dz]
    const left = look(sight.buffer, spot, [nx, ny], rises[0], along)
    const right = look(sight.buffer, spot, [-nx, -ny], rises[1], along)
    const [onLeft, onRight] = [left.face && rises[0] !== null, right.face && rises[1] !== null]
    const seen = told ? onLeft || onRight || (left.clear && right.clear) : left.clear || right.clear
    return seen ? kindOf(sight, edge, part, left, right) : null
  }
}

/** The faces to the left and right of an edge; of two on one side the one nearer to the looker. */
function risesBeside(
  edge: DrawnEdge,
  { x, y, z }: Projected,
  [nx, ny]: readonly [number, number],
): readonly [Rise, Rise] {
  const { from, to } = edge
  const [dx, dy, dz] = [x[to]! - x[from]!, y[to]! - y[from]!, z[to]! - z[from]!]
  const length = Math.hypot(dx, dy)
  const rises: [Rise, Rise] = [null, null]
  for (const point of [edge.one, edge.two]) {
    if (point < 0) continue
    const [ox, oy, oz] = [x[point]! - x[from]!, y[point]! - y[from]!, z[point]! - z[from]!]
    const side = dx * oy - dy * ox
    if (Math.abs(side) < thinnest * length) continue
    const rise: Rise = [(dz * oy - oz * dy) / side, (oz * dx - dz * ox) / side]
    const which = side > 0 ? 0 : 1
    const sign = side > 0 ? 1 : -1
    const there = rises[which]
    const outward = (each: readonly [number, number]): number => sign * (each[0] * nx + each[1] * ny)
    if (there === null || outward(rise) > outward(there)) rises[which] = rise
  }
  return rises
}

type Spot = readonly [x: number, y: number, depth: number]

interface Look {
  /** Nothing stands before the face that lies there, or before the line. */
  readonly clear: boolean
  /** What is seen there lies about where the face does. */
  readonly face: boolean
  readonly cell: number
  readonly part: number
  readonly depth: number
}

const offPicture: Look = { clear: false, face: false, cell: 0, part: -1, depth: Number.NEGATIVE_INFINITY }

function look(
  { across, part: parts, depth: depths }: DepthBuffer,
  [x, y, z]: Spot,
  [nx, ny]: readonly [number, number],
  rise: Rise,
  along: readonly [number, number],
): Look {
  const column = Math.floor(x + besideCells * nx)
  const row = Math.floor(y + besideCells * ny)
  if (column < 0 || row < 0 || column >= across || row >= across) return offPicture
  const cell = row * across + column
  const [qx, qy] = [column + 0.5 - x, row + 0.5 - y]
  const [rx, ry] = rise ?? along
  const most = steepest * Math.hypot(qx, qy)
  const rises = Math.max(-most, Math.min(most, rx * qx + ry * qy))
  const depth = depths[cell]!
  const clear = depth <= z + rises + (rise ? eps.face : eps.beyond)
  return { clear, face: clear && depth > z + rises - eps.behind, cell, part: parts[cell]!, depth }
}

function kindOf(sight: Sight, edge: DrawnEdge, part: number, left: Look, right: Look): LineKind | null {
  if (left.part !== right.part) return betweenParts(sight, left, right)
  if (left.part !== part) return edge.sharp && left.part >= 0 ? 'border' : null
  if (edge.sharp) return 'inner'
  return Math.abs(left.depth - right.depth) > jumpCells ? 'inner' : null
}

function betweenParts({ goesIn, body, aroundAll, aroundGoing }: Sight, left: Look, right: Look): LineKind {
  const [leftGoes, rightGoes] = [goesIn[left.part] === 1, goesIn[right.part] === 1]
  if (leftGoes && rightGoes) return body[left.part] === body[right.part] ? 'border' : 'goes in'
  if (leftGoes !== rightGoes && aroundGoing[(leftGoes ? right : left).cell] === 1) return 'goes in'
  const outer = left.part === -1 ? left : right.part === -1 ? right : null
  return outer && aroundAll[outer.cell] === 1 ? 'outer' : 'border'
}
