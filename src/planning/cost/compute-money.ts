import { minorDigits } from '../../base/money.ts'
import type { Money, Source, Total } from '../../model/money.ts'
import type { Project } from '../../model/project.ts'
import type { Purchase } from '../../model/purchase.ts'
import type { TaskNetwork } from '../../model/tasks.ts'
import { compareIds } from '../buying/started.ts'
import { boughtSources } from './bought-sources.ts'
import type { Claimed } from './claim.ts'
import { divide } from './divide.ts'
import { expectedLoss } from './expected-loss.ts'
import { fates } from './fates.ts'
import { hoursSources } from './hours-sources.ts'
import { ownStockSources } from './own-stock-sources.ts'
import { byCause, byDevice, byProcess, byVendor, sliceOf, totalOf, wholeOf } from './totals.ts'

/**
 * Three views of the money: cash, what these devices used, what is left over. Every source of money is divided whole
 * over those who used it, so cash + drawn from own stock + hours at rate = charged + left over, whatever is known.
 * Needs: `purchase` and `network` belong to `project`.
 */
export function computeMoney(project: Project, purchase: Purchase, network: TaskNetwork): Money {
  const { currency, qty } = project.device
  const digits = minorDigits(currency)
  const claimed = allSources(project, purchase, network, digits)
  const sources = claimed.map(({ source }) => source)
  const divided = claimed.map((each) => divide(each, digits))
  const charges = divided.flatMap((each) => each.charges)
  const leftovers = divided.flatMap((each) => each.leftovers)
  const views = {
    cash: totalFrom(sources, 'line', 'missing'),
    fromOwnStock: totalFrom(sources, 'own stock'),
    hoursAtRate: totalFrom(sources, 'hours'),
    charged: totalOf(charges.map(sliceOf)),
    leftOver: totalOf(leftovers.map(sliceOf)),
  }
  return {
    currency,
    digits,
    ...views,
    difference: differenceOf(views),
    sources,
    charges,
    leftovers,
    byPart: byCause(charges),
    byProcess: byProcess(charges),
    byVendor: byVendor(sources),
    byDevice: byDevice(views.charged, qty),
    expectedLoss: expectedLoss(project, charges, leftovers, digits),
  }
}

function allSources(project: Project, purchase: Purchase, network: TaskNetwork, digits: number): Claimed[] {
  const all = fates(project)
  return [
    ...boughtSources(purchase, all),
    ...ownStockSources(project, purchase, digits, all),
    ...hoursSources(project, network, digits, all),
  ].sort((a, b) => compareIds(a.source.id, b.source.id))
}

function totalFrom(sources: readonly Source[], ...kinds: readonly Source['kind'][]): Total {
  return totalOf(sources.filter(({ kind }) => kinds.includes(kind)).map(wholeOf))
}

function differenceOf(
  views: Record<'cash' | 'fromOwnStock' | 'hoursAtRate' | 'charged' | 'leftOver', Total>,
): number {
  const came = views.cash.known + views.fromOwnStock.known + views.hoursAtRate.known
  return came - views.charged.known - views.leftOver.known
}
