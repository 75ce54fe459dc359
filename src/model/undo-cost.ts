import type { Step } from './assembly.ts'
import type { Join } from './joins.ts'

/** What undoing a step costs: nothing, nothing where it is done with care, or the joint itself. */
export type UndoCost = 'none' | 'care' | 'destroyed'

/** Whether a press comes apart only by force; without a fit, and where `light` is written, that word decides. */
export function isHeavyPress(step: Step, join: Pick<Join, 'fit'> | undefined): boolean {
  if (step.method !== 'press') return false
  if (step.lightSaid || !join?.fit) return !step.light
  return join.fit.kind === 'interference'
}

const destroyed: ReadonlySet<Step['method']> = new Set(['glue', 'solder', 'crimp', 'tie'])

/** What undoing one step costs, by how it joins and, of a press, by the fit that meets in it. */
export function undoCost(step: Step, join: Pick<Join, 'fit'> | undefined): UndoCost {
  if (destroyed.has(step.method) || isHeavyPress(step, join)) return 'destroyed'
  return step.method === 'press' || step.method === 'snap' || step.locker ? 'care' : 'none'
}

/** The joins of one assembly by step; `null`: the device. */
export function joinsOf(joins: readonly Join[], assembly: string | null): ReadonlyMap<string, Join> {
  return new Map(joins.filter((join) => join.assembly === assembly).map((join) => [join.step, join]))
}

/** First words of actions that clean. Source: common practice, no source. */
const cleaning = /^(?:degrease|clean|wipe|rinse|wash|dry|blow|flush)\b/i
/** First words of other actions that leave nothing on the bench to undo. Source: common practice, no source. */
const leavesNothingBehind =
  /^(?:look|check|inspect|measure|weigh|label|mark|write|pack|photograph|adjust|set|align|trim|tune|calibrate|balance|wait|let)\b/i

/** Whether an action only cleans. */
export const isCleaning = ({ action }: Step): boolean => action !== null && cleaning.test(action.trim())

/** Whether there is something to undo after a step: a part, a fastener, a plug; not after a test or a wipe. */
export function leavesSomething(step: Step): boolean {
  if (step.put || step.fasteners.length > 0 || step.method !== null) return true
  if (step.test !== null || step.opens.length > 0) return false
  if (step.shuts.length > 0) return true
  return step.action !== null && !isCleaning(step) && !leavesNothingBehind.test(step.action.trim())
}

/** Whether a part only lies in its place: nothing but what comes after holds it. */
export const isLoose = ({ put, method, fasteners }: Step): boolean =>
  put !== null && (method === 'seat' || (method === null && fasteners.length === 0))
