import { describe, expect, it } from 'vitest'
import { basicProfile } from '../../src/trade/threads/basic-profile.ts'
import { metricSelection, metricSizes } from '../../src/trade/threads/metric-selection.ts'
import {
  crestTolerance,
  pitchTolerance,
  pitchToleranceByFormula,
  positionOffset,
} from '../../src/trade/threads/metric-tolerances.ts'
import { isThreadFault, readThread } from '../../src/trade/threads/read-thread.ts'
import type { Thread, ThreadGender } from '../../src/trade/threads/thread.ts'
import { threadLimits } from '../../src/trade/threads/thread-limits.ts'

function thread(text: string): Thread {
  const read = readThread(text)
  if (isThreadFault(read)) throw new Error(JSON.stringify(read))
  return read
}

function limits(text: string, gender: ThreadGender | null = null) {
  const found = threadLimits(thread(text), gender)
  if ('fault' in found) throw new Error(found.fault)
  return found
}

describe('basic profile', () => {
  it('of M6x1 has the heights and diameters a tap maker prints (T-01)', () => {
    // Source: Iscar, Taps user guide 2022, ISO metric nominal dimensions.
    const profile = basicProfile(thread('M6x1'))
    expect(profile.triangleHeightMm).toBeCloseTo(0.866, 3)
    expect(profile.overlapMm).toBeCloseTo(0.5413, 4)
    expect(profile.pitchDiameterMm).toBeCloseTo(5.35, 3)
    expect(profile.minorDiameterMm).toBeCloseTo(4.917, 3)
    expect(profile.rootDiameterMm).toBeCloseTo(4.773, 3)
  })

  it('per unit pitch has the constants of ISO 68-1', () => {
    // Source: 0.86603, 0.54127, 0.61343 and 0.14434 printed by the same guide; flats from memory of ISO 68-1.
    const profile = basicProfile({ majorMm: 10, pitchMm: 1 })
    expect(profile.triangleHeightMm).toBeCloseTo(0.866025, 6)
    expect(profile.overlapMm).toBeCloseTo(0.541266, 6)
    expect((10 - profile.rootDiameterMm) / 2).toBeCloseTo(0.613435, 6)
    expect(profile.rootRadiusMm).toBeCloseTo(0.144338, 6)
    expect([profile.crestFlatMm, profile.rootFlatMm]).toEqual([0.125, 0.25])
    expect(10 - profile.pitchDiameterMm).toBeCloseTo(0.649519, 6)
    expect(10 - profile.minorDiameterMm).toBeCloseTo(1.082532, 6)
  })
})

describe('selection of diameters and pitches', () => {
  // Source: ISO 261, two open thread tables citing it; M30x1 from memory.
  it.each([
    [1, 1, 0.25, [0.2]],
    [1.1, 2, 0.25, [0.2]],
    [1.2, 1, 0.25, [0.2]],
    [1.4, 2, 0.3, [0.2]],
    [1.6, 1, 0.35, [0.2]],
    [1.8, 2, 0.35, [0.2]],
    [2, 1, 0.4, [0.25]],
    [2.2, 2, 0.45, [0.25]],
    [2.5, 1, 0.45, [0.35]],
    [3, 1, 0.5, [0.35]],
    [3.5, 2, 0.6, [0.35]],
    [4, 1, 0.7, [0.5]],
    [4.5, 2, 0.75, [0.5]],
    [5, 1, 0.8, [0.5]],
    [6, 1, 1, [0.75]],
    [7, 2, 1, [0.75]],
    [8, 1, 1.25, [1, 0.75]],
    [10, 1, 1.5, [1.25, 1, 0.75]],
    [12, 1, 1.75, [1.5, 1.25, 1]],
    [14, 2, 2, [1.5, 1.25, 1]],
    [16, 1, 2, [1.5, 1]],
    [18, 2, 2.5, [2, 1.5, 1]],
    [20, 1, 2.5, [2, 1.5, 1]],
    [22, 2, 2.5, [2, 1.5, 1]],
    [24, 1, 3, [2, 1.5, 1]],
    [27, 2, 3, [2, 1.5, 1]],
    [30, 1, 3.5, [3, 2, 1.5, 1]],
  ])('M%s is of choice %s with coarse pitch %s and fine %j', (diameter, choice, coarse, fine) => {
    const row = metricSizes.find(({ diameterMm }) => diameterMm === diameter)
    expect(row).toMatchObject({ choice, coarseMm: coarse, fineMm: fine })
  })

  it('lists M8x1 for fasteners, M8x0.75 in the general plan alone, M8x0.5 nowhere (T-07)', () => {
    // Source: a public table of ISO 262 and the tables above.
    expect(metricSelection(8, 1)).toMatchObject({ inIso261: true, inIso262: true, coarse: false })
    expect(metricSelection(8, 0.75)).toMatchObject({ inIso261: true, inIso262: false })
    expect(metricSelection(8, 0.5)).toMatchObject({ inIso261: false, inIso262: false })
  })

  it('does not list M20x0.75 and says which pitches it lists (T-06)', () => {
    // Source: as above: the pitches of 20 mm stop at 1.
    expect(metricSelection(20, 0.75)).toMatchObject({ inIso261: false, pitchesMm: [2.5, 2, 1.5, 1] })
  })

  it('names listed neighbours of a diameter that is not listed', () => {
    expect(metricSelection(13, 1)).toMatchObject({ choice: null, pitchesMm: [], neighboursMm: [12, 14] })
  })
})

describe('tolerances by pitch', () => {
  // Source: ISO 965-1 through ASME B1.13M charts: es at g, Td and TD1 of grade 6; from memory where charts were silent.
  it.each([
    [0.2, 17, 56, null],
    [0.25, 18, 67, null],
    [0.3, 18, 75, 85],
    [0.35, 19, 85, 100],
    [0.4, 19, 95, 112],
    [0.45, 20, 100, 125],
    [0.5, 20, 106, 140],
    [0.6, 21, 125, 160],
    [0.7, 22, 140, 180],
    [0.75, 22, 140, 190],
    [0.8, 24, 150, 200],
    [1, 26, 180, 236],
    [1.25, 28, 212, 265],
    [1.5, 32, 236, 300],
    [1.75, 34, 265, 335],
    [2, 38, 280, 375],
    [2.5, 42, 335, 450],
    [3, 48, 375, 500],
    [3.5, 53, 425, 560],
  ])('pitch %s has g %s, Td %s and TD1 %s', (pitch, g, td, td1) => {
    expect(positionOffset('g', pitch)).toEqual({ um: g, from: 'table' })
    expect(positionOffset('G', pitch).um).toBe(g)
    expect(crestTolerance('external', 6, pitch)).toEqual({ um: td, from: 'table' })
    if (td1 !== null) expect(crestTolerance('internal', 6, pitch)).toEqual({ um: td1, from: 'table' })
  })

  it('at e and f are those of the standard by whole columns', () => {
    // Source: ISO 965-1 table of fundamental deviations, from memory.
    const pitches = [0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5]
    const at = (letter: 'e' | 'f') => pitches.map((pitch) => positionOffset(letter, pitch).um)
    expect(at('e')).toEqual([50, 53, 56, 56, 60, 60, 63, 67, 71, 71, 80, 85, 90])
    expect(at('f')).toEqual([36, 36, 38, 38, 38, 40, 42, 45, 48, 52, 58, 63, 70])
    expect([0.35, 0.4, 0.45].map((pitch) => positionOffset('f', pitch).um)).toEqual([34, 34, 35])
  })

  it('of pitches in no table follow the formulas and say so', () => {
    // Source: computed: 230 x 0.9^0.7 = 213.6 and 230 x 1.1^0.7 = 245.9, to the nearest of R40; g 15 + 11 x 0.9 = 24.9.
    expect(crestTolerance('internal', 6, 0.9)).toEqual({ um: 212, from: 'formula' })
    expect(crestTolerance('internal', 6, 1.1)).toEqual({ um: 250, from: 'formula' })
    expect(positionOffset('g', 0.9)).toEqual({ um: 25, from: 'formula' })
  })

  it('lie within one preferred number of the formulas of ISO 965-1 clause 13', () => {
    for (const pitch of [
      0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5,
    ]) {
      const td = 180 * pitch ** (2 / 3) - 3.15 / Math.sqrt(pitch)
      const td1 = pitch <= 0.8 ? 433 * pitch - 190 * pitch ** 1.22 : 230 * pitch ** 0.7
      expect(Math.abs(crestTolerance('external', 6, pitch).um / td - 1)).toBeLessThan(0.06)
      expect(Math.abs(crestTolerance('internal', 6, pitch).um / td1 - 1)).toBeLessThan(0.06)
      expect(Math.abs(positionOffset('f', pitch).um - (30 + 11 * pitch))).toBeLessThan(3.5)
      expect(Math.abs(positionOffset('e', pitch).um - (50 + 11 * pitch))).toBeLessThan(5.6)
    }
  })
})

describe('tolerances of the pitch diameter', () => {
  // Source: ISO 965-1 through ASME B1.13M charts and the catalogues of two tap makers; from memory where they were
  // silent.
  it.each([
    [1.4, 0.2, 48, 63, 48.1, 63.4],
    [1.4, 0.25, 53, 71, 52.5, 69.4],
    [1.4, 0.3, 56, 75, 56.5, 74.6],
    [2.8, 0.2, 50, 67, 50.6, 66.8],
    [2.8, 0.25, 56, 75, 55.3, 73.1],
    [2.8, 0.35, 63, 85, 63.3, 83.6],
    [2.8, 0.4, 67, 90, 66.8, 88.2],
    [2.8, 0.45, 71, 95, 70.0, 92.4],
    [5.6, 0.35, 67, 90, 67.9, 89.6],
    [5.6, 0.5, 75, 100, 78.3, 103.3],
    [5.6, 0.6, 85, 112, 84.2, 111.1],
    [5.6, 0.7, 90, 118, 89.5, 118.2],
    [5.6, 0.75, 90, 118, 92.1, 121.5],
    [5.6, 0.8, 95, 125, 94.5, 124.7],
    [11.2, 0.75, 100, 132, 98.7, 130.2],
    [11.2, 1, 112, 150, 110.7, 146.1],
    [11.2, 1.25, 118, 160, 121.0, 159.8],
    [11.2, 1.5, 132, 180, 130.2, 171.8],
    [22.4, 1, 118, 160, 118.6, 156.6],
    [22.4, 1.25, 132, 180, 129.7, 171.2],
    [22.4, 1.5, 140, 190, 139.5, 184.2],
    [22.4, 1.75, 150, 200, 148.4, 195.9],
    [22.4, 2, 160, 212, 156.5, 206.6],
    [22.4, 2.5, 170, 224, 171.2, 225.9],
    [45, 1, 125, 170, 127.2, 167.9],
    [45, 1.5, 150, 200, 149.6, 197.4],
    [45, 2, 170, 224, 167.8, 221.5],
    [45, 3, 200, 265, 197.4, 260.5],
    [45, 3.5, 212, 280, 209.9, 277.1],
  ])('to %s mm at pitch %s are Td2 %s and TD2 %s', (diameter, pitch, td2, nut, td2Formula, nutFormula) => {
    expect(pitchTolerance({ gender: 'external', grade: 6 }, diameter, pitch)).toEqual({
      um: td2,
      from: 'table',
    })
    expect(pitchTolerance({ gender: 'internal', grade: 6 }, diameter, pitch)).toEqual({
      um: nut,
      from: 'table',
    })
    expect(pitchToleranceByFormula(diameter, pitch)).toBeCloseTo(td2Formula, 0)
    expect(Math.abs(nutFormula / nut - 1)).toBeLessThan(0.06)
  })

  // Source: Yamawa, general catalogue 2021, page 645, comparison of pitch diameter tolerances, coarse threads.
  it.each([
    [1, 0.25, 45, 56, null],
    [1.4, 0.3, 48, 60, 75],
    [1.6, 0.35, 53, 67, 85],
    [2, 0.4, 56, 71, 90],
    [2.5, 0.45, 60, 75, 95],
    [3, 0.5, 63, 80, 100],
    [3.5, 0.6, 71, 90, 112],
    [4, 0.7, 75, 95, 118],
    [5, 0.8, 80, 100, 125],
    [6, 1, 95, 118, 150],
    [8, 1.25, 100, 125, 160],
  ])('M%s x %s nuts have %s at 4H, %s at 5H, %s at 6H', (diameter, pitch, four, five, six) => {
    const of = (grade: number) => pitchTolerance({ gender: 'internal', grade }, diameter, pitch)?.um
    expect([of(4), of(5)]).toEqual([four, five])
    if (six !== null) expect(of(6)).toBe(six)
  })

  it('of M20x0.75 come by formula and say so (T-06)', () => {
    // Source: computed from the formulas of ISO 965-1 clause 13.
    expect(pitchToleranceByFormula(20, 0.75)).toBeCloseTo(105.7, 1)
    expect(pitchTolerance({ gender: 'external', grade: 6 }, 20, 0.75)).toEqual({ um: 106, from: 'formula' })
    expect(pitchTolerance({ gender: 'internal', grade: 6 }, 20, 0.75)).toEqual({ um: 140, from: 'formula' })
    expect([positionOffset('g', 0.75).um, crestTolerance('external', 6, 0.75).um]).toEqual([22, 140])
    expect(crestTolerance('internal', 6, 0.75).um).toBe(190)
    const basic = basicProfile(thread('M20x0.75'))
    expect(basic.pitchDiameterMm).toBeCloseTo(19.513, 3)
    expect(basic.minorDiameterMm).toBeCloseTo(19.188, 3)
    expect(limits('M20x0.75-6g').from).toBe('formula')
  })
})

describe('limits of size', () => {
  // Source: ASME B1.13M charts and tap makers' tables where they print the thread (M1.6 to M18 in part; T-02 to T-05),
  // else computed from the tolerance tables.
  it.each([
    ['M1.6x0.35', 1.581, 1.496, 1.354, 1.291, 1.221, 1.321, 1.373, 1.458],
    ['M2x0.4', 1.981, 1.886, 1.721, 1.654, 1.567, 1.679, 1.74, 1.83],
    ['M2.5x0.45', 2.48, 2.38, 2.188, 2.117, 2.013, 2.138, 2.208, 2.208 + 0.095],
    ['M3x0.5', 2.98, 2.874, 2.655, 2.58, 2.459, 2.599, 2.675, 2.775],
    ['M3.5x0.6', 3.479, 3.354, 3.089, 3.004, 2.85, 3.01, 3.11, 3.222],
    ['M4x0.7', 3.978, 3.838, 3.523, 3.433, 3.242, 3.422, 3.545, 3.663],
    ['M5x0.8', 4.976, 4.826, 4.456, 4.361, 4.134, 4.334, 4.48, 4.605],
    ['M6x1', 5.974, 5.794, 5.324, 5.212, 4.917, 5.153, 5.35, 5.5],
    ['M6x0.75', 5.978, 5.838, 5.491, 5.391, 5.188, 5.378, 5.513, 5.645],
    ['M8x1.25', 7.972, 7.76, 7.16, 7.042, 6.647, 6.912, 7.188, 7.348],
    ['M8x1', 7.974, 7.794, 7.324, 7.212, 6.917, 7.153, 7.35, 7.5],
    ['M10x1.5', 9.968, 9.732, 8.994, 8.862, 8.376, 8.676, 9.026, 9.206],
    ['M10x1.25', 9.972, 9.76, 9.16, 9.042, 8.647, 8.912, 9.188, 9.348],
    ['M10x0.75', 9.978, 9.838, 9.491, 9.391, 9.188, 9.378, 9.513, 9.645],
    ['M12x1.75', 11.966, 11.701, 10.829, 10.679, 10.106, 10.441, 10.863, 11.063],
    ['M12x1.5', 11.968, 11.732, 10.994, 10.854, 10.376, 10.676, 11.026, 11.216],
    ['M12x1', 11.974, 11.794, 11.324, 11.206, 10.917, 11.153, 11.35, 11.51],
    ['M14x2', 13.962, 13.682, 12.663, 12.503, 11.835, 12.21, 12.701, 12.913],
    ['M14x1.5', 13.968, 13.732, 12.994, 12.854, 12.376, 12.676, 13.026, 13.216],
    ['M16x2', 15.962, 15.682, 14.663, 14.503, 13.835, 14.21, 14.701, 14.913],
    ['M16x1.5', 15.968, 15.732, 14.994, 14.854, 14.376, 14.676, 15.026, 15.216],
    ['M18x2.5', 17.958, 17.623, 16.334, 16.164, 15.294, 15.744, 16.376, 16.6],
    ['M18x1.5', 17.968, 17.732, 16.994, 16.854, 16.376, 16.676, 17.026, 17.216],
    ['M18x1', 17.974, 17.794, 17.324, 17.206, 16.917, 17.153, 17.35, 17.51],
    ['M20x2.5', 19.958, 19.623, 18.334, 18.164, 17.294, 17.744, 18.376, 18.6],
    ['M20x1.5', 19.968, 19.732, 18.994, 18.854, 18.376, 18.676, 19.026, 19.216],
    ['M24x3', 23.952, 23.577, 22.003, 21.803, 20.752, 21.252, 22.051, 22.316],
    ['M30x3.5', 29.947, 29.522, 27.674, 27.462, 26.211, 26.771, 27.727, 28.007],
  ])('%s at 6g and 6H', (text, dMax, dMin, d2Max, d2Min, d1Min, d1Max, nutD2Min, nutD2Max) => {
    const screw = limits(`${text}-6g`)
    const nut = limits(`${text}-6H`)
    const near = (found: number | null, wanted: number): void =>
      expect(Math.abs((found ?? Number.NaN) - wanted)).toBeLessThanOrEqual(0.001 + 1e-9)
    near(screw.major.maxMm, dMax)
    near(screw.major.minMm, dMin)
    near(screw.pitch.maxMm, d2Max)
    near(screw.pitch.minMm, d2Min)
    near(nut.minor.minMm, d1Min)
    near(nut.minor.maxMm, d1Max)
    near(nut.pitch.minMm, nutD2Min)
    near(nut.pitch.maxMm, nutD2Max)
    expect([screw.from, nut.from]).toEqual(['table', 'table'])
  })

  it('of a nut at 6G lie the g distance above those at 6H', () => {
    // Source: Yamawa catalogue page 645: 6G of M6x1 from 26 to 176 um above the basic pitch diameter.
    const { pitch } = limits('M6x1-6G')
    expect(pitch.minMm).toBeCloseTo(5.35 + 0.026, 3)
    expect(pitch.maxMm).toBeCloseTo(5.35 + 0.176, 3)
  })

  it('take 5H and 6h up to M1.4, and 6H and 6g above, where no class is written', () => {
    // Source: a gauge maker's note on the medium quality of ISO 965.
    expect(limits('M1.4', 'internal').class.text).toBe('5H')
    expect(limits('M1.4', 'external').class.text).toBe('6h')
    expect(limits('M1.6', 'internal').class.text).toBe('6H')
    expect(limits('M1.6', 'external')).toMatchObject({ classFrom: 'usual', class: { text: '6g' } })
  })
})
