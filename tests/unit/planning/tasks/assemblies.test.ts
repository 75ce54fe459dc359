import { describe, expect, it } from 'vitest'
import { plan } from '../../../../src/compile.ts'

const bench = `
device: {name: Slide, currency: EUR, start: 2026-02-02}
people:
  ana: {hours: {daily: "18:00-22:00"}}
vendors:
  near: {transit: 0 wd}
  far: {transit: 3 wd}
parts:
  carriage: {kind: bought, offers: [{vendor: near, price: 3, lead: 0 wd}]}
  plunger: {kind: bought, offers: [{vendor: near, price: 3, lead: 0 wd}]}
  bush: {kind: bought, offers: [{vendor: LATE, price: 3, lead: 0 wd}]}
assembly:
  steps:
    - {name: press bush, put: bush, on: carriage, by: press, tool: arbor press, time: 10 min}
    - {name: glue plunger, put: plunger, on: carriage, by: glue, cure: 20 h, time: 10 min}
`

const planned = (text: string) => {
  const { results, diagnostics } = plan('-', { stdin: text })
  expect(diagnostics.filter(({ level }) => level === 'error')).toEqual([])
  const at = (id: string) => results!.schedule.tasks.get(id)!
  return { press: at('assembly / press bush'), cure: at('assembly / glue plunger / cure') }
}

describe('a step with a cure', () => {
  it.each(['near', 'far'])(
    'has no work on its body while it cures, whoever sells the bush (%s)',
    (vendor) => {
      const { press, cure } = planned(bench.replace('LATE', vendor))
      expect(press.finish <= cure.start || press.start >= cure.finish).toBe(true)
    },
  )

  it('keeps its place in the order when what comes before it is late', () => {
    const { press, cure } = planned(bench.replace('LATE', 'far'))
    expect(press.finish).toBeLessThanOrEqual(cure.start)
  })

  it('is never worked beside, however many steps on its body cure, though few links say so', () => {
    const names = Array.from({ length: 12 }, (_, k) => `fit ${k + 1}`)
    const parts = names.map(
      (_, k) => `  pin${k + 1}: {kind: bought, offers: [{vendor: near, price: 1, lead: 0 wd}]}`,
    )
    const steps = names.map((name, k) => {
      const how = k % 3 === 0 ? 'by: glue, cure: 5 h' : 'by: seat'
      return `    - {name: ${name}, put: pin${k + 1}, on: carriage, ${how}, time: 10 min}`
    })
    const text = `${bench.split('  plunger')[0]}${parts.join('\n')}\nassembly:\n  steps:\n${steps.join('\n')}\n`
    const { results } = plan('-', { stdin: text })
    const { tasks } = results!.schedule
    const cures = [...tasks].filter(([id]) => id.endsWith('/ cure'))
    expect(cures).toHaveLength(4)
    const beside = cures.flatMap(([id, cure]) =>
      names.filter((name) => {
        const step = tasks.get(`assembly / ${name}`)!
        return id !== `assembly / ${name} / cure` && step.start < cure.finish && step.finish > cure.start
      }),
    )
    expect(beside).toEqual([])
    // Each of twelve steps before and after each of four cures would be forty-four and more.
    expect(results!.network.links.filter(({ why }) => why === 'cure').length).toBeLessThan(30)
  })
})

const twoLevels = `
device: {name: Slide, currency: EUR, start: 2026-02-02}
people:
  ana: {hours: {daily: "18:00-22:00"}}
vendors:
  near: {transit: 0 wd}
  far: {transit: 10 wd}
parts:
  frame: {kind: bought, offers: [{vendor: near, price: 3, lead: 0 wd}]}
  carriage: {kind: bought, offers: [{vendor: near, price: 3, lead: 0 wd}]}
  bush: {kind: bought, offers: [{vendor: near, price: 3, lead: 0 wd}]}
  motor: {kind: bought, offers: [{vendor: far, price: 3, lead: 0 wd}]}
  unit:
    kind: assembly
    steps:
      - {name: press bush, put: bush, on: carriage, by: press, time: 10 min}
assembly:
  ground: frame
  steps:
    - {name: fit motor, put: motor, on: frame, by: screw, time: 10 min}
    - {name: fit unit, put: unit, on: frame, by: screw, after: [fit motor], time: 10 min}
`

describe('a subassembly', () => {
  it('goes together once its own parts are here, before the late part of the device is', () => {
    const { results } = plan('-', { stdin: twoLevels })
    const at = (id: string) => results!.schedule.tasks.get(id)!
    const [press, motor, unit] = [
      at('unit / press bush'),
      at('assembly / fit motor'),
      at('assembly / fit unit'),
    ]
    const motorHere = results!.readyAt.get('motor')!
    expect(press.finish).toBeLessThan(motorHere)
    expect(motor.start).toBeGreaterThanOrEqual(motorHere)
    expect(unit.start).toBeGreaterThanOrEqual(motor.finish)
  })
})

describe('a step', () => {
  it('waits for the parts it puts and for the work it needs', () => {
    const text = twoLevels
      .replace('parts:', 'work:\n  firmware: {time: 6 h}\nparts:')
      .replace('after: [fit motor],', 'needs: [firmware],')
    const { results } = plan('-', { stdin: text })
    const at = (id: string) => results!.schedule.tasks.get(id)!
    const before = results!.network.links.filter(({ to }) => to === 'assembly / fit unit')
    expect(new Set(before.map(({ why }) => why))).toEqual(new Set(['part', 'needs']))
    for (const { from, to } of before) expect(at(from).finish).toBeLessThanOrEqual(at(to).start)
  })
})
