import { describe, expect, it } from 'vitest'
import { planReport } from '../../../src/compile.ts'
import { whyText } from '../../../src/emit/terminal/why.ts'
import { bought, projectText } from '../checks/bench-project.ts'
import { memoryDisk } from '../source/memory-disk.ts'
import { heldBy } from './evaluate.ts'

const text = projectText(
  [
    bought('base', 'depth: 15 ± 0.05 mm, bore: 8 H7, foot: M6-6H depth 6 mm'),
    bought('bearing', 'width: 5 ± 0.02 mm'),
    bought('axle', 'seat: 8 h6, length: 4.7 ± 0.05 mm'),
  ],
  [
    '{name: set bearing, put: bearing x2, in: base, by: seat, time: 5 min}',
    '{name: set axle, put: axle, in: base, by: seat, time: 5 min}',
  ],
  'people: {ana: {hours: {sat: "10:00-16:00"}}}\nchains:\n  air gap: {must: 0.30 ± 0.10 mm, sum: [base.depth, -bearing.width x2, -axle.length]}\n',
)
const { report, workbook } = planReport('project.yaml', {
  ...{ folder: '/bench', root: '.', effort: 1 },
  read: memoryDisk({ '/bench/project.yaml': text }),
})
const wordsOf = (name: string): string[] =>
  workbook!.sheets
    .filter((sheet) => sheet.name === name)
    .flatMap(({ blocks }) => blocks.flatMap(({ rows }) => rows))
    .flatMap(({ cells }) => cells.map((cell) => `${heldBy(cell) ?? ''}`))

describe('what meets in a step', () => {
  const fit = 'axle.seat (8 h6) and base.bore (8 H7): slides, 0 to 24 um of clearance'

  it('stands under the step on the checklist, in the report and where a person asks why', () => {
    expect(wordsOf('Assembly')).toContain(fit)
    const steps = report!.assembly.flatMap((one) => one.steps)
    expect(steps.find(({ step }) => step === 'set axle')!.join!.says).toEqual([fit])
    expect(steps.find(({ step }) => step === 'set bearing')!.join).toBe(null)
    const why = whyText(report!, 'set axle')
    expect(why.kind === 'known' && why.text).toContain('base.bore: IT7 at 8 mm = 15 um')
  })
})

describe('a dimension chain', () => {
  it('stands on the Inspection sheet, in the report and where a person asks why', () => {
    expect(wordsOf('Inspection')).toContain('base.depth - 2 x bearing.width - axle.length')
    expect(report!.chains).toMatchObject([{ name: 'air gap', worstLeast: 0.16, worstMost: 0.44 }])
    const why = whyText(report!, 'air gap')
    expect(why.kind === 'known' && why.text).toContain('worst case 0.16 to 0.44 mm')
  })

  it('that is misspelt is told the near name', () => {
    expect(whyText(report!, 'air gab')).toMatchObject({
      kind: 'unknown',
      says: expect.stringContaining('air gap'),
    })
  })
})

describe('the limits of a thread', () => {
  it('say which diameter they are of', () => {
    expect(wordsOf('Inspection')).toContain('M6-6H depth 6 mm (minor diameter)')
  })
})
