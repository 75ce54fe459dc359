import Fraction from 'fraction.js'
import { instantOf, parseDay, parseTimeOfDay } from '../../../src/base/clock.ts'
import { threePoint } from '../../../src/base/three-point.ts'
import type {
  DayPattern,
  DaySpan,
  Hours,
  Machine,
  Person,
  Project,
  Vendor,
} from '../../../src/model/project.ts'
import type { PlanSchedule, ScheduledTask } from '../../../src/model/schedule.ts'
import type { PlanTask, Subject, TaskLink, TaskNetwork } from '../../../src/model/tasks.ts'

export const here = { file: 'project.yaml', line: 1, column: 1, length: 0 }
export const zero = new Fraction(0)
const noSubject: Subject = {
  part: null,
  work: null,
  cart: null,
  plate: null,
  assembly: null,
  step: null,
  lot: null,
  device: null,
  routeStep: null,
}

/** `2026-02-02 19:40` as an instant. */
export function at(text: string): number {
  const [day, clock] = text.split(' ')
  return instantOf(parseDay(day!)!, parseTimeOfDay(clock!)!)
}

/** `0 19:30-22:30` per open span: weekday numbers (0 Monday) and clock times, ranges of days as `0-3`. */
export function hours(...lines: string[]): Hours {
  const weekly: DaySpan[][] = Array.from({ length: 7 }, () => [])
  for (const line of lines) {
    const [days, spans] = [line.split(' ')[0]!, line.split(' ').slice(1)]
    const [first, last] = [Number(days.split('-')[0]), Number(days.split('-').at(-1))]
    for (let day = first; day <= last; day++) weekly[day]!.push(...spans.map(daySpan))
  }
  return { weekly, off: [], extra: new Map() }
}

export function pattern(days: string): DayPattern {
  return { weekly: [...days].map((mark) => mark !== '-'), off: [] }
}

export function person(id: string, open: Hours | null, setUp = 0, cleanUp = 0): Person {
  return { id, at: here, hours: open, rate: zero, setUp, cleanUp }
}

export function machine(id: string, open: Hours | null, capacity = 1, users: string[] = []): Machine {
  return {
    id,
    at: here,
    hours: open,
    rate: zero,
    capacity,
    users,
    travel: null,
    spindle: new Map(),
    numbers: new Map(),
    prints: null,
    deposits: null,
    bed: null,
    bottomLayers: null,
    note: null,
  }
}

export function vendor(id: string, facts: Partial<Vendor> = {}): Vendor {
  const none = { ...threePoint(zero, zero, zero), dims: '' as never, unit: 'wd', text: '0 wd' }
  return {
    id,
    at: here,
    days: pattern('MTWTF--'),
    cutoff: 720,
    post: 1080,
    transit: none,
    carrier: pattern('MTWTF--'),
    currency: 'EUR',
    freight: null,
    freeOver: null,
    minimumOrder: null,
    clearance: null,
    duty: zero,
    tax: zero,
    order: none,
    receive: none,
    url: null,
    ...facts,
  }
}

export function project(facts: Partial<Project> = {}): Project {
  return {
    file: 'project.yaml',
    fingerprint: '',
    device: {
      at: here,
      name: 'Stirrer',
      revision: null,
      description: null,
      qty: 1,
      currency: 'EUR',
      general: null,
      start: parseDay('2026-02-02')!,
      wanted: null,
    },
    limits: { cash: null, mass: null, envelope: null },
    exchange: new Map(),
    people: new Map(),
    machines: new Map(),
    tools: new Map(),
    cutters: new Map(),
    materials: new Map(),
    vendors: new Map(),
    plates: new Map(),
    work: new Map(),
    parts: new Map(),
    assembly: null,
    chains: new Map(),
    demand: new Map(),
    meshes: [],
    ...facts,
  }
}

export function task(id: string, minutes: number, facts: Partial<PlanTask> = {}): PlanTask {
  return {
    id,
    title: id,
    kind: 'hand',
    at: here,
    subject: noSubject,
    minutes,
    likelyMinutes: minutes,
    time: null,
    attention: 'hands',
    who: ['ana', 'bob'],
    people: 1,
    pausable: true,
    least: 15,
    machine: null,
    takesMachine: false,
    tools: [],
    fixtures: [],
    machineMinutes: 0,
    handsMinutes: 0,
    release: 0,
    delivery: null,
    ...facts,
  }
}

export function link(from: string, to: string, facts: Partial<TaskLink> = {}): TaskLink {
  return { from, to, lag: { minutes: 0 }, within: null, at: here, why: 'route', ...facts }
}

/** A task done by `people` in pieces of two instants each: `2026-02-02 19:40`, `2026-02-02 20:00`, ... */
export function placed(id: string, people: string[], ...times: string[]): ScheduledTask {
  const instants = times.map(at)
  const pieces = instants.flatMap((open, i) => (i % 2 === 0 ? [{ open, close: instants[i + 1]! }] : []))
  const [start, finish] = [instants[0]!, instants.at(-1)!]
  return { ...blank, id, people, pieces, start, finish }
}

/** A task without pieces, from one instant to another. */
export function waiting(id: string, start: string, finish = start): ScheduledTask {
  return { ...blank, id, people: [], pieces: [], start: at(start), finish: at(finish) }
}

export function schedule(tasks: readonly ScheduledTask[]): PlanSchedule {
  return {
    finish: Math.max(...tasks.map(({ finish }) => finish)),
    tasks: new Map(tasks.map((one) => [one.id, one])),
    drivingChain: [],
    criticalChains: [],
    criticalChainCount: 0n,
    lowerBound: 0,
    schedulesTried: 1,
  }
}

export function network(tasks: readonly PlanTask[], facts: Partial<TaskNetwork> = {}): TaskNetwork {
  return { tasks, links: [], holds: [], fixtures: new Map(), ready: new Map(), ...facts }
}

const blank = {
  latestStart: 0,
  latestAlone: 0,
  latestFinish: 0,
  earlyStart: 0,
  earlyFinish: 0,
  lateStart: 0,
  lateFinish: 0,
  float: 0,
  freeFloat: 0,
  critical: false,
}

function daySpan(text: string): DaySpan {
  const [open, close] = text.split('-')
  return { open: parseTimeOfDay(open!)!, close: parseTimeOfDay(close!)! }
}
