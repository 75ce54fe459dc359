import { nearNames } from '../../base/near-names.ts'
import { inUnit, readAs } from '../../base/quantity.ts'
import { isFault } from '../../base/quantity-fault.ts'
import { atEnd, faultAt, type ReadCursor, take } from './read-cursor.ts'
import type { EngagementGroup, ThreadClass, ThreadFault, ThreadSystem } from './thread.ts'
import { readMetricClass, readUnifiedClass } from './thread-class.ts'

/** What follows diameter and pitch: class, hand, engagement, starts in words, depth; `null` where not said. */
export interface ThreadTail {
  readonly class: ThreadClass | null
  readonly hand: 'right' | 'left' | null
  readonly engagement: EngagementGroup | null
  readonly starts: number | null
  readonly depthMm: number | null
  readonly through: boolean | null
}

const silent: ThreadTail = {
  class: null,
  hand: null,
  engagement: null,
  starts: null,
  depthMm: null,
  through: null,
}
const startWords = ['one', 'two', 'three', 'four', 'five', 'six']

type Part = Partial<ThreadTail>
type PartReader = (cursor: ReadCursor, system: ThreadSystem) => Part | ThreadFault | null

/** All that follows diameter and pitch, in any order, each said once. */
export function readThreadTail(cursor: ReadCursor, system: ThreadSystem): ThreadTail | ThreadFault {
  let tail = silent
  while (true) {
    take(cursor, /[ ,]*-?[ ,]*/)
    if (atEnd(cursor)) return tail
    const from = cursor.at
    const part = readPart(cursor, system)
    if ('fault' in part) return part
    const again = Object.keys(part).some((key) => tail[key as keyof ThreadTail] !== null)
    if (again) return faultAt(cursor, 'twice', { at: from, length: cursor.at - from })
    tail = { ...tail, ...part }
  }
}

function readPart(cursor: ReadCursor, system: ThreadSystem): Part | ThreadFault {
  for (const read of partReaders) {
    const part = read(cursor, system)
    if (part) return part
  }
  const word = /[^ ]+/.exec(cursor.text.slice(cursor.at))![0]
  const near = nearNames(word, ['LH', 'RH', 'depth', 'through', 'UNC', 'UNF', '2A', '2B', '6H', '6g'])
  return faultAt(cursor, 'left over', { at: cursor.at, length: word.length }, near)
}

const partReaders: readonly PartReader[] = [
  (cursor) => take(cursor, /(?:LH|left[- ]hand(?:ed)?)(?![A-Za-z0-9])/i) && { hand: 'left' as const },
  (cursor) => take(cursor, /(?:RH|right[- ]hand(?:ed)?)(?![A-Za-z0-9])/i) && { hand: 'right' as const },
  (cursor) => take(cursor, /(?:through|thru)(?![A-Za-z0-9])/i) && { through: true },
  readStarts,
  readDepth,
  (cursor) => {
    const found = take(cursor, /([SNL])(?![A-Za-z0-9])/)
    return found && { engagement: found[1] as EngagementGroup }
  },
  readClass,
]

function readStarts(cursor: ReadCursor): Part | null {
  const found = take(cursor, /\(? ?(one|two|three|four|five|six) starts?\)?/i)
  return found && { starts: startWords.indexOf(found[1]!.toLowerCase()) + 1 }
}

/** `depth 6 mm`, `6 mm deep`; the words may also stand as the drawing sign. */
function readDepth(cursor: ReadCursor): Part | ThreadFault | null {
  const ahead = take(cursor, /(?:depth|deep|↧) ?/i)
  const found = take(
    cursor,
    ahead ? /(.+?)(?= +(?:LH|RH|through)\b| *$)/ : /(\d+(?:\.\d+)? ?(?:mm|cm|in|thou)) +deep\b/i,
  )
  if (!found)
    return ahead && faultAt(cursor, 'depth', { at: cursor.at - ahead[0].length, length: ahead[0].length })
  const value = found[1]!
  const read = readAs(value, 'length')
  const at = cursor.at - found[0].length
  if (isFault(read)) {
    const near = 'perhaps' in read ? read.perhaps : []
    return faultAt(cursor, 'depth', { at, length: value.length }, near)
  }
  const depthMm = inUnit(read.value, 'mm')!.valueOf()
  return depthMm > 0 ? { depthMm } : faultAt(cursor, 'depth', { at, length: value.length })
}

function readClass(cursor: ReadCursor, system: ThreadSystem): Part | ThreadFault | null {
  const at = cursor.at
  const found = take(cursor, /(\d{1,2}[A-Za-z](?:\d{1,2}[A-Za-z])?)(?:\/(\w+))?(?![A-Za-z0-9])/)
  if (!found) return null
  const span = { at, length: found[0].length }
  if (found[2]) return faultAt(cursor, 'pair of classes', span, [found[1]!, found[2]])
  const read = system === 'metric' ? readMetricClass(found[1]!) : readUnifiedClass(found[1]!)
  return 'near' in read ? faultAt(cursor, 'class', span, read.near) : { class: read }
}
