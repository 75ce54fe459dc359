import type { Place } from '../../base/place.ts'
import type { ThreePoint } from '../../base/three-point.ts'
import type { Labour } from '../../model/project.ts'
import type {
  Delivery,
  LinkWhy,
  PlanTask,
  Subject,
  TaskHold,
  TaskKind,
  TaskLink,
  TaskNetwork,
} from '../../model/tasks.ts'
import { wholeMinutes } from './times.ts'

/** What a new task must say; the rest has a usual value. */
export interface NewTask {
  readonly id: string
  readonly title: string
  readonly kind: TaskKind
  readonly at: Place
  readonly subject: Partial<Subject>
  readonly time: ThreePoint | null
  readonly labour: Labour
  readonly machine?: string | null
  readonly takesMachine?: boolean
  readonly tools?: readonly string[]
  readonly fixtures?: readonly string[]
  readonly delivery?: Delivery
}

const nothing: Subject = {
  part: null,
  work: null,
  cart: null,
  plate: null,
  assembly: null,
  step: null,
  lot: null,
  device: null,
  routeStep: null,
}

/** Collects tasks, links and holds; the network comes out sorted, whatever order they came in. */
export class NetworkBuilder {
  readonly #tasks = new Map<string, PlanTask>()
  readonly #links: TaskLink[] = []
  readonly #holds: TaskHold[] = []
  readonly #start: number

  constructor(start: number) {
    this.#start = start
  }

  /** Adds a task and gives its id. */
  task(task: NewTask): string {
    const machine = task.machine ?? null
    const minutes = task.time ? wholeMinutes(task.time.mean) : 0
    const { labour } = task
    this.#tasks.set(task.id, {
      id: task.id,
      listed: this.#tasks.size,
      title: task.title,
      kind: task.kind,
      at: task.at,
      subject: { ...nothing, ...task.subject },
      minutes,
      likelyMinutes: task.time ? wholeMinutes(task.time.likely) : 0,
      time: task.time,
      attention: labour.attention,
      who: labour.who,
      people: labour.attention === 'none' ? 0 : labour.people,
      pausable: labour.pausable,
      least: labour.least,
      machine,
      takesMachine: machine !== null && (task.takesMachine ?? true),
      tools: task.tools ?? [],
      fixtures: task.fixtures ?? [],
      machineMinutes: machine === null ? 0 : minutes,
      handsMinutes: labour.attention === 'hands' ? minutes * labour.people : 0,
      release: this.#start,
      delivery: task.delivery ?? null,
    })
    return task.id
  }

  /** `to` waits until `from` is done. */
  link(
    from: string,
    to: string,
    why: LinkWhy,
    at: Place,
    lag: TaskLink['lag'] = { minutes: 0 },
    within: number | null = null,
  ): void {
    this.#links.push({ from, to, lag, within, at, why })
  }

  /** Each of `to` waits for each of `from`. */
  linkAll(from: readonly string[], to: readonly string[], why: LinkWhy, at: Place): void {
    for (const one of from) for (const other of to) this.link(one, other, why, at)
  }

  /** A machine, fixture or tool is kept from the start of `from` to the finish of `to`. */
  hold(kind: TaskHold['kind'], resource: string, from: string, to: string): void {
    this.#holds.push({ kind, resource, from, to })
  }

  /** Everything collected, sorted; the same link is kept once. */
  network(fixtures: ReadonlyMap<string, number>, ready: ReadonlyMap<string, readonly string[]>): TaskNetwork {
    const key = (link: TaskLink): string => JSON.stringify([link.from, link.to, link.lag, link.within])
    const links = new Map(this.#links.map((link) => [key(link), link] as const).reverse())
    const byKey = <T>(a: readonly [string, T], b: readonly [string, T]): number =>
      a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : 0
    const holdKey = (hold: TaskHold): string => JSON.stringify([hold.kind, hold.resource, hold.from, hold.to])
    return {
      tasks: [...this.#tasks].sort(byKey).map(([, task]) => task),
      links: [...links].sort(byKey).map(([, link]) => link),
      holds: [...new Map(this.#holds.map((hold) => [holdKey(hold), hold] as const))]
        .sort(byKey)
        .map(([, hold]) => hold),
      fixtures,
      ready,
    }
  }
}
