import { describe, expect, it } from 'vitest'
import { gaugedLimits } from '../../../../src/planning/inspection/gauged-limits.ts'

const gauged = (text: string, more: { name?: string; process?: string; general?: 'm' } = {}) =>
  gaugedLimits({
    name: more.name ?? 'x',
    text,
    madeBy: more.process === undefined ? null : { process: more.process },
    general: more.general ?? null,
  })

describe('the limits that a bench measures against', () => {
  // ISO 286-2: 6 H7 0/+12 um; 16 M7 -18/0 um; ISO 965-2: M14x1-6H minor 12.917 to 13.153, M14x1-6g major 13.794 to
  // 13.974 mm; ASME B1.1: 1/4-20 UNC-2B minor 0.196 to 0.207 in; ISO 2768-1 m: over 6 to 30 mm +/- 0.2 mm; from memory.
  it.each([
    ['6 H7', 6, 6.012, 'mm', null],
    ['16 M7', 15.982, 16, 'mm', null],
    ['4.2 ± 0.05 mm', 4.15, 4.25, 'mm', null],
    ['12 +0.1/-0.02 mm', 11.98, 12.1, 'mm', null],
    ['25.021 / 25.000', 25, 25.021, 'mm', null],
    ['1/4 in ± 0.002', 0.248, 0.252, 'in', null],
    ['M14x1-6H depth 6 mm', 12.917, 13.153, 'mm', 'minor diameter'],
    ['M14x1-6g', 13.794, 13.974, 'mm', 'major diameter'],
    ['1/4-20 UNC-2B', 0.196, 0.207, 'in', 'minor diameter'],
  ] as const)('of `%s` are %d and %d %s', (text, lower, upper, unit, limitsOf) => {
    expect(gauged(text)).toEqual({ lower, upper, unit, limitsOf })
  })

  it('of a size without its own tolerance are the general ones where a class is said', () => {
    expect(gauged('16')).toBe(null)
    expect(gauged('16', { general: 'm' })).toMatchObject({ lower: 15.8, upper: 16.2 })
  })

  it('of a thread without class are those of the usual class, once name or making tell inside from outside', () => {
    expect(gauged('M14x1')).toBe(null)
    expect(gauged('M14x1', { process: 'tap' })).toMatchObject({ limitsOf: 'minor diameter, 6H taken' })
    expect(gauged('M14x1', { name: 'stud' })).toMatchObject({ limitsOf: 'major diameter, 6g taken' })
  })

  it.each(['Ra 0.8', 'turns freely', '3 holes', '8.0 mm thick', ''])('of `%s` are none', (text) => {
    expect(gauged(text)).toBe(null)
  })
})
