import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { parseDay, sayInstant } from '../../../src/base/clock.ts'
import type { Dims } from '../../../src/base/dims.ts'
import { threePoint } from '../../../src/base/three-point.ts'
import type { Machine, Person } from '../../../src/model/project.ts'
import type { PlanSchedule, ScheduledTask } from '../../../src/model/schedule.ts'
import type { PlanTask } from '../../../src/model/tasks.ts'
import { whyInfeasible } from '../../../src/verify/why-infeasible.ts'
import { eveningPlan, type Plan } from './evening-plan.ts'
import {
  at,
  hours,
  link,
  machine,
  network,
  person,
  placed,
  project,
  schedule,
  task,
  waiting,
} from './world.ts'

/** What the check says of the evening plan after one change. */
function saysOf(change: (plan: Plan) => void, facts: Partial<PlanSchedule> = {}): string | null {
  const plan = eveningPlan()
  change(plan)
  const { links, holds, fixtures } = plan
  const laid = { ...schedule([...plan.schedule.values()]), ...facts }
  // The map as it stands: a test may file a task under a wrong name.
  return whyInfeasible(plan.project, network(plan.tasks, { links, holds, fixtures }), {
    ...laid,
    tasks: plan.schedule,
  })
}

const place = (one: ScheduledTask) => (plan: Plan) => void plan.schedule.set(one.id, one)

const alter = (id: string, facts: Partial<PlanTask>) => (plan: Plan) => {
  plan.tasks = plan.tasks.map((one) => (one.id === id ? { ...one, ...facts } : one))
}

const withPerson = (one: Person) => (plan: Plan) => {
  plan.project = { ...plan.project, people: new Map([...plan.project.people, [one.id, one]]) }
}

const withMachine = (one: Machine) => (plan: Plan) => {
  plan.project = { ...plan.project, machines: new Map([...plan.project.machines, [one.id, one]]) }
}

const all =
  (...changes: ((plan: Plan) => void)[]) =>
  (plan: Plan) => {
    for (const change of changes) change(plan)
  }

test('the plan laid out by hand keeps every rule', () => {
  expect(saysOf(() => {})).toBeNull()
})

test('a plan without tasks finishes when it starts', () => {
  const start = at('2026-02-02 00:00')
  const empty = { ...schedule([]), finish: start }
  expect(whyInfeasible(project(), network([]), empty)).toBeNull()
})

const shifted = (id: string, people: string[], ...times: string[]) => place(placed(id, people, ...times))

/** One rule broken each: what is changed, and what the sentence must say. */
const broken: readonly [string, (plan: Plan) => void, RegExp][] = [
  ['a task that is not scheduled', (p) => void p.schedule.delete('wire'), /`wire` is not scheduled/],
  [
    'a task that nobody asked for',
    place(waiting('nap', '2026-02-03 12:00')),
    /`nap` is scheduled but is not in/,
  ],
  ['a task twice in the network', (p) => void p.tasks.push(task('wire', 200)), /`wire` stands twice/],
  [
    'a task under a wrong name',
    (p) => void p.schedule.set('wire', { ...p.schedule.get('wire')!, id: 'wired' }),
    /`wire` is scheduled under the name `wired`/,
  ],
  [
    'a time with part of a minute',
    (p) =>
      void p.schedule.set('ready', { ...p.schedule.get('ready')!, finish: at('2026-02-11 18:10') + 0.5 }),
    /`ready` has a time that is no whole minute/,
  ],
  [
    'work before the project starts',
    shifted('print', [], '2026-02-01 06:00', '2026-02-01 16:00'),
    /`print` starts Sun 2026-02-01 06:00, before the project's start Mon 2026-02-02 00:00/,
  ],
  [
    'work before its release',
    alter('print', { release: at('2026-02-02 07:00') }),
    /`print` starts Mon 2026-02-02 06:00, before its release Mon 2026-02-02 07:00/,
  ],
  [
    'a finish before the start',
    place(waiting('ready', '2026-02-11 18:10', '2026-02-11 18:00')),
    /`ready` starts Wed 2026-02-11 18:10 and finishes earlier/,
  ],
  [
    'a piece before the start of the task',
    (p) => void p.schedule.set('wire', { ...p.schedule.get('wire')!, start: at('2026-02-04 20:05') }),
    /`wire` has a piece .* before the task starts Wed 2026-02-04 20:05/,
  ],
  [
    'a start before the first piece',
    (p) => void p.schedule.set('wire', { ...p.schedule.get('wire')!, start: at('2026-02-04 19:55') }),
    /`wire` starts Wed 2026-02-04 19:55, its first piece opens Wed 2026-02-04 20:00/,
  ],
  [
    'a piece past the finish of the task',
    (p) => void p.schedule.set('wire', { ...p.schedule.get('wire')!, finish: at('2026-02-05 20:30') }),
    /`wire` has a piece .* past the task's finish/,
  ],
  [
    'a finish after the last piece',
    (p) => void p.schedule.set('wire', { ...p.schedule.get('wire')!, finish: at('2026-02-05 20:40') }),
    /`wire` finishes Thu 2026-02-05 20:40, its last piece closes Thu 2026-02-05 20:35/,
  ],
  [
    'pieces out of order',
    (p) => {
      const wire = p.schedule.get('wire')!
      p.schedule.set('wire', { ...wire, pieces: [...wire.pieces].reverse() })
    },
    /`wire` has a piece .* begins before the piece before it ends/,
  ],
  [
    'pieces that overlap',
    shifted('wire', ['ana'], '2026-02-04 20:00', '2026-02-04 22:25', '2026-02-04 21:30', '2026-02-04 22:25'),
    /`wire` has a piece .* begins before the piece before it ends/,
  ],
  [
    'an empty piece',
    shifted(
      'pair',
      ['ana', 'bob'],
      '2026-02-04 19:40',
      '2026-02-04 19:40',
      '2026-02-04 19:40',
      '2026-02-04 20:00',
    ),
    /`pair` has a piece .* takes no time/,
  ],
  [
    'too little work',
    shifted('glue', ['ana'], '2026-02-03 19:50', '2026-02-03 20:49'),
    /`glue` is worked on for 59 min and takes 60 min/,
  ],
  [
    'minutes below the mean rounded up',
    // Mean (3000 + 4 x 3600 + 4210) / 6 = 3601.67 s, a minute begun more than 60.
    alter('glue', { time: seconds(3000, 3600, 4210) }),
    /`glue` is planned with 60 min, its mean asks for 61 min/,
  ],
  [
    'a pause in work that may not pause',
    alter('wire', { pausable: false }),
    /`wire` pauses Wed 2026-02-04 22:25 but may not pause/,
  ],
  [
    'a pause in a run that nobody attends',
    all(
      alter('print', { pausable: true }),
      shifted('print', [], '2026-02-02 15:00', '2026-02-03 00:00', '2026-02-03 06:00', '2026-02-03 07:00'),
    ),
    /`print` pauses Tue 2026-02-03 00:00 but a run that nobody attends is one unbroken piece/,
  ],
  [
    'a run that nobody attends past the hours of its machine',
    shifted('print', [], '2026-02-02 15:00', '2026-02-03 01:00'),
    /`print`: its piece .* lies outside the hours of `printer`/,
  ],
  [
    'a person who may not do it',
    shifted('load', ['bob'], '2026-02-02 19:30', '2026-02-02 20:00'),
    /`load` at Mon 2026-02-02 19:30 is done by `bob`, who may not do it/,
  ],
  [
    'a person who may not use the machine',
    all(
      alter('load', { who: ['ana', 'bob'] }),
      shifted('load', ['bob'], '2026-02-02 19:30', '2026-02-02 20:00'),
    ),
    /`load` .* is done by `bob`, who may not use `mill`/,
  ],
  [
    'a person the project does not have',
    all(alter('order', { who: ['eve'] }), shifted('order', ['eve'], '2026-02-02 19:40', '2026-02-02 19:50')),
    /`order` .* is done by `eve`, who may not do it/,
  ],
  [
    'one person for work of two',
    shifted('pair', ['ana'], '2026-02-04 19:40', '2026-02-04 20:00'),
    /`pair` .* has 1 people and needs 2/,
  ],
  [
    'the same person twice',
    shifted('pair', ['ana', 'ana'], '2026-02-04 19:40', '2026-02-04 20:00'),
    /`pair` .* has the same person twice/,
  ],
  [
    'people for work that needs nobody',
    all(alter('print', { who: ['ana'] }), shifted('print', ['ana'], '2026-02-02 06:00', '2026-02-02 16:00')),
    /`print` .* has people but nobody is needed/,
  ],
  [
    'hands work without anybody',
    shifted('glue', [], '2026-02-03 19:50', '2026-02-03 20:50'),
    /`glue` .* has 0 people and needs 1/,
  ],
  [
    'two things in the same hands',
    shifted('load', ['ana'], '2026-02-02 19:45', '2026-02-02 20:15'),
    /`ana` works on `order` and `load` at once, Mon 2026-02-02 19:45/,
  ],
  [
    'work while a person still sets up',
    shifted('order', ['ana'], '2026-02-02 19:35', '2026-02-02 19:45'),
    /`order`: its piece .* lies outside the sessions of `ana`/,
  ],
  [
    'work while a person cleans up',
    shifted('wire', ['ana'], '2026-02-04 20:00', '2026-02-04 22:26', '2026-02-05 19:40', '2026-02-05 20:34'),
    /`wire`: its piece .* lies outside the sessions of `ana`/,
  ],
  [
    'work of two outside the hours of the second',
    all(
      shifted('pair', ['ana', 'bob'], '2026-02-04 19:45', '2026-02-04 20:05'),
      shifted(
        'wire',
        ['ana'],
        '2026-02-04 20:05',
        '2026-02-04 22:25',
        '2026-02-05 19:40',
        '2026-02-05 20:40',
      ),
    ),
    /`pair`: its piece .* lies outside the sessions of `bob`/,
  ],
  [
    'hands work outside the hours of its machine',
    all(
      shifted('unload', ['ana'], '2026-02-03 22:00', '2026-02-03 22:10'),
      shifted('glue', ['ana'], '2026-02-03 20:50', '2026-02-03 21:50'),
    ),
    /`unload`: its piece .* lies outside the hours of `mill`/,
  ],
  [
    'a machine the project does not have',
    alter('print', { machine: 'laser' }),
    /`print` runs on `laser`, which is no machine/,
  ],
  [
    'a run with nobody nearby',
    shifted('cut', [], '2026-02-02 20:20', '2026-02-02 22:00', '2026-02-03 17:59', '2026-02-03 18:59'),
    /`cut`: its piece .* has nobody nearby/,
  ],
  [
    'a run near somebody who does not count',
    alter('cut', { who: ['ana'] }),
    /`cut`: its piece from Tue 2026-02-03 18:00 to Tue 2026-02-03 19:00 has nobody nearby/,
  ],
  [
    'a pause before the session ends',
    shifted('wire', ['ana'], '2026-02-04 20:00', '2026-02-04 22:00', '2026-02-05 19:40', '2026-02-05 21:00'),
    /`wire` rests from Wed 2026-02-04 22:00 to Thu 2026-02-05 19:40 though it could go on at Wed 2026-02-04 22:00/,
  ],
  [
    'a late return to paused work',
    shifted('wire', ['ana'], '2026-02-04 20:00', '2026-02-04 22:25', '2026-02-05 20:00', '2026-02-05 20:55'),
    /`wire` rests .* though it could go on at Thu 2026-02-05 19:40/,
  ],
  [
    'a whole session passed over',
    shifted('wire', ['ana'], '2026-02-03 20:50', '2026-02-03 22:25', '2026-02-05 19:40', '2026-02-05 21:25'),
    /`wire` rests .* though it could go on at Wed 2026-02-04 19:40/,
  ],
  [
    'a cut without a pause',
    shifted(
      'wire',
      ['ana'],
      '2026-02-04 20:00',
      '2026-02-04 21:00',
      '2026-02-04 21:00',
      '2026-02-04 22:25',
      '2026-02-05 19:40',
      '2026-02-05 20:35',
    ),
    /`wire` is cut at Wed 2026-02-04 21:00 without a pause/,
  ],
  [
    'a machine run left while people and machine are there',
    shifted('cut', [], '2026-02-02 20:20', '2026-02-02 21:50', '2026-02-03 18:00', '2026-02-03 19:10'),
    /`cut` rests .* though it could go on at Mon 2026-02-02 21:50/,
  ],
  [
    'a piece too short to begin',
    shifted(
      'wire',
      ['ana'],
      '2026-02-04 22:15',
      '2026-02-04 22:25',
      '2026-02-05 19:40',
      '2026-02-05 22:25',
      '2026-02-07 10:10',
      '2026-02-07 10:35',
    ),
    /`wire` begins a piece of 10 min at Wed 2026-02-04 22:15, shorter than 15 min, that does not end it/,
  ],
  [
    'a start before the one before it has finished',
    (p) => void p.links.push(link('wire', 'pair')),
    /`pair` starts Wed 2026-02-04 19:40, before `wire` lets it, Thu 2026-02-05 20:35/,
  ],
  [
    'a lag cut short',
    (p) => void p.links.push(link('set', 'pair', { lag: { minutes: 651 } })),
    /`pair` starts .* before `set` lets it, Wed 2026-02-04 19:41/,
  ],
  [
    'a lag in working days cut short',
    // From Thursday 20:35: Friday, Monday, Tuesday, Wednesday at the same time.
    (p) => void p.links.push(link('wire', 'receive', { lag: { workingDays: 4 } })),
    /`receive` starts .* before `wire` lets it, Wed 2026-02-11 20:35/,
  ],
  [
    'a wait longer than allowed',
    shifted('set', [], '2026-02-03 21:01', '2026-02-04 09:01'),
    /`set` starts Tue 2026-02-03 21:01, over 10 min after `glue` finished Tue 2026-02-03 20:50/,
  ],
  ['a link to no task', (p) => void p.links.push(link('wire', 'nap')), /`wire` to `nap` names no two tasks/],
  [
    'another task on a machine that is held over a pause',
    all(
      (p) =>
        void p.tasks.push(
          task('saw', 20, { machine: 'mill', takesMachine: true, who: [], attention: 'none' }),
        ),
      shifted('saw', [], '2026-02-03 12:00', '2026-02-03 12:20'),
    ),
    /machine `mill` has 1 and `load`, `saw` take 2 at Tue 2026-02-03 12:00/,
  ],
  [
    'two runs on one machine at once',
    all(
      (p) => void p.tasks.push({ ...p.tasks.find(({ id }) => id === 'print')!, id: 'print 2' }),
      shifted('print 2', [], '2026-02-02 15:59', '2026-02-03 01:59'),
      withMachine(machine('printer', null)),
    ),
    /machine `printer` has 1 and `print`, `print 2` take 2 at Mon 2026-02-02 15:59/,
  ],
  [
    'a fixture that still holds a cure',
    all(
      alter('pair', { fixtures: ['jig'] }),
      shifted('set', [], '2026-02-03 20:50', '2026-02-04 08:50'),
      (p) => {
        p.tasks.push(task('trial', 30, { fixtures: ['jig'], attention: 'none', who: [] }))
        p.schedule.set('trial', placed('trial', [], '2026-02-04 08:30', '2026-02-04 09:00'))
      },
    ),
    /fixture `jig` has 1 and `glue`, `trial` take 2 at Wed 2026-02-04 08:30/,
  ],
  [
    'a fixture there is none of',
    alter('pair', { fixtures: ['vee block'] }),
    /`pair` uses fixture `vee block`, which the project does not have/,
  ],
  [
    'one tool in two places',
    all(
      (p) => void p.tasks.push(task('fit', 30, { tools: ['reamer'], attention: 'none', who: [] })),
      shifted('fit', [], '2026-02-04 19:59', '2026-02-04 20:29'),
    ),
    /tool `reamer` has 1 and `pair`, `fit` take 2 at Wed 2026-02-04 19:59/,
  ],
  [
    'a tool before it is here',
    alter('load', { tools: ['reamer'] }),
    /`load` uses tool `reamer` from Mon 2026-02-02 19:50, before it is here/,
  ],
  [
    'a tool after it is gone',
    alter('receive', { tools: ['reamer'] }),
    /`receive` uses tool `reamer` to Wed 2026-02-11 18:10, when it is gone/,
  ],
  [
    'a hold that ends before it begins',
    (p) => void p.holds.push({ kind: 'machine', resource: 'mill', from: 'wire', to: 'load' }),
    /`mill` is held from `wire` to `load`, which finishes Mon 2026-02-02 20:20, before the hold begins/,
  ],
  [
    'a parcel a day early',
    place(waiting('parcel', '2026-02-02 19:50', '2026-02-09 18:00')),
    /`parcel`, ordered Mon 2026-02-02 19:50, is said to be here Mon 2026-02-09 18:00; .* Tue 2026-02-10 18:00/,
  ],
  [
    'a parcel before the post',
    place(waiting('parcel', '2026-02-02 19:50', '2026-02-10 12:00')),
    /`parcel`.* the timetable gives Tue 2026-02-10 18:00/,
  ],
  [
    'a vendor the project does not have',
    alter('parcel', { delivery: { cart: 'x', vendor: 'nowhere', leadDays: 1, transitDays: 1, outDays: 0 } }),
    /`parcel` comes from `nowhere`, which is no vendor/,
  ],
]

describe('a broken schedule is refused, and the sentence names the task and the rule:', () => {
  test.each(broken)('%s', (_name, change, sentence) => {
    expect(saysOf(change)).toMatch(sentence)
  })
})

test('a finish that is not that of the last task is refused', () => {
  expect(saysOf(() => {}, { finish: at('2026-02-11 18:00') })).toBe(
    'the schedule says it finishes Wed 2026-02-11 18:00, but its last task finishes Wed 2026-02-11 18:10',
  )
})

test('a bound later than the finish is refused', () => {
  expect(saysOf(() => {}, { lowerBound: at('2026-02-12 00:00') })).toMatch(/earlier than its bound/)
})

describe('what the rules allow is let through:', () => {
  const cleo = person('cleo', hours('0 08:00-08:30 12:00-12:10 18:00-20:00'))
  const sole = (minutes: number, ...times: string[]) =>
    whyInfeasible(
      project({ people: new Map([['cleo', cleo]]) }),
      network([task('file', minutes, { who: ['cleo'] })]),
      schedule([placed('file', ['cleo'], ...times)]),
    )

  test('an opening shorter than the least piece is passed over', () => {
    expect(
      sole(60, '2026-02-02 08:00', '2026-02-02 08:30', '2026-02-02 18:00', '2026-02-02 18:30'),
    ).toBeNull()
  })

  test('but not where it could have ended the task', () => {
    const says = sole(40, '2026-02-02 08:00', '2026-02-02 08:30', '2026-02-02 18:00', '2026-02-02 18:10')
    expect(says).toMatch(/though it could go on at Mon 2026-02-02 12:00/)
  })

  test('a short piece that ends the task', () => {
    expect(
      sole(40, '2026-02-02 08:00', '2026-02-02 08:30', '2026-02-02 12:00', '2026-02-02 12:10'),
    ).toBeNull()
  })

  test('a session over midnight is one, and loses set-up and clean-up once', () => {
    const owl = person('owl', hours('0 22:00-24:00', '1 00:00-02:00'), 20, 20)
    const says = (open: string, close: string) =>
      whyInfeasible(
        project({ people: new Map([['owl', owl]]) }),
        network([task('file', at(close) - at(open), { who: ['owl'], pausable: false })]),
        schedule([placed('file', ['owl'], open, close)]),
      )
    expect(says('2026-02-02 22:20', '2026-02-03 01:40')).toBeNull()
    expect(says('2026-02-02 22:19', '2026-02-03 01:39')).toMatch(/outside the sessions of `owl`/)
    expect(says('2026-02-02 22:21', '2026-02-03 01:41')).toMatch(/outside the sessions of `owl`/)
  })

  test('a day off is shut, and a date with hours of its own is open', () => {
    const monday = parseDay('2026-02-02')!
    const week = hours('0-4 18:00-20:00')
    const off = { ...week, off: [{ first: monday, last: monday + 1 }] }
    const extra = { ...off, extra: new Map([[monday, [{ open: 600, close: 720 }]]]) }
    const says = (open: typeof week, from: string, to: string) =>
      whyInfeasible(
        project({ people: new Map([['ana', person('ana', open)]]) }),
        network([task('file', at(to) - at(from))]),
        schedule([placed('file', ['ana'], from, to)]),
      )
    expect(says(off, '2026-02-03 18:00', '2026-02-03 19:00')).toMatch(/outside the sessions/)
    expect(says(off, '2026-02-04 18:00', '2026-02-04 19:00')).toBeNull()
    expect(says(extra, '2026-02-02 10:00', '2026-02-02 12:00')).toBeNull()
    expect(says(extra, '2026-02-02 18:00', '2026-02-02 19:00')).toMatch(/outside the sessions/)
  })

  test('hands are free while a run needs somebody nearby', () => {
    const change = all(
      (p) => void p.tasks.push(task('sand', 60)),
      shifted('sand', ['ana'], '2026-02-02 20:20', '2026-02-02 21:20'),
    )
    expect(saysOf(change)).toBeNull()
  })

  test('a nearby run goes on when one person leaves as another comes', () => {
    const change = all(
      withPerson(person('eve', hours('0-4 20:00-21:00'))),
      (p) =>
        void p.tasks.push(task('watch', 150, { attention: 'nearby', who: ['bob', 'eve'], pausable: false })),
      shifted('watch', [], '2026-02-05 18:00', '2026-02-05 20:30'),
    )
    expect(saysOf(change)).toBeNull()
  })

  test('a machine for two takes two, and one follows the other without a gap on a machine for one', () => {
    const second = all(
      (p) => void p.tasks.push({ ...p.tasks.find(({ id }) => id === 'print')!, id: 'print 2' }),
      shifted('print 2', [], '2026-02-02 15:00', '2026-02-03 01:00'),
    )
    expect(saysOf(all(second, withMachine(machine('printer', null, 2))))).toBeNull()
    const follows = all(second, shifted('print 2', [], '2026-02-02 16:00', '2026-02-03 02:00'))
    expect(saysOf(all(follows, withMachine(machine('printer', null))))).toBeNull()
  })
})

test('sentences print instants as the clock does', () => {
  expect(sayInstant(at('2026-02-02 19:40'))).toBe('Mon 2026-02-02 19:40')
})

function seconds(low: number, likely: number, high: number) {
  const points = threePoint(new Fraction(low), new Fraction(likely), new Fraction(high))
  return { ...points, dims: 'time' as unknown as Dims, unit: 's', text: `${low}..${likely}..${high} s` }
}
