import { leastHitting } from './least-hitting.ts'

/** Statements in conflict, by number, and whether no fewer are. */
export interface Smallest {
  readonly statements: readonly number[]
  readonly smallest: boolean
}

/** How the statements behave. */
export interface Statements {
  readonly count: number
  /** Statements that hold together with those given, these among them, none to add; `null`: those given cannot hold together; `undefined`: not known. */
  readonly grown: (from: readonly number[]) => readonly number[] | null | undefined
}

/** Most statements, and most rounds, for which the smallest is asked. */
const mostStatements = 60
const mostRounds = 300

/**
 * A smallest set of statements that cannot hold together, starting from one known.
 * Method: whatever holds together and cannot be added to leaves some statements out, and every conflict has one of
 * those; the fewest statements that meet all such leftovers found so far are tried. Where they cannot hold together
 * they are a smallest conflict, else they are grown and give the next leftover.
 * Source: the duality of conflicts and corrections, R. Reiter, "A theory of diagnosis from first principles" (1987);
 * from memory.
 */
export function smallestConflict({ count, grown }: Statements, known: readonly number[]): Smallest {
  if (known.length === 1) return { statements: known, smallest: true }
  if (count > mostStatements) return { statements: known, smallest: false }
  const leftovers: (readonly number[])[] = []
  for (let round = 0; round < mostRounds; round++) {
    const tried = leastHitting(leftovers)
    if (tried === null) break
    if (tried.length >= known.length) return { statements: known, smallest: true }
    const whole = grown(tried)
    if (whole === null) return { statements: [...tried].sort((a, b) => a - b), smallest: true }
    if (whole === undefined) break
    const kept = new Set(whole)
    leftovers.push(Array.from({ length: count }, (_, number) => number).filter((one) => !kept.has(one)))
  }
  return { statements: known, smallest: false }
}
