import { describe, expect, it } from 'vitest'
import { dayOf } from '../../../src/base/clock.ts'
import { makingSheet } from '../../../src/report/making-sheet.ts'
import { sayDay } from '../../../src/report/planned-days.ts'
import { deferLine } from '../../../src/trade/cautions.ts'
import { benchText, benchTold } from './bench-told.ts'
import { cellsOf, heldBy } from './evaluate.ts'

const told = benchTold()
const sheet = makingSheet(told)
const said = cellsOf([sheet]).map((cell) => `${heldBy(cell) ?? ''}`)

describe('the Making sheet', () => {
  it('starts a printed page for each made part and each plate', () => {
    const starts = sheet.blocks.flatMap(({ rows }) => rows).filter(({ pageBreak }) => pageBreak)
    expect(starts.map(({ cells }) => heldBy(cells[0]!))).toEqual(expect.arrayContaining(['base', 'Plate p1']))
    expect(starts).toHaveLength(2)
  })

  it('says how many pieces in which lots: two devices and a spare in lots of two', () => {
    expect(said).toContain('3 pieces in 2 lots (2, 1): 2 needed, 1 spare')
  })

  it('prints stock, cutting data and times as the person typed them', () => {
    const text = said.join('\n')
    for (const typed of ['bar 20 mm, 20 mm long', '400 mm/min', 'Depth 0.5 mm', '10..12..20 min', 'G54'])
      expect(text).toContain(typed)
  })

  it('takes the mean of an uncertain time: (10 + 4 x 12 + 20) / 6 = 13 min a piece', () => {
    expect(said).toContain('13 min a piece')
  })

  it('shows the limits 4.15 and 4.25 of 4.2 ± 0.05 mm', () => {
    const limits = sheet.blocks.flatMap((block) =>
      block.id === 'making/base/inspection'
        ? block.rows.map(({ cells }) => cells.slice(4, 6).map(heldBy))
        : [],
    )
    expect(limits[0]).toEqual([4.15, 4.25])
  })

  it('says each caution once on its sheet, above the papers that rule', () => {
    for (const topic of ['cutting', 'edges', 'brass', 'resin', 'solvent', 'lamp'])
      expect(
        said.filter((words) => words.startsWith(`Mind, ${topic}:`)),
        topic,
      ).toHaveLength(topic === 'resin' ? 2 : 1)
    expect(said.filter((words) => words === deferLine)).toHaveLength(2)
  })

  it('gives the planned day of a step as the schedule has it', () => {
    const deburr = told.results.network.tasks.filter(
      ({ subject }) => subject.part === 'base' && subject.routeStep === 1,
    )
    const days = deburr.map(({ id }) => sayDay(dayOf(told.results.schedule.tasks.get(id)!.start)))
    expect(days.length).toBeGreaterThan(0)
    for (const day of days) expect(said.join('\n')).toContain(day)
  })

  it('lists what is on a plate with its counts', () => {
    expect(said).toContain('cover x2')
  })

  it('keeps a hostile name as text and every cell name unique', () => {
    const hostile = makingSheet(benchTold(benchText('=1+1')))
    const names = cellsOf([hostile]).flatMap(({ name }) => name ?? [])
    expect(new Set(names).size).toBe(names.length)
    expect(cellsOf([hostile]).map(heldBy)).toContain('=1+1')
    expect(cellsOf([hostile]).some(({ live }) => live)).toBe(false)
  })
})
