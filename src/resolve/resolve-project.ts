import { type Day, formatDay } from '../base/clock.ts'
import { groupBy } from '../base/group-by.ts'
import type { Place } from '../base/place.ts'
import { cal } from '../diagnostics/catalogue/cal.ts'
import { prc } from '../diagnostics/catalogue/prc.ts'
import { ref } from '../diagnostics/catalogue/ref.ts'
import type { Report } from '../diagnostics/message.ts'
import { assemblyPlans } from '../model/assembly-plans.ts'
import type { Device, Limits, Material, Part, Project, Work } from '../model/project.ts'
import type {
  BoughtWaySource,
  DeviceSource,
  LimitsSource,
  MachinedWaySource,
  PartSource,
  StepSource,
  WorkSource,
} from '../source/generated/project-types.ts'
import type { Source } from '../source/load.ts'
import { entries, field, type Spot } from '../source/spot.ts'
import { assemblyAt, openingsAt, stepIds } from './assembly.ts'
import { cutterAt, machineAt, personAt, toolAt, vendorAt } from './bench.ts'
import { chainsAt } from './chains-at.ts'
import type { Component, Context, StepName } from './context.ts'
import { countDemand, reportDemand } from './demand.ts'
import { exchangeAt, reportExchange } from './exchange.ts'
import { generalAt } from './general-at.ts'
import { dayAt } from './hours.ts'
import { labourAt, machineNamed, toolNamed } from './labour.ts'
import { materialAt } from './materials.ts'
import { collectNames, type NameKind } from './names.ts'
import { knownCurrency } from './offers.ts'
import { withMass } from './part-mass.ts'
import { partAt, plateAt, reportPrintTimes, wayOf } from './parts.ts'
import { placedMeshes } from './placed-meshes.ts'
import { withPrints } from './printing/with-prints.ts'
import { listed, moneyIn, quantityAt, threePointAt, words } from './reading.ts'
import { aftersAt, targetsAt } from './targets.ts'
import { reportNeverHere, reportNobody } from './who-is-there.ts'

const kinds = {
  people: 'person',
  machines: 'machine',
  tools: 'tool',
  cutters: 'cutter',
  materials: 'material',
  vendors: 'vendor',
  plates: 'plate',
  work: 'work',
  parts: 'part',
} as const satisfies Partial<Record<keyof Source['sections'], NameKind>>

function mapped<S, T>(
  section: ReadonlyMap<string, Spot<S>>,
  read: (id: string, spot: Spot<S>) => T,
): ReadonlyMap<string, T> {
  return new Map([...section].map(([id, spot]) => [id, read(id, spot)]))
}

/** The plans of the source: the device's (under `null`) and those of parts of kind assembly. */
function plansOf(
  source: Source,
): readonly { readonly assembly: string | null; readonly spot: Spot<{ steps: StepSource[] }> }[] {
  const main = field(source.project, 'assembly')
  const own = main ? [{ assembly: null, spot: main as Spot<{ steps: StepSource[] }> }] : []
  const parts = [...source.sections.parts].flatMap(([assembly, part]) => {
    const way = wayOf(part as Spot<PartSource>)
    return way.value.kind === 'assembly'
      ? [{ assembly, spot: way as Spot<unknown> as Spot<{ steps: StepSource[] }> }]
      : []
  })
  return [...own, ...parts]
}

interface Entry {
  readonly name: string
  readonly kind: NameKind
  readonly at: Place
}

function entriesOf(source: Source): readonly Entry[] {
  const entries: Entry[] = []
  for (const [section, kind] of Object.entries(kinds)) {
    for (const [name, spot] of source.sections[section as keyof typeof kinds])
      entries.push({ name, kind, at: spot.keyAt })
  }
  for (const { section, name, at } of source.aside) {
    const kind = section in kinds ? kinds[section as keyof typeof kinds] : null
    if (kind) entries.push({ name, kind, at })
  }
  // Only names that the person gave can clash; those made of a part or a text are found by what they do.
  for (const { spot } of plansOf(source)) {
    for (const step of listed(field(spot, 'steps'))) {
      const name = field(step, 'name')
      if (name) entries.push({ name: name.text.trim(), kind: 'step', at: name.at })
    }
  }
  return entries.sort((a, b) =>
    a.at.file === b.at.file ? a.at.line - b.at.line || a.at.column - b.at.column : 0,
  )
}

function stepNames(source: Source, parts: ReadonlySet<string>): ReadonlyMap<string, readonly StepName[]> {
  const names = plansOf(source).flatMap(({ assembly, spot }) =>
    stepIds(listed(field(spot, 'steps')), parts).map((id): StepName => ({ assembly, id })),
  )
  return groupBy(names, ({ id }) => id)
}

function usersOf(source: Source, people: readonly string[]): ReadonlyMap<string, readonly string[]> {
  return mapped(source.sections.machines, (_, spot) => {
    const users = field(spot, 'users')
    if (!users) return people
    const named = new Set(listed(users).map((one) => one.text.trim()))
    return people.filter((person) => named.has(person))
  })
}

function contextOf(source: Source, report: Report, currency: string): Context {
  const { sections } = source
  const names = collectNames(entriesOf(source), report)
  for (const { name } of source.aside) names.suspected.add(name)
  const people = [...sections.people.keys()]
  const parts = new Set(sections.parts.keys())
  const isFixture = (spot: Spot<PartSource>): boolean => (spot.value as { role?: string }).role === 'fixture'
  return {
    report,
    currency,
    file: source.file,
    names,
    incomplete: new Set(),
    faulted: new Set(),
    people,
    users: usersOf(source, people),
    vendorCurrency: mapped(sections.vendors, (_, spot) => field(spot, 'currency')?.text ?? currency),
    steps: stepNames(source, parts),
    openings: new Map(
      plansOf(source).map(({ assembly, spot }) => [assembly ?? '', openingsAt(spot as Spot<never>)]),
    ),
    fixtures: new Set([...sections.parts].filter(([, spot]) => isFixture(spot)).map(([id]) => id)),
    attached: source.attached,
    meshes: new Map(),
    components: componentsOf(sections.parts),
    bench: { machines: new Map(), cutters: new Map(), materials: new Map() },
    features: mapped(sections.parts, (_, spot) => featureTexts(spot)),
  }
}

/** Bought parts that say their value or package. */
function componentsOf(parts: Source['sections']['parts']): readonly Component[] {
  return [...parts].flatMap(([part, spot]) => {
    const way = wayOf(spot)
    if (way.value.kind !== 'bought') return []
    const [value, pack] = (['value', 'package'] as const).map((key) =>
      words(field(way as Spot<BoughtWaySource>, key)),
    )
    return value || pack ? [{ part, value: value ?? null, package: pack ?? null }] : []
  })
}

/** A machined part with the mass of its finished volume, where it states none. */
function weighed(context: Context, part: Part): Part {
  if (part.way.kind !== 'machined') return part
  const { material, finished } = part.way
  return withMass(
    part,
    context.bench.materials.get(material ?? '') ?? null,
    finished?.volume?.value.valueOf() ?? null,
  )
}

/** Features of a part by name, as typed on the drawing. */
function featureTexts(spot: Spot<PartSource>): ReadonlyMap<string, string> {
  const features = field(wayOf(spot) as Spot<MachinedWaySource>, 'features')
  return new Map(features ? entries(features).map(([name, value]) => [name, value.text.trim()]) : [])
}

function deviceAt(context: Context, spot: Spot<DeviceSource>, override: Day | null): Device {
  const wanted = field(spot, 'wanted')
  const currency = field(spot, 'currency')
  if (currency) knownCurrency(context, currency.text, currency.at)
  const start = override ?? dayAt(context, 'start', field(spot, 'start'))
  const day = dayAt(context, 'wanted', wanted)
  if (start !== null && day !== null && day < start) {
    context.report(cal.wantedBeforeStart, wanted!.at, { wanted: formatDay(day), start: formatDay(start) })
  }
  return {
    at: spot.keyAt,
    name: words(field(spot, 'name')) ?? '',
    revision: words(field(spot, 'revision')),
    description: words(field(spot, 'description')),
    qty: field(spot, 'qty')?.value ?? 1,
    currency: context.currency,
    general: generalAt(context, field(spot, 'general')),
    start: start ?? 0,
    wanted: day === null ? null : { day, at: wanted!.at },
  }
}

function limitsAt(context: Context, spot: Spot<LimitsSource> | null): Limits {
  if (!spot) return { cash: null, mass: null, envelope: null }
  const cash = moneyIn(context, 'cash', field(spot, 'cash'), context.currency)
  const mass = quantityAt(context, 'mass', field(spot, 'mass'), 'mass')
  const envelope = field(spot, 'envelope')
  if (envelope) context.report(prc.notComputed, envelope.at, { what: 'the envelope' })
  return {
    cash: cash ? { value: cash, at: field(spot, 'cash')!.at } : null,
    mass: mass ? { quantity: mass, at: field(spot, 'mass')!.at } : null,
    envelope: envelope ? { text: envelope.text, at: envelope.at } : null,
  }
}

function workAt(context: Context, id: string, spot: Spot<WorkSource>): Work {
  const machine = machineNamed(context, field(spot, 'machine'))
  return {
    ...labourAt(context, spot, machine, { attention: 'hands', pausable: true }, `\`${id}\``),
    id,
    at: spot.keyAt,
    time: threePointAt(context, 'time', field(spot, 'time'), 'time'),
    after: aftersAt(context, field(spot, 'after'), undefined),
    needs: targetsAt(context, field(spot, 'needs'), undefined),
    machine,
    tool: toolNamed(context, field(spot, 'tool')),
    note: words(field(spot, 'note')),
  }
}

/** Bodies that steps name: one that is never put is the assembly checks' to say. */
function bodiesOf(project: Project): readonly string[] {
  return assemblyPlans(project)
    .flatMap(({ steps }) => steps)
    .flatMap(({ into, onto }) => [into, onto].flatMap((one) => one?.body ?? []))
}

/** Reports names of the project's own file that nothing points at; shop files serve other projects too. */
function reportUnused(context: Context, file: string): void {
  const silent: readonly NameKind[] = ['person', 'work', 'part', 'step', 'chain']
  const said = new Set([...context.names.used, ...context.names.suspected])
  for (const [name, { kind, at }] of context.names.all) {
    if (at.file === file && !silent.includes(kind) && !said.has(name))
      context.report(ref.unusedName, at, { name, kind })
  }
}

/** The project with every unit read and every name found; what is faulted is reported and left out. `start` overrides the source's. */
export function resolveProject(source: Source, report: Report, start: Day | null): Project {
  const deviceSpot = field(source.project, 'device')!
  const early = contextOf(source, report, deviceSpot.value.currency)
  const { sections } = source
  const materials: ReadonlyMap<string, Material> = mapped(sections.materials, (id, spot) =>
    materialAt(early, id, spot),
  )
  const machines = mapped(sections.machines, (id, spot) => machineAt(early, id, spot))
  const cutters = mapped(sections.cutters, (id, spot) => cutterAt(early, id, spot))
  const context = { ...early, bench: { machines, cutters, materials } }
  const parts: ReadonlyMap<string, Part> = mapped(sections.parts, (id, spot) =>
    weighed(context, partAt(context, id, spot)),
  )
  const main = field(source.project, 'assembly')
  const assembly = main ? assemblyAt(context, null, main) : null
  const device = deviceAt(context, deviceSpot, start)
  const plates = mapped(sections.plates, (id, spot) => plateAt(context, id, spot, parts))
  const demand = countDemand(parts, assembly, device.qty, context.names.used)
  const printed = withPrints(context, { parts, plates, machines, materials, demand })
  const project: Project = {
    file: source.file,
    fingerprint: source.fingerprint,
    device,
    limits: limitsAt(context, field(source.project, 'limits')),
    exchange: exchangeAt(context, source),
    people: mapped(sections.people, (id, spot) => personAt(context, id, spot)),
    machines,
    tools: mapped(sections.tools, (id, spot) => toolAt(context, id, spot)),
    cutters,
    materials,
    vendors: mapped(sections.vendors, (id, spot) => vendorAt(context, id, spot)),
    plates: printed.plates,
    work: mapped(sections.work, (id, spot) => workAt(context, id, spot)),
    parts: printed.parts,
    assembly,
    chains: chainsAt(context, source),
    demand,
    meshes: placedMeshes(context, source, deviceSpot),
  }
  reportPrintTimes(context, source, printed)
  reportDemand(printed.parts, project.demand, context.names.suspected, new Set(bodiesOf(project)), report)
  reportUnused(context, source.file)
  reportExchange(context, project)
  reportNeverHere(context, source, device.start)
  reportNobody(context, project)
  return project
}
