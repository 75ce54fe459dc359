import { asmDoubts } from '../diagnostics/catalogue/asm-doubts.ts'
import type { Report } from '../diagnostics/message.ts'
import type { Step } from '../model/assembly.ts'
import { type BuiltSteps, builtSteps } from './built-steps.ts'
import type { NetworkCheck } from './check.ts'
import { turnsOver } from './turned-over.ts'

/** ASM13: what is glued is touched or turned over with no cure stated, or turned over before it is waited for. */
export const cureNotWaited: NetworkCheck = (laid, report) => {
  for (const built of builtSteps(laid))
    for (const [at, step] of built.steps.entries())
      if (step.method === 'glue') {
        if (step.cure) turnedWhileCuring(built, step, at, report)
        else notStated(built, step, at, report)
      }
}

/** Whether a step waits some time after another by its own words. */
const waits = (step: Step, of: Step): boolean =>
  step.after.some(
    ({ target, lag }) =>
      target.kind === 'step' &&
      target.id === of.id &&
      ('minutes' in lag ? lag.minutes > 0 : lag.workingDays > 0),
  )

function notStated({ steps }: BuiltSteps, glued: Step, at: number, report: Report): void {
  const part = glued.put?.part
  const turning = new Set(turnsOver(steps).map(({ step }) => step))
  for (const step of steps.slice(at + 1)) {
    if (waits(step, glued)) return
    const puts = part !== undefined && (step.into?.body === part || step.onto?.body === part)
    if (!puts && !turning.has(step)) continue
    tell(step, glued, puts ? 'put' : 'turned', report)
    return
  }
}

function turnedWhileCuring(built: BuiltSteps, glued: Step, at: number, report: Report): void {
  const after = waiting(built, glued, at)
  const turn = turnsOver(built.steps).find((one) => one.at > at && !after.has(one.step.id))
  if (turn) tell(turn.step, glued, 'turned while it cures', report)
}

function tell(
  step: Step,
  glued: Step,
  how: 'put' | 'turned' | 'turned while it cures',
  report: Report,
): void {
  report(asmDoubts.cureNotWaited, step.at, { step: step.id, glued: { step: glued.id, at: glued.at }, how })
}

/** Steps that wait for a cure: those that touch what it touches, those that links hold after it, and all after these. */
function waiting({ steps, order }: BuiltSteps, glued: Step, at: number): ReadonlySet<string> {
  const curing = touched(glued)
  const found = new Set([glued.id])
  for (const step of steps.slice(at + 1)) {
    const linked = order.links.some(({ before, after }) => after === step.id && found.has(before))
    if (linked || [...touched(step)].some((part) => curing.has(part))) found.add(step.id)
  }
  return found
}

const touched = ({ put, into, onto }: Step): ReadonlySet<string> =>
  new Set([put?.part, into?.body, onto?.body].filter((part) => part !== undefined))
