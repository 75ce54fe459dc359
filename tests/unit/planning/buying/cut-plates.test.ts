import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { cutPlates } from '../../../../src/planning/buying/cut-plates.ts'

const size = (length: number, width: number) => ({ length: new Fraction(length), width: new Fraction(width) })
const piece = (part: string, length: number, width: number, kerf = 2) => ({
  part,
  ...size(length, width),
  kerf: new Fraction(kerf),
})
const none = new Fraction(0)
const shares = (units: ReturnType<typeof cutPlates>['units']) =>
  units.map(({ pieces }) => pieces.map(({ part, share }) => `${part} ${share.toFraction()}`))

describe('cutPlates', () => {
  it('saws rows of pieces with one cut behind each piece and row', () => {
    const four = Array.from({ length: 4 }, () => piece('a', 48, 48))
    // Four cells of 50 x 50 fill 100 x 100 to the edge.
    expect(shares(cutPlates(four, size(100, 100), none).units)).toEqual([
      ['a 1/4', 'a 1/4', 'a 1/4', 'a 1/4'],
    ])
  })

  it('needs no cut beyond the edge, and a second plate where the cut between no longer fits', () => {
    const two = [piece('a', 49, 100), piece('a', 49, 100)]
    expect(shares(cutPlates(two, size(100, 100), none).units)).toEqual([['a 51/100', 'a 49/100']])
    const wider = [piece('a', 50, 100), piece('a', 50, 100)]
    expect(cutPlates(wider, size(100, 100), none).units).toHaveLength(2)
  })

  it('turns a piece that fits only the other way, and refuses one that fits no way', () => {
    const found = cutPlates([piece('turned', 40, 90), piece('large', 101, 20)], size(100, 50), none)
    expect(found.units).toHaveLength(1)
    expect(found.tooLarge).toEqual(['large'])
  })

  it('uses an own remnant of the full width before a new plate', () => {
    const pieces = [piece('a', 30, 40), piece('a', 30, 40), piece('a', 30, 40)]
    const { units } = cutPlates(pieces, size(100, 50), new Fraction(2, 5))
    expect(units.map(({ own, pieces: cut }) => [own, cut.length])).toEqual([
      [true, 1],
      [false, 2],
    ])
  })

  it('cuts with the widest blade that any piece of the plate asks for', () => {
    const { units } = cutPlates([piece('a', 8, 8, 2), piece('b', 8, 8, 0)], size(100, 100), none)
    expect(shares(units)).toEqual([['a 1/100', 'b 1/100']])
  })
})
