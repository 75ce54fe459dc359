/** Brute force: every device, batch and board is taken apart piece by piece, and the pieces are counted. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Project } from '../../../src/model/project.ts'
import { device, people, resolveText } from './resolve-text.ts'

interface Use {
  readonly part: number
  readonly count: number
  readonly fastener: boolean
}
interface Node {
  /** Empty: bought. */
  readonly uses: readonly Use[]
  readonly board: boolean
  readonly have: number
  readonly spares: number
  readonly tries: number
}
interface Bench {
  readonly devices: number
  readonly nodes: readonly Node[]
  readonly main: readonly Use[]
}

const use = (least: number): fc.Arbitrary<Use> =>
  fc.record({
    part: fc.integer({ min: least, max: 6 }),
    count: fc.integer({ min: 1, max: 4 }),
    fastener: fc.boolean(),
  })
/** Nodes use only later ones, so that nothing is inside itself; the last two are bought. */
const node = (at: number): fc.Arbitrary<Node> =>
  fc.record({
    uses: at >= 5 ? fc.constant([]) : fc.array(use(at + 1), { maxLength: 3 }),
    board: fc.boolean(),
    have: fc.integer({ min: 0, max: 12 }),
    spares: fc.integer({ min: 0, max: 3 }),
    tries: fc.integer({ min: 1, max: 2 }),
  })
const bench: fc.Arbitrary<Bench> = fc.record({
  devices: fc.integer({ min: 1, max: 4 }),
  nodes: fc.tuple(...[0, 1, 2, 3, 4, 5, 6].map(node)),
  main: fc.array(use(0), { minLength: 1, maxLength: 4 }),
})

const stepOf = ({ part, count, fastener }: Use): string =>
  fastener ? `{do: fasten, with: n${part} x${count}, time: 1 min}` : `{put: n${part} x${count}, time: 1 min}`

function partText({ uses, board, have, spares, tries }: Node, at: number): string {
  const common = `have: ${have}, spares: ${spares}, tries: ${tries}`
  if (uses.length === 0) return `  n${at}: {kind: bought, ${common}}`
  return board
    ? `  n${at}: {kind: board, offers: [{vendor: shop, price: 1, lead: 1 wd}], ${common}, places: [${uses.map(({ part, count }) => `n${part} x${count}`).join(', ')}]}`
    : `  n${at}: {kind: assembly, ${common}, steps: [${uses.map(stepOf).join(', ')}]}`
}

function textOf({ devices, nodes, main }: Bench, turned: boolean): string {
  const parts = nodes.map(partText)
  const steps = main.map(stepOf)
  return `device: {name: Lamp, qty: ${devices}, currency: EUR, start: 2026-02-02}
${people}vendors: {shop: {transit: 1 wd}}
parts:
${(turned ? parts.reverse() : parts).join('\n')}
assembly: {steps: [${(turned ? steps.reverse() : steps).join(', ')}]}
`
}

/** Counts one by one: how many of each part go into things that are really put together. */
function countedByHand({ devices, nodes, main }: Bench): { needed: number[]; toGet: number[] } {
  const needed = nodes.map(() => 0)
  const toGet = nodes.map(() => 0)
  const take = (uses: readonly Use[]): void => {
    for (const { part, count } of uses) for (let piece = 0; piece < count; piece++) needed[part]! += 1
  }
  for (let built = 0; built < devices; built++) take(main)
  // Each is complete once everything before it has been taken apart.
  for (const [at, { uses, have, spares, tries }] of nodes.entries()) {
    if (needed[at]! > 0) toGet[at] = Math.max(0, needed[at]! + spares - have)
    for (let built = 0; built < toGet[at]! * tries; built++) take(uses)
  }
  return { needed, toGet }
}

const countsOf = (project: Project, key: 'needed' | 'toGet'): number[] =>
  [0, 1, 2, 3, 4, 5, 6].map((at) => project.demand.get(`n${at}`)![key])

describe('how many of each part are needed', () => {
  it('is what taking every device, subassembly and board apart piece by piece counts', () => {
    fc.assert(
      fc.property(bench, (one) => {
        const { project } = resolveText(textOf(one, false))
        expect({ needed: countsOf(project, 'needed'), toGet: countsOf(project, 'toGet') }).toEqual(
          countedByHand(one),
        )
      }),
      { numRuns: 60, seed: 7 },
    )
  })

  it('is the same whatever the order of parts and steps', () => {
    fc.assert(
      fc.property(bench, (one) => {
        const [plain, turned] = [
          resolveText(textOf(one, false)).project,
          resolveText(textOf(one, true)).project,
        ]
        const counts = ({ demand }: Project) =>
          [...demand.keys()]
            .sort()
            .map((id) => ({ id, ...demand.get(id)!, uses: demand.get(id)!.uses.length }))
        expect(counts(turned)).toEqual(counts(plain))
      }),
      { numRuns: 30, seed: 8 },
    )
  })

  it('of a fixture is its own number for the project, whatever the number of devices', () => {
    const { project, diagnostics } =
      resolveText(`device: {name: Lamp, qty: 5, currency: EUR, start: 2026-02-02}
${people}machines: {mill: {}}
materials: {brass: {forms: [{bar: 20 mm, length: 500 mm}]}}
parts:
  ring: {kind: bought, role: fixture, have: 1}
  jaws: {kind: bought, role: fixture, qty: 2, have: 3}
  hub:
    kind: machined
    qty: 2
    material: brass
    stock: {bar: 20 mm, length: 18 mm}
    route:
      - setup: {machine: mill, hold: ring, time: 20 min}
        ops: [{face: {time: 10 min}}]
`)
    expect(diagnostics).toEqual([])
    const counts = (id: string) => {
      const { perDevice, needed, fromStock, toGet } = project.demand.get(id)!
      return { perDevice, needed, fromStock, toGet }
    }
    expect(counts('ring')).toEqual({ perDevice: 0, needed: 1, fromStock: 1, toGet: 0 })
    expect(counts('jaws')).toEqual({ perDevice: 0, needed: 2, fromStock: 2, toGet: 0 })
    expect(counts('hub')).toEqual({ perDevice: 2, needed: 10, fromStock: 0, toGet: 10 })
  })

  it('is nothing, spares included, for what no step and no `qty` asks for', () => {
    const { project, diagnostics } = resolveText(
      `${device}${people}parts: {lid: {kind: bought, spares: 3, have: 1}}`,
    )
    expect(project.demand.get('lid')).toMatchObject({ needed: 0, spares: 0, toGet: 0 })
    expect(diagnostics.map(({ code }) => code)).toEqual(['QTY08'])
  })
})
