import type { FeatureOf } from '../../model/features.ts'
import { type JoinedSides, joinedSides } from '../../model/joined-sides.ts'
import type { Join, JoinSide } from '../../model/joins.ts'
import type { Project } from '../../model/project.ts'
import type { FeaturePair } from '../../trade/joins/pair-features.ts'
import { readFeature } from '../../trade/joins/read-feature.ts'
import { type StepPair, stepPairs } from '../../trade/joins/step-pairs.ts'
import { pressOf } from './press-of.ts'
import { sayFit, sayNoPress, sayPress, sayThread } from './say-join.ts'

/** What meets in each assembly step: two features that go together, written or found, with what follows from it. */
export function planJoins(project: Project): readonly Join[] {
  const pairs = stepPairs<FeatureOf, JoinedSides>(joinedSides(project), ({ part, name }) => `${part}.${name}`)
  return pairs.flatMap((one) => {
    const { pair } = one
    return 'notCompared' in pair || pair.mismatches.length > 0 ? [] : [joinOf(project, one, pair)]
  })
}

const sideOf = ({ part, name, text }: FeatureOf): JoinSide => ({ part, feature: name, text })

function joinOf(
  project: Project,
  { sides, first, second, written }: StepPair<JoinedSides, FeatureOf>,
  pair: FeaturePair,
): Join {
  const { step, assembly } = sides
  const known = { assembly, step: step.id, first: sideOf(first), second: sideOf(second), written }
  const { fit } = pair
  if (!fit) {
    const says = [sayThread(known.first, known.second, sides.engagementMm)]
    return { ...known, sort: 'thread', fit: null, press: null, says, worked: [], assumed: [] }
  }
  const [hole, shaft] = isHole(first, second) ? [first, second] : [second, first]
  const pressed = step.method === 'press' ? pressOf(project, { fit, hole, shaft, step }) : null
  const done = pressed && 'press' in pressed ? pressed : null
  const asked = step.engagement !== null || step.around !== null
  const { kind, largestClearanceUm, smallestClearanceUm } = fit
  return {
    ...known,
    sort: 'fit',
    fit: { kind, largestClearanceUm, smallestClearanceUm },
    press: done?.press ?? null,
    says: [
      sayFit(known.first, known.second, fit),
      ...(done ? [sayPress(done.press)] : []),
      ...(pressed && 'missing' in pressed && asked ? [sayNoPress(pressed.missing)] : []),
    ],
    worked: [...limitsWorked([hole, shaft]), ...fit.worked, ...(done?.worked ?? [])],
    assumed: done?.assumed ?? [],
  }
}

/** Whether the first is the hole; where its own text and name do not tell, the other one's do. */
function isHole(first: FeatureOf, second: FeatureOf): boolean {
  const gender = (feature: FeatureOf): 'hole' | 'shaft' | null => {
    const read = readFeature(feature)
    return read.kind === 'size' ? read.gender : null
  }
  const own = gender(first)
  return own === null ? gender(second) !== 'hole' : own === 'hole'
}

function limitsWorked(features: readonly FeatureOf[]): readonly string[] {
  return features.flatMap((feature) => {
    const read = readFeature(feature)
    const lines = read.kind === 'size' ? (read.limits?.worked ?? []) : []
    return lines.map((line) => `${feature.part}.${feature.name}: ${line}`)
  })
}
