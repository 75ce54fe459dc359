import { nearNames } from '../base/near-names.ts'
import type { ThreePoint } from '../base/three-point.ts'
import { prcCutting } from '../diagnostics/catalogue/prc-cutting.ts'
import { qty } from '../diagnostics/catalogue/qty.ts'
import { ref } from '../diagnostics/catalogue/ref.ts'
import type { Hold, Machine, Operation, RouteStep, SetupStep, Size } from '../model/project.ts'
import { processOf } from '../processes/index.ts'
import type { Process } from '../processes/process.ts'
import type {
  CutSource,
  DoSource,
  InspectSource,
  OutsideSource,
  RouteItemSource,
  SetupSource,
} from '../source/generated/project-types.ts'
import { quantityOfKey } from '../source/quantity-of-key.ts'
import { entries, field, type Spot } from '../source/spot.ts'
import type { WorkMaterial } from '../trade/cutting/types.ts'
import { findMaterial, workMaterial } from '../trade/materials/find-material.ts'
import type { Context } from './context.ts'
import { type CutAt, cutAt, type Removed } from './cut-at.ts'
import { fixtureNamed, labourAt, machineNamed, toolNamed, warnNearMiss } from './labour.ts'
import { nameAt } from './names.ts'
import { numbersAt } from './numbers-at.ts'
import { offerAt } from './offers.ts'
import { certain, listed, quantityAt, threePointAt, words } from './reading.ts'
import { targetsAt } from './targets.ts'

/** Any operation as written: the keys that all or some kinds have. */
type OperationKeys = Partial<
  CutSource & DoSource & InspectSource & { readonly fixture: string; readonly feature: string }
>

const readElsewhere = new Set([
  'time',
  'who',
  'people',
  'attention',
  'pause',
  'least',
  'machine',
  'cutter',
  'tool',
  'fixture',
  'feature',
  'features',
  'each',
  'check',
  'note',
])

function featuresOf(context: Context, part: string, spot: Spot<OperationKeys>): readonly string[] {
  return [...listed(field(spot, 'feature')), ...listed(field(spot, 'features'))].flatMap(
    (one) => ownFeature(context, part, one) ?? [],
  )
}

/** The feature of a part that stands at a place; `null` where the part has none of that name (reported). */
function ownFeature(context: Context, part: string, spot: Spot<string>): string | null {
  const known = context.features.get(part) ?? new Map<string, string>()
  const feature = spot.text.trim()
  if (known.has(feature)) return feature
  context.report(ref.unknownFeature, spot.at, { feature, part, near: nearNames(feature, [...known.keys()]) })
  return null
}

function heldOn(context: Context, part: string, spot: Spot<string | string[]> | null): SetupStep['on'] {
  return listed(spot).flatMap((one) => {
    const feature = ownFeature(context, part, one)
    return feature === null ? [] : [{ feature, at: one.at }]
  })
}

/** Where an operation stands: its part, the machine of its setup, and what it cuts. */
export interface At {
  readonly part: string
  readonly machine: string | null
  /** Material and stock of a machined part; `null` of others. */
  readonly from: {
    readonly material: string | null
    readonly stock: Size | null
    readonly removed: Removed | null
  } | null
}

/** A cutter is changed and its length set in this time, where the machine does not say. Source: 1 to 3 min by hand, common practice, no source. */
const usualChange = 120
/** A stated time this many times the computed one, or below it by as much, is likely a slip. */
const farOff = 3
/** Beyond that, a stated time may hold a change of cutter and a measurement, in seconds. */
const slack = 180

interface Timed {
  readonly time: ThreePoint | null
  readonly timeFrom: Operation['timeFrom']
}

/** The time of an operation: as stated, worked out from its cut, or the usual one for its features. */
function timeOf(
  context: Context,
  { process, spot, part }: { process: Process; spot: Spot<OperationKeys>; part: string },
  cut: CutAt,
  features: number,
): Timed {
  const stated = field(spot, 'time')
  const computed = cut && 'cutting' in cut ? cut.cutting.seconds : null
  if (stated) {
    const time = threePointAt(context, 'time', stated, 'time')
    if (time && computed !== null) warnFarOff(context, stated, { op: process.key, part }, time, computed)
    return { time, timeFrom: 'stated' }
  }
  if (computed !== null) return { time: seconds(computed), timeFrom: 'computed' }
  if (process.timedLater) return { time: null, timeFrom: 'computed' }
  const minutes = (process.minutesPerFeature ?? 0) * features
  if (minutes > 0) return { time: certain(minutes * 60, 'min', `${minutes} min`), timeFrom: 'usual' }
  const missing = cut && 'missing' in cut ? cut.missing : []
  // A cut with nothing missing that gave no time has been reported for what is wrong with it.
  if (!cut || missing.length > 0)
    context.report(qty.noTime, spot.keyAt, { what: `\`${process.key}\` of \`${part}\``, missing })
  return { time: null, timeFrom: 'stated' }
}

/** Whole seconds, rounded up, as a time that is certain. */
function seconds(value: number): ThreePoint {
  const whole = Math.ceil(value - 1e-6)
  const [minutes, rest] = [Math.floor(whole / 60), whole % 60]
  const text = [minutes > 0 ? `${minutes} min` : '', rest > 0 || minutes === 0 ? `${rest} s` : '']
    .join(' ')
    .trim()
  return certain(whole, 'min', text)
}

function warnFarOff(
  context: Context,
  spot: Spot<unknown>,
  of: { readonly op: string; readonly part: string },
  time: ThreePoint,
  computed: number,
): void {
  const likely = time.likely.valueOf()
  if (likely > computed * farOff + slack || likely < computed / farOff)
    context.report(prcCutting.timeFarOff, spot.at, { ...of, stated: likely / 60, computed: computed / 60 })
}

/** Where the schemas describe an operation of a kind. */
const definitionOf = ({ key, place }: Process): string =>
  `#/$defs/${place === 'machine' ? 'operation' : 'routeItem'}/properties/${key}`

/** What cutting knows of the material a part is made of. */
function workOf(context: Context, from: At['from']): WorkMaterial {
  const material = from?.material == null ? undefined : context.bench.materials.get(from.material)
  const found = material?.like == null ? null : findMaterial(material.like)
  return found && !('fault' in found) ? workMaterial(found) : {}
}

/** One operation of a kind, with what its process fills in and works out. */
export function operationAt(context: Context, at: At, process: Process, spot: Spot<object>): Operation {
  const keys = spot as Spot<OperationKeys>
  const { part } = at
  const what = `\`${process.key}\` of \`${part}\``
  const machine = at.machine ?? machineNamed(context, field(keys, 'machine'))
  const features = featuresOf(context, part, keys)
  const asked = listed(field(keys, 'feature')).length + listed(field(keys, 'features')).length
  const facts = entries(keys)
    .filter(([key]) => !readElsewhere.has(key))
    .map(([key, value]) => [key, words(value) ?? ''] as const)
  const numbers = numbersAt(context, definitionOf(process), keys, readElsewhere)
  const cutter = nameAt(context.names, context.report, field(keys, 'cutter'), ['cutter'])
  const figure = (key: string): boolean => quantityOfKey(definitionOf(process), key).length > 0
  // A figure that was faulted has been told; that it is missing would only follow.
  const faulted =
    facts.some(([key]) => figure(key) && !numbers.has(key)) ||
    (cutter === null && field(keys, 'cutter') !== null) ||
    (cutter !== null && context.faulted.has(cutter)) ||
    (at.from?.material != null && context.faulted.has(at.from.material))
  const cut: CutAt = faulted
    ? { missing: [] }
    : cutAt(context, {
        process,
        spot,
        numbers,
        features: features.flatMap((name) => context.features.get(part)?.get(name) ?? []),
        cutter: cutter === null ? null : (context.bench.cutters.get(cutter) ?? null),
        machine: machine === null ? null : (context.bench.machines.get(machine) ?? null),
        work: workOf(context, at.from),
        stock: at.from?.stock ?? null,
        removed: at.from?.removed ?? null,
        part,
      })
  return {
    ...labourAt(context, keys, machine, process, what),
    process: process.key,
    at: spot.keyAt,
    ...timeOf(context, { process, spot: keys, part }, cut, asked),
    each: field(keys, 'each')?.value ?? process.each,
    machine,
    cutter,
    tool: toolNamed(context, field(keys, 'tool')),
    fixture: fixtureNamed(context, field(keys, 'fixture')),
    features,
    facts: new Map(facts),
    numbers,
    cutting: cut && 'cutting' in cut ? cut.cutting : null,
    changeSeconds: 0,
    worked: [],
    check: words(field(keys, 'check')),
    note: words(field(keys, 'note')),
  }
}

/** Changing the cutter between operations of a setup takes time; it is added where the time is worked out. */
function withChanges(operations: readonly Operation[], machine: Machine | null): readonly Operation[] {
  const change = machine?.numbers.get('tool change')?.value.valueOf() ?? usualChange
  return operations.map((operation, at) => {
    const before = operations[at - 1]
    const changes = before !== undefined && operation.cutter !== null && operation.cutter !== before.cutter
    if (!changes || operation.timeFrom !== 'computed') return operation
    return { ...operation, changeSeconds: change, time: seconds(operation.cutting!.seconds + change) }
  })
}

/** From the last cutter of a setup back to the first, for the next piece. */
function changeBackOf(operations: readonly Operation[], machine: Machine | null): ThreePoint | null {
  const cut = operations.filter(({ cutter }) => cutter !== null)
  const [first, last] = [cut[0], cut.at(-1)]
  if (!first || !last || first.cutter === last.cutter || first.timeFrom !== 'computed') return null
  const change = machine?.numbers.get('tool change')?.value.valueOf() ?? usualChange
  return change > 0 ? seconds(change) : null
}

function holdAt(context: Context, spot: Spot<string> | null): Hold {
  if (!spot) return { kind: 'nothing' }
  const text = spot.text.trim()
  const known = context.names.all.get(text)
  if (known?.kind === 'part') {
    const part = fixtureNamed(context, spot)
    return part === null ? { kind: 'nothing' } : { kind: 'fixture', part, at: spot.at }
  }
  if (known?.kind === 'tool') {
    context.names.used.add(text)
    return { kind: 'tool', tool: text, at: spot.at }
  }
  warnNearMiss(
    context,
    text,
    spot.at,
    'fixture',
    (kind, name) => kind === 'tool' || context.fixtures.has(name),
  )
  return { kind: 'words', text }
}

function setupAt(
  context: Context,
  { part, from }: At,
  item: Spot<RouteItemSource>,
  setup: Spot<SetupSource>,
): RouteStep {
  const machine = machineNamed(context, field(setup, 'machine'))
  const operations = listed(field(item, 'ops')).flatMap((op) =>
    entries(op as Spot<object>).flatMap(([key, value]) => {
      const process = processOf(key)
      return process ? [operationAt(context, { part, machine, from }, process, value as Spot<object>)] : []
    }),
  )
  const used = machine === null ? null : (context.bench.machines.get(machine) ?? null)
  const labour = labourAt(
    context,
    setup,
    machine,
    { attention: 'hands', pausable: true },
    `a setup of \`${part}\``,
  )
  return {
    kind: 'setup',
    at: setup.keyAt,
    machine,
    hold: holdAt(context, field(setup, 'hold')),
    on: heldOn(context, part, field(setup, 'on')),
    time: threePointAt(context, 'time', field(setup, 'time'), 'time'),
    load: threePointAt(context, 'load', field(setup, 'load'), 'time'),
    unload: threePointAt(context, 'unload', field(setup, 'unload'), 'time'),
    zero: words(field(setup, 'zero')),
    changeBack: changeBackOf(operations, used),
    clearance: quantityAt(context, 'clearance', field(setup, 'clearance'), 'length'),
    who: labour.who,
    people: labour.people,
    note: words(field(setup, 'note')),
    operations: withChanges(operations, used),
  }
}

function outsideAt(context: Context, part: string, spot: Spot<OutsideSource>): RouteStep | null {
  const offerSpot = field(spot, 'offer')
  const offer = offerSpot ? offerAt(context, `outside work on ${part}`, offerSpot) : null
  if (!offer) return null
  return {
    kind: 'outside',
    at: spot.keyAt,
    offer,
    what: words(field(spot, 'what')),
    needs: targetsAt(context, field(spot, 'needs'), undefined),
    check: words(field(spot, 'check')),
    note: words(field(spot, 'note')),
  }
}

/** A route in order; steps that are faulted whole are left out (reported). */
export function routeAt(
  context: Context,
  at: At,
  spot: Spot<RouteItemSource[]> | null,
): readonly RouteStep[] {
  return listed(spot).flatMap((item): readonly RouteStep[] => {
    const setup = field(item, 'setup')
    if (setup) return [setupAt(context, at, item, setup)]
    const outside = field(item, 'outside')
    if (outside) return [outsideAt(context, at.part, outside) ?? []].flat()
    return entries(item as Spot<object>).flatMap(([key, value]) => {
      const process = processOf(key)
      if (!process) return []
      const spotOf = value as Spot<object>
      return [
        {
          kind: 'work' as const,
          at: spotOf.keyAt,
          operation: operationAt(context, at, process, spotOf),
        },
      ]
    })
  })
}
