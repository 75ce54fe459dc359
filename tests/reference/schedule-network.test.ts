/** Early and late times, floats and critical chains of published networks without capacities. */
import { describe, expect, it } from 'vitest'
import { criticalPath } from '../../src/planning/schedule/index.ts'
import type { LinkType, Problem } from '../../src/planning/schedule/problem.ts'
import { fromRows, glpkHouse, link, mode, problem, task } from '../unit/planning/schedule/instances.ts'

/** Rows `name duration: predecessors (name, or name/type/lag) = ES EF LS LF TF`. */
function network(text: string): { problem: Problem; rows: Map<string, number[]>; names: string[] } {
  const lines = text
    .trim()
    .split('\n')
    .map((line) => /^(\S+) (\d+):(.*)=(.*)$/.exec(line.trim())!)
  const names = lines.map((line) => line[1]!)
  const links = lines.flatMap((line, to) =>
    line[3]!
      .trim()
      .split(/\s+/)
      .filter(Boolean)
      .map((before) => {
        const [from, type = 'FS', lag = '0'] = before.split('/')
        return link(names.indexOf(from!), to, { type: type as LinkType, lag: Number(lag) })
      }),
  )
  const rows = new Map(lines.map((line) => [line[1]!, line[4]!.trim().split(/\s+/).map(Number)]))
  return {
    problem: problem(
      lines.map((line) => task(line[1]!, mode(Number(line[2])))),
      { links },
    ),
    rows,
    names,
  }
}

function expectRows(text: string, finish: number, chains: string[]): void {
  const { problem: asked, rows, names } = network(text)
  const found = criticalPath(asked)!
  const got = new Map(
    found.rows.map((row, k) => [
      names[k]!,
      [row.earlyStart, row.earlyFinish, row.lateStart, row.lateFinish, row.float],
    ]),
  )
  expect(got).toEqual(rows)
  expect(found.finish).toBe(finish)
  expect(found.chains.map((chain) => chain.map((k) => names[k]).join(' ')).sort()).toEqual(chains)
  expect(found.chainCount).toBe(BigInt(chains.length))
}

describe('published networks', () => {
  it('Reliable Construction, Hillier and Lieberman: 44 weeks, A B C E F J L N', () => {
    // Durations seen in a reprint but for H; predecessors and H from memory; rows re-solved.
    expectRows(
      `A 2: = 0 2 0 2 0
       B 4: A = 2 6 2 6 0
       C 10: B = 6 16 6 16 0
       D 6: C = 16 22 20 26 4
       E 4: C = 16 20 16 20 0
       F 5: E = 20 25 20 25 0
       G 7: D = 22 29 26 33 4
       H 9: E G = 29 38 33 42 4
       I 7: C = 16 23 18 25 2
       J 8: F I = 25 33 25 33 0
       K 4: J = 33 37 34 38 1
       L 5: J = 33 38 33 38 0
       M 2: H = 38 40 42 44 4
       N 6: K L = 38 44 38 44 0`,
      44,
      ['A B C E F J L N'],
    )
  })

  it('Taylor, Introduction to Management Science, activities on arrows: 20, through 1-3-4-5-6', () => {
    expectRows(
      `1-2 7: = 0 7 2 9 2
       1-3 10: = 0 10 0 10 0
       2-4 6: 1-2 = 7 13 9 15 2
       3-4 5: 1-3 = 10 15 10 15 0
       3-5 4: 1-3 = 10 14 14 18 4
       4-5 3: 2-4 3-4 = 15 18 15 18 0
       5-6 2: 3-5 4-5 = 18 20 18 20 0`,
      20,
      ['1-3 3-4 4-5 5-6'],
    )
  })

  it('two critical paths at once (encyclopedia chart, durations from memory): 7 months, A D F and B C', () => {
    expectRows(
      `A 3: = 0 3 0 3 0
       B 4: = 0 4 0 4 0
       C 3: B = 4 7 4 7 0
       D 1: A = 3 4 3 4 0
       E 3: A = 3 6 4 7 1
       F 3: D = 4 7 4 7 0`,
      7,
      ['A D F', 'B C'],
    )
  })

  it('Widget project, Winston p. 441, with a dummy: 38 days', () => {
    expectRows(
      `1-2 9: = 0 9 0 9 0
       1-3 6: = 0 6 3 9 3
       2-3 0: 1-2 = 9 9 9 9 0
       3-4 7: 1-3 2-3 = 9 16 9 16 0
       3-5 8: 1-3 2-3 = 9 17 18 26 9
       4-5 10: 3-4 = 16 26 16 26 0
       5-6 12: 3-5 4-5 = 26 38 26 38 0`,
      38,
      ['1-2 2-3 3-4 4-5 5-6'],
    )
  })

  it('precedence diagram of a training module with start-to-start links: 38 (rows re-solved, not published)', () => {
    expectRows(
      `A 2: = 0 2 0 2 0
       B 10: A/SS = 0 10 4 14 4
       C 13: A = 2 15 10 23 8
       D 12: A = 2 14 2 14 0
       E 12: B = 10 22 15 27 5
       F 7: B = 10 17 14 21 4
       G 10: D = 14 24 23 33 9
       H 16: D = 14 30 14 30 0
       I 6: F = 17 23 21 27 4
       J 12: C G/SS = 15 27 23 35 8
       K 5: I/SS = 17 22 22 27 5
       L 8: E I K = 23 31 27 35 4
       M 5: H = 30 35 30 35 0
       N 3: G J L M = 35 38 35 38 0`,
      38,
      ['A D H M N'],
    )
  })

  it('all four link types with leads and lags (constructed; checked by linear program): 17, P Q S T U', () => {
    expectRows(
      `P 4: = 0 4 0 4 0
       Q 6: P/SS/2 = 2 8 2 8 0
       R 5: P/FS/1 Q/FF/2 = 5 10 10 15 5
       S 3: Q/FS/-1 = 7 10 7 10 0
       T 7: S/SF/9 = 9 16 9 16 0
       U 2: R S T/FF/1 = 15 17 15 17 0`,
      17,
      ['P Q S T U'],
    )
  })

  it('house of the GLPK example cpp.mod: 46 days', () => {
    const found = criticalPath(fromRows(glpkHouse, {}, (days) => mode(days)))!
    expect(found.finish).toBe(46)
    expect(found.chains.map((chain) => chain.map((k) => glpkHouse[k]![0]).join(''))).toEqual(['ABDEHIKM'])
  })

  it('event network of a published project report, best case: 163 hours', () => {
    // MSDS 460 Assignment 2 (course report): event-event hours; of 10-11 the longer.
    const arcs =
      '0-1 4,0-2 15,1-4 8,1-2 8,4-5 30,5-6 40,6-7 15,6-8 25,7-9 0,8-9 25,9-10 6,10-11 15,2-10 25,11-12 10'
        .split(',')
        .map((text) => text.split(' '))
    const rows = arcs.map(([arc, hours]): [string, number, string[]] => {
      const before = arcs.filter(([other]) => other!.split('-')[1] === arc!.split('-')[0])
      return [arc!, Number(hours), before.map(([other]) => other!)]
    })
    expect(criticalPath(fromRows(rows, {}, (hours) => mode(hours)))!.finish).toBe(163)
  })
})
