import { describe, expect, it } from 'vitest'
import { cutterWear } from '../../../../src/planning/buying/cutter-wear.ts'
import { device, people, resolveText } from '../../resolve/resolve-text.ts'

const wear = (operation: string, have = 0) =>
  cutterWear(
    resolveText(`${device}${people}machines: {mill: {}}
cutters: {drill 4: {diameter: 4 mm, flutes: 2, tool: hss, life: 30 s, have: ${have}}}
materials: {brass: {}}
parts:
  base:
    kind: machined
    qty: 3
    material: brass
    stock: {block: 40 x 40 x 20 mm}
    route:
      - setup: {machine: mill, time: 20 min}
        ops: [{drill: {cutter: drill 4, depth: 10 mm, holes: 2, ${operation}}}]
`).project,
  )[0]!

describe('a cutter', () => {
  // Two holes of 10 mm at 60 mm/min cut for 20 s a piece, whatever entry, air and pecks take beside.
  it('wears by the seconds in which it makes chips, for every piece', () => {
    const { seconds, worn, toBuy } = wear('feed: 60 mm/min')
    expect([seconds.valueOf(), worn.valueOf(), toBuy]).toEqual([60, 2, 2])
  })

  it('wears no faster for pecks, which are made beside the work', () => {
    expect(wear('feed: 60 mm/min, peck: 1 mm').seconds.valueOf()).toBe(60)
  })

  it('wears by the whole time where that is stated', () => {
    expect(wear('feed: 60 mm/min, time: 1 min').seconds.valueOf()).toBe(180)
  })

  it('is not bought while one is on the bench', () => {
    expect(wear('feed: 60 mm/min', 1).toBuy).toBe(0)
  })
})
