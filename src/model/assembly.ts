import type Fraction from 'fraction.js'
import type { Minutes } from '../base/clock.ts'
import type { Place } from '../base/place.ts'
import type { Quantity } from '../base/quantity.ts'
import type { ThreePoint } from '../base/three-point.ts'
import type { After, Count, FeatureAt, Labour, NamedTool, Target } from './project.ts'

/** How a device or a part of kind assembly goes together. */
export interface AssemblyPlan {
  /** The part; `null`: the device. */
  readonly of: string | null
  readonly at: Place
  /** Openings by body. */
  readonly openings: ReadonlyMap<string, readonly string[]>
  readonly steps: readonly Step[]
  /** The body that is never put and on which the rest goes; `null`: none. */
  readonly ground: string | null
}

/** How a step joins what it puts. */
export type JoiningMethod =
  | 'screw'
  | 'thread'
  | 'press'
  | 'seat'
  | 'glue'
  | 'solder'
  | 'snap'
  | 'crimp'
  | 'plug'
  | 'magnet'
  | 'tie'

/** An opening of a body, as a step names it. */
export interface OpeningAt {
  readonly body: string
  readonly opening: string
  readonly at: Place
}

/** One action at the bench. */
export interface Step extends Labour {
  /** Unique in its assembly: its name, else made of what it does. */
  readonly id: string
  readonly at: Place
  /** Place in the source, from 0. */
  readonly index: number
  /** What is put; `null` for a test, an adjustment or other action. */
  readonly put: Count | null
  readonly instances: readonly string[]
  /** The body it goes into through an open opening; `through` names the openings allowed, else any. */
  readonly into: { readonly body: string; readonly through: string | null; readonly at: Place } | null
  readonly onto: { readonly body: string; readonly at: Place } | null
  readonly method: JoiningMethod | null
  readonly light: boolean
  /** Whether `light` is written; otherwise the fit may say it. */
  readonly lightSaid: boolean
  /** The two features that meet, where they are written. */
  readonly mates: readonly [FeatureAt, FeatureAt] | null
  /** How far they are in each other, mm. */
  readonly engagement: Quantity | null
  /** Outer diameter of the part around a press fit, mm. */
  readonly around: Quantity | null
  readonly locker: boolean
  readonly fasteners: readonly Count[]
  readonly from: string | null
  /** How much what is put bends on its way in from `from`; `null`: it does not. */
  readonly gives: Quantity | null
  readonly turn: string | null
  readonly tool: NamedTool | null
  readonly fixture: string | null
  readonly machine: string | null
  readonly torque: Quantity | null
  readonly adhesive: string | null
  /** Seconds; a wait that nobody attends, before anything else touches it. */
  readonly cure: ThreePoint | null
  /** Seconds of hands for one device. */
  readonly time: ThreePoint
  /** Whether the time was assumed because the source gives none. */
  readonly timeAssumed: boolean
  readonly check: string | null
  readonly cautions: readonly string[]
  readonly shuts: readonly OpeningAt[]
  readonly opens: readonly OpeningAt[]
  readonly test: string | null
  readonly action: string | null
  readonly needs: readonly Target[]
  readonly reaches: readonly { readonly text: string; readonly at: Place }[]
  readonly after: readonly After[]
  readonly before: readonly Target[]
  readonly beforeLastOf: readonly Target[]
  /** What is put only lies there until these fasten it: nothing turns the work over in between. */
  readonly looseUntil: readonly Target[]
  /** Longest wait after the step written just before it. */
  readonly within: Minutes | null
  readonly fails: Fraction | null
  readonly rework: ThreePoint | null
  readonly together: boolean
  readonly note: string | null
}

/** A constraint on the order of steps of one assembly, with the statement it comes from. */
export type OrderConstraint =
  /** One of `needs` is done before `step`: the thing it touches must be there, and one copy of it is enough. */
  | {
      readonly form: 'presence'
      readonly step: string
      readonly needs: readonly string[]
      readonly at: Place
      readonly why: Why
    }
  /** `step` is done before each of `of`. */
  | {
      readonly form: 'before'
      readonly step: string
      readonly of: readonly string[]
      readonly at: Place
      readonly why: Why
    }
  /** `step` is done before the last of `of` is done; never holds the step back where it is one of them. */
  | {
      readonly form: 'before last of'
      readonly step: string
      readonly of: readonly string[]
      readonly at: Place
      readonly why: Why
    }
  /** One of the openings is open when `step` begins; only where a written step opens one of them again. */
  | {
      readonly form: 'while open'
      readonly step: string
      readonly body: string
      readonly openings: readonly string[]
      /** Holds only once all of these are done; empty: always. */
      readonly once: readonly string[]
      readonly at: Place
      readonly why: Why
    }
  /** The opening is shut when `step` begins: what opens again finds it shut. */
  | {
      readonly form: 'while shut'
      readonly step: string
      readonly body: string
      readonly opening: string
      readonly at: Place
      readonly why: Why
    }
  /** `step` does not come between `from` and `until`: once `from` is done it waits for `until`. */
  | {
      readonly form: 'not between'
      readonly step: string
      readonly from: string
      readonly until: string
      readonly at: Place
      readonly why: Why
    }

/** Which key of the source a constraint comes from. */
export type Why =
  | 'in'
  | 'through'
  | 'on'
  | 'shut'
  | 'open'
  | 'after'
  | 'before'
  | 'before_last_of'
  | 'reaches'
  | 'needs'
  | 'within'
  | 'loose_until'
  /** The meshes of the parts. */
  | 'model'

/** A statement that holds nothing back, because no step shuts the opening. */
export interface VoidRule {
  readonly step: string
  readonly body: string
  readonly opening: string
  readonly at: Place
  readonly why: Why
}

/** A link between two steps that a constraint needs. */
export interface OrderLink {
  readonly before: string
  readonly after: string
  readonly constraint: OrderConstraint
}

/** What planning the order of one assembly gives. */
export interface AssemblyOrder {
  readonly of: string | null
  readonly at: Place
  readonly constraints: readonly OrderConstraint[]
  /** Step ids in the order taken; `null`: no order exists, or none was found (`proved` tells). */
  readonly order: readonly string[] | null
  /** Links between steps that the constraints need, each disjunction settled as in `order`. */
  readonly links: readonly OrderLink[]
  /** Where there is none: constraints that cannot hold together, in the order of the ring where they form one. */
  readonly conflict: readonly OrderConstraint[]
  /** Steps that wait for each other, where the conflict is a plain ring: one per constraint of `conflict`. */
  readonly ring: readonly string[] | null
  /** Whether no constraint of `conflict` can be spared: without any one of them the rest can hold together. */
  readonly minimal: boolean
  /** Whether no fewer constraints than those of `conflict` are in conflict. */
  readonly smallest: boolean
  readonly void: readonly VoidRule[]
  /** What meshes asked and typed statements leave no room for. */
  readonly setAside: readonly OrderConstraint[]
  /** Whether no order has fewer turnings over, or as many and fewer tool changes; or the conflict is certain. */
  readonly proved: boolean
  /** Whether of all that have as few none has its tests earlier, or as early and is nearer to the order written. */
  readonly nearest: boolean
  /** How many orders keep all constraints; `null`: too many to count within bounds. */
  readonly feasibleOrders: bigint | null
  /** States that the search for the best went into. */
  readonly states: number
  readonly turns: number
  /** Steps that type no direction and to which the meshes leave one alone; whether `turns` counts them like typed ones. */
  readonly sidesByMeshes: { readonly steps: number; readonly counted: boolean }
  readonly toolChanges: number
}
