import Fraction from 'fraction.js'
import { type Cents, majorUnits, roundMoney } from '../../base/money.ts'
import type { Charge, ExpectedLoss, LeftOver } from '../../model/money.ts'
import type { Part, Project } from '../../model/project.ts'
import { byName } from '../buying/started.ts'

/**
 * What bad tries cost on average, beside the plan: cost of one try for every piece asked for, x (1 / yield - 1). A try
 * costs the part's own elements: material, outside work, cutter, hours, setups included; not what is built into it.
 * Gives: only parts with a yield below 1 that are made or bought.
 * Source: starts = good pieces / yield, as in a published exercise (58,771 for 50,000 at 0.98^8).
 */
export function expectedLoss(
  project: Project,
  charges: readonly Charge[],
  leftovers: readonly LeftOver[],
  digits: number,
): ExpectedLoss[] {
  return byName(project.parts)
    .filter((part) => part.yield.lt(1) && (project.demand.get(part.id)?.toGet ?? 0) > 0)
    .map((part) => lossOf(part, ownAmounts(part, charges, leftovers), digits))
}

function lossOf(part: Part, amounts: readonly (Cents | null)[], digits: number): ExpectedLoss {
  const known = amounts.filter((amount) => amount !== null)
  if (known.length < amounts.length) return { part: part.id, attempts: null, yield: part.yield, amount: null }
  const all = known.reduce((sum, amount) => sum + amount, 0)
  const attempts = roundMoney(majorUnits(all, digits).div(part.tries), digits)
  const odds = new Fraction(1).div(part.yield).sub(1)
  // From the rounded cost, as a live cell beside it reckons.
  const amount = roundMoney(majorUnits(attempts, digits).mul(odds), digits)
  return { part: part.id, attempts, yield: part.yield, amount }
}

/** Cost of all its tries, drawn pieces aside: those are made already. */
function ownAmounts(
  { id }: Part,
  charges: readonly Charge[],
  leftovers: readonly LeftOver[],
): (Cents | null)[] {
  const own = [
    ...charges.filter(({ cause }) => cause.kind === 'part' && cause.id === id),
    ...leftovers.filter(({ part }) => part === id),
  ]
  return own.filter(({ slice }) => slice.source !== `own / ${id}`).map(({ amount }) => amount)
}
