import type { JoinPress, JoinSide } from '../../model/joins.ts'
import type { Fit } from '../../trade/fits/fit.ts'

const um = (value: number): string => `${Math.round(value * 10) / 10 + 0} um`
const range = (least: number, most: number): string => `${um(least).replace(' um', '')} to ${um(most)}`
const side = ({ part, feature, text }: JoinSide): string => `${part}.${feature} (${text})`

/** How two sizes fit: `… and …: 0 to 24 um of clearance`. */
export function sayFit(first: JoinSide, second: JoinSide, fit: Fit): string {
  return `${side(first)} and ${side(second)}: ${sayClearance(fit)}`
}

/** The range of a fit in words. */
export function sayClearance({
  kind,
  largestClearanceUm: most,
  smallestClearanceUm: least,
}: Pick<Fit, 'kind' | 'largestClearanceUm' | 'smallestClearanceUm'>): string {
  if (kind === 'clearance') return `slides, ${range(least, most)} of clearance`
  if (kind === 'interference') return `press, ${range(-most, -least)} of overlap`
  return `slides or presses, from ${um(-least)} of overlap to ${um(most)} of clearance`
}

/** That two threads screw together, and how far. */
export function sayThread(first: JoinSide, second: JoinSide, engagementMm: number | null): string {
  const far = engagementMm === null ? '' : `, ${Number(engagementMm.toFixed(3))} mm of thread in each other`
  return `${side(first)} and ${side(second)} screw together${far}`
}

const figure = (value: number): string => `${Number(value.toPrecision(2))}`

/** What pressing takes, and what it leaves behind. */
export function sayPress({ forceN, pressureMpa, torqueNm, hoopMpa }: JoinPress): string {
  const both = ([least, most]: readonly [number, number]): string => `${figure(least)} to ${figure(most)}`
  return `press with about ${both(forceN)} N (${both(pressureMpa)} MPa between them); it then turns at ${both(torqueNm)} N m, and the pull around the hole is ${both(hoopMpa)} MPa`
}

/** Why no force is said where one was asked for. */
export function sayNoPress(missing: readonly string[]): string {
  return `the force to press is not worked out: ${missing.join(', ')} missing`
}
