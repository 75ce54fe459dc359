import type { Feature, Operation, Part, Project, RouteStep } from './project.ts'

/** A feature with its part, how it is made and which general tolerances hold for it. */
export interface FeatureOf extends Feature {
  readonly part: string
  /** The last operation that makes or finishes it; `null`: none is named. */
  readonly madeBy: Making | null
  readonly general: Part['general']
}

/** How a feature is made. */
export interface Making {
  readonly process: string
  /** The setup it is made in has turning too, so its machine is a lathe. */
  readonly turned: boolean
  readonly cutter: string | null
}

/** What looks at a feature, or takes its burrs off, leaves its size as it is. */
const leavesSize: ReadonlySet<string> = new Set(['inspect', 'deburr', 'prepare', 'cure'])

/** The features of a part; of a part of kind assembly those of all parts in it, each part once. */
export function featuresOf(project: Project, id: string): readonly FeatureOf[] {
  return partsIn(project, id, new Set()).flatMap((part) => ownFeatures(project, part))
}

/** One feature by part and name; `null` where there is none. */
export function featureNamed(project: Project, part: string, feature: string): FeatureOf | null {
  const found = project.parts.get(part)
  return (found ? ownFeatures(project, found) : []).find(({ name }) => name === feature) ?? null
}

function partsIn(project: Project, id: string, seen: Set<string>): readonly Part[] {
  const part = project.parts.get(id)
  if (!part || seen.has(id)) return []
  seen.add(id)
  if (part.way.kind !== 'assembly') return [part]
  const { ground, steps } = part.way.plan
  const inside = [...(ground === null ? [] : [ground]), ...steps.flatMap(({ put }) => put?.part ?? [])]
  return inside.flatMap((one) => partsIn(project, one, seen))
}

function ownFeatures(project: Project, part: Part): readonly FeatureOf[] {
  if (part.way.kind === 'assembly') return []
  const { features, route } = part.way
  const general = part.general ?? project.device.general
  return features.map((one) => ({ ...one, part: part.id, madeBy: makingOf(route, one.name), general }))
}

/** The last operation of a route that makes or finishes a feature. */
function makingOf(route: readonly RouteStep[], feature: string): Making | null {
  const makes = ({ process, features }: Operation): boolean =>
    features.includes(feature) && !leavesSize.has(process)
  const all = route.flatMap((step): readonly Making[] => {
    const operations = operationsOf(step)
    const turned = operations.some(({ process }) => process === 'turn')
    return operations.filter(makes).map(({ process, cutter }) => ({ process, turned, cutter }))
  })
  return all.at(-1) ?? null
}

/** The operations of one step of a route. */
export function operationsOf(step: RouteStep): readonly Operation[] {
  if (step.kind === 'setup') return step.operations
  return step.kind === 'work' ? [step.operation] : []
}
