import { shp } from '../diagnostics/catalogue/shp.ts'
import type { Report } from '../diagnostics/message.ts'
import type { ProjectSource } from './generated/project-types.ts'
import { factOf } from './shape-place.ts'
import { entries, field, isMapSpot, items, keyPlace, type Spot } from './spot.ts'

/**
 * Reports route steps that do not hold exactly one operation, and `ops` without a `setup` beside them. The rest of the
 * shape is the validator's; this stands apart because a step of a route may carry two keys, but only these two.
 */
export function reportRoutes(root: Spot<ProjectSource>, report: Report): void {
  for (const part of mapsIn(root, 'parts')) {
    for (const way of [part, ...mapsIn(part, 'choices')]) {
      for (const step of listIn(way, 'route')) reportStep(step, report)
    }
  }
}

type Loose = Spot<Record<string, unknown>>

function reportStep(step: Spot<unknown>, report: Report): void {
  if (!isMapSpot(step)) return
  const route = step as Loose
  reportOperations(route, factOf('#/$defs/routeItem').keys ?? [], ['deburr', 'setup'], report)
  if (Object.hasOwn(route.value, 'ops') && !Object.hasOwn(route.value, 'setup'))
    report(shp.opsWithoutSetup, keyPlace(route, 'ops'), {})
  for (const operation of listIn(route, 'ops')) {
    if (isMapSpot(operation))
      reportOperations(operation as Loose, factOf('#/$defs/operation').keys ?? [], ['face', 'drill'], report)
  }
}

function reportOperations(
  entry: Loose,
  known: readonly string[],
  examples: readonly string[],
  report: Report,
): void {
  const written = Object.keys(entry.value)
  const keys = written.filter((key) => known.includes(key) && key !== 'ops')
  const [first, second] = keys
  if (first !== undefined && second !== undefined)
    report(shp.severalOperations, keyPlace(entry, second), { keys, second, first: keyPlace(entry, first) })
  else if (written.length === 0) report(shp.noOperation, entry.at, { examples })
}

function mapsIn(spot: Spot<unknown>, key: string): readonly Loose[] {
  if (!isMapSpot(spot)) return []
  const inside = field(spot as Loose, key)
  if (!inside || !isMapSpot(inside)) return []
  return entries(inside as Loose).flatMap(([, each]) => (isMapSpot(each) ? [each as Loose] : []))
}

function listIn(spot: Loose, key: string): readonly Spot<unknown>[] {
  const list = field(spot, key)
  return list && Array.isArray(list.value) ? items(list as Spot<readonly unknown[]>) : []
}
