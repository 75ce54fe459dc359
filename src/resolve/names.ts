import { nearNames } from '../base/near-names.ts'
import type { Place } from '../base/place.ts'
import { qty } from '../diagnostics/catalogue/qty.ts'
import { ref } from '../diagnostics/catalogue/ref.ts'
import type { Report } from '../diagnostics/message.ts'
import type { Count } from '../model/project.ts'
import type { Spot } from '../source/spot.ts'

/** What a name may stand for. */
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
  /** Names that a misspelt one may have meant: that they are unused would only follow from it. */
  readonly suspected: Set<string>
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
  return { all, used: new Set(), suspected: new Set() }
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
    const near = nearNames(name, known)
    for (const one of near) names.suspected.add(one)
    report(ref.unknownName, at, { name, wanted, near, known })
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
  const odd = whole || names.all.has(name) ? null : oddCount(names, text)
  if (odd) {
    names.suspected.add(odd.part)
    report(qty.badCount, spot.at, { text, part: odd.part, count: odd.count })
    return null
  }
  const part = named(names, report, name, spot.at, ['part'])
  if (part === null) return null
  const count = whole || !parts ? 1 : Number(parts[2])
  if (count >= 1 && count <= 100_000) return { part, count, at: spot.at }
  names.suspected.add(part)
  report(qty.badCount, spot.at, { text, part, count: null })
  return null
}

/** A known part with a count written in another way: `2x bearing`, `bearing x 2`, `bearing x1.5`; `null` where it is none. */
function oddCount(
  names: Names,
  text: string,
): { readonly part: string; readonly count: number | null } | null {
  const behind = /^(.*\S)\s*[x×*]\s*(-?[\d.,]+)$/.exec(text)
  const before = /^(-?[\d.,]+)\s*[x×*]?\s+(.*\S)$/.exec(text)
  for (const [part, count] of [
    [behind?.[1], behind?.[2]],
    [before?.[2], before?.[1]],
  ]) {
    if (part !== undefined && names.all.get(part)?.kind === 'part')
      return { part, count: /^[1-9]\d{0,4}$/.test(count ?? '') ? Number(count) : null }
  }
  return null
}
