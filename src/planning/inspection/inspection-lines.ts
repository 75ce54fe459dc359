import type { Place } from '../../base/place.ts'
import type { Part, Project, Routed } from '../../model/project.ts'
import type { InspectionLine } from '../../model/results.ts'
import { readLimits } from '../../trade/tolerance-text.ts'

type Line = Omit<InspectionLine, 'number'>

const routedOf = (part: Part): Routed | null => (part.way.kind === 'assembly' ? null : part.way)

function line(
  of: string,
  feature: string,
  requirement: string,
  method: string | null,
  pieces: number,
  at: Place,
): Line {
  const limits = readLimits(requirement)
  return {
    of,
    feature,
    requirement,
    lower: limits?.lower ?? null,
    upper: limits?.upper ?? null,
    unit: limits?.unit ?? null,
    method,
    pieces,
    at,
  }
}

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
  const features = routed.features.map((one) =>
    line(part.id, one.name, one.text, checkOf(one.name), pieces, one.at),
  )
  const checks = operations
    .filter((one) => one.check !== null && one.features.length === 0)
    .map((one) => line(part.id, one.process, one.check!, null, pieces, one.at))
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
          of,
          step.test === requirement ? 'test' : step.id,
          requirement,
          step.tool?.text ?? null,
          pieces,
          step.at,
        ),
      )
    }),
  )
  return [...parts, ...steps].map((one, index) => ({ ...one, number: index + 1 }))
}
