import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isFault } from '../../../../src/base/quantity-fault.ts'
import { wholeDown, wholeUp } from '../../../../src/trade/printing/domain.ts'
import { duration, figure } from '../../../../src/trade/printing/figure.ts'
import { filamentFlow, filamentTime } from '../../../../src/trade/printing/filament-time.ts'
import { filamentSupport, filamentUse } from '../../../../src/trade/printing/filament-use.ts'
import { modelHole, modelSize } from '../../../../src/trade/printing/model-size.ts'
import { printTolerance, printTroubles } from '../../../../src/trade/printing/print-limits.ts'
import { resinUse, solventUse } from '../../../../src/trade/printing/resin-use.ts'
import { scannedTime } from '../../../../src/trade/printing/scanned-time.ts'
import { tiltedHeight } from '../../../../src/trade/printing/tilted-height.ts'
import { vatFinishing } from '../../../../src/trade/printing/vat-finishing.ts'
import { vatMoving, vatTime } from '../../../../src/trade/printing/vat-time.ts'

/** Every number in a result, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : []
}

const wild = fc.oneof(
  fc.double(),
  fc.double({ min: 0, max: 1 }),
  fc.integer({ min: -2, max: 300 }),
  fc.constantFrom(0, -0, 1e-300, 1e-18, 1e12, 1e300, Number.NaN, Number.POSITIVE_INFINITY),
)
const wildOrNone = fc.oneof(wild, fc.constant(null))

const formulas: readonly [string, fc.Arbitrary<unknown>][] = [
  [
    'vatTime',
    fc
      .record({
        heightMm: wild,
        layerMm: wildOrNone,
        exposureSeconds: wild,
        bottomLayers: wildOrNone,
        bottomSeconds: wildOrNone,
        movingSecondsPerLayer: wildOrNone,
      })
      .map(vatTime),
  ],
  [
    'vatMoving',
    fc
      .record({ liftMm: wild, liftMmPerSecond: wild, retractMmPerSecond: wild, restSeconds: wild })
      .map(vatMoving),
  ],
  [
    'scannedTime',
    fc
      .record({
        heightMm: wild,
        layerMm: wild,
        volumeCm3: wild,
        scanMmPerSecond: wild,
        hatchMm: wild,
        movingSecondsPerLayer: wild,
      })
      .map(scannedTime),
  ],
  [
    'tiltedHeight',
    fc.record({ lengthMm: wild, thicknessMm: wild, tiltDegrees: wild, raftMm: wild }).map(tiltedHeight),
  ],
  [
    'resinUse',
    fc
      .record({
        partsCm3: wild,
        supportFraction: wildOrNone,
        lossCm3: wildOrNone,
        densityGPerCm3: wildOrNone,
      })
      .map(resinUse),
  ],
  [
    'solventUse',
    fc
      .record({ surfaceCm2: wild, filmMm: wildOrNone, fullAtFraction: wildOrNone, dragOutMm: wildOrNone })
      .map(solventUse),
  ],
  ['vatFinishing', fc.record({ parts: wild, partsPerWash: wild, partsPerCure: wild }).map(vatFinishing)],
  [
    'filamentUse',
    fc
      .record({
        partCm3: wild,
        surfaceCm2: wild,
        wallMm: wild,
        infill: wild,
        supportCm3: wild,
        filamentMm: wild,
        densityGPerCm3: wild,
      })
      .map(filamentUse),
  ],
  ['filamentSupport', fc.record({ columnCm3: wild, density: wildOrNone }).map(filamentSupport)],
  [
    'filamentFlow',
    fc
      .record({
        lineWidthMm: wildOrNone,
        layerMm: wildOrNone,
        speedMmPerSecond: wildOrNone,
        mostMm3PerSecond: wildOrNone,
      })
      .map(filamentFlow),
  ],
  [
    'filamentTime',
    fc
      .record({
        depositedCm3: wild,
        flowMm3PerSecond: wild,
        efficiency: wildOrNone,
        layers: wild,
        secondsPerLayer: wildOrNone,
        heatSeconds: wild,
      })
      .map(filamentTime),
  ],
  ['printTolerance', wild.map((size) => printTolerance('vat', size))],
  [
    'printTroubles',
    fc
      .record({ wall: wildOrNone, hole: wildOrNone, clearance: wildOrNone, pin: wildOrNone })
      .map((features) => printTroubles(features, 'filament')),
  ],
  ['modelSize', fc.record({ wantedMm: wild, shrinkPercent: wild }).map(modelSize)],
  ['modelHole', fc.record({ wantedMm: wild, underMm: wildOrNone }).map(modelHole)],
]

describe('no input gives a number that is none', () => {
  it.each(formulas)('%s gives finite numbers from 0 up, or says what is outside', (_, answers) => {
    fc.assert(
      fc.property(answers, (answer) => {
        if (isFault(answer as object)) expect(answer).toMatchObject({ fault: 'out of domain' })
        else for (const n of numbersIn(answer)) expect(Number.isFinite(n) && n >= 0, `${n}`).toBe(true)
      }),
      { numRuns: 400 },
    )
  })
})

describe('laws of printing', () => {
  const vat = {
    layerMm: 0.05,
    exposureSeconds: 2,
    bottomLayers: 5,
    bottomSeconds: 30,
    movingSecondsPerLayer: 6,
  }

  it('a higher print never takes less time', () => {
    const height = fc.double({ min: 0.01, max: 300, noNaN: true })
    fc.assert(
      fc.property(height, height, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)].map((heightMm) => vatTime({ ...vat, heightMm }))
        if (isFault(low!) || isFault(high!)) throw new Error('a height of the trade')
        expect(low!.seconds).toBeLessThanOrEqual(high!.seconds)
      }),
    )
  })

  it('what nobody gave is listed as assumed with its source, and nothing else is', () => {
    const all = vatTime({ ...vat, heightMm: 10 })
    expect(all).toMatchObject({ assumed: [] })
    const some = vatTime({ ...vat, heightMm: 10, layerMm: null, bottomSeconds: null })
    if (isFault(some)) throw new Error('a print of the trade')
    expect(some.assumed.map(({ what, value }) => [what, value])).toEqual([
      ['layer height', 0.05],
      ['bottom exposure', 20],
    ])
    expect(some.worked.filter((line) => line.startsWith('assumed: '))).toHaveLength(2)
  })

  it('a fully filled part weighs what its volume weighs, and the shell never passes the part', () => {
    const part = {
      partCm3: 3,
      surfaceCm2: 90,
      wallMm: 1.2,
      infill: 1,
      supportCm3: 0,
      filamentMm: 1.75,
      densityGPerCm3: 1.27,
    }
    expect(filamentUse(part)).toMatchObject({ shellCm3: 3, depositedCm3: 3 })
  })

  it('solvent: 100 cm2 with 0.1 mm of resin in a bath full at a tenth use 10 cm3 and 0.5 cm3 dragged out', () => {
    const used = solventUse({ surfaceCm2: 100, filmMm: 0.1, fullAtFraction: 0.1, dragOutMm: 0.05 })
    if (isFault(used)) throw new Error('a wash of the trade')
    expect(used.cm3).toBeCloseTo(10.5, 9)
  })

  it('seven parts three to a wash need three rounds in each bath; supports count every part', () => {
    const steps = vatFinishing({ parts: 7, partsPerWash: 3, partsPerCure: 4 })
    if (isFault(steps)) throw new Error('a plate of the trade')
    expect(steps.map(({ rounds }) => rounds)).toEqual([1, 3, 3, 1, 7, 2])
    expect(steps[1]).toMatchObject({ lowMinutes: 6, likelyMinutes: 10.5, highMinutes: 15, attention: 'none' })
  })

  it('quotients that are whole but for rounding are whole', () => {
    // 2.1 / 0.3 is 7.000000000000001 in doubles, 0.3 / 0.1 is 2.9999999999999996.
    expect([wholeUp(2.1 / 0.3), wholeUp(0.3 / 0.1), wholeUp(2.0001)]).toEqual([7, 3, 3])
    expect([wholeDown(0.3 / 0.1), wholeDown(2.1 / 0.3), wholeDown(2.9999)]).toEqual([3, 7, 2])
  })

  it('numbers and times are written as a person writes them', () => {
    expect([figure(12732.395), figure(1 / 3), figure(38.6), figure(1e-7)]).toEqual([
      '12732',
      '0.33333',
      '38.6',
      '1e-7',
    ])
    expect([duration(45), duration(720), duration(7200), duration(8637.5), duration(3599)]).toEqual([
      '45 s',
      '12 min',
      '2 h',
      '2 h 24 min',
      '1 h',
    ])
  })
})
