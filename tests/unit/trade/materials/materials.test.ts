import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findMaterial, workMaterial } from '../../../../src/trade/materials/find-material.ts'
import { galvanicPair } from '../../../../src/trade/materials/galvanic-pair.ts'
import { type Figure, materialSources } from '../../../../src/trade/materials/material.ts'
import { materials } from '../../../../src/trade/materials/materials.ts'
import { piecesPerBar } from '../../../../src/trade/materials/pieces-per-bar.ts'
import { type StockShape, stockMass, stockSection } from '../../../../src/trade/materials/stock-mass.ts'
import { interferenceAt, thermalGrowth } from '../../../../src/trade/materials/thermal.ts'

const anyNumber = fc.oneof(
  fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
  fc.double(),
  fc.constantFrom(0, -1, 1e9, 1e308, Number.NaN, Number.POSITIVE_INFINITY),
)

describe('the table of materials', () => {
  it('means one material by each name, whatever its case and spacing', () => {
    const folded = (name: string): string => name.toLowerCase().replace(/[^a-z0-9.]/g, '')
    const all = materials.flatMap(({ key, names }) => [...new Set([key, ...names].map(folded))])
    expect(all.filter((name, at) => all.indexOf(name) !== at)).toEqual([])
    for (const material of materials)
      for (const name of [material.key, ...material.names]) expect(findMaterial(name)).toBe(material)
  })

  it('holds figures of a solid, each with a source, inside its range', () => {
    const inside = (figure: Figure | null, least: number, most: number): boolean =>
      figure === null ||
      (figure.value >= (figure.range?.[0] ?? least) &&
        figure.value <= (figure.range?.[1] ?? most) &&
        figure.value >= least &&
        figure.value <= most &&
        figure.source in materialSources)
    const wrong = materials.filter(
      (each) =>
        !inside(each.densityGPerCm3, 0.8, 20) ||
        !inside(each.modulusGPa, 0.5, 300) ||
        !inside(each.poissonRatio, 0.05, 0.5) ||
        !inside(each.expansionPerMK, 1, 150) ||
        !inside(each.conductivityWPerMK, 0.1, 420) ||
        !inside(each.kc11NPerMm2, 100, 5000) ||
        !inside(each.mc, 0.1, 0.4),
    )
    expect(wrong.map(({ key }) => key)).toEqual([])
  })

  it('gives cutting the group and the force of a material, null where none is known', () => {
    const [brass, hard] = [findMaterial('brass'), findMaterial('55 HRC')]
    if ('fault' in brass || 'fault' in hard) throw new Error('not in the table')
    expect(workMaterial(brass)).toEqual({ group: 'brass', kc11NPerMm2: 700, mc: 0.27 })
    expect(workMaterial(hard)).toEqual({ group: 'hardened steel', kc11NPerMm2: 4600, mc: null })
  })
})

describe('galvanic pairs', () => {
  it('are the same whichever part is named first, and damp ones are at least as many', () => {
    for (const a of materials)
      for (const b of materials) {
        expect(galvanicPair(a, b, 'damp')).toEqual(galvanicPair(b, a, 'damp'))
        if (galvanicPair(a, b, 'indoors')) expect(galvanicPair(a, b, 'damp')).not.toBe(null)
      }
  })
})

describe('shapes, bars and warmth', () => {
  it('never give a broken or negative number', () => {
    const fine = (value: unknown): boolean =>
      typeof value !== 'number' || (Number.isFinite(value) && value >= 0)
    fc.assert(
      fc.property(anyNumber, anyNumber, anyNumber, anyNumber, anyNumber, (a, b, c, d, e) => {
        const shapes: readonly StockShape[] = [
          { shape: 'round', diameterMm: a, lengthMm: b },
          { shape: 'hex', acrossMm: a, lengthMm: b },
          { shape: 'square', sideMm: a, lengthMm: b },
          { shape: 'tube', outerMm: a, innerMm: c, lengthMm: b },
          { shape: 'block', lengthMm: a, widthMm: b, heightMm: c },
        ]
        for (const shape of shapes) {
          expect(fine(stockSection(shape))).toBe(true)
          expect(fine(stockMass(shape, d))).toBe(true)
        }
        expect(fine(piecesPerBar({ barMm: a, gripMm: b, kerfMm: c, pieceMm: d, facingMm: e }))).toBe(true)
        for (const value of [
          thermalGrowth(a, b, c),
          interferenceAt({ interferenceMm: a, diameterMm: b }, { shaftPerMK: c, hubPerMK: d }, e),
        ])
          expect(value === null || Number.isFinite(value)).toBe(true)
      }),
      { endOnFailure: true },
    )
  })

  it('a hexagon holds less than its square and more than the round bar inside it', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 100, noNaN: true }), (size) => {
        const [round, hex, square] = [
          stockSection({ shape: 'round', diameterMm: size, lengthMm: 1 }),
          stockSection({ shape: 'hex', acrossMm: size, lengthMm: 1 }),
          stockSection({ shape: 'square', sideMm: size, lengthMm: 1 }),
        ] as [number, number, number]
        expect(hex).toBeGreaterThan(round)
        expect(hex).toBeLessThan(square)
      }),
    )
  })
})
