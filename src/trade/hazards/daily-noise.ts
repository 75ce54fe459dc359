import { allWithin } from './all-within.ts'

/** A spell of noise of one level. */
export interface NoiseSpell {
  readonly levelDbA: number
  readonly hours: number
}

/** Daily noise and where it stands against the action values. */
export interface DailyNoise {
  readonly levelDbA: number
  readonly stands: NoiseStanding
}

/** Offer ear protection from the lower action value on, wear it from the upper one on. */
export type NoiseStanding = 'below' | 'lower action value' | 'upper action value' | 'above the limit'

/** Daily values in dB(A). Source: Directive 2003/10/EC, from memory; other countries have others. */
export const noiseValues = { lower: 80, upper: 85, limit: 87 } as const

/**
 * Noise of a day as if it lasted 8 h: 10 lg(sum of T / 8 h x 10^(L / 10)); `null` without spells or out of domain.
 * Source: the daily exposure level of ISO 1999 and Directive 2003/10/EC, from memory.
 */
export function dailyNoise(spells: readonly NoiseSpell[]): DailyNoise | null {
  const hours = spells.map((spell) => spell.hours)
  const levels = spells.map((spell) => spell.levelDbA)
  const total = hours.reduce((sum, each) => sum + each, 0)
  if (!allWithin(levels, 0, 200) || !allWithin(hours, 0, 24) || !(total > 0 && total <= 24)) return null
  const energy = spells.reduce((sum, { levelDbA, hours: T }) => sum + (T / 8) * 10 ** (levelDbA / 10), 0)
  const levelDbA = 10 * Math.log10(energy)
  return { levelDbA, stands: standing(levelDbA) }
}

function standing(levelDbA: number): NoiseStanding {
  if (levelDbA > noiseValues.limit) return 'above the limit'
  if (levelDbA >= noiseValues.upper) return 'upper action value'
  return levelDbA >= noiseValues.lower ? 'lower action value' : 'below'
}
