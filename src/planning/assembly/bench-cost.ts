/** What the choice among orders looks at in one step. Texts that are equal mean the same. */
export interface BenchStep {
  /** Direction of putting in; `null`: any, the work stays as it lies. */
  readonly from: string | null
  /** How the work lies from here on; `null`: as it lay. */
  readonly turn: string | null
  /** `null`: none, the last one stays at hand. */
  readonly tool: string | null
  readonly test: boolean
}

/** How the bench stands after a step; 0: not known, or none. */
export interface Standing {
  readonly from: number
  readonly turn: number
  readonly tool: number
}

/** Turnings over, tool changes and tests' places, of a whole order or part of one. */
export interface BenchCost {
  readonly turns: number
  readonly toolChanges: number
  /** Sum of the places of the tests, counted from 1. */
  readonly testPlaces: number
}

/** Counts what an order costs at the bench, step by step. */
export interface Pricer {
  readonly size: number
  /** By step: its direction, side up and tool, numbered from 1; 0: none. */
  readonly from: readonly number[]
  readonly turn: readonly number[]
  readonly tool: readonly number[]
  readonly tests: readonly boolean[]
  /** What one turning over and one tool change weigh in a cost; a test weighs its place. */
  readonly units: { readonly turn: number; readonly tool: number }
  /** Cost of taking a step as the `place`th, from 0. */
  readonly costOf: (standing: number, step: number, place: number) => number
  readonly standingAfter: (standing: number, step: number) => number
  /** A standing's number taken apart. */
  readonly stands: (standing: number) => Standing
  /** A cost as one number taken apart again. */
  readonly apart: (cost: number) => BenchCost
}

/** What taking a step from a standing changes. */
interface Change {
  readonly turns: number
  readonly changes: number
  readonly standing: number
}

/** The standing before the first step. */
export const fresh = 0

/**
 * Prices orders of these steps: one number, in which a turning over weighs more than all tool changes and a tool
 * change more than all tests.
 * A turning over is counted when a step goes in from another direction than the one before it, or turns the work to
 * lie otherwise than it lies; the direction of the first step after a turn is the one turned to, and the first step
 * of all is laid as it needs. A step that names no direction or no tool leaves them as they are.
 */
export function pricer(steps: readonly BenchStep[]): Pricer {
  const from = numbered(steps.map((step) => step.from))
  const turn = numbered(steps.map((step) => step.turn))
  const tool = numbered(steps.map((step) => step.tool))
  const size = steps.length
  const toolUnit = size * size + size + 1
  const turnUnit = toolUnit * (size + 1)
  const tests = steps.map((step) => step.test)
  const base = size + 1
  const stands = (standing: number): Standing => ({
    from: Math.floor(standing / (base * base)),
    turn: Math.floor(standing / base) % base,
    tool: standing % base,
  })
  const changes = new Map<number, Change[]>()
  const change = (standing: number, step: number): Change => {
    const known = changes.get(standing) ?? []
    if (known.length === 0) changes.set(standing, known)
    const told = known[step]
    if (told) return told
    const was = stands(standing)
    const { turns, ...now } = lie(was, from[step]!, turn[step]!)
    const wanted = tool[step]!
    const changed = wanted > 0 && was.tool > 0 && wanted !== was.tool ? 1 : 0
    const after = (now.from * base + now.turn) * base + (wanted || was.tool)
    known[step] = { turns, changes: changed, standing: after }
    return known[step]
  }
  return {
    size,
    from,
    turn,
    tool,
    tests,
    units: { turn: turnUnit, tool: toolUnit },
    stands,
    costOf(standing, step, place) {
      const { turns, changes } = change(standing, step)
      const counted = place === 0 ? 0 : turns
      return counted * turnUnit + changes * toolUnit + (tests[step] ? place + 1 : 0)
    },
    standingAfter: (standing, step) => change(standing, step).standing,
    apart: (cost) => ({
      turns: Math.floor(cost / turnUnit),
      toolChanges: Math.floor((cost % turnUnit) / toolUnit),
      testPlaces: cost % toolUnit,
    }),
  }
}

/** What an order costs. */
export function priceOf(price: Pricer, order: readonly number[]): number {
  let standing = fresh
  let sum = 0
  for (const [place, step] of order.entries()) {
    sum += price.costOf(standing, step, place)
    standing = price.standingAfter(standing, step)
  }
  return sum
}

/** The same bench, on which a test is a step like any other. */
export function withoutTests(price: Pricer): Pricer {
  const costOf = (standing: number, step: number, place: number): number =>
    price.costOf(standing, step, place) - (price.tests[step] ? place + 1 : 0)
  return { ...price, tests: price.tests.map(() => false), costOf }
}

function lie(was: Standing, from: number, turn: number): { turns: number; from: number; turn: number } {
  const turned = turn > 0 && turn !== was.turn
  const now = turned ? { from: 0, turn } : { from: was.from, turn: was.turn }
  const turns = turned ? 1 : 0
  if (from === 0 || from === now.from) return { turns, ...now }
  return now.from === 0 ? { turns, from, turn: now.turn } : { turns: turns + 1, from, turn: 0 }
}

/** Texts as numbers from 1 by first appearance; 0 for none. */
function numbered(texts: readonly (string | null)[]): readonly number[] {
  const known = new Map<string, number>()
  return texts.map((text) => {
    if (text === null) return 0
    const key = text.trim().toLowerCase()
    const number = known.get(key) ?? known.size + 1
    known.set(key, number)
    return number
  })
}
