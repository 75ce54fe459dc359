/** One way round in a graph of names, its first name repeated at the end; `null` where there is none. */
export function findRing(arcs: ReadonlyMap<string, readonly string[]>): readonly string[] | null {
  const done = new Set<string>()
  const way: string[] = []
  const walk = (name: string): readonly string[] | null => {
    const before = way.indexOf(name)
    if (before >= 0) return [...way.slice(before), name]
    if (done.has(name)) return null
    way.push(name)
    for (const next of arcs.get(name) ?? []) {
      const ring = walk(next)
      if (ring) return ring
    }
    way.pop()
    done.add(name)
    return null
  }
  for (const name of arcs.keys()) {
    const ring = walk(name)
    if (ring) return ring
  }
  return null
}
