/** A few names in a sentence, the rest counted: `magnet, bearing and 3 more`. */
export function sayList(names: readonly string[], most = 3): string {
  if (names.length <= most) return names.join(', ')
  return `${names.slice(0, most - 1).join(', ')} and ${names.length - most + 1} more`
}
