import { describe, expect, it } from 'vitest'
import { seededRandom } from '../../../../src/base/random.ts'
import type { AssemblyPlan, JoiningMethod } from '../../../../src/model/assembly.ts'
import type { Target } from '../../../../src/model/project.ts'
import type { RepairWay } from '../../../../src/model/repair.ts'
import { planApart } from '../../../../src/planning/assembly/plan-apart.ts'
import { assembled, bruteHarm, mayUndo, randomPlan } from './apart-brute.ts'
import { into, onto, opens, plan, put, shuts, step, toStep, waiting } from './bench-steps.ts'

const wayTo = (
  device: AssemblyPlan,
  part: string,
  subs?: Readonly<Record<string, AssemblyPlan>>,
): RepairWay => planApart(assembled(device, subs), part).ways[0]!
const undone = (way: RepairWay): readonly string[] =>
  way.legs.flatMap(({ undo }) => undo.map(({ step: { id } }) => id))
const backOf = (way: RepairWay): readonly string[] =>
  [...way.legs].reverse().flatMap(({ back }) => back.map(({ step: { id }, what }) => `${what} ${id}`))
const by = (method: JoiningMethod, light = false) => ({ method, light, lightSaid: light })

const box = { base: ['top', 'bottom'] }

describe('the way to a part', () => {
  it('opens the lid that does the least harm, whichever it went in by', () => {
    const device = plan(
      [
        step('fill', { ...put('pin'), ...into('base'), ...by('seat') }),
        step('foot', { ...put('plate'), ...onto('base'), ...by('screw'), ...shuts('base', 'bottom') }),
        step('lid', { ...put('lid'), ...onto('base'), ...by('glue'), ...shuts('base', 'top') }),
      ],
      box,
    )
    expect(undone(wayTo(device, 'pin'))).toEqual(['foot', 'fill'])
    expect(wayTo(device, 'pin').harm).toEqual({ destroyed: 0, care: 0, steps: 2 })
  })

  it('destroys one joint rather than none where one opening is the only one, and says why', () => {
    const device = plan(
      [
        step('fill', { ...put('pin'), ...into('base'), ...by('seat') }),
        step('lid', { ...put('lid'), ...onto('base'), ...by('glue'), ...shuts('base', 'top') }),
      ],
      { base: ['top'] },
    )
    const [first] = wayTo(device, 'pin').legs[0]!.undo
    expect(first).toMatchObject({ cost: 'destroyed', because: { step: 'fill', why: 'way out' } })
  })

  it('lets what is glued to a part come along, and unscrews what is screwed to it', () => {
    const device = plan([
      step('arm', { ...put('arm'), ...onto('base'), ...by('screw') }),
      step('label', { ...put('label'), ...onto('arm'), ...by('glue') }),
      step('lamp', { ...put('lamp'), ...onto('arm'), ...by('screw') }),
    ])
    const way = wayTo(device, 'arm')
    expect(undone(way)).toEqual(['lamp', 'arm'])
    expect(way.legs[0]!.undo.at(-1)!.along).toEqual(['label'])
  })

  it('marks what only the words of order ask for', () => {
    const device = plan([
      step('lid', { ...put('lid'), ...onto('base'), ...by('screw') }),
      step('feet', {
        ...put('foot'),
        ...onto('base'),
        ...by('glue'),
        after: [waiting(toStep('lid'))],
      }),
    ])
    expect(wayTo(device, 'lid').legs[0]!.undo.map(({ byWordsAlone }) => byWordsAlone)).toEqual([true, false])
  })

  it('takes a subassembly out whole, then takes it apart by itself, and offers to leave it where it stands', () => {
    const head = plan([
      step('seal', { ...put('seal'), ...onto('body'), ...by('seat') }),
      step('nut', {
        ...put('nut'),
        ...onto('body'),
        ...by('thread'),
        after: [waiting({ ...toStep('seal'), assembly: 'head' } as Target)],
      }),
    ])
    const device = plan([
      step('head', { ...put('head'), ...onto('base'), ...by('screw') }),
      step('cover', { ...put('cover'), ...onto('base'), ...by('glue'), after: [waiting(toStep('head'))] }),
    ])
    const way = wayTo(device, 'seal', { head })
    expect(undone(way)).toEqual(['cover', 'head', 'nut', 'seal'])
    expect(way.inPlace?.legs.flatMap(({ undo }) => undo.map(({ step: { id } }) => id))).toEqual([
      'nut',
      'seal',
    ])
  })

  it('goes back the other way round, with the wipe before the glue and the test as early as it can be', () => {
    const device = plan([
      step('wipe', { action: 'wipe both faces' }),
      step('pin', { ...put('pin'), ...onto('base'), ...by('glue'), within: 15 }),
      step('spin', { test: 'spins', after: [waiting(toStep('pin'))] }),
      step('other', { test: 'rings', after: [] }),
      step('cap', { ...put('cap'), ...onto('pin'), ...by('snap') }),
    ])
    expect(backOf(wayTo(device, 'pin'))).toEqual(['prepare wipe', 'again pin', 'repeat spin', 'again cap'])
  })

  it('takes a lid that was lifted again for what it is: shut once', () => {
    const device = plan(
      [
        step('fill', { ...put('pin'), ...into('base'), ...by('seat') }),
        step('first', { ...put('lid'), ...onto('base'), ...by('screw'), ...shuts('base', 'top') }),
        step('lift', { action: 'lift the lid', ...opens('base', 'top') }),
        step('again', { action: 'screw the lid on', ...by('screw'), ...shuts('base', 'top') }),
      ],
      { base: ['top'] },
    )
    expect(undone(wayTo(device, 'pin'))).toEqual(['again', 'fill'])
  })

  it('bares the body that the rest is on by undoing everything', () => {
    const device = { ...randomPlan(seededRandom(3), 6), ground: 'base' }
    expect(wayTo(device, 'base').harm.steps).toBe(6)
  })

  it('is no way at all to what no step puts', () => {
    expect(planApart(assembled(plan([])), 'pin').ways).toEqual([])
  })
})

describe('the least harm, against every set of steps', () => {
  it('is found and proved on 1,000 random small devices, and an ended effort is never better', () => {
    const random = seededRandom(20_260_302)
    let seen = 0
    let choices = 0
    for (let tries = 0; seen < 1000 && tries < 60_000; tries++) {
      const device = randomPlan(random, 3 + (tries % 6))
      const target = Math.floor(random.next() * device.steps.length)
      const least = bruteHarm(device, target)
      if (least === null) continue
      seen++
      if (least[2]! > 1) choices++
      const given = assembled(device)
      const way = planApart(given, `p${target}`).ways[0]!
      const said = ({ destroyed, care, steps }: RepairWay['harm']) => [destroyed, care, steps]
      expect(said(way.harm), JSON.stringify({ tries, target })).toEqual(least)
      expect(way.legs[0]!.proved).toBe(true)
      const rough = planApart(given, `p${target}`, 1).ways[0]!
      const order = rough.legs[0]!.undo.map(({ step: { index } }) => index)
      let gone = 0
      for (const at of order) {
        expect(mayUndo(device, at, gone)).toBe(true)
        gone |= 1 << at
      }
      expect(rough.harm.destroyed).toBeGreaterThanOrEqual(least[0]!)
      expect(rough.legs[0]!.proved).toBe(false)
    }
    expect(seen).toBe(1000)
    expect(choices).toBeGreaterThan(300)
  })
})
