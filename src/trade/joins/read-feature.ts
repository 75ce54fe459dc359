import { readSize } from '../fits/read-size.ts'
import { type Limits, sizeLimits } from '../fits/size-limits.ts'
import type { ReadSize, SizeFault } from '../fits/size-text.ts'
import { isThreadFault, readThread } from '../threads/read-thread.ts'
import type { Thread, ThreadFault, ThreadGender } from '../threads/thread.ts'
import { unifiedSize } from '../threads/unified-sizes.ts'
import { type GeneralClass, generalLengthMm } from '../tolerances/general-tolerance.ts'
import { tidyMm } from '../tolerances/tidy.ts'

/** A dimension of a part as typed, with what tells an inside from an outside and which general tolerances hold. */
export interface FeatureText {
  readonly name: string
  readonly text: string
  /** How it is made; `null`: no operation names it. */
  readonly madeBy: { readonly process: string } | null
  readonly general: GeneralClass | null
}

/** What the text of a feature means. */
export type ReadFeature =
  | ReadThread
  | ReadToleranced
  /** Neither thread nor size: `Ra 0.8`, `R2`, words. */
  | { readonly kind: 'words' }
  | { readonly kind: 'thread fault'; readonly fault: ThreadFault }
  | { readonly kind: 'size fault'; readonly fault: SizeFault }

/** A thread, and whether it is cut inside or outside; `null` where nothing tells. */
export interface ReadThread {
  readonly kind: 'thread'
  readonly thread: Thread
  readonly gender: ThreadGender | null
}

/** A size with its limits. */
export interface ReadToleranced {
  readonly kind: 'size'
  readonly size: ReadSize
  /** `null` where nothing tells. */
  readonly gender: 'hole' | 'shaft' | null
  /** `null`: neither its own nor by general tolerances. */
  readonly limits: Limits | null
  /** The class of general tolerances that the limits are of; `null`: they are its own. */
  readonly limitsFrom: GeneralClass | null
}

/** What a feature of a part says: a thread, a toleranced size, or words. */
export function readFeature(feature: FeatureText): ReadFeature {
  const text = feature.text.trim()
  if (startsLikeThread(text)) {
    const thread = readThread(text)
    if (!isThreadFault(thread)) return { kind: 'thread', thread, gender: genderOf(thread, feature) }
    const size = /^[\d.]/.test(text) ? readSize(text) : thread
    if ('fault' in size) return { kind: 'thread fault', fault: thread }
  }
  if (!/^[\dØø⌀∅.]/.test(text)) return { kind: 'words' }
  const size = readSize(text)
  if ('fault' in size) return isPlainlyNoSize(size) ? { kind: 'words' } : { kind: 'size fault', fault: size }
  return { kind: 'size', size, gender: sideOf(size, feature), ...limitsOf(size, feature.general) }
}

/** `M14x1`, `#10-32`, `1/4-20`, `1 1/8-7`, `10-32` where a standard lists it, and what names a unified series. */
function startsLikeThread(text: string): boolean {
  if (/^M ?\d/.test(text) || /^m\d+(?:\.\d+)? ?x ?\d/.test(text) || /^#\d/.test(text)) return true
  if (/^\d[\d/. -]*"? ?-? ?\d* ?UN(?:C|F|EF|S)?\b/.test(text)) return true
  if (/^(?:\d+[ -])?\d+\/\d+"? ?- ?\d/.test(text)) return true
  const bare = /^(\d+)-(\d+)(?![\d.])/.exec(text)
  return bare !== null && (screwNumbers.has(`${bare[1]}-${bare[2]}`) || unified(bare[1]!, bare[2]!))
}

const screwNumbers: ReadonlySet<string> = new Set([
  ...['0-80', '1-64', '1-72', '2-56', '2-64', '3-48', '3-56', '4-40', '4-48', '5-40', '5-44'],
  ...['6-32', '6-40', '8-32', '8-36', '10-24', '10-32', '12-24', '12-28'],
])

const unified = (inches: string, perInch: string): boolean =>
  unifiedSize(Number(inches), Number(perInch)) !== null

/** Words behind a number, such as `3 holes` or `0.5 x 45 deg`: nothing in them looks like a tolerance. */
function isPlainlyNoSize(fault: SizeFault): boolean {
  const unclear = fault.fault === 'left over' || fault.fault === 'not a size'
  const looks = /±|\+\/?-|(?:^|\s)[A-Za-z]{1,2}\d{1,2}(?![\d.])/.test(fault.text)
  return unclear && fault.near.length === 0 && !looks
}

const inside = /\b(?:bores?|holes?|nuts?|tapped|pockets?|recess|counterbore|socket)\b/i
const outside =
  /\b(?:shafts?|pins?|studs?|spigot|boss|journal|screws?|bolts?|plugs?|tenon|shank|rods?|spindle|axle)\b/i
const along = /\b(?:depth|deep|distance|spacing|pitch|position|length|width|thickness|height|from|to)\b/i
const cutsInside: ReadonlySet<string> = new Set(['tap', 'thread mill', 'bore', 'ream', 'drill'])

/** Inside or outside by how it is made, else by the words of its name; `null` where they do not tell. */
function byMakingOrName({ name, madeBy }: FeatureText): 'inside' | 'outside' | null {
  if (along.test(name)) return null
  if ((madeBy !== null && cutsInside.has(madeBy.process)) || inside.test(name)) return 'inside'
  return outside.test(name) ? 'outside' : null
}

function genderOf(thread: Thread, feature: FeatureText): ThreadGender | null {
  if (thread.class) return thread.class.gender
  const side = byMakingOrName(feature)
  if (side !== null) return side === 'inside' ? 'internal' : 'external'
  return thread.through ? 'internal' : null
}

function sideOf(size: ReadSize, feature: FeatureText): 'hole' | 'shaft' | null {
  if (size.kind === 'class') return size.class.gender
  if (size.kind === 'fit') return null
  const side = byMakingOrName(feature)
  return side === null ? null : side === 'inside' ? 'hole' : 'shaft'
}

/** Limits of its own, else by general tolerances. Source: ISO 286-1; ISO 2768-1. */
function limitsOf(
  size: ReadSize,
  general: GeneralClass | null,
): Pick<ReadToleranced, 'limits' | 'limitsFrom'> {
  const own = sizeLimits(size)
  if (!('fault' in own)) return { limits: own, limitsFrom: null }
  const half = size.kind === 'plain' && general !== null ? generalLengthMm(general, size.nominalMm) : null
  if (half === null || size.kind !== 'plain') return { limits: null, limitsFrom: null }
  const halfUm = Math.round(half * 1000)
  const worked = `general tolerance ${general} at ${size.nominalMm} mm = +/- ${half} mm`
  const limits = {
    ...{ nominalMm: size.nominalMm, upperUm: halfUm, lowerUm: -halfUm, worked: [worked] },
    ...{ minMm: tidyMm(size.nominalMm - half), maxMm: tidyMm(size.nominalMm + half) },
  }
  return { limits, limitsFrom: general }
}
