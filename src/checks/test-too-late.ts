import { asmDoubts } from '../diagnostics/catalogue/asm-doubts.ts'
import type { Report } from '../diagnostics/message.ts'
import type { Step } from '../model/assembly.ts'
import { joinsOf, type UndoCost, undoCost } from '../model/undo-cost.ts'
import { type BuiltSteps, builtSteps, shutForGood, stepsBefore } from './built-steps.ts'
import type { NetworkCheck } from './check.ts'

/** ASM11: what is first tested after a joint that only destroying undoes has shut it in. */
export const testTooLate: NetworkCheck = (laid, report) => {
  for (const built of builtSteps(laid)) {
    const byStep = joinsOf(laid.joins, built.plan.of)
    const costOf = (step: Step): UndoCost => undoCost(step, byStep.get(step.id))
    for (const test of built.steps) if (test.test !== null) look(built, test, costOf, report)
  }
}

function look(built: BuiltSteps, test: Step, costOf: (step: Step) => UndoCost, report: Report): void {
  const before = stepsBefore(built, test)
  const earlier = built.steps.slice(0, built.steps.indexOf(test))
  for (const shut of earlier.filter((step) => costOf(step) === 'destroyed')) {
    for (const body of shutForGood(built, shut, test)) {
      const shutAt = earlier.indexOf(shut)
      const inside = earlier.slice(0, shutAt).filter((step) => step.into?.body === body && step.put)
      const tested = inside.filter((step) => before.has(step) || test.into?.body === body)
      const tests = earlier.filter((step) => step.test !== null)
      const isNew = (step: Step): boolean => !tests.some((one) => stepsBefore(built, one).has(step))
      const first = tested.find(isNew)
      if (!first) continue
      const { at } = shut.shuts.find((one) => one.body === body)!
      report(asmDoubts.testTooLate, test.at, {
        step: test.id,
        body,
        inside: first.put!.part,
        shut: { step: shut.id, at },
      })
      return
    }
  }
}
