import type { AssemblyOrder, AssemblyPlan, Step } from '../model/assembly.ts'
import type { Results } from '../model/results.ts'
import type { PlanTask } from '../model/tasks.ts'
import { cautionRows } from './caution-rows.ts'
import type { Block, Column, Row } from './cells.ts'
import { footOf } from './foot-of.ts'
import { line, sayMinutes, text } from './make-cells.ts'
import { noWayBack } from './no-way-back.ts'
import { type Planned, plannedFor, sayDays, sayEach } from './planned-days.ts'
import { blockTitle } from './route-sheet-head.ts'
import { sayMeshes } from './say-meshes.ts'
import { sayCount } from './say-time.ts'
import type { SheetMaker, Told } from './sheets.ts'
import { boxColumns, mostBoxes, stepRows } from './step-rows.ts'

/** An assembly that is put together, and how many of it. */
interface Checklist {
  readonly plan: AssemblyPlan
  readonly order: AssemblyOrder
  readonly name: string
  readonly pieces: number
  readonly planned: Planned | null
  /** In the order in which the schedule does them first. */
  readonly steps: readonly Step[]
}

const leadingColumns: readonly Column[] = [
  { head: 'No.', width: 5 },
  { head: 'Do', width: 46 },
  { head: 'How', width: 46 },
  { head: 'Planned', width: 17 },
  { head: 'Time', width: 11 },
]
const boxWidth = 10

/** The checklists: subassemblies first, as they are scheduled, then the device; each starts a printed page. */
export const assemblySheet: SheetMaker = (told) => {
  const { results } = told
  const lists = checklists(results)
  const boxes = Math.max(1, ...lists.map(({ pieces }) => boxColumns(pieces)))
  const widths = [
    ...leadingColumns.map(({ width }) => width),
    ...Array.from({ length: boxes }, () => boxWidth),
  ]
  const wide = widths.length
  return {
    name: 'Assembly',
    widths,
    blocks: [...contents(told, lists, wide), ...lists.flatMap((list) => listBlocks(results, list, wide))],
    orientation: 'landscape',
    freeze: null,
    guarded: true,
    group: 'assembly',
    foot: footOf(results.project.device),
  }
}

const inList =
  (plan: AssemblyPlan) =>
  ({ subject }: PlanTask): boolean =>
    subject.step !== null && subject.assembly === plan.of

function checklists(results: Results): readonly Checklist[] {
  const { project, orders } = results
  const parts = [...project.parts.values()].flatMap(({ id, way, tries }) =>
    way.kind === 'assembly'
      ? [{ plan: way.plan, pieces: (project.demand.get(id)?.toGet ?? 0) * tries, name: id }]
      : [],
  )
  const device = project.assembly
    ? [{ plan: project.assembly, pieces: project.device.qty, name: project.device.name }]
    : []
  const lists = [...parts, ...device].flatMap((one): readonly Checklist[] => {
    const order = orders.get(one.plan.of ?? '')
    if (!order?.order || one.pieces === 0) return []
    const planned = plannedFor(results, inList(one.plan))
    return [{ ...one, order, planned, steps: inScheduledOrder(results, one.plan, order.order) }]
  })
  const last = ({ plan }: Checklist): number => (plan.of === null ? 1 : 0)
  return lists.sort((a, b) => last(a) - last(b) || (a.planned?.start ?? 0) - (b.planned?.start ?? 0))
}

/** Steps by when the first of the batch comes to them; at the same minute as the order has them. */
function inScheduledOrder(results: Results, plan: AssemblyPlan, order: readonly string[]): readonly Step[] {
  const steps = new Map(plan.steps.map((step) => [step.id, step]))
  const start = (id: string): number =>
    plannedFor(results, (task) => inList(plan)(task) && task.subject.step === id)?.start ?? 0
  return order
    .map((id, at) => ({ id, at, start: start(id) }))
    .sort((a, b) => a.start - b.start || a.at - b.at)
    .flatMap(({ id }) => steps.get(id) ?? [])
}

function contents({ results }: Told, lists: readonly Checklist[], wide: number): readonly Block[] {
  const { device } = results.project
  const revision = device.revision === null ? '' : `, revision ${device.revision}`
  const says =
    lists.length === 0
      ? 'Nothing is put together: the project has no assembly steps.'
      : 'A checklist for each assembly, in the order of doing. One step is one action: read the lines above it first, tick the box of the device when it is done.'
  const rows = lists.map(
    ({ name, pieces, planned, steps }): Row => ({
      ruled: true,
      cells: [
        text(name, { span: 2, link: `assembly/${name}` }),
        text(`${pieces} to put together, ${steps.length} ${steps.length === 1 ? 'step' : 'steps'} each`),
        text(planned ? sayDays(planned) : '', { span: wide - 3 }),
      ],
    }),
  )
  const head: Row = {
    cells: [
      text('Checklist', { span: 2, role: 'head' }),
      text('How many', { role: 'head' }),
      text('Planned', { span: wide - 3, role: 'head' }),
    ],
  }
  return [
    {
      kind: 'rows',
      id: 'top',
      rows: [
        line('Assembly', wide, 'title'),
        line(`${device.name}${revision}`, wide, 'subtitle'),
        line(says, wide, 'note'),
      ],
    },
    ...(lists.length > 0 ? [{ kind: 'rows', id: 'contents', rows: [head, ...rows] } as const] : []),
  ]
}

function listBlocks(results: Results, list: Checklist, wide: number): readonly Block[] {
  const { name, pieces } = list
  const columns = [...leadingColumns, ...boxHeads(pieces)]
  const section = { continued: `${name}, continued`, whole: true }
  return [
    { kind: 'rows', id: `assembly/${name}/head`, section, rows: headRows(results, list, wide) },
    {
      kind: 'table',
      id: `assembly/${name}/steps`,
      section,
      columns,
      rows: bodyRows(results, list),
      totals: [],
      filter: false,
    },
  ]
}

function boxHeads(pieces: number): readonly Column[] {
  const one = (head: string): Column => ({ head, width: boxWidth, align: 'center' })
  if (pieces === 1) return [one('Done')]
  return pieces > mostBoxes
    ? [one('All done')]
    : Array.from({ length: pieces }, (_, at) => one(`No. ${at + 1}`))
}

function headRows(results: Results, list: Checklist, wide: number): readonly Row[] {
  const { plan, name, pieces, steps } = list
  const { project, cautions } = results
  const part = plan.of === null ? null : project.parts.get(plan.of)
  const identity = part
    ? [part.number, part.revision === null ? null : `revision ${part.revision}`]
    : [project.device.revision]
  const tools = [...new Set(steps.flatMap(({ tool, machine }) => [tool?.text ?? machine ?? []].flat()))]
  const fixtures = [...new Set(steps.flatMap(({ fixture }) => fixture ?? []))]
  const whole = (cautions.assemblies.get(plan.of ?? '') ?? []).filter((one) => one.steps.length === 0)
  const handwork = results.network.tasks
    .filter((task) => inList(plan)(task) && task.kind !== 'cure')
    .reduce((sum, { minutes }) => sum + minutes, 0)
  return [
    blockTitle(name, `assembly/${name}`, wide),
    ...fact(part ? 'Number' : 'Revision', identity.filter((one) => one !== null).join(', '), wide),
    ...fact('How many', `${pieces}`, wide),
    ...fact('Parts for one', partsOfOne(plan), wide),
    ...fact('Tools', tools.join('; '), wide),
    ...fact('Fixtures', fixtures.join(', '), wide),
    ...fact('Time', `${sayMinutes(handwork)} for all, without cures`, wide),
    ...fact('Order', sayOrder(list.order), wide),
    ...fact('From meshes', sayMeshes(results, plan.of), wide),
    ...cautionRows(whole, cautions.deferLine, wide),
    ...(whole.length === 0 ? [line(cautions.deferLine, wide, 'note')] : []),
  ]
}

/** A fact of the assembly on a line of its own; none where there is nothing to say. */
function fact(label: string, says: string, wide: number): readonly Row[] {
  return says === '' ? [] : [{ ...line(`${label}: ${says}`, wide), keep: true }]
}

/** Parts that one takes, added up over its steps, with the body that the rest goes on. */
function partsOfOne({ ground, steps }: AssemblyPlan): string {
  const counts = new Map<string, number>(ground === null ? [] : [[ground, 1]])
  for (const { put, fasteners } of steps)
    for (const { part, count } of [...(put ? [put] : []), ...fasteners])
      counts.set(part, (counts.get(part) ?? 0) + count)
  return [...counts].map(([part, count]) => sayCount(part, count)).join(', ')
}

/** How sure the order is, and what it costs in turning and changing tools. */
function sayOrder({ proved, turns, toolChanges }: AssemblyOrder): string {
  const effort = `turnings over ${turns}, tool changes ${toolChanges}`
  return proved
    ? `no order needs less turning over, then fewer tool changes (proved): ${effort}`
    : `this order works, but not all orders were tried, so a better one may exist: ${effort}`
}

function bodyRows(results: Results, { plan, name, pieces, steps }: Checklist): readonly Row[] {
  const joins = new Map(
    results.joins.filter(({ assembly }) => assembly === plan.of).map((join) => [join.step, join]),
  )
  const back = noWayBack(plan, steps, joins)
  const all = results.cautions.assemblies.get(plan.of ?? '') ?? []
  const shown = new Set<object>()
  return steps.flatMap((step, at) => {
    const cautions = all.filter((one) => one.steps.includes(step.id) && !shown.has(one))
    for (const one of cautions) shown.add(one)
    const lines = results.inspection.filter(
      ({ of, feature, requirement }) =>
        of === name && (feature === step.id || (feature === 'test' && requirement === step.test)),
    )
    const days = Array.from({ length: step.together ? 1 : pieces }, (_, index) =>
      plannedFor(
        results,
        (task) =>
          inList(plan)(task) &&
          task.kind !== 'cure' &&
          task.subject.step === step.id &&
          (task.subject.device ?? task.subject.lot) === index,
      ),
    )
    return stepRows({
      step,
      number: at + 1,
      before: plan.steps[step.index - 1] ?? null,
      planned: sayEach('No.', days),
      pieces,
      cautions,
      back: back.get(step.id) ?? null,
      inspection: lines,
      join: joins.get(step.id) ?? null,
    })
  })
}
