import { describe, expect, it } from 'vitest'
import { numberStrokes, numberWidth } from '../../../../src/geometry/drawing/digit-strokes.ts'
import { drawPicture, usualPicture } from '../../../../src/geometry/drawing/draw-picture.ts'
import { boxMesh, coming, there } from './drawn-solids.ts'
import { marksOf } from './svg-marks.ts'

const block = there(boxMesh([-20, -20, 0], [20, 20, 20]))
const lid = { ...coming(boxMesh([-20, -20, 20], [20, 20, 24]), [0, 0, 1]), goesIn: false }

function leaders(parts: Parameters<typeof drawPicture>[0]) {
  const drawn = drawPicture(parts, { ...usualPicture, sizeMm: 160 })
  if ('fault' in drawn) throw new Error(drawn.fault)
  return marksOf(drawn.svg).paths.filter(({ width, points }) => width === 0.13 && points.length === 4)
}

describe('numbers of parts', () => {
  it('stand once each, though several parts have one', () => {
    const plain = leaders([block, lid]).length
    expect(
      leaders([
        { ...block, label: 1 },
        { ...lid, label: 2 },
      ]).length - plain,
    ).toBe(2)
    expect(
      leaders([
        { ...block, label: 1 },
        { ...lid, label: 1 },
      ]).length - plain,
    ).toBe(1)
  })

  it('are drawn within their width', () => {
    for (const number of [0, 7, 18, 264, 9035]) {
      const points = numberStrokes(number, [10, 20], 3).flat()
      const across = points.filter((_, i) => i % 2 === 0)
      const down = points.filter((_, i) => i % 2 === 1)
      expect(Math.min(...across)).toBeGreaterThanOrEqual(10)
      expect(Math.max(...across)).toBeLessThanOrEqual(10 + numberWidth(number, 3) + 1e-9)
      expect(Math.min(...down)).toBeCloseTo(20, 9)
      expect(Math.max(...down)).toBeCloseTo(23, 9)
    }
  })

  it('have ten digits, no two alike', () => {
    const shapes = Array.from({ length: 10 }, (_, digit) => JSON.stringify(numberStrokes(digit, [0, 0], 6)))
    expect(new Set(shapes).size).toBe(10)
  })
})
