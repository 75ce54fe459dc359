import type { AssemblyOrder } from '../../model/assembly.ts'
import type { Labour, Part, Project } from '../../model/project.ts'
import type { Cart, CartLine, Purchase } from '../../model/purchase.ts'
import type { NetworkBuilder } from './builder.ts'

/** What every part of the network building works on. */
export interface Ground {
  readonly project: Project
  readonly purchase: Purchase
  /** Orders by assembly; `''` is the device. */
  readonly orders: ReadonlyMap<string, AssemblyOrder>
  readonly build: NetworkBuilder
  /** Who may do what nobody is named for. */
  readonly people: readonly string[]
  /** Cart and line by what they buy. */
  readonly lines: ReadonlyMap<string, { readonly cart: Cart; readonly line: CartLine }>
  /** Last tasks of each lot or instance of a part, in lot order; none where all is on the shelf. */
  readonly ready: Map<string, readonly (readonly string[])[]>
  /** First tasks of a made part or of a plate (`plate NAME`). */
  readonly begun: Map<string, readonly string[]>
  /** Task of the receiving check, by cart. */
  readonly received: Map<string, string>
  /** Tasks of each step: by assembly and step, one list of tasks (step, cure) per instance. */
  readonly steps: Map<string, readonly (readonly string[])[]>
  /** Links that need parts not built yet; run once all are. */
  readonly later: (() => void)[]
}

/** Key of what a line buys. */
export function lineKey(what: CartLine['what']): string {
  switch (what.kind) {
    case 'part':
    case 'stock':
      return `${what.kind}:${what.part}`
    case 'form':
      return `form:${what.form}`
    case 'cutter':
      return `cutter:${what.cutter}`
    default:
      return `outside:${what.part}:${what.routeStep}:${what.lot}`
  }
}

/** Key of a step over all assemblies. */
export function stepKey(assembly: string | null, step: string): string {
  return JSON.stringify([assembly, step])
}

/** Hands of anybody, interruptible. */
export function anybody(ground: Ground): Labour {
  return { attention: 'hands', who: ground.people, people: 1, pausable: true, least: 15 }
}

/** Nobody needed, not interrupted. */
export const nobody: Labour = { attention: 'none', who: [], people: 0, pausable: false, least: 0 }

/** How many of a part go through its making, tries included. */
export function piecesMade(project: Project, part: Part): number {
  return (project.demand.get(part.id)?.toGet ?? 0) * part.tries
}

/** Sizes of the lots in which so many pieces are made. */
export function lotSizes(pieces: number, lot: number | null): readonly number[] {
  const size = lot ?? pieces
  const sizes: number[] = []
  for (let left = pieces; left > 0; left -= size) sizes.push(Math.min(size, left))
  return sizes
}

/**
 * The tasks after which the first `share` (0 to 1) of a part's needed pieces are there: whole lots, shelf first.
 * Empty where the shelf covers them.
 */
export function readyFor(ground: Ground, part: string, share: number): readonly string[] {
  const demand = ground.project.demand.get(part)
  const lots = ground.ready.get(part) ?? []
  if (!demand || lots.length === 0) return []
  const pieces = Math.ceil(demand.needed * share - 1e-9) - demand.fromStock
  if (pieces <= 0) return []
  const count = Math.min(lots.length, Math.ceil((pieces / Math.max(1, demand.toGet)) * lots.length - 1e-9))
  return lots.slice(0, Math.max(1, count)).flat()
}

/** The tasks after which all of a part is there. */
export function readyWhole(ground: Ground, part: string): readonly string[] {
  return (ground.ready.get(part) ?? []).flat()
}

/** Whether a part takes any of a form from what is bought; what the shelf covers waits for no parcel. */
export function takesBought(ground: Ground, form: string, part: string): boolean {
  const pieces = ground.purchase.cuts
    .find((cut) => cut.form === form)
    ?.pieces.find((one) => one.part === part)
  return pieces?.fromBought.gt(0) ?? false
}
