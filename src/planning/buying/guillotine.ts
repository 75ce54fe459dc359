import type { Effort } from './fit-bars.ts'
import { goesOnto, hasArea, type Lying, type PlateProblem, type Sides, waysToLie } from './plate-problem.ts'

/** A rectangle from which some pieces are sawn by cuts straight through: one piece, or two rectangles joined. */
export interface Box extends Sides {
  readonly kind: number | null
  readonly parts: readonly [Box, Box] | null
  /** Whether the second part lies beside the first (along x), else behind it (along y). */
  readonly beside: boolean
}

/** Every set of pieces by number, and the smallest rectangles from which each can be sawn. */
export interface Sawable {
  /** What one piece of each kind adds to the number of a set. */
  readonly strides: readonly number[]
  /** Pieces of each kind in each set. */
  readonly sets: readonly (readonly number[])[]
  /** None of them is larger than another in both directions. */
  readonly boxes: readonly (readonly Box[])[]
}

/** Most sets of pieces that are looked at: 11 pieces all different, or 11 of each of three kinds. */
const mostSets = 2_048

/**
 * The smallest rectangles from which each set of the pieces can be sawn with cuts straight through.
 * Method: a set is one piece, or two smaller sets side by side with one cut between, tried in every way.
 * Gives: all of them, so that what is not here cannot be sawn; `null` where there are too many sets or the effort ran
 * out. Cost: O(pairs of sets x rectangles squared).
 */
export function sawable(problem: PlateProblem, effort: Effort): Sawable | null {
  const { counts } = problem
  const strides = counts.map((_, k) => counts.slice(0, k).reduce((all, count) => all * (count + 1), 1))
  const number = counts.reduce((all, count) => all * (count + 1), 1)
  if (number > mostSets) return null
  const sets = Array.from({ length: number }, (_, set) =>
    counts.map((count, k) => Math.floor(set / strides[k]!) % (count + 1)),
  )
  const boxes: Box[][] = sets.map(() => [])
  for (const [k, sides] of problem.kinds.entries()) {
    for (const way of waysToLie(sides, problem.turn)) {
      const into = boxes[strides[k]!]!
      if (counts[k]! > 0 && isNew(problem, into, way))
        keep(into, { ...way, kind: k, parts: null, beside: false })
    }
  }
  // Sets that can be sawn from some plate, in the order of their numbers; only they can be parts of others.
  const sawn: number[] = []
  for (let set = 1; set < number; set += 1) {
    if (!hasRoom(problem, sets[set]!)) continue
    for (const part of sawn) {
      if (part > set - part) break
      if (boxes[set - part]!.length === 0 || !isPart(sets[part]!, sets[set]!)) continue
      for (const one of boxes[part]!)
        for (const other of boxes[set - part]!) join(problem, boxes[set]!, one, other)
      effort.left -= boxes[part]!.length * boxes[set - part]!.length
    }
    effort.left -= Math.ceil(sawn.length / 10)
    if (effort.left <= 0) return null
    if (boxes[set]!.length > 0) sawn.push(set)
  }
  return { strides, sets, boxes }
}

/** Whether some plate has the area for so many pieces. */
function hasRoom(problem: PlateProblem, counts: readonly number[]): boolean {
  return problem.plates.some((plate) => hasArea({ ...problem, counts, plates: [{ ...plate, count: 1 }] }))
}

function isPart(part: readonly number[], set: readonly number[]): boolean {
  for (let k = 0; k < part.length; k += 1) if (part[k]! > set[k]!) return false
  return true
}

/** Both ways to join two rectangles with one cut between. */
function join(problem: PlateProblem, into: Box[], one: Box, other: Box): void {
  const { kerf } = problem
  const beside = { x: one.x + kerf + other.x, y: Math.max(one.y, other.y) }
  const behind = { x: Math.max(one.x, other.x), y: one.y + kerf + other.y }
  if (isNew(problem, into, beside)) keep(into, { ...beside, kind: null, parts: [one, other], beside: true })
  if (isNew(problem, into, behind)) keep(into, { ...behind, kind: null, parts: [one, other], beside: false })
}

/** Whether a rectangle goes onto some plate and none that is there is as small. */
function isNew({ plates }: PlateProblem, there: readonly Box[], { x, y }: Sides): boolean {
  for (const box of there) if (box.x <= x && box.y <= y) return false
  for (const plate of plates) if (x <= plate.x && y <= plate.y) return true
  return false
}

/** Adds a rectangle; those that are larger than it go. */
function keep(into: Box[], box: Box): void {
  let kept = 0
  for (const each of into) {
    if (goesOnto(box, each)) continue
    into[kept] = each
    kept += 1
  }
  into.length = kept
  into.push(box)
}

/** Where each piece of a rectangle lies. */
export function lyingIn(box: Box, kerf: number, atX = 0, atY = 0): Lying[] {
  if (box.kind !== null) return [{ kind: box.kind, atX, atY, x: box.x, y: box.y }]
  const [one, other] = box.parts!
  const second = box.beside
    ? lyingIn(other, kerf, atX + one.x + kerf, atY)
    : lyingIn(other, kerf, atX, atY + one.y + kerf)
  return [...lyingIn(one, kerf, atX, atY), ...second]
}
