import { describe, expect, it } from 'vitest'
import { directionNames } from '../../../../src/geometry/relations/directions.ts'
import { attitudeOf } from '../../../../src/planning/pictures/attitude-of.ts'

describe('the side that lies up after a turn', () => {
  it.each([
    ['underside up', '-z'],
    ['the rear up', '+y'],
    ['left side up', '-x'],
    ['front face upwards', '-y'],
    ['+x up', '+x'],
    ['upside down', '-z'],
    ['on its left side', '+x'],
    ['on the front', '+y'],
    ['upright', '+z'],
    ['so that you see the coil', '+z'],
  ])('%s', (words, side) => {
    expect(directionNames[attitudeOf(words)]).toBe(side)
  })
})
