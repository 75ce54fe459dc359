/**
 * The report in facts: what `fettle plan --json` prints. Versioned; its shape is schemas/report.schema.json.
 * Times are local ISO without zone, money is decimal text, counts and minutes are numbers.
 */

/** Decimal text, or what is known and what is not where a price is missing. */
export type Amount = string | { readonly known: string; readonly unknown: readonly string[] }

/** The whole report of a plan. */
export interface ReportModel {
  readonly report: 'fettle'
  readonly version: 1
  readonly device: {
    readonly name: string
    readonly revision: string | null
    readonly qty: number
    readonly start: string
    readonly wanted: string | null
  }
  /** When the last task is done. */
  readonly finish: string
  /** Days past the wanted date; negative: early; `null`: none wanted. */
  readonly daysLate: number | null
  /** No schedule finishes before this, by links, hours and the work there is for them; and in words how much better is possible. */
  readonly bound: { readonly finish: string; readonly gapDays: number; readonly says: string }
  /** How sure the date is; `null`: asked for without samples. */
  readonly risk: ReportRisk | null
  readonly cost: ReportCost
  readonly parts: readonly ReportPart[]
  readonly carts: readonly ReportCart[]
  readonly tasks: readonly ReportTask[]
  readonly making: readonly ReportOperation[]
  readonly drivingChain: readonly ReportChainStep[]
  readonly criticalChains: readonly (readonly string[])[]
  /** How many critical chains there are in all, as text: it may be large. */
  readonly criticalChainCount: string
  readonly assembly: readonly ReportAssembly[]
  readonly trialFits: readonly ReportTrialFit[]
  readonly sessions: readonly ReportSession[]
  readonly inspection: readonly ReportInspection[]
  readonly chains: readonly ReportChain[]
  readonly findings: readonly ReportFinding[]
  readonly tables: readonly ReportTable[]
}

/** What one part, process, vendor or device bears. */
export interface ReportShare {
  readonly id: string
  readonly amount: string
  readonly unknown: boolean
}

/** The views of the money, with their shares. */
export interface ReportCost {
  readonly currency: string
  readonly cash: Amount
  readonly charged: Amount
  readonly leftOver: Amount
  readonly fromOwnStock: Amount
  readonly hoursAtRate: Amount
  readonly byPart: readonly ReportShare[]
  readonly byProcess: readonly ReportShare[]
  readonly byVendor: readonly ReportShare[]
  readonly byDevice: readonly ReportShare[]
  readonly expectedLoss: readonly { readonly part: string; readonly amount: string | null }[]
}

/** How sure the date is, from the plan laid out so many times with times and parcels as they may turn out. */
export interface ReportRisk {
  readonly samples: number
  readonly unplaced: number
  readonly finishBy: readonly { readonly chance: number; readonly finish: string | null }[]
  /** Shares of the samples. */
  readonly asPlanned: number
  readonly wanted: number | null
  readonly critical: readonly { readonly task: string; readonly share: number }[]
  readonly spread: readonly {
    readonly kind: string
    readonly of: string
    readonly correlation: number
    readonly days: number
    readonly says: string
  }[]
  readonly levers: readonly {
    readonly kind: string
    readonly of: string
    readonly person: string | null
    readonly finish: string
    readonly days: number
    readonly says: string
  }[]
  /** Days that the search for levers brings without any. */
  readonly searchAlone: number
  readonly tonight: readonly {
    readonly task: string
    readonly person: string
    /** The next session of the person. */
    readonly from: string
    readonly to: string
    /** Planned for it; otherwise planned later. */
    readonly planned: boolean
    readonly days: number
    readonly share: number
    readonly says: string
  }[]
}

/** One part: how many, and when all are here. */
export interface ReportPart {
  readonly name: string
  readonly kind: string
  readonly role: string
  readonly perDevice: number
  readonly needed: number
  readonly spares: number
  readonly fromStock: number
  readonly toGet: number
  /** The print job it shares with others; `null`: none. */
  readonly plate: string | null
  readonly ready: string
  /** Grams of one; `null`: not known. */
  readonly mass: number | null
  /** Sums behind its mesh and a mass that nobody stated. */
  readonly measured: readonly string[]
}

/** One order to one vendor. */
export interface ReportCart {
  readonly id: string
  readonly vendor: string
  /** When the order is placed in the plan; at the latest as people and machines are planned; and for the goods alone. */
  readonly order: string
  readonly latest: string
  readonly latestAlone: string
  /** The last evening that keeps 80 % of the wanted date, or of the plan's 80 % date; `null`: none, or not asked. */
  readonly safe: string | null
  readonly arrives: string
  readonly total: Amount
  readonly lines: readonly {
    readonly id: string
    readonly title: string
    readonly needed: number
    readonly quantity: number
    /** In `currency`. */
    readonly unitPrice: string | null
    readonly currency: string
    readonly landed: string | null
  }[]
}

/** One task with its dates and what it waits for. */
export interface ReportTask {
  readonly id: string
  readonly title: string
  readonly kind: string
  readonly part: string | null
  readonly cart: string | null
  readonly plate: string | null
  readonly work: string | null
  readonly assembly: string | null
  readonly step: string | null
  readonly device: number | null
  readonly lot: number | null
  readonly attention: string
  readonly people: readonly string[]
  readonly machine: string | null
  readonly minutes: number
  readonly likelyMinutes: number
  readonly start: string
  readonly finish: string
  /** Latest start and finish that keep the plan's finish. */
  readonly latest: string
  readonly latestFinish: string
  /** Open minutes of its own calendar between early and late start, capacities dropped. */
  readonly float: number
  readonly freeFloat: number
  readonly critical: boolean
  readonly pieces: readonly { readonly from: string; readonly to: string }[]
  readonly waitsFor: readonly { readonly task: string; readonly says: string }[]
}

/** One operation of a route, with what was worked out for it. */
export interface ReportOperation {
  readonly part: string
  /** Step of the route, counted from 1; 0: the print, or the bare board. */
  readonly step: number
  readonly process: string
  readonly machine: string | null
  readonly cutter: string | null
  /** Mean seconds for one piece, or for the lot; `null`: not known. */
  readonly seconds: number | null
  readonly timeFrom: string
  readonly rpm: number | null
  /** Millimetres per minute. */
  readonly feed: number | null
  /** Watts at the cut, an estimate. */
  readonly power: number | null
  readonly worked: readonly string[]
  readonly assumed: readonly string[]
}

/** One step of the chain that sets the finish. */
export interface ReportChainStep {
  readonly task: string
  readonly title: string
  readonly start: string
  readonly finish: string
  /** Kind of its cause, the first of the reasons. */
  readonly because: string
  readonly says: string
  /** All that it waited for, one after the other, the last until its start. */
  readonly reasons: readonly {
    readonly kind: string
    /** In whose way it stood: itself, or a task that must follow it closely. */
    readonly task: string
    readonly until: string
    readonly says: string
  }[]
}

/** The order in which one assembly goes together: its steps as they are planned. */
export interface ReportAssembly {
  /** The part, or `null` for the device. */
  readonly of: string | null
  /** Whether the order was proved best. */
  readonly proved: boolean
  readonly turns: number
  readonly toolChanges: number
  /** How many orders keep all statements, as text: it may be large; `null`: too many to count. */
  readonly feasibleOrders: string | null
  /** How sure the order is, and how many there are, in words. */
  readonly says: string
  /** What meshes in assembled place asked of the order; `null`: none of its parts stands there. */
  readonly meshes: {
    readonly demands: number
    readonly setAside: number
    /** Steps whose place rests on typed facts alone. */
    readonly typedAlone: readonly string[]
  } | null
  readonly steps: readonly {
    readonly step: string
    readonly put: string | null
    readonly count: number | null
    readonly after: readonly string[]
    /** Statements that hold this step to its place, and those by which it holds others. */
    readonly held: readonly ReportRule[]
    readonly holds: readonly ReportRule[]
    /** Where it comes from by its meshes; `null`: it is typed, or they do not tell. */
    readonly way: ReportWayOfStep | null
    /** What meets in it; `null`: nothing is known. */
    readonly join: ReportJoin | null
  }[]
}

/** Directions of the device that a step comes from: `+x` is right, `+y` rear, `+z` above. */
export interface ReportWayOfStep {
  readonly from: readonly string[]
  /** Of its fasteners, where it differs. */
  readonly fastenedFrom: readonly string[]
  readonly says: string
}

/** What can be tried together on a day and taken apart again without harm. */
export interface ReportTrialFit {
  readonly day: string
  readonly says: string
  /** Dimension chains of which all parts are there. */
  readonly chains: readonly string[]
  readonly legs: readonly {
    /** The part, or `null` for the device. */
    readonly assembly: string | null
    /** Whether nothing but tests is left out. */
    readonly whole: boolean
    readonly steps: readonly string[]
    readonly withCare: readonly string[]
    readonly meets: readonly string[]
    readonly checks: readonly string[]
    readonly tests: readonly string[]
  }[]
}

/** A statement about the order of steps, and where it stands. */
export interface ReportRule {
  readonly says: string
  /** The key it stands under. */
  readonly key: string
  readonly file: string
  readonly line: number
}

/** Two features that meet in a step, and what follows from it. */
export interface ReportJoin {
  readonly sort: string
  /** `part.feature` and its text. */
  readonly first: { readonly of: string; readonly text: string }
  readonly second: { readonly of: string; readonly text: string }
  readonly written: boolean
  /** Micrometres of diameter, below 0 where metal overlaps. */
  readonly fit: {
    readonly kind: string
    readonly largestClearance: number
    readonly smallestClearance: number
  } | null
  /** Newtons, megapascals and newton metres, least and most. */
  readonly press: {
    readonly force: readonly number[]
    readonly pressure: readonly number[]
    readonly torque: readonly number[]
    readonly hoop: readonly number[]
  } | null
  readonly says: readonly string[]
  readonly worked: readonly string[]
  readonly assumed: readonly string[]
}

/** A dimension chain added up, in millimetres. */
export interface ReportChain {
  readonly name: string
  /** As typed. */
  readonly must: string
  readonly mustLeast: number
  readonly mustMost: number
  readonly middle: number
  readonly worstLeast: number
  readonly worstMost: number
  readonly statisticalLeast: number
  readonly statisticalMost: number
  /** Share of drawn devices outside, 0 to 1. */
  readonly outside: number
  readonly drawn: number
  readonly holds: string
  readonly links: readonly {
    readonly of: string
    readonly factor: number
    readonly least: number
    readonly most: number
    readonly share: number
  }[]
  readonly worked: readonly string[]
}

/** One unbroken stretch of work of one person. */
export interface ReportSession {
  readonly person: string
  readonly from: string
  readonly to: string
  readonly work: readonly {
    readonly task: string
    readonly title: string
    readonly from: string
    readonly to: string
  }[]
}

/** One line to measure. */
export interface ReportInspection {
  readonly number: number
  readonly of: string
  readonly feature: string
  readonly requirement: string
  readonly lower: number | null
  readonly upper: number | null
  readonly unit: string | null
  readonly limitsOf: string | null
  readonly pieces: number
}

/** One error or warning, where it stands, and the mend. */
export interface ReportFinding {
  readonly code: string
  readonly level: string
  readonly file: string
  readonly line: number
  readonly column: number
  readonly says: string
  readonly mend: string
}

/** A table of the workbook with plain values. */
export interface ReportTable {
  readonly sheet: string
  readonly table: string
  readonly columns: readonly string[]
  readonly rows: readonly (readonly (string | number | null)[])[]
}
