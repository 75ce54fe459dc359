import type { Place } from '../base/place.ts'
import { qty } from '../diagnostics/catalogue/qty.ts'
import { ref } from '../diagnostics/catalogue/ref.ts'
import type { AssemblyPlan, OpeningAt, Step } from '../model/assembly.ts'
import type { Count } from '../model/project.ts'
import type { AssemblyWaySource, MainAssemblySource, StepSource } from '../source/generated/project-types.ts'
import { entries, field, type Spot } from '../source/spot.ts'
import type { Context } from './context.ts'
import { featureNameAt } from './feature-name-at.ts'
import { fixtureNamed, labourAt, machineNamed, toolNamed } from './labour.ts'
import { countAt, nameAt, named } from './names.ts'
import { certain, failsAt, listed, minutesAt, quantityAt, threePointAt, words } from './reading.ts'
import { aftersAt, targetsAt } from './targets.ts'

type PlanSource = AssemblyWaySource | MainAssemblySource

/** Minutes taken for a step that gives no time. Source: common practice, no source. */
const assumedMinutes = 5

/** What a step is called: its name, else what it does. Made unique by a number behind it. */
export function stepIds(
  steps: readonly Spot<StepSource>[],
  partNames: ReadonlySet<string>,
): readonly string[] {
  const seen = new Map<string, number>()
  return steps.map((step) => {
    const name = words(field(step, 'name')) ?? plainName(step, partNames)
    const times = (seen.get(name) ?? 0) + 1
    seen.set(name, times)
    return times === 1 ? name : `${name} (${times})`
  })
}

function plainName(step: Spot<StepSource>, partNames: ReadonlySet<string>): string {
  const put = words(field(step, 'put'))
  if (put !== null) return partNames.has(put) ? put : put.replace(/\s+[x×]\d+$/, '')
  const text = words(field(step, 'test')) ?? words(field(step, 'do'))
  if (text !== null) return text.length > 60 ? `${text.slice(0, 57)}...` : text
  const [shut] = listed(field(step, 'shut'))
  const [open] = listed(field(step, 'open'))
  return shut ? `shut ${shut.text}` : open ? `open ${open.text}` : 'step'
}

/** Openings by body, as listed under `openings`. */
export function openingsAt(spot: Spot<PlanSource>): ReadonlyMap<string, readonly string[]> {
  const openings = field(spot, 'openings')
  return new Map(
    openings
      ? entries(openings).map(([body, list]) => [body, listed(list).map((one) => one.text.trim())])
      : [],
  )
}

function reportBodies(context: Context, spot: Spot<PlanSource>): void {
  const openings = field(spot, 'openings')
  for (const [body, list] of openings ? entries(openings) : [])
    named(context.names, context.report, body, list.keyAt, ['part'])
}

/** Openings named as `body.opening`; unknown ones are reported. */
function openingRefs(
  context: Context,
  openings: ReadonlyMap<string, readonly string[]>,
  spot: Spot<string | string[]> | null,
): readonly OpeningAt[] {
  return listed(spot).flatMap((one) => {
    const text = one.text.trim()
    for (const [body, list] of openings) {
      const opening = text.startsWith(`${body}.`) ? text.slice(body.length + 1) : null
      if (opening === null) continue
      if (list.includes(opening)) return [{ body, opening, at: one.at }]
      context.report(ref.unknownOpening, one.at, { body, opening, known: list })
      return []
    }
    const dot = text.lastIndexOf('.')
    if (dot < 0) {
      const all = [...openings].flatMap(([body, list]) => list.map((opening) => `${body}.${opening}`))
      context.report(ref.openingOfWhat, one.at, {
        text,
        near: all.filter((name) => name.endsWith(`.${text}`)),
      })
      return []
    }
    context.report(ref.unknownOpening, one.at, {
      body: text.slice(0, dot),
      opening: text.slice(dot + 1),
      known: [],
    })
    return []
  })
}

function intoAt(
  context: Context,
  openings: ReadonlyMap<string, readonly string[]>,
  step: Spot<StepSource>,
): Step['into'] {
  const body = nameAt(context.names, context.report, field(step, 'in'), ['part'])
  if (body === null) return null
  const at = field(step, 'in')!.at
  const through = field(step, 'through')
  const known = openings.get(body) ?? []
  if (!through) return { body, through: null, at }
  const opening = through.text.trim()
  if (known.includes(opening)) return { body, through: opening, at: through.at }
  context.report(ref.unknownOpening, through.at, { body, opening, known })
  return { body, through: null, at }
}

/** The two features written under `mates`; `null` where silent or one of them is unknown (reported). */
function matesAt(context: Context, spot: Spot<string[]> | null): Step['mates'] {
  const [first, second] = listed(spot).map((one) => featureNameAt(context, one.text.trim(), one.at))
  return first && second ? [first, second] : null
}

const gluing = new Set(['glue'])

function stepAt(
  context: Context,
  assembly: string | null,
  openings: ReadonlyMap<string, readonly string[]>,
  step: Spot<StepSource>,
  index: number,
  id: string,
): Step {
  const count = (key: 'put') =>
    field(step, key) ? countAt(context.names, context.report, field(step, key)!) : null
  const machine = machineNamed(context, field(step, 'machine'))
  const tool = toolNamed(context, field(step, 'tool'))
  const method = field(step, 'by')?.value ?? null
  const on = field(step, 'on')
  const onto = nameAt(context.names, context.report, on, ['part'])
  const timeSpot = field(step, 'time')
  if (!timeSpot) context.report(qty.timeAssumed, step.at, { step: id, minutes: assumedMinutes })
  const usual = { attention: 'hands' as const, pausable: !(method !== null && gluing.has(method)) }
  return {
    ...labourAt(
      context,
      step,
      machine ?? (tool?.resource?.kind === 'machine' ? tool.resource.id : null),
      usual,
      `the step \`${id}\``,
    ),
    id,
    at: step.at,
    index,
    put: count('put'),
    instances: listed(field(step, 'as')).map((one) => one.text.trim()),
    into: intoAt(context, openings, step),
    onto: onto === null ? null : { body: onto, at: on!.at },
    method,
    light: field(step, 'light')?.value ?? false,
    lightSaid: field(step, 'light') !== null,
    mates: matesAt(context, field(step, 'mates')),
    engagement: quantityAt(context, 'engagement', field(step, 'engagement'), 'length', 'above 0'),
    around: quantityAt(context, 'around', field(step, 'around'), 'length', 'above 0'),
    locker: field(step, 'locker')?.value ?? false,
    fasteners: listed(field(step, 'with')).flatMap((one): readonly Count[] =>
      [countAt(context.names, context.report, one) ?? []].flat(),
    ),
    from: words(field(step, 'from')),
    gives: quantityAt(context, 'gives', field(step, 'gives'), 'length', 'above 0'),
    turn: words(field(step, 'turn')),
    tool,
    fixture: fixtureNamed(context, field(step, 'fixture')),
    machine,
    torque: quantityAt(context, 'torque', field(step, 'torque'), 'torque'),
    adhesive: words(field(step, 'adhesive')),
    cure: threePointAt(context, 'cure', field(step, 'cure'), 'time'),
    time:
      (timeSpot ? threePointAt(context, 'time', timeSpot, 'time') : null) ??
      certain(assumedMinutes * 60, 'min', `${assumedMinutes} min`),
    timeAssumed: !timeSpot,
    check: words(field(step, 'check')),
    cautions: listed(field(step, 'caution')).map((one) => words(one) ?? ''),
    shuts: openingRefs(context, openings, field(step, 'shut')),
    opens: openingRefs(context, openings, field(step, 'open')),
    test: words(field(step, 'test')),
    action: words(field(step, 'do')),
    needs: targetsAt(context, field(step, 'needs'), assembly),
    reaches: listed(field(step, 'reaches')).map((one) => ({ text: one.text.trim(), at: one.at })),
    after: aftersAt(context, field(step, 'after'), assembly),
    before: targetsAt(context, field(step, 'before'), assembly),
    beforeLastOf: targetsAt(context, field(step, 'before_last_of'), assembly),
    looseUntil: targetsAt(context, field(step, 'loose_until'), assembly),
    within: minutesAt(context, 'within', field(step, 'within')),
    fails: failsAt(context, field(step, 'fails')),
    rework: threePointAt(context, 'rework', field(step, 'rework'), 'time'),
    together: field(step, 'together')?.value ?? false,
    note: words(field(step, 'note')),
  }
}

/** The body on which the rest goes: the one named, else the one body that steps touch and none puts. */
function groundOf(named: string | null, steps: readonly Step[]): string | null {
  if (named !== null) return named
  const put = new Set(steps.flatMap((step) => (step.put ? [step.put.part] : [])))
  const touched = steps.flatMap((step) => [
    step.into?.body,
    step.onto?.body,
    ...step.shuts.map(({ body }) => body),
  ])
  return touched.find((body): body is string => body !== undefined && !put.has(body)) ?? null
}

/** REF10, QTY13: names under `as` that are taken, and more or fewer of them than are put. */
function reportCopies(context: Context, steps: readonly Spot<StepSource>[], read: readonly Step[]): void {
  const seen = new Map<string, Place>()
  for (const [index, step] of steps.entries()) {
    const names = listed(field(step, 'as'))
    const put = read[index]!.put
    if (put && names.length > 0 && names.length !== put.count)
      context.report(qty.copiesMismatch, field(step, 'as')!.at, {
        part: put.part,
        put: put.count,
        named: names.length,
      })
    for (const one of names) {
      const name = one.text.trim()
      const part = context.names.all.get(name)
      const first = seen.get(name) ?? (part?.kind === 'part' ? part.at : null)
      if (first)
        context.report(ref.doubledCopy, one.at, { name, is: seen.has(name) ? 'copy' : 'part', first })
      else seen.set(name, one.at)
    }
  }
}

/** How a device (`null`) or a part of kind assembly goes together. */
export function assemblyAt(context: Context, assembly: string | null, spot: Spot<PlanSource>): AssemblyPlan {
  const openings = openingsAt(spot)
  reportBodies(context, spot)
  const steps = listed(field(spot, 'steps')) as readonly Spot<StepSource>[]
  const parts = new Set(
    [...context.names.all].filter(([, { kind }]) => kind === 'part').map(([name]) => name),
  )
  const ids = stepIds(steps, parts)
  const read = steps.map((step, index) => stepAt(context, assembly, openings, step, index, ids[index]!))
  reportCopies(context, steps, read)
  const ground = nameAt(context.names, context.report, field(spot, 'ground'), ['part'])
  return { of: assembly, at: spot.keyAt, openings, steps: read, ground: groundOf(ground, read) }
}
