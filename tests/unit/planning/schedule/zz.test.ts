import { test } from 'vitest'
import * as S from '../../../../src/planning/schedule/index.ts'
import { seededRandom } from '../../../../src/base/random.ts'
import { mode, task, link, take, problem } from './instances.ts'
test('big', () => {
  for (const n of [1000, 3000]) for (const shape of ['20 resources', 'one person', 'one person, no links', 'load-run-unload']) {
    const r = seededRandom(5)
    const cal = { id: 'e', spans: Int32Array.from(Array.from({ length: 6000 }, (_, d) => [d * 1440 + 1170, d * 1440 + 1350]).flat()) }
    const lru = shape === 'load-run-unload'
    const tasks = Array.from({ length: n }, (_, k) => task(`${k}`, mode(lru ? (k % 3 === 1 ? 100 + Math.floor(r.next() * 500) : 10) : 20 + Math.floor(r.next() * 120), { calendar: lru && k % 3 === 1 ? null : 0, pausable: true, least: 15, needs: lru ? (k % 3 === 1 ? [] : [take(0, 1, 'work')]) : shape === '20 resources' ? [take(Math.floor(r.next() * 10), 1, 'work'), take(10 + Math.floor(r.next() * 10))] : [take(0, 1, 'work')] })))
    const links = shape === 'one person, no links' ? [] : lru ? Array.from({ length: n / 3 - 1 }, (_, k) => [link(3 * k, 3 * k + 1), link(3 * k + 1, 3 * k + 2)]).flat() : Array.from({ length: 1.5 * n }, () => { const a = Math.floor(r.next() * (n - 1)); return link(a, Math.min(n - 1, a + 1 + Math.floor(r.next() * 60))) })
    const holds = lru ? Array.from({ length: Math.floor(n / 3) - 1 }, (_, k) => ({ resource: 20 + (k % 3), amount: 1, from: 3 * k, to: 3 * k + 2 })) : []
    const p = problem(tasks, { horizon: 6000 * 1440, calendars: [cal], resources: Array.from({ length: 23 }, (_, k) => ({ id: `${k}`, capacity: 1 })), links, holds })
    const t0 = performance.now()
    const net = S.networkOf(p); const dec = S.decoderOf(net)
    const t1 = performance.now()
    const rank = Int32Array.from({ length: n }, (_, i) => i)
    dec(rank); const t2 = performance.now(); const o = dec(rank); const t3 = performance.now()
    const g = S.scheduleProblem(p, { effort: 50, seed: 1 }); const t4 = performance.now()
    if (g.kind !== 'found') { console.log(shape, g); continue }
    S.latestStarts(p, g.schedule); const t5 = performance.now(); S.drivingChain(p, g.schedule); const t6 = performance.now(); S.criticalPath(p); const t7 = performance.now()
    console.log(n, shape, 'prepare', (t1 - t0).toFixed(0), 'decode', (t2 - t1).toFixed(0), (t3 - t2).toFixed(1), o.kind, '50:', (t4 - t3).toFixed(0), 'tried', g.stats.schedulesTried, 'latest', (t5 - t4).toFixed(0), 'chain', (t6 - t5).toFixed(0), 'critical', (t7 - t6).toFixed(0))
  }
})
