import { nearNames } from '../../base/near-names.ts'
import type { GradeAndPosition, MetricThreadClass, ThreadGender, UnifiedThreadClass } from './thread.ts'

/** Classes in use, as designations write them. Source: ISO 965-1 recommended classes, from memory. */
export const usualMetricClasses: readonly string[] = [
  ...['4H', '5H', '6H', '7H', '8H', '5G', '6G', '7G', '8G'],
  ...['3h4h', '4h', '5h4h', '5h6h', '6h', '7h6h', '4g6g', '5g6g', '6g', '7g6g', '8g', '9g8g'],
  ...['6f', '6e', '7e6e', '8e', '9e8e'],
]

/** Classes of unified threads. Source: ASME B1.1, from memory. */
export const unifiedClasses: readonly string[] = ['1A', '2A', '3A', '1B', '2B', '3B']

/**
 * The class a text such as `6H`, `6g` or `5g6g` names, or spellings near to it. One part counts for both diameters.
 * Source: grades ISO 965-1: D2 and D1 4 to 8, d2 3 to 9, d 4, 6 and 8; positions G, H and e, f, g, h; from memory.
 */
export function readMetricClass(text: string): MetricThreadClass | { readonly near: readonly string[] } {
  const found = /^(\d)([a-zA-Z])(?:(\d)([a-zA-Z]))?$/.exec(text)
  if (!found) return { near: nearClasses(text) }
  const pitch = { grade: Number(found[1]), position: found[2] }
  const crest = found[3] ? { grade: Number(found[3]), position: found[4] } : pitch
  const gender: ThreadGender = /[A-Z]/.test(pitch.position!) ? 'internal' : 'external'
  if (!isPosition(pitch) || !isPosition(crest) || !sameGender(pitch, crest))
    return { near: nearClasses(text) }
  const pitchGrades = gender === 'internal' ? '45678' : '3456789'
  const crestGrades = gender === 'internal' ? '45678' : '468'
  if (!pitchGrades.includes(`${pitch.grade}`) || !crestGrades.includes(`${crest.grade}`))
    return { near: nearClasses(text) }
  return { system: 'metric', text, gender, pitch, crest }
}

/** The class `2A` or `3B` names, or spellings near to it. */
export function readUnifiedClass(text: string): UnifiedThreadClass | { readonly near: readonly string[] } {
  const found = /^([123])([AB])$/.exec(text)
  if (!found) return { near: nearNames(text, unifiedClasses) }
  const closeness = Number(found[1]) as 1 | 2 | 3
  return { system: 'unified', text, gender: found[2] === 'A' ? 'external' : 'internal', closeness }
}

/** The usual class of a metric thread: 6H and 6g, up to 1.4 mm 5H and 6h. Source: ISO 965-1 medium quality. */
export function usualMetricClass(gender: ThreadGender, majorMm: number): MetricThreadClass {
  const [internal, external] = majorMm <= 1.4 ? ['5H', '6h'] : ['6H', '6g']
  return readMetricClass(gender === 'internal' ? internal! : external!) as MetricThreadClass
}

/** The usual class of a unified thread: 2B and 2A. Source: ASME B1.1, from memory. */
export function usualUnifiedClass(gender: ThreadGender): UnifiedThreadClass {
  return readUnifiedClass(gender === 'internal' ? '2B' : '2A') as UnifiedThreadClass
}

function isPosition(part: {
  readonly grade: number
  readonly position: string | undefined
}): part is GradeAndPosition {
  return /^[efghGH]$/.test(part.position ?? '')
}

const sameGender = (a: GradeAndPosition, b: GradeAndPosition): boolean =>
  /[GH]/.test(a.position) === /[GH]/.test(b.position)

/** A single class that needs its crest said comes first: `5g` gives `5g6g`. */
function nearClasses(text: string): string[] {
  const longer = usualMetricClasses.filter((known) => known.startsWith(text) && known !== text)
  return [...new Set([...longer, ...nearNames(text, usualMetricClasses)])].slice(0, 3)
}
