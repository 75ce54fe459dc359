import { readSize } from '../fits/read-size.ts'
import { sizeLimits } from '../fits/size-limits.ts'
import { type FeatureText, readFeature } from '../joins/read-feature.ts'
import type { OutOfDomain } from './domain.ts'
import { type SampledStack, sampledStack } from './sampled-stack.ts'
import { type StackLink, type StackUp, stackUp } from './stack-up.ts'
import { tidyMm } from './tidy.ts'

/** Least and most that must hold, mm. */
export type MustHold = readonly [least: number, most: number]

/** A gap may be nothing or less than nothing, as no size of a part may. */
const evenly = /^([-+−]?\s*\d+(?:\.\d+)?)\s*(?:mm)?\s*(?:±|\+\/-)\s*(\d+(?:\.\d+)?)(?:\s*mm)?$/

const fromTo = /^([-+−]?\d+(?:\.\d+)?)\s*(?:mm)?\s*(?:\/|\.\.|to)\s*([-+−]?\d+(?:\.\d+)?)(?:\s*mm)?$/
const signedNumber = (text: string): number => Number(text.replace('−', '-').replace(/[+\s]/g, ''))

/** The limits a text such as `0.30 ± 0.10 mm`, `0 ± 0.1 mm` or `0.2 / 0.4 mm` asks of a gap, or what is near it. */
export function readMust(text: string): MustHold | { readonly near: readonly string[] } {
  const about = evenly.exec(text.trim())
  if (about) {
    const [middle, half] = [signedNumber(about[1]!), Number(about[2])]
    return [tidyMm(middle - half), tidyMm(middle + half)]
  }
  const both = fromTo.exec(text.trim())
  if (both) {
    const [one, other] = [signedNumber(both[1]!), signedNumber(both[2]!)]
    return [Math.min(one, other), Math.max(one, other)]
  }
  const size = readSize(text)
  if ('fault' in size) return { near: size.near }
  const limits = sizeLimits(size)
  return 'fault' in limits ? { near: [] } : [limits.minMm, limits.maxMm]
}

/** One dimension of a chain: which feature, how often and with which sign. */
export interface ChainPart {
  /** `base.depth`. */
  readonly of: string
  readonly factor: number
  readonly feature: FeatureText
}

/** Least and most of a feature, mm, or why it has none, in words that follow its text. */
export function limitsOfLink(feature: FeatureText): MustHold | string {
  const read = readFeature(feature)
  if (read.kind === 'thread') return 'is a thread'
  if (read.kind !== 'size') return 'is no size'
  if (read.limits) return [read.limits.minMm, read.limits.maxMm]
  return read.size.kind === 'plain' ? 'has no tolerance' : 'has no limits here'
}

/** A chain added up in the worst case and by root sum of squares, and whether it holds. */
export interface JudgedChain {
  readonly stack: StackUp
  readonly holds: 'always' | 'by the odds' | 'not always' | 'not in the middle'
  /** For each dimension given, its share of the statistical spread. */
  readonly shares: readonly number[]
}

/** A chain added up in a third way too: drawn. */
export interface ClosedChain extends JudgedChain {
  readonly sampled: SampledStack
  readonly drawn: number
}

/** Draws in all, so that a long chain takes no longer than a short one. */
const draws = 400_000
const slack = 1e-9

type Parts = readonly { readonly of: string; readonly factor: number; readonly limits: MustHold }[]

/**
 * A chain as `judgeChain` has it, and by drawing from a fixed seed.
 * Source: as `stackUp` and `sampledStack`.
 */
export function closeChain(parts: Parts, must: MustHold): ClosedChain | OutOfDomain {
  const judged = judgeChain(parts, must)
  if ('fault' in judged) return judged
  const links = parts.flatMap((part) => piecesOf(part))
  const drawn = Math.max(2000, Math.min(20_000, Math.floor(draws / Math.max(1, links.length))))
  const sampled = sampledStack(links, { spread: 'normal', count: drawn, seed: 1, limits: must })
  return 'fault' in sampled ? sampled : { ...judged, sampled, drawn }
}

/**
 * A chain in the worst case and by root sum of squares, judged by what must hold. A count is of pieces, so `x2` is two
 * dimensions that vary each by itself.
 * Source: as `stackUp`.
 */
export function judgeChain(parts: Parts, must: MustHold): JudgedChain | OutOfDomain {
  const stack = stackUp(parts.flatMap((part) => piecesOf(part)))
  if ('fault' in stack) return stack
  const counts = parts.map(({ factor }) => Math.abs(factor))
  const shares = counts.map((count, at) => {
    const from = counts.slice(0, at).reduce((all, one) => all + one, 0)
    return stack.shares.slice(from, from + count).reduce((all, one) => all + one, 0)
  })
  return { stack, holds: verdict(stack, must), shares }
}

function piecesOf({ of, factor, limits }: Parts[number]): readonly StackLink[] {
  const [least, most] = limits
  const link = { name: of, factor: Math.sign(factor), middle: (least + most) / 2, half: (most - least) / 2 }
  return Array.from({ length: Math.abs(factor) }, () => link)
}

function verdict({ middle, least, most, statisticalHalf }: StackUp, must: MustHold): JudgedChain['holds'] {
  const within = (low: number, high: number): boolean => low >= must[0] - slack && high <= must[1] + slack
  if (!within(middle, middle)) return 'not in the middle'
  if (within(least, most)) return 'always'
  return within(middle - statisticalHalf, middle + statisticalHalf) ? 'by the odds' : 'not always'
}
