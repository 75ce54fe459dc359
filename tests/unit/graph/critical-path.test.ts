import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type CriticalPath, criticalPath } from '../../../src/graph/critical-path.ts'
import { activityOrder, earliestStarts, lastFinish } from '../../../src/graph/longest-paths.ts'
import {
  arrivesAt,
  type LinkType,
  leavesFrom,
  type Network,
  type NetworkLink,
} from '../../../src/graph/network.ts'

const types = fc.constantFrom<LinkType>('FS', 'SS', 'FF', 'SF')

/** Small networks without rings; short durations and lags make ties and many critical chains likely. */
const networks: fc.Arbitrary<Network> = fc.integer({ min: 1, max: 6 }).chain((n) =>
  fc.record({
    durations: fc.array(fc.nat(3), { minLength: n, maxLength: n }),
    links: fc
      .array(
        fc.record({ a: fc.nat(n - 1), b: fc.nat(n - 1), type: types, lag: fc.integer({ min: -2, max: 2 }) }),
        {
          maxLength: 9,
        },
      )
      .map((links) =>
        links
          .filter(({ a, b }) => a !== b)
          // Links run from even to odd and up within each, so that they do not simply follow the numbers.
          .map(({ a, b, type, lag }): NetworkLink => {
            const before = a % 2 < b % 2 || (a % 2 === b % 2 && a < b)
            return { from: before ? a : b, to: before ? b : a, type, lag }
          }),
      ),
  }),
)

function offset({ durations }: Network, { from, to, type, lag }: NetworkLink): number {
  switch (type) {
    case 'FS':
      return durations[from]! + lag
    case 'SS':
      return lag
    case 'FF':
      return durations[from]! + lag - durations[to]!
    case 'SF':
      return lag - durations[to]!
  }
}

interface Path {
  readonly first: number
  readonly last: number
  readonly links: readonly NetworkLink[]
  readonly length: number
}

/** Every path of links from every activity on, the path without links included. */
function everyPath(network: Network): Path[] {
  const distinct = network.links.filter(
    (link, i) => !network.links.slice(0, i).some((other) => same(link, other) && other.lag >= link.lag),
  )
  const paths: Path[] = [...network.durations.keys()].map((i) => ({
    first: i,
    last: i,
    links: [],
    length: 0,
  }))
  for (const path of paths) {
    for (const link of distinct.filter(({ from }) => from === path.last)) {
      paths.push({
        first: path.first,
        last: link.to,
        links: [...path.links, link],
        length: path.length + offset(network, link),
      })
    }
  }
  return paths
}

function same(a: NetworkLink, b: NetworkLink): boolean {
  return a.from === b.from && a.to === b.to && a.type === b.type
}

/** The events a path runs through; the two events of an activity without duration are one. */
function events({ durations }: Network, { first, last, links }: Path): string {
  const all = [`S${first}`]
  for (const { from, to, type } of links)
    all.push(`${leavesFrom(type)[0]}${from}`, `${arrivesAt(type)[0]}${to}`)
  all.push(`F${last}`)
  const names = all.map((event) =>
    durations[Number(event.slice(1))] === 0 ? `M${event.slice(1)}` : event.toUpperCase(),
  )
  return `${names.filter((name, i) => name !== names[i - 1]).join(' ')} `
}

/** The paths of full length that are no part of a longer one. */
function plainChains(network: Network, finish: number): string[] {
  const full = everyPath(network)
    .filter(({ last, length }) => length + network.durations[last]! === finish)
    .map((path) => events(network, path))
  return full.filter(
    (path) => !full.some((other) => other.length > path.length && ` ${other}`.includes(` ${path}`)),
  )
}

function solve(network: Network): CriticalPath {
  return criticalPath(network, 10_000)!
}

describe('criticalPath', () => {
  it('has the early start of the longest of all paths to an activity', () => {
    fc.assert(
      fc.property(networks, (network) => {
        const paths = everyPath(network)
        const { times, finish } = solve(network)
        for (const [i, { earlyStart }] of times.entries()) {
          expect(earlyStart).toBe(
            Math.max(...paths.filter(({ last }) => last === i).map(({ length }) => length)),
          )
        }
        expect(finish).toBe(Math.max(...paths.map(({ last, length }) => length + network.durations[last]!)))
      }),
      { numRuns: 400 },
    )
  })

  it('has a late start that the longest of all paths onward leaves', () => {
    fc.assert(
      fc.property(networks, (network) => {
        const paths = everyPath(network)
        const { times, finish } = solve(network)
        for (const [i, { lateStart, lateFinish, totalFloat, earlyStart }] of times.entries()) {
          const onward = paths
            .filter(({ first }) => first === i)
            .map((p) => p.length + network.durations[p.last]!)
          expect(lateStart).toBe(finish - Math.max(...onward))
          expect([lateFinish, totalFloat]).toEqual([
            lateStart + network.durations[i]!,
            lateStart - earlyStart,
          ])
        }
      }),
      { numRuns: 400 },
    )
  })

  it('has as free float the longest slip that moves nothing else', () => {
    fc.assert(
      fc.property(networks, (network) => {
        const { times, finish } = solve(network)
        for (const [i, { earlyStart, freeFloat, totalFloat }] of times.entries()) {
          const moves = (slip: number) => {
            // A new first activity holds back activity i alone.
            const held: Network = {
              durations: [...network.durations, 0],
              links: [
                ...network.links,
                { from: network.durations.length, to: i, type: 'SS', lag: earlyStart + slip },
              ],
            }
            const starts = earliestStarts(held, activityOrder(held)!)
            return (
              times.some((t, k) => k !== i && starts[k] !== t.earlyStart) ||
              lastFinish(held, starts) !== finish
            )
          }
          expect([moves(freeFloat), moves(freeFloat + 1)]).toEqual([false, true])
          expect(freeFloat >= 0 && freeFloat <= totalFloat).toBe(true)
        }
      }),
      { numRuns: 200 },
    )
  })

  it('finds exactly the chains that a search of all paths finds, and counts them', () => {
    fc.assert(
      fc.property(networks, (network) => {
        const { chains, chainCount, finish } = solve(network)
        const found = chains.map(({ steps, links }) =>
          events(network, {
            first: steps[0]!.activity,
            last: steps.at(-1)!.activity,
            links: links.map((i) => network.links[i]!),
            length: 0,
          }),
        )
        expect(found.sort()).toEqual(plainChains(network, finish).sort())
        expect(chainCount).toBe(BigInt(chains.length))
      }),
      { numRuns: 1000 },
    )
  })

  it('puts every activity without float on a chain and no other', () => {
    fc.assert(
      fc.property(networks, (network) => {
        const { chains, times } = solve(network)
        const onChain = new Set(chains.flatMap(({ steps }) => steps.map(({ activity }) => activity)))
        expect(times.map((_, i) => onChain.has(i))).toEqual(times.map(({ totalFloat }) => totalFloat === 0))
      }),
      { numRuns: 400 },
    )
  })

  it('never ends earlier with one more link', () => {
    fc.assert(
      fc.property(networks, (network) => {
        const fewer = { ...network, links: network.links.slice(1) }
        expect(solve(network).finish).toBeGreaterThanOrEqual(solve(fewer).finish)
      }),
    )
  })

  it('knows a ring', () => {
    const link = (from: number, to: number): NetworkLink => ({ from, to, type: 'SS', lag: -5 })
    expect(criticalPath({ durations: [1, 1], links: [link(0, 1), link(1, 0)] })).toBeNull()
  })

  it('starts nothing before 0, whatever the lead', () => {
    const solved = solve({ durations: [2, 5], links: [{ from: 0, to: 1, type: 'FS', lag: -9 }] })
    expect(solved.times[1]).toMatchObject({ earlyStart: 0, totalFloat: 0 })
    expect(solved.binding).toEqual([false])
    expect(solved.finish).toBe(5)
  })

  it('tells the events of a chain: one that needs a start only, and one past a duration', () => {
    const links: NetworkLink[] = [
      { from: 0, to: 1, type: 'SS', lag: 4 },
      { from: 1, to: 2, type: 'FF', lag: 3 },
    ]
    const { chains } = solve({ durations: [3, 5, 2], links })
    expect(chains).toEqual([
      {
        steps: [
          { activity: 0, enters: 'start', leaves: 'start' },
          { activity: 1, enters: 'start', leaves: 'finish' },
          { activity: 2, enters: 'finish', leaves: 'finish' },
        ],
        links: [0, 1],
      },
    ])
  })

  it('counts 2^60 chains exactly and lists as many as asked for', () => {
    const links: NetworkLink[] = []
    const arc = (from: number, to: number) => links.push({ from, to, type: 'FS', lag: 0 })
    for (let i = 0; i < 60; i++) {
      for (const side of [1, 2]) {
        arc(3 * i, 3 * i + side)
        arc(3 * i + side, 3 * i + 3)
      }
    }
    const solved = criticalPath({ durations: new Array<number>(181).fill(1), links }, 7)!
    expect(solved.chainCount).toBe(2n ** 60n)
    expect(solved.chains).toHaveLength(7)
  })

  it('solves a row of 5000 activities', () => {
    const links = Array.from(
      { length: 4999 },
      (_, i): NetworkLink => ({ from: i, to: i + 1, type: 'FS', lag: 0 }),
    )
    const solved = criticalPath({ durations: new Array<number>(5000).fill(1), links })!
    expect([solved.finish, solved.chains[0]!.steps.length]).toEqual([5000, 5000])
  })

  it('has nothing to say about nothing', () => {
    expect(criticalPath({ durations: [], links: [] })).toMatchObject({
      finish: 0,
      times: [],
      chains: [],
      chainCount: 0n,
    })
  })
})
