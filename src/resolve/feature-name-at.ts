import { nearNames } from '../base/near-names.ts'
import type { Place } from '../base/place.ts'
import { ref } from '../diagnostics/catalogue/ref.ts'
import type { FeatureAt } from '../model/project.ts'
import type { Context } from './context.ts'
import { named } from './names.ts'

/**
 * The feature that `part.feature` names: the longest known part name wins. `null` where there is none (reported).
 */
export function featureNameAt(context: Context, text: string, at: Place): FeatureAt | null {
  const parts = [...context.features.keys()].filter((part) => text.startsWith(`${part}.`))
  const part = parts.sort((a, b) => b.length - a.length)[0]
  if (part === undefined) {
    reportNoPart(context, text, at)
    return null
  }
  const feature = text.slice(part.length + 1).trim()
  const known = [...(context.features.get(part)?.keys() ?? [])]
  if (known.includes(feature)) return { part, feature, at }
  context.report(ref.unknownFeature, at, { feature, part, near: nearNames(feature, known) })
  return null
}

function reportNoPart(context: Context, text: string, at: Place): void {
  const dot = text.indexOf('.')
  if (dot > 0) {
    named(context.names, context.report, text.slice(0, dot).trim(), at, ['part'])
    return
  }
  const near = [...context.features].flatMap(([part, features]) =>
    [...features.keys()]
      .filter((feature) => feature === text || part === text)
      .map((one) => `${part}.${one}`),
  )
  context.report(ref.notPartFeature, at, { text, near: near.slice(0, 3) })
}
