import { describe, expect, it } from 'vitest'
import { type Random, seededRandom } from '../../../../src/base/random.ts'
import type { AssemblyOrder, AssemblyPlan, JoiningMethod, Step } from '../../../../src/model/assembly.ts'
import type { Part, Project, Target } from '../../../../src/model/project.ts'
import type { RepairWay } from '../../../../src/model/repair.ts'
import { planApart } from '../../../../src/planning/assembly/plan-apart.ts'
import { into, onto, opens, plan, put, shuts, step, toStep, waiting } from './bench-steps.ts'

/** A project of the device and parts of kind assembly, each built in the order as written. */
function assembled(device: AssemblyPlan, subs: Readonly<Record<string, AssemblyPlan>> = {}) {
  const parts = new Map(
    Object.entries(subs).map(([id, sub]) => [
      id,
      { id, way: { kind: 'assembly', plan: { ...sub, of: id } } } as unknown as Part,
    ]),
  )
  const project = { parts, assembly: device, demand: new Map() } as unknown as Project
  const orders = new Map(
    [device, ...[...parts.values()].flatMap(({ way }) => (way.kind === 'assembly' ? [way.plan] : []))].map(
      (one) => [one.of ?? '', { order: one.steps.map(({ id }) => id) } as unknown as AssemblyOrder],
    ),
  )
  return { project, orders, joins: [] }
}

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

const methods: readonly JoiningMethod[] = ['screw', 'seat', 'snap', 'glue', 'press', 'plug']

/** Steps that put `p0`, `p1`, ... on or into the base or one another; some shut an opening, some come after others. */
function randomPlan(random: Random, size: number): AssemblyPlan {
  const pick = (count: number): number => Math.floor(random.next() * count)
  const openings = { base: ['top', 'bottom'], p0: ['side'] }
  const steps = Array.from({ length: size }, (_, at): Step => {
    const body = at === 0 || pick(2) === 0 ? 'base' : `p${pick(at)}`
    const inside = body === 'base' || body === 'p0' ? pick(2) === 0 : false
    const shut =
      pick(3) > 0 ? {} : pick(4) === 0 ? shuts('p0', 'side') : shuts('base', pick(2) === 0 ? 'top' : 'bottom')
    return step(`s${at}`, {
      ...put(`p${at}`),
      ...(inside ? into(body, body === 'base' && pick(3) === 0 ? 'top' : null) : onto(body)),
      ...by(methods[pick(methods.length)]!, pick(2) === 0),
      ...shut,
      ...(at > 0 && pick(3) === 0 ? { after: [waiting(toStep(`s${pick(at)}`))] } : {}),
    })
  })
  return plan(steps, openings)
}

const costs: Readonly<Record<string, number>> = { glue: 2, press: 2, snap: 1 }
const costOf = ({ method, light }: Step): number =>
  method === 'press' && light ? 1 : (costs[method ?? ''] ?? 0)

/** The rules of undoing told once more, straight from the steps; the order of building is as written. */
function mayUndo({ steps, openings }: AssemblyPlan, at: number, gone: number): boolean {
  const one = steps[at]!
  const part = `p${at}`
  const there = (other: number): boolean => (gone & (1 << other)) === 0
  const bodyOf = (each: Step): string => (each.onto ?? each.into)!.body
  const blocked = steps.some((later, other) => {
    if (other <= at || !there(other)) return false
    if (costOf(later) === 2 && bodyOf(later) === part) return false
    const waits = later.after.some(({ target }) => target.kind === 'step' && target.id === one.id)
    return waits || bodyOf(later) === part || later.shuts.some(({ body }) => body === part)
  })
  const isOpen = (body: string, opening: string): boolean => {
    const shutting = steps.flatMap(({ shuts: all }, other) =>
      all.some((each) => each.body === body && each.opening === opening) ? [other] : [],
    )
    return shutting.length === 0 || shutting.some((other) => other === at || !there(other))
  }
  const passable = (body: string, through: string | null): boolean => {
    const names = through === null ? (openings.get(body) ?? []) : [through]
    const around = steps.findIndex(({ put: each }) => each?.part === body)
    const outside = around >= 0 && around < at ? steps[around]!.into : null
    return (
      (names.length === 0 || names.some((name) => isOpen(body, name))) &&
      (outside === null || passable(outside.body, null))
    )
  }
  return !blocked && (one.into === null || passable(one.into.body, one.into.through))
}

/** Least harm over every set of steps that can be undone one by one; `null`: the way as written cannot be built. */
function bruteHarm(device: AssemblyPlan, target: number): readonly number[] | null {
  const { steps } = device
  const all = (1 << steps.length) - 1
  const laterThan = (at: number): number => all & ~((1 << (at + 1)) - 1)
  if (!steps.every((_, at) => mayUndo(device, at, laterThan(at)))) return null
  const reachable = new Set([0])
  for (const gone of reachable)
    for (const [at] of steps.entries())
      if ((gone & (1 << at)) === 0 && mayUndo(device, at, gone)) reachable.add(gone | (1 << at))
  const harms = [...reachable]
    .filter((gone) => (gone & (1 << target)) !== 0)
    .map((gone) => {
      const undo = steps.filter((_, at) => (gone & (1 << at)) !== 0)
      return [2, 1].map((cost) => undo.filter((one) => costOf(one) === cost).length).concat(undo.length)
    })
  return harms.sort((a, b) => a[0]! - b[0]! || a[1]! - b[1]! || a[2]! - b[2]!)[0]!
}

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
