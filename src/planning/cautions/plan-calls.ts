import type { AssemblyPlan, Step } from '../../model/assembly.ts'
import type { Part, Project } from '../../model/project.ts'
import { calledByWords } from '../../trade/cautions/called-by-words.ts'
import type { CautionKey } from '../../trade/cautions.ts'
import { type Call, own, usual } from './call.ts'
import { runsSomething } from './runs-something.ts'
import { ownUnsaid, usualUnsaid } from './unsaid.ts'

/** What to mind while an assembly goes together: its own, then what each step calls for. */
export function planCalls(project: Project, plan: AssemblyPlan): readonly Call[] {
  const whole = plan.of === null ? [] : own(plan.of, project.parts.get(plan.of)?.cautions ?? [])
  return [...whole, ...plan.steps.flatMap((step) => stepCalls(project, plan, step))]
}

/** The usual cautions of a step, then those of what it uses; what the step or a part says in its place is left out. */
function stepCalls(project: Project, plan: AssemblyPlan, step: Step): readonly Call[] {
  const used = [step.put, ...step.fasteners].flatMap((one) => project.parts.get(one?.part ?? '') ?? [])
  const typed = [...step.cautions, ...used.flatMap(({ cautions }) => cautions)]
  const runs = runsSomething(project, plan, step)
  return [
    ...stepKeys(step, used, runs)
      .map((key) => usual(key, step.id))
      .map((call) => ({ ...call, says: usualUnsaid(call.says, typed) })),
    ...used
      .flatMap((part) => own(part.id, part.cautions, step.id))
      .map((call) => ({ ...call, says: ownUnsaid(call.says, step.cautions) }))
      .filter(({ says }) => says !== ''),
  ]
}

function stepKeys(step: Step, used: readonly Part[], runs: boolean): readonly CautionKey[] {
  const means = [step.machine, step.tool?.text, step.adhesive].join(' ')
  const called = calledByWords({
    means,
    deed: [step.action, step.test].join(' '),
    aside: step.note ?? '',
    thing: used.map(sayPart).join(' '),
  })
  const bonds = step.method === 'glue' || step.adhesive !== null || step.locker
  const hot = step.method !== 'solder' && /\biron\b/i.test(means)
  const keys: readonly (CautionKey | false)[] = [
    step.method === 'press' && 'pressing',
    step.method === 'solder' && 'soldering',
    bonds && 'adhesive',
    hot && 'heat',
    ...called,
    step.machine !== null && step.method !== 'press' && !ownWords(called) && 'machine',
    runs && 'first run',
  ]
  return [...new Set(keys.flatMap((key) => (key === false ? [] : [key])))]
}

/** Machines that have cautions of their own in place of those of any machine. */
const ownWords = (called: readonly CautionKey[]): boolean =>
  called.includes('laser') || called.includes('heat') || called.includes('lamp')

function sayPart({ id, description, way }: Part): string {
  return [id, description, way.kind === 'bought' ? way.value : null].join(' ')
}
