import { nearNames } from '../base/near-names.ts'
import { shp } from '../diagnostics/catalogue/shp.ts'
import type { Report } from '../diagnostics/message.ts'
import type { ProjectSource, ShopSource } from './generated/project-types.ts'
import { project, type ShapeError, shop } from './generated/validate-project.js'
import { reportRoutes } from './route-shape.ts'
import { pathOf, walkTo } from './shape-place.ts'
import { tellMismatch } from './shape-tellers.ts'
import type { Spot } from './spot.ts'
import { settleYesAndNo } from './yes-and-no.ts'

/** The map as a project, when it has the shape of one; else `null`, with every mismatch reported. */
export function projectShape(root: Spot<unknown>, report: Report): Spot<ProjectSource> | null {
  return hasShape(root, project, '#/$defs/project', report) ? (root as Spot<ProjectSource>) : null
}

/** The map as a shop, when it has the shape of one; else `null`, with every mismatch reported. */
export function shopShape(root: Spot<unknown>, report: Report): Spot<ShopSource> | null {
  return hasShape(root, shop, '#/$defs/shop', report) ? (root as Spot<ShopSource>) : null
}

/** How many mismatches of one file are listed. */
const faultLimit = 100

/** Bare yes and no become truth values where the language asks for one; the rest is said once for each cause. */
function hasShape(root: Spot<unknown>, validate: typeof project, def: string, report: Report): boolean {
  let errors = mismatches(root, validate)
  if (settleYesAndNo(root, errors)) errors = mismatches(root, validate)
  let faults = 0
  const counting: Report = (entry, at, facts) => {
    faults += 1
    report(entry, at, facts)
  }
  const all = withoutMisspelt(causes(errors))
  for (const error of all.slice(0, faultLimit)) {
    tellMismatch({ error, place: walkTo(root, def, pathOf(error.instancePath)), report: counting })
  }
  if (all.length > faultLimit)
    counting(shp.moreFaults, root.at, { listed: faultLimit, more: all.length - faultLimit })
  reportRoutes(root as Spot<ProjectSource>, counting)
  return faults === 0
}

function mismatches(root: Spot<unknown>, validate: typeof project): readonly ShapeError[] {
  return validate(root.value) ? [] : (validate.errors ?? [])
}

const echoes = new Set(['if', 'anyOf', 'oneOf', 'propertyNames', 'minProperties', 'maxProperties'])

/** Without echoes of other errors: one for each path and cause. */
function causes(errors: readonly ShapeError[]): readonly ShapeError[] {
  const inMapOfChoice = new Set(
    errors
      .filter(({ keyword }) => keyword === 'required' || keyword === 'additionalProperties')
      .map(pathText),
  )
  const seen = new Set<string>()
  return errors.filter((error) => {
    const { keyword, instancePath, params } = error
    if (echoes.has(keyword) && !(keyword === 'minProperties' && !/\/(route|ops)\/\d+$/.test(instancePath)))
      return false
    if (keyword === 'type' && inMapOfChoice.has(instancePath)) return false
    if (keyword === 'discriminator' && params.error === 'tag' && inMapOfChoice.has(instancePath)) return false
    const cause = `${instancePath} ${keyword} ${String(params.missingProperty ?? params.additionalProperty ?? '')}`
    if (seen.has(cause)) return false
    seen.add(cause)
    return true
  })
}

/** A key that is missing only because it is misspelt beside is told once, where it is misspelt. */
function withoutMisspelt(errors: readonly ShapeError[]): readonly ShapeError[] {
  const unknown = errors.filter(({ keyword }) => keyword === 'additionalProperties')
  return errors.filter(
    ({ keyword, instancePath, params }) =>
      keyword !== 'required' ||
      !unknown.some(
        (other) =>
          other.instancePath === instancePath &&
          nearNames(String(other.params.additionalProperty), [String(params.missingProperty)]).length > 0,
      ),
  )
}

const pathText = ({ instancePath }: ShapeError): string => instancePath
