import { describe, expect, it } from 'vitest'
import type { Size } from '../../../../src/model/project.ts'
import { cuttingPlans } from '../../../../src/planning/buying/cutting-plans.ts'
import {
  aForm,
  aMaterial,
  anOffer,
  aPart,
  aProject,
  aStock,
  aVendor,
  bar,
  frac,
  machined,
  plate,
} from '../project-builder.ts'

const sheet = (id: string, size: Size, price: string | null, have = '0') =>
  aForm(id, size, { have: frac(have), offers: price === null ? [] : [anOffer('metal', price)] })
const part = (id: string, size: Size, form: string) =>
  aPart(id, [], { way: machined('al', aStock(size, form)) })
const project = (
  forms: ReturnType<typeof sheet>[],
  parts: ReturnType<typeof part>[],
  needed: Record<string, number>,
) => aProject({ vendors: [aVendor('metal')], materials: [aMaterial('al', forms)], parts, needed })

describe('cuttingPlans', () => {
  it('saws pieces of one thickness from the plates that cost the least, whichever comes first', () => {
    const forms = [sheet('large', plate(200, 100, 10), '30'), sheet('small', plate(100, 50, 10), '6')]
    const few = cuttingPlans(project(forms, [part('a', plate(90, 40, 10), 'large')], { a: 2 })).cuts
    expect(few.map(({ form, unitsBought, pieces }) => [form, unitsBought, pieces[0]!.count])).toEqual([
      ['small', 2, 2],
    ])
    const parts = [part('a', plate(90, 40, 10), 'large'), part('b', plate(170, 90, 10), 'large')]
    const { cuts } = cuttingPlans(project(forms, parts, { a: 2, b: 1 }))
    expect(cuts.map(({ form, pieces }) => [form, pieces.map((piece) => [piece.part, piece.count])])).toEqual([
      ['large', [['b', 1]]],
      ['small', [['a', 2]]],
    ])
    expect(cuts.map((cut) => 'proof' in cut && [cut.proof.proved, cut.proof.price.money])).toEqual([
      [true, 4200],
      [true, 4200],
    ])
  })

  it('does not mix thicknesses, nor bars of another section', () => {
    const forms = [
      sheet('thin', plate(200, 100, 5), '1'),
      sheet('thick', plate(200, 100, 10), '30'),
      sheet('bar', bar(10, 1000), '1'),
    ]
    const { cuts } = cuttingPlans(project(forms, [part('a', plate(90, 40, 10), 'thick')], { a: 1 }))
    expect(cuts.map(({ form }) => form)).toEqual(['thick'])
  })

  it('saws from an own plate of another size before it buys', () => {
    const forms = [sheet('large', plate(200, 100, 10), '30', '0.5'), sheet('small', plate(100, 50, 10), '1')]
    const { cuts } = cuttingPlans(project(forms, [part('a', plate(90, 40, 10), 'small')], { a: 2 }))
    expect(cuts.map(({ form, unitsBought, units }) => [form, unitsBought, units.length])).toEqual([
      ['large', 0, 1],
    ])
  })

  it('names a piece that no size holds once, at the form its part asks for', () => {
    const forms = [sheet('large', plate(200, 100, 10), '30'), sheet('small', plate(100, 50, 10), '6')]
    const { cuts, missing } = cuttingPlans(project(forms, [part('a', plate(300, 40, 10), 'small')], { a: 1 }))
    expect(cuts.map(({ form, tooLarge }) => [form, tooLarge])).toEqual([['small', ['a']]])
    expect(missing.map(({ why }) => why)).toEqual(['too large'])
  })

  it('says what is left of each bar', () => {
    const forms = [sheet('rod', bar(20, 100), '10')]
    const { cuts } = cuttingPlans(project(forms, [part('a', bar(20, 30), 'rod')], { a: 4 }))
    const rests = cuts.flatMap(({ units }) => units.map((unit) => 'rest' in unit && String(unit.rest)))
    expect(rests).toEqual(['4', '68'])
  })
})
