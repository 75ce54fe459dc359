import { chn } from '../diagnostics/catalogue/chn.ts'
import type { Report } from '../diagnostics/message.ts'
import { dimensionsOf } from '../model/dimensions-of.ts'
import { featureNamed } from '../model/features.ts'
import type { Chain, Project } from '../model/project.ts'
import {
  closeChain,
  judgeChain,
  limitsOfLink,
  type MustHold,
  readMust,
} from '../trade/tolerances/close-chain.ts'
import type { ModelCheck } from './check.ts'

/** CHN01, CHN02: chains that cannot be added up. CHN03, CHN04: chains that may miss what must hold. */
export const dimensionChains: ModelCheck = (project, report) => {
  for (const chain of project.chains.values()) look(project, chain, report)
}

interface Term {
  readonly of: string
  readonly factor: number
  readonly limits: MustHold
}

function look(project: Project, chain: Chain, report: Report): void {
  const must = readMust(chain.must)
  if ('near' in must)
    report(chn.mustUnread, chain.mustAt, { chain: chain.id, text: chain.must, near: must.near })
  const dimensions = dimensionsOf(project, chain)
  const terms = termsOf(project, chain, dimensions, report)
  if ('near' in must || terms.length === 0 || terms.length < dimensions.length) return
  // Most chains always hold: nothing is drawn for them.
  const judged = judgeChain(terms, must)
  if ('fault' in judged || judged.holds === 'always') return
  const closed = closeChain(terms, must)
  if ('fault' in closed) return
  const { stack, sampled, shares, holds } = closed
  const at = shares.indexOf(Math.max(...shares))
  const { middle, least, most, statisticalHalf } = stack
  const facts = {
    ...{ chain: chain.id, must, worst: [least, most] as const, middle, outside: sampled.shareOutside },
    statistical: [middle - statisticalHalf, middle + statisticalHalf] as const,
    most: { of: terms[at]!.of, share: shares[at]! },
  }
  report(holds === 'not in the middle' ? chn.missesInTheMiddle : chn.mayMiss, chain.mustAt, facts)
}

/** The dimensions that have limits; those that have none are reported. */
function termsOf(project: Project, chain: Chain, dimensions: Chain['sum'], report: Report): readonly Term[] {
  return dimensions.flatMap(({ of, factor, at }): readonly Term[] => {
    const feature = of && featureNamed(project, of.part, of.feature)
    if (!of || !feature) return []
    const name = `${of.part}.${of.feature}`
    const limits = limitsOfLink(feature)
    if (typeof limits !== 'string') return [{ of: name, factor, limits }]
    report(chn.linkWithoutLimits, at, {
      ...{ chain: chain.id, of: name, text: feature.text, because: limits },
    })
    return []
  })
}
