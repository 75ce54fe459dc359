import type { Place } from '../base/place.ts'
import type { Step } from './assembly.ts'
import type { WayOfStep } from './from-meshes.ts'
import type { UndoCost } from './undo-cost.ts'

/** How a part is got at for repair: one way for each place it sits in. */
export interface Repair {
  readonly part: string
  readonly ways: readonly RepairWay[]
}

/** The way to a part in one place, outermost assembly first. */
export interface RepairWay {
  /** Assemblies and steps that lead to it, outermost first; the last step puts it, or is `null` where it is the ground. */
  readonly path: readonly { readonly assembly: string | null; readonly step: string | null }[]
  /** The board it is soldered on, which is what is taken out; `null`: none. */
  readonly board: string | null
  readonly legs: readonly RepairLeg[]
  readonly harm: Harm
  /** The same with what it sits in left where it is; only where that does far less harm. */
  readonly inPlace: { readonly legs: readonly RepairLeg[]; readonly harm: Harm } | null
}

/** What a way costs, in the order in which ways are compared. */
export interface Harm {
  readonly destroyed: number
  readonly care: number
  readonly steps: number
}

/** What is undone in one assembly, and done again on the way back. */
export interface RepairLeg {
  /** `null`: the device. */
  readonly assembly: string | null
  readonly undo: readonly Undoing[]
  readonly back: readonly Redoing[]
  /** Whether all ways were searched: none does less harm. */
  readonly proved: boolean
}

/** One step that is undone. */
export interface Undoing {
  readonly step: Step
  readonly cost: UndoCost
  /** What asked for it; `null`: it is what is wanted. */
  readonly because: UndoBecause | null
  /** Only words of order ask for it (`after`, `before`): it may not be in the way at all. */
  readonly byWordsAlone: boolean
  /** Parts joined for good to what comes off, which come along. */
  readonly along: readonly string[]
  /** Where it goes out by its meshes; `null`: it is typed how it goes in, or they do not tell. */
  readonly way: WayOfStep | null
}

/** Why a step is undone: which step it is in the way of, and which statement says so. */
export interface UndoBecause {
  readonly step: string
  readonly why: UndoWhy
  readonly at: Place
  /** Whether parts touch or stop each other or a way out is shut; otherwise words of order alone say it. */
  readonly sure: boolean
}

/** What a statement says of two steps: the one touches what the other put, shuts or stops its way out, or was to come after it. */
export type UndoWhy =
  | 'on'
  | 'in'
  | 'shut'
  | 'mates'
  | 'way out'
  | 'reaches'
  | 'before_last_of'
  | 'after'
  | 'before'
  /** Meshes: the one leaves the parts of the other, or the screws of it, no straight way out. */
  | 'stops'
  | 'stops fastener'
  /** It is what is wanted. */
  | 'wanted'

/** One step on the way back. */
export interface Redoing {
  readonly step: Step
  readonly what: 'again' | 'prepare' | 'repeat'
  /** Where it comes in again by its meshes. */
  readonly way: WayOfStep | null
}

/** A wearing part that cannot be renewed without destroying another joint. */
export interface WornOut {
  readonly part: string
  readonly at: Place
  /** `null`: the device. */
  readonly destroys: readonly { readonly assembly: string | null; readonly step: Step }[]
}
