import { describe, expect, it } from 'vitest'
import { joinedFeatures } from '../../../src/checks/joined-features.ts'
import { bought, projectText, saidBy } from './bench-project.ts'

const of = (parts: readonly string[], ...steps: string[]) => saidBy(joinedFeatures, projectText(parts, steps))
const put = (what: string, by: string, more = '') => `{put: ${what}, on: hub, by: ${by}, time: 5 min${more}}`

describe('features that meet in a step', () => {
  it('are found where one of several pairs goes together', () => {
    const hub = bought('hub', 'a: M6-6g, b: M14x1-6g, bore: 8 H7')
    expect(of([hub, bought('ring', 'nut: M14x1-6H')], put('ring', 'thread')).codes).toEqual([])
    expect(of([hub, bought('axle', 'seat: 8 h6')], put('axle', 'seat')).codes).toEqual([])
  })

  it('are told with every way in which the nearest pair differs', () => {
    const parts = [bought('hub', 'worm: M14x1-6g'), bought('ring', 'nut: M14x1.5-LH-6g')]
    const { codes, says } = of(parts, put('ring', 'thread'))
    expect(codes).toEqual(['FIT07'])
    for (const word of ['pitch (1.5 mm and 1 mm)', 'hand (left and right)', 'gender'])
      expect(says[0]).toContain(word)
  })

  it('are an error where they are written and do not go together, whatever the step joins by', () => {
    const parts = [bought('hub', 'worm: M14x1-6g, bore: 8 H7'), bought('ring', 'nut: M16x1-6H, pin: 8 h6')]
    const mates = (a: string, b: string) => put('ring', 'screw', `, mates: [ring.${a}, hub.${b}]`)
    expect(of(parts, mates('nut', 'worm')).codes).toEqual(['FIT06'])
    expect(of(parts, mates('nut', 'bore')).says[0]).toContain('kind (a thread and a size)')
    expect(of(parts, mates('pin', 'bore')).codes).toEqual([])
  })

  it('are not searched for where the way of joining needs none', () => {
    const parts = [bought('hub', 'worm: M14x1-6g'), bought('ring', 'nut: M14x1.5-6H')]
    for (const by of ['screw', 'snap', 'magnet', 'plug']) expect(of(parts, put('ring', by)).codes).toEqual([])
  })

  it('are not said to miss each other where glue or a seat joins sizes that are far apart', () => {
    const parts = [bought('hub', 'bore: 20 H7'), bought('pin', 'body: 6 h6')]
    expect(of(parts, put('pin', 'glue')).codes).toEqual([])
    expect(of(parts, put('pin', 'seat')).codes).toEqual([])
    expect(of(parts, put('pin', 'press')).codes).toEqual(['FIT07'])
  })

  // ISO 286-2: 6 H7 is 0/+12 um, 6 p6 +12/+20, 6 m6 +4/+12, 6 g6 -4/-12, from memory.
  it.each([
    ['g6', 'press', '', ['FIT08']],
    ['m6', 'press', '', []],
    ['m6', 'press', ', light: yes', []],
    ['m6', 'press', ', light: no', ['FIT10']],
    ['p6', 'press', ', light: yes', ['FIT10']],
    ['p6', 'press', '', []],
    ['p6', 'seat', '', ['FIT09']],
    ['m6', 'seat', '', []],
    ['g6', 'seat', '', []],
  ])('of 6 H7 and 6 %s joined by %s%s earn %j', (shaft, by, more, codes) => {
    const parts = [bought('hub', 'bore: 6 H7'), bought('pin', `body: 6 ${shaft}`)]
    expect(of(parts, put('pin', by, more)).codes).toEqual(codes)
  })

  it('inside a subassembly are taken and meet nothing outside it', () => {
    const head = '  head:\n    kind: assembly\n    steps: [{put: axle, on: hub, by: glue, time: 5 min}]\n'
    const parts = [
      bought('hub', 'bore: 8 H7'),
      bought('axle', 'seat: 8 h6'),
      bought('block', 'bore: 8 H7, "rear bore": 8.5 H7'),
    ]
    const step = '{put: head, in: block, by: seat, time: 5 min}'
    expect(of([...parts, head], step).codes).toEqual([])
  })
})
