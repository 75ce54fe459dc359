import type { Operation, Part, PrintJob, Project, RouteStep } from '../../model/project.ts'
import { processOf } from '../../processes/index.ts'
import { calledByWords } from '../../trade/cautions/called-by-words.ts'
import { materialCautions } from '../../trade/cautions/material-cautions.ts'
import type { CautionKey } from '../../trade/cautions.ts'
import { type Call, own, usual } from './call.ts'
import { materialCalls, type Working } from './material-calls.ts'

/** What to mind while a part is made: its print, its soldering, its route, its material, its own. */
export function partCalls(project: Project, part: Part): readonly Call[] {
  const { way } = part
  if (way.kind === 'assembly') return own(part.id, part.cautions)
  const solder = way.kind === 'board' && way.solder ? [way.solder] : []
  const keys = [...way.route.flatMap(keysOfStep), ...solder.flatMap((one) => solderKeys(one))]
  const alone = way.kind === 'printed' && way.plate === null
  return [
    ...(alone ? printCalls(project, way.job, workingOf(keys)) : []),
    ...keys.map((key) => usual(key)),
    ...(alone ? [] : stockCalls(project, part, workingOf(keys))),
    ...own(part.id, part.cautions),
  ]
}

/** What the material of a part that is not printed alone calls for; a board is of glass and epoxy. */
function stockCalls(project: Project, { id, way }: Part, working: Working): readonly Call[] {
  if (way.kind === 'machined' && way.material !== null) return materialCalls(project, way.material, working)
  if (way.kind === 'printed' && way.job.material !== null && working.cut)
    return materialCalls(project, way.job.material, working)
  if (way.kind !== 'board') return []
  const board = { name: id, like: 'FR-4', hasOwn: false }
  return materialCautions(board, working).map((one) => ({ ...one, topic: 'board material', step: null }))
}

/** Work that makes chips or dust of what it is done to. */
const cuts: readonly CautionKey[] = ['cutting', 'sawing', 'machine', 'laser', 'edges', 'abrasives']

function workingOf(keys: readonly CautionKey[]): Working {
  const cut = keys.some((key) => cuts.includes(key))
  return { cut, changed: cut, abraded: keys.includes('abrasives') }
}

function keysOfStep(step: RouteStep): readonly CautionKey[] {
  if (step.kind === 'outside') return []
  if (step.kind === 'work') return operationKeys(step.operation, null)
  return step.operations.flatMap((operation) => operationKeys(operation, step.machine))
}

const solderKeys = (operation: Operation): readonly CautionKey[] => [
  'soldering',
  ...operationKeys(operation, null),
]

/** A laser has cautions of its own in place of those of any machine. */
function operationKeys(operation: Operation, machine: string | null): readonly CautionKey[] {
  const called = calledByWords({
    means: [operation.machine ?? machine, operation.tool?.text].join(' '),
    deed: [...operation.facts.values()].join(' '),
    aside: operation.note ?? '',
    thing: '',
  })
  const usualOnes = processOf(operation.process)?.cautions ?? []
  return [...usualOnes.filter((key) => key !== 'machine' || !called.includes('laser')), ...called]
}

/** A vat print is washed in solvent and cured under a lamp; a filament print has a hot end. */
export function printCalls(project: Project, job: PrintJob, after: Working = untouched): readonly Call[] {
  const prints = (job.machine === null ? undefined : project.machines.get(job.machine))?.prints ?? null
  const vat = prints === 'vat'
  const keys: readonly (CautionKey | false)[] = vat
    ? ['resin', job.wash !== null && 'solvent', job.cure !== null && 'lamp']
    : [prints === 'filament' ? 'filament' : 'machine']
  const working = { ...after, changed: after.changed || vat }
  return [
    ...keys.flatMap((key) => (key === false ? [] : [usual(key)])),
    ...(job.material === null ? [] : materialCalls(project, job.material, working)),
  ]
}

const untouched: Working = { cut: false, changed: false, abraded: false }
