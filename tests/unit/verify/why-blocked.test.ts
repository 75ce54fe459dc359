import { describe, expect, it } from 'vitest'
import type { AssemblyOrder } from '../../../src/model/assembly.ts'
import type { MeshMove, PlanMeshes } from '../../../src/model/from-meshes.ts'
import { whyBlocked } from '../../../src/verify/why-blocked.ts'

const at = { file: 'project.yaml', line: 1, column: 1, length: 0 }
/** Something stopped by bodies in all directions but up, and up by those given. */
const move = (
  step: string,
  body: number,
  up: readonly number[],
  role: MeshMove['role'] = 'put',
): MeshMove => ({
  step,
  part: step,
  role,
  bodies: [body],
  seat: [],
  onto: [],
  tiltedFrom: [],
  stops: Array.from({ length: 6 }, (_, k) => (k === 4 ? up : [0]).map((one) => ({ body: one, widthMm: 3 }))),
})
const plan = (...moves: MeshMove[]): PlanMeshes => ({
  of: null,
  there: [0],
  moves,
  tilted: [],
  constraints: [],
  typedAlone: [],
})
const order = (steps: readonly string[], aside: readonly string[] = []): AssemblyOrder => ({
  of: null,
  at,
  constraints: [],
  order: steps,
  links: [],
  conflict: [],
  ring: null,
  minimal: false,
  smallest: false,
  nearest: true,
  feasibleOrders: null,
  states: 0,
  void: [],
  setAside: aside.map((step) => ({ form: 'before', step, of: ['lid'], at, why: 'model' })),
  proved: true,
  turns: 0,
  sidesByMeshes: { steps: 0, counted: false },
  toolChanges: 0,
})

describe('an order proved against the meshes', () => {
  const core = plan(move('core', 1, [2]), move('lid', 2, []))

  it('holds where each finds a way in at its turn', () => {
    expect(whyBlocked(core, order(['core', 'lid']))).toBe(null)
  })

  it('does not hold where a lid is there before', () => {
    expect(whyBlocked(core, order(['lid', 'core']))).toBe('`core` finds no way in at step `core`')
  })

  it('passes steps of which typed facts overrule the meshes, and what never has a way', () => {
    expect(whyBlocked(core, order(['lid', 'core'], ['core']))).toBe(null)
    expect(whyBlocked(plan(move('core', 1, [0])), order(['core']))).toBe(null)
    const ring = { ...move('ring', 1, [2]), seat: [2] }
    expect(whyBlocked(plan(ring, move('shaft', 2, [])), order(['shaft', 'ring']))).toBe(null)
  })

  it('lets a fastener in after what its own step puts', () => {
    const screwed = plan(move('lid', 2, []), move('lid', 3, [], 'fastener'), move('cap', 4, []))
    expect(whyBlocked(screwed, order(['lid', 'cap']))).toBe(null)
    const covered = plan(move('lid', 2, []), move('lid', 3, [4], 'fastener'), move('cap', 4, []))
    expect(whyBlocked(covered, order(['cap', 'lid']))).toBe('`lid` finds no way in at step `lid`')
  })
})
