import type { Step } from '../model/assembly.ts'
import type { Project } from '../model/project.ts'
import type { Harm, Redoing, Repair, RepairLeg, RepairWay, Undoing } from '../model/repair.ts'
import { sayDoubt, sayRenewals, sayUndoing, sayWhyUndone } from './say-repair.ts'
import { sayAction, sayStepTime } from './say-step.ts'
import { sayWayIn, sayWayOut } from './say-way.ts'

/** How a part is got at for repair: what `fettle apart --json` prints. Versioned. */
export interface ReportRepair {
  readonly report: 'fettle apart'
  readonly version: 1
  readonly device: string
  readonly part: string
  readonly ways: readonly ReportWay[]
}

/** The way to a part in one place. */
export interface ReportWay {
  /** Where it sits, from the device inwards. */
  readonly where: string
  /** The board that it is soldered on; `null`: none. */
  readonly board: string | null
  readonly harm: Harm
  readonly says: string
  readonly legs: readonly ReportLeg[]
  readonly back: readonly ReportBack[]
  /** Leaving what it sits in where it is; `null`: no less harm. */
  readonly inPlace: { readonly harm: Harm; readonly says: string; readonly legs: readonly ReportLeg[] } | null
}

/** What is undone in one assembly. */
export interface ReportLeg {
  /** `null`: the device. */
  readonly assembly: string | null
  readonly proved: boolean
  readonly steps: readonly ReportUndoing[]
}

/** One step undone. */
export interface ReportUndoing {
  readonly step: string
  readonly says: string
  readonly cost: string
  readonly tool: string | null
  /** Where it goes out by the meshes; `null`: they do not tell. */
  readonly way: string | null
  readonly renew: readonly string[]
  readonly because: string
  readonly doubt: string | null
}

/** One thing to do on the way back. */
export interface ReportBack {
  readonly assembly: string | null
  readonly step: string
  readonly what: string
  readonly says: string
  readonly time: string
}

/** A way to a part told in words and facts. */
export function reportRepair(project: Project, repair: Repair): ReportRepair {
  return {
    report: 'fettle apart',
    version: 1,
    device: project.device.name,
    part: repair.part,
    ways: repair.ways.map((way) => reportWay(project, way)),
  }
}

function reportWay(project: Project, way: RepairWay): ReportWay {
  const legs = way.legs.filter(({ undo }) => undo.length > 0)
  return {
    where: sayWhere(project, way),
    board: way.board,
    harm: way.harm,
    says: sayHarm(way.harm, way.legs),
    legs: legs.map((leg) => reportLeg(project, leg)),
    back: [...way.legs].reverse().flatMap(reportBack),
    inPlace: way.inPlace && {
      harm: way.inPlace.harm,
      says: sayHarm(way.inPlace.harm, way.inPlace.legs),
      legs: way.inPlace.legs.filter(({ undo }) => undo.length > 0).map((leg) => reportLeg(project, leg)),
    },
  }
}

/** `device, in wet end by "fit seal"`. */
function sayWhere(project: Project, { path, board }: RepairWay): string {
  const last = path.at(-1)!
  const through = path.slice(1).map(({ assembly }) => assembly!)
  const inside = through.length > 0 ? `, in ${through.join(', in ')}` : ''
  const here = last.step === null ? ', the body that the rest is on' : `, where step "${last.step}" puts it`
  const root = path[0]!.assembly ?? project.device.name
  return `${root}${inside}${here}${board === null ? '' : `, soldered on ${board}`}`
}

const count = (many: number, one: string, more: string): string => `${many} ${many === 1 ? one : more}`

function sayHarm({ destroyed, care, steps }: Harm, legs: readonly RepairLeg[]): string {
  const harm = [
    destroyed > 0 ? `${count(destroyed, 'joint', 'joints')} destroyed` : 'nothing destroyed',
    ...(care > 0 ? [`${care} undone with care`] : []),
  ]
  const proved = legs.every((leg) => leg.proved)
    ? 'by what the project says, no way does less harm (proved)'
    : 'not all ways were searched, so a better one may exist'
  return `${count(steps, 'step', 'steps')} to undo, ${harm.join(', ')}; ${proved}`
}

function reportLeg(project: Project, { assembly, proved, undo }: RepairLeg): ReportLeg {
  return { assembly, proved, steps: undo.map((one) => reportUndoing(project, one)) }
}

function reportUndoing(project: Project, one: Undoing): ReportUndoing {
  const { step, cost, because, along } = one
  const with_ = along.length > 0 ? `; ${along.join(', ')} stays joined to it and comes along` : ''
  return {
    step: step.id,
    says: `${sayUndoing(project, step, cost)}${with_}`,
    cost,
    tool: toolOf(step),
    way: sayWayOut(one.way),
    renew: sayRenewals(project, step, cost),
    because: sayWhyUndone(because),
    doubt: sayDoubt(one),
  }
}

const toolOf = ({ tool, machine }: Step): string | null => tool?.text ?? machine

const redoings: Readonly<Record<Redoing['what'], string>> = {
  again: 'do again',
  prepare: 'before it',
  repeat: 'repeat',
}

function reportBack({ assembly, back }: RepairLeg): readonly ReportBack[] {
  return back.map(({ step, what, way }) => ({
    assembly,
    step: step.id,
    what: redoings[what],
    says: [
      sayAction(step),
      ...[sayWayIn(way) ?? []].flat(),
      ...(step.torque ? [`torque ${step.torque.text}`] : []),
      ...(step.adhesive === null ? [] : [`adhesive: ${step.adhesive}`]),
      ...(step.cure ? [`then let it cure ${step.cure.text}`] : []),
    ].join('; '),
    time: sayStepTime(step),
  }))
}
