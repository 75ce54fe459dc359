import { dayOf } from '../base/clock.ts'
import type { Money } from '../model/money.ts'
import type { Demand } from '../model/project.ts'
import type { Results } from '../model/results.ts'
import type { Block, Cell, CellName, Column, Row } from './cells.ts'
import { sumOf } from './expressions.ts'
import { footOf } from './foot-of.ts'
import { blank, count, day, line, money, ref, rounded, text } from './make-cells.ts'
import { causeCell } from './money-names.ts'
import { type PlaceCost, placeCosts } from './parts-cost.ts'
import { type PartGroup, type PartPlace, partGroups } from './parts-tree.ts'
import { kindWords, sayMaterial, sayRemark, saySource, sayTechnical } from './say-part.ts'
import type { SheetMaker } from './sheets.ts'

const columns: readonly Column[] = [
  { head: 'No.', width: 4, align: 'right' },
  { head: 'Name', width: 22 },
  { head: 'Part number', width: 10 },
  { head: 'Rev.', width: 4 },
  { head: 'Technical data', width: 24 },
  { head: 'Kind', width: 9 },
  { head: 'Material, stock', width: 16 },
  { head: 'Source', width: 14 },
  { head: 'In parent', width: 6, align: 'right' },
  { head: 'In device', width: 6, align: 'right' },
  { head: 'Needed', width: 6, align: 'right' },
  { head: 'Spares', width: 6, align: 'right' },
  { head: 'From stock', width: 5, align: 'right' },
  { head: 'To get', width: 5, align: 'right' },
  { head: 'Unit cost', width: 10, align: 'right' },
  { head: 'Cost', width: 10, align: 'right' },
  { head: 'Ready on', width: 13 },
  { head: 'Remark', width: 15 },
]

const wide = columns.length
const costColumn = 15

/** The parts list: what goes into what, how often, where it comes from and what it costs, each place a row. */
export const partsSheet: SheetMaker = ({ results }) => {
  const groups = partGroups(results.project)
  const costs = placeCosts(
    groups.flatMap(({ places }) => places),
    results.money,
  )
  return {
    name: 'Parts',
    widths: columns.map(({ width }) => width),
    blocks: [top(results), list(results, groups, costs)],
    orientation: 'landscape',
    freeze: { block: 'parts', columns: 2 },
    guarded: true,
    group: 'making',
    foot: footOf(results.project.device),
  }
}

function top({ project }: Results): Block {
  const { name, revision, qty } = project.device
  const rev = revision === null ? '' : ` revision ${revision}`
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      line('Parts', wide, 'title'),
      line(
        `${name}${rev}: parts of ${qty === 1 ? 'one device' : `${qty} devices`}, pieces throughout`,
        wide,
        'subtitle',
      ),
      line(
        'A part that goes into several places has one number and a row at each; needed, spares, from stock and to get stand at its first row, for the whole project. Cost is what these devices are charged for the part itself, without what is built into it; unit cost is that for each piece in the devices. Spares kept and rests are in Money, left over.',
        wide,
        'note',
      ),
    ],
  }
}

type Costs = ReadonlyMap<PartPlace, PlaceCost>

function list(results: Results, groups: readonly PartGroup[], costs: Costs): Block {
  return {
    kind: 'table',
    id: 'parts',
    columns,
    rows: groups.flatMap((group) => [
      groupRow(group, results),
      ...group.places.map((place) => placeRow(place, group, results, costs.get(place)!)),
    ]),
    totals: totals(results, groups, costs),
    filter: false,
  }
}

function groupRow({ kind }: PartGroup, { project }: Results): Row {
  const says = {
    device: `${project.device.name}`,
    fixtures: 'Fixtures, for the project',
    tools: 'Tools, for the project',
    consumables: 'Consumables',
    elsewhere: 'Other parts that are asked for',
    nobody: 'Parts that nothing asks for',
  }[kind]
  return { keep: true, cells: [blank(), text(says, { role: 'strong', span: wide - 1 })] }
}

function placeRow(place: PartPlace, { kind }: PartGroup, results: Results, cost: PlaceCost): Row {
  const { part, depth } = place
  const { project } = results
  const demand = project.demand.get(part.id)!
  return {
    level: depth,
    cells: [
      count(place.number),
      text(part.id, { indent: depth, ...(place.first ? { name: `part/${part.id}` } : {}) }),
      text(part.number ?? ''),
      text(part.revision ?? ''),
      text(sayTechnical(part)),
      text(kindWords[part.way.kind]),
      text(sayMaterial(part, project)),
      text(saySource(part, demand)),
      depth === 1 && kind !== 'device' ? blank() : count(place.perParent),
      kind === 'device' ? count(place.perWhole) : perDevice(place, demand),
      ...demandCells(place, demand),
      kind === 'nobody' ? blank() : cost.unit,
      kind === 'nobody' && cost.name === null ? blank() : cost.extended,
      readyCell(part.id, demand, results),
      text(remark(place)),
    ],
  }
}

/** Consumables may be counted per device, fixtures and tools are not. */
function perDevice({ part, depth }: PartPlace, demand: Demand): Cell {
  return depth === 1 && part.role === 'consumable' ? count(demand.perDevice) : blank()
}

function demandCells({ first }: PartPlace, { needed, spares, fromStock, toGet }: Demand): Cell[] {
  if (!first) return [blank(), blank(), blank(), blank()]
  return [needed, spares, fromStock, toGet].map((value) => count(value))
}

function readyCell(part: string, { needed }: Demand, { readyAt }: Results): Cell {
  const ready = readyAt.get(part)
  return ready === undefined || needed === 0 ? blank() : day(dayOf(ready))
}

function remark({ part, first, number }: PartPlace): string {
  return first ? sayRemark(part) : `counts stand at no. ${number} above`
}

function totals(results: Results, groups: readonly PartGroup[], costs: Costs): Row[] {
  const { money: all, project } = results
  const places = groups.flatMap((group) => group.places)
  const firsts = places.filter(({ first }) => first).map(({ part }) => project.demand.get(part.id)!)
  const total = (key: 'needed' | 'spares' | 'fromStock' | 'toGet'): Cell =>
    count(firsts.reduce((sum, demand) => sum + demand[key], 0))
  const partCells = [...costs.values()].flatMap(({ name }) => (name === null ? [] : [name]))
  const different = firsts.filter(({ needed }) => needed > 0).length
  return [
    {
      keep: true,
      cells: [
        text(`${different} different parts`, { span: 10 }),
        ...(['needed', 'spares', 'fromStock', 'toGet'] as const).map(total),
        blank(),
        amount('parts cost', partCells, all, ({ kind }) => kind === 'part'),
        blank({ span: 2 }),
      ],
    },
    ...otherCauses(all),
    totalRow('Charged in all', money(all.charged.known, all.currency, { live: ref('money/charged') })),
  ]
}

function otherCauses(all: Money): Row[] {
  const others = [
    ['device', 'Assembly and tests of the device'],
    ['work', 'Work that is no part'],
    ['cart', 'Placing and unpacking orders'],
  ] as const
  return others.map(([kind, says]) => {
    const cells = all.byPart.filter(({ cause }) => cause.kind === kind).map(({ cause }) => causeCell(cause))
    return totalRow(
      says,
      amount(`${kind} cost`, cells, all, (cause) => cause.kind === kind),
    )
  })
}

function amount(
  name: CellName,
  cells: readonly CellName[],
  all: Money,
  counts: (cause: Money['byPart'][number]['cause']) => boolean,
): Cell {
  const known = all.byPart.reduce((sum, share) => sum + (counts(share.cause) ? share.known : 0), 0)
  return money(known, all.currency, { name, live: rounded(sumOf(...cells), all.digits) })
}

function totalRow(says: string, cell: Cell): Row {
  return { keep: true, cells: [text(says, { span: costColumn }), cell, blank({ span: 2 })] }
}
