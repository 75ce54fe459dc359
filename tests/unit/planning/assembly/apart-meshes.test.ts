import { describe, expect, it } from 'vitest'
import { seededRandom } from '../../../../src/base/random.ts'
import type { AssemblyPlan } from '../../../../src/model/assembly.ts'
import type { MeshMove, PlanMeshes } from '../../../../src/model/from-meshes.ts'
import { planApart } from '../../../../src/planning/assembly/plan-apart.ts'
import { assembled, bruteHarm, hasWayOut, mayUndo, randomMeshes, randomPlan } from './apart-brute.ts'
import { into, onto, plan, put, step } from './bench-steps.ts'

type Stops = Readonly<Record<number, readonly number[]>>

/** What a step brings: its body, and by direction of leaving the bodies that stop it; 9 is there from the start. */
const move = (name: string, body: number, stops: Stops, more: Partial<MeshMove> = {}): MeshMove => ({
  step: name,
  part: name,
  role: 'put',
  bodies: [body],
  seat: [],
  onto: [],
  tiltedFrom: [],
  stops: [0, 1, 2, 3, 4, 5].map((at) => (stops[at] ?? []).map((one) => ({ body: one, widthMm: 5 }))),
  ...more,
})
const meshes = (...moves: readonly MeshMove[]): PlanMeshes => ({
  of: null,
  there: [9],
  moves,
  tilted: [],
  constraints: [],
  typedAlone: [],
})
/** Walls all round and a floor. */
const inPot = { 0: [9], 1: [9], 2: [9], 3: [9], 5: [9] }
const undone = (device: AssemblyPlan, shapes: PlanMeshes, part: string) => {
  const way = planApart(assembled(device, {}, shapes), part).ways[0]!
  return way.legs.flatMap(({ undo }) => undo.map(({ step: { id } }) => id))
}

const core = step('core', { ...put('core'), ...into('pot'), method: 'seat' })
const cap = step('cap', { ...put('cap'), ...onto('pot'), method: 'thread' })

describe('the way to a part, past what the meshes say stops it', () => {
  const capped = meshes(move('core', 0, { ...inPot, 4: [1] }), move('cap', 1, { 5: [9, 0] }))

  it('takes the cap off first, and says why', () => {
    const device = plan([core, cap])
    expect(undone(device, capped, 'core')).toEqual(['cap', 'core'])
    const [first] = planApart(assembled(device, {}, capped), 'core').ways[0]!.legs[0]!.undo
    expect(first!.because).toMatchObject({ step: 'core', why: 'stops', sure: true })
    expect(first!.byWordsAlone).toBe(false)
  })

  it('leaves alone what went in after it by another way', () => {
    const tube = meshes(move('core', 0, { 0: [9], 1: [9], 2: [9], 3: [9], 4: [1] }), move('cap', 1, {}))
    expect(undone(plan([core, cap]), tube, 'core')).toEqual(['core'])
  })

  it('passes again what typed facts had it built past, and nothing that came later', () => {
    const lid = step('lid', { ...put('lid'), ...onto('cap'), method: 'screw' })
    const both = meshes(
      move('cap', 1, { 5: [9, 0] }),
      move('core', 0, { ...inPot, 4: [1, 2] }),
      move('lid', 2, { 5: [9, 0] }),
    )
    expect(undone(plan([cap, core, lid]), both, 'core')).toEqual(['lid', 'core'])
  })

  it('takes the one of two ends that does less harm', () => {
    const glued = step('glued', { ...put('foot'), ...onto('pot'), method: 'glue' })
    const tube = { 0: [9], 1: [9], 2: [9], 3: [9], 4: [1], 5: [2] }
    const ends = meshes(move('core', 0, tube), move('cap', 1, {}), move('glued', 2, {}))
    expect(undone(plan([core, cap, glued]), ends, 'core')).toEqual(['cap', 'core'])
  })

  it('lets a label come along with the cap it is glued on, but not where it covers its screw', () => {
    const label = step('label', { ...put('label'), ...onto('cap'), method: 'glue' })
    const stops = (screw: readonly number[]) =>
      meshes(
        move('core', 0, { ...inPot, 4: [1, 2] }),
        move('cap', 1, { 4: [2, 3], 5: [9, 0] }),
        move('cap', 3, { ...inPot, 4: screw }, { role: 'fastener' }),
        move('label', 2, { 5: [1] }),
      )
    const device = plan([core, cap, label])
    expect(undone(device, stops([]), 'core')).toEqual(['cap', 'core'])
    expect(undone(device, stops([2]), 'core')).toEqual(['label', 'cap', 'core'])
  })

  it('clears what stops that which stays joined to a part', () => {
    const arm = step('arm', { ...put('arm'), ...onto('pot'), method: 'seat' })
    const flag = step('flag', { ...put('flag'), ...onto('arm'), method: 'glue' })
    const post = step('post', { ...put('post'), ...onto('pot'), method: 'screw' })
    const shapes = meshes(
      move('arm', 0, inPot),
      move('flag', 1, { 4: [2], 5: [0] }, { seat: [0] }),
      move('post', 2, { 5: [9, 1] }),
    )
    expect(undone(plan([arm, flag, post]), shapes, 'arm')).toEqual(['post', 'arm'])
  })

  it('rests on typed facts for what has no mesh, and for what no straight move brings in', () => {
    const device = plan([core, cap])
    expect(undone(device, meshes(move('cap', 1, {})), 'core')).toEqual(['core'])
    const stuck = meshes(move('core', 0, { ...inPot, 4: [9, 1] }), move('cap', 1, {}))
    expect(undone(device, stuck, 'core')).toEqual(['core'])
  })
})

const sides = ['right', 'left', 'rear', 'front', 'top', 'bottom']

describe('the least harm with random meshes, against every set of steps', () => {
  it('is found and proved on 1,000 small devices, every part with a way out and back', () => {
    const random = seededRandom(20_261_129)
    let [seen, more] = [0, 0]
    for (let tries = 0; seen < 1000 && tries < 60_000; tries++) {
      const typed = randomPlan(random, 3 + (tries % 6))
      const steps = typed.steps.map((one) =>
        random.next() < 0.2 ? { ...one, from: sides[Math.floor(6 * random.next())]! } : one,
      )
      const device = { ...typed, steps }
      const shapes = randomMeshes(device, random)
      const target = Math.floor(random.next() * steps.length)
      const may = (at: number, gone: number): boolean =>
        mayUndo(device, at, gone) && hasWayOut(device, shapes, at, gone)
      const least = bruteHarm(device, target, may)
      if (least === null) continue
      seen++
      if (least.join() !== bruteHarm(device, target)!.join()) more++
      const given = assembled(device, {}, shapes)
      const way = planApart(given, `p${target}`).ways[0]!
      const { destroyed, care, steps: many } = way.harm
      expect([destroyed, care, many], JSON.stringify({ tries, target })).toEqual(least)
      expect(way.legs[0]!.proved).toBe(true)
      for (const legs of [way.legs, planApart(given, `p${target}`, 1).ways[0]!.legs]) {
        const { undo, back } = legs[0]!
        let gone = 0
        for (const { step: one } of undo) {
          expect(may(one.index, gone), JSON.stringify({ tries, target, out: one.id })).toBe(true)
          gone |= 1 << one.index
        }
        for (const { step: one, what } of back) {
          if (what !== 'again') continue
          gone &= ~(1 << one.index)
          expect(hasWayOut(device, shapes, one.index, gone), JSON.stringify({ tries, back: one.id })).toBe(
            true,
          )
        }
        expect(gone).toBe(0)
      }
    }
    expect(seen).toBe(1000)
    expect(more).toBeGreaterThan(200)
  })
})
