import { describe, expect, it } from 'vitest'
import { batteryEnergy } from '../../src/trade/hazards/battery-energy.ts'
import { dailyNoise } from '../../src/trade/hazards/daily-noise.ts'
import { airNeeded, isopropylAlcohol, solventVapour } from '../../src/trade/hazards/solvent-vapour.ts'
import { labelOf, pictograms, statements, substanceLabels } from '../../src/trade/hazards/substance-labels.ts'

const within = (got: number | undefined, wanted: number, relative: number): void =>
  expect(Math.abs((got ?? Number.NaN) - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted))

describe('labels of substances', () => {
  // Safety data sheets of 2-propanol, Shell 2020 and Carl Roth 2024.
  it('give 2-propanol the flame and the exclamation mark, H225, H319 and H336', () => {
    for (const name of ['isopropyl alcohol', 'Isopropanol', '2-propanol'])
      expect(labelOf(name)).toMatchObject({
        pictograms: ['GHS02', 'GHS07'],
        statements: ['H225', 'H319', 'H336'],
        seen: true,
      })
  })

  // CLP, Regulation (EC) 1272/2008, annex I: statements go with pictograms; from memory.
  it('show the pictogram that each statement goes with', () => {
    const goesWith = {
      ...{ H225: 'GHS02', H228: 'GHS02', H252: 'GHS02', H261: 'GHS02', H290: 'GHS05', H314: 'GHS05' },
      ...{ H318: 'GHS05', H350i: 'GHS08', H372: 'GHS08', H411: 'GHS09' },
    } as const
    for (const label of substanceLabels)
      for (const [statement, pictogram] of Object.entries(goesWith))
        if (label.statements.some((one) => one === statement))
          expect([...label.pictograms, label.names[0]]).toContain(pictogram)
    expect(Object.keys(pictograms)).toHaveLength(9)
    expect(Object.keys(statements).every((code) => /^H[234]\d\di?$/.test(code))).toBe(true)
  })

  it('know nothing of a substance that is in no table', () => {
    expect(labelOf('unobtainium')).toBe(null)
  })
})

describe('vapour of spilled solvent', () => {
  // By hand: 100 x 0.785 / 60.1 = 1.306 mol, x 24.06 L = 31.43 L in 30 000 L; burning from 2.0 %.
  it('100 mL of isopropyl alcohol in 30 m3 are 1.306 mol, 31.43 L, 1048 ppm, 5.2 % of the burning limit', () => {
    const vapour = solventVapour(isopropylAlcohol, { spiltMl: 100, roomM3: 30 })
    within(vapour?.moles, 1.306, 0.01)
    within(vapour?.gasLitres, 31.43, 0.01)
    within(vapour?.partsPerMillion, 1048, 0.01)
    within(vapour?.shareOfBurning, 0.0524, 0.01)
    expect(vapour?.tooMuch).toBe(false)
  })

  it('500 mL in 12 m3 are 13094 ppm, 65.5 % of the burning limit, and too much', () => {
    const vapour = solventVapour(isopropylAlcohol, { spiltMl: 500, roomM3: 12 })
    within(vapour?.partsPerMillion, 13094, 0.01)
    within(vapour?.shareOfBurning, 0.655, 0.01)
    expect(vapour?.tooMuch).toBe(true)
  })

  // R = 8.314462618 J/(mol K), CODATA 2018; 20 C, 101 325 Pa.
  it('takes the room that an ideal gas takes', () => {
    const vapour = solventVapour(isopropylAlcohol, { spiltMl: 60.1 / 0.785, roomM3: 1 })
    within(vapour?.gasLitres, (8.314462618 * 293.15 * 1000) / 101325, 1e-3)
  })

  // A balance: 1 g/h into 1 m3/h holds 1000 mg/m3.
  it('needs air in step with what evaporates and in inverse step with the limit', () => {
    expect(airNeeded({ gramsPerHour: 1, limitMgPerM3: 1000 }, 1)).toBeCloseTo(1, 12)
    expect(airNeeded({ gramsPerHour: 20, limitMgPerM3: 500 }, 3)).toBeCloseTo(120, 9)
  })

  it('says nothing of numbers out of domain', () => {
    const spill = { spiltMl: 100, roomM3: 30 }
    for (const bad of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(solventVapour(isopropylAlcohol, { ...spill, spiltMl: bad })).toBe(null)
      expect(solventVapour({ ...isopropylAlcohol, molarGPerMol: bad }, spill)).toBe(null)
      expect(airNeeded({ gramsPerHour: bad, limitMgPerM3: 1 })).toBe(null)
    }
    expect(solventVapour(isopropylAlcohol, { ...spill, roomM3: 0 })).toBe(null)
    expect(airNeeded({ gramsPerHour: 1, limitMgPerM3: 0 })).toBe(null)
    expect(airNeeded({ gramsPerHour: 1, limitMgPerM3: 1 }, 0.5)).toBe(null)
  })
})

describe('noise of a day', () => {
  // By hand: 92 + 10 lg(1.5 / 8) = 84.73.
  it('92 dB(A) for 1.5 h are 84.7 dB(A) over 8 h, past the lower action value', () => {
    const noise = dailyNoise([{ levelDbA: 92, hours: 1.5 }])
    expect(Math.abs((noise?.levelDbA ?? 0) - 84.7)).toBeLessThanOrEqual(0.1)
    expect(noise?.stands).toBe('lower action value')
  })

  // The 3 dB exchange: half the time at 3.01 dB more is the same day. Directive 2003/10/EC, from memory.
  it('is the level itself over 8 h, and the same for half the time at twice the energy', () => {
    expect(dailyNoise([{ levelDbA: 85, hours: 8 }])).toEqual({ levelDbA: 85, stands: 'upper action value' })
    const half = dailyNoise([{ levelDbA: 85 + 10 * Math.log10(2), hours: 4 }])
    expect(half?.levelDbA).toBeCloseTo(85, 9)
  })

  it('adds spells by their energy, in any order and cut in any pieces', () => {
    const saw = { levelDbA: 94, hours: 0.5 }
    const mill = { levelDbA: 82, hours: 3 }
    const halves = [0.25, 0.25].map((hours) => ({ ...saw, hours }))
    const day = dailyNoise([saw, mill])
    expect(dailyNoise([mill, ...halves])?.levelDbA).toBeCloseTo(day?.levelDbA ?? 0, 9)
    expect(day?.levelDbA).toBeGreaterThan(dailyNoise([saw])?.levelDbA ?? 0)
  })

  // Values of Directive 2003/10/EC, from memory: 80, 85 and 87 dB(A).
  it('stands below, at the action values, or above the limit', () => {
    const stands = (levelDbA: number) => dailyNoise([{ levelDbA, hours: 8 }])?.stands
    expect([79, 80.01, 85.01, 87.5].map(stands)).toEqual([
      'below',
      'lower action value',
      'upper action value',
      'above the limit',
    ])
  })

  it('says nothing without spells or of days longer than a day', () => {
    expect(dailyNoise([])).toBe(null)
    expect(dailyNoise([{ levelDbA: 80, hours: 0 }])).toBe(null)
    expect(dailyNoise([{ levelDbA: Number.NaN, hours: 1 }])).toBe(null)
    expect(dailyNoise([20, 5].map((hours) => ({ levelDbA: 80, hours })))).toBe(null)
  })
})

describe('energy of a battery pack', () => {
  const cell = { cellVolts: 3.7, cellAmpHours: 2.6 }

  // By hand: 2 x 3.7 V x 2.6 Ah = 19.24 Wh; the step of 100 Wh, UN special provision 188, from memory.
  it('two cells of 3.7 V and 2.6 Ah in series hold 19.24 Wh, below the transport step', () => {
    const pack = batteryEnergy({ ...cell, inSeries: 2, inParallel: 1 })
    within(pack?.wattHours, 19.24, 0.005)
    expect(pack).toMatchObject({ volts: 7.4, ampHours: 2.6, aboveTransportStep: false })
  })

  it('holds the same however its cells are joined', () => {
    const series = batteryEnergy({ ...cell, inSeries: 12, inParallel: 1 })
    const parallel = batteryEnergy({ ...cell, inSeries: 1, inParallel: 12 })
    expect(series?.wattHours).toBeCloseTo(parallel?.wattHours ?? 0, 9)
    expect(series?.aboveTransportStep).toBe(true)
  })

  it('says nothing of half a cell or of none', () => {
    for (const inSeries of [0, -1, 1.5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(batteryEnergy({ ...cell, inSeries, inParallel: 1 })).toBe(null)
    expect(batteryEnergy({ cellVolts: 0, cellAmpHours: 1, inSeries: 1, inParallel: 1 })).toBe(null)
  })
})
