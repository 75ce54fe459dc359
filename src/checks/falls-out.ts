import { asmDoubts } from '../diagnostics/catalogue/asm-doubts.ts'
import type { Step } from '../model/assembly.ts'
import { isLoose } from '../model/undo-cost.ts'
import { builtSteps } from './built-steps.ts'
import type { NetworkCheck } from './check.ts'
import { type TurnedOver, turnsOver } from './turned-over.ts'

/** ASM14: parts that are only laid in their place when the work is turned over. */
export const fallsOut: NetworkCheck = (laid, report) => {
  for (const { steps } of builtSteps(laid)) {
    const told = new Set<Step>()
    for (const turn of turnsOver(steps)) {
      const loose = steps.slice(0, turn.at).filter((step) => !told.has(step) && isUnheld(step, steps, turn))
      for (const step of loose) told.add(step)
      if (loose.length > 0)
        report(asmDoubts.fallsOut, turn.step.at, {
          step: turn.step.id,
          turn: turn.turn,
          loose: loose.map(({ id, put, at }) => ({ step: id, part: put!.part, at })),
        })
    }
  }
}

function isUnheld(step: Step, steps: readonly Step[], turn: TurnedOver): boolean {
  if (!isLoose(step) || step.looseUntil.length > 0 || saysHow(turn.step, step)) return false
  const between = steps.slice(steps.indexOf(step) + 1, turn.at)
  return !isHeld(step, between)
}

/** Whether the words of the turning step name the part, so that somebody minds it. */
const saysHow = ({ note, cautions, check }: Step, { put }: Step): boolean =>
  [note, check, ...cautions].some((words) => words?.toLowerCase().includes(put!.part.toLowerCase()) === true)

/** Whether a step fastens what was laid, or fastens what lies on it. */
function isHeld(laid: Step, between: readonly Step[]): boolean {
  const lying = [laid]
  for (const step of between) {
    if (!lying.some((one) => comesOver(step, one))) continue
    if (!isLoose(step)) return true
    lying.push(step)
  }
  return false
}

/** Whether a step puts something on a part, was to come after it, or shuts the opening it went in by. */
function comesOver(step: Step, laid: Step): boolean {
  const { part } = laid.put!
  if (step.into?.body === part || step.onto?.body === part) return true
  const after = step.after.some(
    ({ target }) =>
      (target.kind === 'step' && target.id === laid.id) || (target.kind === 'part' && target.id === part),
  )
  return (after && step.test === null) || step.shuts.some(({ body }) => body === laid.into?.body)
}
