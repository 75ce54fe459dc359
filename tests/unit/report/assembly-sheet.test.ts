import { describe, expect, it } from 'vitest'
import { assemblySheet } from '../../../src/report/assembly-sheet.ts'
import { stepRows } from '../../../src/report/step-rows.ts'
import { benchText, benchTold } from './bench-told.ts'
import { cellsOf, heldBy } from './evaluate.ts'

const told = benchTold()
const rowsOf = (sheet: ReturnType<typeof assemblySheet>) =>
  sheet.blocks.flatMap((block) => (block.id === 'assembly/Stirrer/steps' ? block.rows : []))
const rows = rowsOf(assemblySheet(told))
const said = rows.map(({ cells }) => cells.map((cell) => `${heldBy(cell) ?? ''}`))
const action = (words: string) => said.findIndex((cells) => cells[1]!.includes(words))

describe('the Assembly sheet', () => {
  it('lists the steps in the order in which the schedule begins them', () => {
    const start = (step: string) =>
      Math.min(
        ...told.results.network.tasks
          .filter(({ subject }) => subject.step === step)
          .map(({ id }) => told.results.schedule.tasks.get(id)!.start),
      )
    expect(start('glue ring')).toBeLessThan(start('close'))
    expect(start('close')).toBeLessThan(start('spin'))
    const places = ['Glue ring', 'Press cover', 'Test: turns'].map(action)
    expect(places[0]).toBeGreaterThanOrEqual(0)
    expect(places).toEqual([...places].sort((a, b) => a - b))
  })

  it('says one action in one sentence, with what holds it and what it shuts', () => {
    expect(said[action('Glue ring')]![1]).toBe('Glue ring into base with tube')
    expect(said[action('Press cover')]![1]).toBe('Press cover onto base; this shuts base at top')
  })

  it('has a box for each of two devices', () => {
    expect(said[action('Glue ring')]!.filter((words) => words === '☐')).toHaveLength(2)
  })

  it('writes numbered boxes in one line where the devices are many', () => {
    const many = rowsOf(assemblySheet(benchTold(benchText('base', 6))))
    const lines = many
      .flatMap(({ cells }) => cells.map(heldBy))
      .filter((one) => `${one}`.startsWith('Done on:'))
    expect(lines).toHaveLength(3)
    expect(lines[0]).toMatch(/☐ 6$/)
  })

  it('warns of glue before the step that glues, once, and of the tube that is used there', () => {
    const glue = said.findIndex((cells) => cells[1]!.startsWith('Mind, adhesive:'))
    expect(glue).toBeGreaterThanOrEqual(0)
    expect(glue).toBeLessThan(action('Glue ring'))
    expect(said.filter((cells) => cells[1]!.startsWith('Mind, adhesive:'))).toHaveLength(1)
    expect(said.filter((cells) => cells[1]! === 'Mind, tube: do not squeeze')).toHaveLength(1)
  })

  it('warns of points of no return before they are passed: glue, a heavy press, the last open side', () => {
    const above = (place: number) => said[place - 1]![1]!
    expect(above(action('Glue ring'))).toContain('once glued')
    expect(above(action('Press cover'))).toContain('base has no open side after this')
    expect(above(action('Press cover'))).toContain('heavy press')
  })

  it('marks an assumed time and says what a failed test costs', () => {
    expect(said[action('Press cover')]![4]).toBe('5 min (assumed)')
    const failing = said.find((cells) => cells[1]!.startsWith('If it fails'))!
    // 20 in 100 fail: 0.2 / 0.8 = 0.25 failures for each test, each of 15 min of rework and 10 min of test: 6.25 min.
    expect(failing[1]).toBe(
      'If it fails (about 20 times in 100): 15 min of rework, then test again; 6 min more on average.',
    )
  })

  it('leaves a place for a picture only where there is one', () => {
    const { assembly } = told.results.project
    const stand = {
      ...{
        step: assembly!.steps[0]!,
        number: 1,
        before: null,
        planned: '',
        pieces: 2,
        cautions: [],
        back: null,
      },
      ...{ inspection: [], way: null, join: null },
    }
    const rows = stepRows({
      ...stand,
      beside: { picture: 'step/1', seen: 'Picture: seen are front and top.' },
    })
    const [number, picture] = rows[0]!.cells
    expect([heldBy(number!), number!.down]).toEqual(['1', rows.length])
    expect([picture!.picture, picture!.down]).toEqual(['step/1', rows.length])
    expect(rows.map(({ fills = false }) => fills)).toEqual(rows.map((_, at) => at === rows.length - 1))
    const bare = stepRows({ ...stand, beside: { without: 'no mesh: ring' } })
    expect(bare.flatMap(({ cells }) => cells.flatMap((cell) => cell.picture ?? []))).toEqual([])
    expect(bare.some(({ fills }) => fills)).toBe(false)
    const why = bare[0]!.cells[1]!
    expect([heldBy(why), why.role, why.down]).toEqual(['no mesh: ring', 'note', bare.length])
  })

  it('leaves a place for a measured value of each device at a check', () => {
    const check = rows.find(({ cells }) => `${heldBy(cells[1]!)}`.startsWith('Check: flush'))!
    expect(check.cells.filter(({ accepts }) => accepts)).toHaveLength(2)
  })

  it('keeps a hostile name as text and every cell name unique', () => {
    const cells = cellsOf([assemblySheet(benchTold(benchText('=1+1')))])
    const names = cells.flatMap(({ name }) => name ?? [])
    expect(new Set(names).size).toBe(names.length)
    expect(cells.map(heldBy)).toContain('Press cover onto =1+1; this shuts =1+1 at top')
    expect(cells.some(({ live }) => live)).toBe(false)
  })
})
