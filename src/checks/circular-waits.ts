import { dep, type Edge } from '../diagnostics/catalogue/dep.ts'
import { namedRings } from '../graph/named-rings.ts'
import type { PlanTask, TaskLink } from '../model/tasks.ts'
import type { NetworkCheck } from './check.ts'

/** What a task is called in a ring: the thing it is about, not its every step. */
function subjectOf(task: PlanTask): string {
  const { part, work, cart, plate, step } = task.subject
  if (step !== null) return step
  return work ?? part ?? (plate === null ? (cart === null ? task.id : `cart ${cart}`) : `plate ${plate}`)
}

/** The ring of tasks as a ring of things: neighbours about the same thing become one. */
function thingsOf(
  ring: readonly PlanTask[],
  links: ReadonlyMap<string, TaskLink>,
): readonly { readonly id: string; readonly link: TaskLink }[] {
  const steps = ring.map((task, index) => {
    const next = ring[(index + 1) % ring.length]!
    return { id: subjectOf(task), next: subjectOf(next), link: links.get(`${task.id}\n${next.id}`)! }
  })
  const crossing = steps.filter(({ id, next }) => id !== next)
  return crossing.length > 0 ? crossing : steps.slice(0, 1)
}

const because: Readonly<Partial<Record<TaskLink['why'], string>>> = {
  fixture: 'is held in it',
  part: 'uses it',
  needs: 'needs it',
  after: 'comes after it',
  material: 'is made from it',
  assembly: 'goes together after it',
  cutter: 'is cut with it',
  tool: 'is done with it',
  subassembly: 'contains it',
}

/** DEP01, DEP03, DEP04: things that wait for each other, a fixture its own route needs, a part used before it can exist. */
export const circularWaits: NetworkCheck = ({ network }, report) => {
  const tasks = new Map(network.tasks.map((task) => [task.id, task]))
  const links = new Map(network.links.map((link) => [`${link.from}\n${link.to}`, link]))
  const next = new Map(network.tasks.map((task) => [task.id, [] as string[]]))
  for (const link of network.links) next.get(link.from)!.push(link.to)
  for (const ring of namedRings(next)) {
    const things = thingsOf(
      ring.map((id) => tasks.get(id)!),
      links,
    )
    const edges = things.map(({ id, link }, index): Edge => {
      const other = things[(index + 1) % things.length]!.id
      return { id, at: link.at, says: `\`${other}\` ${because[link.why] ?? 'waits for it'}: \`${id}\`` }
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
        by: subjectOf(tasks.get(used.link.to)!),
        ring: startingAt(edges, used.id),
      })
    else report(dep.waitsInRing, edges[0]!.at, { ring: edges })
  }
}

function startingAt(edges: readonly Edge[], id: string): readonly Edge[] {
  const at = edges.findIndex((edge) => edge.id === id)
  return [...edges.slice(at), ...edges.slice(0, at)]
}
