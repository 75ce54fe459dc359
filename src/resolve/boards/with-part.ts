import { prcBoard } from '../../diagnostics/catalogue/prc-board.ts'
import type { ComponentGroup } from '../../model/placements.ts'
import { readComponentValue } from '../../trade/boards/component-value.ts'
import type { Component, Context } from '../context.ts'
import { named } from '../names.ts'
import type { PlacedGroup } from './placements-at.ts'

/** The part of the project that a group of placements is: as the file names it, else the bought part of that value and package. */
export function withPart(context: Context, board: string, group: PlacedGroup): ComponentGroup {
  const { value, package: pack, designators, at } = group
  const found = { value, package: pack, designators, at }
  if (group.part !== null)
    return { ...found, part: named(context.names, context.report, group.part, group.partAt, ['part']) }
  const fitting = bestFitting(context.components, group)
  if (fitting.length === 1) {
    context.names.used.add(fitting[0]!.part)
    return { ...found, part: fitting[0]!.part }
  }
  if (fitting.length > 1)
    context.report(prcBoard.twoPartsFor, at, {
      board,
      value,
      package: pack,
      parts: fitting.map(({ part }) => part),
    })
  else context.report(prcBoard.noPartFor, at, { board, designators, value, package: pack })
  return { ...found, part: null }
}

/** Parts of that value and package; where there are none, parts that say only one of the two, and that fitting. */
function bestFitting(components: readonly Component[], group: PlacedGroup): readonly Component[] {
  const fitting = components.filter(
    (one) =>
      (one.value === null || sameValue(one.value, group.value)) &&
      (one.package === null || sameText(one.package, group.package)),
  )
  const whole = fitting.filter(({ value, package: pack }) => value !== null && pack !== null)
  return whole.length > 0 ? whole : fitting
}

function sameValue(a: string, b: string): boolean {
  const [one, other] = [readComponentValue(a), readComponentValue(b)]
  if ('fault' in one || 'fault' in other) return sameText(a, b)
  const near = Math.abs(one.value - other.value) <= 1e-9 * Math.max(one.value, other.value)
  const units = one.unit === null || other.unit === null || one.unit === other.unit
  return near && units && sameText(one.rest, other.rest)
}

const sameText = (a: string, b: string): boolean => plain(a) === plain(b)
const plain = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase()
