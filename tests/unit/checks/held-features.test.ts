import { describe, expect, it } from 'vitest'
import { heldFeatures } from '../../../src/checks/held-features.ts'
import { bought, projectText, saidBy } from './bench-project.ts'

function heldIn(hold: string, on: string, fixture = ''): string[] {
  const hub = `  hub:
    kind: machined
    material: brass
    stock: {bar: 20 mm, length: 18 mm}
    qty: 1
    features: {bore: 8 H7, worm: M14x1-6g, rim: 20 h7}
    route:
      - setup: {machine: lathe, hold: chuck, time: 1 min}
        ops: [{ream: {feature: bore, time: 1 min}}, {turn: {feature: worm, time: 1 min}}]
      - setup: {machine: lathe, hold: ${hold}, on: [${on}], time: 1 min}
        ops: [{turn: {feature: rim, time: 1 min}}]
`
  const arbor = fixture === '' ? '' : bought('arbor', fixture, 'role: fixture, ')
  return saidBy(
    heldFeatures,
    projectText([hub, arbor], [], 'machines: {lathe: {}}\nmaterials: {brass: {}}\n'),
  ).codes
}

describe('what a setup holds the part on', () => {
  it.each(['chuck', 'three-jaw chuck', 'vice on parallels', 'clamps'])(
    'is marked by %s once it is made',
    (hold) => {
      expect(heldIn(hold, 'bore')).toEqual(['PRC30'])
    },
  )

  it.each(['soft jaws', 'collet', 'mandrel', 'magnetic table', 'vice with soft jaws'])(
    'is not marked by %s',
    (hold) => {
      expect(heldIn(hold, 'bore')).toEqual([])
    },
  )

  it('may be marked before it is made', () => {
    expect(heldIn('chuck', 'rim')).toEqual([])
  })

  it('must screw into its fixture by the same thread of the other gender', () => {
    expect(heldIn('arbor', 'worm', 'nut: M14x1-6H')).toEqual([])
    expect(heldIn('arbor', 'worm', 'nut: M14x1.5-6H')).toEqual(['FIT14'])
    expect(heldIn('arbor', 'worm', 'nut: M14x1-6g')).toEqual(['FIT14'])
  })

  it('must slide onto its fixture', () => {
    expect(heldIn('arbor', 'bore', 'pin: 8 g6')).toEqual([])
    expect(heldIn('arbor', 'bore', 'pin: 8 m6')).toEqual(['FIT15'])
    expect(heldIn('arbor', 'bore', 'pin: 9 g6')).toEqual(['FIT15'])
  })
})
