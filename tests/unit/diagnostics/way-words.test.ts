import { describe, expect, it } from 'vitest'
import { wayWords } from '../../../src/diagnostics/catalogue/way-words.ts'

const along = (deg: number): [number, number] => [
  Math.cos((deg * Math.PI) / 180),
  Math.sin((deg * Math.PI) / 180),
]

describe('the words of a way', () => {
  it('are the axis where it is one of six', () => {
    expect([0, 1, 2, 3, 4, 5].map(wayWords)).toEqual(['+x', '-x', '+y', '-y', '+z', '-z'])
  })

  it('are an angle from the nearer axis where it lies between two', () => {
    const [c, s] = along(30)
    expect(wayWords([c, s, 0])).toBe('30° from +x to +y')
    expect(wayWords([s, c, 0])).toBe('30° from +y to +x')
    expect(wayWords([-c, 0, s])).toBe('30° from -x to +z')
    expect(wayWords([0, -s, -c])).toBe('30° from -z to -y')
    expect(wayWords([Math.SQRT1_2, Math.SQRT1_2, 0])).toBe('45° from +x to +y')
    expect(wayWords([...along(2.25), 0])).toBe('2.3° from +x to +y')
  })

  it('are where it leads otherwise', () => {
    expect(wayWords([0.8, 0.36, -0.48])).toBe('(0.8, 0.36, -0.48)')
  })
})
