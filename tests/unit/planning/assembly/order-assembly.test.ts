import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { seededRandom } from '../../../../src/base/random.ts'
import type { AssemblyPlan, Step } from '../../../../src/model/assembly.ts'
import { benchPlan } from '../../../../src/planning/assembly/bench-plan.ts'
import { countOrders, orderAssembly, orderConstraints } from '../../../../src/planning/assembly/index.ts'
import { ruleCompiler } from '../../../../src/planning/assembly/rules-of.ts'
import { whyDisordered } from '../../../../src/verify/why-disordered.ts'
import {
  here,
  into,
  noProject,
  onto,
  opens,
  ordersOf,
  plan,
  put,
  shuts,
  step,
  toOpening,
  toPart,
  toStep,
  waiting,
} from './bench-steps.ts'

const forms = (of: AssemblyPlan) =>
  orderConstraints(of).constraints.map((one) => {
    if (one.form === 'presence') return `${one.step} needs ${one.needs.join('|')}`
    if (one.form === 'before' || one.form === 'before last of')
      return `${one.step} ${one.form} ${one.of.join(' ')}`
    if (one.form === 'not between') return `${one.step} not between ${one.from} ${one.until}`
    return `${one.step} ${one.form} ${one.body}`
  })
const kept = (of: AssemblyPlan) =>
  ordersOf(of.steps.map(({ id }) => id)).filter((order) => !whyDisordered(of, order))
const counted = (of: AssemblyPlan) => {
  const compile = ruleCompiler(benchPlan(of))
  return countOrders(of.steps.length, orderConstraints(of).constraints.flatMap(compile))
}

describe('statements become constraints', () => {
  const lids = [
    step('lid', { ...put('lid'), ...onto('base'), ...shuts('base', 'top') }),
    step('floor', { ...put('floor'), ...onto('base'), ...shuts('base', 'bottom') }),
  ]
  const base = { base: ['top', 'bottom'] }

  test('what goes in comes before the last of the steps that shut the ways in', () => {
    expect(forms(plan([step('pin', { ...put('pin'), ...into('base') }), ...lids], base))).toEqual([
      'pin before last of lid floor',
    ])
  })

  test('`through` names the one way in', () => {
    expect(forms(plan([step('pin', { ...put('pin'), ...into('base', 'top') }), ...lids], base))).toEqual([
      'pin before last of lid',
    ])
  })

  test('the step that shuts the last way in may itself go in', () => {
    const plug = step('plug', { ...put('plug'), ...into('base', 'top'), ...shuts('base', 'top') })
    expect(forms(plan([plug], { base: ['top'] }))).toEqual([])
  })

  test('a way in that nothing shuts is told and asks nothing', () => {
    const open = plan([step('pin', { ...put('pin'), ...into('base', 'top') })], base)
    expect(forms(open)).toEqual([])
    expect(orderConstraints(open).void).toMatchObject([
      { step: 'pin', body: 'base', opening: 'top', why: 'through' },
    ])
  })

  test('what goes into a body passes what that body was put in, but not what is around a body it was put on', () => {
    const inner = (where: Partial<Step>) =>
      plan(
        [
          step('cup', { ...put('cup'), ...where }),
          step('pin', { ...put('pin'), ...into('cup') }),
          step('lid', { ...put('lid'), ...shuts('base', 'top') }),
        ],
        { base: ['top'] },
      )
    expect(forms(inner(into('base')))).toEqual([
      'cup before last of lid',
      'pin needs cup',
      'pin before last of lid',
    ])
    expect(forms(inner(onto('base')))).toEqual(['pin needs cup'])
  })

  test('of two copies one is enough to touch it, and each enclosure counts from when its copy is put', () => {
    const two = plan(
      [
        step('cup 1', { ...put('cup'), ...into('base') }),
        step('cup 2', { ...put('cup'), ...onto('base') }),
        step('pin', { ...put('pin'), ...into('cup') }),
        step('lid', { ...put('lid'), ...shuts('base', 'top') }),
      ],
      { base: ['top'] },
    )
    expect(forms(two)).toEqual([
      'cup 1 before last of lid',
      'pin needs cup 1|cup 2',
      'pin before last of lid cup 1',
    ])
  })

  test('an opening stands for the steps that shut it, a part for all the steps that put it', () => {
    const mark = step('mark', { before: [toOpening('base', 'top')], needs: [toPart('floor')] })
    const trim = step('trim', { beforeLastOf: [toOpening('base', 'top'), toOpening('base', 'bottom')] })
    expect(forms(plan([...lids, mark, trim], base))).toEqual([
      'floor before mark',
      'mark before lid',
      'trim before last of lid floor',
    ])
  })

  test('what must be reached is there, and its way in is open', () => {
    const pin = step('pin', { ...put('pin'), ...into('base', 'top') })
    const reach = step('trim', {
      reaches: [
        { text: 'pin', at: here },
        { text: 'the sky', at: here },
      ],
    })
    expect(forms(plan([pin, reach, ...lids], base))).toEqual([
      'pin before last of lid',
      'trim needs pin',
      'trim before last of lid',
    ])
  })
})

describe('the order of an assembly', () => {
  test('a plan in two attitudes is turned over once, and keeps the order written within each', () => {
    const of = plan([
      step('a', { from: 'top' }),
      step('b', { from: 'bottom' }),
      step('c', { from: 'top', after: [waiting(toStep('a'))] }),
      step('d', { from: 'bottom' }),
    ])
    const found = orderAssembly(of, noProject)
    expect(found).toMatchObject({ order: ['a', 'c', 'b', 'd'], turns: 1, proved: true })
    expect(found.links.map(({ before, after: then }) => [before, then])).toEqual([['a', 'c']])
  })

  test('a test comes early where nothing else is at stake', () => {
    const of = plan([step('a'), step('b'), step('c', { test: 'reads' })])
    expect(orderAssembly(of, noProject).order).toEqual(['c', 'a', 'b'])
  })

  test('something may go in while a cover is lifted', () => {
    const of = plan(
      [
        step('cover', { ...put('cover'), ...onto('base'), ...shuts('base', 'top') }),
        step('lift', { ...opens('base', 'top'), after: [waiting(toStep('cover'))] }),
        step('pin', { ...put('pin'), ...into('base'), after: [waiting(toStep('cover'))] }),
        step('close', { action: 'close', ...shuts('base', 'top') }),
      ],
      { base: ['top'] },
    )
    const found = orderAssembly(of, noProject)
    expect(found.order).toEqual(['cover', 'lift', 'pin', 'close'])
    expect(whyDisordered(of, found.order!)).toBeNull()
  })

  test('steps that wait for each other are shown as the ring they form', () => {
    const of = plan([
      step('a', { after: [waiting(toStep('c'))] }),
      step('b', { after: [waiting(toStep('a'))] }),
      step('c', { after: [waiting(toStep('b'))] }),
      step('d'),
    ])
    const found = orderAssembly(of, noProject)
    expect(found).toMatchObject({ order: null, ring: ['a', 'b', 'c'], minimal: true, proved: true })
    expect(found.conflict.map(({ step: id }) => id)).toEqual(['c', 'a', 'b'])
  })

  test('a step that names itself waits for itself', () => {
    expect(orderAssembly(plan([step('a', { before: [toStep('a')] })]), noProject).ring).toEqual(['a'])
  })
})

describe('what only lies in place', () => {
  const loose = { ...put('ring'), ...into('cup'), looseUntil: [toStep('cap')] }
  const cap = step('cap', { ...put('cap'), ...onto('cup'), turn: 'mouth up' })

  test('is put before what fastens it, and nothing turns the work over in between', () => {
    const of = plan([step('ring', { ...loose, turn: 'mouth up' }), step('foot', { turn: 'foot up' }), cap])
    expect(forms(of)).toEqual(['ring before cap', 'foot not between ring cap'])
    expect(orderAssembly(of, noProject)).toMatchObject({ order: ['ring', 'cap', 'foot'], feasibleOrders: 2n })
    expect(whyDisordered(of, ['ring', 'foot', 'cap'])).toContain('while what `ring` put lies loose')
    expect(whyDisordered(of, ['cap', 'ring', 'foot'])).toContain('against `loose_until`')
  })

  test('lies as what fastens it says where it is silent itself, and steps that say nothing turn nothing over', () => {
    const of = plan([
      step('ring', loose),
      step('wipe', { action: 'wipe' }),
      step('pin', { turn: 'Mouth up ' }),
      step('foot', { from: 'below' }),
      cap,
    ])
    expect(forms(of)).toEqual(['ring before cap', 'foot not between ring cap'])
  })

  test('cannot be fastened after the work must be turned over for it', () => {
    const foot = step('foot', {
      turn: 'foot up',
      after: [waiting(toStep('ring'))],
      before: [toStep('cap')],
    })
    const of = plan([step('ring', { ...loose, turn: 'mouth up' }), foot, cap])
    const { order, conflict, smallest } = orderAssembly(of, noProject)
    expect([order, smallest]).toEqual([null, true])
    expect(conflict.map(({ why }) => why).sort()).toEqual(['after', 'before', 'loose_until'])
  })
})

test('nothing that cures for longer than a step may wait comes between it and the step it follows', () => {
  const cure = { cure: { ...step('x').time, mean: new Fraction(7200) } }
  const of = plan([
    step('wipe', { action: 'wipe', ...onto('base') }),
    step('glue plate', { ...put('plate'), ...onto('base'), within: 30 }),
    step('glue foot', { ...put('foot'), ...onto('base'), ...cure }),
    step('glue lid', { ...put('lid'), ...onto('box'), ...cure }),
  ])
  expect(forms(of)).toEqual(['wipe before glue plate', 'glue foot not between wipe glue plate'])
  expect(orderAssembly(of, noProject).feasibleOrders).toBe(8n)
  expect(whyDisordered(of, ['wipe', 'glue foot', 'glue plate', 'glue lid'])).toContain('within 30 min')
})

describe('plans at random agree with the proof of orders, which shares no code with the planner', () => {
  const random = seededRandom(7)
  const below = (count: number) => Math.floor(random.next() * count)
  const pick = <T>(list: readonly T[]): T => list[below(list.length)]!
  const openings = { base: ['top', 'bottom'], p0: ['bore'], p1: ['left', 'right'] }
  const bodies = Object.entries(openings)

  /** Each part is put once. */
  const randomStep = (k: number, size: number, reopen: boolean): Step => {
    const [body, names] = pick(bodies)
    const where = pick([{}, onto(body), into(body), into(body), into(body, pick(names))])
    const [shutBody, shutNames] = pick(bodies)
    const other = toStep(`s${below(size)}`)
    return step(`s${k}`, {
      ...(body === `p${k}` ? {} : where),
      ...put(`p${k}`),
      ...(below(3) === 0 ? shuts(shutBody, pick(shutNames)) : {}),
      ...(reopen ? opens('base', 'top') : {}),
      ...(below(7) === 0 ? { after: [waiting(other)] } : {}),
      ...(below(8) === 0 ? { before: [pick([other, toOpening('base', 'top')])] } : {}),
      ...(below(5) === 0 ? { beforeLastOf: [other, toOpening('base', 'bottom')] } : {}),
      ...(below(5) === 0 ? { reaches: [{ text: pick(['p0', 'p1', 'p2', 'base.top']), at: here }] } : {}),
      ...(k > 0 && below(8) === 0 ? { within: 10 } : {}),
      from: pick(['top', 'bottom', null]),
    })
  }
  /** Where openings are opened again, the first step shuts the one that the last opens, so that orders exist often. */
  const randomPlan = (reopen: boolean): AssemblyPlan => {
    const size = 3 + below(3)
    const steps = Array.from({ length: size }, (_, k) => randomStep(k, size, reopen && k === size - 1))
    const [first, ...rest] = steps
    return plan(reopen ? [{ ...first!, ...shuts('base', 'top') }, ...rest] : steps, openings)
  }
  const plain = Array.from({ length: 600 }, () => randomPlan(false))

  test('exactly as many orders are kept', () => {
    for (const of of plain) expect([of, counted(of)]).toEqual([of, BigInt(kept(of).length)])
    expect(plain.filter((of) => kept(of).length > 1).length).toBeGreaterThan(100)
  })

  test('an order is given where there is one, and every order that keeps its links is proved', () => {
    for (const of of plain) {
      const { order, links } = orderAssembly(of, noProject)
      expect(order === null).toBe(kept(of).length === 0)
      if (order === null) continue
      for (const other of ordersOf(order)) {
        const linked = links.every(({ before, after: then }) => other.indexOf(before) < other.indexOf(then))
        if (linked) expect(whyDisordered(of, other)).toBeNull()
      }
    }
  })

  test('with openings opened again, every order given is proved, and so is any that keeps its links', () => {
    let given = 0
    for (let k = 0; k < 400; k++) {
      const of = randomPlan(true)
      const { order, links } = orderAssembly(of, noProject)
      if (order === null) continue
      given++
      expect(whyDisordered(of, order)).toBeNull()
      for (const other of ordersOf(order)) {
        const linked = links.every(({ before, after: then }) => other.indexOf(before) < other.indexOf(then))
        if (linked) expect(whyDisordered(of, other)).toBeNull()
      }
    }
    expect(given).toBeGreaterThan(50)
  })
})
