import { describe, expect, it } from 'vitest'
import { wornShare } from '../../../../src/trade/cutting/cutter-life.ts'
import { cuttingOperations as ops } from '../../../../src/trade/cutting/index.ts'
import { travelShortfall } from '../../../../src/trade/cutting/travel-shortfall.ts'
import type { Trouble } from '../../../../src/trade/cutting/trouble.ts'
import type { Cut, Cutter, CuttingFault, WorkMaterial } from '../../../../src/trade/cutting/types.ts'

const aluminium: WorkMaterial = { group: 'aluminium', kc11NPerMm2: 800, mc: 0.25 }
const mill: Cutter = { diameterMm: 6, flutes: 3, fluteLengthMm: 13, reachMm: 24, tool: 'carbide' }
const contour = { lengthMm: 100, depthMm: 3, stepMm: 1.5, rpm: 10_000, chipLoadMm: 0.03 }
const rough = { volumeMm3: 1000, depthMm: 1, stepMm: 3, rpm: 10_000, chipLoadMm: 0.03 }
const drilled = { depthMm: 10, rpm: 1000, feedMmPerRev: 0.05 }

const answer = (cut: Cut | CuttingFault): Cut => {
  if ('fault' in cut) throw new Error(JSON.stringify(cut))
  return cut
}
/** The trouble of one name, without its name. */
const troubled = (cut: Cut | CuttingFault, name: Trouble['trouble']): Trouble | undefined =>
  answer(cut).troubles.find(({ trouble }) => trouble === name)

describe('a cut that is easy for everything', () => {
  it('has no trouble', () => {
    expect(answer(ops.contour(contour, mill, aluminium, { mostRpm: 24_000, powerW: 500 })).troubles).toEqual(
      [],
    )
  })
})

describe('the machine', () => {
  it('cannot turn faster than its spindle: a stated speed is a trouble, and the limit is used', () => {
    const cut = ops.contour(contour, mill, aluminium, { mostRpm: 8000 })
    expect(troubled(cut, 'above spindle')).toMatchObject({ wantedRpm: 10_000, mostRpm: 8000 })
    expect(answer(cut).rpm).toBe(8000)
    expect(answer(cut).worked[0]).toBe('n = 10000 rpm as stated, limited to 8000 rpm by the spindle')
  })

  it('cannot turn slower than its spindle', () => {
    const cut = ops.drill({ ...drilled, rpm: 300 }, { diameterMm: 5 }, aluminium, { leastRpm: 1000 })
    expect(troubled(cut, 'below spindle')).toMatchObject({ wantedRpm: 300, leastRpm: 1000 })
    expect(answer(cut).rpm).toBe(1000)
  })

  it('cannot feed faster than its axis: a stated feed is a trouble, and the limit is used', () => {
    const cut = ops.contour({ ...contour, feedMmPerMin: 900 }, mill, aluminium, { mostFeedMmPerMin: 500 })
    expect(troubled(cut, 'feed above axis')).toMatchObject({ wantedMmPerMin: 900, mostMmPerMin: 500 })
    expect(answer(cut).feedMmPerMin).toBe(500)
  })

  it('is asked for motor power, not for power at the cut', () => {
    const machine = { powerW: 100, efficiencyRatio: 0.75 }
    const cut = answer(ops.contour(contour, mill, aluminium, machine))
    const small = ops.contour(contour, mill, aluminium, { ...machine, powerW: cut.powerW! * 1.2 })
    expect(troubled(small, 'too little power')).toMatchObject({
      needsW: expect.closeTo(cut.powerW! / 0.75, 6),
    })
  })

  it('is asked for torque', () => {
    const cut = ops.contour(contour, mill, aluminium, { torqueNm: 0.01 })
    expect(troubled(cut, 'too little torque')).toMatchObject({ hasNm: 0.01, needsNm: answer(cut).torqueNm })
  })

  it('feeds a tap by its pitch, so that a slow axis slows the spindle', () => {
    const job = { diameterMm: 6, pitchMm: 1, depthMm: 10, rpm: 500 }
    const cut = ops.tap(job, { tool: 'hss' }, aluminium, { mostFeedMmPerMin: 300 })
    expect(answer(cut)).toMatchObject({ rpm: 300, feedMmPerMin: 300 })
    expect(troubled(cut, 'feed above axis')).toMatchObject({ wantedMmPerMin: 500, mostMmPerMin: 300 })
  })
})

describe('the cutter', () => {
  it('cuts no deeper at once than its flutes and reaches no deeper than it hangs out', () => {
    const cut = ops.contour({ ...contour, depthMm: 30, layerMm: 15 }, mill, aluminium, {})
    expect(troubled(cut, 'past flutes')).toMatchObject({ depthMm: 15, fluteMm: 13 })
    expect(troubled(cut, 'past reach')).toMatchObject({ depthMm: 30, reachMm: 24 })
  })

  it('does not go into a corner, pocket or bore smaller than itself', () => {
    expect(
      troubled(ops.rough({ ...rough, cornerMm: 2 }, mill, aluminium, {}), 'cutter too large'),
    ).toMatchObject({
      of: 'corner',
      cutterMm: 6,
      roomMm: 4,
    })
    const pocket = { lengthMm: 20, widthMm: 5, depthMm: 2 }
    expect(troubled(ops.rough({ ...rough, pocket }, mill, aluminium, {}), 'cutter too large')).toMatchObject({
      of: 'pocket',
      roomMm: 5,
    })
    const bore = { fromDiameterMm: 10, diameterMm: 12, depthMm: 5, rpm: 500, feedMmPerRev: 0.05 }
    expect(troubled(ops.bore(bore, { diameterMm: 10 }, aluminium, {}), 'cutter too large')).toMatchObject({
      of: 'bore',
    })
    expect(troubled(ops.bore(bore, { diameterMm: 8 }, aluminium, {}), 'cutter too large')).toBeUndefined()
    const hole = { ...drilled, diameterMm: 5 }
    expect(troubled(ops.drill(hole, { diameterMm: 5.5 }, aluminium, {}), 'cutter too large')).toMatchObject({
      roomMm: 5,
    })
    expect(
      troubled(ops.drill(hole, { diameterMm: 4 }, aluminium, {}), 'cutter of another size'),
    ).toMatchObject({
      wantedMm: 5,
    })
  })

  it.each([
    [9, null],
    [10, 3],
    [16, 5],
    [31, 10],
  ])('drilling %d mm deep with 3 mm and no pecks is deep beyond %s times', (depthMm, beyond) => {
    const cut = ops.drill({ ...drilled, depthMm }, { diameterMm: 3 }, aluminium, {})
    const found = troubled(cut, 'deep hole')
    if (beyond === null) expect(found).toBeUndefined()
    else expect(found).toMatchObject({ beyond, ratio: depthMm / 3 })
    const pecked = ops.drill({ ...drilled, depthMm, peckMm: 2 }, { diameterMm: 3 }, aluminium, {})
    expect(troubled(pecked, 'deep hole')).toBeUndefined()
  })

  // 1 to 3 s per peck, common practice, no source.
  it('comes up after each peck, two seconds unless said', () => {
    const [plain, pecked] = [drilled, { ...drilled, peckMm: 2.5 }].map((job) =>
      answer(ops.drill(job, { diameterMm: 3 }, aluminium, { airFactor: 1 })),
    ) as [Cut, Cut]
    expect(pecked.passes).toBe(4)
    expect(pecked.seconds - plain.seconds).toBeCloseTo(8, 9)
  })

  it('rubs where the chip is too thin and breaks where it is too thick', () => {
    const thin = ops.contour({ ...contour, chipLoadMm: 0.001 }, mill, aluminium, {})
    expect(troubled(thin, 'chip too thin')).toMatchObject({ leastMm: 0.002 })
    const thick = ops.contour({ ...contour, stepMm: 3, chipLoadMm: 0.1 }, mill, aluminium, {})
    expect(troubled(thick, 'chip too thick')).toMatchObject({ chipMm: expect.closeTo(0.1, 9) })
    const stands = ops.contour(
      { ...contour, stepMm: 3, chipLoadMm: 0.1 },
      { ...mill, mostChipMm: 0.12 },
      aluminium,
      {},
    )
    expect(troubled(stands, 'chip too thick')).toBeUndefined()
  })

  it('bends where it is slender and pressed hard', () => {
    const slender = { diameterMm: 3, flutes: 2, reachMm: 30, tool: 'hss' } as const
    const job = { ...contour, depthMm: 3, stepMm: 1 }
    expect(troubled(ops.contour(job, slender, aluminium, {}), 'cutter bends')).toMatchObject({ mostMm: 0.02 })
    expect(
      troubled(ops.contour(job, { ...slender, reachMm: 6 }, aluminium, {}), 'cutter bends'),
    ).toBeUndefined()
  })

  it('of high-speed steel does not cut hardened steel or glass laminate', () => {
    for (const group of ['hardened steel', 'laminate'] as const) {
      const job = { ...contour, feedMmPerMin: 100 }
      expect(
        troubled(ops.contour(job, { ...mill, tool: 'hss' }, { group }, {}), 'unsuited tool'),
      ).toMatchObject({ group })
      expect(troubled(ops.contour(job, mill, { group }, {}), 'unsuited tool')).toBeUndefined()
    }
  })

  it('leaves strips where the step is wider than it', () => {
    expect(
      troubled(ops.rough({ ...rough, stepMm: 8 }, mill, aluminium, {}), 'step wider than cutter'),
    ).toMatchObject({
      stepMm: 8,
      cutterMm: 6,
    })
  })

  it('for threads mills only pitches in its range and fills no more than 70 % of the hole', () => {
    const job = {
      majorDiameterMm: 10,
      minorDiameterMm: 8.4,
      pitchMm: 1.5,
      depthMm: 10,
      passes: 1,
      rpm: 3000,
      chipLoadMm: 0.02,
    }
    const cutter = { diameterMm: 7, flutes: 3, pitchFromMm: 0.5, pitchToMm: 1, tool: 'carbide' } as const
    const cut = ops['thread mill'](job, cutter, aluminium, {})
    expect(troubled(cut, 'pitch out of range')).toMatchObject({ pitchMm: 1.5, fromMm: 0.5, toMm: 1 })
    expect(troubled(cut, 'wide thread mill')).toMatchObject({ mostMm: expect.closeTo(5.88, 9) })
    const wide = ops['thread mill'](job, { ...cutter, diameterMm: 9 }, aluminium, {})
    expect(troubled(wide, 'cutter too large')).toMatchObject({ of: 'thread', roomMm: 8.4 })
    expect(ops['thread mill'](job, { ...cutter, diameterMm: 10 }, aluminium, {})).toMatchObject({
      fault: 'no such shape',
    })
    const outside = ops['thread mill'](
      { ...job, isOutside: true },
      { ...cutter, diameterMm: 20 },
      aluminium,
      {},
    )
    expect(troubled(outside, 'cutter too large')).toBeUndefined()
  })

  it('wears by its time in cut alone', () => {
    const cut = answer(ops.contour(contour, mill, aluminium, { airFactor: 2 }))
    expect(cut.timeSeconds.inCut).toBeLessThan(cut.seconds / 1.9)
    expect(wornShare(cut.timeSeconds.inCut, 3600)).toBeCloseTo(cut.timeSeconds.inCut / 3600, 12)
    expect(wornShare(10, null)).toBe(null)
  })
})

describe('the work', () => {
  it('bends away where a wall is thinner than a tenth of its height or than is worth a try', () => {
    const tall = ops.contour({ ...contour, depthMm: 20, wallMm: 1.5 }, mill, aluminium, {})
    expect(troubled(tall, 'thin wall')).toMatchObject({ wallMm: 1.5, leastMm: 2, heightMm: 20 })
    expect(
      troubled(ops.contour({ ...contour, wallMm: 0.9 }, mill, aluminium, {}), 'thin wall'),
    ).toBeUndefined()
    const plastic = { group: 'plastic', kc11NPerMm2: 200, mc: 0.2 } as const
    expect(troubled(ops.contour({ ...contour, wallMm: 0.9 }, mill, plastic, {}), 'thin wall')).toMatchObject({
      leastMm: 1.5,
    })
  })

  it('of unknown force gives a time without power and says what is missing', () => {
    const cut = ops.contour(contour, mill, { group: 'aluminium' }, {})
    expect(answer(cut)).toMatchObject({ powerW: null, torqueNm: null })
    expect(troubled(cut, 'power unknown')).toMatchObject({ missing: ['k_c1.1', 'm_c'] })
  })
})

describe('what nobody stated', () => {
  it('is taken from the starting tables, each with its source', () => {
    const cut = answer(ops.rough({ volumeMm3: 1000, depthMm: 1 }, mill, aluminium, { mostRpm: 10_000 }))
    expect(cut.assumed.map(({ what }) => what)).toEqual([
      'step-over',
      'cutting speed',
      'chip load',
      'path efficiency',
    ])
    expect(cut.assumed.every(({ source }) => source.length > 5)).toBe(true)
    expect(cut.rpm).toBe(10_000)
    expect(cut.feedMmPerMin).toBeCloseTo(10_000 * 3 * 0.006 * 6, 6)
  })

  it('halves the chip load in a slot and raises it, twice at most, where chips are thinned', () => {
    const loads = [6, 0.6, 0.06].map((stepMm) => {
      const job = { lengthMm: 10, depthMm: 1, stepMm, rpm: 1000 }
      return answer(ops.contour(job, mill, aluminium, {})).feedMmPerMin! / 3000
    })
    expect(loads).toEqual([0.018, 0.06, 0.072].map((load) => expect.closeTo(load, 9)))
  })

  it('is missing by name where no table has it, all at once', () => {
    expect(ops.contour({}, {}, {}, {})).toEqual({ fault: 'missing', what: ['cutter diameter'] })
    expect(ops.rough({}, { diameterMm: 6 }, {}, {})).toEqual({
      fault: 'missing',
      what: ['volume', 'depth of a layer', 'tool', 'material group', 'flutes'],
    })
    const plastic = { group: 'plastic' } as const
    expect(ops.contour({ ...contour, chipLoadMm: null }, mill, plastic, {})).toEqual({
      fault: 'missing',
      what: ['chip load'],
    })
    expect(
      ops.turn({ fromDiameterMm: 9, toDiameterMm: 8, lengthMm: 5, rpm: 500 }, {}, aluminium, {}),
    ).toEqual({
      fault: 'missing',
      what: ['feed'],
    })
  })
})

describe('travel', () => {
  const question = {
    stockMm: { xMm: 120, yMm: 60, zMm: 20 },
    holdMm: { xMm: 0, yMm: 0, zMm: 70 },
    cutterDiameterMm: 6,
    cutterLengthMm: 45,
    clearanceMm: 5,
    travelMm: { xMm: 140, yMm: 76, zMm: 100 },
  }

  it('is enough in X and Y to the millimetre and short by 40 mm in Z', () => {
    const room = travelShortfall(question)
    expect(room).toMatchObject({
      fits: false,
      x: { needsMm: 136, hasMm: 140, shortMm: 0 },
      y: { needsMm: 76, hasMm: 76, shortMm: 0 },
      z: { needsMm: 140, hasMm: 100, shortMm: 40 },
    })
  })

  it('counts the daylight under the spindle where it is known', () => {
    expect(travelShortfall({ ...question, daylightMm: 140 })).toMatchObject({ fits: true })
  })

  it('of a number out of domain is a fault that names it', () => {
    expect(travelShortfall({ ...question, stockMm: { xMm: 0, yMm: 1, zMm: 1 } })).toEqual({
      fault: 'out of domain',
      what: 'stock x',
    })
    expect(travelShortfall({ ...question, clearanceMm: Number.NaN })).toMatchObject({ what: 'clearance' })
  })
})
