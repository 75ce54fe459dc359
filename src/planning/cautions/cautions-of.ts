import type { AssemblyPlan, Step } from '../../model/assembly.ts'
import { plansAsBuilt } from '../../model/assembly-plans.ts'
import type { Operation, Part, PrintJob, Project, RouteStep } from '../../model/project.ts'
import type { Cautions, ShownCaution } from '../../model/results.ts'
import { processOf } from '../../processes/index.ts'
import { type CautionKey, cautions, deferLine } from '../../trade/cautions.ts'

/** A caution, and the step that calls for it; `null`: the whole sheet. */
interface Call {
  readonly topic: string
  readonly signs: readonly string[]
  readonly says: string
  readonly step: string | null
}

/** The usual cautions of every route sheet, print job and checklist, each once. */
export function cautionsOf(project: Project): Cautions {
  const parts = [...project.parts.values()]
  return {
    parts: new Map(parts.map((part) => [part.id, onceEach(partCalls(project, part))])),
    plates: new Map(
      [...project.plates.values()].map(({ id, job }) => [id, onceEach(printCalls(project, job))]),
    ),
    assemblies: new Map(
      plansAsBuilt(project).map((plan) => [plan.of ?? '', onceEach(planCalls(project, plan))]),
    ),
    deferLine,
  }
}

/** Calls of the same words become one, with every step that called. */
function onceEach(calls: readonly Call[]): readonly ShownCaution[] {
  const found = new Map<string, ShownCaution>()
  for (const { topic, signs, says, step } of calls) {
    const key = JSON.stringify([topic, signs, says])
    const before = found.get(key)
    const steps = [...(before?.steps ?? []), ...(step === null ? [] : [step])]
    found.set(key, { topic, signs, says, steps: [...new Set(steps)] })
  }
  return [...found.values()]
}

const usual = (key: CautionKey, step: string | null = null): Call => ({ topic: key, ...cautions[key], step })

const own = (topic: string, all: readonly string[], step: string | null = null): readonly Call[] =>
  all.map((says) => ({ topic, signs: [], says, step }))

function partCalls(project: Project, part: Part): readonly Call[] {
  const { way } = part
  if (way.kind === 'assembly') return own(part.id, part.cautions)
  const solder = way.kind === 'board' && way.solder ? [usual('soldering')] : []
  const material =
    way.kind === 'machined' && way.material !== null ? materialCalls(project, way.material) : []
  const printing = way.kind === 'printed' && way.plate === null ? printCalls(project, way.job) : []
  return [
    ...printing,
    ...solder,
    ...way.route.flatMap(operationsOf).flatMap(operationCalls),
    ...material,
    ...own(part.id, part.cautions),
  ]
}

function operationsOf(step: RouteStep): readonly Operation[] {
  if (step.kind === 'outside') return []
  return step.kind === 'setup' ? step.operations : [step.operation]
}

/** Solvents are known by their names, because the language has no key for them. */
const solvent = /isopropyl|isopropanol|alcohol|acetone|solvent/i

function operationCalls(operation: Operation): readonly Call[] {
  const words = [operation.tool?.text, ...operation.facts.values(), operation.note].join(' ')
  return [
    ...(processOf(operation.process)?.cautions ?? []).map((key) => usual(key)),
    ...(solvent.test(words) ? [usual('solvent')] : []),
  ]
}

function materialCalls(project: Project, material: string): readonly Call[] {
  return own(material, project.materials.get(material)?.cautions ?? [])
}

/** A vat print is washed in solvent and cured under a lamp; a filament print has a hot end. */
function printCalls(project: Project, job: PrintJob): readonly Call[] {
  const machine = job.machine === null ? undefined : project.machines.get(job.machine)
  const vat: readonly Call[] = [
    usual('resin'),
    ...(job.wash ? [usual('solvent')] : []),
    ...(job.cure ? [usual('lamp')] : []),
  ]
  const kind =
    machine?.prints === 'vat' ? vat : [usual(machine?.prints === 'filament' ? 'filament' : 'machine')]
  return [...kind, ...(job.material === null ? [] : materialCalls(project, job.material))]
}

function planCalls(project: Project, plan: AssemblyPlan): readonly Call[] {
  const whole = plan.of === null ? [] : own(plan.of, project.parts.get(plan.of)?.cautions ?? [])
  return [...whole, ...plan.steps.flatMap((step) => stepCalls(project, step))]
}

function stepCalls(project: Project, step: Step): readonly Call[] {
  const bonds = step.method === 'glue' || step.adhesive !== null || step.locker
  const keys: readonly (CautionKey | false)[] = [
    step.method === 'press' && 'pressing',
    step.method === 'solder' && 'soldering',
    bonds && 'adhesive',
    solvent.test([step.action, step.tool?.text, step.note].join(' ')) && 'solvent',
    step.machine !== null && step.method !== 'press' && 'machine',
    step.test !== null && 'first run',
  ]
  const used = [step.put, ...step.fasteners].flatMap((one) => (one ? [one.part] : []))
  return [
    ...keys.flatMap((key) => (key === false ? [] : [usual(key, step.id)])),
    ...used.flatMap((part) => own(part, project.parts.get(part)?.cautions ?? [], step.id)),
  ]
}
