import { groupBy } from '../base/group-by.ts'
import type { AssemblyOrder, AssemblyPlan, Step } from '../model/assembly.ts'
import type { Results } from '../model/results.ts'
import { cautionRows } from './caution-rows.ts'
import type { Block, Drawing, Row } from './cells.ts'
import { boxHeads, type ChecklistPage, checklistPage } from './checklist-columns.ts'
import { footOf } from './foot-of.ts'
import { line, sayMinutes, text } from './make-cells.ts'
import { noWayBack } from './no-way-back.ts'
import { type Planned, plannedFor, sayDays, sayEach } from './planned-days.ts'
import { blockTitle } from './route-sheet-head.ts'
import { sayMeshes } from './say-meshes.ts'
import { sayOrder } from './say-order.ts'
import { sayCount } from './say-time.ts'
import { sayWayIn } from './say-way.ts'
import { scheduledSteps, type TasksByStep } from './scheduled-steps.ts'
import type { SheetMaker, Told } from './sheets.ts'
import { type BesideStep, boxColumns, stepRows } from './step-rows.ts'
import { type TasksAbout, tasksAbout } from './tasks-about.ts'
import {
  pictureId,
  sayNoPicture,
  sayNoPictures,
  saySeen,
  stepDrawings,
  stepPictures,
} from './told-pictures.ts'
import { trialBlocks } from './trial-blocks.ts'

/** An assembly that is put together, and how many of it. */
interface Checklist {
  readonly plan: AssemblyPlan
  readonly order: AssemblyOrder
  readonly name: string
  readonly pieces: number
  readonly planned: Planned | null
  readonly byStep: TasksByStep
  /** In the order in which the schedule does them first. */
  readonly steps: readonly Step[]
}

/** The checklists: subassemblies first, as they are scheduled, then the device; each but the first starts a printed page. */
export const assemblySheet: SheetMaker = (told) => {
  const { results } = told
  const about = tasksAbout(results)
  const lists = checklists(results, about)
  const boxes = Math.max(1, ...lists.map(({ pieces }) => boxColumns(pieces)))
  const drawings = stepDrawings(told.pictures)
  const page = checklistPage(boxes, drawings.size > 0)
  const widths = [...page.columns.map(({ width }) => width), ...Array.from({ length: boxes }, () => page.box)]
  const wide = widths.length
  return {
    name: 'Assembly',
    widths,
    blocks: [
      ...contents(told, lists, wide),
      ...trialBlocks(results, wide),
      ...lists.flatMap((list, at) => listBlocks(told, list, { wide, page, drawings, first: at === 0 })),
    ],
    orientation: page.orientation,
    freeze: null,
    guarded: true,
    group: 'assembly',
    foot: footOf(results.project.device),
  }
}

function checklists(results: Results, about: TasksAbout): readonly Checklist[] {
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
    const tasks = about.assembly(one.plan.of)
    const byStep = groupBy(tasks, ({ subject }) => subject.step!)
    const steps = scheduledSteps(results, one.plan, order.order, byStep)
    return [{ ...one, order, planned: plannedFor(results, tasks), byStep, steps }]
  })
  const last = ({ plan }: Checklist): number => (plan.of === null ? 1 : 0)
  return lists.sort((a, b) => last(a) - last(b) || (a.planned?.start ?? 0) - (b.planned?.start ?? 0))
}

function contents({ results, pictures }: Told, lists: readonly Checklist[], wide: number): readonly Block[] {
  const { device } = results.project
  const revision = device.revision === null ? '' : `, revision ${device.revision}`
  const says =
    lists.length === 0
      ? 'Nothing is put together: the project has no assembly steps.'
      : 'A checklist for each assembly, in the order of doing. One step is one action: read the lines above it first, tick the box of the device when it is done.'
  const without = sayNoPictures(pictures)
  const rows = lists.map(
    ({ name, pieces, planned, steps }): Row => ({
      ruled: true,
      cells: [
        text(name, { span: 2, link: `assembly/${name}` }),
        text(sayChecklist(pieces, steps.length, planned), { span: wide - 2 }),
      ],
    }),
  )
  const head: Row = {
    cells: [
      text('Checklist', { span: 2, role: 'head' }),
      text('How many, and when planned', { span: wide - 2, role: 'head' }),
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
        ...(without === '' ? [] : [line(without, wide, 'note')]),
      ],
    },
    ...(lists.length > 0 ? [{ kind: 'rows', id: 'contents', rows: [head, ...rows] } as const] : []),
  ]
}

/** How much there is to do and when: `2 to put together, 6 steps each: Mon 2026-03-16`. */
function sayChecklist(pieces: number, steps: number, planned: Planned | null): string {
  const when = planned ? `: ${sayDays(planned)}` : ''
  return `${pieces} to put together, ${steps} ${steps === 1 ? 'step' : 'steps'} each${when}`
}

/** What the lists of a sheet share, and the place of one. */
interface Frame {
  /** Columns of the sheet. */
  readonly wide: number
  readonly page: ChecklistPage
  readonly drawings: ReadonlyMap<string, Drawing>
  /** Whether the list stands first, below the contents. */
  readonly first: boolean
}

function listBlocks(told: Told, list: Checklist, frame: Frame): readonly Block[] {
  const { results } = told
  const { name, pieces } = list
  const columns = [...frame.page.columns, ...boxHeads(pieces, frame.page.box)]
  const section = { continued: `${name}, continued`, whole: true }
  return [
    { kind: 'rows', id: `assembly/${name}/head`, section, rows: headRows(results, list, frame) },
    {
      kind: 'table',
      id: `assembly/${name}/steps`,
      section,
      columns,
      rows: bodyRows(told, list, frame.drawings),
      totals: [],
      filter: false,
    },
  ]
}

function headRows(results: Results, list: Checklist, { wide, first }: Frame): readonly Row[] {
  const { plan, name, pieces, steps } = list
  const { project, cautions } = results
  const part = plan.of === null ? null : project.parts.get(plan.of)
  const identity = part
    ? [part.number, part.revision === null ? null : `revision ${part.revision}`]
    : [project.device.revision]
  const tools = [...new Set(steps.flatMap(({ tool, machine }) => [tool?.text ?? machine ?? []].flat()))]
  const fixtures = [...new Set(steps.flatMap(({ fixture }) => fixture ?? []))]
  const whole = (cautions.assemblies.get(plan.of ?? '') ?? []).filter((one) => one.steps.length === 0)
  const handwork = [...list.byStep.values()]
    .flat()
    .reduce((sum, { kind, minutes }) => sum + (kind === 'cure' ? 0 : minutes), 0)
  return [
    { ...blockTitle(name, `assembly/${name}`, wide), pageBreak: !first },
    ...fact(part ? 'Number' : 'Revision', identity.filter((one) => one !== null).join(', '), wide),
    ...fact('How many', `${pieces}`, wide),
    ...fact('Parts for one', partsOfOne(plan), wide),
    ...fact('Tools', tools.join('; '), wide),
    ...fact('Fixtures', fixtures.join(', '), wide),
    ...fact('Time', `${sayMinutes(handwork)} for all, without cures`, wide),
    ...fact('Order', sayOrder(list.order, steps), wide),
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

function bodyRows(
  { results, pictures }: Told,
  { plan, name, pieces, steps, byStep }: Checklist,
  drawings: Frame['drawings'],
): readonly Row[] {
  const seen = new Map(stepPictures(pictures).map((one) => [pictureId(one.of, one.step), saySeen(one)]))
  const besideOf = (step: Step): BesideStep => {
    const id = pictureId(plan.of, step.id)
    const shown = seen.get(id)
    return shown === undefined
      ? { without: sayNoPicture(pictures, plan.of, step) }
      : { picture: id, seen: shown }
  }
  const joins = new Map(
    results.joins.filter(({ assembly }) => assembly === plan.of).map((join) => [join.step, join]),
  )
  const back = noWayBack(plan, steps, joins)
  const all = results.cautions.assemblies.get(plan.of ?? '') ?? []
  const inspected = results.inspection.filter(({ of }) => of === name)
  const shown = new Set<object>()
  return steps.flatMap((step, at) => {
    const cautions = all.filter((one) => one.steps.includes(step.id) && !shown.has(one))
    for (const one of cautions) shown.add(one)
    const lines = inspected.filter(
      ({ feature, requirement }) => feature === step.id || (feature === 'test' && requirement === step.test),
    )
    const hands = (byStep.get(step.id) ?? []).filter(({ kind }) => kind !== 'cure')
    const byPiece = groupBy(hands, ({ subject }) => subject.device ?? subject.lot)
    const days = Array.from({ length: step.together ? 1 : pieces }, (_, index) =>
      plannedFor(results, byPiece.get(index) ?? []),
    )
    return stepRows({
      step,
      number: at + 1,
      before: plan.steps[step.index - 1] ?? null,
      planned: sayEach('No.', days, drawings.size > 0 ? ', ' : '\n'),
      pieces,
      cautions,
      back: back.get(step.id) ?? null,
      inspection: lines,
      ...(drawings.size > 0 ? { beside: besideOf(step) } : {}),
      way: sayWayIn(results.waysIn.get(plan.of ?? '')?.get(step.id)),
      join: joins.get(step.id) ?? null,
    })
  })
}
