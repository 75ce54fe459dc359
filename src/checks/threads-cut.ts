import { prcCutting } from '../diagnostics/catalogue/prc-cutting.ts'
import type { Report } from '../diagnostics/message.ts'
import type { Operation, Part, Project } from '../model/project.ts'
import { isThreadFault, readThread } from '../trade/threads/read-thread.ts'
import { tapDrill, withinWindow } from '../trade/threads/tap-drill.ts'
import type { Thread } from '../trade/threads/thread.ts'
import type { ModelCheck } from './check.ts'

/** PRC34: a tap or thread tool for another thread than the one wanted. PRC35: a tap into a hole of the wrong size. */
export const threadsCut: ModelCheck = (project, report) => {
  for (const part of project.parts.values()) {
    const { way } = part
    if (way.kind === 'assembly') continue
    const holes: number[] = []
    for (const operation of way.route.flatMap((step) => (step.kind === 'setup' ? step.operations : []))) {
      const hole = holeOf(project, operation)
      if (hole !== null) holes.push(hole)
      const wanted = threadWanted(part, operation)
      if (wanted) checkCutter(project, part, operation, wanted, report)
      if (wanted && operation.process === 'tap') checkHole(part, operation, { wanted, holes }, report)
    }
  }
}

const read = (text: string | undefined): Thread | null => {
  const thread = text === undefined ? null : readThread(text)
  return thread && !isThreadFault(thread) ? thread : null
}

/** The thread an operation is to make: as stated, else that of its feature. */
function threadWanted({ way }: Part, { facts, features }: Operation): Thread | null {
  const known = way.kind === 'assembly' ? [] : way.features
  const texts = features.map((name) => known.find((one) => one.name === name)?.text)
  return [facts.get('thread'), ...texts].map(read).find((thread) => thread !== null) ?? null
}

/** The diameter that a drill or reamer leaves, mm. */
function holeOf(project: Project, { process, cutter, numbers }: Operation): number | null {
  if (process !== 'drill' && process !== 'ream' && process !== 'bore') return null
  const own = cutter === null ? undefined : project.cutters.get(cutter)?.numbers.get('diameter')
  const size = process === 'bore' ? numbers.get('diameter') : (own ?? numbers.get('diameter'))
  return size ? size.value.valueOf() : null
}

function checkCutter(
  project: Project,
  part: Part,
  { process, cutter, at }: Operation,
  wanted: Thread,
  report: Report,
): void {
  const cuts = read(cutter === null ? undefined : project.cutters.get(cutter)?.facts.get('thread'))
  if (!cuts) return
  const samePitch = Math.abs(cuts.pitchMm - wanted.pitchMm) < 1e-6
  const sameSize = Math.abs(cuts.majorMm - wanted.majorMm) < 1e-6
  // A single edge cuts any diameter of its pitch; a tap its own alone.
  if (samePitch && (sameSize || process !== 'tap')) return
  report(prcCutting.cutsAnotherThread, at, {
    op: process,
    part: part.id,
    cuts: cuts.text,
    wanted: wanted.text,
  })
}

function checkHole(
  part: Part,
  { process, at }: Operation,
  { wanted, holes }: { readonly wanted: Thread; readonly holes: readonly number[] },
  report: Report,
): void {
  const drill = tapDrill(wanted)
  if ('fault' in drill || holes.length === 0) return
  const fits = (hole: number): boolean =>
    withinWindow(hole, drill.window) || Math.abs(hole - drill.drillMm) < 1e-6
  if (holes.some(fits)) return
  const hole = holes.reduce((a, b) => (Math.abs(b - drill.drillMm) < Math.abs(a - drill.drillMm) ? b : a))
  report(prcCutting.holeForThread, at, {
    op: process,
    part: part.id,
    thread: wanted.text,
    hole,
    least: drill.window.minMm ?? 0,
    most: drill.window.maxMm ?? 0,
    drill: drill.drill,
  })
}
