/**
 * The least sets that take one member of each of some sets: sets of which no part would do. `null` where there are
 * more than `most` on the way.
 * Method: set by set, keeping only those of which none holds another (Berge, "Hypergraphs", 1989, from memory).
 */
export function leastChoices(
  sets: readonly (readonly string[])[],
  most: number,
): readonly (readonly string[])[] | null {
  let choices: readonly ReadonlySet<string>[] = [new Set()]
  for (const set of [...sets].sort((a, b) => a.length - b.length)) {
    const met = choices.filter((choice) => set.some((one) => choice.has(one)))
    const grown = choices
      .filter((choice) => !met.includes(choice))
      .flatMap((choice) => set.map((one) => new Set([...choice, one])))
    const fresh = grown.filter((one) => !met.some((other) => holds(one, other)))
    choices = [
      ...met,
      ...fresh.filter((one, k) => !fresh.some((other, i) => i !== k && holds(one, other, i < k))),
    ]
    if (choices.length > most) return null
  }
  return choices.map((choice) => [...choice])
}

/** Whether a set holds all of another; of two equal ones only where `orEqual`. */
function holds(set: ReadonlySet<string>, other: ReadonlySet<string>, orEqual = true): boolean {
  if (other.size > set.size || (other.size === set.size && !orEqual)) return false
  for (const one of other) if (!set.has(one)) return false
  return true
}
