import Fraction from 'fraction.js'
import { threePoint } from '../../../../src/base/three-point.ts'
import type { AssemblyPlan, Step } from '../../../../src/model/assembly.ts'
import type { After, Project, Target } from '../../../../src/model/project.ts'

export const here = { file: 'project.yaml', line: 1, column: 1, length: 0 }
/** Ordering reads the plan alone. */
export const noProject = {} as Project

const one = new Fraction(1)
const time = { ...threePoint(one, one, one), dims: '' as never, unit: 's', text: '1 s' }

export function step(id: string, facts: Partial<Step> = {}): Step {
  return {
    id,
    at: here,
    index: 0,
    attention: 'hands',
    who: [],
    people: 1,
    pausable: true,
    least: 15,
    put: null,
    instances: [],
    into: null,
    onto: null,
    method: null,
    light: false,
    lightSaid: false,
    mates: null,
    engagement: null,
    around: null,
    locker: false,
    fasteners: [],
    from: null,
    gives: null,
    turn: null,
    tool: null,
    fixture: null,
    machine: null,
    torque: null,
    adhesive: null,
    cure: null,
    time,
    timeAssumed: false,
    check: null,
    cautions: [],
    shuts: [],
    opens: [],
    test: null,
    action: null,
    needs: [],
    reaches: [],
    after: [],
    before: [],
    beforeLastOf: [],
    looseUntil: [],
    within: null,
    fails: null,
    rework: null,
    together: false,
    note: null,
    ...facts,
  }
}

export const put = (part: string) => ({ put: { part, count: 1, at: here } })
export const into = (body: string, through: string | null = null) => ({ into: { body, through, at: here } })
export const onto = (body: string) => ({ onto: { body, at: here } })
export const shuts = (body: string, ...names: string[]) => ({
  shuts: names.map((opening) => ({ body, opening, at: here })),
})
export const opens = (body: string, opening: string) => ({ opens: [{ body, opening, at: here }] })
export const toStep = (id: string): Target => ({ kind: 'step', assembly: null, id, at: here })
export const toPart = (id: string): Target => ({ kind: 'part', id, at: here })
export const toOpening = (body: string, opening: string): Target => ({
  kind: 'opening',
  assembly: null,
  body,
  opening,
  at: here,
})
export const waiting = (target: Target): After => ({ target, lag: { minutes: 0 }, within: null, at: here })

export function plan(steps: readonly Step[], openings: Record<string, string[]> = {}): AssemblyPlan {
  const numbered = steps.map((each, index) => ({ ...each, index }))
  return { of: null, at: here, openings: new Map(Object.entries(openings)), steps: numbered, ground: null }
}

export function ordersOf(ids: readonly string[]): string[][] {
  if (ids.length === 0) return [[]]
  return ids.flatMap((id) => ordersOf(ids.filter((other) => other !== id)).map((rest) => [id, ...rest]))
}
