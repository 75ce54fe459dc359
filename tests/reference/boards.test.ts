import { describe, expect, it } from 'vitest'
import { isFault } from '../../src/base/quantity-fault.ts'
import { chipSize, chipSizes } from '../../src/trade/boards/chip-size.ts'
import {
  batteryHours,
  designSchmitt,
  divider,
  invertingSchmitt,
  ledResistor,
  rcCircuit,
  singleSupplySchmitt,
} from '../../src/trade/boards/circuits.ts'
import { panelCount } from '../../src/trade/boards/panel-count.ts'
import { attritionOf, piecesToBuy } from '../../src/trade/boards/pieces-to-buy.ts'
import { traceCurrent, traceWidth } from '../../src/trade/boards/trace-current.ts'

function found<T extends object>(read: T): Exclude<T, { readonly fault: string }> {
  if (isFault(read as object)) throw new Error(JSON.stringify(read))
  return read as Exclude<T, { readonly fault: string }>
}
const within = (got: number, wanted: number, relative: number): void =>
  expect(Math.abs(got - wanted), `${got}, not ${wanted}`).toBeLessThanOrEqual(relative * Math.abs(wanted))

describe('boards on a panel (guidelines of board makers; counts by hand)', () => {
  const board = { xMm: 40, yMm: 30 }
  const panel = { xMm: 250, yMm: 200, railXMm: 5, railYMm: 0 }

  it('250 x 200 with rails of 5 on the short edges and 2 mm routed holds 5 x 6; turned 7 x 4', () => {
    const count = found(panelCount(panel, board, { by: 'route', gapMm: 2 }))
    expect(count.straightGrid).toEqual({ across: 5, deep: 6, count: 30 })
    expect(count.turnedGrid).toEqual({ across: 7, deep: 4, count: 28 })
    expect(count).toMatchObject({ count: 30, turned: false })
  })

  it('the same panel scored holds 6 x 6, and 8 x 5 turned', () => {
    const count = found(panelCount(panel, board, { by: 'score' }))
    expect(count.straightGrid).toEqual({ across: 6, deep: 6, count: 36 })
    expect(count.turnedGrid).toEqual({ across: 8, deep: 5, count: 40 })
    expect(count).toMatchObject({ count: 40, turned: true })
  })

  it('a side of 122 without rail takes three boards of 39 at 2 mm: 3 x 39 + 2 x 2 = 121', () => {
    const row = { xMm: 122, yMm: 39, railXMm: 0, railYMm: 0 }
    expect(found(panelCount(row, { xMm: 39, yMm: 39 }, { by: 'route', gapMm: 2 })).count).toBe(3)
  })
})

// I A, dT K, oz, external mil2, mil, mm, internal mil, mm: computed from the constants of a manufacturer's design page.
const traces = [
  [0.5, 10, 1, 6.26, 4.55, 0.115, 11.83, 0.3],
  [1, 10, 1, 16.3, 11.83, 0.3, 30.76, 0.781],
  [1, 20, 1, 10.7, 7.76, 0.197, 20.2, 0.513],
  [2, 10, 1, 42.39, 30.76, 0.781, 80.03, 2.033],
  [3, 10, 1, 74.16, 53.82, 1.367, 140.01, 3.556],
  [3, 20, 2, 48.7, 17.67, 0.449, 45.96, 1.167],
  [5, 20, 2, 98.51, 35.74, 0.908, 92.99, 2.362],
  [10, 20, 2, 256.27, 92.99, 2.362, 241.9, 6.144],
] as const

describe('trace current by the IPC-2221 fit', () => {
  it.each(traces)('%d A at %d K on %d oz', (currentA, riseK, copperOz, area, mil, mm, inMil, inMm) => {
    const of = { currentA, riseK, copperOz, set: 'IPC-2221' } as const
    const [out, inside] = [
      found(traceWidth({ ...of, layer: 'external' })),
      found(traceWidth({ ...of, layer: 'internal' })),
    ]
    within(out.areaMil2, area, 5e-3)
    within(out.widthMm / 0.0254, mil, 5e-3)
    within(out.widthMm, mm, 5e-3)
    within(inside.widthMm / 0.0254, inMil, 5e-3)
    within(inside.widthMm, inMm, 5e-3)
  })

  it('width and current undo each other, in both sets', () => {
    for (const set of ['IPC-2221', 'older fit'] as const)
      for (const layer of ['external', 'internal'] as const) {
        const of = { layer, riseK: 20, copperOz: 1, set }
        const { widthMm } = found(traceWidth({ ...of, currentA: 2.5 }))
        within(found(traceCurrent({ ...of, widthMm })).currentA, 2.5, 1e-12)
      }
  })

  // By hand from the older constants: (1 / (0.0647 x 10^0.4281))^(1 / 0.6732) = 13.50 mil2.
  it('the older fit gives another width, and says so', () => {
    const old = found(
      traceWidth({ layer: 'external', riseK: 10, copperOz: 1, set: 'older fit', currentA: 1 }),
    )
    within(old.areaMil2, 13.5, 5e-3)
    expect(old.worked[0]).toContain('older fit')
  })
})

describe('small circuits', () => {
  // Public worked examples: 159 Hz; 6.04 Hz.
  it('1 k and 1 uF turn at 159.15 Hz, 5.6 k and 4.7 uF at 6.05 Hz', () => {
    within(found(rcCircuit({ ohm: 1000, farad: 1e-6 })).cornerHz, 159.15, 2e-3)
    within(found(rcCircuit({ ohm: 5600, farad: 4.7e-6 })).cornerHz, 6.05, 2e-3)
  })

  // Public worked example of an inverting Schmitt trigger.
  it('+/-12 V with 10 k and 100 k switches at +/-1.091 V, 2.182 V apart', () => {
    const of = { referenceVolt: 0, highVolt: 12, lowVolt: -12, r1Ohm: 10e3, r2Ohm: 100e3 }
    const at = found(invertingSchmitt(of))
    within(at.upperVolt, 1.091, 2e-3)
    within(at.lowerVolt, -1.091, 2e-3)
    within(at.hysteresisVolt, 2.182, 2e-3)
  })

  // By hand: (1.65 x 47 + 3.3 x 10) / 57 and (1.65 x 47) / 57.
  it('1.65 V reference, 3.3 V output, 10 k and 47 k switch at 1.9395 and 1.3605 V', () => {
    const of = { referenceVolt: 1.65, highVolt: 3.3, lowVolt: 0, r1Ohm: 10e3, r2Ohm: 47e3 }
    const at = found(invertingSchmitt(of))
    within(at.upperVolt, 1.9395, 2e-3)
    within(at.lowerVolt, 1.3605, 2e-3)
    within(at.hysteresisVolt, 0.5789, 2e-3)
  })

  // A maker's note on a comparator with hysteresis: 2.7 and 2.3 V on 5 V.
  it('5 V with 100 k, 100 k and 576 k switches at 2.70 and 2.30 V, and the design leads back to them', () => {
    const of = { supplyVolt: 5, toSupplyOhm: 100e3, toGroundOhm: 100e3, toOutputOhm: 576e3 }
    const at = found(singleSupplySchmitt(of))
    within(at.upperVolt, 2.6997, 2e-3)
    within(at.lowerVolt, 2.3003, 2e-3)
    const { upperVolt, lowerVolt } = at
    const back = found(designSchmitt({ supplyVolt: 5, upperVolt, lowerVolt, toSupplyOhm: 100e3 }))
    within(back.toGroundOhm, 100e3, 1e-9)
    within(back.toOutputOhm, 576e3, 1e-9)
  })

  // By hand: 45 x 0.05 + 0.3 x 0.95 = 2.535 mA; 960 / 2.535 = 378.7 h.
  it('1200 mAh, 0.8 of it, runs 45 mA for a twentieth and 0.3 mA else for 378.7 h', () => {
    const loads = [
      { milliampere: 45, share: 0.05 },
      { milliampere: 0.3, share: 0.95 },
    ]
    const run = found(batteryHours({ milliampereHours: 1200, usable: 0.8 }, loads))
    within(run.averageMilliampere, 2.535, 5e-3)
    within(run.hours, 378.7, 5e-3)
  })

  // Textbook, by hand.
  it('5 V over 10 k and 15 k gives 3 V; an LED of 2 V at 10 mA on 5 V takes 300 ohm', () => {
    within(found(divider({ volt: 5, upperOhm: 10e3, lowerOhm: 15e3 })).outVolt, 3, 1e-12)
    within(found(ledResistor({ supplyVolt: 5, forwardVolt: 2, ampere: 0.01 })).ohm, 300, 1e-12)
  })
})

describe('buying and chip sizes', () => {
  // Common practice, no source: 10 % or 10 pieces of 0402.
  it('24 boards with ten 0402 each take 240 and 24 more', () => {
    const need = { perBoard: 10, boards: 24, attrition: attritionOf('0402'), packOf: 1 }
    expect(found(piecesToBuy(need))).toMatchObject({ placed: 240, spare: 24, pieces: 264 })
  })

  // Four public tables that agree.
  it('the whole table of chip sizes', () => {
    expect(chipSizes.map((s) => `${s.inch} ${s.metric} ${s.lengthMm}x${s.widthMm}`)).toEqual([
      '01005 0402 0.4x0.2',
      '0201 0603 0.6x0.3',
      '0402 1005 1x0.5',
      '0603 1608 1.6x0.8',
      '0805 2012 2x1.25',
      '1206 3216 3.2x1.6',
      '1210 3225 3.2x2.5',
      '1812 4532 4.5x3.2',
      '2010 5025 5x2.5',
      '2512 6332 6.3x3.2',
    ])
  })

  it('0603 without a system is 1.6 x 0.8 or 0.6 x 0.3 mm; with one it is plain', () => {
    expect(chipSize('0603', null)).toMatchObject({
      fault: 'ambiguous',
      inch: { lengthMm: 1.6, widthMm: 0.8 },
      metric: { lengthMm: 0.6, widthMm: 0.3 },
    })
    expect(chipSize('0603', 'inch')).toMatchObject({ metric: '1608' })
    expect(chipSize('0402', null)).toHaveProperty('fault', 'ambiguous')
    expect(chipSize('0805', null)).toMatchObject({ lengthMm: 2 })
    expect(chipSize('1234', null)).toEqual({ fault: 'no such chip', code: '1234' })
  })
})
