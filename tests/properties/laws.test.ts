import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parse, stringify } from 'yaml'
import { check, planReport } from '../../src/compile.ts'
import { reportJson } from '../../src/emit/json/report-json.ts'
import { writeWorkbook } from '../../src/emit/workbook/write-workbook.ts'
import { projects, quick, resultsOf, said } from './projects.ts'

type Entries = Record<string, unknown>

/** The text with one change to what it says. */
function changed(text: string, change: (tree: Entries) => void): string {
  const tree = parse(text) as Entries
  change(tree)
  return stringify(tree, { lineWidth: 0 })
}

/** The entries of one section, to be changed in place. */
const section = (tree: Entries, name: string): Record<string, Entries> =>
  (tree[name] ?? {}) as Record<string, Entries>

/** Every map of the tree, price breaks and forms too, written the other way round. */
function turned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turned)
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, inner]) => [key, turned(inner)]),
  )
}

const small = projects.slice(0, 5)

describe('money and amounts', () => {
  it('balance to the cent, and totals are the sums of their lines', () => {
    for (const text of projects) {
      const { money, purchase } = resultsOf(text)
      const sum = (kinds: string[]): number =>
        money.sources.filter(({ kind }) => kinds.includes(kind)).reduce((all, { known }) => all + known, 0)
      expect(money.cash.known).toBe(sum(['line', 'missing']))
      expect(money.fromOwnStock.known).toBe(sum(['own stock']))
      expect(money.hoursAtRate.known).toBe(sum(['hours']))
      expect(money.cash.known + money.fromOwnStock.known + money.hoursAtRate.known).toBe(
        money.charged.known + money.leftOver.known,
      )
      expect(purchase.carts.reduce((all, cart) => all + (cart.total ?? Number.NaN), 0)).toBe(money.cash.known)
      const devices = money.byDevice.map(({ known }) => known)
      expect(devices.reduce((all, one) => all + one, 0)).toBe(money.charged.known)
      expect(Math.max(...devices) - Math.min(...devices)).toBeLessThanOrEqual(money.charges.length)
    }
  })

  it('ask for as many of each part as a walk down the written structure counts', () => {
    for (const text of projects) {
      const { project } = resultsOf(text)
      const counted = countParts(parse(text) as Entries)
      for (const [part, demand] of project.demand)
        if (project.parts.get(part)!.role === 'device')
          expect(demand.needed, part).toBe(counted.get(part) ?? 0)
    }
  })

  it('double the hours at rate where every rate doubles', () => {
    for (const text of small) {
      const twice = changed(text, (tree) => {
        for (const machine of Object.values(section(tree, 'machines')))
          if (machine.rate) machine.rate = `${2 * Number.parseFloat(String(machine.rate))} EUR/h`
      })
      const [one, two] = [resultsOf(text).money, resultsOf(twice).money]
      const hours = one.sources.filter(({ kind }) => kind === 'hours').length
      // Each line is rounded on its own: twice a rounded line is off by at most a cent.
      expect(Math.abs(two.hoursAtRate.known - 2 * one.hoursAtRate.known)).toBeLessThanOrEqual(hours)
      expect(one.hoursAtRate.known).toBeGreaterThan(0)
    }
  })

  it('buy nothing where everything is here', () => {
    for (const text of small) {
      const here = changed(text, (tree) => {
        for (const part of Object.values(section(tree, 'parts'))) {
          Object.assign(part, { have: 1000, worth: 1, spares: 0 })
        }
      })
      const { purchase, network } = resultsOf(here)
      expect(purchase.carts.map(({ id }) => id)).toEqual([])
      expect(network.tasks.filter(({ kind }) => kind === 'order')).toEqual([])
    }
  })

  it('grow by the price of a spare bought singly', () => {
    const text = `
device: {name: Two springs, qty: 2, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {daily: "08:00-22:00"}}}
vendors: {shop: {transit: 1 wd}}
parts: {spring: {kind: bought, qty: 3, spares: 0, offers: [{vendor: shop, price: 1.37, lead: 1 wd}]}}
`
    const spare = text.replace('spares: 0', 'spares: 4')
    // 6 x 1.37 = 8.22; 10 x 1.37 = 13.70.
    expect(resultsOf(text).money.cash.known).toBe(822)
    expect(resultsOf(spare).money.cash.known).toBe(1370)
    expect(resultsOf(spare).money.leftOver.known).toBe(548)
  })
})

/** Pieces per project by following puts, fasteners and board places. Shares nothing with the planner. */
function countParts(tree: Entries): ReadonlyMap<string, number> {
  const parts = section(tree, 'parts')
  const counts = new Map<string, number>()
  const take = (written: unknown, times: number): void => {
    const match = /^(.*?)(?: x(\d+))?$/.exec(String(written))!
    const [, name, count] = match
    if (!parts[name!]) return
    const pieces = times * Number(count ?? 1)
    counts.set(name!, (counts.get(name!) ?? 0) + pieces)
    inside(name!, pieces)
  }
  const steps = (list: readonly Entries[], times: number): void => {
    for (const step of list) {
      if (step.put) take(step.put, times)
      for (const one of [step.with ?? []].flat()) take(one, times)
    }
  }
  // A body that things go into or onto and that nothing puts is the ground: one for each.
  const ground = (plan: Entries, times: number): void => {
    const list = plan.steps as readonly Entries[]
    const put = new Set(list.map((step) => String(step.put ?? '').replace(/ x\d+$/, '')))
    const bodies = new Set(list.flatMap((step) => [step.in, step.on].filter(Boolean).map(String)))
    for (const body of bodies) if (!put.has(body)) take(body, times)
  }
  const inside = (name: string, pieces: number): void => {
    // What is here already is taken first, and nothing goes into it.
    const part = parts[name]!
    if (part.kind === 'board') for (const place of part.places as unknown[]) take(place, pieces)
    if (part.kind !== 'assembly') return
    ground(part, pieces)
    steps(part.steps as readonly Entries[], pieces)
  }
  const device = tree.assembly as Entries
  const qty = Number((tree.device as Entries).qty)
  ground(device, qty)
  steps(device.steps as readonly Entries[], qty)
  return counts
}

/** A step without the lines of its statements, which follow the file as written. */
function unplaced<T extends { readonly held: readonly object[]; readonly holds: readonly object[] }>(
  step: T,
) {
  const said = (rules: readonly object[]) => rules.map((rule) => ({ ...rule, line: null }))
  return { ...step, held: said(step.held), holds: said(step.holds) }
}

describe('the same project', () => {
  it('gives the same results whatever the order of its entries', () => {
    for (const text of small) {
      const other = stringify(turned(parse(text)), { lineWidth: 0 })
      const [a, b] = [text, other].map((one) => planReport('-', { ...quick, stdin: one }))
      expect(b!.diagnostics.map(said).sort()).toEqual(a!.diagnostics.map(said).sort())
      const { findings: _, tables: __, ...before } = a!.report!
      const { findings: ___, tables: ____, ...after } = b!.report!
      // The lists of parts and of how each is made follow the file as written; the order within a part is its route's.
      const inOrder = (x: string | null, y: string | null): number =>
        (x ?? '') < (y ?? '') ? -1 : x === y ? 0 : 1
      const byName = (report: typeof before) => ({
        ...report,
        parts: [...report.parts].sort((x, y) => inOrder(x.name, y.name)),
        making: [...report.making].sort((x, y) => inOrder(x.part, y.part)),
        assembly: report.assembly.map((one) => ({ ...one, steps: one.steps.map(unplaced) })),
      })
      expect(byName(after)).toEqual(byName(before))
    }
  })

  it('gives the same bytes of report and workbook twice', async () => {
    for (const text of small.slice(0, 2)) {
      const once = async () => {
        const { report, workbook } = planReport('-', { ...quick, stdin: text })
        const bytes = workbook!.sheets.length > 0 ? await writeWorkbook(workbook!) : new Uint8Array()
        return [reportJson(report!), Buffer.from(bytes).toString('base64')]
      }
      expect(await once()).toEqual(await once())
    }
  })
})

describe('the bound that drops capacities', () => {
  const bound = (text: string): number => resultsOf(text, { effort: 1 }).schedule.lowerBound

  it('is never later for longer hours', () => {
    for (const text of small) {
      const longer = changed(text, (tree) => {
        section(tree, 'people').ana!.hours = {
          'mon-thu': '18:30-22:30',
          sat: '10:00-16:00',
          sun: '10:00-16:00',
        }
      })
      expect(bound(longer)).toBeLessThanOrEqual(bound(text))
    }
  })

  it('is the same for a higher capacity of any machine', () => {
    for (const text of small) {
      const higher = changed(text, (tree) => {
        for (const machine of Object.values(section(tree, 'machines'))) machine.capacity = 9
      })
      expect(bound(higher)).toBe(bound(text))
    }
  })

  it('is never earlier for a later start', () => {
    for (const text of small) {
      const from = resultsOf(text, { effort: 1 }).project.device.start
      const bounds = [0, 1, 3, 7].map(
        (days) => resultsOf(text, { effort: 1, date: from + days }).schedule.lowerBound,
      )
      expect(bounds).toEqual([...bounds].sort((a, b) => a - b))
    }
  })
})

describe('checking', () => {
  const odd = '|~|-1|1e99|[|{a: b}|"|0 min|2026-02-30|&a|*a|é½|5 kg|NaN|!!int x|3..2..1 h|0|1e-9 h'.split('|')
  const edit = fc.record({
    project: fc.nat({ max: small.length - 1 }),
    what: fc.constantFrom('delete', 'double', 'swap', 'scalar', 'number', 'indent'),
    at: fc.nat({ max: 9999 }),
    to: fc.nat({ max: 9999 }),
    value: fc.constantFrom(...odd),
  })

  it('never throws, whatever becomes of the text', () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 3 }), (edits) => {
        const lines = small[edits[0]!.project]!.split('\n')
        for (const { what, at, to, value } of edits) {
          const [i, j] = [at % lines.length, to % lines.length]
          if (what === 'delete') lines.splice(i, 1)
          if (what === 'double') lines.splice(j, 0, lines[i]!)
          if (what === 'swap') [lines[i], lines[j]] = [lines[j]!, lines[i]!]
          if (what === 'scalar') lines[i] = lines[i]!.replace(/: [^:]*$/, `: ${value}`)
          if (what === 'number') lines[i] = lines[i]!.replace(/\d+/, value)
          if (what === 'indent') lines[i] = ` ${lines[i]}`
        }
        const text = lines.join('\n')
        const { diagnostics } = check('-', { stdin: text })
        for (const { at: place } of diagnostics) expect(place.line).toBeGreaterThanOrEqual(1)
      }),
      { seed: 20260302, numRuns: 250 },
    )
  })
})
