import { describe, expect, it } from 'vitest'
import { type LiftedPart, liftParts, movedBy, type Way } from '../../../../src/geometry/drawing/lift-parts.ts'

type Xyz = readonly [number, number, number]
const up: Xyz = [0, 0, 1]

function part(lowMm: Xyz, highMm: Xyz, way: Partial<Way> | null, fixedTo: number | null = null): LiftedPart {
  const whole = way && { from: up, along: null, seats: [], ...way }
  return { lowMm, highMm, body: { lowMm, highMm }, fixedTo, gapMm: 5, way: whole }
}

const block = part([0, 0, 0], [40, 40, 20], null)

describe('parts moved for a picture', () => {
  it('stay where they sit without a way', () => {
    expect(movedBy(liftParts([block])[0]!)).toEqual([0, 0, 0])
  })

  it('hang clear of what they go into by the gap', () => {
    // Its foot is 8 mm below the top of the block.
    const [, lift] = liftParts([block, part([10, 10, 12], [30, 30, 30], {})])
    expect(movedBy(lift!)).toEqual([0, 0, 8 + 5])
    expect(lift!.gapMm).toBe(5)
  })

  it('add up where they follow each other on one way', () => {
    const lifts = liftParts([block, part([10, 10, 12], [30, 30, 20], {}), part([0, 0, 20], [40, 40, 25], {})])
    expect(movedBy(lifts[1]!)[2]).toBe(13)
    // The lid clears the part below it where that one hangs: 33 + 5 less its own foot at 20.
    expect(movedBy(lifts[2]!)[2]).toBe(18)
  })

  it('pass what lies beside their way', () => {
    const tower = part([0, 0, 20], [5, 5, 90], null)
    expect(movedBy(liftParts([block, tower, part([10, 10, 20], [30, 30, 22], {})])[2]!)[2]).toBe(5)
  })

  it('go along with what they hang on, each on its own way from there', () => {
    const lid = part([0, 0, 20], [40, 40, 24], {})
    const [, first, screw] = liftParts([
      block,
      lid,
      part([38, 18, 21], [50, 22, 23], { from: [2, 0, 0], along: 1 }),
    ])
    expect(screw!.baseMm).toEqual(movedBy(first!))
    expect(screw!.ownMm[1]).toBe(0)
    expect(screw!.ownMm[0]).toBe(40 - 38 + 5)
  })

  it('move as one where they are fixed to each other', () => {
    const [, first, second] = liftParts([
      block,
      { ...part([10, 10, 12], [30, 30, 20], {}), body: { lowMm: [10, 10, 5], highMm: [30, 30, 20] } },
      part([12, 12, 5], [14, 14, 12], {}, 1),
    ])
    expect(movedBy(first!)[2]).toBe(20)
    expect(movedBy(second!)).toEqual(movedBy(first!))
  })

  it('stay where the direction has no length', () => {
    expect(movedBy(liftParts([block, part([0, 0, 0], [1, 1, 1], { from: [0, 0, 0] })])[1]!)).toEqual([
      0, 0, 0,
    ])
  })
})
