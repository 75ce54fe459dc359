import type { ChainResult } from '../../model/chains.ts'
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

/** A dimension of a part of which a device has one is the same each time it is named: its signs add up. */
function ofOnePiece(project: Project, { sum }: Chain): Chain['sum'] {
  const single = ({ of }: Chain['sum'][number]): boolean =>
    of !== null && project.demand.get(of.part)?.perDevice === 1
  const key = ({ of }: Chain['sum'][number]): string => `${of?.part}.${of?.feature}`
  return sum.flatMap((one, at) => {
    if (!single(one)) return [one]
    const alike = sum.filter((other) => single(other) && key(other) === key(one))
    if (sum.findIndex((other) => single(other) && key(other) === key(one)) !== at) return []
    const factor = alike.reduce((total, other) => total + other.factor, 0)
    return factor === 0 ? [] : [{ ...one, factor }]
  })
}

function addUp(project: Project, chain: Chain): ChainResult | null {
  const must = readMust(chain.must)
  if ('near' in must) return null
  const terms = ofOnePiece(project, chain).flatMap(({ of, factor }): readonly Term[] => {
    const feature = of && featureNamed(project, of.part, of.feature)
    const limits = feature ? limitsOfLink(feature) : 'is unknown'
    return of && typeof limits !== 'string' ? [{ of: `${of.part}.${of.feature}`, factor, limits }] : []
  })
  if (terms.length === 0 || terms.length < ofOnePiece(project, chain).length) return null
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
