import { operationsOf } from '../model/features.ts'
import type { Part } from '../model/project.ts'

/** Processes that make threads in holes. */
const tapping: ReadonlySet<string> = new Set(['tap', 'thread mill'])

const metric = /\bM(\d+(?:\.\d+)?)(?![\d.])/

/** The metric size of a screw or bolt: `M3`; `null`: it is none, or nothing tells. */
export function screwSize(part: Part): string | null {
  return /\b(?:screw|bolt)\b/i.test(part.id) ? metricSize(part) : null
}

/** The first metric size that a part's features, name or description tell; `null`: none. */
export function metricSize({ id, description, way }: Part): string | null {
  const own = way.kind === 'assembly' ? [] : way.features.map(({ text }) => text)
  const said = [...own, id, description ?? ''].map((text) => metric.exec(text)?.[1]).find(Boolean)
  return said === undefined ? null : `M${said}`
}

/** How many threads of each metric size the route of a part makes, as far as it says how many. */
export function threadsOf({ way }: Part): ReadonlyMap<string, number> {
  const made = new Map<string, number>()
  if (way.kind === 'assembly') return made
  const sizes = new Map(
    way.features.map(({ name, text }) => [name, /^M(\d+(?:\.\d+)?)(?![\d.])/.exec(text.trim())]),
  )
  for (const { process, features, facts } of way.route.flatMap(operationsOf)) {
    if (!tapping.has(process)) continue
    const holes = Number(facts.get('holes') ?? 1)
    for (const size of features.flatMap((name) => sizes.get(name)?.[1] ?? []))
      made.set(`M${size}`, (made.get(`M${size}`) ?? 0) + holes)
  }
  return made
}
