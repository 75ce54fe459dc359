import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { takeApart } from '../../../src/compile.ts'
import type { ReportRepair } from '../../../src/report/report-repair.ts'

const folder = join(import.meta.dirname, '../../..')
function apart(part: string, demo = 'optical-chopper'): ReportRepair {
  const { answer } = takeApart(`projects/${demo}/${demo}.yaml`, part, { folder })
  if (!answer || 'unknown' in answer) throw new Error(`no way to ${part}`)
  return answer
}
const steps = (repair: ReportRepair) => repair.ways[0]!.legs.flatMap((leg) => leg.steps)

describe('the way to a part, in words', () => {
  it('names the joint that is destroyed, and the compound and part to have new', () => {
    const last = steps(apart('spindle')).at(-1)!
    expect(last.says).toBe('Break the glued joint of spindle from hub, which destroys the joint')
    expect(last.renew).toEqual(['retaining compound', 'spindle, likely spoilt; clean both faces'])
  })

  it('takes screws out where it unscrews, and not the consumables', () => {
    expect(steps(apart('speed board')).at(-1)!.says).toBe(
      'Unscrew speed board from sensor bracket: take out screw M2x6 x2',
    )
    expect(steps(apart('lock ring')).at(-1)!.says).toBe('Unscrew lock ring from hub, with care')
    expect(steps(apart('lock ring')).at(-1)!.renew).toEqual(['thread locker'])
  })

  it('says which line asks for a step, and doubts a lost joint that only `after` asks for', () => {
    const feet = steps(apart('piston seal', 'dosing-pump')).find(({ step }) => step === 'fit feet')!
    expect(feet.because).toMatch(/^was to come after "shut back" \(`after`, line \d+\)$/)
    expect(feet.doubt).toMatch(/^only `after` \(line \d+\) asks for it/)
  })

  it('gets at what is soldered on a board by the board', () => {
    const [way] = apart('fork sensor').ways
    expect(way!.board).toBe('speed board')
    expect(way!.where).toContain('soldered on speed board')
  })

  it('tells every place of a part that sits in several, and repeats the tests that come after', () => {
    const { ways } = apart('bearing')
    expect(ways.map(({ where }) => where)).toEqual([
      'Optical chopper head, in bearing block, where step "press front bearing" puts it',
      'Optical chopper head, where step "fit rear bearing" puts it',
    ])
    const repeated = ways[1]!.back.filter(({ what }) => what === 'repeat').map(({ step }) => step)
    expect(repeated).toEqual(['low speed check', 'run-in', 'label'])
  })

  it('wipes again before it glues again', () => {
    const back = apart('spindle').ways[0]!.back.map(({ step, what }) => `${what}: ${step}`)
    expect(back.slice(0, 2)).toEqual(['before it: degrease bond', 'do again: glue spindle'])
  })
})
