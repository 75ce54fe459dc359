import { describe, expect, it } from 'vitest'
import { isFault } from '../../src/base/quantity-fault.ts'
import { filamentFlow, filamentTime } from '../../src/trade/printing/filament-time.ts'
import { filamentUse } from '../../src/trade/printing/filament-use.ts'
import { modelSize } from '../../src/trade/printing/model-size.ts'
import { printLimits, printTolerance, printTroubles } from '../../src/trade/printing/print-limits.ts'
import { resinUse } from '../../src/trade/printing/resin-use.ts'
import { scannedTime } from '../../src/trade/printing/scanned-time.ts'
import { tiltedHeight } from '../../src/trade/printing/tilted-height.ts'
import { filaments } from '../../src/trade/printing/typical.ts'
import { layersOf, vatMoving, vatTime } from '../../src/trade/printing/vat-time.ts'

function found<T extends object>(read: T): Exclude<T, { readonly fault: string }> {
  if (isFault(read as object)) throw new Error(JSON.stringify(read))
  return read as Exclude<T, { readonly fault: string }>
}
const within = (got: number, wanted: number, relative: number): void =>
  expect(Math.abs(got - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted))

describe('vat prints', () => {
  // A public worked example of masked vat time prints about 8640 s; by its formula 8637.5 s.
  it('50 mm at 0.05 mm, 2.5 s, 5 bottom layers of 30 s, lift 5 mm at 2 mm/s and 1 s rest take 8637.5 s', () => {
    const moves = { liftMm: 5, liftMmPerSecond: 2, retractMmPerSecond: 2, restSeconds: 1 }
    const { secondsPerLayer } = found(vatMoving(moves))
    expect(secondsPerLayer).toBe(6)
    const time = found(
      vatTime({
        ...{ heightMm: 50, layerMm: 0.05, exposureSeconds: 2.5, bottomLayers: 5, bottomSeconds: 30 },
        movingSecondsPerLayer: secondsPerLayer,
      }),
    )
    expect(time.layers).toBe(1000)
    within(time.seconds, 8637.5, 1e-12)
    within(time.seconds, 8640, 1e-3)
    expect(time.worked[1]).toBe(
      'time = 5 bottom x 30 s + 995 x 2.5 s + 1000 x 6 s moving = 8637.5 s (2 h 24 min)',
    )
  })

  // Worked by hand from the same formula: 6 x 25 + 475 x 2 + 481 x 4.
  it('24.02 mm begins a 481st layer of 0.05 mm and takes 3024 s', () => {
    const moves = { liftMm: 6, liftMmPerSecond: 3, retractMmPerSecond: 4, restSeconds: 0.5 }
    const { secondsPerLayer } = found(vatMoving(moves))
    expect(secondsPerLayer).toBe(4)
    const time = found(
      vatTime({
        ...{ heightMm: 24.02, layerMm: 0.05, exposureSeconds: 2, bottomLayers: 6, bottomSeconds: 25 },
        movingSecondsPerLayer: secondsPerLayer,
      }),
    )
    expect([time.layers, time.seconds]).toEqual([481, 3024])
  })

  // By hand: 3 x 20 + 3 x 6.
  it('three layers with five bottom layers set are all bottom layers: 78 s', () => {
    const time = found(
      vatTime({
        ...{ heightMm: 0.15, layerMm: 0.05, exposureSeconds: 2, bottomLayers: 5, bottomSeconds: 20 },
        movingSecondsPerLayer: 6,
      }),
    )
    expect([time.layers, time.bottomLayers, time.seconds]).toEqual([3, 3, 78])
  })

  // By hand: 12 x 1.2 + 5; 19.4 x 0.05 = 0.97.
  it('a part of 12 cm3 with a fifth of supports and 5 cm3 lost takes 19.4 cm3, worth 0.97 at 0.05 a cm3', () => {
    const { cm3 } = found(resinUse({ partsCm3: 12, supportFraction: 0.2, lossCm3: 5, densityGPerCm3: 1.1 }))
    within(cm3, 19.4, 1e-12)
    within(cm3 * 0.05, 0.97, 1e-12)
  })

  // By hand: 60 sin 30 + 3 cos 30 + 6 = 30 + 2.598 + 6.
  it('a plate of 60 x 3 mm leaning 30 degrees on 6 mm of raft stands 38.60 mm high, 772 layers of 0.05', () => {
    const { heightMm } = found(tiltedHeight({ lengthMm: 60, thicknessMm: 3, tiltDegrees: 30, raftMm: 6 }))
    expect(heightMm).toBeCloseTo(38.598, 3)
    expect(layersOf(heightMm, 0.05)).toBe(772)
  })

  // By hand, formula from memory: 10,000 mm3 / 0.1 / (1000 x 0.1) = 1000 s and 200 x 5 s.
  it('a laser that scans 1000 mm/s at 0.1 mm fills 10 cm3 in 1000 s and moves 1000 s more over 200 layers', () => {
    const print = { heightMm: 20, layerMm: 0.1, volumeCm3: 10, scanMmPerSecond: 1000, hatchMm: 0.1 }
    const time = found(scannedTime({ ...print, movingSecondsPerLayer: 5 }))
    expect(time.layers).toBe(200)
    within(time.seconds, 2000, 1e-12)
  })
})

describe('filament prints', () => {
  it('a line of 0.45 x 0.2 mm at 60 mm/s is 5.4 mm3/s', () => {
    const flow = { lineWidthMm: 0.45, layerMm: 0.2, speedMmPerSecond: 60, mostMm3PerSecond: 12 }
    within(found(filamentFlow(flow)).mm3PerSecond, 5.4, 1e-12)
  })

  it('a hot end of 4 mm3/s slows that line to 44.4 mm/s', () => {
    const flow = { lineWidthMm: 0.45, layerMm: 0.2, speedMmPerSecond: 60, mostMm3PerSecond: 4 }
    const slow = found(filamentFlow(flow))
    expect(slow).toMatchObject({ mm3PerSecond: 4, limited: true })
    within(slow.speedMmPerSecond, 44.444, 1e-4)
  })

  const part = {
    ...{ partCm3: 20, surfaceCm2: 52, wallMm: 0.9, infill: 0.2, supportCm3: 0 },
    ...{ filamentMm: 1.75, densityGPerCm3: filaments.pla.gPerCm3 },
  }

  // By hand: 52 x 0.09 = 4.68; 4.68 + 0.2 x 15.32 = 7.744; x 1.24 = 9.60; / 2.405 mm2 = 3.220 m.
  it('a part of 20 cm3 with 52 cm2 of 0.9 mm wall and a fifth of infill takes 7.744 cm3, 9.60 g, 3.220 m', () => {
    const use = found(filamentUse(part))
    within(use.shellCm3, 4.68, 1e-12)
    within(use.depositedCm3, 7.744, 1e-12)
    within(use.grams, 9.6, 5e-3)
    within(use.metres, 3.22, 5e-3)
  })

  // By hand: 7744 / (5.4 x 0.65) + 150 x 2 + 240.
  it('that part at 5.4 mm3/s and 0.65 of it, 150 layers of 2 s and 240 s of heating, takes 2746 s', () => {
    const { depositedCm3 } = found(filamentUse(part))
    const time = found(
      filamentTime({
        ...{ depositedCm3, flowMm3PerSecond: 5.4, efficiency: 0.65, layers: 150, secondsPerLayer: 2 },
        heatSeconds: 240,
      }),
    )
    within(time.seconds, 2746, 5e-3)
  })

  // Sections of the two common filaments, geometry: 2.405 and 6.379 mm2.
  it.each([
    [1.75, 2.405],
    [2.85, 6.379],
  ])('filament of %d mm has a section of %d mm2', (filamentMm, section) => {
    const { depositedCm3, metres } = found(filamentUse({ ...part, filamentMm }))
    within(depositedCm3 / metres, section, 2e-4)
  })
})

describe('design limits and tolerance, from four public design tables of print bureaus', () => {
  it.each([
    [40, 0.2],
    [150, 0.3],
  ])('a vat size of %d mm is good to the larger of 0.2 mm and 0.2 %%: %d mm', (size, wanted) => {
    within(found(printTolerance('vat', size)).usualMm, wanted, 1e-12)
  })

  it('a filament size of 200 mm is good to 0.5 % of it, 1 mm', () => {
    expect(found(printTolerance('filament', 200)).usualMm).toBe(1)
  })

  it('the whole table of least sizes', () => {
    expect(printLimits).toEqual({
      filament: {
        wall: { low: 0.8, high: 1.2 },
        hole: { low: 1.6, high: 2 },
        clearance: { low: 0.2, high: 0.5 },
        pin: { low: 2, high: 3 },
      },
      vat: {
        wall: { low: 0.8, high: 1 },
        hole: { low: 0.5, high: 0.5 },
        clearance: { low: 0.125, high: 0.3 },
        pin: { low: 1, high: 1 },
      },
    })
  })

  it('a hole of 1 mm is 0.6 mm too small for filament, and the vat would do', () => {
    const none = { wall: null, clearance: null, pin: null }
    const [trouble] = found(printTroubles({ ...none, hole: 1 }, 'filament'))
    expect(trouble).toMatchObject({ trouble: 'too small', feature: 'hole', needsMm: 1.6, wouldDo: ['vat'] })
    within(trouble!.shortMm, 0.6, 1e-12)
    expect(found(printTroubles({ ...none, hole: 1 }, 'vat'))).toEqual([])
  })

  // 25 x 1.004 = 25.100; 25 / 0.996 = 25.1004: both within the tolerance of the example.
  it('25 mm at 0.4 % of shrink is modelled 25.100 mm', () => {
    const { modelMm } = found(modelSize({ wantedMm: 25, shrinkPercent: 0.4 }))
    expect(Math.abs(modelMm - 25.1)).toBeLessThanOrEqual(0.001)
    within(modelMm * 0.996, 25, 1e-12)
  })
})
