import { describe, expect, it } from 'vitest'
import { formatInstant, instantOf, parseDay } from '../../../../src/base/clock.ts'
import { plan } from '../../../../src/compile.ts'
import { latestStartsFor } from '../../../../src/planning/risk/latest-starts-for.ts'
import { layOutSamples } from '../../../../src/planning/risk/lay-out-samples.ts'
import { networkOf } from '../../../../src/planning/schedule/index.ts'
import { roughOrder } from '../../../../src/planning/schedule/precedence.ts'
import { toProblem } from '../../../../src/planning/timing/to-problem.ts'
import { parcel } from './small-plans.ts'

describe('the latest starts with which a date may still be kept', () => {
  // By hand, done by the end of Fri 20: an hour of fitting and ten minutes of unpacking on that evening, the parcel
  // usable at 18:00; sent Wed 18, so ordered before Wed 11 12:00.
  it('go backwards over work, post and vendor', () => {
    const { project, network } = parcel()
    const from = instantOf(project.device.start, 0)
    const { problem } = toProblem(project, network, from, from + 90 * 1440)
    const laid = networkOf(problem)
    const latest = latestStartsFor(laid, roughOrder(laid), instantOf(parseDay('2026-03-21')!, 0))
    expect(network.tasks.map(({ id }, task) => [id, formatInstant(latest[task]!)])).toEqual([
      ['cart shop / delivery', '2026-03-11T11:59'],
      ['cart shop / order', '2026-03-10T21:50'],
      ['cart shop / receive', '2026-03-20T20:50'],
      ['work fit', '2026-03-20T21:00'],
    ])
  })

  it('are before no start of any sample that keeps the date', () => {
    const { results } = plan('projects/optical-chopper/optical-chopper.yaml', { samples: 0 })
    const { policy, starts, finishes } = layOutSamples(results!, { samples: 12, seed: 3 })
    const order = roughOrder(policy.networkIn(0))
    let near = 0
    for (let k = 0; k < 12; k++) {
      const latest = latestStartsFor(policy.networkIn(k), order, finishes[k]!)
      for (const [task, start] of starts[k]!.entries()) {
        expect(start).toBeLessThanOrEqual(latest[task]!)
        if (start === latest[task]) near++
      }
    }
    // They are no empty promise: each sample has tasks that may not start a minute later.
    expect(near).toBeGreaterThanOrEqual(12)
  })
})
