/**
 * Proofs of the scheduler against others: HiGHS on small random problems by a time-indexed model of our own wording,
 * published optima, and every lesson of the proof search against schedules that keep all rules.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import loader, { type Highs } from 'highs'
import { describe, expect, it } from 'vitest'
import { seededRandom } from '../../src/base/random.ts'
import { type Lesson, scheduleProblem } from '../../src/planning/schedule/index.ts'
import type { Link, Mode, Problem, Schedule } from '../../src/planning/schedule/problem.ts'
import { whyBroken } from '../unit/planning/schedule/brute-check.ts'
import * as instances from '../unit/planning/schedule/instances.ts'

interface Instances {
  readonly readInstance: (text: string) => Problem
  readonly readBest: (text: string) => { name: string; best: number; bound: number; path: number }[]
}
// A script of the workshop, not of the program: it has no types.
const reader: string = '../../.dev/read-instance.mjs'
const { readInstance, readBest } = (await import(reader)) as Instances
// The package types its other module form, in which the loader is one level deeper.
const highs = await (loader as unknown as () => Promise<Highs>)()

/** A small problem from a seed: links with lags of every type, releases, two resources; `modes` and stock if wished. */
function smallProblem(seed: number, modes: number): Problem {
  const { next } = seededRandom(seed)
  const whole = (least: number, most: number) => least + Math.floor(next() * (most - least + 1))
  const size = whole(4, 6)
  const capacities = [whole(2, 4), whole(2, 5)]
  const modeOf = () => {
    const needs = capacities.flatMap((most, resource) => {
      const amount = whole(0, most)
      return amount > 0 ? [instances.take(resource, amount)] : []
    })
    const stock = whole(0, 4)
    if (modes > 1 && stock > 0) needs.push({ resource: 2, amount: stock, during: 'ever' })
    return instances.mode(whole(1, 5), { needs })
  }
  const tasks = Array.from({ length: size }, (_, k) =>
    instances.task(`t${k}`, Array.from({ length: modes }, modeOf), {
      release: whole(0, 3) === 0 ? whole(0, 6) : 0,
    }),
  )
  const links: Link[] = []
  for (let to = 1; to < size; to++) {
    if (whole(0, 3) === 0) continue
    const type = modes > 1 ? 'FS' : (['FS', 'FS', 'SS', 'FF'] as const)[whole(0, 3)]!
    links.push(instances.link(whole(0, to - 1), to, { type, lag: whole(-1, 2) }))
  }
  const resources = [...capacities, 2 * size].map((capacity, k) => ({ id: `r${k}`, capacity }))
  return instances.problem(tasks, { links, resources })
}

/** The units in which a task of so many is worked when started at `start`; `null` where it cannot start there. */
function workedUnits({ calendars }: Problem, mode: Mode, start: number, end: number): number[] | null {
  const open = (t: number) => {
    if (mode.calendar === null) return true
    const { spans } = calendars[mode.calendar]!
    return spans.some((from, k) => k % 2 === 0 && from <= t && t < spans[k + 1]!)
  }
  const units: number[] = []
  for (let t = start; units.length < mode.duration; t++) {
    if (t >= end || (!open(t) && (t === start || !mode.pausable))) return null
    if (open(t)) units.push(t)
  }
  return units
}

/** The earliest finish by HiGHS: one yes-or-no number for each task, mode and start. */
function byHighs(small: Problem, latest = 0): number | null {
  const { tasks, links, resources } = small
  const all = tasks.flatMap(({ modes, release }) => [release, ...modes.map(({ duration }) => duration)])
  const end = latest || all.reduce((sum, each) => sum + each, 0) + 2 * links.length
  const choices = tasks.flatMap((task, k) =>
    task.modes.flatMap((mode, m) =>
      Array.from({ length: end - mode.duration - task.release + 1 }, (_, at) => at + task.release).flatMap(
        (start) => {
          const units = workedUnits(small, mode, start, end)
          if (units === null) return []
          const finish = units.at(-1)! + 1
          return [
            {
              name: `x_${k}_${m}_${start}`,
              task: k,
              start,
              finish,
              units: new Set(units),
              needs: mode.needs,
            },
          ]
        },
      ),
    ),
  )
  const sum = (terms: readonly (readonly [number, string])[]) =>
    terms.map(([factor, name]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`).join(' ')
  const event = (k: number, which: 'start' | 'finish', sign: number) =>
    choices.filter(({ task }) => task === k).map((one) => [sign * one[which], one.name] as const)
  const rows: string[] = []
  for (let k = 0; k < tasks.length; k++) {
    rows.push(`${sum(choices.filter(({ task }) => task === k).map(({ name }) => [1, name]))} = 1`)
    rows.push(`${sum([[1, 'last'], ...event(k, 'finish', -1)])} >= 0`)
  }
  for (const { from, to, type, lag } of links) {
    const first = event(from, type[0] === 'F' ? 'finish' : 'start', -1)
    rows.push(`${sum([...event(to, type[1] === 'F' ? 'finish' : 'start', 1), ...first])} >= ${lag}`)
  }
  for (const [r, { capacity }] of resources.entries()) {
    const amount = (one: (typeof choices)[number], ever: boolean) =>
      one.needs.reduce(
        (total, need) => total + (need.resource === r && (need.during === 'ever') === ever ? need.amount : 0),
        0,
      )
    const used = choices.filter((one) => amount(one, true) > 0)
    if (used.length > 0) rows.push(`${sum(used.map((one) => [amount(one, true), one.name]))} <= ${capacity}`)
    for (let t = 0; t < end; t++) {
      const at = (one: (typeof choices)[number]) =>
        one.needs.reduce((total, { resource, amount: taken, during }) => {
          const there =
            during === 'span' ? one.start <= t && t < one.finish : during === 'work' && one.units.has(t)
          return total + (resource === r && there ? taken : 0)
        }, 0)
      const busy = choices.filter((one) => at(one) > 0)
      if (busy.length > 0) rows.push(`${sum(busy.map((one) => [at(one), one.name]))} <= ${capacity}`)
    }
  }
  const names = choices.map(({ name }) => name).join('\n ')
  const solved = highs.solve(
    `Minimize\n obj: last\nSubject To\n${rows.map((row, k) => ` c${k}: ${row}`).join('\n')}\nBinary\n ${names}\nEnd`,
  )
  return solved.Status === 'Optimal' ? Math.round(solved.ObjectiveValue) : null
}

/** The same with hours: two calendars, work that pauses or may not, people at work and machines held. */
function hoursProblem(seed: number): Problem {
  const { next } = seededRandom(seed)
  const whole = (least: number, most: number) => least + Math.floor(next() * (most - least + 1))
  const hours = (id: string) => {
    const spans: [number, number][] = []
    for (let at = whole(0, 3); at < 60; at += whole(2, 4)) {
      const open = at
      at += whole(3, 6)
      spans.push([open, at])
    }
    return instances.calendar(id, ...spans)
  }
  const size = whole(4, 6)
  const capacities = [1, whole(1, 2)]
  const mode = () => {
    const needs = capacities.flatMap((most, resource) =>
      whole(0, 2) > 0 ? [instances.take(resource, whole(1, most), resource === 0 ? 'work' : 'span')] : [],
    )
    const pausable = whole(0, 1) === 0
    return instances.mode(whole(1, pausable ? 7 : 3), {
      needs,
      pausable,
      calendar: whole(0, 3) === 0 ? null : whole(0, 1),
    })
  }
  const tasks = Array.from({ length: size }, (_, k) =>
    instances.task(`t${k}`, mode(), { release: whole(0, 4) }),
  )
  const links: Link[] = []
  for (let to = 1; to < size; to++)
    if (whole(0, 2) > 0) links.push(instances.link(whole(0, to - 1), to, { lag: whole(0, 2) }))
  return instances.problem(tasks, {
    horizon: 60,
    links,
    calendars: [hours('a'), hours('b')],
    resources: capacities.map((capacity, k) => ({ id: `r${k}`, capacity })),
  })
}

const seeds = (count: number, from: number) => Array.from({ length: count }, (_, k) => from + k)

describe('HiGHS, by an independent model, agrees', () => {
  it('on the proved finish of 120 random problems with lags, releases and capacities', {
    timeout: 120_000,
  }, () => {
    for (const seed of seeds(120, 1)) {
      const small = smallProblem(seed, 1)
      const outcome = scheduleProblem(small, { effort: 20, nodes: 10_000, seed: 1 })
      if (outcome.kind !== 'found') throw new Error(`${seed}: ${outcome.kind}`)
      expect(whyBroken(small, outcome.schedule)).toBeNull()
      expect({ seed, finish: outcome.schedule.finish, proved: outcome.proved }).toEqual({
        seed,
        finish: byHighs(small),
        proved: true,
      })
    }
  })

  it('on the proved finish of 60 random problems with hours, pauses, people at work and machines held, one or two ways a task', {
    timeout: 120_000,
  }, () => {
    for (const seed of seeds(60, 5000)) {
      const small = hoursProblem(seed)
      const outcome = scheduleProblem(small, { effort: 20, seed: 1 })
      if (outcome.kind !== 'found') throw new Error(`${seed}: ${outcome.kind}`)
      expect(whyBroken(small, outcome.schedule)).toBeNull()
      expect({ seed, finish: outcome.schedule.finish, proved: outcome.proved }).toEqual({
        seed,
        finish: byHighs(small, small.horizon),
        proved: true,
      })
    }
  })

  it('on the finish of 30 random problems with three modes per task and a stock, or that there is no schedule', {
    timeout: 120_000,
  }, () => {
    let without = 0
    for (const seed of seeds(30, 1000)) {
      const small = smallProblem(seed, 3)
      const outcome = scheduleProblem(small, { effort: 4000, seed: 1 })
      const best = byHighs(small)
      if (outcome.kind !== 'found') without++
      else expect(whyBroken(small, outcome.schedule)).toBeNull()
      expect([seed, outcome.kind === 'found' ? outcome.schedule.finish : null]).toEqual([seed, best])
      if (outcome.kind === 'found') expect(outcome.bound).toBeLessThanOrEqual(best!)
    }
    expect(without).toBeLessThan(10)
  })
})

/** Whether one statement at least of a lesson holds in a schedule. */
function holds(lesson: readonly Lesson[], { placements, finish }: Schedule): boolean {
  return lesson.some(({ task, at, before }) => {
    const value = task < placements.length ? placements[task]!.start : finish
    return before ? value < at : value >= at
  })
}

function found(problem: Problem, options: Parameters<typeof scheduleProblem>[1]) {
  const outcome = scheduleProblem(problem, options)
  if (outcome.kind !== 'found') throw new Error(outcome.kind)
  return outcome
}

/** Lessons learned from a poor first schedule, and good schedules no longer than it that must keep them all. */
function lessonsAndSchedules(problem: Problem, nodes: number) {
  const lessons: (readonly Lesson[])[] = []
  const first = found(problem, { effort: 1, seed: 1 }).schedule.finish
  const proof = found(problem, { effort: 1, nodes, seed: 1, learned: (lesson) => lessons.push(lesson) })
  const others = seeds(8, 2).map((seed) => found(problem, { effort: 40 * seed, seed }).schedule)
  const schedules = [proof.schedule, ...others].filter(({ finish }) => finish <= first)
  for (const schedule of schedules) expect(whyBroken(problem, schedule)).toBeNull()
  return { lessons, schedules, proof }
}

describe('published optima are proved, and no lesson contradicts a schedule that keeps all rules', () => {
  it.each([
    ['Patterson 8', instances.patterson8, 11],
    ['Patterson 1', instances.patterson1, 19],
    ['Patterson 12', instances.patterson12, 13],
    ['seven tasks on one resource of 13, Beldiceanu and Contejean', instances.chip, 22],
    ['j301_1, Kolisch and Sprecher 1997', instances.j301_1, 43],
    ['6 x 6 job shop, Fisher and Thompson 1963', instances.sixShop, 55],
    ['house with 1 worker, re-solved', instances.houseWithCrew(1), 145],
  ])('%s', (_, instance, optimum) => {
    const { lessons, schedules, proof } = lessonsAndSchedules(instance, 20_000)
    expect([proof.schedule.finish, proof.bound, proof.proved]).toEqual([optimum, optimum, true])
    for (const lesson of lessons) for (const schedule of schedules) expect(holds(lesson, schedule)).toBe(true)
  })

  it('and lessons are learned at all, of which a schedule too short to exist breaks some', () => {
    const { lessons, schedules } = lessonsAndSchedules(instances.sixShop, 20_000)
    expect(lessons.length).toBeGreaterThan(20)
    expect(schedules.length).toBeGreaterThan(3)
    const squeezed = { ...schedules[0]!, finish: 54 }
    expect(lessons.every((lesson) => holds(lesson, squeezed))).toBe(false)
  })
})

const folder = process.env.FETTLE_INSTANCES ?? ''
const sets = existsSync(folder)
  ? readdirSync(folder).filter((set) => existsSync(join(folder, set, 'best.csv')))
  : []

/** Every so many instances of a set. */
function sampleOf(set: string, every: number) {
  const ending = set.endsWith('mm') ? 'mm' : 'sm'
  return readBest(readFileSync(join(folder, set, 'best.csv'), 'utf8'))
    .filter((_, k) => k % every === 0)
    .map((row) => ({
      ...row,
      problem: readInstance(readFileSync(join(folder, set, `${row.name}.${ending}`), 'utf8')),
    }))
}

// The public instances are no part of the project; FETTLE_INSTANCES names their folder where they are at hand.
describe.skipIf(sets.length === 0)(
  'public instances (skipped where FETTLE_INSTANCES names no folder)',
  () => {
    it.each(sets)(
      '%s: every schedule keeps all rules, no finish beats a known bound, no bound a known best',
      (set) => {
        for (const { name, problem, best, bound } of sampleOf(set, 1)) {
          const outcome = found(problem, { effort: 100, nodes: 100, seed: 1 })
          expect([name, whyBroken(problem, outcome.schedule)]).toEqual([name, null])
          expect([name, outcome.schedule.finish >= bound, outcome.bound <= best]).toEqual([name, true, true])
        }
      },
    )

    it.each(sets.filter((set) => !set.endsWith('mm')))('%s: no lesson contradicts a good schedule', (set) => {
      let learned = 0
      for (const { name, problem } of sampleOf(set, 6)) {
        const { lessons, schedules } = lessonsAndSchedules(problem, 1500)
        learned += lessons.length
        const broken = lessons.filter((lesson) => schedules.some((schedule) => !holds(lesson, schedule)))
        expect([name, broken]).toEqual([name, []])
      }
      expect(learned).toBeGreaterThan(1000)
    })
  },
)
