import { describe, expect, it } from 'vitest'
import { contour } from '../../src/trade/cutting/contour.ts'
import { cutterDeflection } from '../../src/trade/cutting/cutter-deflection.ts'
import { taylorLifeMinutes } from '../../src/trade/cutting/cutter-life.ts'
import { drill } from '../../src/trade/cutting/drill.ts'
import { face } from '../../src/trade/cutting/face.ts'
import { finish } from '../../src/trade/cutting/finish.ts'
import { rough } from '../../src/trade/cutting/rough.ts'
import { tap } from '../../src/trade/cutting/tap.ts'
import { centreFeedRatio, threadEngagement, threadMill } from '../../src/trade/cutting/thread-mill.ts'
import { turn } from '../../src/trade/cutting/turn.ts'
import type { Cut, CuttingFault } from '../../src/trade/cutting/types.ts'

const near = (got: number | null, wanted: number, share: number): void => {
  expect(Math.abs((got ?? Number.NaN) / wanted - 1), `${got} against ${wanted}`).toBeLessThanOrEqual(share)
}

const answer = (cut: Cut | CuttingFault): Cut => {
  if ('fault' in cut) throw new Error(JSON.stringify(cut))
  return cut
}

/** No air, so that time is what the formula says. */
const plain = { airFactor: 1 }
const lowCarbon = { group: 'low-carbon steel', kc11NPerMm2: 1350, mc: 0.21 } as const
const aluminium = { group: 'aluminium', kc11NPerMm2: 800, mc: 0.25 } as const
const brass = { group: 'brass', kc11NPerMm2: 700, mc: 0.27 } as const

describe('turning', () => {
  // M-01: Groover, turning problem: D 200, L 700, 138 m/min, 0.32 mm, depth 1.80.
  it('a bar of 200 x 700 mm turns 219.6 rpm, takes 9.96 min and 79.49 cm3/min', () => {
    const job = {
      fromDiameterMm: 200,
      toDiameterMm: 196.4,
      lengthMm: 700,
      speedMPerMin: 138,
      feedMmPerRev: 0.32,
      clearanceMm: 0,
    }
    const cut = answer(turn(job, {}, lowCarbon, plain))
    near(cut.rpm, 219.6, 0.002)
    near(cut.seconds / 60, 9.96, 0.002)
    near(cut.removalMm3PerMin, 79_490, 0.002)
    expect(cut.passes).toBe(1)
  })

  // M-08, computed: k_c 1893, 757 W; M = 9549 P / n.
  it('low-carbon steel at 120 m/min, 1 mm and 0.2 mm takes 757 W', () => {
    const job = { fromDiameterMm: 20, toDiameterMm: 18, lengthMm: 10, speedMPerMin: 120, feedMmPerRev: 0.2 }
    const cut = answer(turn(job, {}, lowCarbon, plain))
    near(cut.powerW, 757, 0.005)
    near(cut.torqueNm, (9549 * 0.757) / cut.rpm!, 0.005)
    expect(cut.worked.some((line) => line.startsWith('k_c = 1350 N/mm2 x 0.2^-0.21 = 1893'))).toBe(true)
  })

  // passes = ceil((D0 - D1) / (2 a_p)): 30 to 20 mm at 2 mm takes 3 passes (counted by hand: 2, 2, 1 mm).
  it('30 to 20 mm at most 2 mm deep takes three passes', () => {
    const job = {
      fromDiameterMm: 30,
      toDiameterMm: 20,
      lengthMm: 10,
      depthMm: 2,
      rpm: 500,
      feedMmPerRev: 0.1,
      clearanceMm: 0,
    }
    const cut = answer(turn(job, {}, lowCarbon, plain))
    expect(cut.passes).toBe(3)
    near(cut.seconds, (3 * 60 * 10) / 50, 1e-9)
  })
})

describe('drilling', () => {
  // M-02: Groover, drilling problem: 12.7 mm, blind 60 mm, 118 degrees, 25 m/min, 0.30 mm.
  it('a blind hole of 12.7 x 60 mm turns 626.6 rpm, takes 0.3395 min and 23.81 cm3/min', () => {
    const job = { depthMm: 60, speedMPerMin: 25, feedMmPerRev: 0.3, clearanceMm: 0 }
    const cut = answer(drill(job, { diameterMm: 12.7, pointAngleDeg: 118 }, lowCarbon, plain))
    near(cut.rpm, 626.6, 0.003)
    near(cut.seconds / 60, 0.3395, 0.003)
    near(cut.removalMm3PerMin, 23_810, 0.003)
    near(cut.timeSeconds.entry * (cut.feedMmPerMin! / 60), 3.82, 0.003)
  })

  // M-13, computed: 2.5 mm in brass, 60 m/min, at most 8000 rpm, clearance 1 mm.
  it('a 2.5 mm hole in brass turns 7639 rpm below a spindle of 8000 and takes 1.53 s', () => {
    const job = { depthMm: 8, speedMPerMin: 60, feedMmPerRev: 0.05, clearanceMm: 1 }
    const cut = answer(
      drill(job, { diameterMm: 2.5, pointAngleDeg: 118 }, brass, { ...plain, mostRpm: 8000 }),
    )
    near(cut.rpm, 7639, 0.01)
    near(cut.seconds, 1.53, 0.01)
  })

  // P = f v_c D k_c / 240e3 kW (a maker's catalogue), with the chip of one lip, f/2 sin(59 deg).
  it('power is that of the catalogue formula', () => {
    const job = { depthMm: 30, speedMPerMin: 30, feedMmPerRev: 0.2 }
    const cut = answer(drill(job, { diameterMm: 10, pointAngleDeg: 118 }, lowCarbon, plain))
    const force = 1350 * (0.1 * Math.sin((59 * Math.PI) / 180)) ** -0.21
    near(cut.powerW, (1000 * 0.2 * 30 * 10 * force) / 240_000, 1e-6)
  })
})

describe('milling', () => {
  // M-03: Groover, peripheral milling: L 400, w 60, D 80, 22 teeth, 70 m/min, 0.25 mm, 5 mm (book: A 19.4, n 279).
  it('a slab of 400 x 60 mm, 5 mm off, runs at 278.5 rpm and 1532 mm/min for 0.2738 min', () => {
    const job = { lengthMm: 400, depthMm: 60, stepMm: 5, speedMPerMin: 70, chipLoadMm: 0.25 }
    const cut = answer(contour(job, { diameterMm: 80, flutes: 22 }, lowCarbon, plain))
    near(cut.rpm, 278.52, 0.003)
    near(cut.feedMmPerMin, 1531.9, 0.003)
    near(cut.seconds / 60, 0.2738, 0.003)
    near(cut.removalMm3PerMin, 459_600, 0.003)
  })

  // M-05, computed: 3.175 mm, 150 m/min, at most 12000 rpm, 2 teeth of 0.019 mm.
  it('a 3.175 mm cutter that asks for 15038 rpm is held to 12000, 119.7 m/min and 456 mm/min', () => {
    const job = { lengthMm: 100, depthMm: 0.3, stepMm: 1, speedMPerMin: 150, chipLoadMm: 0.019 }
    const cut = answer(contour(job, { diameterMm: 3.175, flutes: 2 }, brass, { ...plain, mostRpm: 12_000 }))
    near(cut.rpm, 12_000, 1e-9)
    near(cut.feedMmPerMin, 456, 0.005)
    expect(cut.worked[0]).toBe(
      'n = 1000 x 150 m/min / (pi x 3.175 mm) = 15038 rpm, limited to 12000 rpm by the spindle',
    )
    expect(cut.worked[1]).toContain('119.7 m/min')
    expect(cut.troubles.map(({ trouble }) => trouble)).not.toContain('above spindle')
  })

  // M-07, computed: D 6, 3 teeth, 15000 rpm, 0.036 mm, 3 x 1.5 mm, aluminium.
  it('a 6 mm cutter in aluminium feeds 1620 mm/min, takes 7.29 cm3/min, 268 W and 0.171 N m', () => {
    const job = { volumeMm3: 7290, depthMm: 3, stepMm: 1.5, rpm: 15_000, chipLoadMm: 0.036, pathRatio: 1 }
    const cut = answer(rough(job, { diameterMm: 6, flutes: 3 }, aluminium, plain))
    near(cut.feedMmPerMin, 1620, 0.01)
    near(cut.chipMm, 0.01719, 0.01)
    near(cut.removalMm3PerMin, 7290, 0.01)
    near(cut.powerW, 268.4, 0.01)
    near(cut.torqueNm, 0.1709, 0.01)
    near(cut.seconds, 60, 0.01)
  })

  // M-11, computed: pocket 40 x 25 x 8, 0.5 x 1.5 mm at 400 mm/min, path efficiency 0.6.
  it('a pocket of 40 x 25 x 8 mm takes 44.4 min', () => {
    const pocket = { lengthMm: 40, widthMm: 25, depthMm: 8 }
    const job = { pocket, depthMm: 0.5, stepMm: 1.5, feedMmPerMin: 400, rpm: 12_000, pathRatio: 0.6 }
    const cut = answer(rough(job, { diameterMm: 3.175, flutes: 2 }, aluminium, {}))
    near(cut.removalMm3PerMin, 300, 0.01)
    near(cut.seconds / 60, 44.4, 0.01)
    expect(cut.passes).toBe(16)
  })

  // M-12, computed: 80 x 50 with D 20, step 0.7 D, clearance 5 mm, 300 mm/min.
  it('facing 80 x 50 mm takes four passes of 110 mm, 1.467 min', () => {
    const job = {
      lengthMm: 80,
      widthMm: 50,
      stockMm: 0.5,
      stepRatio: 0.7,
      clearanceMm: 5,
      feedMmPerMin: 300,
      rpm: 3000,
    }
    const cut = answer(face(job, { diameterMm: 20, flutes: 3 }, aluminium, plain))
    expect(cut.passes).toBe(4)
    near(cut.seconds / 60, 1.467, 0.01)
  })

  // M-14, computed: 30 x 20 mm at 0.15 mm and 600 mm/min.
  it('finishing 600 mm2 at 0.15 mm takes 6.667 min', () => {
    const job = { areaMm2: 600, stepMm: 0.15, feedMmPerMin: 600, rpm: 10_000 }
    const cut = answer(finish(job, { diameterMm: 3, flutes: 2, cornerRadiusMm: 1.5 }, aluminium, plain))
    near(cut.seconds / 60, 6.667, 0.005)
  })

  // M-09 and M-10, computed: the step-over of a 3 mm ball for a ridge of 0.01 mm is 0.3458 mm.
  it('a ridge of 0.01 mm gives a 3 mm ball the step 0.3458 mm', () => {
    const job = { areaMm2: 345.8, scallopMm: 0.01, feedMmPerMin: 1000, rpm: 10_000 }
    const cut = answer(finish(job, { diameterMm: 3, flutes: 2, cornerRadiusMm: 1.5 }, aluminium, plain))
    near(cut.seconds, 60, 0.005)
    expect(cut.worked.join()).toContain('0.3458 mm for a ridge of 0.01 mm')
  })
})

describe('threads', () => {
  // T-10: public worked example, 9/16-18 with a 0.370 in cutter at 8.3 in/min: 2.8 inside, 13.8 outside.
  it('an edge feed of 8.3 in/min is 2.84 at the centre inside 9/16 in, 13.76 outside', () => {
    expect(8.3 * centreFeedRatio(0.562, 0.37, false)).toBeCloseTo(2.84, 1)
    expect(Math.abs(8.3 * centreFeedRatio(0.562, 0.37, false) - 2.84)).toBeLessThanOrEqual(0.02)
    expect(Math.abs(8.3 * centreFeedRatio(0.562, 0.37, true) - 13.76)).toBeLessThanOrEqual(0.02)
  })

  // T-11, computed from a maker's formulas: M10x1.5 inside, 15 mm, 7.5 mm cutter, 3 teeth, 60 m/min, 0.03 mm.
  it('M10x1.5 x 15 mm in two passes feeds 57.3 mm/min at the centre and takes 188.2 s', () => {
    const job = {
      majorDiameterMm: 10,
      minorDiameterMm: 8.376,
      pitchMm: 1.5,
      depthMm: 15,
      passes: 2,
      linkSeconds: 2,
      speedMPerMin: 60,
      chipLoadMm: 0.03,
    }
    const cut = answer(threadMill(job, { diameterMm: 7.5, flutes: 3 }, lowCarbon, plain))
    near(cut.rpm, 2546, 0.005)
    near(cut.feedMmPerMin, 57.3, 0.005)
    near(cut.seconds, 188.2, 0.005)
    const lines = cut.worked.join('\n')
    expect(lines).toContain('229.2 mm/min')
    expect(lines).toContain('= 11, each 7.996 mm')
  })

  // The centre moves on a circle: area swept by the cutter is what is removed, a_e = volume per way of the edge.
  it('the engagement times the mean way of the centre sweeps the ring that is cut', () => {
    const thread = { majorMm: 10, minorMm: 8, pitchMm: 1.5, depthMm: 10, cutterMm: 6 }
    const ring = (Math.PI / 4) * (10 ** 2 - 8 ** 2)
    near(threadEngagement({ ...thread, isOutside: false }) * Math.PI * (10 - 6), ring, 1e-9)
    near(threadEngagement({ ...thread, isOutside: true }) * Math.PI * (8 + 6), ring, 1e-9)
  })

  // T = 2 (depth + runout) / (n P): M6x1, 12 + 3 mm at 300 rpm is 6 s (formula by hand).
  it('tapping M6 x 12 mm at 300 rpm feeds 300 mm/min and takes 6 s', () => {
    const job = { diameterMm: 6, pitchMm: 1, depthMm: 12, runoutMm: 3, rpm: 300 }
    const cut = answer(tap(job, { tool: 'hss' }, lowCarbon, plain))
    expect(cut.feedMmPerMin).toBe(300)
    near(cut.seconds, 6, 1e-9)
  })
})

describe('life and bending of cutters', () => {
  // A public page works this one: n 0.25, C 300, 200 m/min: 5.06 min.
  it('C 300 and n 0.25 leave 5.06 min at 200 m/min, and one minute at 300', () => {
    near(taylorLifeMinutes(200, 300, 0.25), 5.06, 0.001)
    expect(taylorLifeMinutes(300, 300, 0.25)).toBe(1)
  })

  // A cutter maker's course: twice the overhang bends 8 times, twice the diameter a sixteenth for the same load.
  it('twice as long bends 8 times as far, twice as thick a sixteenth', () => {
    const cutter = { diameterMm: 4, stickOutMm: 16, tool: 'carbide', powerW: 50, rpm: 10_000 } as const
    const bend = cutterDeflection(cutter)
    near(cutterDeflection({ ...cutter, stickOutMm: 32 }), 8 * bend, 1e-9)
    // The same load at twice the diameter and the same speed is at half the rpm.
    near(cutterDeflection({ ...cutter, diameterMm: 8, rpm: 5000 }), bend / 16, 1e-9)
  })
})
