import { describe, expect, it } from 'vitest'
import { assemblyNoOrder } from '../../../src/checks/assembly-no-order.ts'
import { collect } from '../../../src/diagnostics/collector.ts'
import type { AssemblyOrder } from '../../../src/model/assembly.ts'

const at = { file: 'project.yaml', line: 7, column: 3, length: 0 }
const given: AssemblyOrder = {
  of: null,
  at,
  constraints: [],
  order: null,
  links: [],
  conflict: [],
  ring: null,
  minimal: false,
  smallest: false,
  nearest: false,
  feasibleOrders: null,
  states: 0,
  void: [],
  setAside: [],
  proved: false,
  turns: 0,
  sidesByMeshes: { steps: 0, counted: false },
  toolChanges: 0,
}

describe('an assembly without an order', () => {
  it('says ASM03 and that nothing was proved where the search ran out before it found one', () => {
    const { report, diagnostics } = collect()
    assemblyNoOrder(given, report)
    expect(diagnostics().map(({ code, at: place }) => [code, place.line])).toEqual([['ASM03', 7]])
    expect(diagnostics()[0]!.says).toContain('was not proved')
  })

  it('says nothing where there is an order', () => {
    const { report, diagnostics } = collect()
    assemblyNoOrder({ ...given, order: [] }, report)
    expect(diagnostics()).toEqual([])
  })
})
