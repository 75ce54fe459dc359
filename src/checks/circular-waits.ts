import { comparePlaces, type Place } from '../base/place.ts'
import { dep, type Edge } from '../diagnostics/catalogue/dep.ts'
import { namedRings } from '../graph/named-rings.ts'
import { assemblyPlans } from '../model/assembly-plans.ts'
import type { Project } from '../model/project.ts'
import type { PlanTask, TaskLink } from '../model/tasks.ts'
import type { NetworkCheck } from './check.ts'

/** What a task is called in a ring: the thing it is about, not its every step. A step named after its part says so. */
function subjectOf(task: PlanTask, project: Project): string {
  const { part, work, cart, plate, step } = task.subject
  if (step !== null) return project.parts.has(step) ? `step ${step}` : step
  return work ?? part ?? (plate === null ? (cart === null ? task.id : `cart ${cart}`) : `plate ${plate}`)
}

const keyOf = ({ file, line, column }: Place): string => `${file}:${line}:${column}`

/** The part that is meant where a place uses one, needs one or makes one wait. */
function partsByPlace(project: Project): ReadonlyMap<string, string> {
  const { parts, demand, work } = project
  const steps = assemblyPlans(project).flatMap((plan) => plan.steps)
  const links = [...steps, ...work.values()].flatMap(({ needs, after }) => [
    ...needs,
    ...after.map(({ target }) => target),
  ])
  return new Map([
    ...[...demand].flatMap(([id, { uses }]) => uses.map(({ at }) => [keyOf(at), id] as const)),
    ...links.flatMap((target) => (target.kind === 'part' ? [[keyOf(target.at), target.id] as const] : [])),
    ...[...parts.values()].flatMap(({ id, after }) => after.map(({ at }) => [keyOf(at), id] as const)),
  ])
}

/** A part that waits and is waited for through one order is named itself, not the order that brings it. */
function boughtOf(link: TaskLink, before: TaskLink, parts: ReadonlyMap<string, string>): string | null {
  const [uses, waits] = [parts.get(keyOf(link.at)), parts.get(keyOf(before.at))]
  return uses !== undefined && uses === waits ? uses : null
}

interface Thing {
  readonly id: string
  readonly link: TaskLink
}

/** The ring of tasks as a ring of things: neighbours about the same thing become one. */
function thingsOf(
  ring: readonly PlanTask[],
  links: ReadonlyMap<string, TaskLink>,
  project: Project,
): readonly Thing[] {
  const parts = partsByPlace(project)
  const steps = ring.map((task, index) => {
    const next = ring[(index + 1) % ring.length]!
    return {
      id: subjectOf(task, project),
      next: subjectOf(next, project),
      link: links.get(`${task.id}\n${next.id}`)!,
      cart: task.subject.cart !== null,
    }
  })
  const crossing = steps.filter(({ id, next }) => id !== next)
  if (crossing.length === 0) return steps.slice(0, 1)
  return crossing.map(({ id, link, cart }, index) => {
    const bought = cart ? boughtOf(link, crossing.at(index - 1)!.link, parts) : null
    return { id: bought ?? id, link }
  })
}

const because: Readonly<Partial<Record<TaskLink['why'], string>>> = {
  fixture: 'is held in',
  part: 'uses',
  needs: 'needs',
  after: 'comes after',
  material: 'is made from',
  assembly: 'goes together after',
  cutter: 'is cut with',
  tool: 'is done with',
}

/** DEP01, DEP03, DEP04: things that wait for each other, a fixture its own route needs, a part used before it can exist. */
export const circularWaits: NetworkCheck = ({ project, network }, report) => {
  const tasks = new Map(network.tasks.map((task) => [task.id, task]))
  const links = new Map(network.links.map((link) => [`${link.from}\n${link.to}`, link]))
  const next = new Map(network.tasks.map((task) => [task.id, [] as string[]]))
  for (const link of network.links) next.get(link.from)!.push(link.to)
  for (const ring of namedRings(next)) {
    const things = thingsOf(
      ring.map((id) => tasks.get(id)!),
      links,
      project,
    )
    const edges = things.map(({ id, link }, index): Edge => {
      const other = things[(index + 1) % things.length]!.id
      return { id, at: link.at, says: `\`${other}\` ${because[link.why] ?? 'waits for'} \`${id}\`` }
    })
    const fixture = things.find(({ link }) => link.why === 'fixture')
    const used = things.find(({ link }) => link.why === 'part')
    if (things.length === 1 && fixture)
      report(dep.fixtureNeedsItself, fixture.link.at, { fixture: fixture.id, ring: edges })
    else if (fixture)
      report(dep.fixtureNeedsItself, fixture.link.at, {
        fixture: fixture.id,
        ring: startingAt(edges, fixture.id),
      })
    else if (used)
      report(dep.usedBeforeItExists, used.link.at, {
        part: used.id,
        by: subjectOf(tasks.get(used.link.to)!, project),
        ring: startingAt(edges, used.id),
      })
    else {
      const ring = firstInSource(edges)
      report(dep.waitsInRing, ring[0]!.at, { ring })
    }
  }
}

/** The same ring, begun with the link that is written first. */
export function firstInSource(edges: readonly Edge[]): readonly Edge[] {
  const [first] = [...edges].sort((a, b) => comparePlaces(a.at, b.at))
  return startingAt(edges, first?.id ?? '')
}

function startingAt(edges: readonly Edge[], id: string): readonly Edge[] {
  const at = edges.findIndex((edge) => edge.id === id)
  return [...edges.slice(at), ...edges.slice(0, at)]
}
