import type { JoiningMethod, Step } from './assembly.ts'
import { plansAsBuilt } from './assembly-plans.ts'
import { type FeatureOf, featureNamed, featuresOf } from './features.ts'
import type { FeatureAt, Project } from './project.ts'

/** The features that may meet in one assembly step. */
export interface JoinedSides {
  /** `null`: the device. */
  readonly assembly: string | null
  readonly step: Step
  readonly by: JoiningMethod | null
  /** The two that are written. */
  readonly mates: readonly [FeatureOf, FeatureOf] | null
  readonly put: readonly FeatureOf[]
  readonly body: readonly FeatureOf[]
  /** Whether a side is put together from parts, whose features may be taken already. */
  readonly nested: { readonly put: boolean; readonly body: boolean }
  readonly engagementMm: number | null
}

/** What may meet in each step that puts something on a body or names its mates; subassemblies first. */
export function joinedSides(project: Project): readonly JoinedSides[] {
  return plansAsBuilt(project).flatMap((plan) =>
    plan.steps.flatMap((step) => {
      const body = step.into?.body ?? step.onto?.body
      if (!step.mates && (!step.put || body === undefined)) return []
      return [{ assembly: plan.of, step, ...sidesOf(project, step, body) }]
    }),
  )
}

function sidesOf(
  project: Project,
  step: Step,
  body: string | undefined,
): Omit<JoinedSides, 'assembly' | 'step'> {
  const put = step.put?.part
  const isNested = (id: string | undefined): boolean =>
    id !== undefined && project.parts.get(id)?.way.kind === 'assembly'
  const [first, second] = (step.mates ?? []).map((one) => found(project, one))
  return {
    by: step.method,
    mates: first && second ? [first, second] : null,
    put: put === undefined ? [] : featuresOf(project, put),
    body: body === undefined ? [] : featuresOf(project, body),
    nested: { put: isNested(put), body: isNested(body) },
    engagementMm: step.engagement?.value.valueOf() ?? null,
  }
}

const found = (project: Project, { part, feature }: FeatureAt): FeatureOf | null =>
  featureNamed(project, part, feature)
