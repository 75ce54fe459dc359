import { describe, expect, it } from 'vitest'
import { criticalPath } from '../../src/graph/critical-path.ts'
import type { LinkType, NetworkLink } from '../../src/graph/network.ts'

interface Example {
  readonly name: string
  readonly finish: number
  readonly chains: readonly string[]
  /** Activity, duration, what it waits for, then early start and finish, late start and finish, total and free float. */
  readonly rows: string
}

// Durations and links as in the source named; where the source gives fewer figures, the rest were solved again from
// its network by forward and backward pass in another language.
const examples: readonly Example[] = [
  {
    // Source: Hillier & Lieberman, Introduction to Operations Research, project-management chapter (44 weeks); predecessors from memory.
    name: 'one construction company, 14 activities',
    finish: 44,
    chains: ['A B C E F J L N'],
    rows: `
      A 2 . 0 2 0 2 0 0
      B 4 A 2 6 2 6 0 0
      C 10 B 6 16 6 16 0 0
      D 6 C 16 22 20 26 4 0
      E 4 C 16 20 16 20 0 0
      F 5 E 20 25 20 25 0 0
      G 7 D 22 29 26 33 4 0
      H 9 E,G 29 38 33 42 4 0
      I 7 C 16 23 18 25 2 2
      J 8 F,I 25 33 25 33 0 0
      K 4 J 33 37 34 38 1 1
      L 5 J 33 38 33 38 0 0
      M 2 H 38 40 42 44 4 4
      N 6 K,L 38 44 38 44 0 0`,
  },
  {
    // Source: example model cpp.mod of the GLPK solver (A. Makhorin), optimum 46 stated there; floats solved again by two methods.
    name: 'a house, 13 activities',
    finish: 46,
    chains: ['A B D E H I K M'],
    rows: `
      A 3 . 0 3 0 3 0 0
      B 4 A 3 7 3 7 0 0
      C 3 B 7 10 22 25 15 15
      D 10 B 7 17 7 17 0 0
      E 8 D 17 25 17 25 0 0
      F 4 D 17 21 21 25 4 4
      G 6 D 17 23 19 25 2 2
      H 8 C,E,F,G 25 33 25 33 0 0
      I 5 H 33 38 33 38 0 0
      J 5 H 33 38 35 40 2 0
      K 4 I 38 42 38 42 0 0
      L 2 J 38 40 40 42 2 2
      M 4 K,L 42 46 42 46 0 0`,
  },
  {
    // Source: Taylor, Introduction to Management Science, solutions to chapter 8: every cell seen.
    name: 'seven activities on arrows',
    finish: 20,
    chains: ['1-3 3-4 4-5 5-6'],
    rows: `
      1-2 7 . 0 7 2 9 2 0
      1-3 10 . 0 10 0 10 0 0
      2-4 6 1-2 7 13 9 15 2 2
      3-4 5 1-3 10 15 10 15 0 0
      3-5 4 1-3 10 14 14 18 4 4
      4-5 3 2-4,3-4 15 18 15 18 0 0
      5-6 2 3-5,4-5 18 20 18 20 0 0`,
  },
  {
    // Source: Gueret, Prins & Sevaux, Applications of Optimization with Xpress-MP, construction of a stadium; 64 weeks from memory.
    name: 'a stadium, 18 tasks',
    finish: 64,
    chains: ['1 2 3 5 6 9 12 17 18'],
    rows: `
      1 2 . 0 2 0 2 0 0
      2 16 1 2 18 2 18 0 0
      3 9 2 18 27 18 27 0 0
      4 8 2 18 26 29 37 11 0
      5 10 3 27 37 27 37 0 0
      6 6 4,5 37 43 37 43 0 0
      7 2 4 26 28 61 63 35 0
      8 2 6 43 45 59 61 16 1
      9 9 4,6 43 52 43 52 0 0
      10 5 4 26 31 59 64 33 33
      11 3 6 43 46 58 61 15 0
      12 2 9 52 54 52 54 0 0
      13 1 7 28 29 63 64 35 35
      14 7 2 18 25 53 60 35 1
      15 4 4,14 26 30 60 64 34 34
      16 3 8,11,14 46 49 61 64 15 15
      17 9 12 54 63 54 63 0 0
      18 1 17 63 64 63 64 0 0`,
  },
  {
    // Source: slides "Network Construction - Precedence Diagram Method": activities and links seen, results solved again by two passes.
    name: 'start-to-start links',
    finish: 38,
    chains: ['A D H M N'],
    rows: `
      A 2 . 0 2 0 2 0 0
      B 10 A:SS+0 0 10 4 14 4 0
      C 13 A 2 15 10 23 8 0
      D 12 A 2 14 2 14 0 0
      E 12 B 10 22 15 27 5 1
      F 7 B 10 17 14 21 4 0
      G 10 D 14 24 23 33 9 1
      H 16 D 14 30 14 30 0 0
      I 6 F 17 23 21 27 4 0
      J 12 C,G:SS+0 15 27 23 35 8 8
      K 5 I:SS+0 17 22 22 27 5 1
      L 8 E,I,K 23 31 27 35 4 4
      M 5 H 30 35 30 35 0 0
      N 3 G,J,L,M 35 38 35 38 0 0`,
  },
  {
    // Source: encyclopedia article "Critical path method", chart of six activities: both paths, 7 months and the float of E seen.
    name: 'two critical paths at once',
    finish: 7,
    chains: ['A D F', 'B C'],
    rows: `
      A 3 . 0 3 0 3 0 0
      B 4 . 0 4 0 4 0 0
      C 3 B 4 7 4 7 0 0
      D 1 A 3 4 3 4 0 0
      E 3 A 3 6 4 7 1 1
      F 3 D 4 7 4 7 0 0`,
  },
  {
    // Source: lecture notes L27 "Project Scheduling - PERT": means and 20.83 days seen; in sixths of a day here.
    name: 'a dummy activity',
    finish: 125,
    chains: ['1-2 2-3 3-4 4-5 5-6'],
    rows: `
      1-2 30 . 0 30 0 30 0 0
      1-3 24 . 0 24 6 30 6 6
      2-3 0 1-2 30 30 30 30 0 0
      2-4 24 1-2 30 54 39 63 9 9
      2-6 45 1-2 30 75 80 125 50 50
      3-4 33 1-3,2-3 30 63 30 63 0 0
      3-5 36 1-3,2-3 30 66 65 101 35 35
      4-5 38 2-4,3-4 63 101 63 101 0 0
      4-6 30 2-4,3-4 63 93 95 125 32 32
      5-6 24 3-5,4-5 101 125 101 125 0 0`,
  },
  {
    // Source: Heizer & Render, Operations Management, Milwaukee Paper Manufacturing: all rows seen.
    name: 'a paper mill, 8 activities',
    finish: 15,
    chains: ['A C E G H'],
    rows: `
      A 2 . 0 2 0 2 0 0
      B 3 . 0 3 1 4 1 0
      C 2 A 2 4 2 4 0 0
      D 4 A,B 3 7 4 8 1 1
      E 4 C 4 8 4 8 0 0
      F 3 C 4 7 10 13 6 6
      G 5 D,E 8 13 8 13 0 0
      H 2 F,G 13 15 13 15 0 0`,
  },
  {
    // Source: constructed; checked by two passes and by a linear program.
    name: 'all four kinds of link, lags of both signs',
    finish: 17,
    chains: ['P Q S T U'],
    rows: `
      P 4 . 0 4 0 4 0 0
      Q 6 P:SS+2 2 8 2 8 0 0
      R 5 P:FS+1,Q:FF+2 5 10 10 15 5 5
      S 3 Q:FS-1 7 10 7 10 0 0
      T 7 S:SF+9 9 16 9 16 0 0
      U 2 R,S,T:FF+1 15 17 15 17 0 0`,
  },
  {
    // Source: Winston, Operations Research, p. 441: durations and event times 0 9 9 16 26 38 seen.
    name: 'a dummy between events',
    finish: 38,
    chains: ['1-2 2-3 3-4 4-5 5-6'],
    rows: `
      1-2 9 . 0 9 0 9 0 0
      1-3 6 . 0 6 3 9 3 3
      2-3 0 1-2 9 9 9 9 0 0
      3-4 7 1-3,2-3 9 16 9 16 0 0
      3-5 8 1-3,2-3 9 17 18 26 9 9
      4-5 10 3-4 16 26 16 26 0 0
      5-6 12 3-5,4-5 26 38 26 38 0 0`,
  },
  {
    // Source: the house-scheduling example of the OPL language: early schedule seen.
    name: 'a house, 10 activities',
    finish: 90,
    chains: ['masonry plumbing facade moving'],
    rows: `
      masonry 35 . 0 35 0 35 0 0
      carpentry 15 masonry 35 50 55 70 20 0
      plumbing 40 masonry 35 75 35 75 0 0
      ceiling 15 masonry 35 50 60 75 25 0
      roofing 5 carpentry 50 55 70 75 20 0
      painting 10 ceiling 50 60 75 85 25 25
      windows 5 roofing 55 60 80 85 25 25
      facade 10 roofing,plumbing 75 85 75 85 0 0
      garden 5 roofing,plumbing 75 80 80 85 5 5
      moving 5 windows,facade,garden,painting 85 90 85 90 0 0`,
  },
  {
    // Source: Bratko, Prolog Programming for Artificial Intelligence, 3rd ed., p. 329-332: finish 22, windows of t4 and t5 seen.
    name: 'five tasks',
    finish: 22,
    chains: ['t1 t2 t3'],
    rows: `
      t1 5 . 0 5 0 5 0 0
      t2 7 t1 5 12 5 12 0 0
      t3 10 t2 12 22 12 22 0 0
      t4 2 t1 5 7 11 13 6 0
      t5 9 t4 7 16 13 22 6 6`,
  },
]

function read(rows: string) {
  const table = rows
    .trim()
    .split('\n')
    .map((row) => row.trim().split(' '))
  const ids = table.map((row) => row[0]!)
  const links = table.flatMap((row, to) =>
    row[2]!
      .split(',')
      .filter((text) => text !== '.')
      .map((text): NetworkLink => {
        const [id, how = 'FS+0'] = text.split(':')
        return { from: ids.indexOf(id!), to, type: how.slice(0, 2) as LinkType, lag: Number(how.slice(2)) }
      }),
  )
  return {
    ids,
    links,
    durations: table.map((row) => Number(row[1])),
    figures: table.map((row) => row.slice(3).map(Number)),
  }
}

describe.each(examples)('published network: $name', ({ finish, chains, rows }) => {
  const { ids, links, durations, figures } = read(rows)
  const solved = criticalPath({ durations, links })!

  it('has the published early and late times and floats', () => {
    expect(links.every(({ from }) => from >= 0)).toBe(true)
    expect(
      solved.times.map((t) => [
        t.earlyStart,
        t.earlyFinish,
        t.lateStart,
        t.lateFinish,
        t.totalFloat,
        t.freeFloat,
      ]),
    ).toEqual(figures)
  })

  it('has the published finish and exactly the published critical paths', () => {
    expect(solved.finish).toBe(finish)
    expect(solved.chainCount).toBe(BigInt(chains.length))
    expect(
      solved.chains.map(({ steps }) => steps.map(({ activity }) => ids[activity]).join(' ')).sort(),
    ).toEqual([...chains].sort())
  })
})

describe('a network with all four kinds of link', () => {
  // Source: as for the example above: P by its start, then Q, S by its start, then T, and U by its finish.
  it('shows which events its critical chain runs through', () => {
    const { ids, links, durations } = read(examples.find(({ name }) => name.startsWith('all four'))!.rows)
    const [chain] = criticalPath({ durations, links })!.chains
    expect(
      chain!.steps.map(({ activity, enters, leaves }) => `${ids[activity]} ${enters}-${leaves}`),
    ).toEqual(['P start-start', 'Q start-finish', 'S start-start', 'T finish-finish', 'U finish-finish'])
  })
})

describe('the partly given network of the Seabee manual', () => {
  // Source: US Navy training manual 14233, figure 2-13: early finishes 10 (1020) and 11 (1040), late start of 1050 is
  // 12 and of 1060 is 11, total float of 1020 is 2 and its free float 1, critical 1010-1040-1060-1070.
  // Lengths of 1060 and 1070 are not given: any that fit must do. A lag of 3 days follows 1070.
  it.each([4, 6, 10])('keeps every fact seen when activity 1060 lasts %i days', (length) => {
    const rows = `
      1010 3 .
      1020 7 1010
      1040 8 1010
      1050 ${length - 1} 1020,1040
      1060 ${length} 1040
      1070 5 1050,1060
      end 0 1070:FS+3`
    const { ids, links, durations } = read(rows)
    const solved = criticalPath({ durations, links })!
    const times = (id: string) => solved.times[ids.indexOf(id)]!
    expect([times('1020').earlyFinish, times('1040').earlyFinish, times('1050').earlyStart]).toEqual([
      10, 11, 11,
    ])
    expect([times('1050').lateStart, times('1060').lateStart, times('1040').lateFinish]).toEqual([12, 11, 11])
    expect([times('1020').earlyStart, times('1020').lateStart]).toEqual([3, 5])
    expect([times('1020').totalFloat, times('1020').freeFloat, times('1050').totalFloat]).toEqual([2, 1, 1])
    expect(solved.chains.map(({ steps }) => steps.map(({ activity }) => ids[activity]).join('-'))).toEqual([
      '1010-1040-1060-1070-end',
    ])
    // Slipping 1020 by its total float takes the float of 1050 away.
    const late = { durations: durations.map((d, i) => (ids[i] === '1020' ? d + 2 : d)), links }
    expect(criticalPath(late)!.times[ids.indexOf('1050')]!.totalFloat).toBe(0)
  })
})
