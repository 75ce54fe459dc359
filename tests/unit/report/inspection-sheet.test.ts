import { describe, expect, it } from 'vitest'
import { inspectionSheet } from '../../../src/report/inspection-sheet.ts'
import { benchText, benchTold } from './bench-told.ts'
import { cellsOf, LiveModel, liveDifferences } from './evaluate.ts'

const told = benchTold()
const sheet = inspectionSheet(told)
const width = told.results.inspection.find(({ feature }) => feature === 'width')!
const cell = (what: string, piece = 1) => `inspection/${width.number}/${piece}/${what}`

describe('the Inspection sheet', () => {
  it('has a row for each piece of each line', () => {
    const rows = sheet.blocks.flatMap((block) => (block.kind === 'table' ? block.rows : []))
    expect(rows).toHaveLength(told.results.inspection.reduce((sum, { pieces }) => sum + pieces, 0))
  })

  it('shows at most twenty pieces of a line', () => {
    const many = inspectionSheet(benchTold(benchText('base', 24)))
    const rows = many.blocks.flatMap((block) => (block.kind === 'table' ? block.rows : []))
    const of = rows.filter(({ cells }) => cells[2]!.value.type === 'text' && cells[2]!.value.text === 'width')
    expect(of).toHaveLength(20)
  })

  it('is empty until a value is typed, then says in at both limits and out beyond them', () => {
    const model = new LiveModel([sheet])
    expect(liveDifferences([sheet])).toEqual([])
    expect(model.valueOf(cell('result'))).toBe('')
    for (const [typed, says] of [
      [4.15, 'in'],
      [4.25, 'in'],
      [4.149, 'out'],
      [4.251, 'out'],
      [0, 'out'],
    ] as const) {
      model.type(cell('measured'), typed)
      expect(model.valueOf(cell('result')), `${typed}`).toBe(says)
    }
    expect(model.valueOf(cell('result', 2))).toBe('')
  })

  it('gives a box, and no verdict, where the requirement has no limits in figures', () => {
    const seat = told.results.inspection.find(({ requirement }) => requirement === '6 H7')!
    const live = seat.lower !== null || seat.upper !== null
    const names = cellsOf([sheet]).flatMap(({ name }) => name ?? [])
    expect(names.includes(`inspection/${seat.number}/1/result`)).toBe(live)
    const plain = told.results.inspection.find(({ requirement }) => requirement === 'flush')!
    expect(names).not.toContain(`inspection/${plain.number}/1/result`)
  })
})
