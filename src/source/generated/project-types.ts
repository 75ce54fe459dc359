// Written by `npm run generate`; do not edit.

/**
 * One part: its kind and what that kind needs, or `choices` between several ways.
 */
export type PartSource =
  ChoicePartSource | (MachinedSource | PrintedSource | BoardSource | BoughtSource | AssemblySource)
/**
 * What is done, in a sensible order; the order is checked and may be improved.
 *
 * @minItems 1
 */
export type StepsSource = StepSource[]

/**
 * A build plan: a small device, its parts and how they come to be.
 */
export interface ProjectSource {
  device: DeviceSource
  /**
   * Shop files to read as well, relative to this file and under the project's root.
   *
   * @maxItems 32
   */
  use?: string[]
  limits?: LimitsSource
  /**
   * Exchange rates: what one unit of a foreign currency costs in the project's.
   */
  exchange?: {
    /**
     * Price of one unit of that currency in the project's currency (money).
     */
    [k: string]: string | number
  }
  /**
   * Who works on it and when.
   */
  people?: {
    [k: string]: PersonSource
  }
  /**
   * Machines, ovens and benches that can be occupied.
   */
  machines?: {
    [k: string]: MachineSource
  }
  /**
   * Hand tools and gauges of which there are only so many.
   */
  tools?: {
    [k: string]: ToolSource
  }
  /**
   * Cutters on the bench.
   */
  cutters?: {
    [k: string]: CutterSource
  }
  /**
   * Materials and the forms they are bought in.
   */
  materials?: {
    [k: string]: MaterialSource
  }
  /**
   * Where things are bought.
   */
  vendors?: {
    [k: string]: VendorSource
  }
  /**
   * Print jobs that several parts share.
   */
  plates?: {
    [k: string]: PlateSource
  }
  /**
   * Work that is no part and no assembly: drawings, firmware, toolpaths.
   */
  work?: {
    [k: string]: WorkSource
  }
  /**
   * Every part, how it comes to be and what for.
   */
  parts?: {
    [k: string]: PartSource
  }
  assembly?: MainAssemblySource
  /**
   * Dimension chains: what must hold and the dimensions that add up to it.
   */
  chains?: {
    [k: string]: ChainSource
  }
}
/**
 * What is built, how many, in which money and from when.
 */
export interface DeviceSource {
  /**
   * Name of the device.
   */
  name: string
  /**
   * Revision of the device; quote bare digits.
   */
  revision?: string | number
  /**
   * One or two sentences on what it is.
   */
  description?: string
  /**
   * How many are built (count; 1 when silent).
   */
  qty?: number
  /**
   * The project's currency, three letters of ISO 4217.
   */
  currency: string
  /**
   * General tolerances of sizes without their own, ISO 2768-1: class f, m, c or v (text; the device's where a part is silent).
   */
  general?: string
  /**
   * First day on which anything can be done. Written YYYY-MM-DD.
   */
  start: string
  /**
   * Day by which it should work, end of day. Written YYYY-MM-DD.
   */
  wanted?: string
  /**
   * A 3MF file of the whole device, relative to this file: each object has the name of the part it is, and stands where the part stands.
   */
  assembled?: string
}
/**
 * What the device must stay within; a miss is a warning.
 */
export interface LimitsSource {
  /**
   * Most cash to spend (money).
   */
  cash?: string | number
  /**
   * Most mass of one device (mass).
   */
  mass?: string | number
  /**
   * Largest outside size, length x width x height (lengths).
   */
  envelope?: string
}
/**
 * Someone who works on it.
 */
export interface PersonSource {
  /**
   * When this person works on it, by weekday: `mon-fri`, `sat`, `mon,wed` or `daily`, each with one or more spans of clock time HH:MM-HH:MM (24 h).
   */
  hours?: {
    [k: string]: string | string[]
  }
  /**
   * Closed days: dates YYYY-MM-DD or ranges of dates, whatever the weekday says.
   */
  off?: string[]
  /**
   * Hours of single dates; they replace the weekday hours of that date.
   */
  extra?: {
    [k: string]: string | string[]
  }
  /**
   * What an hour of hands costs (money per hour; 0 when silent).
   */
  rate?: string | number
  /**
   * Minutes lost at the start of every session (time).
   */
  setup?: string | number
  /**
   * Minutes lost at the end of every session (time).
   */
  'clean-up'?: string | number
  /**
   * A remark.
   */
  note?: string
}
/**
 * Something that can be occupied: mill, printer, oven, bench.
 */
export interface MachineSource {
  /**
   * When it may run (always when silent), by weekday: `mon-fri`, `sat`, `mon,wed` or `daily`, each with one or more spans of clock time HH:MM-HH:MM (24 h).
   */
  hours?: {
    [k: string]: string | string[]
  }
  /**
   * Closed days: dates YYYY-MM-DD or ranges of dates, whatever the weekday says.
   */
  off?: string[]
  /**
   * Hours of single dates; they replace the weekday hours of that date.
   */
  extra?: {
    [k: string]: string | string[]
  }
  /**
   * What a machine hour costs (money per hour; 0 when silent).
   */
  rate?: string | number
  /**
   * How many jobs it holds at once (count; 1 when silent).
   */
  capacity?: number
  /**
   * People who may use it; everybody when silent.
   */
  users?: string | string[]
  /**
   * For printers: `vat` (runs alone) or `filament` (someone nearby).
   */
  prints?: 'vat' | 'filament'
  /**
   * For printers: volume printed per hour, where a part gives no time (volume per time); worked out from layers and flow when silent.
   */
  deposits?: string | number
  /**
   * For printers: room for parts in X x Y x Z (lengths).
   */
  bed?: string
  /**
   * For printers: room kept between parts on the bed (length; 2 mm when silent).
   */
  gap?: string | number
  /**
   * For printers: layer height where a part says none (length; 0.05 mm in a vat, 0.2 mm of filament when silent).
   */
  layer?: string | number
  /**
   * For vat printers: light for one layer (time; 2.5 s when silent).
   */
  exposure?: string | number
  /**
   * For vat printers: light for one of the first layers (time; 20 times the exposure when silent).
   */
  'bottom exposure'?: string | number
  /**
   * For vat printers: how many first layers are lit longer (count; 5 when silent).
   */
  'bottom layers'?: number
  /**
   * For vat printers: lift, retract and rest of one layer (time; 6 s when silent).
   */
  'lift time'?: string | number
  /**
   * For vat printers: resin left in the vat, on the plate and in the wash, once a job (volume; 5 cm3 when silent).
   */
  'resin lost'?: string | number
  /**
   * For filament printers: most plastic that the hot end melts (volume per time; 10 mm3/s when silent).
   */
  flow?: string | number
  /**
   * For filament printers: width of a laid line (length; 0.45 mm when silent).
   */
  'line width'?: string | number
  /**
   * For filament printers: speed along a line (length per time; 60 mm/s when silent).
   */
  'print speed'?: string | number
  /**
   * For filament printers: diameter of the filament (length; 1.75 mm when silent).
   */
  filament?: string | number
  /**
   * For filament printers: time from start to the first line (time; 5 min when silent).
   */
  heat?: string | number
  /**
   * Travel in X x Y x Z (lengths).
   */
  travel?: string
  /**
   * Speed of moves that do not cut (length per time).
   */
  rapid?: string | number
  /**
   * Largest feed rate while cutting (length per time).
   */
  'fastest feed'?: string | number
  /**
   * Time to change the cutter and set its length (hands).
   */
  'tool change'?: string | number
  /**
   * Largest distance from spindle nose to table (length).
   */
  headroom?: string | number
  spindle?: SpindleSource
  /**
   * A remark.
   */
  note?: string
}
/**
 * What the spindle can do.
 */
export interface SpindleSource {
  /**
   * Highest spindle speed (rpm).
   */
  fastest?: string | number
  /**
   * Lowest spindle speed (rpm).
   */
  slowest?: string | number
  /**
   * Motor power (power).
   */
  power?: string | number
}
/**
 * A tool of which there are only so many.
 */
export interface ToolSource {
  /**
   * How many there are (count; 1 when silent).
   */
  qty?: number
  /**
   * Of the shaft that needs room over the head of a screw (length; 6 mm when silent).
   */
  diameter?: string | number
  /**
   * Of that shaft up to the handle (length; 60 mm when silent).
   */
  reach?: string | number
  /**
   * Here from this day on. Written YYYY-MM-DD.
   */
  from?: string
  /**
   * Here until the end of this day. Written YYYY-MM-DD.
   */
  until?: string
  /**
   * A remark.
   */
  note?: string
}
/**
 * A cutter, drill, reamer or tap.
 */
export interface CutterSource {
  /**
   * Cutting diameter (length).
   */
  diameter?: string | number
  /**
   * Number of flutes (count).
   */
  flutes?: number
  /**
   * Usable depth below the holder (length).
   */
  reach?: string | number
  /**
   * Length that cuts (length).
   */
  'flute length'?: string | number
  /**
   * How far it stands out of the holder (length).
   */
  'stick-out'?: string | number
  /**
   * Point angle of a drill or chamfer cutter (angle).
   */
  point?: string | number
  /**
   * Corner radius; half the diameter for a ball (length).
   */
  'corner radius'?: string | number
  /**
   * Feed for each tooth, as its maker says (length).
   */
  chip?: string | number
  /**
   * Speed at the edge, as its maker says (length per time).
   */
  'cutting speed'?: string | number
  /**
   * Tolerance that it is known to hold, from end to end, as measured on your machine (length); the usual one of the process when silent.
   */
  holds?: string | number
  /**
   * Thread a tap or thread mill cuts.
   */
  thread?: string
  /**
   * Largest pitch a single-profile thread mill cuts (length).
   */
  pitch?: string | number
  /**
   * Cutting material.
   */
  tool?: 'carbide' | 'hss'
  /**
   * Cutting time after which it is worn out (time).
   */
  life?: string | number
  /**
   * What it is worth new (money; the first offer when silent).
   */
  worth?: string | number
  /**
   * How many are on the bench (count; 1 when silent). At 0 it is bought.
   */
  have?: number
  /**
   * Who sells it; the first is taken.
   *
   * @minItems 1
   */
  offers?: OfferSource[]
  /**
   * A remark.
   */
  note?: string
}
/**
 * One vendor's price and lead time.
 */
export interface OfferSource {
  /**
   * Name of a vendor of this project or shop.
   */
  vendor: string
  /**
   * Unit price: bare in the project's currency, or with a currency; or breaks `{from quantity: unit price}`, which hold for the whole quantity. Without it every total that contains it is marked.
   */
  price?:
    | string
    | number
    | {
        [k: string]: string | number
      }
  /**
   * What one unit of the price is: a board, or a panel of boards; a piece when silent.
   */
  per?: 'piece' | 'panel'
  /**
   * For boards, instead of `price`: `{largest area: unit price or breaks}`; the smallest area that holds the board (or panel) is taken (money).
   */
  'area price'?: {
    [k: string]:
      | string
      | number
      | {
          [k: string]: string | number
        }
  }
  /**
   * From order to hand-over to the carrier, in vendor working days `wd`: one value or optimistic..likely..pessimistic.
   */
  lead?: string | number
  /**
   * Pieces in a pack; only whole packs are sold (count).
   */
  pack?: number
  /**
   * Smallest quantity sold (count).
   */
  moq?: number
  /**
   * Least charge for the line, whatever the quantity (money).
   */
  minimum?: string | number
  /**
   * What to type into the vendor's order.
   */
  code?: string
  /**
   * Where it is offered (http or https).
   */
  url?: string
  /**
   * Name of the cart it belongs to; one cart per vendor when silent.
   */
  cart?: string
  /**
   * Work that must be done before this can be ordered (names).
   */
  needs?: string | string[]
  /**
   * Anything the buyer must know.
   */
  note?: string
}
/**
 * A material and how it is bought.
 */
export interface MaterialSource {
  /**
   * Density (mass per volume).
   */
  density?: string | number
  /**
   * Material of the trade tables it is taken for, where its own name is none of them.
   */
  like?: string
  /**
   * Width of a saw cut in it (length; 2 mm when silent).
   */
  kerf?: string | number
  /**
   * End of every bar that stays in vice or chuck and cannot be used (length; 0 when silent).
   */
  grip?: string | number
  /**
   * Bars, plates, bottles or spools it is bought as.
   */
  forms?: FormSource[]
  /**
   * A caution of your own, printed on route sheet and checklist.
   */
  caution?: string | string[]
  /**
   * A remark.
   */
  note?: string
}
/**
 * One form in which a material is bought: bar, plate, block, bottle or spool.
 */
export interface FormSource {
  /**
   * Bar size across (length).
   */
  bar?: string | number
  /**
   * Length of one whole bar (length).
   */
  length?: string | number
  /**
   * Length x width x thickness of one plate (lengths, one unit at the end).
   */
  plate?: string
  /**
   * Volume in one bottle (volume).
   */
  volume?: string | number
  /**
   * Mass of one spool or bag (mass).
   */
  mass?: string | number
  /**
   * What is here: whole units as a number, or an amount of the form's own measure (length, volume, mass).
   */
  have?: number | string
  /**
   * What one unit on the shelf is worth (money per bar, plate, bottle or spool; the first offer when silent).
   */
  worth?: string | number
  /**
   * Who sells one unit of this form.
   */
  offers?: OfferSource[]
}
/**
 * Where things are bought, and how long the post takes.
 */
export interface VendorSource {
  /**
   * Weekdays the vendor works (`mon-fri` when silent).
   */
  days?: string
  /**
   * Closed days: dates YYYY-MM-DD or ranges of dates, whatever the weekday says.
   */
  off?: string[]
  /**
   * Orders before this time count that day (HH:MM; 12:00 when silent).
   */
  cutoff?: string
  /**
   * When a parcel can be used on the day it arrives (HH:MM; 18:00 when silent).
   */
  post?: string
  /**
   * Time with the carrier in carrier working days `wd`: one value or optimistic..likely..pessimistic (0 when silent).
   */
  transit?: string | number
  carrier?: CarrierSource
  /**
   * The vendor's currency, three letters of ISO 4217 (the project's when silent).
   */
  currency?: string
  /**
   * Freight of one cart (money).
   */
  freight?: string | number
  /**
   * Goods value from which freight is free (money).
   */
  'free over'?: string | number
  /**
   * Goods value below which the difference is charged (money).
   */
  'minimum order'?: string | number
  /**
   * Fee for customs handling of one cart (money).
   */
  clearance?: string | number
  /**
   * Customs duty on goods and freight (ratio or %).
   */
  duty?: string | number
  /**
   * Tax on goods, freight, duty and clearance that is not got back (ratio or %).
   */
  tax?: string | number
  /**
   * Hands-on time to place one order (time; 10 min when silent).
   */
  order?: string | number
  /**
   * Hands-on time to unpack and check one parcel (time; 10 min when silent).
   */
  receive?: string | number
  /**
   * The vendor's page (http or https).
   */
  url?: string
  /**
   * A remark.
   */
  note?: string
}
/**
 * The carrier's own days, where they are not Monday to Friday.
 */
export interface CarrierSource {
  /**
   * Weekdays the carrier delivers.
   */
  days?: string
  /**
   * Closed days: dates YYYY-MM-DD or ranges of dates, whatever the weekday says.
   */
  off?: string[]
}
/**
 * One print job that several parts share.
 */
export interface PlateSource {
  /**
   * Printer used.
   */
  machine?: string
  /**
   * Material of this project or shop.
   */
  material?: string
  /**
   * Print time of the whole job; worked out from its parts when silent (the longest on a vat printer, the sum on a filament printer).
   */
  time?: string | number
  /**
   * Time to prepare and start the job (hands; 5 min when silent).
   */
  load?: string | number
  /**
   * Time to take the job off (hands; 5 min when silent).
   */
  unload?: string | number
  /**
   * Washing (hands).
   */
  wash?: string | number
  /**
   * Drying, nobody needed (elapsed).
   */
  dry?: string | number
  /**
   * Curing, nobody needed (elapsed).
   */
  cure?: string | number
  /**
   * What a person does while it prints: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody. As usual for the printer when silent: `none` for vat, `nearby` for filament.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Work that must be done before it is printed.
   */
  after?: string | (string | LinkSource)[]
  /**
   * A remark.
   */
  note?: string
}
/**
 * Waits for another step, work, part or test, with a pause after it or a longest wait.
 */
export interface LinkSource {
  /**
   * Name of the step, work, part or test that must be done before.
   */
  step: string
  /**
   * Least wait after it is done: elapsed time (`2 h`) or working days (`2 wd`).
   */
  lag?: string | number
  /**
   * Must start at most this long after it is done (elapsed time).
   */
  within?: string | number
}
/**
 * Work that is no part and no assembly.
 */
export interface WorkSource {
  /**
   * How long it takes: one value or optimistic..likely..pessimistic.
   */
  time: string | number
  /**
   * Steps, work, tests or parts that must be done before this begins.
   */
  after?: string | (string | LinkSource)[]
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Machine or bench it occupies.
   */
  machine?: string
  /**
   * Tool of this project, or in words.
   */
  tool?: string
  /**
   * Parts or work that must be ready.
   */
  needs?: string | string[]
  /**
   * A remark.
   */
  note?: string
}
/**
 * A part that can come to be in several ways; the first is taken.
 */
export interface ChoicePartSource {
  /**
   * What the part is for: in the device, a fixture, a consumable or a tool.
   */
  role?: 'device' | 'fixture' | 'consumable' | 'tool'
  /**
   * Count per device for what no step places (per project for a fixture or tool); otherwise a check on what the steps place.
   */
  qty?: number
  /**
   * How many more are made or bought, per project (count).
   */
  spares?: number
  /**
   * How many are here already (count).
   */
  have?: number
  /**
   * What one that is here is worth (money; the first offer when silent).
   */
  worth?: string | number
  /**
   * Part number, unique in your own numbering.
   */
  number?: string
  /**
   * Technical data: material, standard, size.
   */
  description?: string
  /**
   * Revision of the drawing.
   */
  revision?: string | number
  /**
   * Drawing number or file.
   */
  drawing?: string
  /**
   * General tolerances of sizes without their own, ISO 2768-1: class f, m, c or v (text; the device's where a part is silent).
   */
  general?: string
  /**
   * Mass of one (mass).
   */
  mass?: string | number
  /**
   * Share of tries that come out good (ratio or %). Adds an expected loss beside the plan; never changes how many are made.
   */
  yield?: string | number
  /**
   * How many are started for each one needed, at most (count).
   */
  tries?: number
  /**
   * Whether it wears and must be reachable for renewal.
   */
  wears?: boolean
  /**
   * A caution of your own, printed on route sheet and checklist.
   */
  caution?: string | string[]
  /**
   * A remark for the parts list.
   */
  note?: string
  /**
   * Work, parts or steps that must be done before making or ordering starts.
   */
  after?: string | (string | LinkSource)[]
  /**
   * Ways to get the part, by name; each has one kind and what that kind needs.
   */
  choices: {
    [k: string]: MachinedWaySource | PrintedWaySource | BoardWaySource | BoughtWaySource | AssemblyWaySource
  }
}
/**
 * A part of kind machined.
 */
export interface MachinedWaySource {
  /**
   * How the part comes to be: machined, printed, board, bought or assembly.
   */
  kind: 'machined'
  /**
   * Material of this project or shop.
   */
  material: string
  stock?: StockSource
  /**
   * How many go through the route together (count; all when silent).
   */
  lot?: number
  /**
   * Named features with their fit, thread or tolerance, as on the drawing.
   */
  features?: {
    [k: string]: string | number
  }
  /**
   * Mesh file (STL), relative to this file.
   */
  model?: string
  /**
   * Where the mesh of `model` stands in the device: `assembled` where it was saved in device coordinates, else position and turn, one for each copy. Without it the mesh gives volume and size alone.
   */
  place?: 'assembled' | MeshPlaceSource | MeshPlaceSource[]
  finished?: FinishedSource
  /**
   * How it is made, in order.
   *
   * @minItems 1
   */
  route: RouteItemSource[]
}
/**
 * The piece of material a part is cut from: one of bar, plate or block, in finished-to-cut size.
 */
export interface StockSource {
  /**
   * Bar size across (length).
   */
  bar?: string | number
  /**
   * Length cut from the bar (length).
   */
  length?: string | number
  /**
   * Length x width x thickness cut from plate (lengths, one unit at the end).
   */
  plate?: string
  /**
   * Length x width x height of a block bought to size (lengths, one unit at the end).
   */
  block?: string
  /**
   * Width of the saw cut charged with each piece (length; the material's when silent).
   */
  kerf?: string | number
  /**
   * Sawn longer by so much for facing, both ends together (length; none when silent).
   */
  facing?: string | number
  /**
   * Offers for this piece cut to size; it is then bought by the piece.
   */
  offers?: OfferSource[]
}
/**
 * Where one copy stands: the mesh is turned about its own origin, then moved.
 */
export interface MeshPlaceSource {
  /**
   * How far its origin is moved along x, y and z (length).
   *
   * @minItems 3
   * @maxItems 3
   */
  at?: (string | number)[]
  /**
   * How far it is turned (angle): first about x, then y, then z of the device.
   *
   * @minItems 3
   * @maxItems 3
   */
  turn?: (string | number)[]
}
/**
 * Finished volume, area and box, where no mesh says them.
 */
export interface FinishedSource {
  /**
   * Finished volume (volume).
   */
  volume?: string | number
  /**
   * Surface area (area).
   */
  area?: string | number
  /**
   * Length x width x height (lengths).
   */
  box?: string
}
/**
 * One step of a route: exactly one operation; a setup carries its machine operations under `ops`.
 */
export interface RouteItemSource {
  setup?: SetupSource
  /**
   * What is done in this clamping, in order.
   *
   * @minItems 1
   */
  ops?: OperationSource[]
  prepare?: PrepareSource
  deburr?: DeburrSource
  polish?: PolishSource
  inspect?: InspectSource
  cure?: CureSource
  do?: DoSource
  outside?: OutsideSource
}
/**
 * One clamping on one machine; its operations stand beside it under `ops`.
 */
export interface SetupSource {
  /**
   * Machine used.
   */
  machine: string
  /**
   * A fixture of this project by name, or what holds the part, in words.
   */
  hold?: string
  /**
   * Features the part is held or located by (names).
   */
  on?: string | string[]
  /**
   * Room the workholding takes above the table (length).
   */
  clearance?: string | number
  /**
   * Time to set the machine up, once for the lot (hands).
   */
  time?: string | number
  /**
   * Time to load one piece (hands); none when silent.
   */
  load?: string | number
  /**
   * Time to unload one piece (hands); none when silent, but 2 min after a run that nobody attends.
   */
  unload?: string | number
  /**
   * Where zero is and which offset it is stored in.
   */
  zero?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * Anything to know at the machine.
   */
  note?: string
}
/**
 * One operation in a setup: exactly one key.
 */
export interface OperationSource {
  saw?: SawSource
  face?: FaceSource
  rough?: RoughSource
  finish?: FinishSource
  contour?: ContourSource
  chamfer?: ChamferSource
  drill?: DrillSource
  ream?: ReamSource
  bore?: BoreSource
  tap?: TapSource
  'thread mill'?: ThreadMillSource
  turn?: TurnSource
  'part off'?: PartOffSource
  cut?: CutSource
  deburr?: DeburrSource
  polish?: PolishSource
  inspect?: InspectSource
  do?: DoSource
}
/**
 * Sawing stock to length. Goes into a setup.
 */
export interface SawSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * Feature it makes.
   */
  feature?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Section sawn through (area); of the stock when silent.
   */
  section?: string | number
  /**
   * Section sawn in a given time (area per time), by this saw in this material.
   */
  rate?: string | number
}
/**
 * Facing a surface flat. Goes into a setup.
 */
export interface FaceSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * Feature it makes.
   */
  feature?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Thickness removed (length).
   */
  stock?: string | number
  /**
   * Length x width of the face (lengths, one unit at the end); of the stock when silent.
   */
  size?: string
}
/**
 * Removing most of the material. Goes into a setup.
 */
export interface RoughSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * Feature it makes.
   */
  feature?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Volume removed (volume).
   */
  volume?: string | number
  /**
   * Length x width x depth of a pocket, instead of the volume (lengths, one unit at the end).
   */
  pocket?: string
  /**
   * Smallest inside corner the cutter must reach (length).
   */
  corner?: string | number
}
/**
 * Finishing a surface; not interrupted unless said. Goes into a setup.
 */
export interface FinishSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * Feature it makes.
   */
  feature?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Area finished (area).
   */
  area?: string | number
  /**
   * Height of the ridges a ball or corner radius leaves, instead of the step (length).
   */
  scallop?: string | number
}
/**
 * Following an outline. Goes into a setup.
 */
export interface ContourSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * Feature it makes.
   */
  feature?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Length of the outline (length).
   */
  length?: string | number
  /**
   * Height of the wall followed (length); one pass of `depth` when silent.
   */
  height?: string | number
  /**
   * Smallest inside corner the cutter must reach (length).
   */
  corner?: string | number
  /**
   * Thickness of the wall that is left standing (length).
   */
  wall?: string | number
}
/**
 * Breaking an edge with a cutter. Goes into a setup.
 */
export interface ChamferSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * Feature it makes.
   */
  feature?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Length of the edge (length).
   */
  length?: string | number
  /**
   * Width of the chamfer (length).
   */
  width?: string | number
}
/**
 * Drilling holes. Goes into a setup.
 */
export interface DrillSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * Feature it makes.
   */
  feature?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Hole diameter (length).
   */
  diameter?: string | number
  /**
   * Number of holes (count).
   */
  holes?: number
  /**
   * Depth of one peck (length).
   */
  peck?: string | number
}
/**
 * Reaming holes to size. Goes into a setup.
 */
export interface ReamSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Finished diameter (length).
   */
  diameter?: string | number
  /**
   * Number of holes (count).
   */
  holes?: number
  /**
   * Feature it makes.
   */
  feature?: string
}
/**
 * Boring to size with a boring tool. Goes into a setup.
 */
export interface BoreSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Finished diameter (length).
   */
  diameter?: string | number
  /**
   * Diameter before boring (length); one pass when silent.
   */
  from?: string | number
  /**
   * Feature it makes.
   */
  feature?: string
  /**
   * Time to set the edge for each pass and to measure (time; 45 s when silent).
   */
  set?: string | number
}
/**
 * Cutting an inside thread with a tap. Goes into a setup.
 */
export interface TapSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Thread as on the drawing.
   */
  thread?: string
  /**
   * Number of holes (count).
   */
  holes?: number
  /**
   * Feature it makes.
   */
  feature?: string
}
/**
 * Milling a thread. Goes into a setup.
 */
export interface ThreadMillSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Thread as on the drawing.
   */
  thread?: string
  /**
   * Feature it makes.
   */
  feature?: string
}
/**
 * Turning a diameter. Goes into a setup.
 */
export interface TurnSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Finished diameter (length).
   */
  diameter?: string | number
  /**
   * Diameter before turning (length); of the bar when silent.
   */
  from?: string | number
  /**
   * Turned length (length).
   */
  length?: string | number
  /**
   * Feature it makes.
   */
  feature?: string
  /**
   * Thread that is turned, as on the drawing.
   */
  thread?: string
  /**
   * Time to set the edge for each pass and to measure (time; 10 s when silent).
   */
  set?: string | number
}
/**
 * Cutting the part from the bar in the lathe. Goes into a setup.
 */
export interface PartOffSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * Feature it makes.
   */
  feature?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Diameter that is parted off (length); of the bar when silent.
   */
  diameter?: string | number
  /**
   * Diameter of the hole that is there already (length).
   */
  bore?: string | number
}
/**
 * Any other machine run with a stated time (laser, engraving, winding). Goes into a setup.
 */
export interface CutSource {
  /**
   * Time on the machine for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Cutter used, by its name on the bench.
   */
  cutter?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Depth of cut or depth of the hole (length).
   */
  depth?: string | number
  /**
   * Sideways step between passes (length).
   */
  step?: string | number
  /**
   * Spindle speed (rpm) or cutting speed (length per time, such as m/min); from the tables of the trade when silent.
   */
  speed?: string | number
  /**
   * Feed rate (length per time) or feed per turn (length per turn, such as mm/rev); from the tables of the trade when silent.
   */
  feed?: string | number
  /**
   * Number of passes (count).
   */
  passes?: number
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * What is done, in words.
   */
  what?: string
}
/**
 * Breaking edges by hand.
 */
export interface DeburrSource {
  /**
   * Time for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Hand tool or aid.
   */
  tool?: string
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Whether the time is for each piece; otherwise it is once for the lot.
   */
  each?: boolean
}
/**
 * Polishing by hand.
 */
export interface PolishSource {
  /**
   * Time for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * Feature it makes.
   */
  feature?: string
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Hand tool or aid.
   */
  tool?: string
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Whether the time is for each piece; otherwise it is once for the lot.
   */
  each?: boolean
}
/**
 * Measuring features and writing them down; 5 min a feature when no time is given.
 */
export interface InspectSource {
  /**
   * Time for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Hand tool or aid.
   */
  tool?: string
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Features measured (names).
   */
  features?: string | string[]
  /**
   * Whether the time is for each piece; otherwise it is once for the lot.
   */
  each?: boolean
}
/**
 * Any other hand work with a stated time.
 */
export interface DoSource {
  /**
   * Time for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Hand tool or aid.
   */
  tool?: string
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * What is done, in words.
   */
  what?: string
  /**
   * Machine or bench it occupies.
   */
  machine?: string
  /**
   * Whether the time is for each piece; otherwise it is once for the lot.
   */
  each?: boolean
  /**
   * Fixture it is done in (a part of this project with that role); held through cures in it that follow.
   */
  fixture?: string
}
/**
 * Drawing, toolpaths, set-out: hands, no machine, once for the lot.
 */
export interface PrepareSource {
  /**
   * Time for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Hand tool or aid.
   */
  tool?: string
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
}
/**
 * Waiting with nobody needed: curing, drying, ageing. Not interrupted.
 */
export interface CureSource {
  /**
   * Time for one piece: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Hand tool or aid.
   */
  tool?: string
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Oven or lamp it occupies.
   */
  machine?: string
  /**
   * Fixture it is cured in; held from the step before.
   */
  fixture?: string
}
/**
 * Work bought from a vendor: out, lead, back; each lot is a cart of its own.
 */
export interface OutsideSource {
  offer: OfferSource
  /**
   * What is done, in words.
   */
  what?: string
  /**
   * Work that must be done before it is sent (names).
   */
  needs?: string | string[]
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
}
/**
 * A part of kind printed.
 */
export interface PrintedWaySource {
  /**
   * How the part comes to be: machined, printed, board, bought or assembly.
   */
  kind: 'printed'
  /**
   * Printer used.
   */
  machine: string
  /**
   * Material of this project or shop.
   */
  material?: string
  /**
   * Volume of material of one piece, supports included (volume); worked out from the mesh or the finished volume when silent.
   */
  volume?: string | number
  /**
   * Print time of one piece (or of the whole plate where `plate` names one); worked out from height, mesh and printer when silent.
   */
  time?: string | number
  /**
   * Print job it shares with others.
   */
  plate?: string
  /**
   * Time to prepare and start the job (hands; 5 min when silent).
   */
  load?: string | number
  /**
   * Time to take the job off (hands; 5 min when silent).
   */
  unload?: string | number
  /**
   * Time to wash one job (hands).
   */
  wash?: string | number
  /**
   * Drying, nobody needed (elapsed).
   */
  dry?: string | number
  /**
   * Curing, nobody needed (elapsed).
   */
  cure?: string | number
  /**
   * What a person does while it prints: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody. As usual for the printer when silent: `none` for vat, `nearby` for filament. On a plate, the plate's own entry goes first, then the most demanding among its parts.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Layer height (length).
   */
  layer?: string | number
  /**
   * Height as it stands on the plate, supports below it included (length); from the mesh or the finished box when silent.
   */
  height?: string | number
  /**
   * Length x width that it takes on the plate (lengths); from the mesh or the finished box when silent.
   */
  footprint?: string
  /**
   * Supports as a share of the finished volume (ratio; 20 % in a vat, none of filament when silent).
   */
  supports?: string | number
  /**
   * Share of the inside that is filled with filament (ratio; 20 % when silent).
   */
  infill?: string | number
  /**
   * Lines of filament around each layer (count; 3 when silent).
   */
  walls?: number
  /**
   * Thinnest wall of the part (length); checked against what the process prints.
   */
  wall?: string | number
  /**
   * Diameter of the smallest hole of the part (length); checked against what the process prints.
   */
  hole?: string | number
  /**
   * How much the part shrinks when it cools or cures (ratio); the sizes to model are worked out where it is stated.
   */
  shrink?: string | number
  /**
   * How many go through the route together (count; all when silent).
   */
  lot?: number
  /**
   * Named features with their fit, thread or tolerance, as on the drawing.
   */
  features?: {
    [k: string]: string | number
  }
  /**
   * Mesh file (STL), relative to this file.
   */
  model?: string
  /**
   * Where the mesh of `model` stands in the device: `assembled` where it was saved in device coordinates, else position and turn, one for each copy. Without it the mesh gives volume and size alone.
   */
  place?: 'assembled' | MeshPlaceSource | MeshPlaceSource[]
  finished?: FinishedSource
  /**
   * How it is made, in order.
   *
   * @minItems 1
   */
  route?: RouteItemSource[]
}
/**
 * A part of kind board.
 */
export interface BoardWaySource {
  /**
   * How the part comes to be: machined, printed, board, bought or assembly.
   */
  kind: 'board'
  /**
   * Length x width of the board (lengths).
   */
  outline?: string
  /**
   * Copper layers (count).
   */
  layers?: number
  /**
   * Board thickness (length).
   */
  thickness?: string | number
  made?: MadeSource
  panel?: PanelSource
  /**
   * Traces that carry current, checked by the rule of IPC-2221.
   *
   * @minItems 1
   */
  currents?: TraceCurrentSource[]
  /**
   * CSV file of placements, relative to this file, with columns reference, value, package and part; or the file with the names of its columns.
   */
  placements?: string | PlacementsSource
  /**
   * Components soldered on, as `part xN` (parts of kind bought).
   */
  places?: string | string[]
  solder?: SolderSource
  /**
   * Who sells it; the first is taken.
   *
   * @minItems 1
   */
  offers: OfferSource[]
  /**
   * How many go through the route together (count; all when silent).
   */
  lot?: number
  /**
   * Named features with their fit, thread or tolerance, as on the drawing.
   */
  features?: {
    [k: string]: string | number
  }
  /**
   * Mesh file (STL), relative to this file.
   */
  model?: string
  /**
   * Where the mesh of `model` stands in the device: `assembled` where it was saved in device coordinates, else position and turn, one for each copy. Without it the mesh gives volume and size alone.
   */
  place?: 'assembled' | MeshPlaceSource | MeshPlaceSource[]
  /**
   * How it is made, in order.
   *
   * @minItems 1
   */
  route?: RouteItemSource[]
}
/**
 * Smallest features of the layout and how the bare board is made; what is too fine for it is reported.
 */
export interface MadeSource {
  /**
   * How the bare board is made; by a board house when silent.
   */
  by?: 'isolation milling' | 'etching' | 'board house' | 'board house, 0.127 mm' | 'board house, fine'
  /**
   * Narrowest trace (length).
   */
  trace?: string | number
  /**
   * Narrowest space between copper (length).
   */
  space?: string | number
  /**
   * Smallest finished hole (length).
   */
  hole?: string | number
}
/**
 * Boards are made side by side on a panel of this size; offers with `per: panel` sell whole panels.
 */
export interface PanelSource {
  /**
   * Length x width of the panel (lengths).
   */
  size: string
  /**
   * Width of the rail at both ends of the length (length; none when silent).
   */
  rails?: string | number
  /**
   * Width of the router between boards (length; 2 mm when silent).
   */
  gap?: string | number
  /**
   * Whether boards are parted by scored lines, which leave no gap.
   */
  score?: boolean
}
/**
 * One trace that carries current.
 */
export interface TraceCurrentSource {
  /**
   * Name of the trace or net.
   */
  what?: string
  /**
   * Current that it carries (current).
   */
  amps: string | number
  /**
   * Width of the trace (length); the width needed is told when silent.
   */
  width?: string | number
  /**
   * Thickness of the copper (length; 35 um when silent).
   */
  copper?: string | number
  /**
   * How much warmer it may get (temperature difference in K; 10 K when silent).
   */
  rise?: string | number
  /**
   * On the outside of the board or between its layers; external when silent.
   */
  layer?: 'external' | 'internal'
}
/**
 * A CSV file of placements and the heads of its columns.
 */
export interface PlacementsSource {
  /**
   * CSV file, relative to this file.
   */
  file: string
  /**
   * Column of the designators, such as R1 (`reference` when silent).
   */
  reference?: string
  /**
   * Column of the values (`value` when silent).
   */
  value?: string
  /**
   * Column of the packages (`package` when silent).
   */
  package?: string
  /**
   * Column of the project's parts (`part` where the file has it).
   */
  part?: string
  /**
   * Sign between the cells: comma, semicolon or tab; as in the first line when silent.
   */
  separator?: 'comma' | 'semicolon' | 'tab'
  /**
   * Series of preferred values that values must be in; any up to E192 when silent.
   */
  series?: 'E3' | 'E6' | 'E12' | 'E24' | 'E48' | 'E96' | 'E192'
}
/**
 * Soldering one board.
 */
export interface SolderSource {
  /**
   * Time for one piece: one value or optimistic..likely..pessimistic; from packages and joints when silent.
   */
  time?: string | number
  /**
   * All by hand, or surface parts by paste and heat; by hand when silent.
   */
  by?: 'hand' | 'paste'
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * Hand tool or aid.
   */
  tool?: string
  /**
   * What is looked at or measured when it is done.
   */
  check?: string
  /**
   * Anything to know at the machine.
   */
  note?: string
  /**
   * Hot plate or oven it occupies.
   */
  machine?: string
}
/**
 * A part of kind bought.
 */
export interface BoughtWaySource {
  /**
   * How the part comes to be: machined, printed, board, bought or assembly.
   */
  kind: 'bought'
  /**
   * Who sells it; the first is taken.
   *
   * @minItems 1
   */
  offers?: OfferSource[]
  /**
   * Value as in the placements, so that lines of the CSV find this part.
   */
  value?: string
  /**
   * Package as in the placements; tells joints and time to solder.
   */
  package?: string
  /**
   * Pieces lost while soldering, bought on top: a share of what is placed (ratio), or a count.
   */
  attrition?: string | number
  /**
   * Mesh file (STL), relative to this file.
   */
  model?: string
  /**
   * Where the mesh of `model` stands in the device: `assembled` where it was saved in device coordinates, else position and turn, one for each copy. Without it the mesh gives volume and size alone.
   */
  place?: 'assembled' | MeshPlaceSource | MeshPlaceSource[]
  /**
   * Named features with their fit, thread or tolerance, as on the drawing.
   */
  features?: {
    [k: string]: string | number
  }
  /**
   * How many go through the route together (count; all when silent).
   */
  lot?: number
  /**
   * How it is made, in order.
   *
   * @minItems 1
   */
  route?: RouteItemSource[]
}
/**
 * A part of kind assembly.
 */
export interface AssemblyWaySource {
  /**
   * How the part comes to be: machined, printed, board, bought or assembly.
   */
  kind: 'assembly'
  openings?: OpeningsSource
  steps: StepsSource
  /**
   * The body everything is put on, where the steps leave it open.
   */
  ground?: string
}
/**
 * Openings of each body through which things go in.
 */
export interface OpeningsSource {
  [k: string]: string | string[]
}
/**
 * One action at the assembly bench.
 */
export interface StepSource {
  /**
   * A name other entries can point at; the part or text of the step when silent.
   */
  name?: string
  /**
   * What is put in place, as `part xN`.
   */
  put?: string
  /**
   * Names of the instances, where the same assembly is put more than once.
   */
  as?: string | string[]
  /**
   * The body it goes into, through one of its open openings.
   */
  in?: string
  /**
   * The body it goes onto, without passing an opening.
   */
  on?: string
  /**
   * The opening of that body it passes.
   */
  through?: string
  /**
   * How it is joined.
   */
  by?:
    'screw' | 'thread' | 'press' | 'seat' | 'glue' | 'solder' | 'snap' | 'crimp' | 'plug' | 'magnet' | 'tie'
  /**
   * The two features that meet, as `part.feature`; found from threads and fits when silent.
   *
   * @minItems 2
   * @maxItems 2
   */
  mates?: string[]
  /**
   * How far the two features are in each other (length).
   */
  engagement?: string | number
  /**
   * Outer diameter of the part around a press fit (length).
   */
  around?: string | number
  /**
   * Fasteners and consumables used, as `part xN`.
   */
  with?: string | string[]
  /**
   * Direction of putting in, in words or an axis. Of these the side is known: top, bottom, front, back, left, right (+z, -z, -y, +y, -x, +x of the meshes), and an axis such as `-y`.
   */
  from?: string
  /**
   * How much what is put bends on its way in from the direction under `from` (length): a snap, a slotted ring, an O-ring. What stops it no wider than this is passed.
   */
  gives?: string | number
  /**
   * A press fit that comes apart again with care.
   */
  light?: boolean
  /**
   * Whether thread locker is used.
   */
  locker?: boolean
  /**
   * Tool with its size; a tool, machine or part of this project by name where there is one.
   */
  tool?: string
  /**
   * Fixture it is held in, cure included.
   */
  fixture?: string
  /**
   * Machine or bench it occupies.
   */
  machine?: string
  /**
   * Tightening torque (torque).
   */
  torque?: string | number
  /**
   * Adhesive or lubricant, as on the data sheet.
   */
  adhesive?: string
  /**
   * Curing before anything else touches it (elapsed; nobody needed).
   */
  cure?: string | number
  /**
   * Hands-on time for one device: one value or optimistic..likely..pessimistic.
   */
  time?: string | number
  /**
   * What is looked at or measured, with its limits.
   */
  check?: string
  /**
   * A caution of your own.
   */
  caution?: string | string[]
  /**
   * Openings shut by this step, as `body.opening`; shut when the step ends.
   */
  shut?: string | string[]
  /**
   * Openings this step opens again, as `body.opening`.
   */
  open?: string | string[]
  /**
   * How the work lies from here on.
   */
  turn?: string
  /**
   * What is tested, with its limits.
   */
  test?: string
  /**
   * Any other action, in words.
   */
  do?: string
  /**
   * Work or parts that must be ready before it, not consumed by it.
   */
  needs?: string | string[]
  /**
   * What must still be reachable at this step: a screw, an adjuster, a test point.
   */
  reaches?: string | string[]
  /**
   * Steps, work, tests or parts that must be done before this begins.
   */
  after?: string | (string | LinkSource)[]
  /**
   * Steps or openings before each of which this must be done.
   */
  before?: string | string[]
  /**
   * This must be done before the last of these is done; an opening stands for the steps that shut it.
   */
  before_last_of?: string | string[]
  /**
   * What is put here only lies there, and would fall out, until these steps fasten it: nothing turns the work over in between.
   */
  loose_until?: string | string[]
  /**
   * Must start at most this long after the step written just before it (elapsed time).
   */
  within?: string | number
  /**
   * Chance that the test fails (ratio or %).
   */
  fails?: string | number
  /**
   * Hands-on time for rework when the test fails.
   */
  rework?: string | number
  /**
   * One action for all devices of the batch instead of one each.
   */
  together?: boolean
  /**
   * People who may do it; anyone who may when silent.
   */
  who?: string | string[]
  /**
   * How many people it takes at the same time (count).
   */
  people?: number
  /**
   * What a person does meanwhile: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Whether it may be interrupted by the end of a session and go on in the next.
   */
  pause?: boolean
  /**
   * A piece of work shorter than this is not begun unless it ends the task (time; 15 min when silent).
   */
  least?: string | number
  /**
   * A remark for the checklist.
   */
  note?: string
}
/**
 * A part of kind machined.
 */
export interface MachinedSource {
  /**
   * How the part comes to be: machined, printed, board, bought or assembly.
   */
  kind: 'machined'
  /**
   * What the part is for: in the device, a fixture, a consumable or a tool.
   */
  role?: 'device' | 'fixture' | 'consumable' | 'tool'
  /**
   * Count per device for what no step places (per project for a fixture or tool); otherwise a check on what the steps place.
   */
  qty?: number
  /**
   * How many more are made or bought, per project (count).
   */
  spares?: number
  /**
   * How many are here already (count).
   */
  have?: number
  /**
   * What one that is here is worth (money; the first offer when silent).
   */
  worth?: string | number
  /**
   * Part number, unique in your own numbering.
   */
  number?: string
  /**
   * Technical data: material, standard, size.
   */
  description?: string
  /**
   * Revision of the drawing.
   */
  revision?: string | number
  /**
   * Drawing number or file.
   */
  drawing?: string
  /**
   * General tolerances of sizes without their own, ISO 2768-1: class f, m, c or v (text; the device's where a part is silent).
   */
  general?: string
  /**
   * Mass of one (mass).
   */
  mass?: string | number
  /**
   * Share of tries that come out good (ratio or %). Adds an expected loss beside the plan; never changes how many are made.
   */
  yield?: string | number
  /**
   * How many are started for each one needed, at most (count).
   */
  tries?: number
  /**
   * Whether it wears and must be reachable for renewal.
   */
  wears?: boolean
  /**
   * A caution of your own, printed on route sheet and checklist.
   */
  caution?: string | string[]
  /**
   * A remark for the parts list.
   */
  note?: string
  /**
   * Work, parts or steps that must be done before making or ordering starts.
   */
  after?: string | (string | LinkSource)[]
  /**
   * Material of this project or shop.
   */
  material: string
  stock?: StockSource
  /**
   * How many go through the route together (count; all when silent).
   */
  lot?: number
  /**
   * Named features with their fit, thread or tolerance, as on the drawing.
   */
  features?: {
    [k: string]: string | number
  }
  /**
   * Mesh file (STL), relative to this file.
   */
  model?: string
  /**
   * Where the mesh of `model` stands in the device: `assembled` where it was saved in device coordinates, else position and turn, one for each copy. Without it the mesh gives volume and size alone.
   */
  place?: 'assembled' | MeshPlaceSource | MeshPlaceSource[]
  finished?: FinishedSource
  /**
   * How it is made, in order.
   *
   * @minItems 1
   */
  route: RouteItemSource[]
}
/**
 * A part of kind printed.
 */
export interface PrintedSource {
  /**
   * How the part comes to be: machined, printed, board, bought or assembly.
   */
  kind: 'printed'
  /**
   * What the part is for: in the device, a fixture, a consumable or a tool.
   */
  role?: 'device' | 'fixture' | 'consumable' | 'tool'
  /**
   * Count per device for what no step places (per project for a fixture or tool); otherwise a check on what the steps place.
   */
  qty?: number
  /**
   * How many more are made or bought, per project (count).
   */
  spares?: number
  /**
   * How many are here already (count).
   */
  have?: number
  /**
   * What one that is here is worth (money; the first offer when silent).
   */
  worth?: string | number
  /**
   * Part number, unique in your own numbering.
   */
  number?: string
  /**
   * Technical data: material, standard, size.
   */
  description?: string
  /**
   * Revision of the drawing.
   */
  revision?: string | number
  /**
   * Drawing number or file.
   */
  drawing?: string
  /**
   * General tolerances of sizes without their own, ISO 2768-1: class f, m, c or v (text; the device's where a part is silent).
   */
  general?: string
  /**
   * Mass of one (mass).
   */
  mass?: string | number
  /**
   * Share of tries that come out good (ratio or %). Adds an expected loss beside the plan; never changes how many are made.
   */
  yield?: string | number
  /**
   * How many are started for each one needed, at most (count).
   */
  tries?: number
  /**
   * Whether it wears and must be reachable for renewal.
   */
  wears?: boolean
  /**
   * A caution of your own, printed on route sheet and checklist.
   */
  caution?: string | string[]
  /**
   * A remark for the parts list.
   */
  note?: string
  /**
   * Work, parts or steps that must be done before making or ordering starts.
   */
  after?: string | (string | LinkSource)[]
  /**
   * Printer used.
   */
  machine: string
  /**
   * Material of this project or shop.
   */
  material?: string
  /**
   * Volume of material of one piece, supports included (volume); worked out from the mesh or the finished volume when silent.
   */
  volume?: string | number
  /**
   * Print time of one piece (or of the whole plate where `plate` names one); worked out from height, mesh and printer when silent.
   */
  time?: string | number
  /**
   * Print job it shares with others.
   */
  plate?: string
  /**
   * Time to prepare and start the job (hands; 5 min when silent).
   */
  load?: string | number
  /**
   * Time to take the job off (hands; 5 min when silent).
   */
  unload?: string | number
  /**
   * Time to wash one job (hands).
   */
  wash?: string | number
  /**
   * Drying, nobody needed (elapsed).
   */
  dry?: string | number
  /**
   * Curing, nobody needed (elapsed).
   */
  cure?: string | number
  /**
   * What a person does while it prints: `hands` takes a person whole, `nearby` needs a person's hours open but leaves the hands free, `none` needs nobody. As usual for the printer when silent: `none` for vat, `nearby` for filament. On a plate, the plate's own entry goes first, then the most demanding among its parts.
   */
  attention?: 'hands' | 'nearby' | 'none'
  /**
   * Layer height (length).
   */
  layer?: string | number
  /**
   * Height as it stands on the plate, supports below it included (length); from the mesh or the finished box when silent.
   */
  height?: string | number
  /**
   * Length x width that it takes on the plate (lengths); from the mesh or the finished box when silent.
   */
  footprint?: string
  /**
   * Supports as a share of the finished volume (ratio; 20 % in a vat, none of filament when silent).
   */
  supports?: string | number
  /**
   * Share of the inside that is filled with filament (ratio; 20 % when silent).
   */
  infill?: string | number
  /**
   * Lines of filament around each layer (count; 3 when silent).
   */
  walls?: number
  /**
   * Thinnest wall of the part (length); checked against what the process prints.
   */
  wall?: string | number
  /**
   * Diameter of the smallest hole of the part (length); checked against what the process prints.
   */
  hole?: string | number
  /**
   * How much the part shrinks when it cools or cures (ratio); the sizes to model are worked out where it is stated.
   */
  shrink?: string | number
  /**
   * How many go through the route together (count; all when silent).
   */
  lot?: number
  /**
   * Named features with their fit, thread or tolerance, as on the drawing.
   */
  features?: {
    [k: string]: string | number
  }
  /**
   * Mesh file (STL), relative to this file.
   */
  model?: string
  /**
   * Where the mesh of `model` stands in the device: `assembled` where it was saved in device coordinates, else position and turn, one for each copy. Without it the mesh gives volume and size alone.
   */
  place?: 'assembled' | MeshPlaceSource | MeshPlaceSource[]
  finished?: FinishedSource
  /**
   * How it is made, in order.
   *
   * @minItems 1
   */
  route?: RouteItemSource[]
}
/**
 * A part of kind board.
 */
export interface BoardSource {
  /**
   * How the part comes to be: machined, printed, board, bought or assembly.
   */
  kind: 'board'
  /**
   * What the part is for: in the device, a fixture, a consumable or a tool.
   */
  role?: 'device' | 'fixture' | 'consumable' | 'tool'
  /**
   * Count per device for what no step places (per project for a fixture or tool); otherwise a check on what the steps place.
   */
  qty?: number
  /**
   * How many more are made or bought, per project (count).
   */
  spares?: number
  /**
   * How many are here already (count).
   */
  have?: number
  /**
   * What one that is here is worth (money; the first offer when silent).
   */
  worth?: string | number
  /**
   * Part number, unique in your own numbering.
   */
  number?: string
  /**
   * Technical data: material, standard, size.
   */
  description?: string
  /**
   * Revision of the drawing.
   */
  revision?: string | number
  /**
   * Drawing number or file.
   */
  drawing?: string
  /**
   * General tolerances of sizes without their own, ISO 2768-1: class f, m, c or v (text; the device's where a part is silent).
   */
  general?: string
  /**
   * Mass of one (mass).
   */
  mass?: string | number
  /**
   * Share of tries that come out good (ratio or %). Adds an expected loss beside the plan; never changes how many are made.
   */
  yield?: string | number
  /**
   * How many are started for each one needed, at most (count).
   */
  tries?: number
  /**
   * Whether it wears and must be reachable for renewal.
   */
  wears?: boolean
  /**
   * A caution of your own, printed on route sheet and checklist.
   */
  caution?: string | string[]
  /**
   * A remark for the parts list.
   */
  note?: string
  /**
   * Work, parts or steps that must be done before making or ordering starts.
   */
  after?: string | (string | LinkSource)[]
  /**
   * Length x width of the board (lengths).
   */
  outline?: string
  /**
   * Copper layers (count).
   */
  layers?: number
  /**
   * Board thickness (length).
   */
  thickness?: string | number
  made?: MadeSource
  panel?: PanelSource
  /**
   * Traces that carry current, checked by the rule of IPC-2221.
   *
   * @minItems 1
   */
  currents?: TraceCurrentSource[]
  /**
   * CSV file of placements, relative to this file, with columns reference, value, package and part; or the file with the names of its columns.
   */
  placements?: string | PlacementsSource
  /**
   * Components soldered on, as `part xN` (parts of kind bought).
   */
  places?: string | string[]
  solder?: SolderSource
  /**
   * Who sells it; the first is taken.
   *
   * @minItems 1
   */
  offers: OfferSource[]
  /**
   * How many go through the route together (count; all when silent).
   */
  lot?: number
  /**
   * Named features with their fit, thread or tolerance, as on the drawing.
   */
  features?: {
    [k: string]: string | number
  }
  /**
   * Mesh file (STL), relative to this file.
   */
  model?: string
  /**
   * Where the mesh of `model` stands in the device: `assembled` where it was saved in device coordinates, else position and turn, one for each copy. Without it the mesh gives volume and size alone.
   */
  place?: 'assembled' | MeshPlaceSource | MeshPlaceSource[]
  /**
   * How it is made, in order.
   *
   * @minItems 1
   */
  route?: RouteItemSource[]
}
/**
 * A part of kind bought.
 */
export interface BoughtSource {
  /**
   * How the part comes to be: machined, printed, board, bought or assembly.
   */
  kind: 'bought'
  /**
   * What the part is for: in the device, a fixture, a consumable or a tool.
   */
  role?: 'device' | 'fixture' | 'consumable' | 'tool'
  /**
   * Count per device for what no step places (per project for a fixture or tool); otherwise a check on what the steps place.
   */
  qty?: number
  /**
   * How many more are made or bought, per project (count).
   */
  spares?: number
  /**
   * How many are here already (count).
   */
  have?: number
  /**
   * What one that is here is worth (money; the first offer when silent).
   */
  worth?: string | number
  /**
   * Part number, unique in your own numbering.
   */
  number?: string
  /**
   * Technical data: material, standard, size.
   */
  description?: string
  /**
   * Revision of the drawing.
   */
  revision?: string | number
  /**
   * Drawing number or file.
   */
  drawing?: string
  /**
   * General tolerances of sizes without their own, ISO 2768-1: class f, m, c or v (text; the device's where a part is silent).
   */
  general?: string
  /**
   * Mass of one (mass).
   */
  mass?: string | number
  /**
   * Share of tries that come out good (ratio or %). Adds an expected loss beside the plan; never changes how many are made.
   */
  yield?: string | number
  /**
   * How many are started for each one needed, at most (count).
   */
  tries?: number
  /**
   * Whether it wears and must be reachable for renewal.
   */
  wears?: boolean
  /**
   * A caution of your own, printed on route sheet and checklist.
   */
  caution?: string | string[]
  /**
   * A remark for the parts list.
   */
  note?: string
  /**
   * Work, parts or steps that must be done before making or ordering starts.
   */
  after?: string | (string | LinkSource)[]
  /**
   * Who sells it; the first is taken.
   *
   * @minItems 1
   */
  offers?: OfferSource[]
  /**
   * Value as in the placements, so that lines of the CSV find this part.
   */
  value?: string
  /**
   * Package as in the placements; tells joints and time to solder.
   */
  package?: string
  /**
   * Pieces lost while soldering, bought on top: a share of what is placed (ratio), or a count.
   */
  attrition?: string | number
  /**
   * Mesh file (STL), relative to this file.
   */
  model?: string
  /**
   * Where the mesh of `model` stands in the device: `assembled` where it was saved in device coordinates, else position and turn, one for each copy. Without it the mesh gives volume and size alone.
   */
  place?: 'assembled' | MeshPlaceSource | MeshPlaceSource[]
  /**
   * Named features with their fit, thread or tolerance, as on the drawing.
   */
  features?: {
    [k: string]: string | number
  }
  /**
   * How many go through the route together (count; all when silent).
   */
  lot?: number
  /**
   * How it is made, in order.
   *
   * @minItems 1
   */
  route?: RouteItemSource[]
}
/**
 * A part of kind assembly.
 */
export interface AssemblySource {
  /**
   * How the part comes to be: machined, printed, board, bought or assembly.
   */
  kind: 'assembly'
  /**
   * What the part is for: in the device, a fixture, a consumable or a tool.
   */
  role?: 'device' | 'fixture' | 'consumable' | 'tool'
  /**
   * Count per device for what no step places (per project for a fixture or tool); otherwise a check on what the steps place.
   */
  qty?: number
  /**
   * How many more are made or bought, per project (count).
   */
  spares?: number
  /**
   * How many are here already (count).
   */
  have?: number
  /**
   * What one that is here is worth (money; the first offer when silent).
   */
  worth?: string | number
  /**
   * Part number, unique in your own numbering.
   */
  number?: string
  /**
   * Technical data: material, standard, size.
   */
  description?: string
  /**
   * Revision of the drawing.
   */
  revision?: string | number
  /**
   * Drawing number or file.
   */
  drawing?: string
  /**
   * Mass of one (mass).
   */
  mass?: string | number
  /**
   * Share of tries that come out good (ratio or %). Adds an expected loss beside the plan; never changes how many are made.
   */
  yield?: string | number
  /**
   * How many are started for each one needed, at most (count).
   */
  tries?: number
  /**
   * Whether it wears and must be reachable for renewal.
   */
  wears?: boolean
  /**
   * A caution of your own, printed on route sheet and checklist.
   */
  caution?: string | string[]
  /**
   * A remark for the parts list.
   */
  note?: string
  /**
   * Work, parts or steps that must be done before making or ordering starts.
   */
  after?: string | (string | LinkSource)[]
  openings?: OpeningsSource
  steps: StepsSource
  /**
   * The body everything is put on, where the steps leave it open.
   */
  ground?: string
}
/**
 * How the device goes together.
 */
export interface MainAssemblySource {
  openings?: OpeningsSource
  steps: StepsSource
  /**
   * The body everything is put on, where the steps leave it open.
   */
  ground?: string
}
/**
 * A dimension chain.
 */
export interface ChainSource {
  /**
   * What must hold, with its tolerance.
   */
  must: string
  /**
   * Dimensions added, with a sign: `part.feature`, `-part.feature x2`.
   *
   * @minItems 1
   */
  sum: string[]
}
/**
 * People, machines, cutters, materials, vendors and parts that several projects share.
 */
export interface ShopSource {
  /**
   * Shop files to read as well, relative to this file and under the project's root.
   *
   * @maxItems 32
   */
  use?: string[]
  /**
   * Exchange rates: what one unit of a foreign currency costs in the project's.
   */
  exchange?: {
    /**
     * Price of one unit of that currency in the project's currency (money).
     */
    [k: string]: string | number
  }
  /**
   * Who works on it and when.
   */
  people?: {
    [k: string]: PersonSource
  }
  /**
   * Machines, ovens and benches that can be occupied.
   */
  machines?: {
    [k: string]: MachineSource
  }
  /**
   * Hand tools and gauges of which there are only so many.
   */
  tools?: {
    [k: string]: ToolSource
  }
  /**
   * Cutters on the bench.
   */
  cutters?: {
    [k: string]: CutterSource
  }
  /**
   * Materials and the forms they are bought in.
   */
  materials?: {
    [k: string]: MaterialSource
  }
  /**
   * Where things are bought.
   */
  vendors?: {
    [k: string]: VendorSource
  }
  /**
   * Print jobs that several parts share.
   */
  plates?: {
    [k: string]: PlateSource
  }
  /**
   * Work that is no part and no assembly: drawings, firmware, toolpaths.
   */
  work?: {
    [k: string]: WorkSource
  }
  /**
   * Every part, how it comes to be and what for.
   */
  parts?: {
    [k: string]: PartSource
  }
}
