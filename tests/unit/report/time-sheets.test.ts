import { describe, expect, it } from 'vitest'
import { dayOf, instantOf, parseDay } from '../../../src/base/clock.ts'
import type { Results } from '../../../src/model/results.ts'
import type { ChainStep } from '../../../src/model/schedule.ts'
import { chainSheet } from '../../../src/report/chain-sheet.ts'
import { chartScale } from '../../../src/report/chart-scale.ts'
import { findingsSheet } from '../../../src/report/findings-sheet.ts'
import { moneySheet } from '../../../src/report/money-sheet.ts'
import { ordersSheet } from '../../../src/report/orders-sheet.ts'
import { overviewSheet } from '../../../src/report/overview-sheet.ts'
import { riskSheet } from '../../../src/report/risk-sheet.ts'
import { sayBecause, sayLink } from '../../../src/report/say-because.ts'
import { scheduleSheet } from '../../../src/report/schedule-sheet.ts'
import { sessionsSheet } from '../../../src/report/sessions-sheet.ts'
import type { Told } from '../../../src/report/sheets.ts'
import { demoTold, rowTexts } from './demo.ts'
import { cellsOf, heldBy, LiveModel, liveDifferences } from './evaluate.ts'

const told = demoTold()
const { results } = told
const mine = [overviewSheet, scheduleSheet, sessionsSheet, chainSheet, riskSheet, findingsSheet].map((make) =>
  make(told),
)
const all = [...mine, moneySheet(told), ordersSheet(told)]

const tableOf = (sheet: string) => {
  const table = all.find(({ name }) => name === sheet)!.blocks.find(({ kind }) => kind === 'table')!
  return table.kind === 'table' ? table : null!
}

describe('overview', () => {
  const model = new LiveModel(all)
  it('shows cash, charged and left over as the money has them', () => {
    const euros = (cents: number) => cents / 100
    expect(model.valueOf('cash')).toBeCloseTo(euros(results.money.cash.known), 9)
    expect(model.valueOf('charged')).toBeCloseTo(euros(results.money.charged.known), 9)
    expect(model.valueOf('left over')).toBeCloseTo(euros(results.money.leftOver.known), 9)
  })
  it('writes in every live cell what the expression gives', () => {
    expect(liveDifferences(all)).toEqual([])
  })
  it('leads every link to a cell that exists', () => {
    const names = new Set(cellsOf(all).map(({ name }) => name))
    expect(cellsOf(mine).filter(({ link }) => link !== undefined && !names.has(link))).toEqual([])
  })
  it('says that dates are stale once minutes are changed', () => {
    const typed = new LiveModel(all)
    expect(typed.valueOf('stale')).toBe('dates are as planned')
    const planned = [...typed.cells].find(
      ([name, cell]) =>
        cell.accepts?.kind === 'number' &&
        cell.value.type === 'number' &&
        cell.value.format.as === 'minutes' &&
        name,
    )!
    typed.type(planned[0], Number(heldBy(planned[1])) + 5)
    expect(typed.valueOf('stale')).toBe('dates not recomputed: run plan')
  })
  it('says late and early in days of the calendar', () => {
    const finish = dayOf(results.schedule.finish - 1)
    const at = (day: number | null): string => {
      const wanted = day === null ? null : { day, at: results.project.device.at }
      const device = { ...results.project.device, wanted }
      const other: Results = { ...results, project: { ...results.project, device } }
      return rowTexts(overviewSheet({ ...told, results: other })).join('\n')
    }
    expect(at(finish + 3)).toContain('3 days early')
    expect(at(finish - 1)).toContain('1 day late')
    expect(at(finish)).toContain('finished on that day')
    expect(at(null)).not.toContain('Wanted')
  })
})

describe('schedule', () => {
  const { rows } = tableOf('Schedule')
  it('lists every task once, under a head for what it is about', () => {
    expect(rows.filter(({ level }) => level === 1)).toHaveLength(results.network.tasks.length)
    expect(rows.filter(({ level }) => level === undefined).length).toBeGreaterThan(5)
  })
  it('shows the finish of the plan as the last finish', () => {
    const finishes = rows.map(({ cells }) => heldBy(cells[4]!) as number)
    expect(Math.max(...finishes)).toBe(results.schedule.finish)
  })
  it('keeps the chart within a page and marks a delivery from its order to its arrival', () => {
    const marks = rows.map(({ cells }) => cells.slice(8))
    expect(marks.every((cells) => cells.length <= 40)).toBe(true)
    const at = rows.findIndex(({ cells }) => heldBy(cells[0]!) === 'Coming from metalhall')
    const task = results.schedule.tasks.get('cart metalhall / delivery')!
    const away = marks[at]!.filter(({ mark }) => mark === 'away')
    expect(away).toHaveLength(dayOf(task.finish - 1) - dayOf(task.start) + 1)
  })
  it.each([
    [20, 40, 'half a day'],
    [40, 40, 'a day'],
    [41, 21, 'two days from the day shown'],
    [80, 40, 'two days from the day shown'],
    [140, 20, 'a week from the day shown'],
  ])('draws %i days from a Monday in %i columns of %s', (days, columns, says) => {
    const device = { ...results.project.device, start: parseDay('2026-03-02')! }
    const schedule = { ...results.schedule, finish: (device.start + days) * 1440 }
    const scale = chartScale({ ...results, schedule, project: { ...results.project, device } })
    expect([scale.columns.length, scale.says]).toEqual([columns, says])
  })
  it('still fits a page where the plan takes years', () => {
    const schedule = { ...results.schedule, finish: results.schedule.finish + 1440 * 3000 }
    const long = scheduleSheet({ ...told, results: { ...results, schedule } })
    expect(long.widths.length).toBeLessThanOrEqual(48)
  })
})

describe('sessions', () => {
  const sheet = all.find(({ name }) => name === 'Sessions')!
  it('has a block for each session and a line for each piece of work', () => {
    const ticks = cellsOf([sheet]).filter(({ role }) => role === 'tick')
    const pieces = results.sessions.reduce((sum, { work }) => sum + work.length, 0)
    expect(ticks).toHaveLength(pieces)
    const heads = cellsOf([sheet]).filter(({ role }) => role === 'heading')
    expect(heads).toHaveLength(results.sessions.length)
    expect(sheet.blocks).toHaveLength(results.sessions.length * 2 + 1)
  })
  it('lists each run that nobody has hands on, once', () => {
    const runs = results.network.tasks.filter(({ id, attention, kind, minutes }) => {
      const at = results.schedule.tasks.get(id)!
      return attention !== 'hands' && kind !== 'delivery' && at.people.length === 0 && minutes > 0
    })
    expect(runs.length).toBeGreaterThan(3)
    expect(rowTexts(sheet).filter((row) => / \| runs \| /.test(row))).toHaveLength(runs.length)
  })
  it('starts a page with each new week', () => {
    const weeks = new Set(results.sessions.map(({ open }) => Math.floor((dayOf(open) + 3) / 7)))
    const breaks = sheet.blocks.flatMap(({ rows }) => [...rows]).filter(({ pageBreak }) => pageBreak)
    expect(breaks).toHaveLength(weeks.size - 1)
  })
  it('says beside the latest start of an order how long the goods alone could wait, where that is later', () => {
    const rows = rowTexts(sheet)
    const of = (vendor: string) => rows.find((row) => row.includes(`Order from ${vendor}`))!
    expect(of('harborline')).toContain(
      'latest, as planned: Tue 03-03 20:13, for the goods alone Wed 03-11 22:10',
    )
    const orders = results.network.tasks.filter(({ kind }) => kind === 'order')
    const dates = orders.map(({ id }) => results.schedule.tasks.get(id)!)
    expect(dates.length).toBeGreaterThan(5)
    for (const at of dates) expect(at.latestAlone).toBeGreaterThanOrEqual(at.latestStart)
  })
  it('says until when an order counts for a day', () => {
    const first = rowTexts(sheet).find((row) => row.includes('Order from metalhall'))
    expect(first).toContain('be out before Tue 03-03 12:00')
  })
})

describe('what sets the date', () => {
  it('tells each element of the driving chain in order, with a reason', () => {
    const { rows } = tableOf('What sets the date')
    expect(rows).toHaveLength(results.schedule.drivingChain.length)
    expect(heldBy(rows.at(-1)!.cells[1]!)).toBe(results.schedule.finish)
    expect(rows.every(({ cells }) => heldBy(cells[5]!) !== null)).toBe(true)
  })
  it('says a lag and a longest wait with the reason of a link', () => {
    const [first] = results.network.links
    const said = sayLink(results, { ...first!, why: 'cure', lag: { minutes: 90 }, within: 120 })
    expect(said).toContain('stays untouched until hard or dry')
    expect(said).toContain('then 1 h 30 min of waiting, but no later than 2 h after it')
    const days = sayLink(results, { ...first!, why: 'after', lag: { workingDays: 1 } })
    expect(days).toContain('then 1 working day of waiting')
  })
  it('names who was busy, and with what', () => {
    const from = 'work firmware'
    const about = { task: 'work board check', at: 0, until: 0 }
    const say = (...because: ChainStep['because']) =>
      sayBecause(results, { task: 'work board check', start: 0, finish: 0, because })
    const taken = { ...about, kind: 'resource', resource: 'jonas', from } as const
    expect(say(taken)).toBe('jonas was taken until then by "Firmware"')
    const asks = { asks: 90, pause: false, whose: [{ kind: 'machine', names: ['mill'] }] } as const
    const sunday = instantOf(parseDay('2026-03-08')!, 600)
    expect(say(taken, { ...about, kind: 'no room', ...asks, at: sunday, until: sunday })).toBe(
      'jonas was taken until then by "Firmware"; then it takes 1 h 30 min without a pause, and the hours of the mill have no stretch as long before Sun 2026-03-08 10:00',
    )
    expect(say({ ...taken, task: from })).toContain('"Firmware" must follow at once, and for that: jonas')
  })
})

describe('findings', () => {
  const at = { file: 'x/y.yaml', line: 3, column: 5, length: 1 }
  const says = '=HYPERLINK("http://x")'
  const finding = { code: 'CAL01', level: 'warning', at, says, mend: 'm', notes: [] } as const
  const more: Told = { ...told, findings: [finding] }
  it('shows code, place, fact and mend of each', () => {
    expect(rowTexts(findingsSheet(more))).toContain(`CAL01 | y.yaml:3:5 | warning | ${says} | m | ☐`)
  })
  it('keeps text that looks like a formula as text, never live', () => {
    expect(cellsOf([findingsSheet(more)]).some(({ live }) => live !== undefined)).toBe(false)
  })
  it('names the way taken and those left', () => {
    expect(rowTexts(findingsSheet(told)).join('\n')).toContain('way taken: buy; left: make')
  })
})
