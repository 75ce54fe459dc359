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
  /** What is left to do where these steps are done. */
  readonly left: (done: StepSet) => Left
  /** No less than this is still to come when `step`, one of those left, is done too; -1: none is. */
  readonly least: (left: Left, step: number, standing: number, place: number) => number
  /** A cost as one number taken apart again. */
  readonly apart: (cost: number) => BenchCost
}

/** What the steps not yet done hold, counted. */
export interface Left {
  readonly tests: number
  readonly from: Kinds
  readonly turn: Kinds
  readonly tool: Kinds
}

/** How many steps left there are by what they name, at 0 the nameless; how many name anything, and how many names. */
interface Kinds {
  readonly count: Int32Array
  readonly steps: number
  readonly names: number
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
  const standings = new Standings(turn.size, tool.size)
  const tests = steps.map((step) => step.test)
  const moves: Move[][] = []
  const moveOf = (standing: number, step: number): Move => {
    moves[standing] ??= []
    const moved = moves[standing]
    moved[step] ??= standings.moved(standing, from.of[step]!, turn.of[step]!, tool.of[step]!)
    return moved[step]
  }
  return {
    size,
    take(standing, step, place) {
      const { turns, changes, next } = moveOf(standing, step)
      const counted = place === 0 ? 0 : turns
      const cost = counted * turnUnit + changes * toolUnit + (tests[step] ? place + 1 : 0)
      return { cost, standing: next }
    },
    left: (done) => ({
      tests: tests.reduce((count, test, step) => count + (test && !has(done, step) ? 1 : 0), 0),
      from: kindsLeft(from, done),
      turn: kindsLeft(turn, done),
      tool: kindsLeft(tool, done),
    }),
    least(left, step, standing, place) {
      const [lies, turned, tooled] = step < 0 ? [0, 0, 0] : [from.of[step]!, turn.of[step]!, tool.of[step]!]
      const testsAhead = leastTests(left.tests - (step >= 0 && tests[step] ? 1 : 0), place)
      if (place === 0) return testsAhead
      const was = standings.at(standing)
      const turnings = namesLeft(left.turn, turned, was.turn)
      const free = left.turn.steps - (turned > 0 ? 1 : 0) + (was.from === 0 ? 1 : 0)
      const turns = turnings + Math.max(0, namesLeft(left.from, lies, was.from) - free)
      const changes = Math.max(0, namesLeft(left.tool, tooled, was.tool) - (was.tool === 0 ? 1 : 0))
      return turns * turnUnit + changes * toolUnit + testsAhead
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

/** What one step does to the bench as it stands. */
interface Move {
  readonly turns: number
  readonly changes: number
  readonly next: number
}

function lie(was: Standing, from: number, turn: number): { turns: number; from: number; turn: number } {
  const turned = turn > 0 && turn !== was.turn
  const now = turned ? { from: 0, turn } : { from: was.from, turn: was.turn }
  const turns = turned ? 1 : 0
  if (from === 0 || from === now.from) return { turns, ...now }
  return now.from === 0 ? { turns, from, turn: now.turn } : { turns: turns + 1, from, turn: 0 }
}

/** Texts as numbers from 1 by first appearance, 0 for none; `size` is one more than the highest. */
interface Numbered {
  readonly of: readonly number[]
  readonly size: number
}

function numbered(texts: readonly (string | null)[]): Numbered {
  const known = new Map<string, number>()
  const of = texts.map((text) => {
    if (text === null) return 0
    const key = text.trim().toLowerCase()
    const number = known.get(key) ?? known.size + 1
    known.set(key, number)
    return number
  })
  return { of, size: known.size + 1 }
}

function kindsLeft({ of, size }: Numbered, done: StepSet): Kinds {
  const count = new Int32Array(size)
  let steps = 0
  let names = 0
  for (let step = 0; step < of.length; step++) {
    const kind = of[step]!
    if (has(done, step)) continue
    count[kind]!++
    if (kind === 0) continue
    steps++
    if (count[kind] === 1) names++
  }
  return { count, steps, names }
}

/** How many different names the steps left have, one of the name `taken` done too, `but` not counted. */
function namesLeft({ count, names }: Kinds, taken: number, but: number): number {
  const last = taken > 0 && count[taken] === 1
  const spared = but > 0 && count[but]! > (but === taken ? 1 : 0)
  return names - (last ? 1 : 0) - (spared ? 1 : 0)
}

const leastTests = (left: number, place: number): number => left * place + (left * (left + 1)) / 2

/** Gives each standing a number, the fresh one 0. */
class Standings {
  private readonly list: Standing[] = [{ from: 0, turn: 0, tool: 0 }]
  private readonly numbers = new Map<number, number>([[0, 0]])
  private readonly turns: number
  private readonly tools: number

  constructor(turns: number, tools: number) {
    this.turns = turns
    this.tools = tools
  }

  at(number: number): Standing {
    return this.list[number]!
  }

  moved(standing: number, from: number, turn: number, tool: number): Move {
    const was = this.at(standing)
    const { turns, ...now } = lie(was, from, turn)
    const changes = tool > 0 && was.tool > 0 && tool !== was.tool ? 1 : 0
    return { turns, changes, next: this.number({ ...now, tool: tool || was.tool }) }
  }

  private number(standing: Standing): number {
    const key = (standing.from * this.turns + standing.turn) * this.tools + standing.tool
    const known = this.numbers.get(key)
    if (known !== undefined) return known
    this.numbers.set(key, this.list.length)
    return this.list.push(standing) - 1
  }
}
