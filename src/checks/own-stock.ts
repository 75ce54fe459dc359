import { buy } from '../diagnostics/catalogue/buy.ts'
import type { NetworkCheck } from './check.ts'

/** BUY12: cutters that wear out faster than they are there. BUY13: what is drawn from own stock without a worth. */
export const ownStock: NetworkCheck = ({ project, purchase }, report) => {
  for (const { cutter, worn, have } of purchase.wear) {
    const one = project.cutters.get(cutter)!
    const whole = Number(worn.ceil().valueOf())
    if (have > 0 && whole > have) report(buy.cutterWornOut, one.at, { cutter, worn: whole, have })
    if (have > 0 && worn.gt(0) && one.worth === null && one.offers.length === 0)
      report(buy.worthUnknown, one.at, { item: cutter })
  }
  for (const part of project.parts.values()) {
    const drawn = project.demand.get(part.id)?.fromStock ?? 0
    const { way } = part
    const offered = (way.kind === 'bought' || way.kind === 'board') && way.offers.length > 0
    if (drawn > 0 && part.worth === null && !offered) report(buy.worthUnknown, part.at, { item: part.id })
  }
}
