import { groupBy } from '../base/group-by.ts'
import type { Place } from '../base/place.ts'
import { qty } from '../diagnostics/catalogue/qty.ts'
import type { Report } from '../diagnostics/message.ts'
import type { AssemblyPlan } from '../model/assembly.ts'
import type { Demand, Part, Use } from '../model/project.ts'
import { piecesToBuy } from '../trade/boards/pieces-to-buy.ts'

/** What one assembly, board or setup asks for. */
interface Asked extends Use {
  readonly part: string
}

/** Where the ground is first named. */
function groundPlace({ ground, steps, at }: AssemblyPlan): Place {
  const bodies = steps.flatMap(({ into, onto, shuts }) => [into, onto, ...shuts])
  return bodies.find((one) => one?.body === ground)?.at ?? at
}

function askedByPlan(plan: AssemblyPlan): readonly Asked[] {
  const asked: Asked[] = []
  for (const step of plan.steps) {
    if (step.put)
      asked.push({ part: step.put.part, by: 'step', into: plan.of, count: step.put.count, at: step.put.at })
    for (const one of step.fasteners)
      asked.push({ part: one.part, by: 'fastener', into: plan.of, count: one.count, at: one.at })
  }
  // The ground is never put, yet it is there once.
  if (plan.ground !== null)
    asked.push({ part: plan.ground, by: 'step', into: plan.of, count: 1, at: groundPlace(plan) })
  return asked
}

function askedByParts(parts: ReadonlyMap<string, Part>): readonly Asked[] {
  return [...parts.values()].flatMap((part): readonly Asked[] => {
    if (part.way.kind === 'assembly') return askedByPlan(part.way.plan)
    if (part.way.kind !== 'board') return []
    return part.way.places.map((one) => ({
      part: one.part,
      by: 'board',
      into: part.id,
      count: one.count,
      at: one.at,
    }))
  })
}

/** Parts that something holds, steps or works with, without using them up: fixtures and tools. */
function reusable(part: Part): boolean {
  return part.role === 'fixture' || part.role === 'tool'
}

/**
 * How many of each part are asked for, and how many of those must be made or bought.
 * Gives: an entry for every part; parts that contain each other count as nothing inside themselves.
 */
export function countDemand(
  parts: ReadonlyMap<string, Part>,
  assembly: AssemblyPlan | null,
  devices: number,
  pointedAt: ReadonlySet<string>,
): ReadonlyMap<string, Demand> {
  const asked = [...(assembly ? askedByPlan(assembly) : []), ...askedByParts(parts)]
  const uses = new Map(
    [...groupBy(asked, ({ part }) => part)].map(([id, all]) => [
      id,
      all.map(({ part: _, ...use }): Use => use),
    ]),
  )
  const demand = new Map<string, Demand>()
  const open = new Set<string>()
  const find = (id: string): Demand => {
    const known = demand.get(id)
    if (known) return known
    const part = parts.get(id)
    if (!part || open.has(id)) return none
    open.add(id)
    const found = demandOf(
      part,
      uses.get(id) ?? [],
      devices,
      pointedAt.has(id),
      find,
      (into) => parts.get(into)?.tries ?? 1,
    )
    open.delete(id)
    demand.set(id, found)
    return found
  }
  for (const id of [...parts.keys()].sort()) find(id)
  return demand
}

const none: Demand = { perDevice: 0, needed: 0, spares: 0, fromStock: 0, toGet: 0, uses: [] }

function demandOf(
  part: Part,
  uses: readonly Use[],
  devices: number,
  pointedAt: boolean,
  find: (id: string) => Demand,
  triesOf: (id: string) => number,
): Demand {
  const placed = uses.reduce(
    (sum, use) => sum + use.count * (use.into === null ? 1 : find(use.into).perDevice),
    0,
  )
  const inPlaces = uses.reduce(
    (sum, use) => sum + use.count * (use.into === null ? devices : find(use.into).toGet * triesOf(use.into)),
    0,
  )
  const alone = uses.length === 0 && part.qty !== null
  const perDevice = alone && !reusable(part) ? part.qty!.count : placed
  const soldered = uses.reduce(
    (sum, { by, into, count }) =>
      by === 'board' && into !== null ? sum + count * find(into).toGet * triesOf(into) : sum,
    0,
  )
  const needed = neededOf(part, alone, perDevice * devices, inPlaces, pointedAt) + lostOf(part, soldered)
  const wanted = needed === 0 ? 0 : needed + part.spares
  const fromStock = Math.min(part.have, wanted)
  const qtyUse: readonly Use[] = alone
    ? [{ by: 'qty', into: null, count: part.qty!.count, at: part.qty!.at }]
    : []
  return {
    perDevice,
    needed,
    spares: needed === 0 ? 0 : part.spares,
    fromStock,
    toGet: wanted - fromStock,
    uses: [...uses, ...qtyUse],
  }
}

/** Pieces lost while so many are soldered on, where the part says that some are. */
function lostOf({ way }: Part, soldered: number): number {
  const attrition = way.kind === 'bought' ? way.attrition : null
  if (!attrition || soldered === 0) return 0
  const share = 'fraction' in attrition ? attrition.fraction : 0
  const least = 'pieces' in attrition ? attrition.pieces : 0
  const loss = { fraction: share, least, source: 'as stated' }
  const found = piecesToBuy({ perBoard: soldered, boards: 1, attrition: loss, packOf: 1 })
  return 'fault' in found ? 0 : found.spare
}

function neededOf(part: Part, alone: boolean, byQty: number, inPlaces: number, pointedAt: boolean): number {
  if (!reusable(part)) return alone ? byQty : inPlaces
  if (part.qty) return part.qty.count
  return pointedAt || inPlaces > 0 ? Math.max(1, inPlaces) : 0
}

/**
 * QTY07, QTY08: counts on parts that differ from what the steps place, and parts that nothing asks for. Silent on parts
 * that a `misread` name may have meant, and on `bodies` that steps name: what is wrong there is said elsewhere.
 */
export function reportDemand(
  parts: ReadonlyMap<string, Part>,
  demand: ReadonlyMap<string, Demand>,
  misread: ReadonlySet<string>,
  bodies: ReadonlySet<string>,
  report: Report,
): void {
  for (const part of parts.values()) {
    const { perDevice, needed, uses } = demand.get(part.id)!
    const placed = uses.some((use) => use.by !== 'qty')
    if (part.qty && placed && !misread.has(part.id) && !reusable(part) && part.qty.count !== perDevice) {
      const places = uses.map((use) => ({
        at: use.at,
        says: `${use.count} ${use.by === 'board' ? 'soldered' : 'placed'} here${use.into === null ? '' : ` in \`${use.into}\``}`,
      }))
      report(qty.countMismatch, part.qty.at, {
        part: part.id,
        listed: part.qty.count,
        placed: perDevice,
        places,
      })
    }
    if (needed === 0 && part.qty === null && !misread.has(part.id) && !bodies.has(part.id))
      report(qty.notPlaced, part.at, { part: part.id, role: part.role, reused: reusable(part) })
  }
}
