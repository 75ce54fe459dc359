/** Who follows whom on machines and people in a finished schedule, as links that keep it so. */
import type { Instant } from '../../base/clock.ts'
import { demandsOf } from './network.ts'
import type { Link, Problem, Schedule } from './problem.ts'

/** A stretch for which a resource is taken; `owner` tells the stretches of one taking apart from all others. */
export interface Stretch {
  readonly resource: number
  readonly amount: number
  readonly open: Instant
  readonly close: Instant
  readonly owner: string
  /** Task whose start begins it and task whose finish ends it. */
  readonly first: number
  readonly last: number
  /** Whether it is the first, and the last, stretch of its owner. */
  readonly begins: boolean
  readonly ends: boolean
}

/** Everything that a schedule takes, by resource, in order of opening (then task). */
export function stretchesOf(problem: Problem, schedule: Schedule): Stretch[][] {
  const byResource: Stretch[][] = problem.resources.map(() => [])
  const add = (stretch: Stretch) => {
    if (stretch.amount > 0 && stretch.close > stretch.open) byResource[stretch.resource]!.push(stretch)
  }
  for (const [task, placement] of schedule.placements.entries()) {
    const ends = { first: task, last: task }
    const { start: open, finish: close, pieces } = placement
    for (const { resource, span, working } of demandsOf(problem.tasks[task]!.modes[placement.mode]!)) {
      add({ resource, amount: span, open, close, owner: `span ${task}`, ...ends, begins: true, ends: true })
      for (const [k, piece] of pieces.entries()) {
        const which = { owner: `work ${task}`, begins: k === 0, ends: k === pieces.length - 1 }
        add({ resource, amount: working - span, ...piece, ...ends, ...which })
      }
    }
  }
  for (const [k, { resource, amount, from, to }] of problem.holds.entries()) {
    const [open, close] = [schedule.placements[from]!.start, schedule.placements[to]!.finish]
    add({
      resource,
      amount,
      open,
      close,
      owner: `hold ${k}`,
      first: from,
      last: to,
      begins: true,
      ends: true,
    })
  }
  for (const stretches of byResource)
    stretches.sort((a, b) => a.open - b.open || a.first - b.first || a.close - b.close)
  return byResource
}

/** Links that keep the schedule's own order, and tasks that must stay where they are because others work in their pauses. */
export interface ResourceOrder {
  readonly links: readonly Link[]
  readonly pinned: ReadonlySet<number>
}

interface Given {
  readonly stretch: Stretch
  left: number
}

/** Whom a taker is served from first: its own earlier piece, then whoever is done for good, the latest first. */
function byPreference(taker: Stretch) {
  const standing = ({ stretch }: Given) => (stretch.owner === taker.owner ? 0 : stretch.ends ? 1 : 2)
  return (a: Given, b: Given) =>
    standing(a) - standing(b) || b.stretch.close - a.stretch.close || a.stretch.last - b.stretch.last
}

/** Hands the units of one resource from stretch to stretch; gives who handed to whom. */
function handOver(stretches: readonly Stretch[], capacity: number): [Stretch, Stretch][] {
  let fresh = capacity
  let pool: Given[] = []
  const passed: [Stretch, Stretch][] = []
  for (const taker of stretches) {
    let missing = taker.amount
    const givers = pool
      .filter(({ stretch, left }) => left > 0 && stretch.close <= taker.open)
      .sort(byPreference(taker))
    const own = givers.filter(({ stretch }) => stretch.owner === taker.owner)
    const others = givers.filter(({ stretch }) => stretch.owner !== taker.owner)
    const serve = (giver: Given) => {
      const units = Math.min(missing, giver.left)
      if (units > 0) passed.push([giver.stretch, taker])
      giver.left -= units
      missing -= units
    }
    for (const giver of own) serve(giver)
    const free = Math.min(missing, fresh)
    fresh -= free
    missing -= free
    for (const giver of others) serve(giver)
    pool = pool.filter(({ left }) => left > 0)
    pool.push({ stretch: taker, left: taker.amount })
  }
  return passed
}

/**
 * The order in which a schedule's tasks use each resource, as finish-start links.
 * Method: units of a resource pass from task to task; whoever receives waits for the giver. A unit lent out during a
 * pause and taken back cannot be said as a link: both tasks are pinned instead.
 * Gives: any times that keep the problem's links, these links and the pinned starts overfill nothing.
 * Cost: O(stretches x capacity) per resource.
 */
export function resourceOrder(problem: Problem, schedule: Schedule): ResourceOrder {
  const links = new Map<string, Link>()
  const pinned = new Set<number>()
  for (const [k, stretches] of stretchesOf(problem, schedule).entries()) {
    for (const [giver, taker] of handOver(stretches, problem.resources[k]!.capacity)) {
      if (giver.owner === taker.owner || giver.last === taker.first) continue
      if (giver.ends && taker.begins) {
        const link: Link = { from: giver.last, to: taker.first, type: 'FS', lag: 0, longest: null }
        links.set(`${link.from} ${link.to}`, link)
      } else pinned.add(giver.last).add(taker.first)
    }
  }
  return { links: [...links.values()], pinned }
}
