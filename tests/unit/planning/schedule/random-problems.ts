/** Small random problems that use every feature: calendars, pauses, timetables, modes, all links, longest waits, holds. */
import fc from 'fast-check'
import type { Calendar, Hold, Link, Mode, Problem, Task } from '../../../../src/planning/schedule/problem.ts'

const horizon = 3000

/** Sorted, disjoint, non-touching spans from gaps and lengths. */
export const calendars: fc.Arbitrary<Calendar> = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 25 }), fc.integer({ min: 1, max: 30 })), {
    minLength: 3,
    maxLength: 6,
  })
  .map((steps) => {
    const spans: number[] = []
    let at = -10
    while (at < horizon) {
      for (const [gap, length] of steps) {
        spans.push(at + gap, at + gap + length)
        at += gap + length
      }
    }
    return { id: 'hours', spans: Int32Array.from(spans) }
  })

const timetable = fc.integer({ min: 5, max: 40 }).map((step) => {
  const leaveBefore = Int32Array.from({ length: Math.floor(horizon / step) }, (_, k) => (k + 1) * step)
  return { leaveBefore, arrives: leaveBefore.map((at) => at + 2 * step - 3) }
})

/** A mode on one of `hours` calendars, needing some of `resources`. */
export const modes = (hours: number, resources: number): fc.Arbitrary<Mode> =>
  fc.record({
    duration: fc.integer({ min: 0, max: 30 }),
    calendar: fc.option(fc.integer({ min: 0, max: hours - 1 }), { freq: 3 }),
    pausable: fc.boolean(),
    least: fc.integer({ min: 0, max: 12 }),
    needs: fc.uniqueArray(
      fc.record({
        resource: fc.integer({ min: 0, max: resources - 1 }),
        amount: fc.integer({ min: 1, max: 2 }),
        during: fc.constantFrom('span' as const, 'work' as const),
      }),
      { maxLength: 2, selector: (need) => need.resource },
    ),
    timetable: fc.oneof({ weight: 12, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: timetable }),
  })

const waits = (size: number): fc.Arbitrary<Link> =>
  fc
    .record({
      ends: fc.tuple(fc.nat(size - 1), fc.nat(size - 1)),
      type: fc.constantFrom('FS' as const, 'SS' as const, 'FF' as const, 'SF' as const),
      lag: fc.oneof(
        { weight: 4, arbitrary: fc.integer({ min: -20, max: 20 }) },
        {
          weight: 1,
          arbitrary: fc.record({ days: fc.integer({ min: 0, max: 1 }), calendar: fc.constant(0) }),
        },
      ),
      longest: fc.option(fc.integer({ min: 20, max: 200 }), { freq: 4 }),
    })
    .map(({ ends: [a, b], ...rest }) => ({
      from: Math.min(a, b),
      to: a === b ? (a + 1) % size : Math.max(a, b),
      ...rest,
    }))

/** A load, run, unload in a row of three tasks, the machine (resource 2, used by nothing else) held throughout. */
function withHolds(problem: Problem, starts: readonly number[]): Problem {
  const used = starts
    .map((k) => k % (problem.tasks.length - 2))
    .filter((k, i, all) => all.findIndex((other) => Math.abs(other - k) < 3) === i)
  const holds: Hold[] = used.map((k) => ({ resource: 2, amount: 1, from: k, to: k + 2 }))
  const row = (k: number): Link[] =>
    [k, k + 1].map((from) => ({ from, to: from + 1, type: 'FS', lag: 0, longest: null }))
  return { ...problem, holds, links: [...problem.links, ...used.flatMap(row)] }
}

/** A whole random problem; two shared resources, one only ever held. */
export const problems: fc.Arbitrary<Problem> = fc.integer({ min: 3, max: 9 }).chain((size) =>
  fc
    .record({
      calendars: fc.array(calendars, { minLength: 2, maxLength: 2 }),
      tasks: fc.array(
        fc.record({
          release: fc.integer({ min: 0, max: 40 }),
          modes: fc.array(modes(2, 2), { minLength: 1, maxLength: 2 }),
        }),
        { minLength: size, maxLength: size },
      ),
      links: fc.array(waits(size), { maxLength: 2 * size }),
      holds: fc.array(fc.nat(30), { maxLength: 2 }),
    })
    .map(({ calendars: hours, tasks, links, holds }) => {
      const named: Task[] = tasks.map((task, k) => ({ ...task, id: `t${k}`, preference: k % 2 }))
      const problem: Problem = {
        start: 0,
        horizon,
        resources: [
          { id: 'person', capacity: 2 },
          { id: 'saw', capacity: 3 },
          { id: 'mill', capacity: 1 },
        ],
        calendars: hours,
        dayCalendars: [{ id: 'days', days: Int32Array.from([-3, -2, 0, 1, 2, 4, 5, 6]) }],
        tasks: named,
        links: links.filter(({ from, to }) => from < to),
        holds: [],
      }
      return withHolds(problem, holds)
    }),
)

/** Three tasks, one mode each, on a short horizon: small enough to try every combination of starts. */
export const tinyProblems: fc.Arbitrary<Problem> = problems.map((big) => ({
  ...big,
  horizon: 70,
  tasks: big.tasks.slice(0, 3).map((task) => ({
    ...task,
    release: task.release % 7,
    modes: task.modes
      .slice(0, 1)
      .map((mode) => ({ ...mode, duration: mode.duration % 9, least: mode.least % 6, timetable: null })),
  })),
  links: big.links
    .filter(({ from, to, lag }) => from < 3 && to < 3 && typeof lag === 'number')
    .map((link) => ({
      ...link,
      lag: Math.trunc(Number(link.lag) / 3),
      longest: link.longest === null ? null : Math.trunc(link.longest / 12),
    })),
  holds: big.holds.filter(({ to }) => to < 3),
}))
