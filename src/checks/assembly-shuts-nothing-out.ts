import { groupBy } from '../base/group-by.ts'
import { asm } from '../diagnostics/catalogue/asm.ts'
import type { Report } from '../diagnostics/message.ts'
import type { AssemblyOrder } from '../model/assembly.ts'

/** ASM05: rules that hold nothing back because no step shuts the opening; said once for each opening. */
export const assemblyShutsNothingOut = (order: AssemblyOrder, report: Report): void => {
  const byOpening = groupBy(order.void, ({ body, opening }) => `${body}.${opening}`)
  for (const [opening, rules] of byOpening) {
    const { at, why, step } = rules[0]!
    report(asm.shutsNothingOut, at, { opening, key: why, step, more: rules.length - 1 })
  }
}
