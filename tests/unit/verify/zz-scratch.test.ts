import { test } from 'vitest'
import { parseDay } from '../../../src/base/clock.ts'
import { scheduleNetwork } from '../../../src/planning/timing/schedule-network.ts'
import { whyInfeasible } from '../../../src/verify/why-infeasible.ts'
import {
  at,
  hours,
  link,
  machine,
  network,
  pattern,
  person,
  placed,
  project,
  schedule,
  task,
  vendor,
} from './world.ts'

const run = (name: string, p: ReturnType<typeof project>, n: ReturnType<typeof network>) => {
  const s = scheduleNetwork(p, n, { effort: 20, seed: 1 })
  console.log(name, 'kind' in s ? s : whyInfeasible(p, n, s))
}
test('x', () => {
  for (const days of ['MTWTF--', 'MTWTFS-', '-T-----', 'MTWTFSS'])
    for (const carrier of ['MTWTF--', 'MTWTFS-', '--W----'])
      for (const [outDays, leadDays, transitDays] of [
        [0, 0, 0],
        [0, 1, 0],
        [0, 3, 2],
        [1, 0, 1],
        [2, 3, 2],
        [1, 1, 0],
      ] as const)
        for (const release of [660, 720, 1200, 3 * 1440 + 1439, 4 * 1440 + 1000, 5 * 1440 + 600]) {
          const p = project({
            vendors: new Map([['v', vendor('v', { days: pattern(days), carrier: pattern(carrier) })]]),
          })
          const n = network([
            task('d', 0, {
              kind: 'delivery',
              attention: 'none',
              who: [],
              release: at('2026-02-02 00:00') + release,
              delivery: { cart: 'c', vendor: 'v', outDays, leadDays, transitDays },
            }),
          ])
          const s = scheduleNetwork(p, n, { effort: 5, seed: 1 })
          const w = 'kind' in s ? JSON.stringify(s) : whyInfeasible(p, n, s)
          if (w) console.log(days, carrier, outDays, leadDays, transitDays, w)
        }
  const v = (post: number) => project({ vendors: new Map([['v', vendor('v', { post })]]) })
  run(
    'early post',
    v(480),
    network([
      task('d', 0, {
        kind: 'delivery',
        attention: 'none',
        who: [],
        release: at('2026-02-02 10:00'),
        delivery: { cart: 'c', vendor: 'v', outDays: 0, leadDays: 0, transitDays: 0 },
      }),
    ]),
  )
  const monday = parseDay('2026-02-02')!
  const owl = person('ana', { ...hours('0-6 22:00-24:00', '0-6 00:00-02:00') }, 10, 10)
  run(
    'midnight',
    project({ people: new Map([['ana', owl]]) }),
    network([task('a', 200, { who: ['ana'] }), task('b', 200, { who: ['ana'] })]),
  )
  const off = {
    ...hours('0-6 18:00-20:00'),
    off: [{ first: monday, last: monday + 2 }],
    extra: new Map([[monday, [{ open: 600, close: 720 }]]]),
  }
  run(
    'off+extra',
    project({ people: new Map([['ana', person('ana', off)]]) }),
    network([task('a', 60, { who: ['ana'] })]),
  )
  const gaps = hours('0-6 08:00-08:30 12:00-12:10 18:00-20:00')
  for (const m of [35, 40, 45, 60, 150, 200])
    run(
      'least ' + m,
      project({ people: new Map([['ana', person('ana', gaps)]]) }),
      network([task('a', m, { who: ['ana'] }), task('b', m, { who: ['ana'] })]),
    )
  run(
    'all day',
    project({ people: new Map([['ana', person('ana', hours('0-6 00:00-24:00'), 10, 10)]]) }),
    network([task('a', 200, { who: ['ana'] })]),
  )
  run('nobody', project(), network([task('a', 200, { who: [] })]))
  run(
    'wd',
    project({ people: new Map([['ana', person('ana', hours('5 10:00-16:00'))]]) }),
    network([task('a', 20, { who: ['ana'] }), task('b', 20, { attention: 'none', who: [] })], {
      links: [link('a', 'b', { lag: { workingDays: 2 } })],
    }),
  )
  run(
    'zero hands',
    project({ people: new Map([['ana', person('ana', hours('5 10:00-16:00'))]]) }),
    network([task('a', 0, { who: ['ana'] })]),
  )
  run(
    'nearby union',
    project({
      people: new Map([
        ['ana', person('ana', hours('0-6 18:00-19:00'))],
        ['bob', person('bob', hours('0-6 19:00-20:00'))],
      ]),
    }),
    network([
      task('a', 110, { attention: 'nearby', pausable: false }),
      task('b', 150, { attention: 'nearby' }),
    ]),
  )
  // speed
  const ids = Array.from({ length: 3000 }, (_, i) => `t${String(i).padStart(4, '0')}`)
  const big = project({
    people: new Map([['ana', person('ana', hours('0-6 08:00-12:00 13:00-17:00 18:00-22:00'))]]),
    machines: new Map([['m', machine('m', null)]]),
  })
  const n = network(
    ids.map((id) => task(id, 30, { who: ['ana'], machine: 'm', takesMachine: true })),
    { links: ids.slice(1).map((id, i) => link(ids[i]!, id)) },
  )
  const slots = [
    8, 8.5, 9, 9.5, 10, 10.5, 11, 11.5, 13, 13.5, 14, 14.5, 15, 15.5, 16, 16.5, 18, 18.5, 19, 19.5, 20, 20.5,
    21, 21.5,
  ]
  const base = at('2026-02-02 00:00')
  const sch = schedule(
    ids.map((id, i) => {
      const o = base + Math.floor(i / 24) * 1440 + slots[i % 24]! * 60
      return {
        ...placed(id, ['ana'], '2026-02-02 08:00', '2026-02-02 08:30'),
        start: o,
        finish: o + 30,
        pieces: [{ open: o, close: o + 30 }],
      }
    }),
  )
  const t = performance.now()
  console.log('big', whyInfeasible(big, n, sch), performance.now() - t)
})
