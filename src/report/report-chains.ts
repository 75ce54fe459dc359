import type { Results } from '../model/results.ts'
import type { ReportChain } from './report-model.ts'

const rounded = (value: number): number => Number(value.toPrecision(6)) + 0

/** Every dimension chain that could be added up. */
export function reportChains({ chains }: Results): readonly ReportChain[] {
  return chains.map(({ chain, must, least, most, middle, worst, statistical, outside, ...rest }) => ({
    ...{ name: chain, must, mustLeast: least, mustMost: most, middle },
    ...{ worstLeast: worst[0], worstMost: worst[1] },
    ...{ statisticalLeast: statistical[0], statisticalMost: statistical[1] },
    ...{ outside, drawn: rest.drawn, holds: rest.holds, worked: rest.worked },
    links: rest.links.map((link) => ({ ...link, share: rounded(link.share) })),
  }))
}
