import { describe, expect, it } from 'vitest'
import { addUpChains } from '../../../../src/planning/chains/add-up-chains.ts'
import { bought, projectText } from '../../checks/bench-project.ts'
import { resolveText } from '../../resolve/resolve-text.ts'

const parts = [
  bought('base', 'depth: 15 ± 0.05 mm, side: knurled'),
  bought('bearing', 'width: 5 ± 0.02 mm'),
  bought('rotor', 'length: 4.7 ± 0.05 mm'),
]
const sumOf = (sum: string) =>
  addUpChains(
    resolveText(projectText(parts, [], `chains:\n  gap: {must: 0.30 ± 0.10 mm, sum: [${sum}]}\n`)).project,
  )

describe('a chain added up', () => {
  it('has worst case and root sum of squares as by hand, each of two bearings by itself', () => {
    const [chain] = sumOf('base.depth, -bearing.width x2, -rotor.length')
    expect(chain!.middle).toBeCloseTo(0.3, 9)
    expect(chain!.worst[0]).toBeCloseTo(0.16, 9)
    expect(chain!.worst[1]).toBeCloseTo(0.44, 9)
    const half = Math.sqrt(0.05 ** 2 + 2 * 0.02 ** 2 + 0.05 ** 2)
    expect(chain!.statistical[1] - chain!.middle).toBeCloseTo(half, 6)
    expect(chain!.links.map(({ of, factor }) => [of, factor])).toEqual([
      ['base.depth', 1],
      ['bearing.width', -2],
      ['rotor.length', -1],
    ])
    expect(chain!.links.reduce((all, { share }) => all + share, 0)).toBeCloseTo(1, 9)
  })

  it('draws about as many outside as a normal spread of the same width has', () => {
    const [chain] = sumOf('base.depth, -bearing.width x2, -rotor.length')
    // Limits at 0.1 / (0.07616 / 3) = 3.94 sigma: 0.008 in 100 outside (tables of the normal distribution).
    expect(chain!.outside).toBeLessThan(0.001)
    expect(chain!.holds).toBe('by the odds')
  })

  it('is the same each time', () => {
    expect(sumOf('base.depth, -rotor.length')).toEqual(sumOf('base.depth, -rotor.length'))
  })

  it('is left out where a dimension has no limits', () => {
    expect(sumOf('base.depth, -base.side')).toEqual([])
  })
})
