import { describe, expect, it } from 'vitest'
import { dimensionChains } from '../../../src/checks/dimension-chains.ts'
import { bought, projectText, saidBy } from './bench-project.ts'

const parts = [
  bought('base', 'depth: 15 ± 0.05 mm, gap: 3', 'general: m, '),
  bought('bearing', 'width: 5 ± 0.02 mm, rim: 16'),
  bought('rotor', 'length: 4.7 ± 0.05 mm'),
]
const chain = (must: string, sum: string) =>
  saidBy(dimensionChains, projectText(parts, [], `chains:\n  air gap: {must: "${must}", sum: [${sum}]}\n`))
const whole = 'base.depth, -bearing.width x2, -rotor.length'

// 15 - 2 x 5 - 4.7 = 0.3; worst 0.05 + 2 x 0.02 + 0.05 = 0.14 by hand.
describe('a dimension chain', () => {
  it.each([
    ['0.30 ± 0.14 mm', []],
    ['0.30 ± 0.139 mm', ['CHN03']],
    ['0.16 / 0.44 mm', []],
    ['0.10..0.40 mm', ['CHN03']],
    ['0.30 ± 0.05 mm', ['CHN03']],
    ['0.90 ± 0.10 mm', ['CHN04']],
    ['0.3 mm', ['CHN01']],
  ])('that must be %s earns %j', (must, codes) => {
    expect(chain(must, whole).codes).toEqual(codes)
  })

  it('takes general tolerances where the part has them, and says so where it has not', () => {
    expect(chain('3 ± 0.11 mm', 'base.gap').codes).toEqual([])
    expect(chain('16 ± 0.5 mm', 'bearing.rim').codes).toEqual(['CHN02'])
  })

  it('may be about nothing, or less', () => {
    expect(chain('0 ± 0.1 mm', 'base.depth, -base.depth').codes).toEqual([])
    expect(chain('-3 ± 0.2 mm', '-base.gap').codes).toEqual([])
  })

  it('says which dimension spreads most', () => {
    expect(chain('0.30 ± 0.10 mm', whole).says[0]).toContain('`base.depth` makes 43 % of the spread')
  })
})
