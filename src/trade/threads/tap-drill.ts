import { plain, tidyMm } from '../tolerances/tidy.ts'
import type { NoThreadLimits, SizeLimits, ThreadLimits } from './limits-of-size.ts'
import type { Thread } from './thread.ts'
import { threadLimits } from './thread-limits.ts'
import { unifiedSize } from './unified-sizes.ts'

/**
 * Share of thread that a drilled hole leaves, in both conventions: `ofBasicPercent` of the basic overlap 5H/8 (ISO),
 * `ofTradePercent` of 3H/4, on which "75 % thread" charts rest. 0 or less where the hole is as wide as the screw.
 * Source: ISO 68-1 for the first; the second from memory, reproduces public metric charts.
 */
export function threadPercent(
  thread: Pick<Thread, 'majorMm' | 'pitchMm'>,
  drillMm: number,
): { readonly ofBasicPercent: number; readonly ofTradePercent: number } {
  const open = (100 * (thread.majorMm - drillMm)) / thread.pitchMm
  return { ofBasicPercent: open / 1.082532, ofTradePercent: open / 1.299038 }
}

/** The hole to drill before a cutting tap. */
export interface TapDrill {
  readonly drillMm: number
  /** Name of the drill: `6.8 mm`, `#7`, `F`. */
  readonly drill: string
  /** Sizes of the minor diameter that the class allows. */
  readonly window: SizeLimits
  readonly inWindow: boolean
  readonly ofBasicPercent: number
  readonly ofTradePercent: number
  /** `bored to size`: no drill of the usual steps lies within the window. */
  readonly from: 'chart' | 'nearest drill' | 'bored to size'
  readonly worked: readonly string[]
}

/**
 * Where charts do not take the nearest drill. Source: a public thread page prints 10.2, two other charts 10.25 and
 * 10.3.
 */
const metricChart: ReadonlyMap<string, number> = new Map([['12 x 1.75', 10.2]])

/**
 * Drill for a tapped hole: chart drill, or major diameter less pitch to the nearest drill, and whether it falls within
 * the minor diameter of the class (6H or 2B where none is written). For cutting taps, not for forming taps.
 * Source: ISO 2306 drill = d - P, from memory; drill steps common practice, no source.
 */
export function tapDrill(thread: Thread): TapDrill | NoThreadLimits {
  const limits = threadLimits(thread, 'internal')
  if ('fault' in limits) return limits
  const chosen = (thread.system === 'metric' ? metricDrill : unifiedDrill)(thread, limits.minor)
  const percent = threadPercent(thread, chosen.drillMm)
  return {
    ...chosen,
    window: limits.minor,
    inWindow: withinWindow(chosen.drillMm, limits.minor),
    ...percent,
    worked: sayDrill(thread, chosen, limits),
  }
}

function sayDrill(
  { majorMm, pitchMm, ...thread }: Thread,
  { drillMm, drill, from }: Chosen,
  limits: ThreadLimits,
): string[] {
  const { ofBasicPercent, ofTradePercent } = threadPercent({ majorMm, pitchMm }, drillMm)
  const [major, pitch, hole] = [plain(majorMm), plain(pitchMm), plain(drillMm)]
  const { minMm, maxMm } = limits.minor
  return [
    `drill = ${major} - ${pitch} = ${plain(majorMm - pitchMm)} mm, taken ${drill} (${from})`,
    `100 x (${major} - ${hole}) / (1.082532 x ${pitch}) = ${plain(ofBasicPercent, 1)} % of the ISO overlap`,
    `100 x (${major} - ${hole}) / (1.299038 x ${pitch}) = ${plain(ofTradePercent, 1)} % as drill charts count`,
    `minor diameter of ${thread.size} at ${limits.class.text}: ${plain(minMm ?? 0)} to ${plain(maxMm ?? 0)} mm`,
  ]
}

/** Whether a hole of this size lies between the limits of the minor diameter. */
export function withinWindow(drillMm: number, { minMm, maxMm }: SizeLimits): boolean {
  return (minMm === null || drillMm >= minMm - 1e-9) && (maxMm === null || drillMm <= maxMm + 1e-9)
}

type Chosen = Pick<TapDrill, 'drillMm' | 'drill' | 'from'>

function metricDrill({ majorMm, pitchMm }: Thread, window: SizeLimits): Chosen {
  const listed = metricChart.get(`${majorMm} x ${pitchMm}`)
  return listed
    ? { drillMm: listed, drill: `${listed} mm`, from: 'chart' }
    : nearestDrill(majorMm - pitchMm, window)
}

function unifiedDrill({ majorMm, pitchMm, threadsPerInch }: Thread, window: SizeLimits): Chosen {
  const listed = unifiedSize(majorMm / 25.4, threadsPerInch ?? 0)
  if (listed) return { drillMm: tidyMm(listed.drillIn * 25.4), drill: listed.drill, from: 'chart' }
  return nearestDrill(majorMm - pitchMm, window)
}

/**
 * The drill in stock nearest to a size, halves up; where it misses the window one in steps of 0.05 mm, else the size
 * itself.
 * Source: drill steps are common practice, no source.
 */
function nearestDrill(wantedMm: number, window: SizeLimits): Chosen {
  const stock = wantedMm <= 5 ? 0.05 : wantedMm <= 14 ? 0.1 : wantedMm <= 32 ? 0.25 : 0.5
  for (const step of [stock, 0.05]) {
    const drillMm = tidyMm(Math.floor(wantedMm / step + 0.5 + 1e-9) * step)
    if (withinWindow(drillMm, window)) return { drillMm, drill: `${drillMm} mm`, from: 'nearest drill' }
  }
  const drillMm = tidyMm(wantedMm)
  return { drillMm, drill: `${plain(drillMm)} mm`, from: 'bored to size' }
}
