/** A rectangle: `x` along the plate's length, `y` along its width. Whole steps of length. */
export interface Sides {
  readonly x: number
  readonly y: number
}

/** Plates of one size, all alike. */
export interface PlateSides extends Sides {
  readonly count: number
}

/** Which pieces are to go onto which plates. */
export interface PlateProblem {
  /** As they lie on the plate unless turned; deepest first, then longest. */
  readonly kinds: readonly Sides[]
  /** Pieces of each kind. */
  readonly counts: readonly number[]
  readonly plates: readonly PlateSides[]
  /** Between two pieces; none at an edge. */
  readonly kerf: number
  /** Whether a piece may be turned by a quarter; no where grain or rolling direction matters. */
  readonly turn: boolean
}

/** A piece in its place: the corner nearest to the plate's, and its sides as it lies. */
export interface Lying extends Sides {
  readonly kind: number
  readonly atX: number
  readonly atY: number
}

/** One plate begun: the index of its size, and its pieces. */
export interface FilledPlate {
  readonly plate: number
  readonly pieces: readonly Lying[]
}

/** The ways in which a piece may lie: as given, and turned where that is allowed and makes a difference. */
export function waysToLie({ x, y }: Sides, turn: boolean): Sides[] {
  return turn && x !== y
    ? [
        { x, y },
        { x: y, y: x },
      ]
    : [{ x, y }]
}

/** Whether a rectangle goes onto a plate as it lies. */
export function goesOnto({ x, y }: Sides, plate: Sides): boolean {
  return x <= plate.x && y <= plate.y
}

/**
 * Whether the plates could hold the pieces by area, each piece and each plate with one cut more on both sides.
 * Gives: false only where they cannot.
 */
export function hasArea({ kinds, counts, plates, kerf }: PlateProblem): boolean {
  const area = ({ x, y }: Sides): bigint => BigInt(x + kerf) * BigInt(y + kerf)
  const needed = kinds.reduce((sum, kind, k) => sum + area(kind) * BigInt(counts[k]!), 0n)
  return needed <= plates.reduce((sum, plate) => sum + area(plate) * BigInt(plate.count), 0n)
}
