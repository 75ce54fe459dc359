import { nearNames } from '../../base/near-names.ts'
import { tidyMm } from '../tolerances/tidy.ts'
import { faultAt, type ReadCursor, take } from './read-cursor.ts'
import { readThreadTail } from './read-thread-tail.ts'
import { spellThread } from './spell-thread.ts'
import type { Thread, ThreadFault } from './thread.ts'
import { unifiedSizes } from './unified-sizes.ts'

interface Size {
  readonly size: string
  readonly majorIn: number
}

interface Pitch {
  readonly threadsPerInch: number
  readonly series: string | null
}

const series = ['UNC', 'UNF', 'UNEF', 'UNS', 'UN']

/** The thread `1/4-20 UNC-2B`, `#4-40`, `10-32` or `1 1/8-7` names. */
export function readUnifiedThread(cursor: ReadCursor): Thread | ThreadFault {
  const from = cursor.at
  const size = readSize(cursor)
  if (!size) return faultAt(cursor, 'not a thread', { at: from, length: cursor.text.length - from })
  const pitch = readPitch(cursor, size, from)
  if ('fault' in pitch) return pitch
  const [majorMm, pitchMm] = [tidyMm(size.majorIn * 25.4), 25.4 / pitch.threadsPerInch]
  if (!(majorMm - 1.226869 * pitchMm >= 0.2 * majorMm) || pitch.threadsPerInch > 400)
    return faultAt(cursor, 'pitch', { at: from, length: cursor.at - from }, spellings(size))
  const tail = readThreadTail(cursor, 'unified')
  if ('fault' in tail) return tail
  const starts = tail.starts ?? 1
  const thread = {
    ...{ system: 'unified' as const, size: size.size, majorMm, pitchMm, starts, leadMm: pitchMm * starts },
    ...{ threadsPerInch: pitch.threadsPerInch, series: pitch.series, class: tail.class },
    ...{ hand: tail.hand ?? ('right' as const), engagement: tail.engagement, depthMm: tail.depthMm },
    ...{ through: tail.through ?? false, coarseByDefault: false },
  }
  return { ...thread, text: spellThread(thread) }
}

/** A number without `#` is a screw number where series threads have it with these threads per inch, else inches. */
function readSize(cursor: ReadCursor): Size | null {
  const numbered = take(cursor, /(?:#|No\.? ?)(\d+)/i)
  if (numbered) return screwNumber(`#${Number(numbered[1])}`)
  const bare = take(cursor, /(\d+)(?=-(\d+)(?!\/|\d|[A-Z]|\.))/)
  if (bare) {
    const named = unifiedSizes.find(
      (row) => row.size === `#${bare[1]}` && row.threadsPerInch === Number(bare[2]),
    )
    if (named) return named
    const inches = Number(bare[1])
    if (inches >= 1 && inches <= 6 && Number(bare[2]) <= 20) return { size: `${inches}`, majorIn: inches }
    return screwNumber(`#${inches}`)
  }
  const mixed = take(cursor, /(?:(\d+)[ -])?(\d+)\/(\d+)"?/)
  if (mixed) return fractionSize(mixed)
  const decimal = take(cursor, /0?(\.\d+)"?(?=[ -])/)
  return decimal ? decimalSize(Number(decimal[1])) : null
}

function screwNumber(size: string): Size | null {
  return unifiedSizes.find((row) => row.size === size) ?? null
}

function fractionSize(found: RegExpExecArray): Size | null {
  const [whole, top, bottom] = [Number(found[1] ?? 0), Number(found[2]), Number(found[3])]
  const majorIn = whole + top / bottom
  const sound = bottom > 0 && top > 0 && top < bottom && majorIn <= 12
  return sound ? { size: `${whole > 0 ? `${whole} ` : ''}${top}/${bottom}`, majorIn } : null
}

function decimalSize(majorIn: number): Size {
  const known = unifiedSizes.find((row) => Math.abs(row.majorIn - majorIn) < 0.0006)
  return known ?? { size: `${majorIn}`, majorIn }
}

function readPitch(cursor: ReadCursor, size: Size, from: number): Pitch | ThreadFault {
  const written = take(cursor, / ?- ?(\d+(?:\.\d+)?)(?![A-Z]\b)/)
  const named = readSeries(cursor)
  if (named !== null && typeof named !== 'string') return named
  const threadsPerInch = written ? Number(written[1]) : pitchOfSeries(size, named)
  const span = { at: from, length: cursor.at - from }
  if (threadsPerInch === null || threadsPerInch <= 0) return faultAt(cursor, 'pitch', span, spellings(size))
  const listed = rowsOf(size).find((row) => row.threadsPerInch === threadsPerInch)
  const claims = named === 'UNC' || named === 'UNF'
  if (claims && rowsOf(size).length > 0 && listed?.series !== named)
    return faultAt(cursor, 'series', span, spellings(size))
  return { threadsPerInch, series: named ?? listed?.series ?? null }
}

function readSeries(cursor: ReadCursor): string | ThreadFault | null {
  const found = take(cursor, /[ -]*([A-Z]{2,5})(?![A-Za-z0-9])/)
  if (!found) return null
  const word = found[1]!
  if (series.includes(word)) return word
  if (word === 'LH' || word === 'RH') {
    cursor.at -= found[0].length
    return null
  }
  const old: Readonly<Record<string, string>> = { NC: 'UNC', NF: 'UNF', NEF: 'UNEF' }
  const near = old[word] ? [old[word]] : nearNames(word, series)
  return faultAt(cursor, 'series', { at: cursor.at - word.length, length: word.length }, near)
}

const rowsOf = (size: Size) => unifiedSizes.filter((row) => row.size === size.size)

function pitchOfSeries(size: Size, named: string | null): number | null {
  return rowsOf(size).find((row) => row.series === named)?.threadsPerInch ?? null
}

function spellings(size: Size): string[] {
  return rowsOf(size).map((row) => `${row.size}-${row.threadsPerInch} ${row.series}`)
}
