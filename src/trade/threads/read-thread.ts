import { nearNames } from '../../base/near-names.ts'
import { metricSizes } from './metric-selection.ts'
import { atEnd, faultAt, readCursor } from './read-cursor.ts'
import { readMetricThread } from './read-metric-thread.ts'
import { readUnifiedThread } from './read-unified-thread.ts'
import type { Thread, ThreadFault } from './thread.ts'
import { unifiedSizes } from './unified-sizes.ts'

const mostCharacters = 200
const names = [
  ...metricSizes.flatMap(({ diameterMm, coarseMm, fineMm }) => [
    ...(coarseMm === null ? [] : [`M${diameterMm}`]),
    ...fineMm.map((pitch) => `M${diameterMm}x${pitch}`),
  ]),
  ...unifiedSizes.map(({ size, threadsPerInch, series }) => `${size}-${threadsPerInch} ${series}`),
]

/**
 * The thread a text means, metric (`M3`, `M14x1-6H depth 6 mm`, `M16 x Ph3 P1.5`, `M8x1-LH`) or unified
 * (`1/4-20 UNC-2B`, `#4-40`, `10-32`), or why it means none, where, and what is near.
 */
export function readThread(typed: string): Thread | ThreadFault {
  const cursor = readCursor(typed)
  const whole = { at: cursor.at, length: typed.trim().length }
  if (atEnd(cursor)) return faultAt(cursor, 'empty', whole)
  if (typed.length > mostCharacters) return faultAt(cursor, 'not a thread', { at: cursor.at, length: 40 })
  const comma = /\d,(?=\d)/.exec(typed)
  if (comma)
    return faultAt(cursor, 'comma', { at: comma.index + 1, length: 1 }, [
      typed.trim().replace(/(\d),(?=\d)/g, '$1.'),
    ])
  const text = cursor.text.trim()
  if (/^m ?\d/.test(text)) return faultAt(cursor, 'not a thread', whole, [`M${text.slice(1).trimStart()}`])
  const read = text.startsWith('M') ? readMetricThread(cursor) : readUnifiedThread(cursor)
  const lost = 'fault' in read && read.fault === 'not a thread'
  return lost ? faultAt(cursor, 'not a thread', whole, nearNames(text, names)) : read
}

/** Whether a reading of a thread failed. */
export function isThreadFault<T extends object>(read: T | ThreadFault): read is ThreadFault {
  return 'fault' in read
}
