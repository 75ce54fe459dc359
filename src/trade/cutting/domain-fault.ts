import type { CuttingFault } from './types.ts'

type Bounds = readonly [least: number, most: number]

/** Whole numbers. */
const counts: ReadonlySet<string> = new Set(['holes', 'cuts', 'passes', 'flutes'])

/** Bounds of single figures; zero is allowed where a thing may be absent. */
const byName: Readonly<Record<string, Bounds>> = {
  holes: [1, 1e5],
  cuts: [1, 1e5],
  passes: [1, 1e4],
  flutes: [1, 100],
  clearanceMm: [0, 1000],
  overhangMm: [0, 1000],
  runoutMm: [0, 1000],
  innerDiameterMm: [0, 1e4],
  linkSeconds: [0, 3600],
  secondsPerPeck: [0, 3600],
  clampSeconds: [0, 86_400],
  toolChangeSeconds: [0, 86_400],
  airFactor: [1, 10],
  efficiencyRatio: [0.05, 1],
  pathRatio: [0.05, 1],
  stepRatio: [0.001, 1],
  pointAngleDeg: [10, 180],
  enteringAngleDeg: [5, 90],
  kc11NPerMm2: [1, 20_000],
  mc: [0, 0.9],
}

/** Bounds by the unit a name ends in, longest ending first: far outside any bench, close enough to keep sums finite. */
const byUnit: readonly (readonly [ending: string, bounds: Bounds])[] = [
  ['Mm2PerMin', [0.01, 1e7]],
  ['MmPerMin', [0.001, 1e6]],
  ['MmPerRev', [1e-6, 50]],
  ['MPerMin', [0.01, 1e4]],
  ['LoadMm', [1e-6, 10]],
  ['ChipMm', [1e-6, 10]],
  ['Rpm', [0.1, 1e6]],
  ['rpm', [0.1, 1e6]],
  ['Mm3', [1e-6, 1e12]],
  ['Mm2', [1e-4, 1e10]],
  ['Mm', [1e-4, 1e5]],
  ['W', [0.1, 1e7]],
  ['Nm', [1e-4, 1e6]],
]

/**
 * The first number that lies where no bench has it: not finite, zero, negative, past any machine, or a broken count.
 * Needs: names that end in their unit. Gives: `null` where every number can be reckoned with; absent ones are skipped.
 * Source: bounds of this project, common practice, no source.
 */
export function domainFault(...given: readonly object[]): CuttingFault | null {
  for (const [what, value] of given.flatMap((one) => Object.entries(one) as [string, unknown][])) {
    if (typeof value !== 'number') continue
    const [least, most] = byName[what] ?? byUnit.find(([ending]) => what.endsWith(ending))?.[1] ?? [0, 1e12]
    const inside = Number.isFinite(value) && value >= least && value <= most
    if (!inside || (counts.has(what) && !Number.isInteger(value)))
      return { fault: 'out of domain', what, least, most }
  }
  return null
}
