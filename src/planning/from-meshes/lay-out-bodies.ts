import { groupShells } from '../../geometry/group-shells.ts'
import { splitShells } from '../../geometry/split-shells.ts'
import type { AssemblyPlan, Step } from '../../model/assembly.ts'
import type { MeshBody } from '../../model/from-meshes.ts'
import type { PlacedMesh } from '../../model/mesh.ts'
import type { Project } from '../../model/project.ts'

/** What goes in as one in a step. */
export interface Load {
  readonly step: Step
  readonly part: string
  readonly role: 'put' | 'fastener'
  readonly bodies: readonly number[]
}

/** The bodies of one assembly by what brings them. */
export interface LaidPlan {
  readonly plan: AssemblyPlan
  readonly there: readonly number[]
  readonly loads: readonly Load[]
}

/** Copies drawn and copies put, where the two differ. */
export interface Miscount {
  readonly part: string
  readonly drawn: number
  readonly put: number
  readonly shells: boolean
}

/** Every body with its triangles, and which step of which assembly brings it. */
export interface LaidBodies {
  readonly bodies: readonly MeshBody[]
  readonly corners: readonly Float32Array[]
  readonly plans: readonly LaidPlan[]
  readonly miscounts: readonly Miscount[]
}

interface Copies {
  readonly corners: readonly Float32Array[]
  /** Number in `bodies` of the first. */
  readonly first: number
  readonly shells: boolean
}

/** Whether two bodies touch. */
export type Near = (a: number, b: number) => boolean

/**
 * Gives the copies of each part to the steps that put them, in the order of the device's steps as written, what is
 * inside a part of kind assembly where that part is put. Of the copies left a step takes those that touch what it puts
 * or what that goes on; of alike ones the first. `near` is not known at first: then they are taken as they come.
 */
export function layOutBodies(project: Project, near: Near = () => false): LaidBodies {
  const wanted = countPut(project)
  const bodies: MeshBody[] = []
  const corners: Float32Array[] = []
  const copies = new Map<string, Copies>()
  for (const part of new Set(project.meshes.map((mesh) => mesh.part))) {
    const all = copiesOf(
      project.meshes.filter((mesh) => mesh.part === part),
      wanted.get(part) ?? 0,
    )
    copies.set(part, { ...all, first: bodies.length })
    for (const [copy, own] of all.corners.entries()) {
      bodies.push({ part, copy })
      corners.push(own)
    }
  }
  const miscounts = [...copies].flatMap(([part, { corners: drawn, shells }]) => {
    const put = wanted.get(part) ?? 0
    return drawn.length === put ? [] : [{ part, drawn: drawn.length, put, shells }]
  })
  return { bodies, corners, plans: laidPlans(project, copies, near), miscounts }
}

/** More shells than this for each copy are no copies nor their pieces, but a mesh torn apart. */
const mostShellsEach = 40

/**
 * One body a mesh; where a single mesh may hold several copies and several are put, its shells if they are few. Where
 * those are not as many as are put, but what lies within one another is, each such group is a copy.
 */
function copiesOf(meshes: readonly PlacedMesh[], put: number): Omit<Copies, 'first'> {
  const [only, ...more] = meshes
  const mayHold = only?.mayHoldCopies === true && more.length === 0 && put > 1
  const single = mayHold
    ? splitShells({ corners: Float64Array.from(only.corners) }, mostShellsEach * put)
    : null
  if (!single) return { corners: meshes.map(({ corners }) => corners), shells: false }
  const groups = single.length === put ? single : groupShells(single)
  const shells = groups.length === put ? groups : single
  return { corners: shells.map((shell) => Float32Array.from(shell.corners)), shells: true }
}

/** How gladly a step takes a body for a copy: the higher, the rather. */
type Wish = (body: number) => number

/** What a body is wanted for. */
interface Wishes {
  /** By a step, together with what it puts. */
  readonly ofStep: (step: Step, put: readonly number[]) => Wish
  /** Inside one copy of an assembly, of which these are known. */
  readonly ofCopy: (own: readonly number[]) => Wish
}

const noWish: Wish = () => 0

type Take = (part: string, count: number, wish: Wish) => readonly (readonly number[])[]

/** How many of each part one device takes. */
function countPut(project: Project): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  walkDevice(project, (part, count) => {
    counts.set(part, (counts.get(part) ?? 0) + count)
    return []
  })
  return counts
}

function laidPlans(project: Project, copies: ReadonlyMap<string, Copies>, near: Near): readonly LaidPlan[] {
  const left = new Map(
    [...copies].map(([part, { corners, first }]) => [part, corners.map((_, copy) => first + copy)] as const),
  )
  const numbers = (part: string): readonly number[] => {
    const of = copies.get(part)
    return of ? of.corners.map((_, copy) => of.first + copy) : []
  }
  const take: Take = (part, count, wish) => {
    const of = left.get(part) ?? []
    const best = [...of]
      .sort((a, b) => wish(b) - wish(a) || a - b)
      .slice(0, count)
      .sort((a, b) => a - b)
    left.set(
      part,
      of.filter((body) => !best.includes(body)),
    )
    return best.map((body) => [body])
  }
  const touches = (body: number, others: readonly number[]) => others.some((other) => near(body, other))
  return walkDevice(project, take, {
    ofStep: (step, put) => {
      const seat = step.onto?.body ?? step.into?.body
      const seats = seat === undefined ? [] : leafParts(project, seat, []).flatMap(numbers)
      return (body) => (touches(body, put) ? 2 : 0) + (touches(body, seats) ? 1 : 0)
    },
    ofCopy: (own) => (body) => (touches(body, own) ? 4 : 0),
  })
}

/** The parts that a part is of: itself, or what is inside an assembly. */
function leafParts(project: Project, part: string, around: readonly string[]): readonly string[] {
  const way = project.parts.get(part)?.way
  if (way?.kind !== 'assembly' || around.includes(part)) return [part]
  const inside = way.plan.steps.flatMap(({ put, fasteners }) =>
    [...(put ? [put] : []), ...fasteners].map((one) => one.part),
  )
  return [...bodiesThere(way.plan), ...inside].flatMap((one) => leafParts(project, one, [...around, part]))
}

/** Walks the device and what is inside it; the assemblies as they come, each the first time. */
function walkDevice(
  project: Project,
  take: Take,
  wishes: Wishes = { ofStep: () => noWish, ofCopy: () => noWish },
): readonly LaidPlan[] {
  const laid = new Map<string | null, LaidPlan>()
  const unfold = (
    part: string,
    count: number,
    around: readonly string[],
    wish: Wish,
  ): readonly (readonly number[])[] => {
    const way = project.parts.get(part)?.way
    if (way?.kind !== 'assembly' || around.includes(part)) return take(part, count, wish)
    return Array.from({ length: count }, () => walkPlan(way.plan, [...around, part], wish))
  }
  const walkPlan = (plan: AssemblyPlan, around: readonly string[], outer: Wish): readonly number[] => {
    const own: number[] = []
    // The first body of a copy is the one its step wants; the rest keep to what the copy has.
    const inner: Wish = (body) =>
      own.length === 0 ? outer(body) : around.length > 0 ? wishes.ofCopy(own)(body) : 0
    const loadsOf = (
      step: Step,
      role: Load['role'],
      { part, count }: { part: string; count: number },
      put: readonly number[],
    ): readonly Load[] => {
      const wish = wishes.ofStep(step, put)
      const taken = unfold(part, count, around, (body) => wish(body) + inner(body))
      own.push(...taken.flat())
      return taken.filter((bodies) => bodies.length > 0).map((bodies) => ({ step, part, role, bodies }))
    }
    const there = bodiesThere(plan).flatMap((body) => unfold(body, 1, around, inner).flat())
    own.push(...there)
    const loads = plan.steps.flatMap((step) => {
      const put = step.put ? loadsOf(step, 'put', step.put, []) : []
      const bodies = put.flatMap((load) => load.bodies)
      return [...put, ...step.fasteners.flatMap((one) => loadsOf(step, 'fastener', one, bodies))]
    })
    if (!laid.has(plan.of)) laid.set(plan.of, { plan, there, loads })
    return own
  }
  if (project.assembly) walkPlan(project.assembly, [], noWish)
  return [...laid.values()]
}

/** Bodies that steps name and none puts: they are there from the start. */
export function bodiesThere({ steps, ground }: AssemblyPlan): readonly string[] {
  const put = new Set(steps.flatMap((step) => (step.put ? [step.put.part, ...step.instances] : [])))
  const named = steps.flatMap(({ into, onto, shuts, opens }) =>
    [into, onto, ...shuts, ...opens].flatMap((one) => one?.body ?? []),
  )
  return [...new Set([...(ground === null ? [] : [ground]), ...named])].filter((body) => !put.has(body))
}
