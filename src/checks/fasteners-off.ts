import { asmDoubts } from '../diagnostics/catalogue/asm-doubts.ts'
import type { Report } from '../diagnostics/message.ts'
import type { Step } from '../model/assembly.ts'
import { assemblyPlans } from '../model/assembly-plans.ts'
import type { Count, Part, Project } from '../model/project.ts'
import type { ModelCheck } from './check.ts'
import { metricSize, screwSize, threadsOf } from './threads-made.ts'

/** ASM15: screws that are more or fewer than the threads made for them, or than the parts they hold share out. */
export const fastenersOff: ModelCheck = (project, report) => {
  const steps = assemblyPlans(project).flatMap((plan) => plan.steps)
  for (const step of steps) unevenShares(project, step, report)
  const joints = steps.flatMap((step) => jointsOf(project, step))
  for (const part of project.parts.values()) {
    // Several copies of a part may meet different screws; nothing tells which.
    if (part.role !== 'device' || (project.demand.get(part.id)?.perDevice ?? 0) !== 1) continue
    for (const [size, threads] of threadsOf(part)) {
      const own = joints.filter((joint) => joint.hosts.has(part.id))
      compare({ part, size, threads, joints: own }, report)
    }
  }
}

function unevenShares({ parts }: Project, { id, put, method, fasteners }: Step, report: Report): void {
  if (!put || put.count < 2 || method !== 'screw') return
  const screws = fasteners.filter(({ part }) => screwSize(parts.get(part)!) !== null)
  const total = screws.reduce((sum, { count }) => sum + count, 0)
  const [first] = screws
  if (!first || total % put.count === 0) return
  report(asmDoubts.fastenersOff, first.at, {
    kind: 'shares',
    ...{ step: id, part: put.part, parts: put.count, screw: first.part, screws: total },
  })
}

/** Screws of one step, and where they may go. */
interface Joint {
  readonly step: Step
  /** Made parts on either side. */
  readonly hosts: ReadonlySet<string>
  /** Threads by size over all hosts that have some. */
  readonly hostsOf: (size: string) => readonly string[]
  readonly screws: readonly { readonly size: string; readonly of: Count }[]
  /** A bought part takes part in it, which may have threads of its own, or screws of no known size. */
  readonly unknown: boolean
}

function jointsOf(project: Project, step: Step): readonly Joint[] {
  const { put, into, onto, method, fasteners } = step
  const written = step.mates?.map(({ part }) => part) ?? []
  const sides = [put?.part, into?.body, onto?.body, ...written].filter((part) => part !== undefined)
  const bought = [put?.part, into?.body, onto?.body].some(
    (part) => part !== undefined && project.parts.get(part)?.way.kind === 'bought',
  )
  const screws = fasteners.flatMap((of) => sized(of, screwSize(project.parts.get(of.part)!)))
  // What is screwed without screws has a thread of its own: the stud of a foot.
  if (method === 'screw' && fasteners.length === 0 && put)
    screws.push(...sized(put, metricSize(project.parts.get(put.part)!)))
  if ((method !== 'screw' && screws.length === 0) || sides.length === 0) return []
  const hosts = new Set(sides.flatMap((side) => leaves(project, side)))
  const hostsOf = (size: string): readonly string[] =>
    [...hosts].filter((id) => (threadsOf(project.parts.get(id)!).get(size) ?? 0) > 0)
  return [{ step, hosts, hostsOf, screws, unknown: bought || screws.length === 0 }]
}

const sized = (of: Count, size: string | null): readonly { size: string; of: Count }[] =>
  size === null ? [] : [{ size, of }]

/** The parts that something is put together from, itself where it is one part. */
function leaves(project: Project, id: string, seen = new Set<string>()): readonly string[] {
  const way = project.parts.get(id)?.way
  if (!way || seen.has(id)) return []
  seen.add(id)
  if (way.kind !== 'assembly') return [id]
  const inside = [way.plan.ground, ...way.plan.steps.map(({ put }) => put?.part ?? null)]
  return inside.flatMap((part) => (part === null ? [] : leaves(project, part, seen)))
}

interface Compared {
  readonly part: Part
  readonly size: string
  readonly threads: number
  readonly joints: readonly Joint[]
}

function compare({ part, size, threads, joints }: Compared, report: Report): void {
  const sure = joints.filter(({ unknown, hostsOf }) => !unknown && hostsOf(size).length === 1)
  const going = sure.flatMap(({ step, screws }) =>
    screws.filter((screw) => screw.size === size).map(({ of }) => ({ step, of })),
  )
  const screws = going.reduce((sum, { of }) => sum + of.count, 0)
  const all = joints.every((joint) => sure.includes(joint) || isOther(joint, size))
  const [most, ...others] = [...going].sort((a, b) => b.of.count - a.of.count)
  if (!most || screws === threads || (screws < threads && !all)) return
  report(asmDoubts.fastenersOff, most.of.at, {
    kind: 'threads',
    ...{ part: part.id, size, threads, screws, step: most.step.id },
    others: others.map(({ step, of }) => ({ step: step.id, count: of.count, at: of.at })),
  })
}

/** Whether a joint surely has nothing to do with threads of a size. */
const isOther = ({ screws }: Joint, size: string): boolean =>
  screws.length > 0 && screws.every((screw) => screw.size !== size)
