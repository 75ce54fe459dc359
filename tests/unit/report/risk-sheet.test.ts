import { describe, expect, it } from 'vitest'
import { formatInstant } from '../../../src/base/clock.ts'
import { planReport } from '../../../src/compile.ts'
import { summary } from '../../../src/emit/terminal/summary.ts'
import type { Risk } from '../../../src/model/risk.ts'
import { chainSheet } from '../../../src/report/chain-sheet.ts'
import { ordersSheet } from '../../../src/report/orders-sheet.ts'
import { riskSheet } from '../../../src/report/risk-sheet.ts'
import { sayShort } from '../../../src/report/say-because.ts'
import { sayDoubt, sayLever, saySure, sayWorth } from '../../../src/report/say-risk.ts'
import { demoTold } from './demo.ts'
import { cellsOf } from './evaluate.ts'

const told = demoTold()
const risk = told.results.risk!
const file = 'templates/board/project.yaml'

/** All words of a sheet. */
const words = (make: typeof riskSheet): readonly string[] =>
  cellsOf([make(told)]).flatMap(({ value }) => (value.type === 'text' ? [value.text] : []))

describe('the sheet that says how sure the date is', () => {
  it('shows the three dates of the samples, and the date of the plan', () => {
    const dates = riskSheet(told).blocks.find(({ id }) => id === 'dates')!
    const shown = dates.rows.flatMap(({ cells }) =>
      cells.flatMap(({ value }) => (value.type === 'instant' ? [value.instant] : [])),
    )
    expect(shown).toEqual([...risk.finishBy.map(({ finish }) => finish), told.results.schedule.finish])
  })

  it('names every thing that spreads the date, and how far the figures may be off', () => {
    const said = words(riskSheet).join('\n')
    expect(risk.spread.length).toBeGreaterThan(0)
    for (const { of, kind } of risk.spread) if (kind === 'lead') expect(said).toContain(of)
    expect(said).toContain(sayDoubt(risk.samples))
  })

  it('says that nothing was drawn where it was asked for without samples', () => {
    const sheet = riskSheet({ ...told, results: { ...told.results, risk: null } })
    expect(sheet.blocks).toHaveLength(1)
    expect(
      cellsOf([sheet]).some(({ value }) => value.type === 'text' && value.text.includes('without samples')),
    ).toBe(true)
  })
})

describe('how sure the date is', () => {
  it('stands on the orders: the last safe evening of each cart', () => {
    const said = cellsOf([ordersSheet(told)]).flatMap(({ value }) =>
      value.type === 'instant' ? [value.instant] : [],
    )
    expect(risk.safe.size).toBe(told.results.purchase.carts.length)
    for (const { order } of risk.safe.values()) if (order !== null) expect(said).toContain(order)
  })

  it('has the actions of the next session of each person, most days first, each with its reason', () => {
    const { blocks } = riskSheet(told)
    const people = [...new Set(risk.tonight.map(({ person }) => person))]
    expect(people.length).toBeGreaterThan(1)
    const said = words(riskSheet)
    for (const person of people) {
      const own = risk.tonight.filter((action) => action.person === person)
      expect(own.map(({ days }) => days)).toEqual(own.map(({ days }) => days).sort((a, b) => b - a))
      expect(said).toContain(`Worth doing in the next session of ${person}, ${sayShort(own[0]!.open)}`)
      for (const action of own) expect(said).toContain(sayWorth(told.results, action))
    }
    expect(blocks.filter(({ id }) => id.startsWith('tonight'))).toHaveLength(people.length)
  })

  it('says why an action matters: what it starts, frees and opens, and when it is planned', () => {
    const action = { ...risk.tonight[0]!, planned: false, share: 0.25 }
    const says = sayWorth(told.results, {
      ...action,
      why: [
        { kind: 'starts waiting', days: 1 },
        { kind: 'starts running', machine: 'printer', minutes: 294 },
        { kind: 'frees', machine: 'mill' },
        { kind: 'on chains', share: 0.5 },
        { kind: 'opens', tasks: 7 },
      ],
    })
    const planned = sayShort(told.results.schedule.tasks.get(action.task)!.start)
    expect(says).toBe(
      `planned for ${planned}; done now, the date comes nearer in 25 % of the samples; it starts 1 day of waiting for the vendor and the post; it starts 4 h 54 min of printer without anybody's hands; it frees the mill; it is on 50 % of the chains that set the date; 7 tasks come after it`,
    )
  })

  it('says where no lever was found, and what more search alone brings', () => {
    const none = { ...told, results: { ...told.results, risk: { ...risk, levers: [], searchAlone: 2 } } }
    const said = cellsOf([chainSheet(none)]).flatMap(({ value }) =>
      value.type === 'text' ? [value.text] : [],
    )
    expect(said.some((text) => text.startsWith('No gain of half a day was found'))).toBe(true)
    expect(said).toContain(
      'A longer search alone brings 2.0 days: ask for more effort. No change here is given credit for that.',
    )
  })

  it('stands where it is said what sets the date: what would bring it nearer', () => {
    expect(risk.levers.length).toBeGreaterThan(0)
    for (const lever of risk.levers) expect(words(chainSheet)).toContain(sayLever(lever))
  })

  it('stands in the summary with what is worth most tonight, and does not without samples', () => {
    const { report } = planReport(file, { samples: 20 })
    const sure = report!.risk!.finishBy.find(({ chance }) => chance === 0.8)!.finish!
    expect(summary(report!, null)).toContain(`80 % by ${sure.replace('T', ' ')}`)
    expect(summary(planReport(file, { samples: 0 }).report!, null)).not.toContain('samples')
    const [first] = report!.risk!.tonight
    const title = report!.tasks.find(({ id }) => id === first!.task)!.title
    expect(summary(report!, null)).toContain(
      `worth most in the next session of me, ${first!.from.replace('T', ' ')}:
    ${title}, ${first!.days.toFixed(1)} days on average: ${first!.says}`,
    )
  })

  it('is the same JSON told twice, and null without samples', () => {
    const told20 = () => JSON.stringify(planReport(file, { samples: 20 }).report!.risk)
    expect(told20()).toBe(told20())
    expect(planReport(file, { samples: 0 }).report!.risk).toBe(null)
  })

  it('gives each cart the safe evening of the samples in JSON', () => {
    const { report, results } = planReport(file, { samples: 20 })
    for (const { id, safe } of report!.carts) {
      const order = results!.risk!.safe.get(id)?.order ?? null
      expect(safe).toBe(order === null ? null : formatInstant(order))
    }
  })

  it('says plainly where fewer than 80 % of the samples are ever done', () => {
    const never: Risk = { ...risk, finishBy: [{ chance: 0.8, finish: null }] }
    expect(saySure(never)).toBe(`fewer than 80 % of ${risk.samples} samples are ever done`)
    expect(saySure(risk)).toBe(`80 % by ${sayShort(risk.finishBy[1]!.finish!)}`)
  })
})
