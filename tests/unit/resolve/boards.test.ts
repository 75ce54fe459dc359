import { describe, expect, it } from 'vitest'
import { plan } from '../../../src/compile.ts'
import type { BoardWay, Project } from '../../../src/model/project.ts'
import { memoryDisk } from '../source/memory-disk.ts'
import { device, people, resolveText } from './resolve-text.ts'

const head = `${device}${people}vendors: {shop: {transit: 2 wd}}\n`
const offers = 'offers: [{vendor: shop, price: 2.60, lead: 5 wd}]'
const board = (lines: readonly string[], more = ''): string =>
  `${head}parts:\n  bridge:\n    kind: board\n    qty: 1\n${lines.map((line) => `    ${line}\n`).join('')}${more}`
const wayOf = ({ parts }: Project): BoardWay => {
  const way = parts.get('bridge')?.way
  if (way?.kind !== 'board') throw new Error('not a board')
  return way
}
const r10k = '  r10k: {kind: bought, value: 10k, package: "0805", have: 400}\n'
const bought = (lines: string): string => `  r10k: {kind: bought, value: 10k, package: "0805", ${lines}}\n`

describe('the placements of a board', () => {
  const csv = 'reference,value,package\nR1,10k,0805\n"R2, R5-R7",10 kohm,0805\n'

  it('count the parts that go on it', () => {
    const { project, diagnostics } = resolveText(
      board(['placements: b.csv', offers, 'solder: {time: 20 min}'], r10k),
      { 'b.csv': csv },
    )
    expect(wayOf(project).places.map(({ part, count }) => [part, count])).toEqual([['r10k', 5]])
    expect(project.demand.get('r10k')?.needed).toBe(5)
    expect(diagnostics).toEqual([])
  })

  it('are read by the heads that the project names, with the sign that parts the first line', () => {
    const other = 'Ref;Val;Case;House\nR1;10k;0805;r10k\n'
    const placements = 'placements: {file: b.csv, reference: Ref, value: Val, package: Case, part: House}'
    const { project, diagnostics } = resolveText(
      board([placements, offers, 'solder: {time: 20 min}'], '  r10k: {kind: bought, have: 400}\n'),
      { 'b.csv': other },
    )
    expect(wayOf(project).places.map(({ part, count }) => [part, count])).toEqual([['r10k', 1]])
    expect(diagnostics).toEqual([])
  })

  it('leave to `places` what they do not list', () => {
    const { project } = resolveText(
      board(
        ['placements: b.csv', 'places: [header x2]', offers, 'solder: {time: 20 min}'],
        `${r10k}  header: {kind: bought, have: 4}\n`,
      ),
      { 'b.csv': csv },
    )
    expect(wayOf(project).places.map(({ part, count }) => [part, count])).toEqual([
      ['r10k', 5],
      ['header', 2],
    ])
  })

  it('name a part that is not there as any other place does', () => {
    const { diagnostics } = resolveText(
      board(['placements: b.csv', offers, 'solder: {time: 20 min}'], r10k),
      {
        'b.csv': 'reference,value,package,part\nR1,10k,0805,r10\n',
      },
    )
    expect(diagnostics.map(({ code, at }) => [code, at.file, at.line, at.column])).toEqual([
      ['REF01', 'b.csv', 2, 13],
    ])
  })
})

describe('what soldering loses', () => {
  const csv = { 'b.csv': 'reference,value,package\nR1-R50,10k,0805\n' }
  const needed = (lines: string): number | undefined =>
    resolveText(
      board(['placements: b.csv', offers, 'solder: {time: 20 min}'], bought(lines)),
      csv,
    ).project.demand.get('r10k')?.needed

  it('is bought on top, as a share rounded up or as a count', () => {
    expect(needed('have: 400')).toBe(50)
    expect(needed('have: 400, attrition: 5 %')).toBe(53)
    expect(needed('have: 400, attrition: 4')).toBe(54)
  })
})

describe('soldering without a stated time', () => {
  it('is timed by packages and joints', () => {
    // Two chips at 30..45..60 s, four pins at 10..15..20 s, and 10..20..30 % for looking.
    const { project } = resolveText(
      board(['placements: b.csv', offers, 'solder: {}'], `${r10k}  header: {kind: bought, have: 4}\n`),
      { 'b.csv': 'reference,value,package,part\n"R1,R2",10k,0805,\nJ1,,1x04,header\n' },
    )
    const solder = wayOf(project).solder!
    expect(solder.timeFrom).toBe('computed')
    const [low, likely, high] = [110, 180, 260] as const
    expect(solder.time?.low.valueOf()).toBe(low)
    expect(solder.time?.likely.valueOf()).toBe(likely)
    expect(solder.time?.high.valueOf()).toBe(high)
    expect(solder.worked[0]).toBe('8 joints on a board')
  })

  it('takes packages of parts that `places` lists', () => {
    const { project } = resolveText(board(['places: [r10k x2]', offers, 'solder: {}'], r10k))
    expect(wayOf(project).solder?.time?.likely.valueOf()).toBe(108)
  })

  it('is an error where no package is known', () => {
    const { diagnostics } = resolveText(
      board(['places: [part]', offers, 'solder: {}'], '  part: {kind: bought, have: 4}\n'),
    )
    expect(diagnostics.filter(({ level }) => level === 'error').map(({ code }) => code)).toEqual(['QTY09'])
  })
})

describe('a panel of boards', () => {
  const lines = [
    'outline: 22 x 14 mm',
    'panel: {size: 100 x 80 mm, rails: 5 mm}',
    'offers: [{vendor: shop, per: panel, price: {1: 12.50, 5: 10}, lead: 5 wd}]',
  ]

  it('holds what rails and router leave, and is sold whole', () => {
    // Across (100 - 10 - 4 + 2) / 24 = 3, deep (80 + 2) / 16 = 5.
    const way = wayOf(resolveText(board(lines)).project)
    expect(way.panel?.boards).toBe(15)
    expect(way.offers[0]).toMatchObject({ pack: 15, moq: 15, note: 'sold by the panel of 15' })
    expect(way.offers[0]?.prices?.map(({ from, price }) => [from, price.mul(15).valueOf()])).toEqual([
      [15, 12.5],
      [75, 10],
    ])
  })

  it('costs its price once, whatever of it is used', () => {
    const disk = memoryDisk({ '/bench/project.yaml': board(lines) })
    const { results } = plan('project.yaml', { folder: '/bench', root: '.', read: disk, effort: 1 })
    const [line] = results!.purchase.carts[0]!.lines
    expect([line!.needed, line!.quantity, line!.landed]).toEqual([1, 15, 1250])
  })

  it('with scored lines needs no room for a router', () => {
    const scored = lines.map((line) => line.replace('rails: 5 mm', 'score: yes'))
    // 100 / 22 = 4, 80 / 14 = 5; turned 100 / 14 = 7, 80 / 22 = 3: 21 is more.
    expect(wayOf(resolveText(board(scored)).project).panel?.boards).toBe(21)
  })
})

describe('prices by area', () => {
  it('are those of the smallest area that holds the board', () => {
    const byArea = (outline: string) =>
      wayOf(
        resolveText(
          board([
            `outline: ${outline}`,
            'offers: [{vendor: shop, area price: {100 cm2: 4.10, 50 cm2: {5: 2.60, 10: 1.90}}, moq: 5, lead: 5 wd}]',
          ]),
        ).project,
      ).offers[0]?.prices?.map(({ from, price }) => [from, price.valueOf()])
    expect(byArea('100 x 50 mm')).toEqual([
      [5, 2.6],
      [10, 1.9],
    ])
    expect(byArea('101 x 50 mm')).toEqual([[1, 4.1]])
  })
})

describe('a trace with a current', () => {
  const codes = (rise: string): readonly string[] =>
    resolveText(board([offers, `currents: [{amps: 2 A, width: 0.6 mm, rise: ${rise}}]`])).diagnostics.map(
      ({ code }) => code,
    )

  it('is told of where it is too narrow, the rise in kelvin or in degrees', () => {
    // IPC-2221 for 2 A outside, 1 oz: 0.78 mm at 10 K, 0.51 mm at 20 K (manufacturers' design pages).
    expect(codes('10 K')).toEqual(['PRC51'])
    expect(codes('20 K')).toEqual([])
    expect(codes('10 °C')).toEqual(['PRC51'])
    expect(codes('20 °C')).toEqual([])
  })
})
