import { describe, expect, it } from 'vitest'
import type { OrderConstraint } from '../../../src/model/assembly.ts'
import type { FromMeshes, MeshMove, MeshStop } from '../../../src/model/from-meshes.ts'
import { whyModel } from '../../../src/report/why-model.ts'

const at = { file: 'p.yaml', line: 1, column: 1, length: 1 }
const stop = (body: number, widthMm: number): MeshStop => ({ body, widthMm })
const move = (
  step: string,
  body: number,
  stops: Readonly<Record<number, readonly MeshStop[]>>,
  role: MeshMove['role'] = 'put',
): MeshMove => ({
  step,
  part: step,
  role,
  bodies: [body],
  seat: [0],
  onto: [],
  tiltedFrom: [],
  stops: Array.from({ length: 8 }, (_, direction) => stops[direction] ?? [stop(0, 9)]),
})
const moves = [
  move('core', 1, { 4: [stop(2, 12.04), stop(3, 1)], 6: [stop(2, 3)] }),
  move('lid', 2, {}),
  move('bolt', 3, {}, 'fastener'),
]
const meshes: FromMeshes = {
  bodies: [],
  tilted: [[0.6, 0, 0.8]],
  cellMm: 0.1,
  pairs: 0,
  plans: new Map([
    ['', { of: null, there: [0], moves, tilted: [[0.6, 0, 0.8]], constraints: [], typedAlone: [] }],
  ]),
  findings: [],
}
const ahead = (
  step: string,
  of: readonly string[],
  why: OrderConstraint['why'] = 'model',
): OrderConstraint => ({
  form: 'before',
  step,
  of,
  at,
  why,
})

describe('why the meshes ask something of the order', () => {
  const why = whyModel(meshes, null)

  it('names what stops what, where and how widely, only where nothing there for good stops it as well', () => {
    expect(why(ahead('core', ['lid']))).toBe(
      'by the meshes `lid` stops `core` at +z and 36.9° from +z to +x, 12 mm wide',
    )
  })

  it('says that a fastener follows what it touches, and that the base is first', () => {
    expect(why(ahead('lid', ['bolt']))).toBe('by the meshes a fastener touches what it puts')
    expect(why(ahead('lid', ['core']))).toBe('it is the base')
    expect(why({ form: 'presence', step: 'core', needs: ['lid'], at, why: 'model' })).toMatch(/touches/)
  })

  it('says nothing of what a person typed, nor without meshes', () => {
    expect(why(ahead('core', ['lid'], 'after'))).toBe(null)
    expect(whyModel(null, null)(ahead('core', ['lid']))).toBe(null)
  })
})
