import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import type { BarPiece, BarStock } from '../../src/planning/buying/bar-stock.ts'
import { planBars } from '../../src/planning/buying/cut-bars.ts'
import { planPlates } from '../../src/planning/buying/cut-plates.ts'
import type { Piece } from '../../src/planning/buying/packing.ts'
import type { PlateStock } from '../../src/planning/buying/plate-stock.ts'
import type { CutPlace } from '../../src/planning/buying/sawn-plates.ts'

const runs = { numRuns: 150, seed: 11 }
/** Tenths, thirds and sixteenths of an inch as they come in drawings. */
const lengths = (least: number, most: number) =>
  fc
    .tuple(fc.integer({ min: least * 10, max: most * 10 }), fc.constantFrom(1, 1, 1, 3))
    .map(([tenths, part]) => new Fraction(tenths, 10 * part))
const cuts = fc.constantFrom('0', '1', '2', '1.5').map((cut) => new Fraction(cut))
const have = fc.constantFrom('0', '0', '0.4', '1', '2.25').map((units) => new Fraction(units))
const prices = fc
  .integer({ min: 1, max: 40 })
  .map((each) => (units: number) => ({ unpriced: 0, money: units * each }))
const named = <T>(list: readonly T[]) => list.map((each, k) => ({ ...each, id: `form ${k}` }))
const parts = fc.integer({ min: 0, max: 5 }).map((k) => `part ${k}`)

interface Bars {
  pieces: BarPiece[]
  stocks: BarStock[]
  grip: Fraction
}

const bars: fc.Arbitrary<Bars> = fc.record({
  pieces: fc.array(fc.record({ part: parts, length: lengths(3, 110), kerf: cuts, facing: cuts }), {
    maxLength: 14,
  }),
  stocks: fc
    .array(fc.record({ length: lengths(60, 150), have, price: prices }), { minLength: 1, maxLength: 3 })
    .map(named),
  grip: fc.constantFrom('0', '0', '7.5').map((grip) => new Fraction(grip)),
})

interface Plates {
  pieces: Piece[]
  stocks: PlateStock[]
  turn: boolean
}

const plates: fc.Arbitrary<Plates> = fc.record({
  pieces: fc.array(fc.record({ part: parts, length: lengths(3, 110), width: lengths(3, 70), kerf: cuts }), {
    maxLength: 9,
  }),
  stocks: fc
    .array(fc.record({ length: lengths(60, 150), width: lengths(40, 90), have, price: prices }), {
      minLength: 1,
      maxLength: 2,
    })
    .map(named),
  turn: fc.boolean(),
})

const sum = (values: readonly Fraction[]): Fraction =>
  values.reduce((all, each) => all.add(each), new Fraction(0))
const counted = (names: readonly string[]): string[] => [...names].sort()
const plan = ({ pieces, stocks, grip }: Bars) => planBars(pieces, stocks, { grip, effort: 20_000 })
const platePlan = ({ pieces, stocks, turn }: Plates) => planPlates(pieces, stocks, { turn, effort: 20_000 })

describe('pieces cut from bars', () => {
  it('are each cut once, or stand among what is too large', () => {
    fc.assert(
      fc.property(bars, (given) => {
        const { units, tooLarge } = plan(given)
        const cut = units.flatMap(({ pieces }) => pieces.map(({ part }) => part))
        const large = given.pieces.filter(({ length, kerf, facing }) =>
          given.stocks.every((stock) =>
            length
              .add(facing!)
              .add(given.grip.gt(0) ? given.grip.add(kerf) : 0)
              .gt(stock.length),
          ),
        )
        expect(counted([...cut, ...large.map(({ part }) => part)])).toEqual(
          counted(given.pieces.map((p) => p.part)),
        )
        expect([...tooLarge]).toEqual(counted([...new Set(large.map(({ part }) => part))]))
      }),
      runs,
    )
  })

  it('lie behind each other with their cuts, and what is gripped is left', () => {
    fc.assert(
      fc.property(bars, (given) => {
        for (const { form, size, pieces, rest } of plan(given).units) {
          const { length } = given.stocks.find(({ id }) => id === form)!
          // Each share is that of some piece of the part: whole with its cut, but for the last one.
          for (const [k, { part, share }] of pieces.entries()) {
            const needs = given.pieces.filter((each) => each.part === part)
            const taken = share.mul(length)
            const fits = needs.some((each) => {
              const bare = each.length.add(each.facing!)
              const whole = taken.equals(bare.add(each.kerf))
              return (
                whole ||
                (k === pieces.length - 1 &&
                  given.grip.equals(0) &&
                  taken.gte(bare) &&
                  taken.lt(bare.add(each.kerf)))
              )
            })
            expect(fits).toBe(true)
          }
          expect(
            sum(pieces.map(({ share }) => share))
              .mul(length)
              .add(rest)
              .equals(size.mul(length)),
          ).toBe(true)
          expect(rest.gte(given.grip)).toBe(true)
        }
      }),
      runs,
    )
  })

  it('come from no more own bars than are here, and cost what the new ones cost', () => {
    fc.assert(
      fc.property(bars, (given) => {
        const { units, price, least, proved } = plan(given)
        const money = given.stocks.reduce((all, { id, have: here, price: priceOf }) => {
          const own = units.filter((unit) => unit.form === id && unit.own)
          expect(sum(own.map(({ size }) => size)).lte(here)).toBe(true)
          return all + priceOf(units.filter((unit) => unit.form === id && !unit.own).length).money
        }, 0)
        expect(price.money).toBe(money)
        expect(least.money).toBeLessThanOrEqual(money)
        if (proved) expect(least.money).toBe(money)
      }),
      runs,
    )
  })

  it('are cut alike in whatever order pieces and stocks are listed, and each time', () => {
    fc.assert(
      fc.property(bars, (given) => {
        const turned = { ...given, pieces: [...given.pieces].reverse(), stocks: [...given.stocks].reverse() }
        expect(plan(turned)).toEqual(plan(given))
      }),
      runs,
    )
  })

  it('never cost more for one piece less, where both plans are proved', () => {
    fc.assert(
      fc.property(bars, (given) => {
        const [all, fewer] = [plan(given), plan({ ...given, pieces: given.pieces.slice(1) })]
        if (all.proved && fewer.proved) expect(fewer.price.money).toBeLessThanOrEqual(all.price.money)
      }),
      runs,
    )
  })
})

describe('pieces sawn from plates', () => {
  it('are each sawn once, or stand among what is too large', () => {
    fc.assert(
      fc.property(plates, (given) => {
        const { units, tooLarge } = platePlan(given)
        const large = given.pieces.filter((piece) =>
          given.stocks.every(
            (stock) =>
              !within(piece, stock) &&
              !(given.turn && within({ length: piece.width, width: piece.length }, stock)),
          ),
        )
        const sawn = units.flatMap(({ pieces }) => pieces.map(({ part }) => part))
        expect(counted([...sawn, ...large.map(({ part }) => part)])).toEqual(
          counted(given.pieces.map((p) => p.part)),
        )
        expect([...tooLarge]).toEqual(counted([...new Set(large.map(({ part }) => part))]))
      }),
      runs,
    )
  })

  it('have their own size, lie within the plate, and one cut apart', () => {
    fc.assert(
      fc.property(plates, (given) => {
        const kerf = given.pieces.reduce(
          (most, piece) => (piece.kerf.gt(most) ? piece.kerf : most),
          new Fraction(0),
        )
        for (const { form, size, places, pieces, rest } of platePlan(given).units) {
          const { length, width } = given.stocks.find(({ id }) => id === form)!
          for (const [k, place] of places.entries()) {
            expect(place.part).toBe(pieces[k]!.part)
            expect(given.pieces.some((piece) => isPiece(piece, place, given.turn))).toBe(true)
            expect(place.atLength.add(place.length).lte(length.mul(size))).toBe(true)
            expect(place.atWidth.add(place.width).lte(width)).toBe(true)
            for (const other of places.slice(k + 1)) expect(areApart(place, other, kerf)).toBe(true)
          }
          expect(rest.gte(0)).toBe(true)
          expect(
            sum(pieces.map(({ share }) => share))
              .add(rest)
              .equals(size),
          ).toBe(true)
        }
      }),
      runs,
    )
  })

  it('are sawn alike in whatever order pieces and stocks are listed', () => {
    fc.assert(
      fc.property(plates, (given) => {
        const turned = { ...given, pieces: [...given.pieces].reverse(), stocks: [...given.stocks].reverse() }
        expect(platePlan(turned)).toEqual(platePlan(given))
      }),
      runs,
    )
  })

  it('never cost less where they may not be turned, if both plans are proved', () => {
    fc.assert(
      fc.property(plates, (given) => {
        const [free, bound] = [platePlan({ ...given, turn: true }), platePlan({ ...given, turn: false })]
        if (!free.proved || !bound.proved || bound.tooLarge.length > 0) return
        expect(free.price.money).toBeLessThanOrEqual(bound.price.money)
      }),
      runs,
    )
  })
})

type Flat = Pick<CutPlace, 'length' | 'width'>

const within = (piece: Flat, plate: Flat): boolean =>
  piece.length.lte(plate.length) && piece.width.lte(plate.width)
const isPiece = (piece: Piece, place: CutPlace, turn: boolean): boolean =>
  piece.part === place.part &&
  ((piece.length.equals(place.length) && piece.width.equals(place.width)) ||
    (turn && piece.length.equals(place.width) && piece.width.equals(place.length)))
const areApart = (one: CutPlace, other: CutPlace, kerf: Fraction): boolean => {
  const clear = (at: Fraction, length: Fraction, next: Fraction): boolean =>
    at.add(length).add(kerf).lte(next)
  return (
    clear(one.atLength, one.length, other.atLength) ||
    clear(other.atLength, other.length, one.atLength) ||
    clear(one.atWidth, one.width, other.atWidth) ||
    clear(other.atWidth, other.width, one.atWidth)
  )
}
