import type { ChainResult } from '../../model/chains.ts'
import { dimensionsOf } from '../../model/dimensions-of.ts'
import { featureNamed } from '../../model/features.ts'
import type { Chain, Project } from '../../model/project.ts'
import { closeChain, limitsOfLink, type MustHold, readMust } from '../../trade/tolerances/close-chain.ts'
import { tidyMm } from '../../trade/tolerances/tidy.ts'

/** Every dimension chain of which all dimensions have limits, added up. */
export function addUpChains(project: Project): readonly ChainResult[] {
  return [...project.chains.values()].flatMap((chain) => addUp(project, chain) ?? [])
}

interface Term {
  readonly of: string
  readonly factor: number
  readonly limits: MustHold
}

function addUp(project: Project, chain: Chain): ChainResult | null {
  const must = readMust(chain.must)
  if ('near' in must) return null
  const dimensions = dimensionsOf(project, chain)
  const terms = dimensions.flatMap(({ of, factor }): readonly Term[] => {
    const feature = of && featureNamed(project, of.part, of.feature)
    const limits = feature ? limitsOfLink(feature) : 'is unknown'
    return of && typeof limits !== 'string' ? [{ of: `${of.part}.${of.feature}`, factor, limits }] : []
  })
  if (terms.length === 0 || terms.length < dimensions.length) return null
  const closed = closeChain(terms, must)
  if ('fault' in closed) return null
  const { stack, sampled, drawn, holds, shares } = closed
  const about = (half: number): readonly [number, number] => [
    tidyMm(stack.middle - half),
    tidyMm(stack.middle + half),
  ]
  return {
    chain: chain.id,
    must: chain.must,
    least: must[0],
    most: must[1],
    middle: tidyMm(stack.middle),
    worst: about(stack.worstHalf),
    statistical: about(stack.statisticalHalf),
    outside: sampled.shareOutside,
    drawn,
    holds,
    links: terms.map(({ of, factor, limits }, at) => ({
      ...{ of, factor, least: limits[0], most: limits[1] },
      share: shares[at] ?? 0,
    })),
    worked: stack.worked,
  }
}
