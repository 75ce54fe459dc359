import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { AssemblyPlan, Step } from '../../../src/model/assembly.ts'
import type { Project } from '../../../src/model/project.ts'
import { moneySheet } from '../../../src/report/money-sheet.ts'
import { ordersSheet } from '../../../src/report/orders-sheet.ts'
import { partsSheet } from '../../../src/report/parts-sheet.ts'
import { partGroups } from '../../../src/report/parts-tree.ts'
import { countDemand } from '../../../src/resolve/demand.ts'
import { anOffer, aPart, aProject, aVendor, here } from '../planning/project-builder.ts'
import { projects } from '../planning/random-project.ts'
import { heldBy, LiveModel, liveDifferences } from './evaluate.ts'
import { toldOf } from './told.ts'

const put = (part: string, count: number, fasteners: readonly [string, number][] = []): Step =>
  ({
    put: { part, count, at: here },
    into: null,
    onto: null,
    shuts: [],
    cautions: [],
    action: null,
    test: null,
    fasteners: fasteners.map(([id, each]) => ({ part: id, count: each, at: here })),
  }) as unknown as Step

const planOf = (of: string | null, steps: readonly Step[], ground: string | null = null): AssemblyPlan => ({
  of,
  at: here,
  openings: new Map(),
  steps,
  ground,
})

/** Three devices: a base, two arms of one bearing and two screws each, and four screws more. */
function armed(): Project {
  const offer = [anOffer('shop', '0.33', { pack: 10 })]
  const arm = planOf('arm', [put('bearing', 1, [['screw', 2]])])
  const parts = [
    aPart('screw', offer, { spares: 1 }),
    aPart('bearing', offer),
    aPart('arm', [], { way: { kind: 'assembly', plan: arm } }),
    aPart('base', offer),
    aPart('clamp', offer, { role: 'fixture', qty: { count: 1, at: here } }),
    aPart('forgotten', offer),
  ]
  const assembly = planOf(null, [put('arm', 2), put('bearing', 1, [['screw', 4]])], 'base')
  const bare = aProject({ devices: 3, vendors: [aVendor('shop')], parts, assembly })
  return { ...bare, demand: countDemand(bare.parts, assembly, 3, new Set(['clamp'])) }
}

describe('the structure', () => {
  it('multiplies quantities down the path and numbers each part at its first place', () => {
    const groups = partGroups(armed())
    const rows = groups[0]!.places.map((place) => [
      place.number,
      place.part.id,
      place.depth,
      place.perParent,
      place.perWhole,
      place.first,
    ])
    expect(rows).toEqual([
      [1, 'base', 1, 1, 1, true],
      [2, 'arm', 1, 2, 2, true],
      [3, 'bearing', 2, 1, 2, true],
      [4, 'screw', 2, 2, 4, true],
      [3, 'bearing', 1, 1, 1, false],
      [4, 'screw', 1, 4, 4, false],
    ])
    expect(groups.map(({ kind, places }) => [kind, places.map(({ part }) => part.id)]).slice(1)).toEqual([
      ['fixtures', ['clamp']],
      ['nobody', ['forgotten']],
    ])
  })

  it('adds over the places of a part to what one device and all devices need', () => {
    const project = armed()
    for (const [id, demand] of project.demand) {
      const places = partGroups(project).flatMap((group) => group.places.filter(({ part }) => part.id === id))
      const whole = places.reduce((sum, { perWhole }) => sum + perWhole, 0)
      if (demand.perDevice > 0) expect(whole).toBe(demand.perDevice)
      expect(places.filter(({ first }) => first)).toHaveLength(1)
    }
  })
})

describe('the cost column', () => {
  it('divides what a part is charged over its places and adds up to all that is charged', () => {
    const told = toldOf(armed())
    const live = new LiveModel([ordersSheet(told), moneySheet(told), partsSheet(told)])
    // 25 screws needed or spare come in packs of ten; 24 are built in: 24 x 0.33 = 7.92, half in the arms.
    expect(live.valueOf('part cost/screw/1')).toBe(3.96)
    expect(live.valueOf('part cost/screw/2')).toBeCloseTo(3.96, 12)
    const kinds = ['parts', 'device', 'work', 'cart'].map((kind) => Number(live.valueOf(`${kind} cost`)))
    const sum = kinds.reduce((a, b) => a + b, 0)
    expect(sum).toBeCloseTo(told.results.money.charged.known / 100, 9)
  })

  it('follows a price typed into the orders', () => {
    const told = toldOf(armed())
    const live = new LiveModel([ordersSheet(told), moneySheet(told), partsSheet(told)])
    live.type('price/screw', 0.5)
    expect(live.valueOf('part cost/screw/1')).toBe(6)
  })
})

describe('every live cell of the parts', () => {
  it('gives today what the money reckoned, and lists every part once in the counted numbers', () => {
    fc.assert(
      fc.property(fc.boolean().chain(projects), ({ project, tasks }) => {
        const told = toldOf(project, tasks)
        const sheet = partsSheet(told)
        expect(liveDifferences([ordersSheet(told), moneySheet(told), sheet])).toEqual([])
        const table = sheet.blocks.find(({ id }) => id === 'parts')!
        const counted = table.rows.filter(({ cells }) => cells[10] && heldBy(cells[10]) !== null)
        expect(counted.length).toBe(project.parts.size)
        const needed = counted.reduce((sum, { cells }) => sum + Number(heldBy(cells[10]!)), 0)
        expect(needed).toBe([...project.demand.values()].reduce((sum, each) => sum + each.needed, 0))
      }),
      { numRuns: 60 },
    )
  })
})
