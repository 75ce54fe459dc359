import Fraction from 'fraction.js'
import { nameList } from '../../base/near-names.ts'
import { threePoint } from '../../base/three-point.ts'
import { prcBoard } from '../../diagnostics/catalogue/prc-board.ts'
import { qty } from '../../diagnostics/catalogue/qty.ts'
import type { ComponentGroup } from '../../model/placements.ts'
import type { Count, Operation } from '../../model/project.ts'
import { solderTime } from '../../trade/boards/solder-time.ts'
import type { Context } from '../context.ts'
import type { PlacedTable } from './placements-at.ts'
import { unitOfDesignator, warnValue } from './warn-values.ts'
import { withPart } from './with-part.ts'

/** The components of a board, each with its part, and what is soldered on in all. */
export interface Populated {
  readonly components: readonly ComponentGroup[]
  readonly places: readonly Count[]
}

/** Components of the placements with their parts, and the counts of `places` for what these do not list. */
export function populated(
  context: Context,
  board: string,
  { groups, series }: PlacedTable,
  listed: readonly Count[],
): Populated {
  const components = groups.map((group) => withPart(context, board, group))
  for (const { value, designators, at } of components) {
    const unit = unitOfDesignator(designators[0] ?? '')
    const what = `${nameList(designators.slice(0, 3), 'and')}${designators.length > 3 ? ' and more' : ''}`
    if (unit) warnValue(context, { at, text: value, what, unit }, series)
  }
  const counts = new Map<string, Count>()
  for (const { part, designators, at } of components) {
    const before = part === null ? undefined : counts.get(part)
    if (part !== null)
      counts.set(part, { part, count: (before?.count ?? 0) + designators.length, at: before?.at ?? at })
  }
  const more = listed.filter(({ part, count, at }) => {
    const placed = counts.get(part)
    if (placed && placed.count !== count)
      context.report(prcBoard.countedTwice, at, { board, part, listed: count, placed: placed.count })
    return !placed
  })
  return { components, places: [...counts.values(), ...more] }
}

/** How a board is soldered. */
export type SolderMethod = 'hand' | 'paste'

/** Soldering with its time from packages and joints, where the person states none; what is not known is told. */
export function timedSolder(
  context: Context,
  board: string,
  solder: Operation,
  { components, places }: Populated,
  { method, stated }: { readonly method: SolderMethod; readonly stated: boolean },
): Operation {
  const placed = components.map(({ package: pack, designators }) => ({
    package: pack,
    count: designators.length,
  }))
  const inTable = new Set(components.flatMap(({ part }) => part ?? []))
  const packages = new Map(context.components.map((one) => [one.part, one.package]))
  const more = places
    .filter(({ part }) => !inTable.has(part))
    .map(({ part, count }) => ({ package: packages.get(part) ?? part, count }))
  const found = solderTime([...placed, ...more], {
    boards: 1,
    pace: 'prototype',
    method,
    boardsPerHeat: 1,
  })
  if ('fault' in found) return solder
  if (found.needHeat.length > 0)
    context.report(prcBoard.joinsNotKnown, solder.at, { board, packages: found.needHeat, heat: true })
  if (stated) return solder
  const [low, likely, high] = found.seconds
  if (!(high > 0)) {
    const missing = ['`placements`, or `package` of what is soldered on']
    context.report(qty.noTime, solder.at, { what: `\`solder\` of \`${board}\``, missing })
    return solder
  }
  if (found.unknown.length > 0)
    context.report(prcBoard.joinsNotKnown, solder.at, {
      board,
      packages: [...new Set(found.unknown)],
      heat: false,
    })
  const [a, m, b] = [low, likely, high].map((seconds) => new Fraction(Math.ceil(seconds)))
  const minutes = [low, likely, high].map((seconds) => String(Math.ceil(seconds / 60)))
  return {
    ...solder,
    time: { ...threePoint(a!, m!, b!), dims: 'time', unit: 'min', text: `${minutes.join('..')} min` },
    timeFrom: 'computed',
    worked: [`${found.jointsPerBoard} joints on a board`, ...found.worked],
  }
}
