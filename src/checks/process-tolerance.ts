import { fit } from '../diagnostics/catalogue/fit.ts'
import { type FeatureOf, featuresOf } from '../model/features.ts'
import type { Part, Project } from '../model/project.ts'
import { readFeature } from '../trade/joins/read-feature.ts'
import { type ProcessReach, processReach, reachNamed } from '../trade/tolerances/process-reach.ts'
import type { ModelCheck } from './check.ts'

/** FIT12: a tolerance tighter than the process that makes it usually holds, even with care. */
export const processTolerance: ModelCheck = (project, report) => {
  for (const part of project.parts.values()) {
    if (part.way.kind === 'assembly') continue
    for (const feature of featuresOf(project, part.id)) {
      const found = askedOf(project, part, feature)
      if (found)
        report(fit.tighterThanProcess, feature.at, {
          ...{ of: `${part.id}.${feature.name}`, text: feature.text, ...found },
        })
    }
  }
}

function askedOf(project: Project, part: Part, feature: FeatureOf) {
  const read = readFeature(feature)
  const reach = reachOf(project, part, feature)
  if (!reach || read.kind !== 'size' || !read.limits || read.limitsFrom !== null) return null
  const { nominalMm, upperUm, lowerUm } = read.limits
  const verdict = processReach(reach, { nominalMm, widthUm: upperUm - lowerUm })
  if (verdict === null || 'fault' in verdict || verdict.verdict !== 'tighter than usual') return null
  const { askedUm: asked, finestUm: finest, usualUm: usual, source } = verdict
  return { how: byDoing(reach.name), asked, finest, usual, source }
}

const small = 'mill on a small machine'
/** Names of the reach tables by process kind. */
const reaches: Readonly<Record<string, string>> = {
  ...{ ream: 'ream', bore: 'bore', turn: 'turn', drill: 'drill', saw: 'saw' },
  ...{ rough: small, finish: small, contour: small, chamfer: small },
}

/** The name of a process as what is done: `filament print` is `filament printing`. */
const byDoing = (name: string): string =>
  name.replace(
    /\b(ream|turn|bore|drill|saw|mill|print|route|place)\b/,
    (verb) => `${verb.replace(/e$/, '')}ing`,
  )

/** What the process that makes a feature holds; `null` where none is named, or none is known. */
function reachOf(project: Project, part: Part, feature: FeatureOf): ProcessReach | null {
  const { madeBy } = feature
  if (madeBy === null) return asFormed(project, part, feature)
  const own = heldBy(project, madeBy.cutter)
  if (own) return own
  const name = madeBy.process === 'face' ? (madeBy.turned ? 'turn' : small) : reaches[madeBy.process]
  return name === undefined ? null : reachNamed(name)
}

/** What the person has measured of the cutter goes before any table. */
function heldBy(project: Project, cutter: string | null): ProcessReach | null {
  const holds = cutter === null ? undefined : project.cutters.get(cutter)?.numbers.get('holds')
  if (!holds) return null
  const half = holds.value.valueOf() / 2
  return {
    name: `cut with ${cutter}`,
    by: 'width',
    finestMm: half,
    usualMm: half,
    source: 'as stated of the cutter',
  }
}

/** What a printer or the router of a board maker holds, where no operation comes after it. */
function asFormed(project: Project, { way }: Part, { name }: FeatureOf): ProcessReach | null {
  if (way.kind === 'printed') {
    const machine = way.job.machine ?? project.plates.get(way.plate ?? '')?.job.machine ?? ''
    const prints = project.machines.get(machine)?.prints
    return prints ? reachNamed(`${prints} print`) : null
  }
  if (way.kind !== 'board') return null
  if (/\bholes?\b/i.test(name)) return reachNamed('place a board hole')
  return /\b(?:outline|width|length|edge)\b/i.test(name) ? reachNamed('route a board outline') : null
}
