import type { Operation, Part, RouteStep } from '../model/project.ts'
import type { Results } from '../model/results.ts'
import type { ReportOperation } from './report-model.ts'
import { reportPlates, reportPrint } from './report-prints.ts'
import { sayAssumed } from './say-cutting.ts'

const rounded = (value: number | null | undefined): number | null =>
  value === null || value === undefined ? null : Number(value.toPrecision(6))

/** Every operation of every part that is made, in route order. */
export function reportOperations({ project }: Results): readonly ReportOperation[] {
  return [...reportPlates(project), ...[...project.parts.values()].flatMap((part) => ofPart(project, part))]
}

function ofPart(project: Results['project'], part: Part): readonly ReportOperation[] {
  const { way } = part
  if (way.kind === 'assembly') return []
  const print = way.kind === 'printed' ? reportPrint(project, part, way) : []
  const bare = way.kind === 'board' && way.worked.length > 0 ? [bareBoard(part, way.worked)] : []
  const steps = stepsOf(way).flatMap((step, at) => operationsOf(step).map((one) => tell(part, at + 1, one)))
  return [...print, ...bare, ...steps]
}

/** Steps as the route sheet counts them: soldering comes before the route of a board. */
function stepsOf(way: Exclude<Part['way'], { kind: 'assembly' }>): readonly RouteStep[] {
  const solder = way.kind === 'board' ? way.solder : null
  return solder ? [{ kind: 'work', at: solder.at, operation: solder }, ...way.route] : way.route
}

function bareBoard({ id }: Part, worked: readonly string[]): ReportOperation {
  const none = { machine: null, cutter: null, seconds: null, rpm: null, feed: null, power: null }
  return { part: id, step: 0, process: 'bare board', ...none, timeFrom: 'stated', worked, assumed: [] }
}

function operationsOf(step: RouteStep): readonly Operation[] {
  if (step.kind === 'setup') return step.operations
  return step.kind === 'work' ? [step.operation] : []
}

function tell(part: Part, step: number, operation: Operation): ReportOperation {
  const { cutting, time } = operation
  return {
    part: part.id,
    step,
    process: operation.process,
    machine: operation.machine,
    cutter: operation.cutter,
    seconds: rounded(time?.mean.valueOf()),
    timeFrom: operation.timeFrom,
    rpm: rounded(cutting?.rpm),
    feed: rounded(cutting?.feedMmPerMin),
    power: rounded(cutting?.powerW),
    worked: cutting?.worked ?? operation.worked,
    assumed: cutting ? sayAssumed(cutting) : [],
  }
}
