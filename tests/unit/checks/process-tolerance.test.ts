import { describe, expect, it } from 'vitest'
import { processTolerance } from '../../../src/checks/process-tolerance.ts'
import { projectText, saidBy } from './bench-project.ts'

const made = (text: string, operations: string) => {
  const hub = `  hub:
    kind: machined
    material: brass
    stock: {bar: 20 mm, length: 18 mm}
    features: {x: "${text}"}
    route:
      - setup: {machine: mill, time: 1 min}
        ops: [${operations}]
`
  const more = 'machines: {mill: {}}\nmaterials: {brass: {}}\n'
  return saidBy(processTolerance, projectText([hub], [], more)).codes
}
const op = (process: string) => `{${process}: {feature: x, time: 1 min}}`

// IT6, IT7, IT8 at 6 mm are 8, 12, 18 um (ISO 286-1); reaming from IT6, turning from IT7, boring from IT8 (public chart).
describe('a tolerance', () => {
  it.each([
    ['6 H7', 'ream', []],
    ['6 H6', 'ream', []],
    ['6 H5', 'ream', ['FIT12']],
    ['6 h7', 'turn', []],
    ['6 h6', 'turn', ['FIT12']],
    ['6 H8', 'bore', []],
    ['6 H7', 'bore', ['FIT12']],
    ['6 ± 0.05 mm', 'finish', []],
    ['6 ± 0.04 mm', 'finish', ['FIT12']],
    ['M6-6H', 'tap', []],
    ['6', 'bore', []],
  ])('of %s made by %s earns %j', (text, process, codes) => {
    expect(made(text, op(process))).toEqual(codes)
  })

  it('is judged by the last operation that makes it', () => {
    expect(made('6 H7', `${op('bore')}, ${op('ream')}`)).toEqual([])
    expect(made('6 H7', `${op('bore')}, ${op('polish')}`)).toEqual([])
  })
})
