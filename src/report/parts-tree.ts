import type { AssemblyPlan } from '../model/assembly.ts'
import type { Part, Project } from '../model/project.ts'

/** One place of a part in the structure. */
export interface PartPlace {
  readonly part: Part
  /** Steps below the device or below the head of its group. */
  readonly depth: number
  readonly perParent: number
  /** Along this path: product of the quantities up to the device; for fixtures and tools up to the one in the project. */
  readonly perWhole: number
  /** In all devices, or in the project. */
  readonly pieces: number
  /** Number of the part, given at its first place and the same at every other. */
  readonly number: number
  readonly first: boolean
  /** What it is inside of; `null`: the device, or the group itself. */
  readonly into: string | null
}

/** Parts that belong together on the list. */
export interface PartGroup {
  readonly kind: 'device' | 'fixtures' | 'tools' | 'consumables' | 'elsewhere' | 'nobody'
  readonly places: readonly PartPlace[]
}

interface Child {
  readonly id: string
  readonly count: number
}

/**
 * Every part in its places: the device down to the last part, then fixtures, tools and consumables, then what nothing asks
 * for. Parts are numbered in the order of their first place. Needs: no part contains itself, else it is cut off there.
 */
export function partGroups(project: Project): PartGroup[] {
  const walk = new Walk(project)
  const groups: PartGroup[] = [{ kind: 'device', places: walk.deviceTree() }]
  const asked = (part: Part): boolean => (project.demand.get(part.id)?.needed ?? 0) > 0
  for (const [kind, role] of roles)
    groups.push({ kind, places: walk.group((part) => part.role === role && asked(part)) })
  groups.push({ kind: 'elsewhere', places: walk.group((part) => asked(part) && !walk.seen(part.id)) })
  groups.push({ kind: 'nobody', places: walk.group((part) => !walk.seen(part.id)) })
  return groups.filter(({ places }) => places.length > 0)
}

const roles = [
  ['fixtures', 'fixture'],
  ['tools', 'tool'],
  ['consumables', 'consumable'],
] as const

class Walk {
  private readonly numbers = new Map<string, number>()

  constructor(private readonly project: Project) {}

  seen(id: string): boolean {
    return this.numbers.has(id)
  }

  deviceTree(): PartPlace[] {
    const { qty } = this.project.device
    return this.children(null).flatMap((child) => this.below(child, null, 1, 1, qty, []))
  }

  group(belongs: (part: Part) => boolean): PartPlace[] {
    return [...this.project.parts.values()].filter(belongs).flatMap(({ id }) => {
      const count = this.project.demand.get(id)?.needed ?? 0
      return this.below({ id, count }, null, 1, 1, 1, [])
    })
  }

  private below(
    { id, count }: Child,
    into: string | null,
    depth: number,
    above: number,
    wholes: number,
    path: readonly string[],
  ): PartPlace[] {
    const part = this.project.parts.get(id)
    if (!part || path.includes(id)) return []
    const first = !this.numbers.has(id)
    if (first) this.numbers.set(id, this.numbers.size + 1)
    const perWhole = above * count
    const here: PartPlace = {
      part,
      depth,
      perParent: count,
      perWhole,
      pieces: perWhole * wholes,
      number: this.numbers.get(id)!,
      first,
      into,
    }
    const inside = this.children(id).flatMap((child) =>
      this.below(child, id, depth + 1, perWhole, wholes, [...path, id]),
    )
    return [here, ...inside]
  }

  /** What is built into one of a parent, in the order of its steps; fixtures, tools and consumables have their groups. */
  private children(parent: string | null): Child[] {
    const counts = new Map<string, number>()
    for (const { id, count } of this.asked(parent)) counts.set(id, (counts.get(id) ?? 0) + count)
    return [...counts]
      .map(([id, count]) => ({ id, count }))
      .filter(({ id }) => this.project.parts.get(id)?.role === 'device')
  }

  private asked(parent: string | null): Child[] {
    const { assembly, parts } = this.project
    if (parent === null) return [...(assembly ? planAsks(assembly) : []), ...this.byQuantity()]
    const way = parts.get(parent)?.way
    if (way?.kind === 'assembly') return planAsks(way.plan)
    return way?.kind === 'board' ? way.places.map(({ part, count }) => ({ id: part, count })) : []
  }

  private byQuantity(): Child[] {
    return [...this.project.demand].flatMap(([id, { uses }]) =>
      uses.flatMap(({ by, count }) => (by === 'qty' ? [{ id, count }] : [])),
    )
  }
}

function planAsks({ ground, steps }: AssemblyPlan): Child[] {
  const asked = steps.flatMap(({ put, fasteners }) => [...(put ? [put] : []), ...fasteners])
  const placed = asked.map(({ part, count }) => ({ id: part, count }))
  return ground === null ? placed : [{ id: ground, count: 1 }, ...placed]
}
