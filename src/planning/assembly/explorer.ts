import { atOnce } from './at-once.ts'
import type { Pricer } from './bench-cost.ts'
import { orderOfTheRest } from './find-order.ts'
import { leastAhead } from './least-ahead.ts'
import { nextSteps, type RuleBook } from './rules.ts'
import { StateTable } from './state-table.ts'
import { countLeft, type StepSet, withStep } from './step-set.ts'

/** Where an order stands when its first `place` steps are done. */
export interface Stand {
  readonly done: StepSet
  readonly standing: number
  readonly place: number
}

/** A step taken, what it cost, and no less than what it and all after it will cost. */
export interface Move {
  readonly step: number
  readonly cost: number
  readonly least: number
  readonly to: Stand
}

/** Searching one assembly: what was found hopeless is kept from one question to the next. */
export interface Explorer {
  /** The steps that may be next within the budget, as written, without dead ends; all, or one where it may be taken at once. */
  readonly moves: (from: Stand, budget: number, all: boolean) => readonly Move[]
  /** The steps still to do in an order that costs no more; `null`: there is none; `undefined`: states ran out. */
  readonly complete: (from: Stand, budget: number) => number[] | null | undefined
  /** From now on so many states may be gone into. */
  readonly allow: (most: number) => void
  /** States gone into so far. */
  readonly states: () => number
}

/**
 * Looks for orders within a budget, depth first, the most promising step first. For each set of steps done and
 * standing of the bench the largest budget that was in vain is remembered. Cost: states allowed x steps x rules.
 */
export function explorer(book: RuleBook, price: Pricer): Explorer {
  const least = leastAhead(book, price)
  const forced = atOnce(book, price)
  const hopeless = new StateTable(book.words)
  let states = 0
  let end = 0
  const moveTo = ({ done, standing, place }: Stand, step: number, budget: number): readonly Move[] => {
    const cost = price.costOf(standing, step, place)
    if (cost > budget) return []
    const to = { done: withStep(done, step), standing: price.standingAfter(standing, step), place: place + 1 }
    if (hopeless.get(to.done, to.standing) >= budget - cost) return []
    const all = cost + least(to.done, to.standing, to.place, budget - cost)
    if (all > budget) return []
    const shuts = countLeft(to.done, book.shutsOut[step]!) > 0
    if (shuts && orderOfTheRest(book, to.done) === null) return []
    return [{ step, cost, least: all, to }]
  }
  const moves = (from: Stand, budget: number, all: boolean): readonly Move[] => {
    const next = nextSteps(book, from.done)
    const one = all || from.place === 0 ? null : forced(from.done, from.standing, next)
    return (one === null ? next : [one]).flatMap((step) => moveTo(from, step, budget))
  }
  const complete = (from: Stand, budget: number): number[] | null | undefined => {
    if (from.place === book.size) return []
    if (hopeless.get(from.done, from.standing) >= budget) return null
    if (states >= end) return undefined
    states++
    const promising = [...moves(from, budget, false)].sort((a, b) => a.least - b.least)
    for (const { step, cost, to } of promising) {
      const rest = complete(to, budget - cost)
      if (rest === undefined) return undefined
      if (rest !== null) return [step, ...rest]
    }
    hopeless.put(from.done, from.standing, budget)
    return null
  }
  return {
    moves,
    complete,
    allow: (most) => {
      end = states + most
    },
    states: () => states,
  }
}
