import { asm } from '../diagnostics/catalogue/asm.ts'
import type { Report } from '../diagnostics/message.ts'
import type { AssemblyPlan, OpeningAt, Step } from '../model/assembly.ts'
import { assemblyPlans } from '../model/assembly-plans.ts'
import type { ModelCheck } from './check.ts'

/**
 * ASM04: an opening shut twice and never opened between. ASM07: one opened that no other step shuts.
 * ASM09: one opened as often as it is shut, so that it ends open.
 */
export const assemblyOpenings: ModelCheck = (project, report) => {
  for (const plan of assemblyPlans(project)) {
    shutTwice(plan, report)
    openedFirst(plan, report)
    leftOpen(plan, report)
  }
}

const nameOf = ({ body, opening }: OpeningAt): string => `${body}.${opening}`

const named = (
  plan: AssemblyPlan,
  key: 'shuts' | 'opens',
): { step: Step; name: string; at: OpeningAt['at'] }[] =>
  plan.steps.flatMap((step) => step[key].map((one) => ({ step, name: nameOf(one), at: one.at })))

function shutTwice(plan: AssemblyPlan, report: Report): void {
  const opened = new Set(named(plan, 'opens').map(({ name }) => name))
  const first = new Map<string, { step: string; at: OpeningAt['at'] }>()
  for (const { step, name, at } of named(plan, 'shuts')) {
    const before = first.get(name)
    if (!before) first.set(name, { step: step.id, at })
    else if (before.step === step.id || !opened.has(name))
      report(asm.shutTwice, at, { opening: name, step: step.id, first: before })
  }
}

function openedFirst(plan: AssemblyPlan, report: Report): void {
  const shuts = named(plan, 'shuts')
  for (const { step, name, at } of named(plan, 'opens')) {
    const shut = shuts.some((one) => one.name === name && one.step !== step)
    if (!shut) report(asm.opensWhatIsOpen, at, { opening: name, step: step.id })
  }
}

function leftOpen(plan: AssemblyPlan, report: Report): void {
  const [opens, shuts] = [named(plan, 'opens'), named(plan, 'shuts')]
  for (const [at, { step, name, at: place }] of opens.entries()) {
    const last = !opens.slice(at + 1).some((other) => other.name === name)
    const times = (all: typeof opens): number => all.filter((one) => one.name === name).length
    const shut = shuts.some((one) => one.name === name && one.step !== step)
    if (last && shut && times(opens) >= times(shuts))
      report(asm.leftOpen, place, { opening: name, step: step.id })
  }
}
