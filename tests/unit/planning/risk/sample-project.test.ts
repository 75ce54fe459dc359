import { describe, expect, it } from 'vitest'
import { plan } from '../../../../src/compile.ts'
import type { Results } from '../../../../src/model/results.ts'
import { chainFinder } from '../../../../src/planning/risk/chain-tasks.ts'
import { drawAll } from '../../../../src/planning/risk/draws.ts'
import { layOutSamples } from '../../../../src/planning/risk/lay-out-samples.ts'
import { policyOf } from '../../../../src/planning/risk/policy.ts'
import { sampleProject } from '../../../../src/planning/risk/sample-project.ts'
import { samplesFor } from '../../../../src/planning/risk/samples-for.ts'
import { drivingChain, type Problem, scheduleOf } from '../../../../src/planning/schedule/index.ts'
import { planned } from '../../../reference/calendar-bench.ts'

const fileOf = (file: string): Results => plan(file, { samples: 0, effort: 20 }).results!
const demo = fileOf('projects/optical-chopper/optical-chopper.yaml')
const nothingDrawn = { samples: 1, inputs: [], minutes: new Map(), days: new Map() }
const head = `device: {name: parts, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {daily: "08:00-22:00"}}}
`

describe('the way of working that samples follow', () => {
  it('finishes no later than the plan where nothing is drawn', () => {
    const laid = policyOf(demo, nothingDrawn).layOut(0)!
    expect(laid.found.end).toBeLessThanOrEqual(demo.schedule.finish)
  })

  it('gives the same answer whatever was asked between', () => {
    const { policy, finishes } = layOutSamples(demo, { samples: 6, seed: 1 })
    const order = demo.network.tasks.findIndex(({ kind }) => kind === 'order')
    policy.layOut(3, { task: order, until: demo.schedule.finish })
    expect([5, 0, 4, 2, 1, 3].map((k) => policy.layOut(k)!.found.end)).toEqual(
      [5, 0, 4, 2, 1, 3].map((k) => finishes[k]),
    )
  })

  it('finds nearly the chain that the scheduler finds for the same layout, sample by sample', () => {
    const { policy } = layOutSamples(demo, { samples: 12, seed: 2 })
    const find = chainFinder(policy.problem)
    let [both, any] = [0, 0]
    for (let k = 0; k < 12; k++) {
      const { found, network } = policy.layOut(k)!
      const tasks = network.problem.tasks.map((task, at) => ({
        ...task,
        modes: network.clocks[at]!.map(({ mode }) => mode),
      }))
      const problem: Problem = { ...network.problem, tasks }
      const real = new Set(drivingChain(problem, scheduleOf(network, found)).map(({ task }) => task))
      const fast = new Set(find({ found, network }))
      any += new Set([...real, ...fast]).size
      both += [...real].filter((task) => fast.has(task)).length
    }
    expect(any).toBeGreaterThan(300)
    // Where several causes tie, the two may name different ones: on this demo 3.5 % of the tasks.
    expect(both / any).toBeGreaterThan(0.95)
  })
})

describe('how sure the date is', () => {
  const risk = sampleProject(demo, { samples: 60, seed: 1 })

  it('is told by dates that rise with their chance', () => {
    const dates = risk.finishBy.map(({ finish }) => finish!)
    expect([...dates].sort((a, b) => a - b)).toEqual(dates)
    expect(risk.finishBy.map(({ chance }) => chance)).toEqual([0.5, 0.8, 0.95])
  })

  it('counts on every sample a chain from the start to the last task', () => {
    const shares = [...risk.critical.values()]
    expect(Math.max(...shares)).toBe(1)
    expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true)
    expect([...risk.critical.keys()]).toEqual(demo.network.tasks.map(({ id }) => id))
  })

  it('is the same told twice', () => {
    expect(sampleProject(demo, { samples: 60, seed: 1 })).toEqual(risk)
  })

  it('names first the one thing that alone is uncertain', () => {
    const one = planned(
      `${head}work: {long: {time: 1..5..40 h}, short: {time: 2 h}, narrow: {time: 60..61..62 min}}\n`,
      {
        samples: 0,
      },
    )
    const { spread } = sampleProject(one, { samples: 100, seed: 1 })
    expect(spread[0]).toMatchObject({ kind: 'time', of: 'work long' })
    expect(spread[0]!.correlation).toBeGreaterThan(0.9)
    expect(spread[0]!.days).toBeGreaterThan(0)
    expect(spread.map(({ of }) => of)).not.toContain('work short')
  })

  // A run that nobody attends must fit one window of 10 h: of 8..9..16 h many samples do not.
  it('counts samples that fit no window as never done', () => {
    const text = `${head}machines: {printer: {hours: {daily: "09:00-19:00"}}}
work: {print: {time: 8..9..16 h, attention: none, machine: printer, pause: no}}
`
    const drawn = sampleProject(planned(text, { samples: 0 }), { samples: 100, seed: 1 })
    expect(drawn.unplaced).toBeGreaterThan(10)
    expect(drawn.finishBy.at(-1)!.finish).toBe(null)
    expect(drawn.asPlanned).toBeLessThan(1)
  })

  it('is asked of large plans less often, and of empty ones never', () => {
    expect([0, 50, 400, 800, 100_000].map(samplesFor)).toEqual([0, 100, 100, 50, 20])
  })
})

describe('what is drawn', () => {
  it('adds rework and another try to a test each time it fails', () => {
    const results = fileOf('templates/board/project.yaml')
    const samples = 2000
    const draws = drawAll(results, samples, 1)
    const fails = draws.inputs.find(({ kind }) => kind === 'fails')!
    const at = results.network.tasks.findIndex(({ id }) => id === fails.of)
    const least = Number(results.network.tasks[at]!.time!.low.valueOf()) / 60
    const { total: minutes } = draws.minutes.get(at)!
    const failed = fails.values.filter((count) => count > 0).length / samples
    // The template says 15 %.
    expect(Math.abs(failed - 0.15)).toBeLessThan(4 * Math.sqrt((0.15 * 0.85) / samples))
    for (const [k, count] of fails.values.entries())
      expect(minutes[k]!).toBeGreaterThanOrEqual(least * (1 + count))
  })

  // A test of 2 h in evenings of 3 h: two goes need two evenings, and no weekend with a longer one.
  it('lets a test that may not pause rest between two goes', () => {
    const results = planned(
      `device: {name: tested, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {daily: "19:00-22:00"}}}
parts: {base: {kind: bought, have: 1, worth: 1}}
assembly:
  steps:
    - put: base
      by: seat
      time: 5 min
    - test: runs
      time: 2 h
      pause: no
      fails: 60 %
`,
      { samples: 0 },
    )
    const { finishes, draws } = layOutSamples(results, { samples: 200, seed: 1 })
    const { values } = draws.inputs.find(({ kind }) => kind === 'fails')!
    const evening = (at: number): number => Math.floor(at / 1440) - results.project.device.start
    expect(finishes.every(Number.isFinite)).toBe(true)
    // Each evening holds 3 h: the whole of it, first less the 5 min of putting, or at least one go.
    for (const [k, count] of values.entries()) if (count <= 1) expect(evening(finishes[k]!)).toBe(count)
  })

  const made = (facts: string) =>
    planned(
      `${head}materials: {al: {forms: [{plate: 600 x 400 x 5 mm, have: 1, worth: 9}]}}
parts:
  pin:
    kind: machined
    role: tool
    qty: 4
    yield: 50 %${facts}
    material: al
    stock: {plate: 30 x 20 x 5 mm}
    route: [{deburr: {time: 10 min, each: yes}}]
`,
      { samples: 0 },
    )

  // Source: negative binomial: failures before the fourth success at one half: mean 4, variance 8.
  it('makes bad pieces again until enough are good, each for its own time', () => {
    const results = made('')
    const samples = 4000
    const draws = drawAll(results, samples, 1)
    const { values } = draws.inputs.find(({ kind }) => kind === 'bad pieces')!
    const mean = values.reduce((sum, one) => sum + one, 0) / samples
    expect(Math.abs(mean - 4)).toBeLessThan(4 * Math.sqrt(8 / samples))
    const at = results.network.tasks.findIndex(({ id }) => id === 'pin / 1 deburr')
    const { total: minutes } = draws.minutes.get(at)!
    expect(values.every((again, k) => minutes[k] === 40 + 10 * again)).toBe(true)
  })

  // Half of all parcels hold a bad piece; each is ordered again: one way in half of the samples, two in a quarter.
  it('orders bad bought pieces again, a whole lead for each go', () => {
    const results = planned(
      `${head}vendors: {shop: {transit: 0 wd}}
parts: {screw: {kind: bought, qty: 1, yield: 50 %, offers: [{vendor: shop, price: 1, lead: 5 wd}]}}
`,
      { samples: 0 },
    )
    const samples = 2000
    const [days] = drawAll(results, samples, 1).days.values()
    const share = (lead: number): number => days!.lead.filter((one) => one === lead).length / samples
    expect(days!.lead.every((one) => one % 5 === 0)).toBe(true)
    for (const [lead, chance] of [
      [5, 0.5],
      [10, 0.25],
    ] as const)
      expect(Math.abs(share(lead) - chance)).toBeLessThan(4 * Math.sqrt((chance * (1 - chance)) / samples))
  })

  it('lets spares stand in for bad pieces first', () => {
    const again = (results: Results): number =>
      drawAll(results, 500, 1)
        .inputs.find(({ kind }) => kind === 'bad pieces')!
        .values.filter((one) => one > 0).length
    expect(again(made('\n    spares: 4'))).toBeLessThan(again(made('')))
  })
})
