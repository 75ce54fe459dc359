import type { ChainResult } from '../model/chains.ts'
import type { Block, Column, Row } from './cells.ts'
import { blank, count, number, text } from './make-cells.ts'

/** As wide as the columns of the inspection record above. */
const columns: readonly Column[] = [
  { head: 'No.', width: 6, align: 'right' },
  { head: 'Chain', width: 18 },
  { head: 'Must hold', width: 18 },
  { head: 'Adds up', width: 32 },
  { head: 'Least', width: 9, align: 'right' },
  { head: 'Most', width: 9, align: 'right' },
  { head: 'Unit', width: 7 },
  { head: 'By the odds', width: 22 },
  { head: 'Outside', width: 9 },
  { head: 'Spreads most', width: 13 },
  { head: 'Holds', width: 9, align: 'center' },
]

/** Dimension chains with what they come to at worst and by the odds; none where the project has none. */
export function chainBlocks(chains: readonly ChainResult[]): readonly Block[] {
  if (chains.length === 0) return []
  const wide = columns.length
  const says =
    'Least and most are with every part at its worst limit at once; by the odds is the root sum of squares, 99.7 in 100 where sizes scatter about their middle. Measure the parts of a chain that does not always hold before they are put together.'
  return [
    {
      kind: 'rows',
      id: 'chains/head',
      rows: [
        { cells: [blank({ span: wide })] },
        { cells: [text('Dimension chains', { role: 'heading', span: wide })], keep: true },
        { cells: [text(says, { role: 'note', span: wide })], keep: true },
      ],
    },
    { kind: 'table', id: 'chains', columns, rows: chains.map(chainRow), totals: [], filter: false },
  ]
}

const mm = (value: number): string => `${Number(value.toFixed(4)) + 0}`
const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`

function chainRow(chain: ChainResult, at: number): Row {
  const { worst, statistical, links } = chain
  const widest = links.reduce((most, link) => (link.share > most.share ? link : most), links[0]!)
  const digits = Math.max(...worst.map((value) => (mm(value).split('.')[1] ?? '').length))
  return {
    cells: [
      count(at + 1),
      text(chain.chain),
      text(chain.must),
      text(links.map(sayLink).join(' ')),
      number(worst[0], digits, null),
      number(worst[1], digits, null),
      text('mm'),
      text(`${mm(statistical[0])} to ${mm(statistical[1])} mm`),
      text(percent(chain.outside)),
      text(`${widest.of} ${percent(widest.share)}`),
      text(chain.holds, { role: 'strong' }),
    ],
  }
}

/** One dimension with its sign: `- 2 x bearing.width`. */
function sayLink({ of, factor }: ChainResult['links'][number], at: number): string {
  const times = Math.abs(factor) === 1 ? '' : `${Math.abs(factor)} x `
  const sign = factor < 0 ? '- ' : at === 0 ? '' : '+ '
  return `${sign}${times}${of}`
}
