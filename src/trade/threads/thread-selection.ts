import { metricSelection } from './metric-selection.ts'
import type { Thread } from './thread.ts'
import { unifiedSizes } from './unified-sizes.ts'

/** Whether a standard lists a thread; one it does not list can be cut, but tools and gauges must be asked for. */
export interface ThreadSelection {
  readonly listed: boolean
  /** The list asked: `ISO 261`, or `ASME B1.1 UNC and UNF`. */
  readonly list: string
  /** In the shorter list of screws, bolts and nuts too; `null` where not known. */
  readonly forFasteners: boolean | null
  /** Preference of the diameter, 1 best; `null` where the diameter is not listed or the list has none. */
  readonly choice: 1 | 2 | 3 | null
  /** Listed threads of the same diameter, else of its neighbours. */
  readonly listedNear: readonly string[]
  /** What to make sure of before cutting an unlisted thread; empty for a listed one. */
  readonly toCheck: readonly string[]
}

const unlisted = ['a tap, die or thread mill can be had', 'a gauge can be had', 'the mating part has it too']

/** What the standards say about diameter and pitch of a thread. Source: ISO 261, ISO 262, ASME B1.1. */
export function threadSelection(thread: Thread): ThreadSelection {
  return thread.system === 'metric' ? metric(thread) : unified(thread)
}

function metric({ majorMm, pitchMm, size }: Thread): ThreadSelection {
  const found = metricSelection(majorMm, pitchMm)
  const same = found.pitchesMm.map((pitch) => `${size}x${pitch}`)
  return {
    listed: found.inIso261,
    list: 'ISO 261',
    forFasteners: found.inIso262,
    choice: found.choice,
    listedNear: same.length > 0 ? same : found.neighboursMm.map((diameter) => `M${diameter}`),
    toCheck: found.inIso261 ? [] : unlisted,
  }
}

function unified({ majorMm, threadsPerInch }: Thread): ThreadSelection {
  const same = unifiedSizes.filter((row) => Math.abs(row.majorIn * 25.4 - majorMm) < 1e-4)
  const listed = same.some((row) => row.threadsPerInch === threadsPerInch)
  return {
    listed,
    list: 'ASME B1.1 UNC and UNF, #0 to 1 in',
    forFasteners: null,
    choice: null,
    listedNear: same.map((row) => `${row.size}-${row.threadsPerInch} ${row.series}`),
    toCheck: listed ? [] : unlisted,
  }
}
