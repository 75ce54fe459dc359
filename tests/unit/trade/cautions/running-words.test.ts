import { describe, expect, it } from 'vitest'
import { isDriven, plainlyRuns, testRuns } from '../../../../src/trade/cautions/running-words.ts'

// What runs and what lies dead in all of these: common practice, no source.
describe('a test', () => {
  it.each([
    'ten pulses per turn at 300 rpm',
    '20 doses of 50 uL weighed',
    'primes in 40 strokes, runs 10 min',
    '30 runs over 20 mm at 4 mm/s',
    '24 V at the board, the right way round',
    'lights, head below 50 degC after half an hour',
    'stays cool, bench supply at its limit',
    'draws less than 80 mA',
  ])('runs something where it says so, whatever it is of: %s', (words) => {
    expect(testRuns(words, false)).toBe(true)
  })

  it.each([
    'six cores through, none to another',
    'stays in any position on the ways',
    'run-out of the rim at most 0.10 mm',
    'gauge returns within 1 um after a light push',
    'turns freely by hand',
  ])('of what cannot run by itself runs nothing: %s', (words) => {
    expect(testRuns(words, false)).toBe(false)
  })

  it('of what can run does in doubt, and does not where it plainly lies dead', () => {
    expect(testRuns('quiet for an hour', true)).toBe(true)
    for (const dead of ['turns by hand', 'no core to the screen multimeter', 'no short, supply off'])
      expect(testRuns(dead, true), dead).toBe(false)
    expect(testRuns('turns by hand, then at 300 rpm', true)).toBe(true)
  })
})

describe('other work', () => {
  it('runs something only where it plainly says so', () => {
    for (const words of ['run in at low load', 'let it turn at 300 rpm', 'switch the supply on'])
      expect(plainlyRuns(words), words).toBe(true)
    for (const words of ['run the cable along the base', 'tighten the coupling on the motor shaft'])
      expect(plainlyRuns(words), words).toBe(false)
  })
})

describe('a bought thing', () => {
  it('is driven where its name or description says so', () => {
    for (const words of ['motor 24 V', 'two fans', 'li-ion cell, 3.7 V', 'power supply'])
      expect(isDriven(words), words).toBe(true)
    for (const words of ['drive pin', 'steel sheet, laser cut', 'cable, 6 cores', 'ball bearing'])
      expect(isDriven(words), words).toBe(false)
  })
})
