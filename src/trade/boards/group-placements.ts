import { readComponentValue } from './component-value.ts'
import { byDesignator, designatorLetters } from './designators.ts'
import type { Placement } from './placements.ts'

/** Parts of one value in one package: a line of the parts list. */
export interface PlacementGroup {
  /** As the first of its designators writes it. */
  readonly value: string
  readonly package: string
  /** In natural order. */
  readonly designators: readonly string[]
  readonly count: number
  /** Other ways in which the same value is written in the table. */
  readonly alsoWritten: readonly string[]
}

/**
 * Placements joined by value and package, groups and designators in natural order.
 * Values that read as the same quantity under the same letters (`4k7` and `4.7k` of R) are one; else equal text is.
 */
export function groupPlacements(placements: readonly Placement[]): readonly PlacementGroup[] {
  const sorted = [...placements].sort((a, b) => byDesignator(a.designator, b.designator))
  const groups = new Map<string, Placement[]>()
  for (const placement of sorted) {
    const key = JSON.stringify([valueKey(placement), placement.package.trim()])
    const members = groups.get(key)
    if (members) members.push(placement)
    else groups.set(key, [placement])
  }
  return [...groups.values()].map((members) => {
    const spellings = [...new Set(members.map(({ value }) => value.trim()))]
    return {
      value: spellings[0]!,
      package: members[0]!.package.trim(),
      designators: members.map(({ designator }) => designator),
      count: members.length,
      alsoWritten: spellings.slice(1),
    }
  })
}

function valueKey({ designator, value }: Placement): string {
  const read = readComponentValue(value)
  if ('fault' in read || read.rest !== '') return value.trim().replace(/\s+/g, ' ')
  // A bare number means ohms to a resistor and something else to a capacitor: the letters keep them apart.
  const letters = designatorLetters(designator)
  const unit = read.unit ?? ({ R: 'ohm', C: 'farad', L: 'henry' } as Record<string, string>)[letters] ?? ''
  return `${letters} ${read.value} ${unit}`
}
