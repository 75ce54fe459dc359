import { describe, expect, it } from 'vitest'
import type { Pictures } from '../../../src/model/pictures.ts'
import { assemblySheet } from '../../../src/report/assembly-sheet.ts'
import { pictureId, stepDrawings } from '../../../src/report/told-pictures.ts'
import { benchTold } from './bench-told.ts'

const told = benchTold()
const device = told.results.project.assembly!
const first = device.steps[0]!.id
const none: Pictures = { steps: [], wholes: [], beyond: null, without: [] }
const drawn: Pictures = {
  ...none,
  steps: [
    {
      of: null,
      step: first,
      number: 1,
      svg: '<svg/>',
      sizeMm: 60,
      heightMm: 42,
      sees: [4, 3],
      straight: true,
    },
  ],
}
const rowsOf = (sheet: ReturnType<typeof assemblySheet>) => sheet.blocks.flatMap(({ rows }) => rows)
const saidIn = (sheet: ReturnType<typeof assemblySheet>): readonly string[] =>
  rowsOf(sheet).flatMap(({ cells }) =>
    cells.flatMap(({ value }) => (value.type === 'text' && /^Pictures/.test(value.text) ? [value.text] : [])),
  )

describe('the pictures of a checklist', () => {
  it('stand beside the step that they show, and nowhere else', () => {
    const sheet = assemblySheet({ ...told, pictures: drawn })
    const ids = rowsOf(sheet).flatMap(({ cells }) => cells.flatMap(({ picture }) => picture?.id ?? []))
    expect(ids).toEqual([pictureId(null, first)])
    expect(saidIn(sheet)).toEqual([])
  })

  it('take no column where there is none, and every row fills the columns it has', () => {
    const columns = ({ widths }: ReturnType<typeof assemblySheet>) => widths.length
    const [plain, pictured] = [assemblySheet(told), assemblySheet({ ...told, pictures: drawn })]
    expect(columns(assemblySheet({ ...told, pictures: none }))).toBe(columns(plain))
    expect(columns(pictured)).toBe(columns(plain) + 1)
  })

  it('are said to be missing in one line without the package, with what to install', () => {
    const said = saidIn(assemblySheet({ ...told, pictures: 'no package' }))
    expect(said.length).toBe(1)
    expect(said[0]).toContain('npm install @resvg/resvg-js')
  })

  it('are said to be too many with both numbers', () => {
    const beyond = { what: 'parts', found: 5000, most: 4000 } as const
    const [said] = saidIn(assemblySheet({ ...told, pictures: { ...none, beyond } }))
    expect(said).toContain('5000 parts')
    expect(said).toContain('4000')
  })

  it('keep steps of the same name in two assemblies apart', () => {
    const [step] = drawn.steps
    const two = stepDrawings({ ...drawn, steps: [step!, { ...step!, of: 'lid' }] })
    expect(two.size).toBe(2)
  })
})
