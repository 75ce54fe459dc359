import { describe, expect, it } from 'vitest'
import { formatDay } from '../../../../src/base/clock.ts'
import { plan, planReport } from '../../../../src/compile.ts'
import type { TrialFit } from '../../../../src/model/trial-fit.ts'

/** A box whose shaft comes late; the rest is here early. */
const text = (late: string, more = ''): string => `
device: {name: Box, currency: EUR, start: 2026-02-02}
people:
  ana: {hours: {daily: "18:00-21:00"}}
vendors:
  near: {transit: 1 wd}
  far: {transit: 1 wd}
work:
  program: {time: 30 min}
parts:
  base: {kind: bought, have: 1, worth: 1, features: {seat: 10 H7}}
  bush: {kind: bought, features: {rim: 10 h6}, offers: [{vendor: near, price: 1, lead: 1 wd}]}
  arm: {kind: bought, have: 1, worth: 1}
  lid: {kind: bought, have: 1, worth: 1}
  shaft: {kind: bought, offers: [{vendor: far, price: 9, lead: ${late}}]}
  screw: {kind: bought, have: 10, worth: 0.1}
  glue: {kind: bought, role: consumable, have: 1, worth: 1}
assembly:
  ground: base
  openings: {base: [top]}
  steps:
    - {name: fit shaft, put: shaft, in: base, by: seat, time: 5 min}
    - {name: fit bush, put: bush, in: base, by: seat, needs: [shaft], time: 5 min}
    - {name: fit arm, put: arm, on: base, by: screw, with: screw x2, needs: [shaft], time: 5 min, check: swings}
    - {name: glue on, put: glue, on: arm, by: glue, after: [fit arm], time: 5 min}
    - {name: swing test, test: swings freely, after: [fit arm, fit bush], needs: [program], time: 5 min}
    - {name: shut, put: lid, on: base, by: snap, after: [fit shaft], shut: base.top, time: 5 min}
${more}`

const folder = import.meta.dirname
function trialsOf(source: string): readonly TrialFit[] {
  const { results, diagnostics } = plan('-', { folder, stdin: Buffer.from(source), samples: 0, effort: 4 })
  expect(diagnostics.filter(({ level }) => level === 'error')).toEqual([])
  return results!.trialFits
}
const told = (fit: TrialFit) => ({
  day: formatDay(fit.day),
  steps: fit.legs.flatMap(({ steps }) => steps.map(({ id }) => id)),
})

describe('a trial fit', () => {
  it('takes what is here, in order, without what waits for the late part and without glue', () => {
    const [first] = trialsOf(text('10 wd'))
    expect(told(first!).steps).toEqual(['fit bush', 'fit arm'])
    expect(first!.legs[0]!.joins.map(({ sort }) => sort)).toEqual(['fit'])
    expect(first!.legs[0]!.tests.map(({ id }) => id)).toEqual(['swing test'])
    expect(first!.legs[0]!.whole).toBe(false)
  })

  it('is told for the first day on which it tells anything', () => {
    // The bush is ordered on Monday evening, after the cutoff: vendor day Tuesday, lead Wednesday, carrier Thursday 18:00.
    expect(told(trialsOf(text('10 wd'))[0]!).day).toBe('2026-02-06')
  })

  it('is not offered for work that is done on the same day anyway', () => {
    expect(trialsOf(text('1 wd'))).toEqual([])
  })

  it('stands in the report and on the sheet in the same words', () => {
    const { report, workbook } = planReport('-', {
      folder,
      stdin: Buffer.from(text('10 wd')),
      samples: 0,
      effort: 4,
    })
    const [fit] = report!.trialFits
    expect(fit!.legs[0]!.meets).toEqual(['bush.rim and base.seat'])
    const sheet = workbook!.sheets.find(({ name }) => name === 'Assembly')!
    const words = sheet.blocks
      .flatMap(({ rows }) => rows.flatMap(({ cells }) => cells))
      .map(({ value }) => value)
    expect(words).toContainEqual({ type: 'text', text: fit!.says })
  })
})
