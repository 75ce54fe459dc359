import { describe, expect, it } from 'vitest'
import type { Step } from '../../../../src/model/assembly.ts'
import type { MeshMove } from '../../../../src/model/from-meshes.ts'
import { wayIn } from '../../../../src/planning/from-meshes/way-in.ts'

const step = (from: string | null): Step => ({ from }) as Step

/** A move that is stopped in some directions: body and width by direction, +x, -x, +y, -y, +z, -z, then tilted ones. */
function move(
  stops: Readonly<Record<number, readonly (readonly [body: number, widthMm: number])[]>>,
  tilted: readonly number[] = [],
): MeshMove {
  return {
    step: 's',
    part: 'p',
    role: 'put',
    bodies: [9],
    seat: [],
    onto: [],
    tiltedFrom: [],
    stops: [0, 1, 2, 3, 4, 5, ...tilted].map((at) =>
      (stops[at] ?? []).map(([body, widthMm]) => ({ body, widthMm })),
    ),
  }
}

describe('the way a part comes in', () => {
  const wall = [[1, 8]] as const
  const sides = { 0: wall, 1: wall, 2: wall, 3: wall }
  const inCup = move({ ...sides, 5: [[1, 20]] })

  it('is the free one', () => {
    expect(wayIn(inCup, step(null), new Set([1]))).toBe(4)
  })

  it('counts only what is there by then', () => {
    const under = move({ ...sides, 4: [[2, 30]], 5: [[3, 20]] })
    expect(wayIn(under, step(null), new Set([1, 2]))).toBe(5)
    expect(wayIn(under, step(null), new Set([1, 3]))).toBe(4)
  })

  it('leads against what the part ends at, where several are free', () => {
    expect(wayIn(move({ 1: [[1, 12]] }), step(null), new Set([1]))).toBe(0)
    expect(wayIn(move({ 4: [[1, 12]] }), step(null), new Set([1]))).toBe(5)
  })

  it('is the typed one where that is free, and not where it is blocked', () => {
    expect(wayIn(move({ 5: [[1, 12]] }), step('left'), new Set([1]))).toBe(1)
    expect(wayIn(inCup, step('left'), new Set([1]))).toBe(4)
  })

  it('is that of its fasteners where that is free', () => {
    const corner = move({ 1: [[1, 30]], 5: [[1, 9]] })
    expect(wayIn(corner, step(null), new Set([1]), [0])).toBe(0)
    expect(wayIn(corner, step(null), new Set([1]), [1])).toBe(4)
    expect(wayIn(corner, step('rear'), new Set([1]), [0])).toBe(2)
  })

  it('leads against what a part meets most widely where it cannot come from above', () => {
    const foot = move({ 2: [[2, 5]], 4: [[1, 12]] })
    expect(wayIn(foot, step(null), new Set([1, 2]))).toBe(5)
  })

  it('is from above where a part ends against several', () => {
    expect(wayIn(move({ 1: [[1, 30]], 5: [[1, 9]] }), step(null), new Set([1]))).toBe(4)
  })

  it('is the least blocked one where none is free', () => {
    const stuck = move({ 0: [[1, 8]], 1: [[1, 8]], 2: [[1, 8]], 3: [[1, 2]], 4: [[1, 9]], 5: [[1, 20]] })
    expect(wayIn(stuck, step(null), new Set([1]))).toBe(3)
  })

  it('is from above where nothing says otherwise', () => {
    expect(wayIn(move({}), step(null), new Set([1]))).toBe(4)
  })

  it('is a tilted one where that alone is free', () => {
    const bore = move({ ...sides, 4: wall, 5: wall, 7: wall }, [6, 7])
    expect(wayIn(bore, step(null), new Set([1]))).toBe(6)
  })

  it('is along an axis where that is as free as a tilted one', () => {
    expect(wayIn(move({ 5: wall, 7: wall }, [6, 7]), step(null), new Set([1]))).toBe(4)
  })
})
