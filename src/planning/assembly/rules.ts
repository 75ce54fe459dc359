import { add, countIn, has, holdsAll, holdsAny, type StepSet, setOf, wordsFor } from './step-set.ts'

/** Something that can be told from the set of steps done. */
export type Condition =
  | { readonly kind: 'some done'; readonly of: readonly number[] }
  | { readonly kind: 'not all done'; readonly of: readonly number[] }
  /** Of an opening that is shut and opened in turn: whether it has been shut once more than opened. */
  | {
      readonly kind: 'shut'
      readonly is: boolean
      readonly shuts: readonly number[]
      readonly opens: readonly number[]
    }

/** One of the conditions holds when the step begins. */
export interface Rule {
  readonly step: number
  readonly any: readonly Condition[]
}

/** Rules on the order of so many steps, made ready for searching. */
export interface RuleBook {
  readonly size: number
  readonly words: number
  /** By step: all of these are done before it. */
  readonly required: readonly StepSet[]
  /** By step: of each of these sets one is not yet done. */
  readonly beforeLast: readonly (readonly StepSet[])[]
  /** By step: rules of any other kind. */
  readonly mixed: readonly (readonly ReadyRule[])[]
  /** By step: the steps it may shut out when it is done; of these it must not be taken before its time. */
  readonly shutsOut: readonly StepSet[]
  /** No mixed rules at all: whether an order exists is then told without searching. */
  readonly plain: boolean
}

/** A mixed rule as sets. */
export interface ReadyRule {
  readonly any: readonly ((done: StepSet) => boolean)[]
  /** All steps that its conditions look at. */
  readonly looksAt: StepSet
  /** Whether it holds for good once these are done. */
  readonly settled: (done: StepSet) => boolean
}

/** Sorts rules by kind. Needs: steps numbered from 0 below `size`. */
export function ruleBook(size: number, rules: readonly Rule[]): RuleBook {
  const words = wordsFor(size)
  const required: number[][] = Array.from({ length: size }, () => [])
  const beforeLast: StepSet[][] = Array.from({ length: size }, () => [])
  const mixed: ReadyRule[][] = Array.from({ length: size }, () => [])
  for (const { step, any } of rules) {
    const [only] = any
    if (any.length === 1 && only!.kind === 'some done' && only!.of.length === 1)
      required[step]!.push(only!.of[0]!)
    else if (any.length > 0 && any.every(({ kind }) => kind === 'not all done'))
      beforeLast[step]!.push(
        setOf(
          any.flatMap((one) => (one.kind === 'not all done' ? one.of : [])),
          words,
        ),
      )
    else mixed[step]!.push(readyRule(any, words))
  }
  return {
    size,
    words,
    required: required.map((steps) => setOf(steps, words)),
    beforeLast,
    mixed,
    shutsOut: shutOutBy(size, words, rules),
    plain: mixed.every((list) => list.length === 0),
  }
}

/** All steps that a condition looks at. */
export const stepsOf = (one: Condition): readonly number[] =>
  one.kind === 'shut' ? [...one.shuts, ...one.opens] : one.of

function readyRule(any: readonly Condition[], words: number): ReadyRule {
  const lasting = any.filter(({ kind }) => kind === 'some done').map((one) => ready(one, words))
  return {
    any: any.map((one) => ready(one, words)),
    looksAt: setOf(any.flatMap(stepsOf), words),
    settled: (done) => lasting.some((holds) => holds(done)),
  }
}

function shutOutBy(size: number, words: number, rules: readonly Rule[]): readonly StepSet[] {
  const by = Array.from({ length: size }, () => setOf([], words))
  for (const { step, any } of rules) {
    for (const one of any) {
      if (one.kind === 'some done') continue
      for (const other of stepsOf(one)) if (other !== step) add(by[other]!, step)
    }
  }
  return by
}

function ready(condition: Condition, words: number): (done: StepSet) => boolean {
  if (condition.kind === 'shut') {
    const shuts = setOf(condition.shuts, words)
    const opens = setOf(condition.opens, words)
    return (done) => countIn(done, shuts) > countIn(done, opens) === condition.is
  }
  const of = setOf(condition.of, words)
  return condition.kind === 'some done' ? (done) => holdsAny(done, of) : (done) => !holdsAll(done, of)
}

/** Whether a step may be taken next when these are done. */
export function mayTake(book: RuleBook, done: StepSet, step: number): boolean {
  if (has(done, step) || !holdsAll(done, book.required[step]!)) return false
  for (const set of book.beforeLast[step]!) if (holdsAll(done, set)) return false
  return book.mixed[step]!.every(({ any }) => any.some((holds) => holds(done)))
}

/** The steps that may be taken next, rising. */
export function nextSteps(book: RuleBook, done: StepSet): number[] {
  const next: number[] = []
  for (let step = 0; step < book.size; step++) if (mayTake(book, done, step)) next.push(step)
  return next
}
