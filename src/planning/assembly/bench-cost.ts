import { has, type StepSet } from './step-set.ts'

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

/** How the bench stands after a step. */
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
  /** Cost and standing of taking a step as the `place`th, from 0. */
  readonly take: (
    standing: number,
    step: number,
    place: number,
  ) => { readonly cost: number; readonly standing: number }
  /** No less than this is still to come. */
  readonly least: (done: StepSet, standing: number, place: number) => number
  /** A cost as one number taken apart again. */
  readonly apart: (cost: number) => BenchCost
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
  const standings = new Standings()
  const tests = steps.map((step) => step.test)
  return {
    size,
    take(standing, step, place) {
      const was = standings.at(standing)
      const { turns, ...now } = lie(was, from.of[step]!, turn.of[step]!)
      const wanted = tool.of[step]!
      const changes = wanted > 0 && was.tool > 0 && wanted !== was.tool ? 1 : 0
      const counted = place === 0 ? 0 : turns
      const cost = counted * turnUnit + changes * toolUnit + (tests[step] ? place + 1 : 0)
      return { cost, standing: standings.number({ ...now, tool: wanted || was.tool }) }
    },
    least(done, standing, place) {
      if (place === 0) return leastTests(tests, done, 0)
      const was = standings.at(standing)
      const left = (of: readonly number[], but: number) => kindsLeft(of, done, but)
      const turnings = left(turn.of, was.turn)
      const free = countLeft(turn.of, done) + (was.from === 0 ? 1 : 0)
      const turns = turnings + Math.max(0, left(from.of, was.from) - free)
      const changes = Math.max(0, left(tool.of, was.tool) - (was.tool === 0 ? 1 : 0))
      return turns * turnUnit + changes * toolUnit + leastTests(tests, done, place)
    },
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
    const taken = price.take(standing, step, place)
    standing = taken.standing
    sum += taken.cost
  }
  return sum
}

function lie(was: Standing, from: number, turn: number): { turns: number; from: number; turn: number } {
  const turned = turn > 0 && turn !== was.turn
  const now = turned ? { from: 0, turn } : { from: was.from, turn: was.turn }
  const turns = turned ? 1 : 0
  if (from === 0 || from === now.from) return { turns, ...now }
  return now.from === 0 ? { turns, from, turn: now.turn } : { turns: turns + 1, from, turn: 0 }
}

/** Texts as numbers from 1 by first appearance; 0 for none. */
function numbered(texts: readonly (string | null)[]): { readonly of: readonly number[] } {
  const known = new Map<string, number>()
  const of = texts.map((text) => {
    if (text === null) return 0
    const key = text.trim().toLowerCase()
    const number = known.get(key) ?? known.size + 1
    known.set(key, number)
    return number
  })
  return { of }
}

/** How many different numbers other than 0 and `but` the steps not done have. */
function kindsLeft(of: readonly number[], done: StepSet, but: number): number {
  const kinds = new Set<number>()
  for (const [step, kind] of of.entries()) if (kind > 0 && kind !== but && !has(done, step)) kinds.add(kind)
  return kinds.size
}

function countLeft(of: readonly number[], done: StepSet): number {
  return of.reduce((count, kind, step) => count + (kind > 0 && !has(done, step) ? 1 : 0), 0)
}

function leastTests(tests: readonly boolean[], done: StepSet, place: number): number {
  const left = tests.reduce((count, test, step) => count + (test && !has(done, step) ? 1 : 0), 0)
  return left * place + (left * (left + 1)) / 2
}

/** Gives each standing a number, the fresh one 0. */
class Standings {
  private readonly list: Standing[] = [{ from: 0, turn: 0, tool: 0 }]
  private readonly numbers = new Map<string, number>([['0,0,0', 0]])

  at(number: number): Standing {
    return this.list[number]!
  }

  number(standing: Standing): number {
    const key = `${standing.from},${standing.turn},${standing.tool}`
    const known = this.numbers.get(key)
    if (known !== undefined) return known
    this.numbers.set(key, this.list.length)
    return this.list.push(standing) - 1
  }
}
