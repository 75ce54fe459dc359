import { type FeatureSaid, fit } from '../diagnostics/catalogue/fit.ts'
import { prcSetup } from '../diagnostics/catalogue/prc-setup.ts'
import type { Report } from '../diagnostics/message.ts'
import { type FeatureOf, featureNamed, featuresOf, operationsOf } from '../model/features.ts'
import type { Hold, Project, RouteStep, SetupStep } from '../model/project.ts'
import { type PickedPair, pickPair } from '../trade/joins/pick-pair.ts'
import { readFeature } from '../trade/joins/read-feature.ts'
import type { ModelCheck } from './check.ts'

/**
 * FIT14, FIT15: a fixture that does not take the thread or the size it holds. PRC30: jaws on what an earlier setup
 * has made.
 */
export const heldFeatures: ModelCheck = (project, report) => {
  for (const { id, way } of project.parts.values()) {
    if (way.kind === 'assembly') continue
    for (const [at, step] of way.route.entries()) {
      if (step.kind !== 'setup') continue
      lookAtJaws(id, { setup: step, before: way.route.slice(0, at) }, report)
      lookAtFixture(project, id, step, report)
    }
  }
}

/** Operations after which a feature is as it is to be. */
const makes: ReadonlySet<string> = new Set([
  ...['bore', 'ream', 'finish', 'polish', 'turn', 'thread mill', 'tap', 'contour', 'face'],
])
const jaws = /\b(?:vice|vise|chuck|jaws?|clamps?)\b/i
const kind = /\b(?:soft|collet|mandrel|arbor|fixture|expanding|copper|protected)\b/i

function holdWords(hold: Hold): string | null {
  if (hold.kind === 'words') return hold.text
  return hold.kind === 'tool' ? hold.tool : null
}

function lookAtJaws(
  part: string,
  { setup, before }: { readonly setup: SetupStep; readonly before: readonly RouteStep[] },
  report: Report,
): void {
  const hold = holdWords(setup.hold)
  if (hold === null || !jaws.test(hold) || kind.test(hold)) return
  const earlier = before.flatMap(operationsOf)
  for (const { feature, at } of setup.on) {
    const by = earlier.findLast(({ process, features }) => makes.has(process) && features.includes(feature))
    if (by) report(prcSetup.heldOnFinished, at, { part, feature, process: by.process, hold })
  }
}

const said = ({ part, name, text }: FeatureOf): FeatureSaid => ({ of: `${part}.${name}`, text })
const candidates = (features: readonly FeatureOf[]) =>
  features.map((feature) => ({ of: feature, read: readFeature(feature) }))

function lookAtFixture(project: Project, part: string, setup: SetupStep, report: Report): void {
  if (setup.hold.kind !== 'fixture') return
  const fixture = featuresOf(project, setup.hold.part)
  for (const { feature, at } of setup.on) {
    const held = featureNamed(project, part, feature)
    const picked = held && pickPair(candidates([held]), candidates(fixture), ['thread', 'fit'])
    if (picked) lookAtPair(picked, at, report)
  }
}

function lookAtPair(
  { first, second, pair }: PickedPair<FeatureOf>,
  at: SetupStep['at'],
  report: Report,
): void {
  const both = { first: said(first), second: said(second) }
  const { mismatches, fit: fitted } = pair
  if (pair.sort === 'thread') {
    if (mismatches.length > 0) report(fit.fixtureThread, at, { ...both, mismatches })
    return
  }
  const [one] = mismatches
  if (one) report(fit.fixtureFit, at, { ...both, says: `${one.what} ${one.first} and ${one.second}` })
  else if (fitted && fitted.smallestClearanceUm < 0)
    report(fit.fixtureFit, at, {
      ...both,
      says: `it may bind, with up to ${Math.round(-fitted.smallestClearanceUm * 10) / 10} um of overlap`,
    })
}
