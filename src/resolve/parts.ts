import Fraction from 'fraction.js'
import { prc } from '../diagnostics/catalogue/prc.ts'
import { qty } from '../diagnostics/catalogue/qty.ts'
import type {
  BoardWay,
  Count,
  Feature,
  Operation,
  Part,
  Plate,
  PrintedWay,
  PrintJob,
  Routed,
  Way,
} from '../model/project.ts'
import { processOf } from '../processes/index.ts'
import type {
  AssemblyWaySource,
  BoardWaySource,
  BoughtWaySource,
  ChoicePartSource,
  MachinedWaySource,
  PartSource,
  PlateSource,
  PrintedWaySource,
} from '../source/generated/project-types.ts'
import type { Source } from '../source/load.ts'
import { entries, field, type Spot } from '../source/spot.ts'
import { assemblyAt } from './assembly.ts'
import { madeAt, panelAt, tracesAt, warnTooFine } from './boards/bare-board.ts'
import { boardOffersAt } from './boards/board-offers.ts'
import { componentAt } from './boards/component-at.ts'
import { placementsAt } from './boards/placements-at.ts'
import { type Populated, populated, timedSolder } from './boards/with-components.ts'
import type { Context } from './context.ts'
import { finishedAt } from './finished-at.ts'
import { generalAt } from './general-at.ts'
import { machineNamed } from './labour.ts'
import { stockAt } from './materials.ts'
import { meshAt } from './mesh-at.ts'
import { countAt, nameAt } from './names.ts'
import { offersAt, worthAt } from './offers.ts'
import { notWorkedOut, printSaidAt } from './printing/print-said.ts'
import type { Printed } from './printing/with-prints.ts'
import { listed, quantityAt, ratioAt, sizeAt, threePointAt, words } from './reading.ts'
import { type At, operationAt, routeAt } from './routes.ts'
import { removedOf, warnTooLarge } from './stock-room.ts'
import { aftersAt } from './targets.ts'

type WaySource = MachinedWaySource | PrintedWaySource | BoardWaySource | BoughtWaySource | AssemblyWaySource
type RoutedSource = MachinedWaySource | PrintedWaySource | BoardWaySource | BoughtWaySource
type WayReader = (context: Context, part: string, spot: Spot<WaySource>) => Way

function featuresAt(spot: Spot<RoutedSource>): readonly Feature[] {
  const features = field(spot, 'features')
  return features
    ? entries(features).map(([name, value]) => ({ name, text: value.text.trim(), at: value.at }))
    : []
}

/** What every way with a route has, but for the route itself. */
function routedAt(context: Context, part: string, spot: Spot<RoutedSource>): Omit<Routed, 'route'> {
  const model = field(spot, 'model')
  const mesh = meshAt(context, part, model)
  return {
    lot: field(spot, 'lot')?.value ?? null,
    features: featuresAt(spot),
    model: words(model),
    mesh,
    finished: finishedAt(context, field(spot as Spot<MachinedWaySource>, 'finished'), mesh),
  }
}

function routeOf(
  context: Context,
  part: string,
  spot: Spot<RoutedSource>,
  from: At['from'] = null,
): Routed['route'] {
  return routeAt(context, { part, machine: null, from }, field(spot, 'route'))
}

/** Whether just one operation of a route roughs without saying what: it clears away all that is too much. */
function clearsAlone(spot: Spot<MachinedWaySource>): boolean {
  const roughs = listed(field(spot, 'route')).flatMap((item) =>
    listed(field(item, 'ops')).flatMap((op) => field(op, 'rough') ?? []),
  )
  return roughs.filter((rough) => !field(rough, 'volume') && !field(rough, 'pocket')).length === 1
}

function machined(context: Context, part: string, spot: Spot<MachinedWaySource>): Way {
  const material = nameAt(context.names, context.report, field(spot, 'material'), ['material'])
  const stockSpot = field(spot, 'stock')
  if (!stockSpot) context.report(prc.nothingToMake, spot.keyAt, { part, kind: 'machined' })
  const own = material === null ? null : (context.bench.materials.get(material) ?? null)
  const stock = stockSpot ? stockAt(context, part, own, stockSpot) : null
  const routed = routedAt(context, part, spot)
  if (stock && routed.finished) warnTooLarge(context, part, stock, routed.finished)
  const removed = clearsAlone(spot) ? removedOf(stock?.size ?? null, routed.finished) : null
  return {
    kind: 'machined',
    material,
    stock,
    ...routed,
    route: routeOf(context, part, spot, { material, stock: stock?.size ?? null, removed }),
  }
}

/** A print job: machine, material and the times around the run. */
function jobAt(context: Context, spot: Spot<PrintedWaySource | PlateSource>): PrintJob {
  const time = (key: 'time' | 'load' | 'unload' | 'wash' | 'dry' | 'cure') =>
    threePointAt(context, key, field(spot, key), 'time')
  return {
    at: spot.keyAt,
    machine: machineNamed(context, field(spot, 'machine')),
    material: nameAt(context.names, context.report, field(spot, 'material'), ['material']),
    time: time('time'),
    load: time('load'),
    unload: time('unload'),
    wash: time('wash'),
    dry: time('dry'),
    cure: time('cure'),
    attention: field(spot, 'attention')?.value ?? null,
  }
}

function printed(context: Context, part: string, spot: Spot<PrintedWaySource>): Way {
  return {
    kind: 'printed',
    job: jobAt(context, spot),
    volume: quantityAt(context, 'volume', field(spot, 'volume'), 'volume', 'above 0'),
    volumeFrom: 'stated',
    layer: quantityAt(context, 'layer', field(spot, 'layer'), 'length', 'above 0'),
    plate: nameAt(context.names, context.report, field(spot, 'plate'), ['plate']),
    said: printSaidAt(context, spot),
    piece: notWorkedOut,
    runs: [],
    ...routedAt(context, part, spot),
    route: routeOf(context, part, spot),
  }
}

function board(context: Context, part: string, spot: Spot<BoardWaySource>): BoardWay {
  const solder = field(spot, 'solder')
  const outline = sizeAt(context, 'outline', field(spot, 'outline'), 2)
  const panel = panelAt(context, part, field(spot, 'panel'), outline)
  const areaMm2 = outline ? outline[0]!.value.mul(outline[1]!.value).valueOf() : null
  const offers = boardOffersAt(context, part, field(spot, 'offers'), { areaMm2, panel })
  const made = madeAt(context, field(spot, 'made'))
  if (made) warnTooFine(context, part, made, offers)
  const places = listed(field(spot, 'places')).flatMap((one): readonly Count[] =>
    [countAt(context.names, context.report, one) ?? []].flat(),
  )
  const table = placementsAt(context, field(spot, 'placements') as Parameters<typeof placementsAt>[1])
  const all = populated(context, part, table, places)
  return {
    kind: 'board',
    outline: outline && [outline[0]!, outline[1]!],
    layers: field(spot, 'layers')?.value ?? null,
    thickness: quantityAt(context, 'thickness', field(spot, 'thickness'), 'length', 'above 0'),
    offers,
    made,
    panel,
    worked: [...(panel?.worked ?? []), ...tracesAt(context, part, field(spot, 'currents'))],
    ...all,
    solder: solder ? solderAt(context, part, solder, all) : null,
    ...routedAt(context, part, spot),
    route: routeOf(context, part, spot),
  }
}

/** Soldering of one board: as stated, else timed by what is soldered on. */
function solderAt(
  context: Context,
  part: string,
  spot: Spot<NonNullable<BoardWaySource['solder']>>,
  all: Populated,
): Operation {
  const stated = field(spot, 'time') !== null
  const process = { ...processOf('do')!, timedLater: true }
  const operation = operationAt(context, { part, machine: null, from: null }, process, spot)
  const method = field(spot, 'by')?.value ?? 'hand'
  return timedSolder(context, part, { ...operation, process: 'solder' }, all, { method, stated })
}

const readers: Record<WaySource['kind'], WayReader> = {
  machined: (context, part, spot) => machined(context, part, spot as Spot<MachinedWaySource>),
  printed: (context, part, spot) => printed(context, part, spot as Spot<PrintedWaySource>),
  board: (context, part, spot) => board(context, part, spot as Spot<BoardWaySource>),
  bought: (context, part, spot) => ({
    kind: 'bought',
    offers: offersAt(context, part, field(spot as Spot<BoughtWaySource>, 'offers')),
    ...componentAt(context, part, spot as Spot<BoughtWaySource>),
    ...routedAt(context, part, spot as Spot<BoughtWaySource>),
    route: routeOf(context, part, spot as Spot<BoughtWaySource>),
  }),
  assembly: (context, part, spot) => ({
    kind: 'assembly',
    plan: assemblyAt(context, part, spot as Spot<AssemblyWaySource>),
  }),
}

/** The way taken: the part itself, or the first of its choices. */
function wayTaken(spot: Spot<PartSource>): {
  readonly way: Spot<WaySource>
  readonly choice: Part['choice']
} {
  const choices = field(spot as Spot<ChoicePartSource>, 'choices')
  if (!choices) return { way: spot as Spot<WaySource>, choice: null }
  const [first, ...left] = entries(choices)
  return { way: first![1] as Spot<WaySource>, choice: { taken: first![0], left: left.map(([name]) => name) } }
}

/** The way of a part as written, for those who look before the parts are read. */
export function wayOf(spot: Spot<PartSource>): Spot<WaySource> {
  return wayTaken(spot).way
}

/** A part with the way it comes to be. */
export function partAt(context: Context, id: string, spot: Spot<PartSource>): Part {
  const { way, choice } = wayTaken(spot)
  const common = spot as Spot<ChoicePartSource>
  const count = field(common, 'qty')
  const role = field(common, 'role')?.value ?? 'device'
  if (role === 'fixture' && count?.value === 0)
    context.report(qty.outOfBounds, count.at, { key: 'qty', text: count.text, bound: '1 or more' })
  return {
    id,
    at: spot.keyAt,
    role,
    qty: count ? { count: count.value, at: count.at } : null,
    spares: field(common, 'spares')?.value ?? 0,
    have: field(common, 'have')?.value ?? 0,
    worth: worthAt(context, field(common, 'worth')),
    number: words(field(common, 'number')),
    description: words(field(common, 'description')),
    revision: words(field(common, 'revision')),
    drawing: words(field(common, 'drawing')),
    general: generalAt(context, field(common, 'general')),
    mass: quantityAt(context, 'mass', field(common, 'mass'), 'mass'),
    massWorked: [],
    yield: ratioAt(context, 'yield', field(common, 'yield'), 'above 0') ?? new Fraction(1),
    tries: field(common, 'tries')?.value ?? 1,
    wears: field(common, 'wears')?.value ?? false,
    cautions: listed(field(common, 'caution')).map((one) => words(one) ?? ''),
    note: words(field(common, 'note')),
    after: aftersAt(context, field(common, 'after'), undefined),
    choice,
    way: readers[way.value.kind](context, id, way),
  }
}

/** The most demanding attention that one of the parts on a plate asks for, whatever their order. */
function mostDemanding(parts: readonly Part[]): PrintJob['attention'] {
  const asked = parts.map(({ way }) => (way.kind === 'printed' ? way.job.attention : null))
  return (['hands', 'nearby', 'none'] as const).find((one) => asked.includes(one)) ?? null
}

/** A plate with the parts on it. Reports parts whose printer or material differ from their plate's. */
export function plateAt(
  context: Context,
  id: string,
  spot: Spot<PlateSource>,
  parts: ReadonlyMap<string, Part>,
): Plate {
  const own = jobAt(context, spot)
  const on = [...parts.values()].filter(({ way }) => way.kind === 'printed' && way.plate === id)
  const first = on[0]?.way.kind === 'printed' ? on[0].way.job : null
  const job: PrintJob = {
    ...own,
    machine: own.machine ?? first?.machine ?? null,
    material: own.material ?? first?.material ?? null,
    attention: own.attention ?? mostDemanding(on),
  }
  for (const part of on) {
    if (part.way.kind !== 'printed') continue
    for (const key of ['machine', 'material'] as const) {
      const [has, wants] = [part.way.job[key], job[key]]
      if (has !== null && wants !== null && has !== wants)
        context.report(prc.plateDiffers, part.at, { part: part.id, key, has, plate: id, wants })
    }
  }
  return {
    id,
    at: spot.keyAt,
    job,
    after: aftersAt(context, field(spot, 'after'), undefined),
    parts: on.map((part) => part.id).sort(),
    runs: [],
  }
}

/**
 * PRC01: printed parts that have no print time, neither their own nor their plate's nor one that was worked out. Silent
 * where what is written was faulted (told), and where printer or plate are not known.
 */
export function reportPrintTimes(
  context: Context,
  source: Source,
  { parts, plates, outside }: Printed,
): void {
  for (const [id, spot] of source.sections.parts) {
    const part = parts.get(id)!
    const { way } = part
    if (way.kind !== 'printed') continue
    const own = wayOf(spot) as Spot<PrintedWaySource>
    const plateName = field(own, 'plate')?.text.trim()
    const plate = plateName === undefined ? null : source.sections.plates.get(plateName)
    const machineName = plates.get(way.plate ?? '')?.job.machine ?? way.job.machine
    const machine = machineName === null ? null : context.bench.machines.get(machineName)
    if (plate === undefined || !machine) continue
    const timed = field(own, 'time') ?? (plate && field(plate, 'time'))
    const byVolume = way.volume && machine.deposits
    if (timed || byVolume || way.piece.seconds !== null || outside.has(id)) continue
    if (!isFaulted(own, way))
      context.report(prc.noPrintTime, part.at, { part: id, filament: machine.prints === 'filament' })
  }
}

/** Whether something was written to time the print by, and could not be read. */
function isFaulted(own: Spot<PrintedWaySource>, way: PrintedWay): boolean {
  const finished = field(own, 'finished')
  const pairs: readonly (readonly [unknown, unknown])[] = [
    [field(own, 'volume'), way.volume],
    [field(own, 'height'), way.said.height],
    [field(own, 'model'), way.mesh],
    [finished && field(finished, 'box'), way.finished?.box],
    [finished && field(finished, 'volume'), way.finished?.volume],
  ]
  return pairs.some(([written, read]) => written && !read)
}
