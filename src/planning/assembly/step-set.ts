/** A set of steps by number, 32 to a word. */
export type StepSet = Uint32Array

/** How many words a set of so many steps takes. */
export const wordsFor = (size: number): number => Math.max(1, Math.ceil(size / 32))

/** The set of the steps given. */
export function setOf(steps: Iterable<number>, words: number): StepSet {
  const set = new Uint32Array(words)
  for (const step of steps) add(set, step)
  return set
}

/** Whether a step is in the set. */
export const has = (set: StepSet, step: number): boolean => (set[step >>> 5]! & (1 << (step & 31))) !== 0

/** Puts a step into the set itself. */
export function add(set: StepSet, step: number): void {
  set[step >>> 5]! |= 1 << (step & 31)
}

/** A new set with one step more. */
export function withStep(set: StepSet, step: number): StepSet {
  const next = set.slice()
  add(next, step)
  return next
}

/** Whether all of `part` are in `set`. */
export function holdsAll(set: StepSet, part: StepSet): boolean {
  for (let w = 0; w < part.length; w++) if ((part[w]! & ~set[w]!) !== 0) return false
  return true
}

/** Whether any of `part` is in `set`. */
export function holdsAny(set: StepSet, part: StepSet): boolean {
  for (let w = 0; w < part.length; w++) if ((part[w]! & set[w]!) !== 0) return true
  return false
}

/** How many of `part` are in `set`. */
export function countIn(set: StepSet, part: StepSet): number {
  let count = 0
  for (let w = 0; w < part.length; w++) {
    for (let word = part[w]! & set[w]!; word !== 0; word &= word - 1) count++
  }
  return count
}

/** A key by which equal sets of one problem are found again. */
export function keyOf(set: StepSet): number | string {
  if (set.length === 1) return set[0]!
  if (set.length === 2 && set[1]! < 0x20_0000) return set[1]! * 0x1_0000_0000 + set[0]!
  return set.join(',')
}

/** How many of `part` are not in `set`. */
export function countLeft(set: StepSet, part: StepSet): number {
  let count = 0
  for (let w = 0; w < part.length; w++) {
    for (let word = part[w]! & ~set[w]!; word !== 0; word &= word - 1) count++
  }
  return count
}
