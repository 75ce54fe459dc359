import { describe, expect, it } from 'vitest'
import { findMaterial } from '../../src/trade/materials/find-material.ts'
import { galvanicPair, galvanicSeries } from '../../src/trade/materials/galvanic-pair.ts'
import type { Material } from '../../src/trade/materials/material.ts'
import { piecesPerBar } from '../../src/trade/materials/pieces-per-bar.ts'
import { stockMass, stockVolume } from '../../src/trade/materials/stock-mass.ts'
import { interferenceAt, thermalGrowth } from '../../src/trade/materials/thermal.ts'

const near = (got: unknown, wanted: number, share: number): void => {
  expect(typeof got === 'number' && Math.abs(got / wanted - 1) <= share, `${got} against ${wanted}`).toBe(
    true,
  )
}

const known = (name: string): Material => {
  const found = findMaterial(name)
  if ('fault' in found) throw new Error(`no ${name}`)
  return found
}

describe('properties, by whole columns', () => {
  // Density, E and expansion: Callister Appendix B and a compilation after it; gear and plastics tables; Isakov for
  // titanium; 12L14, PEEK and brass E from memory. One figure where tables agree.
  it.each([
    ['C36000', 8.5, 97, 20.5],
    ['6061-T6', 2.7, 69, 23.6],
    ['7075-T6', 2.81, 72, 23.4],
    ['303', 8, 193, 17.2],
    ['316', 8, 193, 15.9],
    ['12L14', 7.87, 200, 11.5],
    ['1018', 7.87, 205, 11.7],
    ['Ti-6Al-4V', 4.42, 114, 8.6],
    ['C17200', 8.26, 124, 16.7],
    ['AZ31B', 1.77, 45, 26],
    ['C110', 8.89, 117, 17],
    ['acetal', 1.41, 3, 85],
    ['PEEK', 1.31, 3.6, 47],
    ['PA66', 1.14, 2.7, 81],
    ['polycarbonate', 1.2, 2.4, 68],
    ['ABS', 1.05, 1.9, 95],
    ['PETG', 1.27, 2, 60],
  ])(
    '%s weighs %d g/cm3, has %d GPa and grows %d per million and kelvin',
    (name, density, modulus, expansion) => {
      const found = known(name)
      expect(found.densityGPerCm3.value).toBe(density)
      expect(found.modulusGPa?.value).toBe(modulus)
      expect(found.expansionPerMK?.value).toBe(expansion)
    },
  )

  // The same tables where they differ: the range is theirs.
  it.each([
    ['PTFE', 'modulusGPa', 0.5, 1.6],
    ['PTFE', 'expansionPerMK', 90, 119],
    ['PMMA', 'expansionPerMK', 63, 90],
    ['PLA', 'modulusGPa', 3, 3.5],
    ['photopolymer', 'modulusGPa', 1.5, 2.8],
    ['photopolymer', 'expansionPerMK', 80, 110],
    ['photopolymer', 'densityGPerCm3', 1.15, 1.2],
  ] as const)('%s has a %s from %d to %d', (name, figure, low, high) => {
    const found = known(name)[figure]
    expect(found?.range).toEqual([low, high])
    expect(found!.value).toBeGreaterThanOrEqual(low)
    expect(found!.value).toBeLessThanOrEqual(high)
  })

  // A supplier's data page for EN AW-6082: 2700 kg/m3, 23.4, about 70 GPa, 170 to 220 W/(m K).
  it('EN AW-6082 is as its supplier prints it', () => {
    expect(known('EN AW-6082')).toMatchObject({
      densityGPerCm3: { value: 2.7 },
      modulusGPa: { value: 70 },
      expansionPerMK: { value: 23.4 },
      conductivityWPerMK: { range: [170, 220] },
    })
  })
})

describe('names', () => {
  it.each([
    ['al-6082', 'al-6082'],
    ['en aw 6082', 'al-6082'],
    ['1.4301', 'stainless-304'],
    ['304', 'stainless-304'],
    ['Brass', 'brass'],
    ['cuzn39pb3', 'brass'],
    ['steel-c45', 'steel-c45'],
    ['C45', 'steel-c45'],
    ['pom', 'POM'],
    ['Black resin', 'resin'],
  ])('%s is %s', (typed, key) => {
    expect(known(typed).key).toBe(key)
  })

  it('near ones are offered for a slip, none for a word of another world', () => {
    expect(findMaterial('al-6028')).toMatchObject({
      fault: 'no such material',
      near: expect.arrayContaining(['al-6082']),
    })
    expect(findMaterial('bras')).toMatchObject({ near: expect.arrayContaining(['brass']) })
    expect(findMaterial('unobtainium metal')).toEqual({ fault: 'no such material', near: [] })
    expect(findMaterial('')).toMatchObject({ fault: 'no such material' })
  })
})

describe('mass and pieces', () => {
  // computed from density x volume.
  it('brass round 20 x 75 is 200.3 g and a 6061 blank of 80 x 50 x 12 is 129.6 g', () => {
    const bar = { shape: 'round', diameterMm: 20, lengthMm: 75 } as const
    near(stockMass(bar, known('C360').densityGPerCm3.value), 200.3, 0.005)
    const blank = { shape: 'block', lengthMm: 80, widthMm: 50, heightMm: 12 } as const
    near(stockMass(blank, known('6061').densityGPerCm3.value), 129.6, 0.005)
  })

  // Steel weight tables at 7.85 g/cm3, per metre: hexagon 17 mm 1.96 kg, square 20 mm 3.14 kg, tube 20 x 2 0.888 kg
  // (from memory of section tables).
  it.each([
    [{ shape: 'hex', acrossMm: 17, lengthMm: 1000 }, 1960],
    [{ shape: 'square', sideMm: 20, lengthMm: 1000 }, 3140],
    [{ shape: 'tube', outerMm: 20, innerMm: 16, lengthMm: 1000 }, 888],
    [{ shape: 'round', diameterMm: 20, lengthMm: 1000 }, 2470],
  ] as const)('%o of steel weighs %d g', (piece, grams) => {
    near(stockMass(piece, 7.85), grams, 0.005)
  })

  it.each([
    [{ shape: 'round', diameterMm: 0, lengthMm: 5 }, 'diameterMm'],
    [{ shape: 'round', diameterMm: 5, lengthMm: Number.NaN }, 'lengthMm'],
    [{ shape: 'tube', outerMm: 10, innerMm: 10, lengthMm: 5 }, 'innerMm'],
    [{ shape: 'block', lengthMm: 1, widthMm: 1, heightMm: Number.POSITIVE_INFINITY }, 'heightMm'],
  ] as const)('%o has no volume', (piece, what) => {
    expect(stockVolume(piece)).toEqual({ fault: 'no such shape', what })
  })

  // computed.
  it('a bar of 1 m yields 21 sawn pieces of 42 mm, one of 3 m 141 parted ones of 18 mm', () => {
    expect(piecesPerBar({ barMm: 1000, gripMm: 30, kerfMm: 1.6, pieceMm: 42, facingMm: 1 })).toBe(21)
    expect(piecesPerBar({ barMm: 3000, gripMm: 30, kerfMm: 2, pieceMm: 18, facingMm: 0.5 })).toBe(141)
  })

  // The last piece needs no kerf after it: 3 x 10 mm and two kerfs of 1 mm fill 32 mm.
  it('a bar of just three pieces and two kerfs yields three', () => {
    const bar = { gripMm: 0, kerfMm: 1, pieceMm: 10, facingMm: 0 }
    expect(piecesPerBar({ ...bar, barMm: 32 })).toBe(3)
    expect(piecesPerBar({ ...bar, barMm: 31.9 })).toBe(2)
    expect(piecesPerBar({ ...bar, barMm: 5 })).toBe(0)
    expect(piecesPerBar({ ...bar, barMm: Number.NaN })).toBe(null)
    expect(piecesPerBar({ ...bar, pieceMm: 0, barMm: 100 })).toBe(null)
  })
})

describe('warmth', () => {
  // A-10, computed: 300 mm of 6061, 15 K.
  it('a 6061 plate of 300 mm grows 106.2 micrometres in 15 K', () => {
    near(thermalGrowth(300, known('6061').expansionPerMK!.value, 15), 0.1062, 0.005)
  })

  // A-08, computed: steel pin of 6 mm in brass, 0.010 mm, at 80 C.
  it('a steel pin of 6 mm in brass keeps 6.832 of 10 micrometres at 80 C', () => {
    const mated = { shaftPerMK: 11.7, hubPerMK: 20.5 }
    near(interferenceAt({ interferenceMm: 0.01, diameterMm: 6 }, mated, 80), 0.006832, 0.005)
    expect(interferenceAt({ interferenceMm: 0.01, diameterMm: 6 }, mated, 20)).toBe(0.01)
  })

  it('of a number out of domain is nothing', () => {
    expect(thermalGrowth(Number.NaN, 1, 1)).toBe(null)
    expect(thermalGrowth(1, 1, Number.POSITIVE_INFINITY)).toBe(null)
    expect(interferenceAt({ interferenceMm: 0, diameterMm: 0 }, { shaftPerMK: 1, hubPerMK: 1 }, 20)).toBe(
      null,
    )
  })
})

describe('galvanic pairs', () => {
  // Potentials in flowing seawater, Professional Boatbuilder 100 (2006), a public copy.
  it.each([
    ['magnesium', -1.65, -1.6],
    ['zinc', -1.03, -0.98],
    ['aluminium', -1, -0.76],
    ['steel', -0.71, -0.6],
    ['brass', -0.4, -0.3],
  ] as const)('%s lies from %d to %d V', (metal, low, high) => {
    expect(galvanicSeries[metal]).toEqual([low, high])
  })

  // Public pages on the series: stainless fasteners eat aluminium; copper and brass lie together; plastics never.
  it('aluminium is eaten by stainless and brass, brass and copper leave each other alone, plastic is no metal', () => {
    const [aluminium, stainless, brass] = [known('6082'), known('A2'), known('brass')]
    expect(galvanicPair(stainless, aluminium, 'indoors')).toMatchObject({
      eaten: 'al-6082',
      noble: 'stainless-304',
    })
    expect(galvanicPair(aluminium, brass, 'damp')).toMatchObject({ eaten: 'al-6082', mostV: 0.15 })
    expect(galvanicPair(brass, known('copper'), 'damp')).toBe(null)
    expect(galvanicPair(brass, known('POM'), 'damp')).toBe(null)
    expect(galvanicPair(aluminium, aluminium, 'damp')).toBe(null)
  })
})
