import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isFault } from '../../../../src/base/quantity-fault.ts'
import { boardPrice } from '../../../../src/trade/boards/board-price.ts'
import { boardProcesses, boardVerdict } from '../../../../src/trade/boards/board-process.ts'
import {
  batteryHours,
  designSchmitt,
  divider,
  invertingSchmitt,
  ledResistor,
  rcCircuit,
  singleSupplySchmitt,
} from '../../../../src/trade/boards/circuits.ts'
import { panelCount, panelsNeeded } from '../../../../src/trade/boards/panel-count.ts'
import { attritionOf, piecesToBuy } from '../../../../src/trade/boards/pieces-to-buy.ts'
import { nearestPreferred } from '../../../../src/trade/boards/preferred-values.ts'
import { readPackage } from '../../../../src/trade/boards/read-package.ts'
import { solderTime } from '../../../../src/trade/boards/solder-time.ts'
import { traceCurrent, traceWidth } from '../../../../src/trade/boards/trace-current.ts'

function found<T extends object>(read: T): Exclude<T, { readonly fault: string }> {
  if (isFault(read as object)) throw new Error(JSON.stringify(read))
  return read as Exclude<T, { readonly fault: string }>
}

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
const none = fc.oneof(wild, fc.constant(null))
const conditions = {
  riseK: wild,
  copperOz: wild,
  layer: fc.constant('external' as const),
  set: fc.constant('IPC-2221' as const),
}
const tier = fc.record({ mostAreaCm2: wild, fromQuantity: wild, centsEach: wild })

const formulas: readonly [string, fc.Arbitrary<object>, boolean][] = [
  [
    'panelCount',
    fc
      .tuple(
        fc.record({ xMm: wild, yMm: wild, railXMm: wild, railYMm: wild }),
        fc.record({ xMm: wild, yMm: wild }),
        wild,
      )
      .map(([panel, board, gapMm]) => panelCount(panel, board, { by: 'route', gapMm })),
    true,
  ],
  ['panelsNeeded', fc.record({ boards: wild, spares: wild, perPanel: wild }).map(panelsNeeded), true],
  [
    'boardPrice',
    fc
      .tuple(fc.array(tier, { maxLength: 3 }), fc.record({ areaCm2: wild, quantity: wild, setupCents: wild }))
      .map(([list, order]) => boardPrice(list, order)),
    true,
  ],
  [
    'boardVerdict',
    fc.record({ trace: none, space: none, hole: none }).map((smallest) => boardVerdict(smallest, 'fine')),
    true,
  ],
  ['traceWidth', fc.record({ ...conditions, currentA: wild }).map(traceWidth), true],
  ['traceCurrent', fc.record({ ...conditions, widthMm: wild }).map(traceCurrent), true],
  ['nearestPreferred', wild.map((wanted) => nearestPreferred(wanted, 'E96')), false],
  [
    'piecesToBuy',
    fc
      .record({
        perBoard: wild,
        boards: wild,
        packOf: wild,
        attrition: fc.record({ fraction: wild, least: wild, source: fc.constant('test') }),
      })
      .map(piecesToBuy),
    true,
  ],
  [
    'solderTime',
    fc.tuple(wild, wild, wild).map(([count, boards, boardsPerHeat]) =>
      solderTime([{ package: '0603', count }], {
        boards,
        boardsPerHeat,
        pace: 'prototype',
        method: 'paste',
      }),
    ),
    true,
  ],
  ['rcCircuit', fc.record({ ohm: wild, farad: wild }).map(rcCircuit), true],
  ['divider', fc.record({ volt: wild, upperOhm: wild, lowerOhm: wild }).map(divider), true],
  ['ledResistor', fc.record({ supplyVolt: wild, forwardVolt: wild, ampere: wild }).map(ledResistor), true],
  [
    'invertingSchmitt',
    fc
      .record({ referenceVolt: wild, highVolt: wild, lowVolt: wild, r1Ohm: wild, r2Ohm: wild })
      .map(invertingSchmitt),
    false,
  ],
  [
    'singleSupplySchmitt',
    fc
      .record({ supplyVolt: wild, toSupplyOhm: wild, toGroundOhm: wild, toOutputOhm: wild })
      .map(singleSupplySchmitt),
    true,
  ],
  [
    'designSchmitt',
    fc.record({ supplyVolt: wild, upperVolt: wild, lowerVolt: wild, toSupplyOhm: wild }).map(designSchmitt),
    true,
  ],
  [
    'batteryHours',
    fc
      .tuple(
        fc.record({ milliampereHours: wild, usable: none }),
        fc.array(fc.record({ milliampere: wild, share: wild }), { maxLength: 3 }),
      )
      .map(([battery, loads]) => batteryHours(battery, loads)),
    true,
  ],
]

describe('no input gives a number that is none', () => {
  it.each(formulas)('%s gives finite numbers, or says what is outside', (_, answers, neverBelowZero) => {
    fc.assert(
      fc.property(answers, (answer) => {
        if (isFault(answer)) return
        for (const n of numbersIn(answer))
          expect(Number.isFinite(n) && (n >= 0 || !neverBelowZero), `${n}`).toBe(true)
      }),
      { numRuns: 400 },
    )
  })
})

describe('panels', () => {
  it('a larger panel never holds fewer, and what is held fits', () => {
    const mm = fc.integer({ min: 10, max: 6000 }).map((tenths) => tenths / 10)
    const small = fc.integer({ min: 0, max: 100 }).map((tenths) => tenths / 10)
    fc.assert(
      fc.property(mm, mm, mm, mm, small, small, (xMm, yMm, bx, by, railXMm, gapMm) => {
        const panel = { xMm, yMm, railXMm, railYMm: 0 }
        const count = found(panelCount(panel, { xMm: bx, yMm: by }, { by: 'route', gapMm }))
        const { across, deep } = count.straightGrid
        const edge = railXMm > 0 ? 2 * railXMm + 2 * gapMm : 0
        if (across > 0) expect(across * bx + (across - 1) * gapMm + edge).toBeLessThanOrEqual(xMm + 1e-6)
        expect((across + 1) * bx + across * gapMm + edge).toBeGreaterThan(xMm - 1e-6)
        if (deep > 0) expect(deep * by + (deep - 1) * gapMm).toBeLessThanOrEqual(yMm + 1e-6)
        const wider = found(
          panelCount({ ...panel, xMm: xMm + 7 }, { xMm: bx, yMm: by }, { by: 'route', gapMm }),
        )
        expect(wider.count).toBeGreaterThanOrEqual(count.count)
      }),
    )
  })

  it('spares are added before panels are counted: 28 and 3 spare at 30 a panel take two', () => {
    expect(panelsNeeded({ boards: 28, spares: 3, perPanel: 30 })).toMatchObject({ panels: 2, boardsMade: 60 })
    expect(panelsNeeded({ boards: 28, spares: 2, perPanel: 30 })).toMatchObject({ panels: 1 })
  })
})

describe('prices by area and quantity', () => {
  const list = [
    { mostAreaCm2: 100, fromQuantity: 5, centsEach: 100 },
    { mostAreaCm2: 100, fromQuantity: 10, centsEach: 45 },
    { mostAreaCm2: 25, fromQuantity: 5, centsEach: 40 },
  ]
  const order = { areaCm2: 30, quantity: 5, setupCents: 800 }

  it('the smallest area that holds the board and the largest quantity reached count', () => {
    expect(boardPrice(list, order)).toMatchObject({ totalCents: 1300 })
    expect(boardPrice(list, { ...order, areaCm2: 25 })).toMatchObject({ totalCents: 1000 })
    expect(boardPrice(list, { ...order, quantity: 12 })).toMatchObject({ totalCents: 12 * 45 + 800 })
  })

  it('a larger order that costs less is told', () => {
    expect(found(boardPrice(list, order)).cheaper).toEqual([{ quantity: 10, totalCents: 1250 }])
  })

  it('what the list does not hold is told', () => {
    expect(boardPrice(list, { ...order, areaCm2: 101 })).toMatchObject({
      fault: 'too large for the list',
      mostCm2: 100,
    })
    expect(boardPrice(list, { ...order, quantity: 4 })).toMatchObject({ fault: 'fewer than sold', least: 5 })
    expect(boardPrice([], order)).toEqual({ fault: 'empty list' })
  })
})

describe('what a process makes', () => {
  it('a trace of 0.12 mm is 0.03 too fine for standard, and the fine process would do', () => {
    const verdict = found(boardVerdict({ trace: 0.12, space: 0.2, hole: 0.4 }, 'standard'))
    expect(verdict.troubles).toHaveLength(1)
    expect(verdict.troubles[0]).toMatchObject({ trouble: 'too fine', feature: 'trace', needsMm: 0.15 })
    expect(verdict.troubles[0]?.shortMm).toBeCloseTo(0.03, 12)
    expect(verdict.wouldDo).toEqual(['fine'])
  })

  it('0.3 mm is doubtful at home, and a hole is not judged there', () => {
    const verdict = found(boardVerdict({ trace: 0.3, space: 0.5, hole: 0.8 }, 'etched'))
    expect(verdict.troubles[0]).toMatchObject({ trouble: 'doubtful', needsMm: 0.4 })
    expect(verdict.notJudged).toEqual(['hole'])
  })

  it('a size exactly at the limit is made, and no process would do means that each has a trouble', () => {
    expect(found(boardVerdict({ trace: 0.15, space: 0.15, hole: 0.3 }, 'standard')).troubles).toEqual([])
    // 0.7 - 0.4 is a little less than 0.3 in doubles.
    expect(found(boardVerdict({ trace: null, space: null, hole: 0.7 - 0.4 }, 'standard')).troubles).toEqual(
      [],
    )
    expect(found(boardVerdict({ trace: 0.05, space: null, hole: null }, 'fine')).wouldDo).toEqual([])
    expect(Object.keys(boardProcesses)).toHaveLength(5)
  })
})

describe('packages', () => {
  it.each([
    ['0603', 'chip', 2],
    ['R0805', 'chip', 2],
    ['C_1206_3216Metric', 'chip', 2],
    ['SOD-123', 'chip', 2],
    ['SOT-23', 'small leads', 3],
    ['SOT-23-5', 'small leads', 5],
    ['SOT23-6', 'small leads', 6],
    ['SOT-223', 'small leads', 4],
    ['SC-70-5', 'small leads', 5],
    ['SOIC-8', 'wide leads', 8],
    ['SO14', 'wide leads', 14],
    ['SOIC-8_3.9x4.9mm', 'wide leads', 8],
    ['TSSOP-16', 'fine leads', 16],
    ['MSOP-10', 'fine leads', 10],
    ['TQFP-32', 'fine leads', 32],
    ['LQFP64', 'fine leads', 64],
    ['QFN-16_3x3mm', 'no leads', 17],
    ['DFN-8', 'no leads', 9],
    ['BGA-256', 'balls', 256],
    ['DIP-8', 'through hole', 8],
    ['PDIP-28', 'through hole', 28],
    ['TO-92', 'through hole', 3],
    ['TO-220', 'through hole', 3],
    ['TO-220-5', 'through hole', 5],
    ['1x04', 'through hole', 4],
    ['PinHeader_2x05_2.54mm', 'through hole', 10],
  ])('%s is soldered as %s with %i joints', (name, solder, joints) => {
    expect(readPackage(name)).toMatchObject({ solder, joints })
  })

  it.each(['', 'QFN_3x3mm', 'custom', 'SOIC', '9999', 'SMA_coaxial', 'SOIC-99999'])(
    '%j tells no joints',
    (name) => {
      expect(readPackage(name)).toBe(null)
    },
  )
})

describe('soldering time', () => {
  const job = { boards: 1, boardsPerHeat: 1, pace: 'prototype', method: 'hand' } as const

  // Forum figures: 45 s for a part placed by hand, 6 s for a chip in series work. Inspection 10 to 30 %: practice.
  it('ten chips by hand take 450 s and a fifth for looking; in series 60 s and a fifth', () => {
    const ten = [{ package: '0603', count: 10 }]
    expect(found(solderTime(ten, job)).seconds[1]).toBeCloseTo(540, 9)
    expect(found(solderTime(ten, { ...job, pace: 'series' })).seconds[1]).toBeCloseTo(72, 9)
  })

  it('by paste the heat is shared by the boards that go in together, and pins are still done by hand', () => {
    const parts = [
      { package: '0805', count: 4 },
      { package: '1x04', count: 1 },
    ]
    const time = found(solderTime(parts, { ...job, method: 'paste', boards: 5, boardsPerHeat: 3 }))
    expect(time.lines.map(({ what }) => what)).toEqual([
      'through hole by hand',
      'stencil, paste, align',
      'place parts',
      'heat',
      'look and touch up',
    ])
    // By hand: 5 x 4 x 15; 5 x 450; 20 x 8; 2 x 480; a fifth of the hand work.
    expect(time.lines.map(({ seconds }) => Math.round(seconds[1]))).toEqual([300, 2250, 160, 960, 542])
    expect(time.jointsPerBoard).toBe(12)
  })

  it('an unknown package is named, since its time is missing, and so is one that no iron reaches', () => {
    const parts = [
      { package: 'custom', count: 1 },
      { package: 'BGA-64', count: 1 },
    ]
    const time = found(solderTime(parts, job))
    expect(time).toMatchObject({ unknown: ['custom'], needHeat: ['BGA-64'], lines: [] })
    expect(found(solderTime(parts, { ...job, method: 'paste' })).needHeat).toEqual([])
  })

  it('low, likely and high never fall, and twice the boards take twice the hands', () => {
    const parts = [
      { package: 'SOIC-8', count: 2 },
      { package: 'TQFP-32', count: 1 },
      { package: 'DIP-8', count: 1 },
    ]
    const [one, two] = [found(solderTime(parts, job)), found(solderTime(parts, { ...job, boards: 2 }))]
    expect(one.seconds[0] <= one.seconds[1] && one.seconds[1] <= one.seconds[2]).toBe(true)
    expect(two.seconds[1]).toBeCloseTo(2 * one.seconds[1], 9)
  })
})

describe('pieces to buy', () => {
  it('small needs take the least number, packs are whole, and nothing needed is nothing bought', () => {
    const need = { perBoard: 3, boards: 2, attrition: attritionOf('0603'), packOf: 10 }
    expect(piecesToBuy(need)).toMatchObject({
      placed: 6,
      spare: 5,
      pieces: 11,
      packs: 2,
      bought: 20,
      leftOver: 9,
    })
    expect(piecesToBuy({ ...need, boards: 0 })).toMatchObject({ pieces: 0, packs: 0 })
    expect(piecesToBuy({ ...need, attrition: attritionOf('SOIC-8'), packOf: 1 })).toMatchObject({ spare: 1 })
  })
})

describe('traces', () => {
  it('outside the charts behind the fit there is doubt, inside none', () => {
    const of = { layer: 'external', riseK: 10, copperOz: 1, set: 'IPC-2221' } as const
    expect(found(traceWidth({ ...of, currentA: 2 })).doubts).toEqual([])
    expect(found(traceWidth({ ...of, currentA: 60 })).doubts.join()).toContain('current past the 35 A')
    expect(found(traceWidth({ ...of, riseK: 5, currentA: 2 })).doubts.join()).toContain('rise')
  })

  it('more current, less warming or less copper never give a narrower trace', () => {
    const size = fc.double({ min: 0.1, max: 30, noNaN: true })
    fc.assert(
      fc.property(size, size, size, (currentA, riseK, copperOz) => {
        const width = (more: object) => {
          const of = { layer: 'internal', riseK, copperOz, currentA, set: 'IPC-2221', ...more } as const
          return found(traceWidth(of)).widthMm
        }
        expect(width({ currentA: currentA * 1.1 })).toBeGreaterThan(width({}))
        expect(width({ riseK: riseK * 1.1 })).toBeLessThan(width({}))
        expect(width({ copperOz: copperOz * 1.1 })).toBeLessThan(width({}))
      }),
    )
  })
})
