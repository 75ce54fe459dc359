import type { AssemblyPlan, Step } from '../model/assembly.ts'
import type { Join } from '../model/joins.ts'
import { isHeavyPress, undoCost } from '../model/undo-cost.ts'

const destroys: Readonly<Partial<Record<NonNullable<Step['method']>, string>>> = {
  glue: 'glued',
  solder: 'soldered',
  crimp: 'crimped',
  tie: 'tied',
}

/** How a step's joint comes apart only by harm, or with care; `null`: it comes apart as it went together. */
function sayJoint(step: Step, join: Join | undefined): string | null {
  const joint = step.method === null ? undefined : destroys[step.method]
  if (joint) return `No way back: once ${joint}, it comes apart only by destroying it.`
  if (isHeavyPress(step, join)) return 'No way back: a heavy press comes apart only by destroying it.'
  if (undoCost(step, join) === 'none') return null
  return `${step.locker ? 'Thread locker: c' : 'C'}omes apart again only with care.`
}

/** A side that can be opened again is a last look, not a point of no return. */
const sayLastSide = (body: string, isFinal: boolean): string =>
  isFinal
    ? `Point of no return: ${body} has no open side after this; look inside first.`
    : `Last look: ${body} has no open side after this.`

/**
 * What cannot be undone after each step of a list, in the order of doing: joints that undoing destroys, and the last
 * open side of a body shut. Empty where all can.
 */
export function noWayBack(
  plan: AssemblyPlan,
  order: readonly Step[],
  joins: ReadonlyMap<string, Join>,
): ReadonlyMap<string, string> {
  const open = new Map([...plan.openings].map(([body, sides]) => [body, new Set(sides)]))
  const said = new Map<string, string>()
  for (const step of order) {
    for (const { body, opening } of step.opens) open.get(body)?.add(opening)
    for (const { body, opening } of step.shuts) open.get(body)?.delete(opening)
    const shut = [...new Set(step.shuts.map(({ body }) => body))].filter((body) => open.get(body)?.size === 0)
    const isFinal = undoCost(step, joins.get(step.id)) === 'destroyed'
    const last = shut.map((body) => sayLastSide(body, isFinal))
    const words = [...last, sayJoint(step, joins.get(step.id))].filter((one) => one !== null).join(' ')
    if (words !== '') said.set(step.id, words)
  }
  return said
}
