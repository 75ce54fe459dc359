import type { Step } from '../../model/assembly.ts'
import type { FeatureOf } from '../../model/features.ts'
import type { JoinPress } from '../../model/joins.ts'
import type { Project } from '../../model/project.ts'
import type { Fit } from '../../trade/fits/fit.ts'
import { type ElasticMaterial, pressFitRange } from '../../trade/fits/press-fit.ts'
import { findMaterial } from '../../trade/materials/find-material.ts'

/** A press fit as far as it is known. */
export interface PressedPair {
  readonly fit: Fit
  readonly hole: FeatureOf
  readonly shaft: FeatureOf
  readonly step: Step
}

/** Friction of dry metal on metal. Source: 0.12 to 0.2 in public engineering pages, common practice, no source. */
const dryFriction = 0.15

/** What pressing takes, or what is missing to work it out. */
export type Pressed =
  | { readonly press: JoinPress; readonly worked: readonly string[]; readonly assumed: readonly string[] }
  | { readonly missing: readonly string[] }

/**
 * Pressure, force and torque of a press fit, where length, outer diameter and both materials are known.
 * Source: as `pressFit`.
 */
export function pressOf(project: Project, { fit, hole, shaft, step }: PressedPair): Pressed {
  const [lengthMm, hubOuterMm] = [step.engagement, step.around].map((one) => one?.value.valueOf() ?? null)
  const [hub, core] = [elasticOf(project, hole.part), elasticOf(project, shaft.part)]
  if (!hub || !core || lengthMm == null || hubOuterMm == null) {
    const missing = [
      lengthMm == null ? '`engagement`' : null,
      hubOuterMm == null ? '`around`' : null,
      hub ? null : `elasticity of ${hole.part}`,
      core ? null : `elasticity of ${shaft.part}`,
    ]
    return { missing: missing.filter((one) => one !== null) }
  }
  const range = pressFitRange(fit, {
    ...{ jointMm: fit.hole.nominalMm, hubOuterMm, shaftBoreMm: 0, lengthMm },
    ...{ hub, shaft: core, friction: dryFriction },
  })
  if ('fault' in range) return { missing: [`an \`around\` of ${range.wanted}`] }
  const { least, most } = range
  const both = (key: 'pressureMpa' | 'forceN' | 'torqueNm' | 'hubHoopMpa'): readonly [number, number] => [
    least[key],
    most[key],
  ]
  return {
    press: {
      pressureMpa: both('pressureMpa'),
      forceN: both('forceN'),
      torqueNm: both('torqueNm'),
      hoopMpa: both('hubHoopMpa'),
    },
    worked: [
      ...most.worked.map((line) => `tightest: ${line}`),
      ...least.worked.slice(2).map((line) => `loosest: ${line}`),
    ],
    assumed: [
      `friction ${dryFriction}: dry metal, common practice, no source`,
      `\`${shaft.part}\` solid at \`${shaft.name}\``,
      `${hole.part}: E ${hub.modulusMpa / 1000} GPa, nu ${hub.poisson}; ${shaft.part}: E ${core.modulusMpa / 1000} GPa, nu ${core.poisson}; tables of the trade`,
    ],
  }
}

/** Elasticity of the material a part is made of; `null` where material or figures are not known. */
function elasticOf(project: Project, id: string): ElasticMaterial | null {
  const way = project.parts.get(id)?.way
  const name = way?.kind === 'machined' ? way.material : way?.kind === 'printed' ? way.job.material : null
  const like = name === null ? null : project.materials.get(name)?.like
  const found = like == null ? null : findMaterial(like)
  if (!found || 'fault' in found || !found.modulusGPa || !found.poissonRatio) return null
  return { modulusMpa: found.modulusGPa.value * 1000, poisson: found.poissonRatio.value }
}
