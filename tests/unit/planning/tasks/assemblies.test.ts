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
})
