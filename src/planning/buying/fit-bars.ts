/** A kind of piece: all pieces of the same length and cut are alike. Whole steps of length. */
export interface PieceKind {
  readonly length: number
  readonly kerf: number
}

/** Bars of one size, all alike. */
export interface BarSize {
  readonly size: number
  readonly count: number
}

/** Which pieces are to go into which bars. */
export interface BarProblem {
  /** Longest first, then the widest cut first. */
  readonly kinds: readonly PieceKind[]
  /** Pieces of each kind. */
  readonly counts: readonly number[]
  readonly bars: readonly BarSize[]
  /** Of every bar that is begun, what vice or chuck holds and no piece can take; 0: the end can be used up. */
  readonly grip: number
}

/** One bar begun: the index of its size, and pieces of each kind. */
export interface FilledBar {
  readonly bar: number
  readonly take: readonly number[]
}

/** Steps that a search may still take; it counts down. */
export interface Effort {
  left: number
}

/**
 * Length left of a bar when so many pieces of each kind are cut from it; below 0: they do not fit. Every piece takes
 * its length and one cut. Where the end of the bar can be used up, the piece with the widest cut is the last one, and
 * its cut may fall beyond the end.
 */
export function barLeft(
  { kinds, grip }: Pick<BarProblem, 'kinds' | 'grip'>,
  size: number,
  take: readonly number[],
): number {
  let used = grip
  let widest = 0
  for (const [k, { length, kerf }] of kinds.entries()) {
    if (take[k] === 0) continue
    used += take[k]! * (length + kerf)
    widest = Math.max(widest, kerf)
  }
  return size - used + (grip === 0 ? widest : 0)
}

/**
 * All pieces into the bars, `impossible` where that cannot be, `undecided` where the effort ran out.
 * Method: bin completion. The longest piece left goes into each size of bar in turn, with every set of other pieces
 * that leaves no room for a further or a longer one, fullest first; what is wasted may not exceed what the bars hold
 * beyond the pieces; states that failed once are not tried again.
 * Source: Gent 1998, Korf 2002 (bin completion), Martello and Toth 1990 (dominance); from memory.
 * Cost: exponential in the kinds at worst; at most `effort.left` steps.
 */
export function fitBars(problem: BarProblem, effort: Effort): FilledBar[] | 'impossible' | 'undecided' {
  const search = begin(problem, effort)
  if (descend(search)) return search.filled
  return effort.left > 0 && search.whole ? 'impossible' : 'undecided'
}

/**
 * The fullest sets of pieces for one bar of the size at this index, fullest first: those that leave room for the other
 * pieces in the other bars, by length alone. Gives: at most `most` sets, not all where the effort ran out.
 */
export function fullestSets(
  problem: BarProblem,
  bar: number,
  most: number,
  effort: Effort,
): (readonly number[])[] {
  const search = begin(problem, effort)
  const found = completions(search, problem.bars[bar]!.size, null, spareOf(search))
  return found.slice(0, most).map(({ take }) => take)
}

/** Steps for the fullest set of one bar. */
const stepsForBar = 400

/**
 * The pieces into these bars by rule of thumb: the longest piece left with whatever fills its bar best, bar by bar.
 * Method: minimum bin slack, cut short (Gupta and Ho 1999, from memory). Gives: `null` where pieces are left.
 */
export function fillBarByBar(problem: BarProblem): FilledBar[] | null {
  const search = begin(problem, { left: 0 })
  const { left, free, bars, filled } = search
  for (;;) {
    const longest = left.findIndex((count) => count > 0)
    if (longest < 0) return filled
    const spare = spareOf(search)
    if (spare < 0) return null
    const sets = bars.flatMap(({ size }, bar) => {
      if (free[bar] === 0) return []
      search.effort.left = stepsForBar
      return completions(search, size, longest, spare).map((one) => ({ bar, ...one }))
    })
    if (sets.length === 0) return null
    const { bar, take } = sets.reduce((best, one) => (one.waste < best.waste ? one : best))
    move(search, bar, take, -1)
    filled.push({ bar, take })
  }
}

function begin(problem: BarProblem, effort: Effort): Search {
  return {
    ...problem,
    weights: problem.kinds.map(({ length, kerf }) => length + kerf),
    widest: problem.grip === 0 ? Math.max(0, ...problem.kinds.map(({ kerf }) => kerf)) : 0,
    left: [...problem.counts],
    free: problem.bars.map(({ count }) => count),
    failed: new Set(),
    filled: [],
    effort,
    whole: true,
  }
}

interface Search extends BarProblem {
  readonly weights: readonly number[]
  readonly widest: number
  readonly left: number[]
  readonly free: number[]
  readonly failed: Set<string>
  readonly filled: FilledBar[]
  readonly effort: Effort
  /** Whether every set worth trying was tried. */
  whole: boolean
}

/** Most sets tried for one bar; where there are more, room is plenty and some of them will do. */
const mostSets = 300

function descend(search: Search): boolean {
  const { left, free, bars, failed, filled, effort } = search
  effort.left -= 1
  if (effort.left <= 0) return false
  const longest = left.findIndex((count) => count > 0)
  if (longest < 0) return true
  const spare = spareOf(search)
  const state = `${left.join()};${free.join()}`
  if (spare < 0 || failed.has(state)) return false
  for (const bar of bars.keys()) {
    if (free[bar] === 0) continue
    for (const { take } of completions(search, bars[bar]!.size, longest, spare)) {
      move(search, bar, take, -1)
      filled.push({ bar, take })
      if (descend(search)) return true
      filled.pop()
      move(search, bar, take, 1)
    }
  }
  // Out of effort, nothing has been shown.
  if (effort.left > 0) failed.add(state)
  return false
}

function move({ left, free }: Search, bar: number, take: readonly number[], sign: 1 | -1): void {
  for (const k of take.keys()) left[k] = left[k]! + sign * take[k]!
  free[bar] = free[bar]! + sign
}

/** What the free bars hold beyond the pieces left: the most that may be wasted. */
function spareOf({ left, free, bars, weights, widest, grip }: Search): number {
  const room = bars.reduce((sum, { size }, b) => sum + free[b]! * Math.max(0, size - grip + widest), 0)
  return weights.reduce((spare, weight, k) => spare - weight * left[k]!, room)
}

interface Completion {
  readonly take: readonly number[]
  readonly waste: number
}

/** Every set of pieces with one of the longest (or any set) that is worth trying in a bar, fullest first. */
function completions(search: Search, size: number, longest: number | null, spare: number): Completion[] {
  const found: Completion[] = []
  const take = search.left.map((_, k) => (k === longest ? 1 : 0))
  const most = size - search.grip + search.widest
  const used = longest === null ? 0 : search.weights[longest]!
  if (barLeft(search, size, take) < 0) return found
  grow({ search, size, longest, take, found, most, spare, after: laterWeights(search) }, longest ?? 0, used)
  return found.sort((a, b) => a.waste - b.waste)
}

/** Weight of all pieces left of this and every later kind. */
function laterWeights({ weights, left }: Search): number[] {
  const sums = [...weights.map((weight, k) => weight * left[k]!), 0]
  for (let k = sums.length - 2; k >= 0; k -= 1) sums[k] = sums[k]! + sums[k + 1]!
  return sums
}

interface Growing {
  readonly search: Search
  readonly size: number
  readonly longest: number | null
  readonly take: number[]
  readonly found: Completion[]
  readonly most: number
  readonly spare: number
  readonly after: readonly number[]
}

function grow(growing: Growing, kind: number, used: number): void {
  const { search, longest, take, found, most, spare, after } = growing
  search.effort.left -= 1
  if (found.length >= mostSets) {
    search.whole = false
    return
  }
  if (search.effort.left <= 0 || most - used - after[kind]! > spare) return
  if (kind === take.length) {
    if (isFull(growing, most - used)) found.push({ take: [...take], waste: most - used })
    return
  }
  const weight = search.weights[kind]!
  const first = kind === longest ? 1 : 0
  const room = weight === 0 ? search.left[kind]! : Math.floor((most - used) / weight)
  for (let more = Math.min(search.left[kind]! - first, room); more >= 0; more -= 1) {
    take[kind] = first + more
    grow(growing, kind + 1, used + more * weight)
  }
  take[kind] = first
}

/**
 * Whether the pieces fit, no further piece fits, and no longer one instead of one taken: either could be moved here
 * from another bar, and what it replaces would fit there.
 */
function isFull({ search, longest, take }: Growing, waste: number): boolean {
  const { kinds, left, weights, widest } = search
  const lost = (cut: number): number => waste - widest + cut
  const cut = search.grip === 0 ? widestCut(kinds, take, null) : 0
  if (lost(cut) < 0) return false
  const wider = (kind: number, than: number): number =>
    search.grip === 0 ? Math.max(than, kinds[kind]!.kerf) : 0
  let replaced = -1
  for (let k = 0; k < kinds.length; k += 1) {
    const more = take[k]! < left[k]!
    if (more && lost(wider(k, cut)) >= weights[k]!) return false
    if (take[k]! > (k === longest ? 1 : 0)) replaced = k
  }
  for (let k = replaced; k > 0; k -= 1) {
    if (take[k]! <= (k === longest ? 1 : 0)) continue
    const without = take[k] === 1 && search.grip === 0 ? widestCut(kinds, take, k) : cut
    for (let longer = 0; longer < k; longer += 1) {
      const heavier = weights[longer]! - weights[k]!
      if (take[longer] === left[longer] || heavier < 0) continue
      if (lost(wider(longer, without)) >= heavier) return false
    }
  }
  return true
}

function widestCut(kinds: readonly PieceKind[], take: readonly number[], but: number | null): number {
  let widest = 0
  for (let k = 0; k < kinds.length; k += 1)
    if (take[k]! > 0 && k !== but) widest = Math.max(widest, kinds[k]!.kerf)
  return widest
}
