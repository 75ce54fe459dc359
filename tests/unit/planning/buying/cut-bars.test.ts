import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { type BarPlan, cutBars, planBars, usualRules } from '../../../../src/planning/buying/cut-bars.ts'

const mm = (length: number | string) => new Fraction(length)
const none = mm(0)
const piece = (part: string, length: number | string, kerf: number | string = 2) => ({
  part,
  length: mm(length),
  kerf: mm(kerf),
})
const sawn = ({ units }: BarPlan) => units.map(({ pieces }) => pieces.map(({ part }) => part).join(' '))
const rests = ({ units }: BarPlan) => units.map(({ rest }) => rest.toString())

describe('cutBars', () => {
  it('takes one saw cut behind each piece, and none where it would fall beyond the end', () => {
    const two = cutBars([piece('a', 49), piece('a', 49)], mm(100), none)
    expect([sawn(two), rests(two)]).toEqual([['a a'], ['0']])
    expect(two.units[0]!.pieces.map(({ share }) => share.toFraction())).toEqual(['51/100', '49/100'])
    expect(sawn(cutBars([piece('a', '49.1'), piece('a', 49)], mm(100), none))).toHaveLength(2)
  })

  it('lets the piece with the widest cut come last, where its cut falls away', () => {
    const plan = cutBars([piece('wide', 60, 5), piece('thin', 38, 2)], mm(100), none)
    expect([sawn(plan), rests(plan)]).toEqual([['thin wide'], ['0']])
  })

  it('adds what both faces of a piece are to lose to its length', () => {
    const faced = { ...piece('a', 47), facing: mm(2) }
    expect(rests(cutBars([faced, faced], mm(100), none))).toEqual(['0'])
    expect(sawn(cutBars([faced, { ...faced, facing: mm('2.1') }], mm(100), none))).toHaveLength(2)
  })

  it('leaves the gripped end of every bar, and saws the last piece off it', () => {
    const rules = { ...usualRules, grip: mm(20) }
    const plan = cutBars([piece('a', 38), piece('a', 38)], mm(100), none, rules)
    expect([sawn(plan), rests(plan)]).toEqual([['a a'], ['20']])
    expect(sawn(cutBars([piece('a', 38), piece('a', '38.1')], mm(100), none, rules))).toHaveLength(2)
    expect(cutBars([piece('long', 79)], mm(100), none, rules).tooLarge).toEqual(['long'])
    // An own remnant is held by its end as well.
    expect(cutBars([piece('a', 18)], mm(100), mm('0.39'), rules).units[0]!.own).toBe(false)
    expect(cutBars([piece('a', 18)], mm(100), mm('0.4'), rules).units[0]!.own).toBe(true)
  })

  it('finds the two bars that the longest-first rule misses', () => {
    // Longest first puts 45 with 40, then 35 with both 30, and opens a third bar for 20.
    const lengths = [45, 40, 35, 30, 30, 20]
    const plan = cutBars(
      lengths.map((length) => piece(`${length}`, length, 0)),
      mm(100),
      none,
    )
    expect(plan.units).toHaveLength(2)
    expect(plan.proved).toBe(true)
  })

  it('uses as few own whole bars as hold everything, the remnant first', () => {
    const plan = cutBars([piece('a', 40), piece('a', 40), piece('b', 30)], mm(100), mm('3.4'))
    expect(plan.units.map(({ own, size }) => [own, size.toString()])).toEqual([
      [true, '0.4'],
      [true, '1'],
    ])
    expect(plan.price.money).toBe(0)
  })

  it('fills what is here before it begins a new bar', () => {
    const plan = cutBars([piece('a', 58), piece('a', 58), piece('b', 18), piece('b', 18)], mm(100), mm('0.4'))
    expect(plan.units.map(({ own, pieces }) => [own, pieces.length])).toEqual([
      [true, 2],
      [false, 1],
      [false, 1],
    ])
  })
})

describe('planBars', () => {
  const stock = (id: string, length: number, each: number | null) => ({
    id,
    length: mm(length),
    have: none,
    price: (bars: number) =>
      each === null ? { unpriced: bars, money: 0 } : { unpriced: 0, money: bars * each },
  })
  const three = [piece('a', 90), piece('b', 90), piece('c', 90)]

  it('buys the lengths that cost the least together', () => {
    const plan = planBars(three, [stock('long', 200, 30), stock('short', 100, 18)])
    expect(plan.units.map(({ form, pieces }) => [form, pieces.length])).toEqual([
      ['long', 2],
      ['short', 1],
    ])
    expect([plan.price.money, plan.proved]).toEqual([48, true])
  })

  it('buys less material where two choices cost the same', () => {
    const plan = planBars([piece('a', 90)], [stock('long', 200, 18), stock('short', 100, 18)])
    expect(plan.units.map(({ form }) => form)).toEqual(['short'])
  })

  it('takes a length without a price only for what no priced one can hold', () => {
    const plan = planBars([...three, piece('long', 150)], [stock('long', 200, null), stock('short', 100, 18)])
    expect(plan.units.map(({ form, pieces }) => [form, pieces.map(({ part }) => part)])).toEqual([
      ['long', ['long']],
      ['short', ['a']],
      ['short', ['b']],
      ['short', ['c']],
    ])
    expect(plan.price).toMatchObject({ unpriced: 1, money: 54 })
  })
})
