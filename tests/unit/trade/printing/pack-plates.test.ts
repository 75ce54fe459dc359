import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isFault } from '../../../../src/base/quantity-fault.ts'
import { type PlacedPart, packPlates, plateCapacity } from '../../../../src/trade/printing/pack-plates.ts'
import type { Plate, PlatePart } from '../../../../src/trade/printing/why-unpackable.ts'

const plate: Plate = { widthMm: 120, depthMm: 68, heightMm: 150, edgeMm: 2, gapMm: 3 }
const part = (name: string, count: number, widthMm: number, depthMm: number, heightMm = 10): PlatePart => ({
  name,
  count,
  widthMm,
  depthMm,
  heightMm,
})

/** Why a layout breaks the rules, in words, or `null`: other code than the one that lays out. */
function whyWrong(placed: readonly PlacedPart[], parts: readonly PlatePart[], on: Plate): string | null {
  const slack = 1e-6
  for (const p of placed) {
    const of = parts.find(({ name }) => name === p.name)
    if (!of) return `${p.name} is no part`
    const sides = p.turned ? [of.depthMm, of.widthMm] : [of.widthMm, of.depthMm]
    if (p.widthMm !== sides[0] || p.depthMm !== sides[1]) return `${p.name} has another size`
    if (p.xMm < on.edgeMm - slack || p.xMm + p.widthMm > on.widthMm - on.edgeMm + 2e-3)
      return `${p.name} past x`
    if (p.yMm < on.edgeMm - slack || p.yMm + p.depthMm > on.depthMm - on.edgeMm + 2e-3)
      return `${p.name} past y`
  }
  for (const a of placed)
    for (const b of placed) {
      if (a === b || a.plate !== b.plate) continue
      const gapX = Math.max(b.xMm - a.xMm - a.widthMm, a.xMm - b.xMm - b.widthMm)
      const gapY = Math.max(b.yMm - a.yMm - a.depthMm, a.yMm - b.yMm - b.depthMm)
      if (Math.max(gapX, gapY) < on.gapMm - slack)
        return `${a.name} ${a.copy} and ${b.name} ${b.copy} too near`
    }
  for (const of of parts) {
    const copies = placed.filter(({ name }) => name === of.name).map(({ copy }) => copy)
    if (copies.sort((a, b) => a - b).join() !== Array.from({ length: of.count }, (_, i) => i + 1).join())
      return `${of.name} not once each`
  }
  return null
}

function laidOut(parts: readonly PlatePart[], on: Plate = plate) {
  const packed = packPlates(parts, on)
  if (isFault(packed)) throw new Error(JSON.stringify(packed))
  expect(whyWrong(packed.placed, parts, on)).toBe(null)
  return packed
}

describe('laying parts on plates', () => {
  it('the checker of this test sees an overlap, a part past the edge and a missing copy', () => {
    const at = (xMm: number, yMm: number, copy: number): PlacedPart => ({
      ...{ name: 'a', copy, plate: 1, xMm, yMm, widthMm: 10, depthMm: 10, turned: false },
    })
    const two = [part('a', 2, 10, 10)]
    expect(whyWrong([at(2, 2, 1), at(15, 2, 2)], two, plate)).toBe(null)
    expect(whyWrong([at(2, 2, 1), at(14.9, 2, 2)], two, plate)).toContain('too near')
    expect(whyWrong([at(2, 2, 1), at(110, 2, 2)], two, plate)).toContain('past x')
    expect(whyWrong([at(2, 2, 1)], two, plate)).toContain('not once each')
  })

  it('four squares that fill a plate take one', () => {
    const tight: Plate = { widthMm: 100, depthMm: 100, heightMm: 50, edgeMm: 0, gapMm: 0 }
    const packed = laidOut([part('a', 4, 50, 50)], tight)
    expect(packed).toMatchObject({ plates: 1, leastPlates: 1, proved: true })
  })

  it('a plate cut into rectangles by hand is put together again on one', () => {
    const tight: Plate = { widthMm: 100, depthMm: 60, heightMm: 50, edgeMm: 0, gapMm: 0 }
    const parts = [part('a', 1, 60, 40), part('b', 1, 40, 60), part('c', 1, 20, 60)]
    expect(laidOut(parts, tight)).toMatchObject({ plates: 1, proved: true })
  })

  it('a part that fits only turned is turned', () => {
    expect(laidOut([part('long', 1, 30, 110)]).placed[0]).toMatchObject({ turned: true })
  })

  it('parts past half of the plate both ways take a plate each, and that is proved', () => {
    const square: Plate = { widthMm: 100, depthMm: 100, heightMm: 50, edgeMm: 0, gapMm: 0 }
    expect(laidOut([part('a', 5, 51, 51)], square)).toMatchObject({ plates: 5, leastPlates: 5, proved: true })
  })

  it('the highest part of each plate is told', () => {
    const packed = laidOut([part('low', 1, 110, 60, 5), part('high', 1, 100, 60, 80)])
    expect([...packed.heightsMm].sort((a, b) => a - b)).toEqual([5, 80])
  })

  it('a part too wide or too high is refused by how much', () => {
    expect(packPlates([part('a', 1, 130, 30)], plate)).toEqual({
      fault: 'too large',
      name: 'a',
      side: 'footprint',
      overMm: 14,
    })
    expect(packPlates([part('a', 1, 20, 30, 160)], plate)).toMatchObject({ side: 'height', overMm: 10 })
    expect(packPlates([part('a', 501, 1, 1)], plate)).toMatchObject({ fault: 'too many parts', most: 500 })
    expect(packPlates([part('a', 1, Number.NaN, 1)], plate)).toMatchObject({ fault: 'out of domain' })
    expect(packPlates([], plate)).toMatchObject({ plates: 0, placed: [] })
  })

  it('a size within a micrometre of the plate is laid out or refused, never searched for ever', () => {
    const odd = (widthMm: number, usable: number) =>
      packPlates([part('a', 2, widthMm, 50)], {
        widthMm: usable,
        depthMm: 50,
        heightMm: 20,
        edgeMm: 0,
        gapMm: 0,
      })
    expect(odd(100.00004, 100.00005)).toMatchObject({ fault: 'too large', overMm: 0.001 })
    expect(odd(100.0000001, 100)).toMatchObject({ plates: 2 })
  })

  it('any parts lie inside their plates, apart by the gap, once each, on no fewer plates than the area needs', () => {
    const side = fc.integer({ min: 10, max: 640 }).map((tenths) => tenths / 10)
    const list = fc.array(fc.tuple(side, side, fc.integer({ min: 0, max: 6 })), { maxLength: 8 })
    fc.assert(
      fc.property(list, fc.constantFrom(0, 0.7, 3), (sizes, gapMm) => {
        const parts = sizes.map(([w, d, count], i) => part(`p${i}`, count, w, d))
        const on = { ...plate, gapMm }
        const packed = laidOut(parts, on)
        const area = parts.reduce((sum, { count, widthMm, depthMm }) => sum + count * widthMm * depthMm, 0)
        expect(packed.plates).toBeGreaterThanOrEqual(Math.ceil(area / (116 + gapMm) / (64 + gapMm)))
        expect(packed.plates).toBeGreaterThanOrEqual(packed.leastPlates)
        expect(packPlates(parts, on)).toEqual(packed)
      }),
      { numRuns: 60 },
    )
  })

  it('six pieces that no order of the first trials brings onto one plate are brought there by exchanges', () => {
    // 20 x 60 beside 42 x (33 + 27) beside 38 x (15 + 32 + 13): 100 x 60 filled whole.
    const sizes = [
      [20, 60],
      [42, 33],
      [42, 27],
      [38, 15],
      [38, 32],
      [38, 13],
    ] as const
    const parts = sizes.map(([w, d], i) => part(`p${i}`, 1, w, d))
    const whole: Plate = { widthMm: 100, depthMm: 60, heightMm: 10, edgeMm: 0, gapMm: 0 }
    expect(laidOut(parts, whole)).toMatchObject({ plates: 1, proved: true })
  })

  it('a plate cut up by straight cuts never takes more than two, and mostly one up to seven pieces', () => {
    // They fit one, so 1 is the known optimum; what is found by trial may need a second.
    const cuts = fc.array(
      fc.tuple(fc.nat(1000), fc.boolean(), fc.double({ min: 0.2, max: 0.8, noNaN: true })),
      {
        minLength: 1,
        maxLength: 14,
      },
    )
    const whole: Plate = { widthMm: 1000, depthMm: 600, heightMm: 9, edgeMm: 0, gapMm: 0 }
    const few = { tried: 0, onOne: 0 }
    fc.assert(
      fc.property(cuts, (list) => {
        const pieces = cutUp(list)
        const { plates } = laidOut(
          pieces.map(([w, d], i) => part(`p${i}`, 1, w, d, 1)),
          whole,
        )
        expect(plates).toBeLessThanOrEqual(2)
        if (pieces.length > 7) return
        few.tried++
        if (plates === 1) few.onOne++
      }),
      { numRuns: 60 },
    )
    expect(few.tried).toBeGreaterThan(15)
    expect(few.onOne).toBeGreaterThanOrEqual(0.9 * few.tried)
  })
})

/** A plate of 1000 x 600 cut again and again straight across one of its pieces. */
function cutUp(
  cuts: readonly (readonly [which: number, upright: boolean, share: number])[],
): [number, number][] {
  const pieces: [number, number][] = [[1000, 600]]
  for (const [which, upright, share] of cuts) {
    const [[w, d]] = pieces.splice(which % pieces.length, 1) as [[number, number]]
    const cut = Math.max(1, Math.min((upright ? w : d) - 1, Math.round(share * (upright ? w : d))))
    if (w < 3 || d < 3) pieces.push([w, d])
    else if (upright) pieces.push([cut, d], [w - cut, d])
    else pieces.push([w, cut], [w, d - cut])
  }
  return pieces
}

describe('copies of one part on a plate', () => {
  const capacity = (w: number, d: number, on: Plate) => {
    const found = plateCapacity(part('a', 1, w, d), on)
    if (isFault(found)) throw new Error(JSON.stringify(found))
    expect(whyWrong(found.placed, [part('a', found.count, w, d)], on)).toBe(null)
    return found
  }

  it('two blocks hold more than either plain grid: 5 parts of 30 x 20 on 50 x 60', () => {
    // The grids hold 1 x 3 and 2 x 2; the area holds 5: a column of three lying and a column of two standing.
    const on: Plate = { widthMm: 50, depthMm: 60, heightMm: 10, edgeMm: 0, gapMm: 0 }
    expect(capacity(30, 20, on)).toMatchObject({ count: 5, mostByArea: 5 })
  })

  it('gap and edge are counted: 20 mm squares at 3 mm gap on 116 x 64 usable are 5 x 2', () => {
    // 5 x 20 + 4 x 3 = 112 of 116; 2 x 20 + 3 = 43, a third row would need 66 of 64.
    expect(capacity(20, 20, plate).count).toBe(10)
  })

  it('the count lies between the better grid and the area, and packing that many takes one plate', () => {
    const side = fc.integer({ min: 60, max: 640 }).map((tenths) => tenths / 10)
    fc.assert(
      fc.property(side, side, (w, d) => {
        const { count, mostByArea } = capacity(w, d, plate)
        const grid = (a: number, b: number) =>
          Math.floor(119 / (a + 3) + 1e-9) * Math.floor(67 / (b + 3) + 1e-9)
        expect(count).toBeGreaterThanOrEqual(Math.max(grid(w, d), grid(d, w)))
        expect(count).toBeLessThanOrEqual(mostByArea)
        expect(laidOut([part('a', count, w, d)]).plates).toBe(1)
      }),
    )
  })
})
