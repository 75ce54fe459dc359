import { describe, expect, it } from 'vitest'
import { lifeAtSpeed } from '../../src/trade/cutting/cutter-life.ts'
import { cuttingOperations as ops } from '../../src/trade/cutting/index.ts'
import type { Cut, CuttingFault } from '../../src/trade/cutting/types.ts'

// Sums done by hand with the usual formulas: n = 1000 v / (pi D), v_f = n f, T = L / v_f, Q = section x v_f.
const near = (got: number | null, wanted: number): void => {
  expect(Math.abs((got ?? Number.NaN) / wanted - 1), `${got} against ${wanted}`).toBeLessThanOrEqual(0.0005)
}
const answer = (cut: Cut | CuttingFault): Cut => {
  if ('fault' in cut) throw new Error(JSON.stringify(cut))
  return cut
}
const plain = { airFactor: 1 }
const mild = { group: 'low-carbon steel', kc11NPerMm2: 1350, mc: 0.21 } as const
const brass = { group: 'brass', kc11NPerMm2: 700, mc: 0.27 } as const

describe('operations worked by hand', () => {
  // Half of 60 m/min at 8 mm; twice 0.2167 mm, between 0.20 at 6 mm and 0.25 at 12 mm.
  it('reaming 8 x 10 mm in brass starts at 1194 rpm and 517 mm/min and takes 1.276 s', () => {
    const cut = answer(ops.ream({ depthMm: 10 }, { diameterMm: 8, flutes: 6, tool: 'hss' }, brass, plain))
    near(cut.rpm, 1193.66)
    near(cut.feedMmPerMin, 517.25)
    near(cut.seconds, 1.276)
  })

  // Ring of 8 and 7.8 mm: 2.482 mm2 x 517.25 mm/min.
  it('reaming 0.2 mm off the diameter takes 1284 mm3/min', () => {
    const job = { depthMm: 10, stockMm: 0.2 }
    const cut = answer(ops.ream(job, { diameterMm: 8, flutes: 6, tool: 'hss' }, brass, plain))
    near(cut.removalMm3PerMin, 1283.7)
  })

  it('four saw cuts through a 20 mm bar at 600 mm2/min, each clamped in 30 s, take 245.7 s', () => {
    const job = { sectionMm2: 314.16, cuts: 4, rateMm2PerMin: 600, clampSeconds: 30, kerfMm: 2 }
    const cut = answer(ops.saw(job, {}, mild, {}))
    near(cut.seconds, 245.66)
    near(cut.removalMm3PerMin, 1200)
    expect(cut.rpm).toBe(null)
  })

  it('a chamfer of 0.5 mm over 200 mm at 300 mm/min takes 40 s and 37.5 mm3/min', () => {
    const job = { lengthMm: 200, widthMm: 0.5, rpm: 8000, feedMmPerMin: 300 }
    const cut = answer(ops.chamfer(job, { diameterMm: 6, flutes: 2, pointAngleDeg: 90 }, brass, plain))
    near(cut.seconds, 40)
    near(cut.removalMm3PerMin, 37.5)
  })

  it.each([
    [0, 26.4],
    [10, 14.4],
  ])(
    'parting off 20 mm with a bore of %d mm at 25 mm/min takes %d s with 1 mm of clearance',
    (inner, seconds) => {
      const job = { diameterMm: 20, innerDiameterMm: inner, bladeMm: 2, rpm: 500, feedMmPerRev: 0.05 }
      const cut = answer(ops['part off'](job, { reachMm: 8 }, mild, plain))
      near(cut.seconds, seconds)
      near(cut.removalMm3PerMin, 3141.6)
      expect(cut.troubles.some(({ trouble }) => trouble === 'past reach')).toBe(inner === 0)
    },
  )

  it('boring 10 to 14 mm in two passes of 10 mm at 40 mm/min takes 36 s and 1759 mm3/min', () => {
    const job = { fromDiameterMm: 10, diameterMm: 14, depthMm: 10, passes: 2, rpm: 400, feedMmPerRev: 0.1 }
    const cut = answer(ops.bore(job, { diameterMm: 8 }, mild, plain))
    near(cut.seconds, 36)
    near(cut.removalMm3PerMin, 1759.3)
  })

  // M = k_c P^2 D / 8000, from memory; P = 2 pi n M.
  it('tapping M6 in mild steel takes 1.01 N m and 31.8 W at 300 rpm', () => {
    const cut = answer(ops.tap({ diameterMm: 6, pitchMm: 1, depthMm: 12, rpm: 300 }, {}, mild, plain))
    near(cut.torqueNm, 1.0125)
    near(cut.powerW, 31.81)
  })

  // Groove: 0.5 x 1.5 mm x 0.812 mm, ten turns of pi x 9.188 mm, whatever the passes.
  it.each([1, 2, 4])(
    'thread milling M10x1.5 x 15 mm in %d passes removes the groove, 175.8 mm3',
    (passes) => {
      const thread = { majorDiameterMm: 10, minorDiameterMm: 8.376, pitchMm: 1.5, depthMm: 15 }
      const job = { ...thread, passes, rpm: 3000, chipLoadMm: 0.03 }
      const cut = answer(ops['thread mill'](job, { diameterMm: 5, flutes: 3 }, mild, plain))
      near((cut.removalMm3PerMin! * cut.timeSeconds.inCut) / 60, 175.8)
    },
  )

  it('outside, the centre runs faster than the edge and its circle is wider', () => {
    const thread = { majorDiameterMm: 10, minorDiameterMm: 8.16, pitchMm: 1.5, depthMm: 15 }
    const job = { ...thread, passes: 1, rpm: 1000, chipLoadMm: 0.05, isOutside: true, linkSeconds: 0 }
    const cut = answer(ops['thread mill'](job, { diameterMm: 20, flutes: 2 }, mild, plain))
    near(cut.feedMmPerMin, 300)
    near(cut.seconds, (60 * 11 * Math.hypot(Math.PI * 30, 1.5)) / 300)
  })
})

describe('what is taken where nobody says', () => {
  it.each([
    ['carbide', brass, 7957.7],
    ['hss', mild, 795.8],
  ] as const)('a 6 mm end mill of %s starts at the low end of its speeds', (tool, material, rpm) => {
    const job = { lengthMm: 10, depthMm: 1, stepMm: 2 }
    near(answer(ops.contour(job, { diameterMm: 6, flutes: 2, tool }, material, {})).rpm, rpm)
  })

  // 10 to 30 % for air cuts and chip clearing, common practice, no source.
  it('a fifth of the time is added for air', () => {
    const job = { lengthMm: 100, depthMm: 1, stepMm: 2, rpm: 8000, feedMmPerMin: 300 }
    const cutter = { diameterMm: 6, flutes: 2 }
    const [usual, none] = [{}, plain].map((machine) => answer(ops.contour(job, cutter, brass, machine))) as [
      Cut,
      Cut,
    ]
    near(usual.seconds, none.seconds * 1.2)
  })

  // v T^n = C: (200/300)^4 = 0.1975 of an hour.
  it('an edge rated one hour at 200 m/min lasts 711 s at 300 with n 0.25', () => {
    near(lifeAtSpeed({ lifeSeconds: 3600, speedMPerMin: 200 }, 300, 0.25), 711.1)
  })
})
