import Fraction from 'fraction.js'
import { prc } from '../diagnostics/catalogue/prc.ts'
import { qty } from '../diagnostics/catalogue/qty.ts'
import type {
  BoardWay,
  Count,
  Feature,
  Material,
  Part,
  Plate,
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
import type { Context } from './context.ts'
import { machineNamed } from './labour.ts'
import { stockAt } from './materials.ts'
import { countAt, nameAt } from './names.ts'
import { offersAt, worthAt } from './offers.ts'
import { listed, quantityAt, ratioAt, sizeAt, threePointAt, words } from './reading.ts'
import { operationAt, routeAt } from './routes.ts'
import { aftersAt } from './targets.ts'

type WaySource = MachinedWaySource | PrintedWaySource | BoardWaySource | BoughtWaySource | AssemblyWaySource
type RoutedSource = MachinedWaySource | PrintedWaySource | BoardWaySource | BoughtWaySource
type WayReader = (
  context: Context,
  part: string,
  spot: Spot<WaySource>,
  materials: ReadonlyMap<string, Material>,
) => Way

function featuresAt(spot: Spot<RoutedSource>): readonly Feature[] {
  const features = field(spot, 'features')
  return features
    ? entries(features).map(([name, value]) => ({ name, text: value.text.trim(), at: value.at }))
    : []
}

function finishedAt(
  context: Context,
  spot: Spot<NonNullable<MachinedWaySource['finished']>> | null,
): Routed['finished'] {
  if (!spot) return null
  const box = sizeAt(context, 'box', field(spot, 'box'), 3)
  return {
    volume: quantityAt(context, 'volume', field(spot, 'volume'), 'volume', 'above 0'),
    area: quantityAt(context, 'area', field(spot, 'area'), 'area', 'above 0'),
    box: box && [box[0]!, box[1]!, box[2]!],
  }
}

function routedAt(context: Context, part: string, spot: Spot<RoutedSource>): Routed {
  const model = field(spot, 'model')
  if (model) context.report(prc.notComputed, model.at, { what: `the mesh \`${model.text}\`` })
  return {
    lot: field(spot, 'lot')?.value ?? null,
    features: featuresAt(spot),
    model: words(model),
    finished: finishedAt(context, field(spot as Spot<MachinedWaySource>, 'finished')),
    route: routeAt(context, part, field(spot, 'route')),
  }
}

function machined(
  context: Context,
  part: string,
  spot: Spot<MachinedWaySource>,
  materials: ReadonlyMap<string, Material>,
): Way {
  const material = nameAt(context.names, context.report, field(spot, 'material'), ['material'])
  const stock = field(spot, 'stock')
  if (!stock) context.report(prc.nothingToMake, spot.keyAt, { part, kind: 'machined' })
  return {
    kind: 'machined',
    material,
    stock: stock
      ? stockAt(context, part, material === null ? null : (materials.get(material) ?? null), stock)
      : null,
    ...routedAt(context, part, spot),
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
    layer: quantityAt(context, 'layer', field(spot, 'layer'), 'length', 'above 0'),
    plate: nameAt(context.names, context.report, field(spot, 'plate'), ['plate']),
    ...routedAt(context, part, spot),
  }
}

function board(context: Context, part: string, spot: Spot<BoardWaySource>): BoardWay {
  const solder = field(spot, 'solder')
  const placements = field(spot, 'placements')
  if (placements)
    context.report(prc.notComputed, placements.at, { what: `the placement file \`${placements.text}\`` })
  const outline = sizeAt(context, 'outline', field(spot, 'outline'), 2)
  return {
    kind: 'board',
    outline: outline && [outline[0]!, outline[1]!],
    layers: field(spot, 'layers')?.value ?? null,
    thickness: quantityAt(context, 'thickness', field(spot, 'thickness'), 'length', 'above 0'),
    offers: offersAt(context, part, field(spot, 'offers')),
    places: listed(field(spot, 'places')).flatMap((one): readonly Count[] =>
      [countAt(context.names, context.report, one) ?? []].flat(),
    ),
    solder: solder
      ? { ...operationAt(context, part, processOf('do')!, solder, null), process: 'solder' }
      : null,
    ...routedAt(context, part, spot),
  }
}

const readers: Record<WaySource['kind'], WayReader> = {
  machined: (context, part, spot, materials) =>
    machined(context, part, spot as Spot<MachinedWaySource>, materials),
  printed: (context, part, spot) => printed(context, part, spot as Spot<PrintedWaySource>),
  board: (context, part, spot) => board(context, part, spot as Spot<BoardWaySource>),
  bought: (context, part, spot) => ({
    kind: 'bought',
    offers: offersAt(context, part, field(spot as Spot<BoughtWaySource>, 'offers')),
    ...routedAt(context, part, spot as Spot<BoughtWaySource>),
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
export function partAt(
  context: Context,
  id: string,
  spot: Spot<PartSource>,
  materials: ReadonlyMap<string, Material>,
): Part {
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
    mass: quantityAt(context, 'mass', field(common, 'mass'), 'mass'),
    yield: ratioAt(context, 'yield', field(common, 'yield'), 'above 0') ?? new Fraction(1),
    tries: field(common, 'tries')?.value ?? 1,
    wears: field(common, 'wears')?.value ?? false,
    cautions: listed(field(common, 'caution')).map((one) => words(one) ?? ''),
    note: words(field(common, 'note')),
    after: aftersAt(context, field(common, 'after'), undefined),
    choice,
    way: readers[way.value.kind](context, id, way, materials),
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
  }
}

/**
 * PRC01: printed parts that have no print time, neither their own nor their plate's nor one by volume. Looks at what is
 * written: a value that was faulted has been reported, and a name that is unknown too.
 */
export function reportPrintTimes(context: Context, source: Source, parts: ReadonlyMap<string, Part>): void {
  for (const [id, spot] of source.sections.parts) {
    const way = wayOf(spot)
    if (way.value.kind !== 'printed') continue
    const own = way as Spot<PrintedWaySource>
    const plateName = field(own, 'plate')?.text.trim()
    const plate = plateName === undefined ? null : source.sections.plates.get(plateName)
    const machineName = ((plate && field(plate, 'machine')) ?? field(own, 'machine'))?.text.trim()
    const machine = source.sections.machines.get(machineName ?? '')
    const timed = field(own, 'time') ?? (plate && field(plate, 'time'))
    const byVolume = field(own, 'volume') && (!machine || field(machine, 'deposits'))
    if (plate !== undefined && !timed && !byVolume)
      context.report(prc.noPrintTime, parts.get(id)!.at, { part: id })
  }
}
