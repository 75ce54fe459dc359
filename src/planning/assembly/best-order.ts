import { fresh, type Pricer, priceOf } from './bench-cost.ts'
import { findOrder, orderOfTheRest } from './find-order.ts'
import { nextSteps, type RuleBook } from './rules.ts'
import { keyOf, type StepSet, setOf, withStep } from './step-set.ts'

/** The order chosen. `proved`: no order is better, and of equal ones this is nearest to the order written. */
export interface Best {
  readonly order: readonly number[]
  readonly cost: number
  readonly proved: boolean
}

/** How much may be tried, counted in states (a set of steps done and how the bench stands). */
export interface Effort {
  readonly states: number
  /** States kept for each number of steps done while looking for a first good order. */
  readonly width: number
}

/** The effort taken where nothing else is said. */
export const usualEffort: Effort = { states: 40_000, width: 60 }

interface State {
  readonly done: StepSet
  readonly standing: number
  /** Least cost so far, and of getting to the end. */
  sofar: number
  ahead: number
  readonly by: number[]
  readonly to: State[]
}

type Layer = Map<number | string, Map<number, State>>

/**
 * The cheapest order that keeps the rules, of equal ones the first by step number; `null` where none exists, and
 * `undefined` where none was found within the effort.
 * Method: dynamic programming over sets of done steps and standings, bounded by a first good order from a search of
 * limited width; where the states run out, that first order is the answer.
 */
export function bestOrder(
  book: RuleBook,
  price: Pricer,
  effort: Effort = usualEffort,
): Best | null | undefined {
  const first = firstOrder(book, price, effort)
  if (first === null || first === undefined) return first
  const bound = priceOf(price, first)
  const whole = searchLayers(book, price, { states: effort.states, width: Number.POSITIVE_INFINITY, bound })
  if (whole !== null) return { order: whole, cost: priceOf(price, whole), proved: true }
  return { order: first, cost: bound, proved: false }
}

function firstOrder(book: RuleBook, price: Pricer, effort: Effort): readonly number[] | null | undefined {
  const narrow = searchLayers(book, price, {
    states: Number.POSITIVE_INFINITY,
    width: effort.width,
    bound: Number.POSITIVE_INFINITY,
  })
  if (narrow !== null) return narrow
  const any = findOrder(book, effort.states)
  return any.order ?? (any.certain ? null : undefined)
}

interface Room extends Effort {
  readonly bound: number
}

function searchLayers(book: RuleBook, price: Pricer, room: Room): number[] | null {
  const start: State = { done: setOf([], book.words), standing: fresh, sofar: 0, ahead: 0, by: [], to: [] }
  let layer: Layer = new Map([[keyOf(start.done), new Map([[fresh, start]])]])
  const layers: Layer[] = [layer]
  let left = room.states
  for (let place = 0; place < book.size; place++) {
    layer = narrowed(expanded(book, price, layer, place, room.bound, left), price, place + 1, room.width)
    left -= [...layer.values()].reduce((sum, states) => sum + states.size, 0)
    if (layer.size === 0 || left < 0) return null
    layers.push(layer)
  }
  for (const one of layers.slice(0, -1).reverse()) settle(one, price, layers.indexOf(one))
  return walk(start, price)
}

/** The states one step further; stops early where there are more than `most`. */
function expanded(
  book: RuleBook,
  price: Pricer,
  layer: Layer,
  place: number,
  bound: number,
  most: number,
): Layer {
  const next: Layer = new Map()
  const reached = new Map<number | string, Map<number, State> | 'hopeless'>()
  let states = 0
  for (const standings of layer.values()) {
    const { done } = [...standings.values()][0]!
    for (const step of nextSteps(book, done)) {
      const set = withStep(done, step)
      const key = keyOf(set)
      const known =
        reached.get(key) ?? (orderOfTheRest(book, set) === null ? 'hopeless' : new Map<number, State>())
      reached.set(key, known)
      if (known === 'hopeless') continue
      const before = known.size
      for (const state of standings.values()) reach(known, state, set, step, price, place, bound)
      if (known.size > 0) next.set(key, known)
      states += known.size - before
      if (states > most) return next
    }
  }
  return next
}

function reach(
  known: Map<number, State>,
  state: State,
  done: StepSet,
  step: number,
  price: Pricer,
  place: number,
  bound: number,
): void {
  const taken = price.take(state.standing, step, place)
  const sofar = state.sofar + taken.cost
  let to = known.get(taken.standing)
  if (!to) {
    if (sofar + price.least(done, taken.standing, place + 1) > bound) return
    to = { done, standing: taken.standing, sofar, ahead: Number.POSITIVE_INFINITY, by: [], to: [] }
    known.set(taken.standing, to)
  }
  to.sofar = Math.min(to.sofar, sofar)
  state.by.push(step)
  state.to.push(to)
}

/** The `width` states that promise most; all where there are no more. */
function narrowed(layer: Layer, price: Pricer, place: number, width: number): Layer {
  if (width === Number.POSITIVE_INFINITY) return layer
  const all = [...layer].flatMap(([key, states]) => [...states.values()].map((state) => ({ key, state })))
  if (all.length <= width) return layer
  const ranked = all.map((one) => ({
    ...one,
    promise: one.state.sofar + price.least(one.state.done, one.state.standing, place),
  }))
  const kept: Layer = new Map()
  for (const { key, state } of ranked.sort((a, b) => a.promise - b.promise).slice(0, width)) {
    const states = kept.get(key) ?? new Map<number, State>()
    kept.set(key, states.set(state.standing, state))
  }
  return kept
}

/** Least cost to the end of each state of a layer. Needs: the layer after it is settled; the last one costs nothing. */
function settle(layer: Layer, price: Pricer, place: number): void {
  for (const states of layer.values()) {
    for (const state of states.values()) {
      state.ahead = Number.POSITIVE_INFINITY
      for (const [k, to] of state.to.entries()) {
        const ahead = place + 1 === price.size ? 0 : to.ahead
        state.ahead = Math.min(state.ahead, price.take(state.standing, state.by[k]!, place).cost + ahead)
      }
    }
  }
}

/** From the start, the first step that still leads to the least cost. */
function walk(start: State, price: Pricer): number[] | null {
  const order: number[] = []
  let state = start
  for (let place = 0; place < price.size; place++) {
    const good = state.by
      .map((step, k) => ({ step, to: state.to[k]! }))
      .filter(({ step, to }) => {
        const ahead = place + 1 === price.size ? 0 : to.ahead
        return price.take(state.standing, step, place).cost + ahead === state.ahead
      })
      .sort((a, b) => a.step - b.step)[0]
    if (!good || state.ahead === Number.POSITIVE_INFINITY) return null
    order.push(good.step)
    state = good.to
  }
  return order
}
