import { describe, expect, it } from 'vitest'
import type { Pictures } from '../../../src/model/pictures.ts'
import { assemblySheet } from '../../../src/report/assembly-sheet.ts'
import { checklistPage } from '../../../src/report/checklist-columns.ts'
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
    const ids = rowsOf(sheet).flatMap(({ cells }) => cells.flatMap(({ picture }) => picture ?? []))
    expect(ids).toEqual([pictureId(null, first)])
    expect(saidIn(sheet)).toEqual([])
  })

  it('take no column where there is none, and every row fills the columns it has', () => {
    const heads = (sheet: ReturnType<typeof assemblySheet>) =>
      sheet.blocks.flatMap((block) => (block.kind === 'table' ? [block.columns.map(({ head }) => head)] : []))
    expect(heads(assemblySheet({ ...told, pictures: none }))).toEqual(heads(assemblySheet(told)))
    const pictured = assemblySheet({ ...told, pictures: drawn })
    expect(heads(pictured)).toEqual([['No.', 'Picture', 'Do', 'No. 1', 'No. 2']])
    for (const { cells } of pictured.blocks.at(-1)!.rows)
      expect(cells.reduce((sum, { span = 1 }) => sum + span, 0)).toBe(pictured.widths.length)
  })

  it('say beside every step that has none why, where another has one', () => {
    const bare = device.steps.find(({ put, id }) => put && id !== first)!
    const sheet = assemblySheet({ ...told, pictures: { ...drawn, without: [{ of: null, step: bare.id }] } })
    const notes = rowsOf(sheet).flatMap(({ cells }) =>
      cells.flatMap(({ value, role, down }) =>
        role === 'note' && down && value.type === 'text' ? [value.text] : [],
      ),
    )
    expect(notes.sort()).toEqual([`no mesh: ${bare.put!.part}`, 'nothing is put in place'])
  })

  // A4 (ISO 216) less margins of half an inch. A character is as wide as the widest digit of the base font at 11 points:
  // 7 pixels of 0.75 points in one reader, 0.507 em unrounded in another (Carlito, measured).
  it.each([1, 2, 3, 4])('are 60 mm wide on a page that is not scaled, with %i boxes', (boxes) => {
    const { columns, box, orientation } = checklistPage(boxes, true)
    const widths = [...columns.map(({ width }) => width), ...Array.from({ length: boxes }, () => box)]
    const across = widths.reduce((sum, width) => sum + width + 0.71, 0) * 0.507 * 11
    expect(orientation).toBe('portrait')
    expect(across / 72).toBeLessThanOrEqual(210 / 25.4 - 1)
    const narrowest = (columns.find(({ head }) => head === 'Picture')!.width + 0.71) * 7 * 0.75
    expect(narrowest).toBeGreaterThanOrEqual((60 * 72) / 25.4 + 6)
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
