import { asmDoubts } from '../diagnostics/catalogue/asm-doubts.ts'
import type { NetworkCheck } from './check.ts'

/** ASM16: a wearing part that cannot be renewed without destroying a joint. */
export const wornBehindHarm: NetworkCheck = ({ worn }, report) => {
  for (const { part, at, destroys } of worn) {
    const once = new Map(destroys.map(({ step }) => [step.id, { step: step.id, at: step.at }]))
    report(asmDoubts.wornBehindHarm, at, { part, destroys: [...once.values()] })
  }
}
