import type { Step } from '../../model/assembly.ts'
import type { Project } from '../../model/project.ts'
import { coarsePitchMm } from '../../trade/threads/metric-selection.ts'
import type { LaidBodies, Load } from './lay-out-bodies.ts'

/** Depth of a thread by its pitch. Source: ISO 68-1, 5/8 of the height 0.866 P, 0.541 P; from memory. */
const depthByPitch = 0.541
/** What a thread of which the pitch is not known gives, in mm: that of M6. */
const unknownDepthMm = 0.54
/** Play of a helix drawn as one, in mm. */
const playMm = 0.15

/**
 * The least give of two bodies, in mm, where a step declares a thread between copies of their parts: the depth of the
 * thread, so that a helix drawn as one turns out along its axis. `null`: no thread is declared.
 */
export function giveOfJoins(
  project: Project,
  { bodies, plans }: LaidBodies,
): (a: number, b: number) => number | null {
  const gives = new Map<string, { depthMm: number; into: Set<string> }>()
  const partsOf = (numbers: readonly number[]) => numbers.map((body) => bodies[body]!.part)
  for (const { loads, there } of plans) {
    const called = (name: string): readonly number[] => [
      ...there,
      ...loads
        .filter((load) => load.part === name || load.step.instances.includes(name))
        .flatMap((load) => load.bodies),
    ]
    for (const load of loads) {
      if (!isThreaded(load)) continue
      const { step } = load
      const put = loads.filter((other) => other.step === step && other.role === 'put')
      const seats = [step.into, step.onto].flatMap((one) => (one ? called(one.body) : []))
      const into = partsOf([...put.flatMap((other) => other.bodies), ...seats])
      const depthMm = depthOf(project, load.part, step)
      for (const part of partsOf(load.bodies))
        gives.set(part, { depthMm, into: new Set([...(gives.get(part)?.into ?? []), ...into]) })
    }
  }
  return (a, b) => {
    const [one, other] = [bodies[a]!.part, bodies[b]!.part]
    const found = gives.get(one)?.into.has(other) ? gives.get(one) : gives.get(other)
    if (!found || !(found.into.has(one) || found.into.has(other))) return null
    return found.depthMm + playMm
  }
}

function isThreaded({ step, role }: Load): boolean {
  return role === 'fastener' ? step.method === 'screw' || step.method === 'thread' : step.method === 'thread'
}

/** Depth of the thread that a part names: in a feature, else in its name. */
function depthOf(project: Project, part: string, step: Step): number {
  const way = project.parts.get(part)?.way
  const features = way && 'features' in way ? way.features.map(({ text }) => text) : []
  const mated = (step.mates ?? []).map(({ feature }) => feature)
  for (const text of [...features, ...mated, part]) {
    const found = /\bM(\d+(?:\.\d+)?)(?:x(0\.\d+|[1-6](?:\.\d+)?)(?!\d))?(?:-\d[a-zA-Z])?/.exec(text)
    if (!found) continue
    const written = found[2] === undefined ? null : Number(found[2])
    // In a name such as `screw M4x20` the second figure is the length.
    const pitch =
      written !== null && written < Number(found[1]) / 2 ? written : coarsePitchMm(Number(found[1]))
    if (pitch !== null) return depthByPitch * pitch
  }
  return unknownDepthMm
}
