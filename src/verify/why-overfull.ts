import { type Instant, instantOf, sayInstant } from '../base/clock.ts'
import type { Project } from '../model/project.ts'
import type { TaskHold } from '../model/tasks.ts'
import type { Booking, Rule } from './booking.ts'
import { first } from './why-misplaced.ts'

/** Why more of a machine, fixture or tool is in use at once than there is, or while it is not here, or `null`. */
export const whyOverfull: Rule = (booking) => {
  const holds = first(booking.network.holds, (hold) => whyNoHold(booking, hold))
  return holds ?? first([...usesByResource(booking).values()], (uses) => whyTooMany(booking, uses))
}

/** One place of a resource taken from one instant to another, pauses included. */
interface ResourceUse {
  readonly kind: TaskHold['kind']
  readonly resource: string
  readonly by: string
  readonly open: Instant
  readonly close: Instant
}

function whyNoHold({ byId }: Booking, hold: TaskHold): string | null {
  const [from, to] = [byId.get(hold.from), byId.get(hold.to)]
  const says = `\`${hold.resource}\` is held from \`${hold.from}\` to \`${hold.to}\``
  if (!from || !to) return `${says}, which are not both tasks`
  if (to.placed.finish >= from.placed.start) return null
  return `${says}, which finishes ${sayInstant(to.placed.finish)}, before the hold begins`
}

function usesByResource({ all, network, byId }: Booking): Map<string, ResourceUse[]> {
  const byResource = new Map<string, ResourceUse[]>()
  const add = (use: ResourceUse): void => {
    const key = `${use.kind} ${use.resource}`
    const uses = byResource.get(key) ?? []
    uses.push(use)
    byResource.set(key, uses)
  }
  for (const { task, placed } of all) {
    const own = { by: task.id, open: placed.start, close: placed.finish }
    if (task.takesMachine && task.machine !== null) add({ kind: 'machine', resource: task.machine, ...own })
    for (const resource of task.fixtures) add({ kind: 'fixture', resource, ...own })
    for (const resource of task.tools) add({ kind: 'tool', resource, ...own })
  }
  for (const { kind, resource, from, to } of network.holds) {
    const [open, close] = [byId.get(from)!.placed.start, byId.get(to)!.placed.finish]
    add({ kind, resource, by: from, open, close })
  }
  return byResource
}

function whyTooMany(booking: Booking, uses: readonly ResourceUse[]): string | null {
  const { kind, resource, by } = uses[0]!
  const capacity = capacityOf(booking, kind, resource)
  if (capacity === null) return `task \`${by}\` uses ${kind} \`${resource}\`, which the project does not have`
  const tool = kind === 'tool' ? booking.project.tools.get(resource) : undefined
  return (tool ? first(uses, (use) => whyNotHere(tool, use)) : null) ?? whyCrowded(uses, capacity)
}

function capacityOf({ project, network }: Booking, kind: TaskHold['kind'], id: string): number | null {
  if (kind === 'machine') return project.machines.get(id)?.capacity ?? null
  if (kind === 'tool')
    return project.tools.get(id)?.qty ?? madeTools(project, id) ?? network.fixtures.get(id) ?? null
  return network.fixtures.get(id) ?? null
}

/** A part with role tool counts as many as there will be. */
function madeTools(project: Project, id: string): number | null {
  const demand = project.parts.get(id)?.role === 'tool' ? project.demand.get(id) : undefined
  return demand ? demand.needed + demand.spares : null
}

function whyNotHere(tool: { readonly from: number | null; readonly until: number | null }, use: ResourceUse) {
  const says = `task \`${use.by}\` uses tool \`${use.resource}\``
  if (tool.from !== null && use.open < instantOf(tool.from, 0)) {
    return `${says} from ${sayInstant(use.open)}, before it is here`
  }
  if (tool.until !== null && use.close > instantOf(tool.until + 1, 0)) {
    return `${says} to ${sayInstant(use.close)}, when it is gone`
  }
  return null
}

/** Walks all takings and releases in time order; at one instant, releases come first. */
function whyCrowded(uses: readonly ResourceUse[], capacity: number): string | null {
  const events = uses
    .filter(({ open, close }) => open < close)
    .flatMap((use) => [
      { at: use.open, change: 1, use },
      { at: use.close, change: -1, use },
    ])
    .sort((a, b) => a.at - b.at || a.change - b.change)
  const inUse = new Set<ResourceUse>()
  for (const { at, change, use } of events) {
    if (change > 0) inUse.add(use)
    else inUse.delete(use)
    if (inUse.size <= capacity) continue
    const by = [...inUse].map((one) => `\`${one.by}\``).join(', ')
    return `${use.kind} \`${use.resource}\` has ${capacity} and ${by} take ${inUse.size} at ${sayInstant(at)}`
  }
  return null
}
