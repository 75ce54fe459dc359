import type { Place } from '../../base/place.ts'
import { featuresOf } from '../../model/features.ts'
import type { Part, Project, Routed } from '../../model/project.ts'
import type { InspectionLine } from '../../model/results.ts'
import { type Gauged, gaugedLimits } from './gauged-limits.ts'

type Line = Omit<InspectionLine, 'number'>

const routedOf = (part: Part): Routed | null => (part.way.kind === 'assembly' ? null : part.way)

interface Asked {
  readonly of: string
  readonly feature: string
  readonly requirement: string
  readonly method: string | null
  readonly pieces: number
  readonly at: Place
}

function line(asked: Asked, limits: Gauged | null = null): Line {
  const { lower = null, upper = null, unit = null, limitsOf = null } = limits ?? {}
  return { ...asked, lower, upper, unit, limitsOf }
}

/** A text that is no feature of a part: its own limits alone count. */
const plainText = (requirement: string): Gauged | null =>
  gaugedLimits({ name: '', text: requirement, madeBy: null, general: null })

/** Every feature of a part that is made or bought to it, with the check of the operation that makes or measures it. */
function partLines(project: Project, part: Part): readonly Line[] {
  const routed = routedOf(part)
  const pieces = (project.demand.get(part.id)?.toGet ?? 0) * part.tries
  if (!routed || pieces === 0) return []
  const operations = routed.route.flatMap((step) =>
    step.kind === 'setup' ? step.operations : step.kind === 'work' ? [step.operation] : [],
  )
  const checkOf = (feature: string): string | null =>
    operations.find((one) => one.features.includes(feature) && one.check !== null)?.check ?? null
  const features = featuresOf(project, part.id).map((one) => {
    const { name: feature, text: requirement, at } = one
    const method = checkOf(feature)
    return line({ of: part.id, feature, requirement, method, pieces, at }, gaugedLimits(one))
  })
  const checks = operations.flatMap(({ process, check, features: named, at }) =>
    check === null || named.length > 0
      ? []
      : [
          line(
            { of: part.id, feature: process, requirement: check, method: null, pieces, at },
            plainText(check),
          ),
        ],
  )
  return [...features, ...checks]
}

/** What is measured or looked at: features of parts, checks of operations and of assembly steps, tests; numbered. */
export function inspectionLines(project: Project): readonly InspectionLine[] {
  const parts = [...project.parts.values()].flatMap((part) => partLines(project, part))
  const plans = [...project.parts.values()].flatMap((part) =>
    part.way.kind === 'assembly' && (project.demand.get(part.id)?.toGet ?? 0) > 0 ? [part.way.plan] : [],
  )
  const steps = [...plans, ...(project.assembly ? [project.assembly] : [])].flatMap((plan) =>
    plan.steps.flatMap((step): readonly Line[] => {
      const of = plan.of ?? project.device.name
      const pieces = plan.of === null ? project.device.qty : project.demand.get(plan.of)!.toGet
      const found = [step.test, step.check].filter((one) => one !== null)
      return found.map((requirement) =>
        line(
          {
            ...{ of, requirement, pieces, at: step.at, method: step.tool?.text ?? null },
            feature: step.test === requirement ? 'test' : step.id,
          },
          plainText(requirement),
        ),
      )
    }),
  )
  return [...parts, ...steps].map((one, index) => ({ ...one, number: index + 1 }))
}
