import { describe, expect, it } from 'vitest'
import { type Random, seededRandom } from '../../../../src/base/random.ts'
import type { AssemblyPlan, JoiningMethod, Step } from '../../../../src/model/assembly.ts'
import { type OnHand, trialLeg } from '../../../../src/planning/assembly/trial-leg.ts'
import { into, onto, plan, put, shuts, step, toStep, waiting } from './bench-steps.ts'

const methods: readonly JoiningMethod[] = ['screw', 'seat', 'snap', 'glue']

function randomPlan(random: Random, size: number): AssemblyPlan {
  const pick = (count: number): number => Math.floor(random.next() * count)
  const steps = Array.from({ length: size }, (_, at): Step => {
    const body = at === 0 || pick(2) === 0 ? 'base' : `p${pick(at)}`
    return step(`s${at}`, {
      ...put(`p${at}`),
      ...(body === 'base' && pick(3) === 0 ? into('base') : onto(body)),
      method: methods[pick(methods.length)]!,
      ...(at > 0 && pick(4) === 0 ? shuts('base', 'top') : {}),
      ...(at > 0 && pick(3) === 0 ? { after: [waiting(toStep(`s${pick(at)}`))] } : {}),
    })
  })
  return { ...plan(steps, { base: ['top'] }), ground: 'base' }
}

/** Whether the steps of a set, on those done, go together as written and apart again with no joint destroyed. */
function goes({ steps }: AssemblyPlan, set: number, done: number, here: number): boolean {
  const isIn = (at: number): boolean => ((set | done) & (1 << at)) !== 0
  const tops = steps.flatMap(({ shuts: all }, at) => (all.length > 0 ? [at] : []))
  return steps.every((one, at) => {
    if ((set & (1 << at)) === 0) return true
    if (one.method === 'glue' || (here & (1 << at)) === 0 || (done & (1 << at)) !== 0) return false
    const { body } = (one.onto ?? one.into)!
    const stands = body === 'base' || isIn(steps.findIndex((other) => other.put!.part === body))
    const waits = one.after.every(({ target }) => target.kind === 'step' && isIn(Number(target.id.slice(1))))
    const open = one.into === null || tops.length === 0 || tops.some((top) => top >= at || !isIn(top))
    return stands && waits && open
  })
}

const bits = (set: number): number => set.toString(2).replaceAll('0', '').length

describe('the stretch of a trial fit', () => {
  it('is the longest of all sets of steps that go together, on 500 random assemblies', () => {
    const random = seededRandom(7)
    const draw = (size: number, chance: number): number =>
      Array.from({ length: size }, (_, at) => (random.next() < chance ? 1 << at : 0)).reduce(
        (a, b) => a | b,
        0,
      )
    let some = 0
    for (let seen = 0; seen < 500; ) {
      const size = 3 + (seen % 6)
      const device = randomPlan(random, size)
      // Those that cannot be built as written are no plan at all: something goes in after the last lid.
      const lids = device.steps.findLastIndex((one) => one.shuts.length > 0)
      if (lids >= 0 && device.steps.slice(lids + 1).some((one) => one.into)) continue
      seen++
      const here = draw(size, 0.8)
      // What is done is done from the first step on.
      const done = (1 << Math.floor(random.next() * 3)) - 1
      const hand: OnHand = {
        part: (part) => part === 'base' || (here & (1 << Number(part.slice(1)))) !== 0,
        tools: () => true,
        needs: () => true,
        stands: ({ index }) => ((done & (1 << index)) === 0 ? 'to come' : 'done'),
        couldBeDone: () => false,
      }
      const order = device.steps.map(({ id }) => id)
      const leg = trialLeg(device, order, [])(hand)
      const sets = Array.from({ length: 1 << size }, (_, set) => set).filter((set) =>
        goes(device, set, done, here),
      )
      const found = (leg?.steps ?? []).reduce((set, { index }) => set | (1 << index), 0)
      expect(goes(device, found, done, here)).toBe(true)
      expect(bits(found)).toBe(Math.max(...sets.map(bits)))
      if (bits(found) > 1) some++
    }
    expect(some).toBeGreaterThan(100)
  })
})
