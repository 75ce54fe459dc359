/** Everything uncertain in a plan, drawn so many times: times, leads, transits, failing tests, bad pieces. */
import { type Random, seededRandom } from '../../base/random.ts'
import type { ThreePoint } from '../../base/three-point.ts'
import type { Cart } from '../../model/purchase.ts'
import type { SpreadKind } from '../../model/risk.ts'
import type { PlanTask } from '../../model/tasks.ts'
import { type BadPieces, drawBadPieces } from './bad-pieces.ts'
import { drawBetaPert, drawFailures, type Estimate } from './beta-pert.ts'
import type { DrawSource } from './draw-source.ts'
import { stepOf } from './step-of.ts'

/** What is drawn of one uncertain thing, one value per sample. */
export interface Input {
  readonly kind: SpreadKind
  /** Task, cart or part by name. */
  readonly of: string
  readonly values: Float64Array
}

/** Minutes of one task in each sample. */
export interface DrawnMinutes {
  readonly total: Int32Array
  /** Of one go, where the task is gone through more than once, so that it may rest between goes; else 0. */
  readonly oneGo: Int32Array
}

/** Days of one delivery in each sample. */
export interface DrawnDays {
  readonly lead: Int32Array
  readonly transit: Int32Array
  readonly out: Int32Array
}

/** All draws of a plan. Tasks that are not named keep the plan's own time in every sample. */
export interface Draws {
  readonly samples: number
  readonly inputs: readonly Input[]
  /** Whole minutes by task number. */
  readonly minutes: ReadonlyMap<number, DrawnMinutes>
  /** Deliveries by task number. */
  readonly days: ReadonlyMap<number, DrawnDays>
}

/** A test that failed so often is taken to pass. Source: common practice, no source. */
const mostFailures = 20

/** Spreads the letters of a name over 32 bits. Source: FNV-1a, from memory. */
function hashed(name: string, seed: number): number {
  let hash = 0x811c9dc5 ^ seed
  for (let at = 0; at < name.length; at++) hash = Math.imul(hash ^ name.charCodeAt(at), 0x01000193)
  return hash >>> 0
}

/** A source of chance for one thing by name, so that what else is in the project changes none of its draws. */
export function chanceOf(name: string, seed: number): Random {
  return seededRandom(hashed(name, seed))
}

/** The three values as plain numbers. */
export function estimateOf({ low, likely, high }: ThreePoint): Estimate {
  return { low: low.valueOf(), likely: likely.valueOf(), high: high.valueOf() }
}

interface Drawing {
  readonly source: DrawSource
  readonly samples: number
  readonly seed: number
  readonly inputs: Input[]
  readonly minutes: Map<number, DrawnMinutes>
  readonly days: Map<number, DrawnDays>
}

/**
 * All draws of a plan. Times are drawn whole, task by task, and rounded up to a minute; lead and transit each rounded up
 * to whole days in every sample; a cart waits for the longest lead of its lines. A test that fails takes its rework and
 * itself again, until it passes; work that may not pause may rest between two goes all the same. Bad pieces: see `drawBadPieces`.
 * Gives: the same for the same seed; more samples begin with those of fewer.
 */
export function drawAll(source: DrawSource, samples: number, seed: number): Draws {
  const drawing: Drawing = { source, samples, seed, inputs: [], minutes: new Map(), days: new Map() }
  const bad = drawBadPieces(source, samples, (name) => chanceOf(name, seed))
  for (const { part, values } of bad.parts) drawing.inputs.push({ kind: 'bad pieces', of: part, values })
  const carts = new Map(source.purchase.carts.map((cart) => [cart.id, cart]))
  for (const [at, task] of source.network.tasks.entries()) {
    if (task.delivery) drawDelivery(drawing, at, carts.get(task.delivery.cart)!, bad)
    else if (task.time) drawTime(drawing, at, task, bad)
  }
  const { inputs, minutes, days } = drawing
  return { samples, inputs, minutes, days }
}

function drawTime(drawing: Drawing, at: number, task: PlanTask, bad: BadPieces): void {
  const estimate = estimateOf(task.time!)
  const spreads = estimate.low < estimate.high
  const step = task.kind === 'test' ? stepOf(drawing.source.project, task) : null
  const chance = step?.fails?.valueOf() ?? 0
  const more = bad.more.get(at)
  if (!spreads && chance === 0 && !more) return
  const random = chanceOf(task.id, drawing.seed)
  const again = chanceOf(`${task.id} / again`, drawing.seed)
  const rework = step?.rework ? estimateOf(step.rework) : null
  const once = new Float64Array(drawing.samples)
  const failures = new Float64Array(drawing.samples)
  const total = new Int32Array(drawing.samples)
  const oneGo = new Int32Array(drawing.samples)
  for (let k = 0; k < drawing.samples; k++) {
    once[k] = drawBetaPert(estimate, random)
    failures[k] = chance > 0 ? drawFailures(chance, mostFailures, again) : 0
    let seconds = once[k]! * (1 + (more?.[k] ?? 0))
    for (let time = 0; time < failures[k]!; time++)
      seconds += (rework ? drawBetaPert(rework, again) : 0) + drawBetaPert(estimate, again)
    total[k] = wholeMinutes(seconds)
    oneGo[k] = seconds > once[k]! ? wholeMinutes(once[k]!) : 0
  }
  drawing.minutes.set(at, { total, oneGo })
  if (spreads) drawing.inputs.push({ kind: 'time', of: task.id, values: once })
  if (chance > 0) drawing.inputs.push({ kind: 'fails', of: task.id, values: failures })
}

/** Rounded up; what was counted out in whole seconds must not take a minute more for the last digit. */
function wholeMinutes(seconds: number): number {
  return Math.ceil(seconds / 60 - 1e-9)
}

/** The sum of the days of `count` ways one after the other, each the longest of its estimates and rounded up. */
function drawDays(estimates: readonly Estimate[], count: number, random: Random): number {
  let days = 0
  for (let time = 0; time < count; time++)
    days += estimates.reduce((most, one) => Math.max(most, Math.ceil(drawBetaPert(one, random) - 1e-9)), 0)
  return days
}

function drawDelivery(drawing: Drawing, at: number, cart: Cart, bad: BadPieces): void {
  const { samples, seed } = drawing
  const leads = cart.leads.map(estimateOf)
  const transit = [estimateOf(cart.transit)]
  const fixed = [...leads, ...transit].every(({ low, high }) => low === high)
  const more = bad.more.get(at)
  if (fixed && !more) return
  const drawn = (name: string, estimates: readonly Estimate[]): Int32Array => {
    const random = chanceOf(`${cart.id} / ${name}`, seed)
    return Int32Array.from({ length: samples }, (_, k) => drawDays(estimates, 1 + (more?.[k] ?? 0), random))
  }
  const days = {
    lead: drawn('lead', leads),
    transit: drawn('transit', transit),
    out: cart.outside ? drawn('out', transit) : new Int32Array(samples),
  }
  drawing.days.set(at, days)
  if (leads.some(({ low, high }) => low < high))
    drawing.inputs.push({ kind: 'lead', of: cart.id, values: Float64Array.from(days.lead) })
  if (transit.some(({ low, high }) => low < high))
    drawing.inputs.push({
      kind: 'transit',
      of: cart.id,
      values: Float64Array.from(days.transit, (one, k) => one + days.out[k]!),
    })
}
