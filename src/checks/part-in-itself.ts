import { dep } from '../diagnostics/catalogue/dep.ts'
import { namedRings } from '../graph/named-rings.ts'
import type { ModelCheck } from './check.ts'
import { firstInSource } from './circular-waits.ts'

/** DEP02: parts that contain each other. */
export const partInItself: ModelCheck = (project, report) => {
  const inside = new Map([...project.parts.keys()].map((id) => [id, [] as string[]]))
  const places = new Map<string, { readonly at: (typeof project)['device']['at'] }>()
  for (const [part, { uses }] of project.demand) {
    for (const use of uses) {
      if (use.into === null) continue
      inside.get(use.into)?.push(part)
      places.set(`${use.into} > ${part}`, { at: use.at })
    }
  }
  for (const ring of namedRings(inside)) {
    const edges = ring.map((id, index) => {
      const next = ring[(index + 1) % ring.length]!
      return { id, at: places.get(`${id} > ${next}`)!.at, says: `\`${id}\` contains \`${next}\`` }
    })
    const first = firstInSource(edges)
    report(dep.partInItself, first[0]!.at, { ring: first })
  }
}
