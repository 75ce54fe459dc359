import { groupBy } from '../base/group-by.ts'
import type { Part, RouteStep } from '../model/project.ts'
import type { InspectionLine, Results } from '../model/results.ts'
import type { PlanTask } from '../model/tasks.ts'
import { cautionRows } from './caution-rows.ts'
import type { Block, Cell, Column, Row, Section } from './cells.ts'
import { footOf } from './foot-of.ts'
import { limitCell, sayRequirement } from './inspection-cells.ts'
import { blank, line, text, writeHere } from './make-cells.ts'
import { type Planned, plannedFor, sayDays, sayEach } from './planned-days.ts'
import { partPrint, platePrint, printRows } from './print-rows.ts'
import { routeRows } from './route-rows.ts'
import { blockTitle, lotsOf, pair, routeSheetHead, sayPieces } from './route-sheet-head.ts'
import { sawingBlock } from './sawing-block.ts'
import { sayCount } from './say-time.ts'
import type { SheetMaker, Told } from './sheets.ts'
import { type TasksAbout, tasksAbout } from './tasks-about.ts'

const columns: readonly Column[] = [
  { head: 'No.', width: 6 },
  { head: 'Do', width: 19 },
  { head: 'Set', width: 15 },
  { head: 'How', width: 42 },
  { head: 'Time', width: 13 },
  { head: 'Planned', width: 15 },
  { head: 'Done', width: 10, align: 'center' },
]
const measured: readonly Column[] = [
  { head: 'No.', width: 6 },
  { head: 'Feature', width: 19 },
  { head: 'Piece', width: 15 },
  { head: 'Requirement', width: 42 },
  { head: 'Lower', width: 13, align: 'right' },
  { head: 'Upper', width: 15, align: 'right' },
  { head: 'Measured', width: 10 },
]
const sawing: readonly Column[] = [
  { head: 'No.', width: 6 },
  { head: 'Saw from', width: 19 },
  { head: 'It is', width: 15 },
  { head: 'Pieces in order', width: 42 },
  { head: 'Rest', width: 13 },
  { head: 'Plan', width: 15 },
  { head: 'Done', width: 10, align: 'center' },
]
const wide = columns.length
/** Pieces of a lot that are measured on the route sheet itself; more go to the inspection record. */
const mostMeasured = 4

/** One route sheet of the sheet: a made part, or a print job. */
interface RouteSheet {
  readonly name: string
  readonly title: string
  readonly says: string
  readonly planned: Planned | null
  readonly blocks: readonly Block[]
}

/** How every part is made: a route sheet for each, that starts a printed page and goes with the pieces. */
export const makingSheet: SheetMaker = (told) => {
  const about = tasksAbout(told.results)
  const sheets = [...plateSheets(told, about), ...partSheets(told, about)].sort(
    (a, b) => (a.planned?.start ?? 0) - (b.planned?.start ?? 0) || (a.title < b.title ? -1 : 1),
  )
  return {
    name: 'Making',
    widths: columns.map(({ width }) => width),
    blocks: [
      ...contents(told, sheets),
      ...sawingBlock(told.results, sawing),
      ...sheets.flatMap(({ blocks }) => blocks),
    ],
    orientation: 'portrait',
    freeze: null,
    guarded: true,
    group: 'making',
    foot: footOf(told.results.project.device),
  }
}

function contents({ results }: Told, sheets: readonly RouteSheet[]): readonly Block[] {
  const { device } = results.project
  const says =
    sheets.length === 0
      ? 'Nothing is made: every part is bought or here.'
      : 'A route sheet for each made part and each print job, in the order in which they begin. Each starts a page: print it and keep it with the pieces.'
  const revision = device.revision === null ? '' : `, revision ${device.revision}`
  const rows = [
    line('Making', wide, 'title'),
    line(`${device.name}${revision}`, wide, 'subtitle'),
    line(says, wide, 'note'),
  ]
  const list = sheets.map(
    ({ name, title, says: pieces, planned }): Row => ({
      ruled: true,
      cells: [
        text(title, { span: 2, link: name }),
        text(pieces, { span: 2 }),
        text(planned ? sayDays(planned) : '', { span: 3 }),
      ],
    }),
  )
  const head: Row = {
    cells: [
      text('Route sheet', { span: 2, role: 'head' }),
      text('How many', { span: 2, role: 'head' }),
      text('Planned', { span: 3, role: 'head' }),
    ],
  }
  return [
    { kind: 'rows', id: 'top', rows },
    ...(sheets.length > 0 ? [{ kind: 'rows', id: 'contents', rows: [head, ...list] } as const] : []),
  ]
}

/** A route sheet begins a page by itself, and says its name again on the next. */
const sectionOf = (title: string): Section => ({ continued: `${title}, continued`, whole: true })

/** Print jobs that several parts share. */
function plateSheets({ results }: Told, about: TasksAbout): readonly RouteSheet[] {
  const { project, cautions } = results
  return [...project.plates.values()].flatMap((plate): readonly RouteSheet[] => {
    const tasks = platePrint(results, about.plate(plate.id))
    if (tasks.length === 0) return []
    const loads = plate.parts.flatMap((id) => {
      const part = project.parts.get(id)
      const pieces = part ? lotsOf(results, part).reduce((sum, each) => sum + each, 0) : 0
      return pieces > 0 ? [{ id, pieces }] : []
    })
    const name = `making/plate ${plate.id}`
    const title = `Plate ${plate.id}`
    const pieces = loads.reduce((sum, one) => sum + one.pieces, 0)
    return [
      {
        name,
        title,
        says: `${pieces} pieces of ${loads.length} parts ${plate.runs.length > 1 ? `in ${plate.runs.length} jobs` : 'on one plate'}`,
        planned: plannedFor(results, tasks),
        blocks: [
          {
            kind: 'rows',
            id: `${name}/head`,
            section: sectionOf(title),
            rows: [
              blockTitle(title, name, wide),
              ...pair('On the plate', loads.map((one) => sayCount(one.id, one.pieces)).join(', '), wide),
              ...pair('Machine', plate.job.machine ?? '', wide),
              ...pair('Material', plate.job.material ?? '', wide),
              ...cautionRows(cautions.plates.get(plate.id) ?? [], cautions.deferLine, wide),
            ],
          },
          table(`${name}/steps`, title, columns, printRows(results, plate.job, tasks)),
        ],
      },
    ]
  })
}

/** A table of a route sheet. */
const table = (id: string, of: string, heads: readonly Column[], rows: readonly Row[]): Block => ({
  kind: 'table',
  id,
  section: sectionOf(of),
  columns: heads,
  rows,
  totals: [],
  filter: false,
})

/** The steps of a part's route as its tasks count them: soldering comes before the route of a board. */
function stepsOf({ way }: Part): readonly RouteStep[] {
  if (way.kind === 'assembly') return []
  const solder = way.kind === 'board' ? way.solder : null
  return solder ? [{ kind: 'work', at: solder.at, operation: solder }, ...way.route] : way.route
}

function partSheets({ results }: Told, about: TasksAbout): readonly RouteSheet[] {
  const inspected = groupBy(results.inspection, ({ of }) => of)
  return [...results.project.parts.values()].flatMap((part): readonly RouteSheet[] => {
    const { way } = part
    const alone = way.kind === 'printed' && way.plate === null
    const steps = stepsOf(part)
    if (lotsOf(results, part).length === 0 || (steps.length === 0 && !alone)) return []
    const name = `making/${part.id}`
    const lines = inspected.get(part.id) ?? []
    const tasks = about.part(part.id)
    const tests =
      lines.length > 0 ? [table(`${name}/inspection`, part.id, measured, lines.flatMap(measuredRows))] : []
    return [
      {
        name,
        title: part.id,
        says: sayPieces(results, part),
        planned: plannedFor(
          results,
          tasks.filter(({ subject }) => subject.step === null),
        ),
        blocks: [
          partHead(results, part, name),
          table(`${name}/steps`, part.id, columns, stepRows(results, { part, steps, tasks })),
          ...tests,
        ],
      },
    ]
  })
}

function partHead(results: Results, part: Part, name: string): Block {
  const all = results.cautions.parts.get(part.id) ?? []
  return {
    kind: 'rows',
    id: `${name}/head`,
    section: sectionOf(part.id),
    rows: [
      blockTitle(part.id, name, wide),
      ...routeSheetHead(results, part, wide),
      ...cautionRows(all, results.cautions.deferLine, wide),
    ],
  }
}

interface Route {
  readonly part: Part
  readonly steps: readonly RouteStep[]
  /** All tasks about the part. */
  readonly tasks: readonly PlanTask[]
}

function stepRows(results: Results, { part, steps, tasks }: Route): readonly Row[] {
  const { way } = part
  const alone = way.kind === 'printed' && way.plate === null
  const prints = alone ? printRows(results, way.job, partPrint(results, tasks)) : []
  const lots = lotsOf(results, part)
  const routes = steps.flatMap((step, at) => {
    const days = lots.map((_, lot) =>
      plannedFor(
        results,
        tasks.filter(({ subject }) => subject.routeStep === at && subject.lot === lot),
      ),
    )
    return routeRows(
      {
        project: results.project,
        part,
        number: prints.length + at + 1,
        planned: sayEach('lot', days),
        pieces: lots[0]!,
        lots: lots.length,
      },
      step,
    )
  })
  return [...prints, ...routes]
}

/** A place for the measured value of each piece; where they are many, the inspection record has it. */
function measuredRows(one: InspectionLine): readonly Row[] {
  const many = one.pieces > mostMeasured
  const how = one.method === null ? '' : `; check: ${one.method}`
  return Array.from({ length: many ? 1 : one.pieces }, (_, at): Row => {
    const piece = many ? `all ${one.pieces} pieces` : `piece ${at + 1} of ${one.pieces}`
    const says = `${sayRequirement(one)}${how}`
    const place: Cell = many ? text('see Inspection', { role: 'note' }) : writeHere()
    return {
      cells: [
        at === 0 ? text(`${one.number}`) : blank(),
        at === 0 ? text(one.feature) : blank(),
        text(one.pieces === 1 ? '' : piece),
        at === 0 ? text(says) : blank(),
        limitCell(one, 'lower', one.unit),
        limitCell(one, 'upper', one.unit),
        place,
      ],
    }
  })
}
