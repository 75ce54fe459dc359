import { nearNames } from '../base/near-names.ts'
import type { Place } from '../base/place.ts'
import { qty } from '../diagnostics/catalogue/qty.ts'
import { ref } from '../diagnostics/catalogue/ref.ts'
import type { Report } from '../diagnostics/message.ts'
import type { Count } from '../model/project.ts'
import type { Spot } from '../source/spot.ts'

export type NameKind =
  | 'person'
  | 'machine'
  | 'tool'
  | 'cutter'
  | 'material'
  | 'vendor'
  | 'plate'
  | 'work'
  | 'part'
  | 'step'
  | 'chain'

/** One name and what it stands for. */
export interface Named {
  readonly kind: NameKind
  readonly at: Place
}

/** Every name of the project. Names are unique over all kinds. */
export interface Names {
  readonly all: ReadonlyMap<string, Named>
  /** Names that something points at. */
  readonly used: Set<string>
}

const endsLikeCount = / [x×]\d+$/

/** Collects names in order; reports the second of two alike and names that end like a count. */
export function collectNames(
  entries: readonly { readonly name: string; readonly kind: NameKind; readonly at: Place }[],
  report: Report,
): Names {
  const all = new Map<string, Named>()
  for (const { name, kind, at } of entries) {
    const first = all.get(name)
    if (first) report(ref.doubledName, at, { name, kind, first })
    else all.set(name, { kind, at })
    if (endsLikeCount.test(name)) report(ref.countInName, at, { name })
  }
  return { all, used: new Set() }
}

function namesOf(names: Names, kinds: readonly NameKind[]): string[] {
  return [...names.all].filter(([, { kind }]) => kinds.includes(kind)).map(([name]) => name)
}

/** The name at a place, where it stands for one of the kinds; `null` where it does not (reported). */
export function nameAt(
  names: Names,
  report: Report,
  spot: Spot<string> | null,
  kinds: readonly NameKind[],
): string | null {
  if (!spot) return null
  return named(names, report, spot.text.trim(), spot.at, kinds)
}

/** Whether a name stands for one of the kinds; marks it used, reports where it does not. */
export function named(
  names: Names,
  report: Report,
  name: string,
  at: Place,
  kinds: readonly NameKind[],
): string | null {
  const found = names.all.get(name)
  if (found && kinds.includes(found.kind)) {
    names.used.add(name)
    return name
  }
  const wanted = kinds.join(' or ')
  if (found) report(ref.wrongKind, at, { name, wanted, is: found.kind })
  else {
    const known = namesOf(names, kinds)
    report(ref.unknownName, at, { name, wanted, near: nearNames(name, known), known })
  }
  return null
}

/**
 * `part xN` at a place: the longest known name wins, then the count; one where no count is written.
 * `null` where the part is unknown or the count is none (reported).
 */
export function countAt(names: Names, report: Report, spot: Spot<string>): Count | null {
  const text = spot.text.trim()
  const whole = names.all.get(text)
  const parts = /^(.*\S)\s+[x×](\d+)$/.exec(text)
  const name = whole || !parts ? text : parts[1]!
  const part = named(names, report, name, spot.at, ['part'])
  if (part === null) return null
  const count = whole || !parts ? 1 : Number(parts[2])
  if (count >= 1 && count <= 100_000) return { part, count, at: spot.at }
  report(qty.badCount, spot.at, { text, part })
  return null
}
