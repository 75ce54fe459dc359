/** Counting over samples: quantiles and rank correlation. */

/**
 * The least of the values that a share of them does not exceed: the smallest x with at least `share` of all values <= x.
 * Needs: at least one value, 0 < share <= 1. Source: the inverse of the empirical distribution, a textbook definition.
 */
export function quantile(values: ArrayLike<number>, share: number): number {
  const sorted = Float64Array.from(values).sort()
  return sorted[Math.max(0, Math.ceil(share * sorted.length - 1e-9) - 1)]!
}

/** Ranks from 1; equal values share the mean of their ranks. */
export function ranksOf(values: ArrayLike<number>): Float64Array {
  const order = Array.from({ length: values.length }, (_, at) => at).sort(
    (a, b) => values[a]! - values[b]! || a - b,
  )
  const ranks = new Float64Array(values.length)
  for (let from = 0; from < order.length; ) {
    let to = from
    while (to < order.length && values[order[to]!] === values[order[from]!]) to++
    for (let k = from; k < to; k++) ranks[order[k]!] = (from + 1 + to) / 2
    from = to
  }
  return ranks
}

/** How two lists rise together, -1 to 1; 0 where one of them does not vary. Source: Pearson's coefficient, textbook. */
export function correlation(a: ArrayLike<number>, b: ArrayLike<number>): number {
  const count = a.length
  let [sumA, sumB] = [0, 0]
  for (let k = 0; k < count; k++) {
    sumA += a[k]!
    sumB += b[k]!
  }
  let [ab, aa, bb] = [0, 0, 0]
  for (let k = 0; k < count; k++) {
    const [x, y] = [a[k]! - sumA / count, b[k]! - sumB / count]
    ab += x * y
    aa += x * x
    bb += y * y
  }
  return aa === 0 || bb === 0 ? 0 : ab / Math.sqrt(aa * bb)
}

/** Rank correlation of two lists: Pearson's coefficient of their ranks. Source: Spearman (1904), textbook. */
export function rankCorrelation(a: ArrayLike<number>, b: ArrayLike<number>): number {
  return correlation(ranksOf(a), ranksOf(b))
}

/** Mean of the finite values among those picked; `null` where there is none. */
export function meanOf(values: ArrayLike<number>, picked: Iterable<number>): number | null {
  let [sum, count] = [0, 0]
  for (const at of picked) {
    if (!Number.isFinite(values[at]!)) continue
    sum += values[at]!
    count++
  }
  return count === 0 ? null : sum / count
}

/** Share of the values at or below a limit. */
export function shareBy(values: Float64Array, limit: number): number {
  return values.filter((value) => value <= limit).length / values.length
}

/** Numbers of at most `most` of the values, evenly spread among all by size, so that few stand for many. */
export function thinned(values: Float64Array, most: number): readonly number[] {
  const order = Array.from(values, (_, at) => at).sort((a, b) => values[a]! - values[b]! || a - b)
  const count = Math.min(most, order.length)
  return Array.from({ length: count }, (_, k) => order[Math.floor(((k + 0.5) * order.length) / count)]!)
}
