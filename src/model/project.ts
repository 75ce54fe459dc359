/**
 * The resolved project: every unit read, every name found. A value that was faulted in the source is `null`, and
 * later stages skip it: its diagnostic has been given.
 */
import type Fraction from 'fraction.js'
import type { Day, Minutes } from '../base/clock.ts'
import type { Place, Placed } from '../base/place.ts'
import type { Quantity } from '../base/quantity.ts'
import type { ThreePoint } from '../base/three-point.ts'
import type { AssemblyPlan } from './assembly.ts'
import type { Cutting } from './cutting.ts'
import type { MeshFacts, PlacedMesh } from './mesh.ts'
import type { Attrition, BoardMade, BoardPanel, ComponentGroup } from './placements.ts'
import type { PrintPiece, PrintRun, PrintSaid } from './print.ts'

/** A project with every unit read and every name found. */
export interface Project {
  readonly file: string
  readonly fingerprint: string
  readonly device: Device
  readonly limits: Limits
  /** Price of one unit of a foreign currency in the project's currency. */
  readonly exchange: ReadonlyMap<string, Fraction>
  readonly people: ReadonlyMap<string, Person>
  readonly machines: ReadonlyMap<string, Machine>
  readonly tools: ReadonlyMap<string, Tool>
  readonly cutters: ReadonlyMap<string, Cutter>
  readonly materials: ReadonlyMap<string, Material>
  readonly vendors: ReadonlyMap<string, Vendor>
  readonly plates: ReadonlyMap<string, Plate>
  readonly work: ReadonlyMap<string, Work>
  readonly parts: ReadonlyMap<string, Part>
  /** How the device goes together; `null` where the project has no assembly. */
  readonly assembly: AssemblyPlan | null
  readonly chains: ReadonlyMap<string, Chain>
  /** How many of each part the device, the batch and the shelf ask for; every part has an entry. */
  readonly demand: ReadonlyMap<string, Demand>
  /** Meshes of which it is said where they stand in the device, in the order of the source. */
  readonly meshes: readonly PlacedMesh[]
}

/** Classes of general tolerances: fine, medium, coarse, very coarse. Source: ISO 2768-1. */
export type GeneralClass = 'f' | 'm' | 'c' | 'v'

/** What is built, how many, and between which days. */
export interface Device {
  readonly at: Place
  readonly name: string
  readonly revision: string | null
  readonly description: string | null
  readonly qty: number
  readonly currency: string
  /** Class of general tolerances of ISO 2768-1 for sizes without their own; `null`: none is said. */
  readonly general: GeneralClass | null
  readonly start: Day
  readonly wanted: { readonly day: Day; readonly at: Place } | null
}

/** What the plan must stay under; `null`: no limit. */
export interface Limits {
  /** Major units of the project's currency. */
  readonly cash: { readonly value: Fraction; readonly at: Place } | null
  readonly mass: { readonly quantity: Quantity; readonly at: Place } | null
  readonly envelope: { readonly text: string; readonly at: Place } | null
}

/** Minutes of a day, half-open. */
export interface DaySpan {
  readonly open: Minutes
  readonly close: Minutes
}

/** First and last day, both included. */
export interface DayRange {
  readonly first: Day
  readonly last: Day
}

/** Weekly hours with exceptions; `weekly[0]` is Monday. */
export interface Hours {
  readonly weekly: readonly (readonly DaySpan[])[]
  readonly off: readonly DayRange[]
  /** Replaces the weekday's hours on that date. */
  readonly extra: ReadonlyMap<Day, readonly DaySpan[]>
}

/** Which days count, `weekly[0]` Monday. */
export interface DayPattern {
  readonly weekly: readonly boolean[]
  readonly off: readonly DayRange[]
}

/** Somebody who works on it, with hours and a rate. */
export interface Person extends Placed {
  /** `null`: no hours were given (a diagnostic says so). */
  readonly hours: Hours | null
  /** Project currency (major units) per hour. */
  readonly rate: Fraction
  readonly setUp: Minutes
  readonly cleanUp: Minutes
}

/** A machine with its hours, its rate and who may use it. */
export interface Machine extends Placed {
  /** `null`: always open. */
  readonly hours: Hours | null
  /** Project currency (major units) per hour. */
  readonly rate: Fraction
  readonly capacity: number
  /** People who may use it; everybody where silent, in source order. */
  readonly users: readonly string[]
  /** Along X, Y and Z. */
  readonly travel: readonly [Quantity, Quantity, Quantity] | null
  /** `slowest`, `fastest` and `power` of the spindle, where they are said. */
  readonly spindle: ReadonlyMap<string, Quantity>
  /** Its other quantities, by key: `tool change`, `fastest feed`, `headroom`. */
  readonly numbers: ReadonlyMap<string, Quantity>
  readonly prints: 'vat' | 'filament' | null
  /** mm3 per second. */
  readonly deposits: Quantity | null
  /** Of a printer: room for parts along X, Y and Z. */
  readonly bed: readonly [Quantity, Quantity, Quantity] | null
  /** Of a vat printer: first layers that are lit longer. */
  readonly bottomLayers: number | null
  readonly note: string | null
}

/** A tool that steps ask for, with how many and when it is here. */
export interface Tool extends Placed {
  readonly qty: number
  readonly from: Day | null
  readonly until: Day | null
  /** `diameter` and `reach` of its shaft, where they are said. */
  readonly numbers: ReadonlyMap<string, Quantity>
}

/** A cutter with its life and what is here. */
export interface Cutter extends Placed {
  readonly have: number
  /** Seconds of cutting. */
  readonly life: ThreePoint | null
  /** Major units of the project's currency. */
  readonly worth: Fraction | null
  readonly offers: readonly Offer[]
  /** Further facts as typed, for the route sheet: key and text. */
  readonly facts: ReadonlyMap<string, string>
  /** Those of them that are quantities, by key: `diameter`, `reach`. */
  readonly numbers: ReadonlyMap<string, Quantity>
}

/** What parts are made of, and the forms it is bought in. */
export interface Material extends Placed {
  readonly density: Quantity | null
  /** The entry of the tables of the trade it is taken for; `null`: none. */
  readonly like: string | null
  /** Millimetres. */
  readonly kerf: Quantity
  /** End of every bar that stays in the vice or chuck and cannot be used, millimetres. */
  readonly grip: Quantity
  readonly forms: readonly MaterialForm[]
  readonly cautions: readonly string[]
}

/** Size of a piece of bar, plate or block, or an amount by volume or mass; lengths in mm, volume in mm3, mass in g. */
export type Size =
  | { readonly shape: 'bar'; readonly across: Quantity; readonly length: Quantity }
  | {
      readonly shape: 'plate' | 'block'
      readonly length: Quantity
      readonly width: Quantity
      readonly thickness: Quantity
    }
  | { readonly shape: 'volume'; readonly volume: Quantity }
  | { readonly shape: 'mass'; readonly mass: Quantity }

/** One size in which a material is bought or lies here. */
export interface MaterialForm {
  readonly at: Place
  /** Unique in the project, made of material and size: `al-6082 bar 20 mm`. */
  readonly id: string
  readonly size: Size
  /** What is here, in whole units and fractions of one (0.48 of a bar). */
  readonly have: Fraction
  readonly worth: Fraction | null
  readonly offers: readonly Offer[]
}

/** Who sells: days, cutoff, transit and the charges of an order. */
export interface Vendor extends Placed {
  readonly days: DayPattern
  readonly cutoff: Minutes
  readonly post: Minutes
  /** Carrier working days. */
  readonly transit: ThreePoint
  readonly carrier: DayPattern
  readonly currency: string
  /** Money in the vendor's currency, major units; `null`: none. */
  readonly freight: Fraction | null
  readonly freeOver: Fraction | null
  readonly minimumOrder: Fraction | null
  readonly clearance: Fraction | null
  /** Ratios. */
  readonly duty: Fraction
  readonly tax: Fraction
  /** Seconds of hands. */
  readonly order: ThreePoint
  readonly receive: ThreePoint
  readonly url: string | null
}

/** The price of one unit from a quantity on. */
export interface PriceBreak {
  readonly from: number
  /** Major units of the offer's currency, exact. */
  readonly price: Fraction
}

/** What a vendor asks for a thing, and how long it takes. */
export interface Offer {
  readonly at: Place
  readonly vendor: string
  /** Ascending by `from`, the first from 1 or the least order; `null`: price unknown. */
  readonly prices: readonly PriceBreak[] | null
  readonly currency: string
  /** Vendor working days; `null`: missing or faulted (a diagnostic says so). */
  readonly lead: ThreePoint | null
  readonly pack: number
  readonly moq: number
  /** Least charge of the line, major units of `currency`. */
  readonly minimum: Fraction | null
  readonly code: string | null
  readonly url: string | null
  readonly cart: string | null
  readonly needs: readonly Target[]
  readonly note: string | null
}

/** What a link or a need points at. */
export type Target =
  | { readonly kind: 'work'; readonly id: string; readonly at: Place }
  | { readonly kind: 'part'; readonly id: string; readonly at: Place }
  /** A step of the device (`assembly: null`) or of a part of kind assembly. */
  | { readonly kind: 'step'; readonly assembly: string | null; readonly id: string; readonly at: Place }
  /** The steps that shut it. */
  | {
      readonly kind: 'opening'
      readonly assembly: string | null
      readonly body: string
      readonly opening: string
      readonly at: Place
    }

/** Waits for a target: finish to start. */
export interface After {
  readonly target: Target
  /** Elapsed minutes, or carrier working days. */
  readonly lag: { readonly minutes: Minutes } | { readonly workingDays: number }
  readonly within: Minutes | null
  readonly at: Place
}

/** What a part is for. */
export type Role = 'device' | 'fixture' | 'consumable' | 'tool'
/** Whether work takes a person whole, one within reach, or nobody. */
export type Attention = 'hands' | 'nearby' | 'none'

/** Who may do a piece of work, and how it may be interrupted. */
export interface Labour {
  readonly attention: Attention
  /** People who may do it, in source order; not empty unless the project has nobody. */
  readonly who: readonly string[]
  /** How many at once. */
  readonly people: number
  readonly pausable: boolean
  readonly least: Minutes
}

/** A dimension, fit or thread of a part, by name. */
export interface Feature {
  readonly name: string
  /** As typed: `6 H7`, `M14x1-6H`, `4.2 ± 0.05 mm`. */
  readonly text: string
  readonly at: Place
}

/** A feature of a part as another entry names it: `hub.thread`. */
export interface FeatureAt {
  readonly part: string
  readonly feature: string
  readonly at: Place
}

/** A part: what it is for and how it comes to be. */
export interface Part extends Placed {
  readonly role: Role
  /** As written; `null` where silent. */
  readonly qty: { readonly count: number; readonly at: Place } | null
  readonly spares: number
  readonly have: number
  readonly worth: Fraction | null
  readonly number: string | null
  readonly description: string | null
  readonly revision: string | null
  readonly drawing: string | null
  /** Its own class of general tolerances; `null`: the device's. */
  readonly general: GeneralClass | null
  /** Grams. */
  readonly mass: Quantity | null
  /** How a mass that nobody stated was worked out; empty: it was stated, or is not known. */
  readonly massWorked: readonly string[]
  /** Share of tries that come out good, above 0 to 1. */
  readonly yield: Fraction
  /** How many are started for each one needed. */
  readonly tries: number
  readonly wears: boolean
  readonly cautions: readonly string[]
  readonly note: string | null
  readonly after: readonly After[]
  /** Name of the way taken and of those left; `null`: written straight on the part. */
  readonly choice: { readonly taken: string; readonly left: readonly string[] } | null
  readonly way: Way
}

/** How a part comes to be. */
export type Way = MachinedWay | PrintedWay | BoardWay | BoughtWay | AssemblyWay

/** What every way that passes a route has. */
export interface Routed {
  readonly lot: number | null
  readonly features: readonly Feature[]
  readonly model: string | null
  /** Volume, area and box as stated, else as the mesh has them; `null`: neither says anything. */
  readonly finished: Finished | null
  /** `null`: no mesh is named, or it cannot be read (a diagnostic says so). */
  readonly mesh: MeshFacts | null
  readonly route: readonly RouteStep[]
}

/** Size of a finished part, as far as it is stated. */
export interface Finished {
  /** mm3. */
  readonly volume: Quantity | null
  /** mm2. */
  readonly area: Quantity | null
  readonly box: readonly [Quantity, Quantity, Quantity] | null
}

/** Made by hand or machine along a route. */
export interface MachinedWay extends Routed {
  readonly kind: 'machined'
  readonly material: string | null
  readonly stock: Stock | null
}

/** The raw piece that a machined part is cut from. */
export interface Stock {
  readonly at: Place
  readonly size: Size
  /** Millimetres. */
  readonly kerf: Quantity
  /** Sawn longer by so much for facing, both ends together, millimetres; `null`: none. */
  readonly facing: Quantity | null
  /** The form of the material it is cut from; `null`: bought by the piece through `offers`, or nothing matches. */
  readonly form: string | null
  readonly offers: readonly Offer[]
}

/** One run of a printer: times, material and what follows it. */
export interface PrintJob {
  readonly at: Place
  readonly machine: string | null
  readonly material: string | null
  /** Seconds for one piece (part) or the job (plate); `null`: from volume. */
  readonly time: ThreePoint | null
  readonly load: ThreePoint | null
  readonly unload: ThreePoint | null
  readonly wash: ThreePoint | null
  readonly dry: ThreePoint | null
  readonly cure: ThreePoint | null
  /** Of a person while it prints; `null`: as usual for the printer. */
  readonly attention: Attention | null
}

/** Printed, alone or on a plate with others. */
export interface PrintedWay extends Routed {
  readonly kind: 'printed'
  readonly job: PrintJob
  /** mm3 of material for one piece, supports included: as stated, else worked out. */
  readonly volume: Quantity | null
  readonly volumeFrom: 'stated' | 'computed'
  /** Layer height, mm. */
  readonly layer: Quantity | null
  readonly plate: string | null
  readonly said: PrintSaid
  readonly piece: PrintPiece
  /** Printed alone: the runs of each lot. */
  readonly runs: readonly (readonly PrintRun[])[]
}

/** One print job that several parts share. */
export interface Plate extends Placed {
  readonly job: PrintJob
  readonly after: readonly After[]
  /** Parts on it, by name. */
  readonly parts: readonly string[]
  /** How often it is printed until all pieces are there: once, unless they do not fit together. */
  readonly runs: readonly PrintRun[]
}

/** A board: bought bare or stuffed, then soldered. */
export interface BoardWay extends Routed {
  readonly kind: 'board'
  /** Length and width. */
  readonly outline: readonly [Quantity, Quantity] | null
  readonly layers: number | null
  readonly thickness: Quantity | null
  readonly offers: readonly Offer[]
  readonly made: BoardMade | null
  readonly panel: BoardPanel | null
  /** Components by value and package, as the placements list them; none where no file is named. */
  readonly components: readonly ComponentGroup[]
  /** Sums about the bare board: panels, traces. */
  readonly worked: readonly string[]
  readonly places: readonly Count[]
  /** Soldering one board. */
  readonly solder: Operation | null
}

/** Bought as it is. */
export interface BoughtWay extends Routed {
  readonly kind: 'bought'
  readonly offers: readonly Offer[]
  /** As placements name it. */
  readonly value: string | null
  readonly package: string | null
  readonly attrition: Attrition | null
}

/** Put together apart from the device. */
export interface AssemblyWay {
  readonly kind: 'assembly'
  readonly plan: AssemblyPlan
}

/** `part xN`. */
export interface Count {
  readonly part: string
  readonly count: number
  readonly at: Place
}

/** One step of a route. */
export type RouteStep =
  | SetupStep
  /** Work outside a setup: hands, or a cure. */
  | { readonly kind: 'work'; readonly at: Place; readonly operation: Operation }
  | OutsideStep

/** One clamping on a machine, with the operations done in it. */
export interface SetupStep {
  readonly kind: 'setup'
  readonly at: Place
  readonly machine: string | null
  readonly hold: Hold
  /** Features it is held or located by, by name. */
  readonly on: readonly { readonly feature: string; readonly at: Place }[]
  /** Once for the lot, seconds. */
  readonly time: ThreePoint | null
  /** For one piece, seconds. */
  readonly load: ThreePoint | null
  readonly unload: ThreePoint | null
  readonly zero: string | null
  /** Changing back to the first cutter before each piece after the first, seconds; `null`: one cutter, or a stated time. */
  readonly changeBack: ThreePoint | null
  /** Height that the workholding takes above the table, mm. */
  readonly clearance: Quantity | null
  readonly who: readonly string[]
  readonly people: number
  readonly note: string | null
  readonly operations: readonly Operation[]
}

/** Work sent out: out, lead, back. */
export interface OutsideStep {
  readonly kind: 'outside'
  readonly at: Place
  readonly offer: Offer
  readonly what: string | null
  readonly needs: readonly Target[]
  readonly check: string | null
  readonly note: string | null
}

/** What holds the work. */
export type Hold =
  | { readonly kind: 'fixture'; readonly part: string; readonly at: Place }
  | { readonly kind: 'tool'; readonly tool: string; readonly at: Place }
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'nothing' }

/** One operation, with what its process kind fills in where the person was silent. */
export interface Operation extends Labour {
  /** Key of the process kind: `thread mill`. */
  readonly process: string
  readonly at: Place
  /** Seconds for one piece (or for the lot, see `each`); `null`: missing, a diagnostic says so. */
  readonly time: ThreePoint | null
  /** Whether the time is for each piece. */
  readonly each: boolean
  readonly machine: string | null
  readonly cutter: string | null
  readonly tool: NamedTool | null
  readonly fixture: string | null
  /** Names of features it makes or measures. */
  readonly features: readonly string[]
  /** Every other key as typed, in source order, for the route sheet. */
  readonly facts: ReadonlyMap<string, string>
  /** Those of them that are quantities, by key. */
  readonly numbers: ReadonlyMap<string, Quantity>
  /** Worked out from them; `null`: nothing is cut, or too little is known. */
  readonly cutting: Cutting | null
  /** Changing to its cutter from another in the same setup, seconds for one piece; part of `time` where that is worked out. */
  readonly changeSeconds: number
  /** Whether `time` was stated, worked out from cutting data, or is the usual one. */
  readonly timeFrom: 'stated' | 'computed' | 'usual'
  /** Sums behind the time of what is not cut. */
  readonly worked: readonly string[]
  readonly check: string | null
  readonly note: string | null
}

/** A tool in words, and the resource of that name where there is one. */
export interface NamedTool {
  readonly text: string
  readonly resource: { readonly kind: 'tool' | 'machine' | 'part'; readonly id: string } | null
}

/** Work that is no part and no assembly. */
export interface Work extends Placed, Labour {
  /** Seconds. */
  readonly time: ThreePoint | null
  readonly after: readonly After[]
  readonly needs: readonly Target[]
  readonly machine: string | null
  readonly tool: NamedTool | null
  readonly note: string | null
}

/** A chain of dimensions that must close within a tolerance. */
export interface Chain extends Placed {
  readonly must: string
  readonly mustAt: Place
  readonly sum: readonly ChainTerm[]
}

/** One dimension of a chain with its sign and count. */
export interface ChainTerm {
  readonly text: string
  readonly at: Place
  readonly factor: number
  /** `null`: there is no such feature (a diagnostic says so). */
  readonly of: { readonly part: string; readonly feature: string } | null
}

/** How many of a part are asked for and where they come from. */
export interface Demand {
  /** Per device, over all places; 0 for fixtures and tools. */
  readonly perDevice: number
  /** Per project without spares: per device x devices with what soldering loses, or the fixture's own quantity. */
  readonly needed: number
  readonly spares: number
  /** Drawn from what is here, used first. */
  readonly fromStock: number
  /** To make or buy: needed + spares - fromStock, before tries. */
  readonly toGet: number
  /** Where it goes: an assembly (`null` the device), a board, or `qty` alone. */
  readonly uses: readonly Use[]
}

/** Where a count of a part comes from. */
export interface Use {
  readonly by: 'step' | 'fastener' | 'board' | 'qty'
  /** The assembly part or board it goes into; `null`: the device. */
  readonly into: string | null
  /** Count in one of `into`. */
  readonly count: number
  readonly at: Place
}
