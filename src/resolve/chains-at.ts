import type { Chain, ChainTerm } from '../model/project.ts'
import type { Source } from '../source/load.ts'
import { entries, field, type Spot } from '../source/spot.ts'
import type { Context } from './context.ts'
import { featureNameAt } from './feature-name-at.ts'
import { listed } from './reading.ts'

/** The dimension chains of a project, each dimension with its sign and count; unknown features are reported. */
export function chainsAt(context: Context, source: Source): ReadonlyMap<string, Chain> {
  const chains = field(source.project, 'chains')
  return new Map(
    (chains ? entries(chains) : []).map(([id, spot]) => {
      const must = field(spot, 'must')!
      const sum = listed(field(spot, 'sum')).map((one) => termAt(context, one))
      return [id, { id, at: spot.keyAt, must: must.text.trim(), mustAt: must.at, sum }]
    }),
  )
}

/** One dimension: `base.depth`, `-bearing.width x2`. */
function termAt(context: Context, spot: Spot<string>): ChainTerm {
  const text = spot.text.trim()
  const [, sign, rest] = /^([-+−]?)\s*(.*)$/s.exec(text)!
  const counted = /^(.*\S)\s+[x×]([1-9]\d{0,2})$/.exec(rest!)
  const known = [...context.features].some(
    ([part, features]) => rest!.startsWith(`${part}.`) && features.has(rest!.slice(part.length + 1)),
  )
  const name = counted && !known ? counted[1]! : rest!
  const count = counted && !known ? Number(counted[2]) : 1
  const found = featureNameAt(context, name, spot.at)
  const factor = sign === '-' || sign === '−' ? -count : count
  return { text, at: spot.at, factor, of: found ? { part: found.part, feature: found.feature } : null }
}
