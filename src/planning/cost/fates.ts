import Fraction from 'fraction.js'
import type { Demand, Part, Project } from '../../model/project.ts'

/** How the pieces of a part that are made or bought for it part company when the devices are done. */
export interface Fate {
  /** Pieces made or bought, tries included. */
  readonly started: number
  /** Share of each cost element that stays as spares, on the shelf or inside a spare it was built into; 0 to 1. */
  readonly kept: Fraction
  /** Pieces drawn from what is here and built in; own pieces that only serve as spares stay where they are. */
  readonly drawn: number
  /** Share of the drawn pieces that stays inside a spare. */
  readonly drawnKept: Fraction
  readonly why: 'spare' | 'tool'
}

const zero = new Fraction(0)
const one = new Fraction(1)

/**
 * What becomes of every part's pieces. Pieces here are used first, for what is needed before spares. A spare keeps its
 * own share of each cost element; extra tries are scrap and charged. What is built into a spare board or assembly is
 * kept with it. A tool is kept whole, and one that is here is used without being drawn.
 * Needs: parts do not contain each other in a ring (a diagnostic says so; such parts keep nothing).
 */
export function fates(project: Project): ReadonlyMap<string, Fate> {
  const kept = new Map<string, Fraction>()
  const keptOf = (id: string): Fraction => {
    const known = kept.get(id)
    if (known) return known
    kept.set(id, zero)
    const demand = project.demand.get(id)
    const tool = project.parts.get(id)?.role === 'tool'
    const found = demand ? piecesKept(demand, tool ? one : insideKept(demand, keptOf)) : zero
    kept.set(id, found)
    return found
  }
  return new Map(
    [...project.parts.values()].map((part) => {
      const demand = project.demand.get(part.id)
      return [part.id, demand ? fateOf(part, demand, insideKept(demand, keptOf)) : nothing]
    }),
  )
}

const nothing: Fate = { started: 0, kept: zero, drawn: 0, drawnKept: zero, why: 'spare' }

function fateOf(part: Part, demand: Demand, inside: Fraction): Fate {
  const started = demand.toGet * part.tries
  const drawn = Math.min(demand.fromStock, demand.needed)
  if (part.role === 'tool') return { started, kept: one, drawn: 0, drawnKept: zero, why: 'tool' }
  const made = madeOf(demand)
  const stays = new Fraction(made.spares).add(inside.mul(made.needed))
  return { started, kept: started === 0 ? zero : stays.div(started), drawn, drawnKept: inside, why: 'spare' }
}

/** Pieces to get that are built in, and those that are spares. */
function madeOf({ needed, fromStock, toGet }: Demand): { needed: number; spares: number } {
  const built = Math.min(toGet, Math.max(0, needed - fromStock))
  return { needed: built, spares: toGet - built }
}

/** Newly made or bought pieces that stay with the spares. */
function piecesKept(demand: Demand, inside: Fraction): Fraction {
  const made = madeOf(demand)
  return new Fraction(made.spares).add(inside.mul(made.needed))
}

/** Share of the pieces built in that ends up inside a spare. */
function insideKept({ needed, uses }: Demand, keptOf: (part: string) => Fraction): Fraction {
  if (needed === 0) return zero
  const pieces = uses.reduce(
    (sum, { into, count }) => (into === null ? sum : sum.add(keptOf(into).mul(count))),
    zero,
  )
  const share = pieces.div(needed)
  return share.gt(1) ? one : share
}
