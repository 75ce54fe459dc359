/** A running sum that loses nothing to rounding that a double could hold. */
export interface ExactSum {
  add(term: number): void
  total(): number
}

/**
 * A sum that carries what each addition rounds away.
 * Source: Neumaier, "Rundungsfehleranalyse einiger Verfahren zur Summation endlicher Summen", ZAMM 54 (1974), from
 * memory.
 */
export function exactSum(): ExactSum {
  let [sum, lost] = [0, 0]
  return {
    add(term) {
      const next = sum + term
      lost += Math.abs(sum) >= Math.abs(term) ? sum - next + term : term - next + sum
      sum = next
    },
    total: () => sum + lost,
  }
}
