import { asmDoubts } from '../diagnostics/catalogue/asm-doubts.ts'
import type { Report } from '../diagnostics/message.ts'
import type { Step } from '../model/assembly.ts'
import { type BuiltSteps, builtSteps, shutForGood } from './built-steps.ts'
import type { NetworkCheck } from './check.ts'

/** First words of actions that adjust something. Source: common practice, no source. */
const adjusts = /^(?:adjust|set|trim|tune|calibrate|align|tension|centre|center|zero)\b/i

/** ASM10: an adjustment of a part whose body is shut by then, with nothing that holds it to an earlier time. */
export const adjusterCovered: NetworkCheck = (laid, report) => {
  for (const built of builtSteps(laid))
    for (const step of built.steps) if (isUnheld(step)) look(built, step, report)
}

/** Whether a step adjusts and says nothing of how it gets at what it adjusts. */
const isUnheld = ({ action, put, into, reaches, beforeLastOf }: Step): boolean =>
  action !== null &&
  put === null &&
  into === null &&
  reaches.length === 0 &&
  beforeLastOf.length === 0 &&
  adjusts.test(action.trim())

function look(built: BuiltSteps, step: Step, report: Report): void {
  const earlier = built.steps.slice(0, built.steps.indexOf(step))
  for (const { put, into } of earlier) {
    if (!put || !into || !names(step, put.part)) continue
    const shut = earlier.findLast((one) => shutForGood(built, one, step).includes(into.body))
    if (!shut) continue
    const { at } = shut.shuts.find(({ body }) => body === into.body)!
    report(asmDoubts.adjusterCovered, step.at, {
      step: step.id,
      part: put.part,
      body: into.body,
      shut: { step: shut.id, at },
    })
    return
  }
}

/** Whether the words of a step name a part whole. */
function names({ action, id }: Step, part: string): boolean {
  const words = ` ${action} ${id} `.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ')
  return words.includes(` ${part.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ')} `)
}
