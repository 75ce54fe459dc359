import { coarsePitchMm, metricSelection } from './metric-selection.ts'
import { faultAt, type ReadCursor, take } from './read-cursor.ts'
import { readThreadTail, type ThreadTail } from './read-thread-tail.ts'
import { spellThread } from './spell-thread.ts'
import type { Thread, ThreadFault } from './thread.ts'

interface Pitch {
  readonly pitchMm: number
  readonly leadMm: number
  readonly coarseByDefault: boolean
}

/** The thread after the letter M: `M14x1-6H`, `M16 x Ph3 P1.5`, `M8x1-LH`. Needs: the cursor stands on the M. */
export function readMetricThread(cursor: ReadCursor): Thread | ThreadFault {
  const from = cursor.at
  const head = take(cursor, /M ?(\d+(?:\.\d+)?)/)
  if (!head) return faultAt(cursor, 'not a thread', { at: from, length: cursor.text.length - from })
  const majorMm = Number(head[1])
  const pitch = readPitch(cursor, majorMm, from)
  if ('fault' in pitch) return pitch
  const span = { at: from, length: cursor.at - from }
  const fault = pitchFault(cursor, majorMm, pitch, span)
  if (fault) return fault
  const tail = readThreadTail(cursor, 'metric')
  if ('fault' in tail) return tail
  const starts = Math.round(pitch.leadMm / pitch.pitchMm)
  if (tail.starts !== null && tail.starts !== starts) return faultAt(cursor, 'lead', span)
  return threadOf(majorMm, pitch, tail)
}

function readPitch(cursor: ReadCursor, majorMm: number, from: number): Pitch | ThreadFault {
  const lead = take(cursor, / ?x ?Ph ?(\d+(?:\.\d+)?) ?P ?(\d+(?:\.\d+)?)/i)
  if (lead) return { pitchMm: Number(lead[2]), leadMm: Number(lead[1]), coarseByDefault: false }
  const single = take(cursor, / ?x ?(?:P ?)?(\d+(?:\.\d+)?)/i)
  if (single) return { pitchMm: Number(single[1]), leadMm: Number(single[1]), coarseByDefault: false }
  const at = cursor.at
  const dangling = take(cursor, / ?x[^ ]*/)
  if (dangling) return faultAt(cursor, 'pitch', { at, length: dangling[0].length }, spellings(majorMm))
  // `M8-1.25` is how some catalogues write M8x1.25.
  const hyphen = take(cursor, / ?- ?(\d+\.\d+|\d+)(?=$| |-)/)
  if (hyphen)
    return faultAt(cursor, 'pitch', { at, length: hyphen[0].length }, [`M${majorMm}x${Number(hyphen[1])}`])
  const coarse = coarsePitchMm(majorMm)
  return coarse === null
    ? faultAt(cursor, 'no coarse pitch', { at: from, length: at - from }, nearSizes(majorMm))
    : { pitchMm: coarse, leadMm: coarse, coarseByDefault: true }
}

/** A pitch must be above 0, leave a core inside the rounded root, and divide the lead. */
function pitchFault(
  cursor: ReadCursor,
  majorMm: number,
  { pitchMm, leadMm }: Pitch,
  span: { readonly at: number; readonly length: number },
): ThreadFault | null {
  const sensible =
    majorMm >= 0.2 && majorMm <= 1000 && pitchMm >= 0.02 && majorMm - 1.226869 * pitchMm >= 0.2 * majorMm
  if (!sensible) return faultAt(cursor, 'pitch', span, spellings(majorMm))
  const starts = leadMm / pitchMm
  const whole = starts >= 0.999 && starts <= 100 && Math.abs(starts - Math.round(starts)) < 1e-6
  return whole ? null : faultAt(cursor, 'lead', span)
}

function threadOf(majorMm: number, pitch: Pitch, tail: ThreadTail): Thread {
  const { pitchMm, leadMm } = pitch
  const thread = {
    system: 'metric' as const,
    size: `M${majorMm}`,
    majorMm,
    ...pitch,
    threadsPerInch: null,
    starts: Math.round(leadMm / pitchMm),
    hand: tail.hand ?? ('right' as const),
    series: null,
    class: tail.class,
    engagement: tail.engagement,
    depthMm: tail.depthMm,
    through: tail.through ?? false,
  }
  return { ...thread, text: spellThread(thread) }
}

function spellings(majorMm: number): string[] {
  const { pitchesMm } = metricSelection(majorMm, 0)
  return pitchesMm.length === 0 ? nearSizes(majorMm) : pitchesMm.slice(0, 3).map((p) => `M${majorMm}x${p}`)
}

function nearSizes(majorMm: number): string[] {
  const { pitchesMm, neighboursMm } = metricSelection(majorMm, 0)
  const own = pitchesMm.slice(0, 3).map((p) => `M${majorMm}x${p}`)
  return own.length > 0 ? own : neighboursMm.map((d) => `M${d}`)
}
