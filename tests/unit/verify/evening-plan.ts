import { parseDay } from '../../../src/base/clock.ts'
import type { Project } from '../../../src/model/project.ts'
import type { ScheduledTask } from '../../../src/model/schedule.ts'
import type { PlanTask, TaskHold, TaskLink } from '../../../src/model/tasks.ts'
import { here, hours, link, machine, person, placed, project, task, vendor, waiting } from './world.ts'

/** A plan laid out by hand that keeps every rule, to be broken one rule at a time. Monday 2026-02-02 on. */
export interface Plan {
  project: Project
  tasks: PlanTask[]
  links: TaskLink[]
  holds: TaskHold[]
  fixtures: Map<string, number>
  schedule: Map<string, ScheduledTask>
}

/** Ana's sessions: Monday to Thursday 19:40-22:25, Saturday 10:10-15:55. Bob's: Monday to Friday 18:00-20:00. */
export function eveningPlan(): Plan {
  const schedule = placements()
  return {
    project: eveningShop(),
    tasks: eveningTasks(),
    links: eveningLinks(),
    holds: [
      { kind: 'machine', resource: 'mill', from: 'load', to: 'unload' },
      { kind: 'fixture', resource: 'jig', from: 'glue', to: 'set' },
    ],
    fixtures: new Map([['jig', 1]]),
    schedule: new Map(schedule.map((one) => [one.id, one])),
  }
}

function eveningShop(): Project {
  return project({
    people: new Map([
      ['ana', person('ana', hours('0-3 19:30-22:30', '5 10:00-16:00'), 10, 5)],
      ['bob', person('bob', hours('0-4 18:00-20:00'))],
    ]),
    machines: new Map([
      ['mill', machine('mill', hours('0-6 09:00-22:00'), 1, ['ana'])],
      ['printer', machine('printer', hours('0-6 06:00-24:00'))],
    ]),
    tools: new Map([
      [
        'reamer',
        {
          id: 'reamer',
          at: here,
          qty: 1,
          from: parseDay('2026-02-03'),
          until: parseDay('2026-02-05'),
          numbers: new Map(),
        },
      ],
    ]),
    vendors: new Map([['boardhouse', vendor('boardhouse')]]),
  })
}

function eveningTasks(): PlanTask[] {
  const delivery = { cart: 'boardhouse', vendor: 'boardhouse', leadDays: 3, transitDays: 2, outDays: 0 }
  return [
    task('order', 10, { kind: 'order' }),
    task('parcel', 0, { kind: 'delivery', attention: 'none', delivery }),
    task('load', 30, { kind: 'load', machine: 'mill', who: ['ana'] }),
    task('cut', 160, { kind: 'run', machine: 'mill', attention: 'nearby' }),
    task('unload', 10, { kind: 'unload', machine: 'mill', who: ['ana'] }),
    task('glue', 60, { pausable: false }),
    task('set', 720, { kind: 'cure', attention: 'none', who: [], pausable: false }),
    task('pair', 20, { people: 2, tools: ['reamer'] }),
    task('print', 600, {
      kind: 'run',
      machine: 'printer',
      takesMachine: true,
      attention: 'none',
      who: [],
      pausable: false,
    }),
    task('wire', 200),
    task('receive', 10, { kind: 'receive' }),
    task('ready', 0, { kind: 'ready', attention: 'none', who: [] }),
  ]
}

function eveningLinks(): TaskLink[] {
  return [
    link('order', 'parcel', { why: 'ordered' }),
    link('load', 'cut'),
    link('cut', 'unload'),
    link('unload', 'glue'),
    link('glue', 'set', { within: 10, why: 'cure' }),
    link('set', 'pair', { lag: { minutes: 120 } }),
    link('wire', 'receive', { lag: { workingDays: 3 }, why: 'after' }),
    link('parcel', 'receive', { why: 'delivered' }),
    link('receive', 'ready'),
  ]
}

function placements(): ScheduledTask[] {
  return [
    placed('order', ['ana'], '2026-02-02 19:40', '2026-02-02 19:50'),
    // After the cutoff, so Tuesday is day 0: out on Friday, two carrier days over the weekend.
    waiting('parcel', '2026-02-02 19:50', '2026-02-10 18:00'),
    placed('load', ['ana'], '2026-02-02 19:50', '2026-02-02 20:20'),
    placed('cut', [], '2026-02-02 20:20', '2026-02-02 22:00', '2026-02-03 18:00', '2026-02-03 19:00'),
    placed('unload', ['ana'], '2026-02-03 19:40', '2026-02-03 19:50'),
    placed('glue', ['ana'], '2026-02-03 19:50', '2026-02-03 20:50'),
    placed('set', [], '2026-02-03 20:50', '2026-02-04 08:50'),
    placed('pair', ['ana', 'bob'], '2026-02-04 19:40', '2026-02-04 20:00'),
    placed('print', [], '2026-02-02 06:00', '2026-02-02 16:00'),
    placed('wire', ['ana'], '2026-02-04 20:00', '2026-02-04 22:25', '2026-02-05 19:40', '2026-02-05 20:35'),
    placed('receive', ['bob'], '2026-02-11 18:00', '2026-02-11 18:10'),
    waiting('ready', '2026-02-11 18:10'),
  ]
}
