/** Published instances as problems, and short ways to write problems in tests. Sources stand beside each. */
import { instantOf, weekday } from '../../../../src/base/clock.ts'
import type { Calendar, Link, Mode, Need, Problem, Task } from '../../../../src/planning/schedule/problem.ts'

export function mode(duration: number, more: Partial<Mode> = {}): Mode {
  return { duration, calendar: null, pausable: false, least: 0, needs: [], timetable: null, ...more }
}

export function task(id: string, modes: Mode | readonly Mode[], more: Partial<Task> = {}): Task {
  return { id, release: 0, modes: Array.isArray(modes) ? modes : [modes as Mode], preference: 0, ...more }
}

export function link(from: number, to: number, more: Partial<Link> = {}): Link {
  return { from, to, type: 'FS', lag: 0, longest: null, ...more }
}

export function calendar(id: string, ...spans: readonly (readonly [number, number])[]): Calendar {
  return { id, spans: Int32Array.from(spans.flat()) }
}

export function problem(tasks: readonly Task[], more: Partial<Problem> = {}): Problem {
  const none = { resources: [], calendars: [], dayCalendars: [], links: [], holds: [] }
  return { start: 0, horizon: 100_000, ...none, tasks, ...more }
}

export const take = (resource: number, amount = 1, during: Need['during'] = 'span'): Need => ({
  resource,
  amount,
  during,
})

/** Rows `job duration need1 need2 ... : successors`, jobs from 1. */
function fromTable(capacities: readonly number[], table: string): Problem {
  const rows = table
    .trim()
    .split('\n')
    .map((row) => row.split(':').map((half) => half.trim().split(/\s+/).filter(Boolean).map(Number)))
  const tasks = rows.map(([own]) => {
    const [job, duration, ...amounts] = own!
    const needs = amounts.flatMap((amount, k) => (amount > 0 ? [take(k, amount)] : []))
    return task(`${job}`, mode(duration!, { needs }))
  })
  const links = rows.flatMap(([own, next]) => next!.map((to) => link(own![0]! - 1, to - 1)))
  return problem(tasks, {
    links,
    resources: capacities.map((capacity, k) => ({ id: `R${k + 1}`, capacity })),
  })
}

/** Patterson (1984), problem 8, as kept in the public collection kobe-scheduling (P. Talbot); optimum 11. */
export const patterson8 = fromTable(
  [4],
  `
1 0 0: 2 3 8
2 3 2: 5
3 3 3: 4 6
4 1 2: 5
5 2 3: 9
6 2 4: 7
7 3 2: 9
8 3 1: 9
9 0 0:`,
)

/** Patterson (1984), problem 1, same collection; optimum 19. */
export const patterson1 = fromTable(
  [2, 1, 2],
  `
1 0 0 0 0: 2 3 4
2 6 1 0 0: 9 10
3 4 0 0 0: 5 6 7
4 3 0 0 0: 8 11
5 1 0 0 0: 10
6 6 1 0 1: 12
7 2 1 0 0: 8 11
8 1 0 0 0: 13
9 4 0 1 1: 14
10 3 0 0 1: 12
11 2 0 0 1: 12
12 3 0 1 0: 13
13 5 0 0 0: 14
14 0 0 0 0:`,
)

/** Patterson (1984), problem 12, same collection; optimum 13. */
export const patterson12 = fromTable(
  [11, 5, 8],
  `
1 0 0 0 0: 2 3 4 5 6
2 3 0 0 1: 7 8
3 1 4 1 0: 9
4 4 0 5 0: 10 11
5 1 8 1 0: 12
6 1 0 0 2: 13 14
7 2 0 0 2: 15
8 2 0 0 1: 16
9 3 4 2 0: 16
10 3 0 0 2: 17
11 1 0 0 1: 18
12 3 6 3 0: 18 19
13 2 0 1 1: 19
14 3 0 0 3: 20
15 1 3 1 2: 23
16 1 3 1 0: 21
17 2 4 2 4: 21 22
18 2 7 2 0: 22
19 1 4 0 1: 20
20 1 0 0 3: 23
21 1 4 1 2: 23
22 1 4 1 3: 23
23 0 0 0 0:`,
)

/** Kolisch and Sprecher (1997), instance j301_1 of the project scheduling library; optimum 43. */
export const j301_1 = fromTable(
  [12, 13, 4, 12],
  `
1 0 0 0 0 0: 2 3 4
2 8 4 0 0 0: 6 11 15
3 4 10 0 0 0: 7 8 13
4 6 0 0 0 3: 5 9 10
5 3 3 0 0 0: 20
6 8 0 0 0 8: 30
7 5 4 0 0 0: 27
8 9 0 1 0 0: 12 19 27
9 2 6 0 0 0: 14
10 7 0 0 0 1: 16 25
11 9 0 5 0 0: 20 26
12 2 0 7 0 0: 14
13 6 4 0 0 0: 17 18
14 3 0 8 0 0: 17
15 9 3 0 0 0: 25
16 10 0 0 0 5: 21 22
17 6 0 0 0 8: 22
18 5 0 0 0 7: 20 22
19 3 0 1 0 0: 24 29
20 7 0 10 0 0: 23 25
21 2 0 0 0 6: 28
22 7 2 0 0 0: 23
23 2 3 0 0 0: 24
24 3 0 9 0 0: 30
25 3 4 0 0 0: 30
26 7 0 0 4 0: 31
27 8 0 0 0 7: 28
28 3 0 8 0 0: 31
29 7 0 7 0 0: 32
30 2 0 7 0 0: 32
31 2 0 0 2 0: 32
32 0 0 0 0 0:`,
)

/** Beldiceanu and Contejean, "Introducing global constraints in CHIP", p. 3: seven tasks on one resource of 13; optimum 22. */
export const chip = problem(
  [16, 6, 13, 7, 5, 18, 4].map((duration, k) =>
    task(`t${k + 1}`, mode(duration, { needs: [take(0, [2, 9, 3, 7, 10, 1, 11][k]!)] })),
  ),
  { resources: [{ id: 'R', capacity: 13 }] },
)

/** A job shop from rows of machine, time pairs. */
function shop(jobs: readonly (readonly (readonly [number, number])[])[]): Problem {
  const tasks: Task[] = []
  const links: Link[] = []
  for (const [j, steps] of jobs.entries()) {
    for (const [k, [machine, minutes]] of steps.entries()) {
      if (k > 0) links.push(link(tasks.length - 1, tasks.length))
      tasks.push(task(`job ${j + 1} step ${k + 1}`, mode(minutes, { needs: [take(machine)] })))
    }
  }
  const machines = Math.max(...jobs.flat().map(([machine]) => machine)) + 1
  return problem(tasks, {
    links,
    resources: Array.from({ length: machines }, (_, k) => ({ id: `M${k}`, capacity: 1 })),
  })
}

/** Gueret, Prins and Sevaux, chapter 7: three paper jobs on three presses (0 blue, 1 green, 2 yellow); optimum 97. */
export const paperShop = shop([
  [
    [0, 45],
    [2, 10],
  ],
  [
    [1, 10],
    [0, 20],
    [2, 34],
  ],
  [
    [2, 28],
    [0, 12],
    [1, 17],
  ],
])

/** Fisher and Thompson (1963), 6 x 6 job shop; optimum 55. */
export const sixShop = shop([
  [
    [2, 1],
    [0, 3],
    [1, 6],
    [3, 7],
    [5, 3],
    [4, 6],
  ],
  [
    [1, 8],
    [2, 5],
    [4, 10],
    [5, 10],
    [0, 10],
    [3, 4],
  ],
  [
    [2, 5],
    [3, 4],
    [5, 8],
    [0, 9],
    [1, 1],
    [4, 7],
  ],
  [
    [1, 5],
    [0, 5],
    [2, 5],
    [3, 3],
    [4, 8],
    [5, 9],
  ],
  [
    [2, 9],
    [1, 3],
    [4, 5],
    [5, 4],
    [0, 3],
    [3, 1],
  ],
  [
    [1, 3],
    [3, 3],
    [5, 9],
    [0, 10],
    [4, 4],
    [2, 1],
  ],
])

/** Rows `job duration needs... : job lag, job lag`, start-to-start, jobs from 0. */
function fromLags(capacities: readonly number[], table: string): Problem {
  const rows = table
    .trim()
    .split('\n')
    .map((row) =>
      row.split(':').map((half) =>
        half
          .trim()
          .split(/[\s,]+/)
          .filter(Boolean)
          .map(Number),
      ),
    )
  const tasks = rows.map(([own]) => {
    const [job, duration, ...amounts] = own!
    return task(
      `${job}`,
      mode(duration!, { needs: amounts.flatMap((amount, k) => (amount > 0 ? [take(k, amount)] : [])) }),
    )
  })
  const links = rows.flatMap(([own, lags]) => {
    const found: Link[] = []
    for (let k = 0; k < lags!.length; k += 2)
      found.push(link(own![0]!, lags![k]!, { type: 'SS', lag: lags![k + 1]! }))
    return found
  })
  return problem(tasks, {
    links,
    resources: capacities.map((capacity, k) => ({ id: `R${k + 1}`, capacity })),
  })
}

/** Schwindt, set sm_j10, PSP1, as kept in kobe-scheduling: least and greatest time lags; optimum 26. */
export const lags1 = fromLags(
  [5, 5, 5, 5, 5],
  `
0 0 0 0 0 0 0: 4 0, 2 0, 1 0, 3 0
1 3 4 1 0 0 0: 9 9, 7 1, 8 8, 10 2
2 10 1 0 3 0 0: 8 24
3 3 4 0 2 2 3: 10 4, 7 8
4 3 0 0 0 3 0: 10 0, 9 0, 5 7
5 3 0 1 2 4 0: 6 0
6 5 2 3 4 0 0: 11 5
7 10 0 4 4 0 4: 11 10
8 2 2 0 0 4 4: 1 -22, 2 -34, 11 2
9 6 5 0 0 1 1: 11 6
10 1 0 1 0 0 0: 11 1
11 0 0 0 0 0 0:`,
)

/** Schwindt, set sm_j10, PSP2: published as having no schedule, though the lags alone would allow 24. */
export const lags2 = fromLags(
  [4, 5, 5, 5, 5],
  `
0 0 0 0 0 0 0: 3 0, 2 0, 4 0, 1 0, 5 0
1 4 3 4 5 4 0: 7 0
2 9 0 3 0 2 5: 10 6
3 10 0 3 4 1 0: 8 -3
4 1 0 5 0 0 0: 6 3
5 9 0 0 1 0 4: 8 11
6 10 4 3 4 3 4: 10 2
7 2 2 0 0 4 0: 1 -1, 10 0
8 9 0 0 0 0 5: 9 5
9 8 1 0 0 0 2: 11 8, 5 -17
10 9 3 3 0 0 0: 2 -10, 11 9
11 0 0 0 0 0 0:`,
)

/** OPL's house (published early finish 90), each task taking one worker of `workers`; 90 with 3, 95 with 2, 145 with 1 (re-solved). */
export function houseWithCrew(workers: number): Problem {
  const rows: [string, number, string[]][] = [
    ['masonry', 35, []],
    ['carpentry', 15, ['masonry']],
    ['plumbing', 40, ['masonry']],
    ['ceiling', 15, ['masonry']],
    ['roofing', 5, ['carpentry']],
    ['painting', 10, ['ceiling']],
    ['windows', 5, ['roofing']],
    ['facade', 10, ['roofing', 'plumbing']],
    ['garden', 5, ['roofing', 'plumbing']],
    ['moving', 5, ['windows', 'facade', 'garden', 'painting']],
  ]
  return fromRows(rows, { resources: [{ id: 'worker', capacity: workers }] }, (days) =>
    mode(days, { needs: [take(0, 1, 'work')] }),
  )
}

/** Tasks and finish-start links from rows of name, duration, predecessors. */
export function fromRows(
  rows: readonly (readonly [string, number, readonly string[]])[],
  more: Partial<Problem>,
  how: (duration: number) => Mode,
): Problem {
  const index = new Map(rows.map(([id], k) => [id, k]))
  const links = rows.flatMap(([, , before], k) => before.map((id) => link(index.get(id)!, k)))
  return problem(
    rows.map(([id, duration]) => task(id, how(duration), { release: more.start ?? 0 })),
    { ...more, links },
  )
}

/** The house of the GLPK example cpp.mod (optimum 46 days). */
export const glpkHouse: readonly (readonly [string, number, readonly string[]])[] = [
  ['A', 3, []],
  ['B', 4, ['A']],
  ['C', 3, ['B']],
  ['D', 10, ['B']],
  ['E', 8, ['D']],
  ['F', 4, ['D']],
  ['G', 6, ['D']],
  ['H', 8, ['C', 'E', 'F', 'G']],
  ['I', 5, ['H']],
  ['J', 5, ['H']],
  ['K', 4, ['I']],
  ['L', 2, ['J']],
  ['M', 4, ['K', 'L']],
]

/** Whole days open from `from` for `count` days where `counts` says so, as one calendar of `[open, close)` minutes of day. */
export function dayWindows(
  id: string,
  from: number,
  count: number,
  open: number,
  close: number,
  off: readonly number[] = [],
): Calendar {
  const spans: [number, number][] = []
  for (let day = from; day < from + count; day++) {
    if (weekday(day) < 5 && !off.includes(day)) spans.push([instantOf(day, open), instantOf(day, close)])
  }
  return calendar(id, ...spans)
}
