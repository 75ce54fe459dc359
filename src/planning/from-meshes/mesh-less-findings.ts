import type { Step } from '../../model/assembly.ts'
import type { MeshFinding } from '../../model/from-meshes.ts'
import type { Project } from '../../model/project.ts'
import type { Look } from './look.ts'
import { seatOf } from './seat-of.ts'

/** Ways of joining that cables, labels and parts on boards have: without a mesh they are in nobody's way. */
const soft: ReadonlySet<Step['method']> = new Set([null, 'glue', 'solder', 'crimp', 'plug', 'tie', 'magnet'])
const rigid: ReadonlySet<string> = new Set(['machined', 'printed', 'bought', 'assembly'])

/**
 * Parts without a mesh in place in an assembly most of whose steps put parts that have one, in one finding: those on or
 * into which parts with a mesh go, and those that themselves go on or into such a part as rigid parts do.
 */
export function meshLessFindings(look: Look, project: Project): readonly MeshFinding[] {
  const { plan } = look.laid
  const without = new Set(look.typedAlone)
  const puts = plan.steps.filter(({ put }) => put !== null)
  const drawn = puts.filter(({ id }) => !without.has(id))
  if (drawn.length <= puts.length - drawn.length) return []
  const carriedBy = (part: string): readonly string[] => {
    const names = new Set([
      part,
      ...puts.filter(({ put }) => put!.part === part).flatMap((step) => step.instances),
    ])
    return [...new Set(drawn.flatMap((step) => (names.has(seatOf(step) ?? '') ? [step.put!.part] : [])))]
  }
  const bare = puts.filter(({ id, put }) => without.has(id) && isBare(look, put!.part))
  const put = bare.map((step) => ({ part: step.put!.part, at: step.at, counts: goesRigidly(look, step) }))
  const bases = [...new Set(plan.steps.flatMap((step) => seatOf(step) ?? []))]
    .filter(
      (part) =>
        isBare(look, part) && !puts.some((step) => step.put!.part === part || step.instances.includes(part)),
    )
    .map((part) => ({ part, at: drawn.find((step) => seatOf(step) === part)?.at ?? plan.at, counts: false }))
  const base = baseOf(look)
  const found = [...bases, ...put]
    .map((one) => ({ ...one, carries: carriedBy(one.part), isBase: one.part === base }))
    .filter(({ part, counts, carries }) => isRigid(project, part) && (counts || carries.length > 0))
    .sort((a, b) => Number(b.isBase) - Number(a.isBase) || b.carries.length - a.carries.length)
  const [first] = found
  if (!first) return []
  const { at, carries, isBase } = first
  const parts = [...new Set(found.map(({ part }) => part))]
  return [{ kind: 'no mesh', at, parts, carries, isBase, drawn: drawn.length, steps: puts.length }]
}

const isRigid = (project: Project, part: string): boolean =>
  rigid.has(project.parts.get(part)?.way.kind ?? '')

/** Whether nothing of a part stands in the device, be it in the wrong number. */
const isBare = (look: Look, part: string): boolean =>
  !look.studied.bodies.some((body) => body.part === part) && look.bodiesCalled(part).length === 0

/** Whether a step puts something as rigid parts go, on or into a part that has a mesh. */
function goesRigidly(look: Look, step: Step): boolean {
  const seat = seatOf(step)
  return !soft.has(step.method) && seat !== null && look.bodiesCalled(seat).length > 0
}

/** What is there from the start, or on which most steps put something. */
function baseOf({ laid }: Look): string | null {
  if (laid.plan.ground !== null) return laid.plan.ground
  const counts = new Map<string, number>()
  for (const step of laid.plan.steps) {
    const seat = seatOf(step)
    if (seat !== null) counts.set(seat, (counts.get(seat) ?? 0) + 1)
  }
  return (
    [...counts].reduce<readonly [string, number] | null>(
      (best, one) => (best && best[1] >= one[1] ? best : one),
      null,
    )?.[0] ?? null
  )
}
