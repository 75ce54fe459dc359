import { describe, expect, it } from 'vitest'
import { ownUnsaid, usualUnsaid } from '../../../../src/planning/cautions/unsaid.ts'

const run = 'low power first, hand on the switch, guard in place, limits checked before'

describe('a usual caution', () => {
  it('gives way where the typed one speaks of the same matter, and keeps the rest', () => {
    expect(usualUnsaid(run, ['no guard yet, so low speed only'])).toBe(
      'hand on the switch, limits checked before',
    )
    expect(usualUnsaid(run, ['hand on the switch when it starts'])).toBe(
      'low power first, guard in place, limits checked before',
    )
    expect(usualUnsaid('start square, fingers clear', ['fingers away from the screw'])).toBe('start square')
  })

  it('stays whole where the typed one speaks of something else', () => {
    for (const typed of ['supply off before anything is wiped', 'full power at once', 'safeguards'])
      expect(usualUnsaid(run, [typed])).toBe(run)
    expect(usualUnsaid(run, [])).toBe(run)
  })
})

describe('a caution of a part', () => {
  it('is not said again where the step says the same in another order', () => {
    expect(ownUnsaid('edges cut; hold it by the bore', ['Hold it by the bore, edges cut.'])).toBe('')
    expect(ownUnsaid('edges cut; keep it dry', ['edges cut'])).toBe('keep it dry')
  })

  it('stays whole where the step speaks of the same thing otherwise', () => {
    expect(ownUnsaid('guard in place', ['no guard yet'])).toBe('guard in place')
    expect(ownUnsaid('cut', ['edges cutting'])).toBe('cut')
  })
})
