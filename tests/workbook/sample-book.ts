import { parseDay } from '../../src/base/clock.ts'
import type { Cell, Expression, Format, Mark, Role, Row, Sheet, Workbook } from '../../src/report/cells.ts'

const eur: Format = { as: 'money', currency: 'EUR', digits: 2 }
const unitPrice: Format = { as: 'price', currency: 'EUR', digits: 4 }
const start = parseDay('2026-02-02')!

export const text = (value: string, more: Partial<Cell> = {}): Cell => ({
  value: { type: 'text', text: value },
  ...more,
})
export const number = (value: number, format: Format, more: Partial<Cell> = {}): Cell => ({
  value: { type: 'number', value, format },
  ...more,
})
export const ref = (name: string): Expression => ({ op: 'ref', name })
const constant = (value: number): Expression => ({ op: 'number', value })
const words = (value: string): Expression => ({ op: 'text', value })
/** If, then and else. */
export function choose(when: Expression, yes: Expression, otherwise: Expression): Expression {
  return { op: 'choose', when, yes, no: otherwise }
}
const empty: Cell = { value: { type: 'empty' } }
const count: Format = { as: 'count' }

function round(value: number, digits: number): number {
  return Number(
    (Math.sign(value) * Number(`${Math.round(Number(`${Math.abs(value)}e${digits}`))}e-${digits}`)).toFixed(
      digits,
    ),
  )
}

const roles: readonly Role[] = [
  'title',
  'subtitle',
  'heading',
  'head',
  'body',
  'label',
  'total',
  'note',
  'input',
  'tick',
  'blank',
  'error',
  'warning',
  'caution',
  'strong',
  'figure',
]

const overview: Sheet = {
  name: 'Overview',
  widths: [18, 22, 16, 44],
  orientation: 'portrait',
  freeze: null,
  guarded: false,
  group: 'overview',
  foot: 'Cuvette stirrer, revision B & spares, 2026-02-02',
  blocks: [
    {
      kind: 'rows',
      id: 'top',
      rows: [
        { cells: [text('Cuvette stirrer', { role: 'title' })] },
        { cells: [text('Revision B, two devices, plan of 2026-02-02', { role: 'subtitle' })] },
        {
          cells: [
            text(
              'The plan finishes on 2026-03-18, two days before the wanted date. No earlier finish is possible with these people and machines; the anodised base in the post sets the date, and ordering the bearings after Thursday moves it.',
              { span: 4 },
            ),
          ],
        },
      ],
    },
    {
      kind: 'rows',
      id: 'figures',
      rows: [
        { cells: [text('In figures', { role: 'heading', span: 4 })] },
        {
          cells: [
            text('Cash', { role: 'label' }),
            number(82.92, eur, { role: 'figure', live: ref('money/total'), name: 'overview/cash' }),
            text('see the lines', { link: 'money/total' }),
            text('Whole packs, minimum orders and freight, before anything is left over.', { role: 'note' }),
          ],
        },
        {
          cells: [
            text('Start', { role: 'label' }),
            { value: { type: 'day', day: start }, name: 'overview/start' },
            number(start, { as: 'day' }, { live: ref('overview/start') }),
            {
              value: { type: 'instant', instant: start * 1440 + 19 * 60 + 30 },
              role: 'input',
              accepts: { kind: 'any' },
            },
          ],
        },
        {
          cells: [
            text('Finish', { role: 'label' }),
            {
              value: { type: 'day', day: start + 44 },
              role: 'strong',
              name: 'overview/finish',
              live: { op: '+', left: ref('overview/start'), right: constant(44) },
            },
            {
              value: { type: 'instant', instant: (start + 44) * 1440 + 20 * 60 + 30 },
              live: { op: '+', left: ref('overview/finish'), right: constant(20.5 / 24) },
            },
            text('Vendor page', { url: 'https://example.org/bearings?a=1&b=2' }),
          ],
        },
        {
          cells: [
            text('Verdict', { role: 'label' }),
            text('within the limit of 420 EUR', {
              live: choose(
                {
                  op: 'and',
                  of: [
                    { op: '<=', left: ref('money/total'), right: constant(420) },
                    { op: 'or', of: [{ op: '>', left: ref('money/total'), right: constant(0) }] },
                  ],
                },
                { op: 'join', of: [words('within the limit of '), constant(420), words(' EUR')] },
                words('over the "limit"'),
              ),
              span: 2,
            }),
            { value: { type: 'unknown', text: 'unknown: freight of the anodiser' } },
          ],
        },
      ],
    },
    {
      kind: 'rows',
      id: 'roles',
      rows: roles.map((role) => ({
        cells: [
          text(role, { role: 'label' }),
          text(role === 'tick' ? '☐' : `as ${role}`, { role }),
          empty,
          text('Beside it', { indent: 1 }),
        ],
      })),
    },
  ],
}

interface Line {
  readonly id: string
  readonly what: string
  readonly qty: number
  readonly price: number
}

const lines: readonly Line[] = [
  {
    id: 'bearing',
    what: 'Deep groove ball bearing, 3 x 8 x 4 mm, shielded both sides',
    qty: 4,
    price: 2.385,
  },
  { id: 'magnet', what: 'Disc magnet, diametral', qty: 10, price: 0.62 },
  { id: 'screw', what: 'Screw M2 x 4, hexagon socket', qty: 50, price: 0.0415 },
  {
    id: 'board',
    what: 'Bridge board, bare, two layers, with a rather long line of words that needs three lines to be read whole',
    qty: 5,
    price: 9.1,
  },
  { id: 'base', what: 'Anodising of the base', qty: 2, price: 9.8 },
]

function moneyRow({ id, what, qty, price }: Line): Row {
  const product: Expression = { op: '*', left: ref(`qty/${id}`), right: ref(`price/${id}`) }
  return {
    cells: [
      text(id),
      text(what),
      number(qty, count, { name: `qty/${id}`, accepts: { kind: 'number', least: 0 } }),
      number(price, unitPrice, { name: `price/${id}`, accepts: { kind: 'number', least: 0 } }),
      number(round(qty * price, 2), eur, {
        name: `line/${id}`,
        live: { op: 'round', of: product, digits: 2 },
      }),
      text('open', { accepts: { kind: 'list', values: ['open', 'ordered & <paid>', 'here'] } }),
      text('☐', { role: 'tick', accepts: { kind: 'list', values: ['☐', '☑'] } }),
    ],
  }
}

const lineTotal =
  lines.reduce((sum, { qty, price }) => sum + Math.round(round(qty * price, 2) * 100), 0) / 100

const money: Sheet = {
  name: 'Money',
  widths: [11, 34, 7, 13, 13, 10, 7],
  orientation: 'portrait',
  freeze: { block: 'lines', columns: 1 },
  guarded: true,
  group: 'money',
  foot: '2026-02-02',
  blocks: [
    { kind: 'rows', id: 'top', rows: [{ cells: [text('What it costs', { role: 'title' })] }] },
    {
      kind: 'table',
      id: 'lines',
      filter: true,
      columns: [
        { head: 'Part', width: 11 },
        { head: 'What', width: 34 },
        { head: 'Qty', width: 7, align: 'right' },
        { head: 'Unit price', width: 13, align: 'right' },
        { head: 'Line', width: 13, align: 'right' },
        { head: 'State', width: 10 },
        { head: 'Paid', width: 7, align: 'center' },
      ],
      rows: lines.map(moneyRow),
      totals: [
        {
          cells: [
            text('Total', { span: 4 }),
            number(lineTotal, eur, {
              name: 'money/total',
              live: { op: 'sum', names: lines.map(({ id }) => `line/${id}`) },
            }),
          ],
        },
      ],
    },
    {
      kind: 'table',
      id: 'shares',
      filter: false,
      columns: [
        { head: 'Share', width: 11 },
        { head: 'Of what', width: 34 },
        { head: 'Part', width: 7, align: 'right' },
        { head: 'Largest', width: 13, align: 'right' },
        { head: 'Smallest', width: 13, align: 'right' },
      ],
      rows: [
        {
          cells: [
            text('board'),
            text('Share of the board in the whole'),
            number(
              45.5 / lineTotal,
              { as: 'percent', digits: 1 },
              {
                live: { op: '/', left: ref('line/board'), right: ref('money/total') },
              },
            ),
            number(45.5, eur, { live: { op: 'max', of: lines.map(({ id }) => ref(`line/${id}`)) } }),
            number(2.08, eur, { live: { op: 'min', of: lines.map(({ id }) => ref(`line/${id}`)) } }),
          ],
        },
        {
          cells: [
            text('rest'),
            text('All but the board, less a tenth'),
            number(
              33.678,
              { as: 'number', digits: 1, unit: 'EUR' },
              {
                live: {
                  op: '-',
                  left: { op: '-', left: ref('money/total'), right: ref('line/board') },
                  right: {
                    op: '/',
                    left: { op: '-', left: ref('money/total'), right: ref('line/board') },
                    right: constant(10),
                  },
                },
              },
            ),
          ],
        },
      ],
      totals: [],
    },
  ],
}

const structure: Sheet = {
  name: 'Structure',
  widths: [34, 10, 12, 12, 12],
  orientation: 'portrait',
  freeze: { block: 'tree', columns: 0 },
  guarded: false,
  group: 'making',
  foot: 'Structure',
  blocks: [
    {
      kind: 'table',
      id: 'tree',
      filter: false,
      columns: [
        { head: 'Part', width: 34 },
        { head: 'Per device', width: 10, align: 'right' },
        { head: 'Time', width: 12, align: 'right' },
        { head: 'Machine time', width: 12, align: 'right' },
        { head: 'Bore', width: 12, align: 'right' },
      ],
      rows: Array.from({ length: 60 }, (_, at) => ({
        cells: [
          text(at % 6 === 0 ? `Assembly ${at / 6 + 1}` : `Part ${at}`, {
            indent: at % 6 === 0 ? 0 : at % 3 === 0 ? 2 : 1,
          }),
          number(1 + (at % 3), count),
          number(15 * (at + 1), { as: 'minutes' }),
          number(0.25 * (at + 1), { as: 'hours' }),
          number(3 + at / 100, { as: 'number', digits: 2, unit: 'mm' }),
        ],
        level: at % 6 === 0 ? 0 : at % 3 === 0 ? 2 : 1,
        keep: at % 6 === 0,
        pageBreak: at === 36,
      })),
      totals: [],
    },
  ],
}

const marks: readonly Mark[] = ['work', 'critical', 'unattended', 'away', 'held', 'closed', 'wanted']

const chart: Sheet = {
  name: 'Chart',
  widths: [22, 14, ...Array.from({ length: 40 }, () => 2.4)],
  orientation: 'landscape',
  freeze: { block: 'chart', columns: 2 },
  guarded: true,
  group: 'time',
  foot: 'Chart',
  blocks: [
    {
      kind: 'rows',
      id: 'key',
      rows: [
        { cells: [text('When it is done', { role: 'title' })] },
        {
          cells: [
            text('Marks, each with its letter:', { role: 'note', span: 2 }),
            ...marks.flatMap((mark): Cell[] => [{ ...empty, mark }, text(mark, { span: 4, indent: 1 })]),
          ],
        },
      ],
    },
    {
      kind: 'table',
      id: 'chart',
      filter: false,
      columns: [
        { head: 'Task', width: 22 },
        { head: 'From', width: 14 },
        ...Array.from({ length: 40 }, (_, at) => ({
          head: String((at % 28) + 1),
          width: 2.4,
          align: 'center' as const,
        })),
      ],
      rows: marks.map((mark, at) => ({
        cells: [
          text(`Task of ${mark}`),
          { value: { type: 'day' as const, day: start + at } },
          ...Array.from({ length: 40 }, (_, day): Cell => {
            if (day >= at * 4 && day < at * 4 + 8) return { ...empty, mark }
            if (day % 7 > 4) return { ...empty, mark: 'closed' }
            return day === 36 ? { ...empty, mark: 'wanted' } : empty
          }),
        ],
      })),
      totals: [],
    },
  ],
}

const steps: Sheet = {
  name: 'Assembly',
  widths: [5, 40, 16, 16, 12, 8],
  orientation: 'portrait',
  freeze: { block: 'steps', columns: 0 },
  guarded: false,
  group: 'assembly',
  foot: 'Assembly',
  blocks: [
    {
      kind: 'table',
      id: 'steps',
      filter: false,
      columns: [
        { head: '#', width: 5, align: 'right' },
        { head: 'Step', width: 40 },
        { head: 'Tool', width: 16 },
        { head: 'Torque', width: 16 },
        { head: 'Measured', width: 12 },
        { head: 'Done', width: 8, align: 'center' },
      ],
      rows: Array.from({ length: 24 }, (_, at) => ({
        keep: at % 5 === 3,
        cells:
          at % 5 === 3
            ? [
                text(''),
                text(
                  'CAUTION: magnets pinch and break; keep them apart, wear eye protection, and follow the data sheet.',
                  { role: 'caution', span: 5 },
                ),
              ]
            : [
                number(at + 1, count),
                text(
                  'Press both bearings into the base from the top, shoulder up, until they seat; the shaft turns freely by hand.',
                ),
                text('arbor press'),
                text('0.15 N m'),
                {
                  value: { type: 'empty' as const },
                  role: 'blank' as const,
                  accepts: { kind: 'any' as const },
                },
                text('☐', { role: 'tick', accepts: { kind: 'list', values: ['☐', '☑'] } }),
              ],
      })),
      totals: [],
    },
  ],
}

const notes: Sheet = {
  name: 'Notes',
  widths: [20, 70],
  orientation: 'portrait',
  freeze: null,
  guarded: false,
  group: 'notes',
  foot: '',
  blocks: [
    {
      kind: 'rows',
      id: 'choices',
      rows: [
        {
          cells: [
            text('Which vendor', { role: 'label' }),
            text('Miller, Sons & "Co"', {
              accepts: { kind: 'list', values: ['Miller, Sons & "Co"', 'board house'] },
            }),
          ],
        },
        { cells: [text('Line one\nline two\nline three'), text('äöü € µ ± Ω 漢字 ½ — “quoted”')] },
      ],
    },
  ],
}

/** A book that uses every feature of finished cells: formats, roles, spans, live cells, inputs, links, marks, folds. */
export const sampleBook: Workbook = {
  title: 'Cuvette stirrer <B> & spares',
  subject: 'Plan of 2026-02-02',
  day: start,
  fingerprint: 'f00d-2026',
  sheets: [overview, money, structure, chart, steps, notes],
}

/** A book of one sheet with the rows given, for a single question. */
export function bookOf(rows: readonly Row[], more: Partial<Sheet> = {}): Workbook {
  const sheet: Sheet = {
    name: 'Only',
    widths: [20, 20, 20],
    orientation: 'portrait',
    freeze: null,
    guarded: false,
    group: 'notes',
    foot: '',
    blocks: [{ kind: 'rows', id: 'rows', rows }],
    ...more,
  }
  return { title: 'One', subject: '', day: start, fingerprint: 'one', sheets: [sheet] }
}
