import { asm } from '../diagnostics/catalogue/asm.ts'
import type { Report } from '../diagnostics/message.ts'
import type { AssemblyOrder, VoidRule } from '../model/assembly.ts'

/** ASM05: rules that hold nothing back because no step shuts the opening; said once for each opening. */
export const assemblyShutsNothingOut = (order: AssemblyOrder, report: Report): void => {
  const byOpening = new Map<string, VoidRule[]>()
  for (const rule of order.void) {
    const name = `${rule.body}.${rule.opening}`
    byOpening.set(name, [...(byOpening.get(name) ?? []), rule])
  }
  for (const [opening, rules] of byOpening) {
    const { at, why, step } = rules[0]!
    report(asm.shutsNothingOut, at, { opening, key: why, step, more: rules.length - 1 })
  }
}
