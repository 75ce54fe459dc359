import { notFinite, type OutOfDomain, outOfDomain } from './domain.ts'
import { plain, signed } from './tidy.ts'

/** One size in a dimension chain: all in one unit of length. */
export interface StackLink {
  readonly name: string
  /** +1 where a larger part widens the gap, -1 where it narrows it; counts and levers too. */
  readonly factor: number
  /** Middle of the limits. */
  readonly middle: number
  /** Half the distance of the limits. */
  readonly half: number
}

/** A link from a nominal size with unequal deviations, `upper` above `lower`. Source: middle and half of the limits. */
export function stackLink(
  name: string,
  factor: number,
  { nominal, upper, lower }: { readonly nominal: number; readonly upper: number; readonly lower: number },
): StackLink {
  return { name, factor, middle: nominal + (upper + lower) / 2, half: (upper - lower) / 2 }
}

/** What a chain comes to. */
export interface StackUp {
  readonly middle: number
  /** Every part at its worst limit at once. */
  readonly worstHalf: number
  readonly least: number
  readonly most: number
  /** Root sum of squares: 99.73 % of assemblies where parts are independent, centred and normal with half = 3 sigma. */
  readonly statisticalHalf: number
  /** Share of each link in the statistical spread, 0 to 1; all 0 where nothing varies. */
  readonly shares: readonly number[]
  readonly worked: readonly string[]
}

/**
 * Worst-case and statistical limits of a dimension chain. For a device built once use the worst case.
 * Source: F. Scholz, Tolerance Stack Analysis Methods (1995); G = sum a x, T = sum |a| t, RSS = sqrt(sum (a t)^2).
 */
export function stackUp(links: readonly StackLink[]): StackUp | OutOfDomain {
  const fault = linkFault(links)
  if (fault) return fault
  const middle = sum(links.map((link) => link.factor * link.middle))
  const worstHalf = sum(reaches(links))
  const squares = reaches(links).map((reach) => reach ** 2)
  const total = sum(squares)
  return {
    middle,
    worstHalf,
    least: middle - worstHalf,
    most: middle + worstHalf,
    statisticalHalf: Math.sqrt(total),
    shares: squares.map((square) => (total > 0 ? square / total : 0)),
    worked: [
      `middle = ${links.map(sayTerm).join(' ')} = ${plain(middle, 6)}`,
      `worst case = ${reaches(links)
        .map((reach) => plain(reach, 6))
        .join(' + ')} = ${plain(worstHalf, 6)}`,
      `statistical = sqrt(sum of squares) = ${plain(Math.sqrt(total), 6)}, information only`,
    ],
  }
}

/**
 * Statistical half-width with a factor for what the assumptions leave out, usually 1.2 to 1.5.
 * Source: Scholz (1995), inflated root sum of squares.
 */
export function inflatedHalf(links: readonly StackLink[], inflation: number): number | OutOfDomain {
  const stack = stackUp(links)
  if ('fault' in stack) return stack
  const sane = inflation >= 1 && inflation <= 1e6
  return sane ? inflation * stack.statisticalHalf : outOfDomain('inflation', inflation, '1 or more')
}

/**
 * Half-width where a share (0 to 1) of each tolerance may be a steady shift of the mean.
 * Source: form named in Scholz (1995), expression from memory: sum of shifts + RSS of the rest.
 */
export function shiftedHalf(links: readonly StackLink[], shiftShare: number): number | OutOfDomain {
  const fault = linkFault(links)
  if (fault) return fault
  if (!(shiftShare >= 0 && shiftShare <= 1)) return outOfDomain('shiftShare', shiftShare, 'from 0 to 1')
  return shiftShare * sum(reaches(links)) + (1 - shiftShare) * Math.hypot(...reaches(links))
}

/**
 * Middle that one link must have for the smallest worst-case gap to be `least`, its tolerance unchanged.
 * Needs: the link has a factor other than 0.
 */
export function middleForLeast(links: readonly StackLink[], at: number, least: number): number | OutOfDomain {
  const stack = stackUp(links)
  if ('fault' in stack) return stack
  const link = links[at]
  if (!link || Math.abs(link.factor) < 1e-6) return outOfDomain('at', at, 'a link that moves the gap')
  if (!(Math.abs(least) <= 1e9)) return outOfDomain('least', least, 'finite')
  return link.middle + (least - stack.least) / link.factor
}

const sayTerm = ({ factor, middle }: StackLink): string => `${signed(factor)} x ${plain(middle, 6)}`

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0)

const reaches = (links: readonly StackLink[]): number[] =>
  links.map(({ factor, half }) => Math.abs(factor) * half)

function linkFault(links: readonly StackLink[]): OutOfDomain | null {
  for (const { name, factor, middle, half } of links) {
    const fault = notFinite({
      [`factor of ${name}`]: factor,
      [`middle of ${name}`]: middle,
      [`half of ${name}`]: half,
    })
    if (fault) return fault
    if (half < 0) return outOfDomain(`half of ${name}`, half, '0 or more')
  }
  return null
}
