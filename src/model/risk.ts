import type { Instant, Minutes } from '../base/clock.ts'

/** How sure the date is: the plan laid out again and again with times and parcels as they may turn out. */
export interface Risk {
  /** How many times it was laid out. */
  readonly samples: number
  /** Samples that found no place: work longer than any window, or beyond all calendars. They count as never done. */
  readonly unplaced: number
  /** Finishes that so many of the samples keep, least chance first. */
  readonly finishBy: readonly ChanceDate[]
  /** Share of samples done no later than the plan says. */
  readonly asPlanned: number
  /** Share of samples done on the wanted day or before; `null`: none is wanted. */
  readonly wanted: number | null
  /** By task: share of samples in which it is on the chain that sets the finish. */
  readonly critical: ReadonlyMap<string, number>
  /** What spreads the date most, strongest first. */
  readonly spread: readonly SpreadBy[]
  /** By cart: the last evening that keeps 80 %. */
  readonly safe: ReadonlyMap<string, SafeDate>
  /** What would bring the date nearer, most days first; at most five. */
  readonly levers: readonly Lever[]
  /** Days that the search for them brings without any change; no lever is given credit for those. */
  readonly searchAlone: number
  /** What is worth doing in the next session of each person, session by session, most days first. */
  readonly tonight: readonly TonightAction[]
}

/** A finish that a share of the samples keeps. */
export interface ChanceDate {
  /** 0 to 1. */
  readonly chance: number
  /** `null`: fewer samples than that are ever done. */
  readonly finish: Instant | null
}

/** What is drawn anew in each sample. */
export type SpreadKind = 'time' | 'lead' | 'transit' | 'fails' | 'bad pieces'

/** One uncertain thing and how the finish goes with it. */
export interface SpreadBy {
  readonly kind: SpreadKind
  /** Task, cart or part by name. */
  readonly of: string
  /** Rank correlation with the finish over the samples, -1 to 1. */
  readonly correlation: number
  /** Mean finish of the fifth of the samples with its largest values less that of the fifth with its smallest, days. */
  readonly days: number
}

/** The last order of a cart that keeps 80 % of a date, each cart by itself and the others as planned. */
export interface SafeDate {
  /** Opening of the last evening on which it may be ordered, not before the plan's own; `null`: below 80 % already. */
  readonly order: Instant | null
  /** Samples it was tried on. */
  readonly samples: number
}

/** What may be changed to bring the date nearer. */
export type LeverKind =
  | 'order earlier'
  | 'one more evening'
  | 'second machine'
  | 'any hours'
  | 'one more user'

/** A change that would bring the date nearer, solved again. */
export interface Lever {
  readonly kind: LeverKind
  /** Cart, person or machine. */
  readonly of: string
  /** Who may use the machine too; `null` elsewhere. */
  readonly person: string | null
  /** Day of the week (0 Monday) of the evening more; `null` elsewhere. */
  readonly weekday: number | null
  readonly finish: Instant
  /** Days the finish comes earlier than the same search finds without the change. */
  readonly days: number
}

/** What an evening is worth on which something is done that can be. */
export interface TonightAction {
  readonly task: string
  readonly person: string
  /** The session, the next one of this person. */
  readonly open: Instant
  readonly close: Instant
  /** Planned for this session; otherwise planned later, though it could be begun now. */
  readonly planned: boolean
  /** When the person is there next after it. */
  readonly until: Instant
  /** Mean days that it saves: against waiting a session where it is planned, else against the plan. */
  readonly days: number
  /** Share of samples in which it moves the finish. */
  readonly share: number
  /** Why it matters, the weightiest first. */
  readonly why: readonly WorthWhy[]
}

/** A reason why something is worth doing. */
export type WorthWhy =
  /** Vendors and carriers begin to work: so many days until the goods are here, in the plan. */
  | { readonly kind: 'starts waiting'; readonly days: number }
  /** Something begins to run or to harden that needs nobody. */
  | { readonly kind: 'starts running'; readonly machine: string | null; readonly minutes: Minutes }
  /** A machine is free after it for others. */
  | { readonly kind: 'frees'; readonly machine: string }
  /** Share of the samples in which it is on the chain that sets the date. */
  | { readonly kind: 'on chains'; readonly share: number }
  /** So many tasks come after it, directly or not. */
  | { readonly kind: 'opens'; readonly tasks: number }
