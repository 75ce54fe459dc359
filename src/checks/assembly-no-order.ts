import { comparePlaces } from '../base/place.ts'
import { asm, type OrderStatement } from '../diagnostics/catalogue/asm.ts'
import type { Report } from '../diagnostics/message.ts'
import type { AssemblyOrder, OrderConstraint } from '../model/assembly.ts'

/** ASM01, ASM02, ASM03: an assembly that cannot go together, or for which no order was found. */
export const assemblyNoOrder = (order: AssemblyOrder, report: Report): void => {
  if (order.order !== null) return
  const assembly = order.of === null ? 'the device' : `\`${order.of}\``
  const statements = order.conflict.map(statement)
  const first = [...statements].sort((a, b) => comparePlaces(a.at, b.at))[0]
  if (!first) {
    const steps = new Set(order.constraints.map(({ step }) => step)).size
    report(asm.noOrderFound, order.at, { assembly, steps })
    return
  }
  if (order.ring) report(asm.stepsInRing, first.at, { ring: order.ring, statements })
  else
    report(asm.noOrder, first.at, { assembly, statements, minimal: order.minimal, smallest: order.smallest })
}

function statement(constraint: OrderConstraint): OrderStatement {
  const { step, at, why: key } = constraint
  switch (constraint.form) {
    case 'presence':
      return { at, key, step, asks: 'one of these first', of: constraint.needs }
    case 'before':
      return { at, key, step, asks: 'before each', of: constraint.of }
    case 'before last of':
      return { at, key, step, asks: 'before the last', of: constraint.of }
    case 'while open':
      return {
        at,
        key,
        step,
        asks: 'open',
        of: constraint.openings.map((name) => `${constraint.body}.${name}`),
      }
    case 'not between':
      return { at, key, step, asks: 'not between', of: [constraint.from, constraint.until] }
    case 'while shut':
      return { at, key, step, asks: 'shut', of: [`${constraint.body}.${constraint.opening}`] }
  }
}
