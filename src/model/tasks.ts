import type { Instant, Minutes } from '../base/clock.ts'
import type { Place } from '../base/place.ts'
import type { ThreePoint } from '../base/three-point.ts'
import type { Attention } from './project.ts'

/** What a task is, for words and for the money. */
export type TaskKind =
  | 'order'
  | 'delivery'
  | 'receive'
  | 'setup'
  | 'load'
  | 'run'
  | 'unload'
  | 'hand'
  | 'cure'
  | 'work'
  | 'step'
  | 'test'
  | 'ready'

/** What a task is about. */
export interface Subject {
  readonly part: string | null
  readonly work: string | null
  readonly cart: string | null
  readonly plate: string | null
  /** Assembly the step belongs to; `undefined` is never used: `null` with `step` set means the device. */
  readonly assembly: string | null
  readonly step: string | null
  /** Lot of the part or instance of the assembly, from 0; `null`: all at once. */
  readonly lot: number | null
  readonly device: number | null
  readonly routeStep: number | null
}

/** One piece of work or wait, whole minutes. */
export interface PlanTask {
  readonly id: string
  /** Its place among all: orders, work, parts, then steps in their order, each for one device after the other. */
  readonly listed?: number
  readonly title: string
  readonly kind: TaskKind
  readonly at: Place
  readonly subject: Subject
  /** The plan's time: mean rounded up to a minute once. For a delivery: 0, its timetable decides. */
  readonly minutes: Minutes
  readonly likelyMinutes: Minutes
  /** Seconds for the whole task; `null` for deliveries and zero tasks. */
  readonly time: ThreePoint | null
  readonly attention: Attention
  readonly who: readonly string[]
  readonly people: number
  readonly pausable: boolean
  readonly least: Minutes
  /** Machine whose hours bound it. */
  readonly machine: string | null
  /** Whether it takes one place of the machine itself; otherwise a hold does. */
  readonly takesMachine: boolean
  readonly tools: readonly string[]
  /** Fixtures taken for just this task; longer holds are `TaskHold`s. */
  readonly fixtures: readonly string[]
  /** Hours of machine and hands charged: minutes of the machine's and the person's time. */
  readonly machineMinutes: Minutes
  readonly handsMinutes: Minutes
  readonly release: Instant
  readonly delivery: Delivery | null
}

/** From order to usable: vendor days, then carrier days, then the post. */
export interface Delivery {
  readonly cart: string
  readonly vendor: string
  readonly leadDays: number
  readonly transitDays: number
  /** Outside work: transit there first, and the vendor starts when it arrives. */
  readonly outDays: number
  /** Days between the shortest and the longest way; none where not said. */
  readonly spreadDays?: number
}

/** One task waits for another. */
export interface TaskLink {
  readonly from: string
  readonly to: string
  readonly lag: { readonly minutes: Minutes } | { readonly workingDays: number }
  readonly within: Minutes | null
  readonly at: Place
  /** Why, in the words of the model. */
  readonly why: LinkWhy
}

/** The reason of a link. */
export type LinkWhy =
  | 'route'
  | 'material'
  | 'fixture'
  | 'ordered'
  | 'delivered'
  | 'cutter'
  | 'tool'
  | 'part'
  | 'needs'
  | 'after'
  | 'assembly'
  | 'cure'
  | 'load'

/** A resource held over several tasks. */
export interface TaskHold {
  readonly kind: 'machine' | 'fixture' | 'tool'
  readonly resource: string
  readonly from: string
  readonly to: string
}

/** The whole network of a project. Tasks sorted by id; every link and hold names tasks of the list. */
export interface TaskNetwork {
  readonly tasks: readonly PlanTask[]
  readonly links: readonly TaskLink[]
  readonly holds: readonly TaskHold[]
  /** Number of each fixture there will be. */
  readonly fixtures: ReadonlyMap<string, number>
  /** Tasks after which all of a part is there; none where it is on the shelf. */
  readonly ready: ReadonlyMap<string, readonly string[]>
}
