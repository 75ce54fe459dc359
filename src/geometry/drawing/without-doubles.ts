/** A line with a weight, heavier first. */
export interface WeighedLine {
  readonly weight: number
  readonly points: readonly number[]
}

/** Lines nearer than this to one drawn already are the same line, in cells: a tenth of a millimetre on paper. */
const nearCells = 2
/** And only where they run nearly the same way. */
const cosAlike = 0.94
/** Shorter pieces are left, so that lines still meet at their ends. */
const leastCells = 5
const reachCells = 4

/**
 * Lines without those stretches that run along a line drawn before: edges of parts that meet flush would else be drawn
 * twice, a hair apart.
 * Needs: the lines that matter most first. Cost: O(cells along the lines).
 */
export function withoutDoubles<T extends WeighedLine>(lines: readonly T[], across: number): readonly T[] {
  const owner = new Int32Array(across * across).fill(-1)
  const way = new Float32Array(2 * across * across)
  return lines.flatMap((line, number) => {
    const steps = stepsAlong(line.points)
    const doubled = longRuns(steps.map((step) => isDrawn({ owner, way, across }, number, step)))
    for (const [i, step] of steps.entries()) if (!doubled[i]) draw({ owner, way, across }, number, step)
    return doubled.includes(true) ? piecesLeft(steps, doubled).map((points) => ({ ...line, points })) : [line]
  })
}

interface Ink {
  /** Number of the line drawn in each cell; -1: none. */
  readonly owner: Int32Array
  /** Which way it runs there. */
  readonly way: Float32Array
  readonly across: number
}

/** A piece of a line about one cell long. */
interface Step {
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
}

function stepsAlong(points: readonly number[]): readonly Step[] {
  const steps: Step[] = []
  for (let i = 0; i + 3 < points.length; i += 2) {
    const [ax, ay, bx, by] = [points[i]!, points[i + 1]!, points[i + 2]!, points[i + 3]!]
    const count = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay)))
    const at = (k: number): [number, number] =>
      k === count ? [bx, by] : [ax + (k / count) * (bx - ax), ay + (k / count) * (by - ay)]
    for (let k = 0; k < count; k++) steps.push({ from: at(k), to: at(k + 1) })
  }
  return steps
}

function cellOf({ from, to }: Step): readonly [column: number, row: number] {
  return [Math.floor((from[0] + to[0]) / 2), Math.floor((from[1] + to[1]) / 2)]
}

function wayOf({ from, to }: Step): readonly [number, number] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
}

function draw({ owner, way, across }: Ink, number: number, step: Step): void {
  const [column, row] = cellOf(step)
  if (column < 0 || row < 0 || column >= across || row >= across) return
  const cell = row * across + column
  owner[cell] = number
  way.set(wayOf(step), 2 * cell)
}

function isDrawn({ owner, way, across }: Ink, number: number, step: Step): boolean {
  const [column, row] = cellOf(step)
  const [wx, wy] = wayOf(step)
  for (let y = Math.max(0, row - nearCells); y <= Math.min(across - 1, row + nearCells); y++)
    for (let x = Math.max(0, column - nearCells); x <= Math.min(across - 1, column + nearCells); x++) {
      const cell = y * across + x
      if (owner[cell] === -1 || owner[cell] === number) continue
      if (Math.abs(wx * way[2 * cell]! + wy * way[2 * cell + 1]!) > cosAlike) return true
    }
  return false
}

/** Marks kept where they hold over many steps together, less what a piece needs to reach the line it runs into. */
function longRuns(marks: readonly boolean[]): boolean[] {
  const kept = [...marks]
  for (let first = 0; first < kept.length; ) {
    let past = first + 1
    while (past < kept.length && marks[past] === marks[first]) past++
    if (marks[first]) {
      const short = past - first < leastCells + 2 * reachCells
      const from = first === 0 ? 0 : first + reachCells
      const to = past === kept.length ? past : past - reachCells
      kept.fill(false, first, short ? past : from)
      kept.fill(false, short ? past : to, past)
    }
    first = past
  }
  return kept
}

function piecesLeft(steps: readonly Step[], doubled: readonly boolean[]): readonly (readonly number[])[] {
  const pieces: number[][] = []
  for (const [i, { from, to }] of steps.entries()) {
    if (doubled[i]) continue
    if (i === 0 || doubled[i - 1]) pieces.push([...from])
    pieces.at(-1)!.push(...to)
  }
  return pieces.filter((piece) => piece.length > 2 * leastCells)
}
