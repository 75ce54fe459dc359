import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { seededRandom } from '../../src/base/random.ts'
import { threePoint } from '../../src/base/three-point.ts'
import type { AssemblyPlan, Step } from '../../src/model/assembly.ts'
import { orderAssembly, usualEffort } from '../../src/planning/assembly/index.ts'
import { whyDisordered } from '../../src/verify/why-disordered.ts'
import {
  here,
  into,
  noProject,
  onto,
  opens,
  plan,
  put,
  shuts,
  step,
  toOpening,
  toStep,
  waiting,
} from '../unit/planning/assembly/bench-steps.ts'
import { layeredDevice } from '../unit/planning/assembly/layered-device.ts'
import { bestPlayed, playAll } from './bench-game.ts'

const random = seededRandom(1984)
const below = (count: number) => Math.floor(random.next() * count)
const pick = <T>(list: readonly T[]): T => list[below(list.length)]!
const one = (chance: number) => below(chance) === 0

const openings = { base: ['top', 'bottom'], p0: ['bore'], p1: ['left', 'right'] }
const bodies = Object.entries(openings)
const hour = new Fraction(3600)
const cure = { cure: { ...threePoint(hour, hour, hour), dims: '' as never, unit: 's', text: '1 h' } }

/** Each statement now and then; `base` lies there from the start, `p9` is put on it by several steps. */
function randomStep(k: number, size: number): Step {
  const [body, names] = pick(bodies)
  const where = pick([{}, onto(body), into(body), into(body), into(body, pick(names)), onto('p9')])
  const [shutBody, shutNames] = pick(bodies)
  const other = () => toStep(`s${below(size)}`)
  const copy = k > 1 && one(6)
  return step(`s${k}`, {
    ...(body === `p${k}` ? {} : where),
    ...put(`p${k}`),
    ...(copy ? { ...put('p9'), ...onto('base'), into: null } : {}),
    ...(one(5) ? shuts(shutBody, pick(shutNames)) : {}),
    ...(one(12) ? { after: [waiting(other())] } : {}),
    ...(one(14) ? { before: [pick([other(), toOpening('base', 'top')])] } : {}),
    ...(one(6) ? { beforeLastOf: [other(), toOpening('base', 'bottom')] } : {}),
    ...(one(16) ? { needs: [other()] } : {}),
    ...(one(9) ? { reaches: [{ text: pick(['p0', 'p1', 'p2', 'p9', 'base.top', 's1']), at: here }] } : {}),
    ...(one(14) ? { looseUntil: [other()] } : {}),
    ...(k > 0 && one(12) ? { within: 10 } : {}),
    ...(one(5) ? cure : {}),
    ...(one(5) ? { test: 'reads' } : {}),
    tool: one(3) ? null : { text: pick(['hex', 'press', 'hand']), resource: null },
  })
}

/** Every third case opens an opening again, between two steps that shut it. */
function randomCase(at: number): AssemblyPlan {
  const size = 2 + below(3) + below(4)
  const sides = pick([['from'], ['turn'], ['from', 'turn']] as const)
  const steps = Array.from({ length: size }, (_, k): Step => {
    const made = randomStep(k, size)
    return { ...made, ...Object.fromEntries(sides.map((side) => [side, pick(['up', 'down', 'side', null])])) }
  })
  if (at % 3 > 0 || size < 4) return plan(steps, openings)
  const reopened = steps.map((made, k): Step => {
    if (k === 0 || k === size - 1) return { ...made, ...shuts('base', 'top') }
    return k === size - 2 ? { ...made, ...opens('base', 'top'), shuts: [] } : { ...made, shuts: [] }
  })
  return plan(reopened, openings)
}

describe('a thousand small assemblies agree with all their orders played out at the bench', () => {
  const cases = Array.from({ length: 1000 }, (_, at) => {
    const of = randomCase(at)
    return { of, played: playAll(of), found: orderAssembly(of, noProject) }
  })

  test('the sample has many of each kind', () => {
    const possible = cases.filter(({ played }) => played.length > 0)
    expect(possible.length).toBeGreaterThan(300)
    expect(cases.length - possible.length).toBeGreaterThan(200)
    expect(possible.filter(({ played }) => played.length > 20).length).toBeGreaterThan(100)
    const forms = new Set(
      possible
        .filter(({ played }) => played.length > 1)
        .flatMap(({ found }) => found.constraints.map(({ form }) => form)),
    )
    expect(forms).toEqual(
      new Set(['presence', 'before', 'before last of', 'while open', 'while shut', 'not between']),
    )
  })

  test('an order is given where one exists, and only there, and all are counted', () => {
    for (const { of, played, found } of cases)
      expect([of.steps, found.order !== null, found.feasibleOrders]).toEqual([
        of.steps,
        played.length > 0,
        BigInt(played.length),
      ])
  })

  test('the order given costs least, and of equal ones is the nearest to the order written', () => {
    for (const { played, found } of cases) {
      const best = bestPlayed(played)
      expect(found.order).toEqual(best?.order ?? null)
      if (best) expect([found.turns, found.toolChanges]).toEqual(best.cost.slice(0, 2))
      if (best) expect([found.proved, found.nearest]).toEqual([true, true])
    }
  })

  test('every order given is accepted by the proof of orders', () => {
    for (const { of, found } of cases) if (found.order) expect(whyDisordered(of, found.order)).toBeNull()
  })

  test('every order that keeps the links may be played', () => {
    for (const { played, found } of cases) {
      if (!found.order || found.order.length > 5) continue
      const may = new Set(played.map(({ order }) => order.join()))
      for (const other of linked(found.order, found.links)) expect(may.has(other.join())).toBe(true)
    }
  })

  test('where there is none a conflict is shown, and its smallness proved', () => {
    for (const { found } of cases) {
      if (found.order) continue
      expect(found.conflict.length).toBeGreaterThan(0)
      expect([found.proved, found.minimal, found.smallest]).toEqual([true, true, true])
    }
  })
})

/** All orders of these steps that keep the links. */
function linked(
  ids: readonly string[],
  links: readonly { readonly before: string; readonly after: string }[],
): readonly string[][] {
  if (ids.length === 0) return [[]]
  return ids
    .filter((id) => !links.some(({ before, after }) => after === id && ids.includes(before)))
    .flatMap((id) =>
      linked(
        ids.filter((other) => other !== id),
        links,
      ).map((rest) => [id, ...rest]),
    )
}

describe('two hundred layered devices', () => {
  const devices = Array.from({ length: 200 }, (_, seed) => layeredDevice({ steps: 6 + (seed % 19), seed }))

  test('go together in an order that the proof of orders accepts', () => {
    for (const device of devices) {
      const { order, proved } = orderAssembly(device, noProject, { ...usualEffort, counted: 0 })
      expect([order === null, proved]).toEqual([false, true])
      expect(whyDisordered(device, order!)).toBeNull()
    }
  })

  test('go together in the same order whatever their steps are called, and the same each time', () => {
    const called = (text: string) =>
      `step ${(Number(text.replace(/\D/g, '') || 7) * 37) % 101} of ${text.length}${text}`
    for (const device of devices.filter(({ steps }) => steps.length <= 14).slice(0, 60)) {
      const first = orderAssembly(device, noProject)
      const again = orderAssembly(renamed(device, called), noProject)
      expect(again.order).toEqual(first.order!.map(called))
      const text = (of: AssemblyPlan) =>
        JSON.stringify(orderAssembly(of, noProject), (_, value) =>
          typeof value === 'bigint' ? `${value}` : value,
        )
      expect(text(device)).toBe(text(device))
      expect(again.feasibleOrders).toBe(first.feasibleOrders)
    }
  })
})

function renamed(of: AssemblyPlan, called: (id: string) => string): AssemblyPlan {
  const steps = of.steps.map((made) => ({
    ...made,
    id: called(made.id),
    after: made.after.map((one) =>
      one.target.kind === 'step' ? { ...one, target: { ...one.target, id: called(one.target.id) } } : one,
    ),
  }))
  return { ...of, steps }
}
