import { fresh, type Left, type Pricer, priceOf } from './bench-cost.ts'
import { findOrder, orderOfTheRest, staysOpen } from './find-order.ts'
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

/** Steps up to which as many states are kept as usual, and how many that is at least. */
const usualSteps = 60
const leastWidth = 8

/**
 * The effort taken for so many steps where nothing else is said. Work grows with the width times the square of the
 * steps, so the width falls by that square beyond 60 steps.
 */
export function usualEffort(steps: number): Effort {
  const share = Math.min(1, (usualSteps / steps) ** 2)
  return { states: 40_000, width: Math.max(leastWidth, Math.floor(60 * share)) }
}

interface State {
  readonly done: StepSet
  readonly standing: number
  /** No less than this is still to come. */
  readonly least: number
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
  effort: Effort = usualEffort(book.size),
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
  const done = setOf([], book.words)
  if (orderOfTheRest(book, done) === null) return null
  const start: State = { done, standing: fresh, least: 0, sofar: 0, ahead: 0, by: [], to: [] }
  let layer: Layer = new Map([[keyOf(start.done), new Map([[fresh, start]])]])
  const layers: Layer[] = [layer]
  let left = room.states
  for (let place = 0; place < book.size; place++) {
    const before = layer
    layer = narrowed(expanded({ book, price, place, bound: room.bound, most: left }, before), room.width)
    left -= statesOf(layer)
    if (layer.size === 0 || left < 0) return null
    // Of the last layer all are an end.
    if (place + 1 < book.size) forgetLost(before, layer)
    layers.push(layer)
  }
  for (let place = book.size - 1; place >= 0; place--) settle(layers[place]!, price, place)
  return walk(start, price)
}

function statesOf(layer: Layer): number {
  let count = 0
  for (const states of layer.values()) count += states.size
  return count
}

/** One step of the search: the `place`th of an order, from 0. */
interface Stride {
  readonly book: RuleBook
  readonly price: Pricer
  readonly place: number
  readonly bound: number
  /** The layer is given up where it has more states than this. */
  readonly most: number
}

/** Where taking a step leads to, from every standing; `null`: no order goes on from there. */
interface Reached {
  readonly done: StepSet
  readonly states: Map<number, State>
}

/** The states one step further; stops early where there are more than `most`. */
function expanded(stride: Stride, layer: Layer): Layer {
  const { book, price, most } = stride
  const next: Layer = new Map()
  const reached = new Map<number | string, Reached | null>()
  let states = 0
  for (const standings of layer.values()) {
    const { done } = [...standings.values()][0]!
    const left = price.left(done)
    const set = done.slice()
    for (const step of nextSteps(book, done)) {
      set[step >>> 5]! ^= 1 << (step & 31)
      const key = keyOf(set)
      set[step >>> 5]! ^= 1 << (step & 31)
      let known = reached.get(key)
      if (known === undefined) {
        known = staysOpen(book, done, step) ? { done: withStep(done, step), states: new Map() } : null
        reached.set(key, known)
      }
      if (known === null) continue
      const before = known.states.size
      for (const state of standings.values()) reach(stride, state, step, left, known)
      if (known.states.size > 0) next.set(key, known.states)
      states += known.states.size - before
      if (states > most) return next
    }
  }
  return next
}

function reach(stride: Stride, state: State, step: number, left: Left, known: Reached): void {
  const { price, place, bound } = stride
  const taken = price.take(state.standing, step, place)
  const sofar = state.sofar + taken.cost
  let to = known.states.get(taken.standing)
  if (!to) {
    const least = price.least(left, step, taken.standing, place + 1)
    if (sofar + least > bound) return
    const { done } = known
    to = { done, standing: taken.standing, least, sofar, ahead: Number.POSITIVE_INFINITY, by: [], to: [] }
    known.states.set(taken.standing, to)
  }
  to.sofar = Math.min(to.sofar, sofar)
  state.by.push(step)
  state.to.push(to)
}

/** The `width` states that promise most; all where there are no more. */
function narrowed(layer: Layer, width: number): Layer {
  if (width === Number.POSITIVE_INFINITY) return layer
  const all = [...layer].flatMap(([key, states]) => [...states.values()].map((state) => ({ key, state })))
  if (all.length <= width) return layer
  const promise = ({ state }: { state: State }) => state.sofar + state.least
  const kept: Layer = new Map()
  for (const { key, state } of all.sort((a, b) => promise(a) - promise(b)).slice(0, width)) {
    const states = kept.get(key) ?? new Map<number, State>()
    kept.set(key, states.set(state.standing, state))
  }
  return kept
}

/** Takes the ways to states that were not kept out of a layer, so that they hold no memory. */
function forgetLost(layer: Layer, next: Layer): void {
  const kept = new Set([...next.values()].flatMap((states) => [...states.values()]))
  for (const states of layer.values()) {
    for (const state of states.values()) {
      const [by, to] = [state.by.splice(0), state.to.splice(0)]
      for (const [k, other] of to.entries()) {
        if (!kept.has(other)) continue
        state.by.push(by[k]!)
        state.to.push(other)
      }
    }
  }
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
