import type { Instant, Minutes, Span } from './clock.ts'

/**
 * Open times: sorted, disjoint, non-touching half-open spans as `[open0, close0, open1, close1, ...]`.
 * Every function here needs this form and gives it.
 */
export type Spans = Int32Array

/** Spans in any order, overlapping or empty, brought into the sorted disjoint form. */
export function spansOf(loose: readonly Span[]): Spans {
  const sorted = loose.filter(({ open, close }) => open < close).sort((a, b) => a.open - b.open)
  const joined: number[] = []
  for (const { open, close } of sorted) {
    const last = joined.at(-1)
    if (last !== undefined && open <= last) joined[joined.length - 1] = Math.max(last, close)
    else joined.push(open, close)
  }
  return Int32Array.from(joined)
}

/** The spans one by one. */
export function listSpans(spans: Spans): Span[] {
  const list: Span[] = []
  for (let i = 0; i < spans.length; i += 2) list.push({ open: spans[i]!, close: spans[i + 1]! })
  return list
}

/** Times open in either. Cost: O(a + b), as for the next two. */
export function unite(a: Spans, b: Spans): Spans {
  return merge(a, b, (inA, inB) => inA || inB)
}

/** Times open in both. */
export function intersect(a: Spans, b: Spans): Spans {
  return merge(a, b, (inA, inB) => inA && inB)
}

/** Times open in `a` and not in `b`. */
export function subtract(a: Spans, b: Spans): Spans {
  return merge(a, b, (inA, inB) => inA && !inB)
}

/** Number of the first span that closes after `t` (the one that holds `t`, else the next); the count if none does. */
export function firstClosingAfter(spans: Spans, t: Instant): number {
  let [low, high] = [0, spans.length >> 1]
  while (low < high) {
    const middle = (low + high) >> 1
    if (spans[2 * middle + 1]! > t) high = middle
    else low = middle + 1
  }
  return low
}

/** The span that holds the instant, its opening included and its close not, or `null`. */
export function containing(spans: Spans, t: Instant): Span | null {
  const i = 2 * firstClosingAfter(spans, t)
  return i < spans.length && spans[i]! <= t ? { open: spans[i]!, close: spans[i + 1]! } : null
}

/** Open minutes from one instant to another; none where `to` is not later. */
export function minutesBetween(spans: Spans, from: Instant, to: Instant): Minutes {
  let minutes = 0
  for (let i = 2 * firstClosingAfter(spans, from); i < spans.length && spans[i]! < to; i += 2) {
    minutes += Math.max(0, Math.min(to, spans[i + 1]!) - Math.max(from, spans[i]!))
  }
  return minutes
}

/** Walks both edge lists in time order; between edges, an even count of edges passed means closed. */
function merge(a: Spans, b: Spans, keeps: (inA: boolean, inB: boolean) => boolean): Spans {
  const edges: number[] = []
  let [i, j, open] = [0, 0, false]
  while (i < a.length || j < b.length) {
    const now = Math.min(a[i] ?? Number.POSITIVE_INFINITY, b[j] ?? Number.POSITIVE_INFINITY)
    if (a[i] === now) i++
    if (b[j] === now) j++
    const keep = keeps(i % 2 === 1, j % 2 === 1)
    if (keep === open) continue
    edges.push(now)
    open = keep
  }
  return Int32Array.from(edges)
}
