import type { Place } from '../base/place.ts'
import { lim } from '../diagnostics/catalogue/lim.ts'
import type { AssemblyPlan } from '../model/assembly.ts'
import type { Part, Project } from '../model/project.ts'
import type { ModelCheck } from './check.ts'

/** Tasks beyond which nothing is planned. */
const limit = 20_000

/** LIM04: more tasks than a plan can hold, told before they are laid out, with what most of them are for. */
export const tooManyTasks: ModelCheck = (project, report) => {
  const shares = [...project.parts.values()].map((part) => ({
    about: part.id,
    at: part.at,
    tasks: tasksOf(project, part),
  }))
  const own = project.assembly
    ? [
        {
          about: project.device.name,
          at: project.device.at,
          tasks: stepsOf(project.assembly, project.device.qty),
        },
      ]
    : []
  const all: readonly { about: string; at: Place; tasks: number }[] = [...shares, ...own]
  const tasks = all.reduce((sum, one) => sum + one.tasks, 0)
  if (tasks <= limit) return
  const most = all.reduce((a, b) => (b.tasks > a.tasks ? b : a))
  report(lim.tooManyTasks, most.at, { tasks, limit, about: most.about, most: most.tasks })
}

function tasksOf(project: Project, { id, way, tries }: Part): number {
  const pieces = (project.demand.get(id)?.toGet ?? 0) * tries
  if (way.kind === 'assembly') return stepsOf(way.plan, pieces)
  const lots = Math.ceil(pieces / (way.lot ?? Math.max(1, pieces)))
  const each = way.route.reduce(
    (sum, step) => sum + (step.kind === 'setup' ? pieces * step.operations.length : lots),
    0,
  )
  return each + lots
}

const stepsOf = ({ steps }: AssemblyPlan, instances: number): number => steps.length * instances
