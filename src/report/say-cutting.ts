import type { Cutting } from '../model/cutting.ts'
import type { Operation } from '../model/project.ts'

/** A figure as it is set on a machine: three digits, whole from a hundred up. */
const figure = (value: number): string =>
  Math.abs(value) >= 100 ? String(Math.round(value)) : String(Number(value.toPrecision(3)))

/** Keys that are told in a column of their own. */
export const setKeys: ReadonlySet<string> = new Set(['speed', 'feed'])

/** What to set on the machine: speed and feed, as worked out, else as typed. */
export function saySettings({ cutting, facts }: Operation): string {
  const speed = cutting?.rpm ? `${figure(cutting.rpm)} rpm` : facts.get('speed')
  const feed = cutting?.feedMmPerMin ? `${figure(cutting.feedMmPerMin)} mm/min` : facts.get('feed')
  return [speed, feed].filter((each) => each !== undefined).join('\n')
}

/** What to expect of a cut: passes, chip, power. */
export function sayCutting({ cutting, facts }: Operation): readonly string[] {
  if (!cutting) return []
  const { passes, powerW, chipMm } = cutting
  return [
    passes > 1 && !['passes', 'holes', 'peck'].some((key) => facts.has(key)) ? `${passes} passes` : null,
    chipMm === null ? null : `chip ${figure(chipMm)} mm`,
    powerW === null || powerW < 1 ? null : `about ${figure(powerW)} W at the cut`,
  ].filter((each) => each !== null)
}

/** What nobody stated, each with its source. */
export function sayAssumed({ assumed }: Cutting): readonly string[] {
  return assumed.map(({ what, value, source }) => `${what} ${value} (${source})`)
}
