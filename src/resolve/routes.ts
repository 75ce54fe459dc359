import { nearNames } from '../base/near-names.ts'
import type { ThreePoint } from '../base/three-point.ts'
import { qty } from '../diagnostics/catalogue/qty.ts'
import { ref } from '../diagnostics/catalogue/ref.ts'
import type { Hold, Operation, RouteStep } from '../model/project.ts'
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
import { entries, field, type Spot } from '../source/spot.ts'
import type { Context } from './context.ts'
import { fixtureNamed, labourAt, machineNamed, toolNamed, warnNearMiss } from './labour.ts'
import { nameAt } from './names.ts'
import { numbersAt } from './numbers-at.ts'
import { offerAt } from './offers.ts'
import { certain, listed, threePointAt, words } from './reading.ts'
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
  const known = context.features.get(part) ?? new Set()
  return [...listed(field(spot, 'feature')), ...listed(field(spot, 'features'))].flatMap((one) => {
    const feature = one.text.trim()
    if (known.has(feature)) return [feature]
    context.report(ref.unknownFeature, one.at, { feature, part, near: nearNames(feature, known) })
    return []
  })
}

function timeOf(
  context: Context,
  process: Process,
  spot: Spot<OperationKeys>,
  features: number,
  what: string,
): ThreePoint | null {
  const stated = field(spot, 'time')
  if (stated) return threePointAt(context, 'time', stated, 'time')
  const minutes = (process.minutesPerFeature ?? 0) * features
  if (minutes > 0) return certain(minutes * 60, 'min', `${minutes} min`)
  context.report(qty.noTime, spot.keyAt, { what })
  return null
}

/** Where the schemas describe an operation of a kind. */
const definitionOf = ({ key, place }: Process): string =>
  `#/$defs/${place === 'machine' ? 'operation' : 'routeItem'}/properties/${key}`

/** One operation of a kind, with what its process fills in. `machine` is the setup's. */
export function operationAt(
  context: Context,
  part: string,
  process: Process,
  spot: Spot<object>,
  setupMachine: string | null,
): Operation {
  const keys = spot as Spot<OperationKeys>
  const what = `\`${process.key}\` of \`${part}\``
  const machine = setupMachine ?? machineNamed(context, field(keys, 'machine'))
  const features = featuresOf(context, part, keys)
  const asked = listed(field(keys, 'feature')).length + listed(field(keys, 'features')).length
  const facts = entries(keys)
    .filter(([key]) => !readElsewhere.has(key))
    .map(([key, value]) => [key, words(value) ?? ''] as const)
  return {
    ...labourAt(context, keys, machine, process, what),
    process: process.key,
    at: spot.keyAt,
    time: timeOf(context, process, keys, asked, what),
    each: field(keys, 'each')?.value ?? process.each,
    machine,
    cutter: nameAt(context.names, context.report, field(keys, 'cutter'), ['cutter']),
    tool: toolNamed(context, field(keys, 'tool')),
    fixture: fixtureNamed(context, field(keys, 'fixture')),
    features,
    facts: new Map(facts),
    numbers: numbersAt(context, definitionOf(process), keys, readElsewhere),
    check: words(field(keys, 'check')),
    note: words(field(keys, 'note')),
  }
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
  part: string,
  item: Spot<RouteItemSource>,
  setup: Spot<SetupSource>,
): RouteStep {
  const machine = machineNamed(context, field(setup, 'machine'))
  const operations = listed(field(item, 'ops')).flatMap((op) =>
    entries(op as Spot<object>).flatMap(([key, value]) => {
      const process = processOf(key)
      return process ? [operationAt(context, part, process, value as Spot<object>, machine)] : []
    }),
  )
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
    time: threePointAt(context, 'time', field(setup, 'time'), 'time'),
    load: threePointAt(context, 'load', field(setup, 'load'), 'time'),
    unload: threePointAt(context, 'unload', field(setup, 'unload'), 'time'),
    zero: words(field(setup, 'zero')),
    who: labour.who,
    people: labour.people,
    note: words(field(setup, 'note')),
    operations,
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
  part: string,
  spot: Spot<RouteItemSource[]> | null,
): readonly RouteStep[] {
  return listed(spot).flatMap((item): readonly RouteStep[] => {
    const setup = field(item, 'setup')
    if (setup) return [setupAt(context, part, item, setup)]
    const outside = field(item, 'outside')
    if (outside) return [outsideAt(context, part, outside) ?? []].flat()
    return entries(item as Spot<object>).flatMap(([key, value]) => {
      const process = processOf(key)
      if (!process) return []
      const spotOf = value as Spot<object>
      return [
        {
          kind: 'work' as const,
          at: spotOf.keyAt,
          operation: operationAt(context, part, process, spotOf, null),
        },
      ]
    })
  })
}
