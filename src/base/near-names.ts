import { distance } from 'fastest-levenshtein'

/**
 * Up to three known names that a person may have meant, nearest first. Nearness is the number of letters changed,
 * case put aside; among equals those that begin alike come first, then by case and code points, whatever the order of
 * `known`.
 */
export function nearNames(name: string, known: Iterable<string>, most = 3): string[] {
  const folded = name.toLowerCase()
  const reach = name.length <= 3 ? 1 : name.length <= 7 ? 2 : 3
  return [...new Set(known)]
    .filter((other) => other !== name && Math.abs(other.length - name.length) <= reach)
    .map((other) => ({
      other,
      far: distance(folded, other.toLowerCase()),
      exact: distance(name, other),
      alike: alike(folded, other),
    }))
    .filter(({ far, other }) => far <= reach && far < Math.min(other.length, name.length))
    .sort((a, b) => a.far - b.far || b.alike - a.alike || a.exact - b.exact || (a.other < b.other ? -1 : 1))
    .slice(0, most)
    .map(({ other }) => other)
}

/** Names in backticks with a word before the last: `a`, `b` and `c`. Empty for none. */
export function nameList(names: readonly string[], word: 'and' | 'or'): string {
  const quoted = names.map((name) => `\`${name}\``)
  const last = quoted.pop()
  if (last === undefined) return ''
  return quoted.length === 0 ? last : `${quoted.join(', ')} ${word} ${last}`
}

/** How many first letters are the same. */
function alike(folded: string, other: string): number {
  const letters = other.toLowerCase()
  let count = 0
  while (count < folded.length && folded[count] === letters[count]) count++
  return count
}
