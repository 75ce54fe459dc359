import { describe, expect, it } from 'vitest'
import { chipLoads } from '../../src/trade/cutting/chip-loads.ts'
import { drillFeed } from '../../src/trade/cutting/drill-feeds.ts'
import {
  faceApproach,
  meanChip,
  pointAllowance,
  powerOf,
  rpmAt,
  scallopHeight,
  sideApproach,
  sideArc,
  specificForce,
  speedAt,
  stepForScallop,
  thinning,
  torqueOf,
  turnedRidge,
} from '../../src/trade/cutting/formulas.ts'
import { startingSpeed } from '../../src/trade/cutting/starting-speeds.ts'
import { findMaterial } from '../../src/trade/materials/find-material.ts'

/** Within a share of the expected figure. */
const near = (got: number, wanted: number, share: number): void => {
  expect(Math.abs(got / wanted - 1), `${got} against ${wanted}`).toBeLessThanOrEqual(share)
}

describe('speeds and feeds', () => {
  // M-04: a maker's technical page, D 125, 200 m/min, 8 teeth, 0.2 mm (it rounds n to 510, v_f to 816).
  it('a 125 mm cutter at 200 m/min turns 509 rpm and feeds 815 mm/min with 8 teeth of 0.2 mm', () => {
    near(rpmAt(200, 125), 509.3, 0.002)
    near(rpmAt(200, 125) * 8 * 0.2, 814.9, 0.002)
  })

  // Table of cutting speeds of any shop: n = 318.3 v_c / D; 30 m/min and 10 mm give 955 rpm.
  it.each([
    [30, 10, 955],
    [60, 5, 3820],
    [25, 12.7, 626.6],
    [138, 200, 219.6],
  ])('%d m/min at %d mm is %d rpm, and back', (speed, diameter, rpm) => {
    near(rpmAt(speed, diameter), rpm, 0.0005)
    near(speedAt(rpm, diameter), speed, 0.0005)
  })
})

describe('chips', () => {
  // M-06: a public page prints the factor 0.6.
  it('a tenth of the diameter thins the chip to 0.6, so that 0.05 mm asks for 0.0833 mm a tooth', () => {
    near(thinning(1, 10), 0.6, 0.005)
    near(0.05 / thinning(1, 10), 0.0833, 0.005)
  })

  // Geometry: full thickness from half the diameter on; the mean over half a turn is 2/pi of the load.
  it('half the diameter and a slot take the full chip, whose mean is 2 / pi of it', () => {
    expect(thinning(5, 10)).toBe(1)
    expect(thinning(10, 10)).toBe(1)
    near(meanChip(0.1, 10, 10, sideArc(10, 10)), 0.2 / Math.PI, 1e-9)
  })

  // The handy form h_m = f_z sqrt(a_e / D), good below about 0.3 (milling formulas).
  it.each([0.01, 0.05, 0.1, 0.2, 0.3])('the handy form is within 6 %% at a_e/D %d', (share) => {
    near(meanChip(0.05, share * 10, 10, sideArc(share * 10, 10)), 0.05 * Math.sqrt(share), 0.06)
  })
})

describe('force and power', () => {
  // M-07, computed from a maker's k_c1.1 and m_c.
  it('a 6 mm cutter in heat-treated aluminium needs 268 W and 0.171 N m', () => {
    const mean = meanChip(0.036, 1.5, 6, sideArc(1.5, 6))
    near(mean, 0.01719, 0.01)
    const force = specificForce(800, 0.25, mean)
    near(force, 2209, 0.01)
    const power = powerOf(3 * 1.5 * 1620, force)
    near(power, 268.4, 0.01)
    near(torqueOf(power, 15_000), 0.1709, 0.01)
  })

  // M-08, computed; a catalogue gives 190 kgf/mm2 = 1863 N/mm2 for low-carbon steel at usual chips.
  it('turning low-carbon steel at 0.2 mm takes 1893 N/mm2 and 757 W', () => {
    const force = specificForce(1350, 0.21, 0.2)
    near(force, 1893, 0.005)
    near(powerOf(120 * 1 * 0.2 * 1000, force), 757, 0.005)
    near(force, 1863, 0.02)
  })

  // 9549 W a kilowatt: the constant every machine manual prints.
  it('one kilowatt at one turn a minute is 9549 N m', () => {
    near(torqueOf(1000, 1), 9549, 0.0001)
  })
})

describe('ways in and ridges', () => {
  // Point allowances in parts of the diameter: 118, 135 and 140 degrees (handbook, drilling time).
  it.each([
    [118, 0.3],
    [135, 0.207],
    [140, 0.182],
  ])('a point of %d degrees is %d of the diameter long', (angle, share) => {
    expect(pointAllowance(1, angle)).toBeCloseTo(share, 3)
  })

  // M-03: Groover prints 19.4 mm.
  it('an 80 mm cutter taking 5 mm at its side runs in over 19.36 mm', () => {
    near(sideApproach(5, 80), 19.36, 0.003)
  })

  it('a face cutter as wide as the work runs in over half its diameter', () => {
    expect(faceApproach(50, 50)).toBe(25)
    near(faceApproach(40, 50), 10, 1e-9)
  })

  // M-09 and M-10, computed; the rule s^2 / (8 R) stands beside.
  it('a 6 mm ball at 0.3 mm leaves 0.00375 mm, and a 3 mm ball reaches 0.01 mm at 0.3458 mm', () => {
    near(scallopHeight(3, 0.3), 0.00375, 0.005)
    near(stepForScallop(1.5, 0.01), 0.3458, 0.005)
    near(scallopHeight(1.5, stepForScallop(1.5, 0.01)), 0.01, 1e-9)
  })

  // f^2 / (8 r): 0.2 mm and a 0.8 mm nose, 6.25 micrometres (textbook).
  it('a 0.8 mm nose at 0.2 mm leaves 6.25 micrometres in theory', () => {
    near(turnedRidge(0.2, 0.8), 0.00625, 1e-9)
  })
})

describe('starting tables', () => {
  // A maker's starting ratios 0.006, 0.004 and 0.003 D, by whole columns.
  it.each([
    [0.5, 0.003, 0.002, 0.0015],
    [0.8, 0.0048, 0.0032, 0.0024],
    [1, 0.006, 0.004, 0.003],
    [1.5, 0.009, 0.006, 0.0045],
    [2, 0.012, 0.008, 0.006],
    [3, 0.018, 0.012, 0.009],
    [3.175, 0.0191, 0.0127, 0.0095],
    [4, 0.024, 0.016, 0.012],
    [6, 0.036, 0.024, 0.018],
  ])('chip loads of a %d mm cutter are %d, %d and %d mm', (diameter, mild, alloy, stainless) => {
    expect(chipLoads['low-carbon steel']!.startRatio * diameter).toBeCloseTo(mild, 4)
    expect(chipLoads.aluminium!.startRatio * diameter).toBeCloseTo(mild, 4)
    expect(chipLoads['alloy steel']!.startRatio * diameter).toBeCloseTo(alloy, 4)
    expect(chipLoads['austenitic stainless']!.startRatio * diameter).toBeCloseTo(stainless, 4)
    expect(chipLoads.titanium!.startRatio * diameter).toBeCloseTo(stainless, 4)
  })

  // A public chip-load chart of carbide end mills: aluminium 0.010, 0.025, 0.050 at 1.5, 3 and 6 mm.
  it.each([
    [1.5, 0.01],
    [3, 0.025],
    [6, 0.05],
  ])('the chart’s aluminium load at %d mm is no thicker than a tooth stands', (diameter, chart) => {
    const { startRatio, mostRatio } = chipLoads.aluminium!
    expect(startRatio * diameter).toBeLessThanOrEqual(chart)
    expect(mostRatio * diameter).toBeGreaterThanOrEqual(chart - 1e-9)
  })

  // Tutorial tables of nominal feeds, HSS drilling, by whole rows.
  it.each([
    ['aluminium', [0.3, 0.4, 0.61, 0.81]],
    ['brass', [0.2, 0.25, 0.41, 0.51]],
    ['cast iron', [0.13, 0.18, 0.25, 0.31]],
    ['low-carbon steel', [0.2, 0.25, 0.41, 0.51]],
    ['austenitic stainless', [0.13, 0.18, 0.25, 0.31]],
    ['plastic', [0.1, 0.15, 0.2, 0.25]],
  ] as const)('drills in %s feed as printed', (group, feeds) => {
    const got = [6, 12, 18, 25].map((diameter) => drillFeed(group, diameter)?.feedMmPerRev)
    expect(got).toEqual(feeds)
    expect(drillFeed(group, 9)!.feedMmPerRev).toBeCloseTo((feeds[0] + feeds[1]) / 2, 9)
  })

  // Same tables, speeds in m/min, by whole columns; drills in aluminium read as feet per minute.
  it.each([
    ['aluminium', [60, 120], [60, 150], [60, 150]],
    ['brass', [60, 75], [45, 120], [60, 150]],
    ['low-carbon steel', [30, 36], [25, 45], [25, 35]],
    ['austenitic stainless', [6, 15], [9, 18], [9, 20]],
    ['cast iron', [25, 35], [22, 30], [15, 30]],
    ['plastic', [20, 75], [9, 120], [20, 160]],
  ] as const)(
    'high-speed steel in %s starts as printed, end mills 40 %% lower',
    (group, drill, turn, mill) => {
      const range = (use: 'drill' | 'turn' | 'mill'): number[] => {
        const { leastMPerMin, mostMPerMin } = startingSpeed('hss', use, group)!
        return [leastMPerMin, mostMPerMin]
      }
      expect(range('drill')).toEqual(drill)
      expect(range('turn')).toEqual(turn)
      expect(range('mill').map((speed) => speed / 0.6)).toEqual(mill.map((speed) => expect.closeTo(speed, 9)))
    },
  )

  // Makers' guides for solid carbide; brass is trade usage on small machines.
  it.each([
    ['aluminium', 300, 750],
    ['brass', 150, 300],
    ['low-carbon steel', 140, 300],
    ['austenitic stainless', 60, 110],
    ['tool steel', 70, 130],
    ['titanium', 20, 90],
    ['cast iron', 150, 275],
    ['plastic', 100, 300],
  ] as const)('carbide end mills in %s start at %d to %d m/min', (group, least, most) => {
    expect(startingSpeed('carbide', 'mill', group)).toMatchObject({ leastMPerMin: least, mostMPerMin: most })
  })

  // Material groups to ISO 513 / VDI 3323 of a cutter maker, user guides 2017 and 2022.
  it.each([
    ['1018', 1350, 0.21],
    ['12L14', 1350, 0.21],
    ['C45', 1500, 0.22],
    ['42CrMo4', 1775, 0.24],
    ['1.2842', 2450, 0.23],
    ['1.4301', 2150, 0.2],
    ['1.4305', 2150, 0.2],
    ['316L', 2150, 0.2],
    ['EN AW-5083', 700, 0.25],
    ['EN AW-6082', 800, 0.25],
    ['7075', 800, 0.25],
    ['CuZn39Pb3', 700, 0.27],
    ['CuZn37', 700, 0.27],
    ['C110', 700, 0.27],
    ['grade 2', 1700, 0.23],
    ['Ti-6Al-4V', 2110, 0.22],
    ['55 HRC', 4600, undefined],
  ])('%s takes %d N/mm2 at 1 mm, falling with %d', (name, force, fall) => {
    const found = findMaterial(name)
    if ('fault' in found) throw new Error(`${name} is not in the table`)
    expect(found.kc11NPerMm2?.value).toBe(force)
    expect(found.mc?.value).toBe(fall)
  })
})
