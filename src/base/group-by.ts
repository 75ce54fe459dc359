/** Things under their keys: keys as they first come, the things of a key in their order. Cost: O(things). */
export function groupBy<T, K>(things: Iterable<T>, keyOf: (thing: T) => K): Map<K, T[]> {
  return groupByEach(things, (thing) => [keyOf(thing)])
}

/** Things under each of their keys. */
export function groupByEach<T, K>(things: Iterable<T>, keysOf: (thing: T) => Iterable<K>): Map<K, T[]> {
  const groups = new Map<K, T[]>()
  for (const thing of things) {
    for (const key of keysOf(thing)) {
      const group = groups.get(key)
      if (group) group.push(thing)
      else groups.set(key, [thing])
    }
  }
  return groups
}
