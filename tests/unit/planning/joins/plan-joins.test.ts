import { describe, expect, it } from 'vitest'
import { planJoins } from '../../../../src/planning/joins/plan-joins.ts'
import { bought, projectText } from '../../checks/bench-project.ts'
import { resolveText } from '../../resolve/resolve-text.ts'

const joinsOf = (parts: readonly string[], steps: readonly string[], more = '') =>
  planJoins(resolveText(projectText(parts, steps, more)).project)

const turned = (name: string, material: string, features: string): string =>
  `  ${name}: {kind: machined, material: ${material}, features: {${features}}, route: [{deburr: {time: 1 min}}]}\n`
const materials = 'materials: {bronze bar: {like: brass}, steel bar: {like: steel-c45}}\n'

describe('what meets in a step', () => {
  it('has the range of its fit', () => {
    // ISO 286-2: 8 H7 is 0/+15 um, 8 h6 is 0/-9 um, from memory.
    const [join] = joinsOf(
      [bought('hub', 'bore: 8 H7'), bought('axle', 'seat: 8 h6')],
      ['{put: axle, on: hub, by: glue, time: 5 min}'],
    )
    expect(join).toMatchObject({ sort: 'fit', written: false, press: null })
    expect(join!.fit).toEqual({ kind: 'clearance', largestClearanceUm: 24, smallestClearanceUm: 0 })
    expect(join!.says).toEqual(['axle.seat (8 h6) and hub.bore (8 H7): slides, 0 to 24 um of clearance'])
  })

  it('is named by the person where `mates` is written', () => {
    const [join] = joinsOf(
      [bought('hub', 'a: M6-6g, b: M6-6g'), bought('nut', 'thread: M6-6H')],
      ['{put: nut, on: hub, by: screw, time: 5 min, mates: [nut.thread, hub.b]}'],
    )
    expect(join).toMatchObject({ written: true, sort: 'thread', second: { part: 'hub', feature: 'b' } })
  })

  it('tells hole from shaft by the other one, whichever is named first', () => {
    const parts = [bought('hub', 'register: 25 h7'), bought('wheel', 'centre: 25.06 ± 0.03 mm')]
    const step = (mates: string) => [`{put: wheel, on: hub, by: seat, time: 5 min, mates: [${mates}]}`]
    const [one] = joinsOf(parts, step('wheel.centre, hub.register'))
    const [other] = joinsOf(parts, step('hub.register, wheel.centre'))
    expect(one!.fit).toEqual({ kind: 'clearance', largestClearanceUm: 111, smallestClearanceUm: 30 })
    expect(other!.fit).toEqual(one!.fit)
  })

  it('has force and pressure of a press where length, outside and materials are known, by the thick-walled ring', () => {
    const parts = [turned('hub', 'bronze bar', 'bore: 6 H7'), turned('axle', 'steel bar', 'seat: 6 p6')]
    const step = '{put: axle, in: hub, by: press, time: 5 min, engagement: 10 mm, around: 16 mm}'
    const [join] = joinsOf(parts, [step], materials)
    const { pressureMpa, forceN } = join!.press!
    // Lamé by hand: d 6, D 16: (256 + 36) / (256 - 36) = 1.32727; E and nu of brass 97 GPa, 0.34; steel 205 GPa, 0.29.
    const pressure = 0.02 / (6 * ((1.3272727 + 0.34) / 97000 + (1 - 0.29) / 205000))
    expect(pressureMpa[1]).toBeCloseTo(pressure, 1)
    expect(pressureMpa[0]).toBe(0)
    expect(forceN[1]).toBeCloseTo(Math.PI * 6 * 10 * pressure * 0.15, -1)
  })

  it('has no force where one of them is missing', () => {
    const parts = [turned('hub', 'bronze bar', 'bore: 6 H7'), bought('axle', 'seat: 6 p6')]
    const step = '{put: axle, in: hub, by: press, time: 5 min, engagement: 10 mm, around: 16 mm}'
    expect(joinsOf(parts, [step], materials)[0]!.press).toBe(null)
    const both = [parts[0]!, turned('axle', 'steel bar', 'seat: 6 p6')]
    expect(joinsOf(both, [step.replace(', around: 16 mm', '')], materials)[0]!.press).toBe(null)
  })

  it('is nothing where the two do not go together', () => {
    const parts = [bought('hub', 'a: M6-6g'), bought('nut', 'thread: M8-6H')]
    expect(joinsOf(parts, ['{put: nut, on: hub, by: thread, time: 5 min}'])).toEqual([])
  })
})
