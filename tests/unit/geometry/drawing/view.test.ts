import { describe, expect, it } from 'vitest'
import { axesOf, usualViews } from '../../../../src/geometry/drawing/view.ts'
import type { Direction } from '../../../../src/geometry/relations/directions.ts'
import { isometricView } from './isometric-view.ts'

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, each, i) => sum + each * b[i]!, 0)

describe('the axes of a view', () => {
  it('stand at right angles, each of length 1, right x up pointing to the looker', () => {
    for (const view of [...usualViews(4), isometricView]) {
      const { right, up, near } = axesOf(view)
      for (const axis of [right, up, near]) expect(dot(axis, axis)).toBeCloseTo(1, 12)
      for (const [a, b] of [
        [right, up],
        [up, near],
        [near, right],
      ] as const)
        expect(dot(a, b)).toBeCloseTo(0, 12)
      expect(right[0] * up[1] - right[1] * up[0]).toBeCloseTo(near[2], 12)
    }
  })

  it('are those of the device where it lies on the table with another side up', () => {
    const ups = [
      [1, 0, 0],
      [-1, 0, 0],
      [0, 1, 0],
      [0, -1, 0],
      [0, 0, 1],
      [0, 0, -1],
    ] as const
    for (const [side, direction] of ups.entries())
      for (const view of usualViews(side as Direction)) {
        const { right, up, near } = axesOf(view)
        // Seen from above where the height is, and upward on the paper as on the table.
        expect(Math.sign(dot(near, direction))).toBe(Math.sign(view.heightDegrees))
        expect(dot(up, direction)).toBeCloseTo(Math.cos((view.heightDegrees * Math.PI) / 180), 12)
        expect(dot(right, direction)).toBeCloseTo(0, 12)
        expect(right[0] * up[1] - right[1] * up[0]).toBeCloseTo(near[2], 12)
      }
  })

  it('shorten all three axes of the device alike in isometric view, by the root of two thirds', () => {
    const { right, up } = axesOf(isometricView)
    for (const axis of [0, 1, 2]) expect(Math.hypot(right[axis]!, up[axis]!)).toBeCloseTo(0.8165, 4)
  })

  it('are twelve, and no two edges of a box fall on each other in any of them', () => {
    expect(usualViews(4).length).toBe(12)
    for (const view of usualViews(4)) {
      const { right, up } = axesOf(view)
      // The far corner of a cube lies well off the near one.
      expect(Math.hypot(right[0] + right[1] + right[2], up[0] + up[1] + up[2])).toBeGreaterThan(0.1)
    }
  })
})
