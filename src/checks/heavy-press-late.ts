import { asmDoubts } from '../diagnostics/catalogue/asm-doubts.ts'
import type { Project } from '../model/project.ts'
import { isHeavyPress, joinsOf } from '../model/undo-cost.ts'
import { builtSteps } from './built-steps.ts'
import type { NetworkCheck } from './check.ts'

/** A heated tip melts its way in: no force goes through the work. Source: common practice, no source. */
const melts = /\biron\b/i

/** ASM12: a heavy press on work that holds a board. */
export const heavyPressLate: NetworkCheck = (laid, report) => {
  for (const { plan, steps } of builtSteps(laid)) {
    const joins = joinsOf(laid.joins, plan.of)
    const board = steps.findIndex(({ put }) => put !== null && holdsBoard(laid.project, put.part))
    if (board < 0) continue
    const { id, put } = steps[board]!
    for (const step of steps.slice(board + 1))
      if (isHeavyPress(step, joins.get(step.id)) && !melts.test(step.tool?.text ?? ''))
        report(asmDoubts.heavyPressLate, step.at, {
          step: step.id,
          board: { step: id, part: put!.part, at: put!.at },
        })
  }
}

/** Whether a part is a board or has one in it. */
function holdsBoard(project: Project, id: string, seen = new Set<string>()): boolean {
  const way = project.parts.get(id)?.way
  if (!way || seen.has(id)) return false
  seen.add(id)
  if (way.kind === 'board') return true
  if (way.kind !== 'assembly') return false
  const inside = [way.plan.ground, ...way.plan.steps.map(({ put }) => put?.part ?? null)]
  return inside.some((part) => part !== null && holdsBoard(project, part, seen))
}
