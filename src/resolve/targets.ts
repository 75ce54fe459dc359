import { nearNames } from '../base/near-names.ts'
import type { Place } from '../base/place.ts'
import { readAs } from '../base/quantity.ts'
import { isFault } from '../base/quantity-fault.ts'
import { ref } from '../diagnostics/catalogue/ref.ts'
import type { After, Target } from '../model/project.ts'
import type { LinkSource } from '../source/generated/project-types.ts'
import { field, isMapSpot, type Spot } from '../source/spot.ts'
import type { Context } from './context.ts'
import { listed, minutesAt, threePointAt } from './reading.ts'

/** Where a reference is read from: the assembly whose steps and openings come first; `undefined` outside any. */
export type From = string | null | undefined

const keyOf = (assembly: string | null): string => assembly ?? ''

/** `body.opening` as its two names, where the body has openings in the assembly read from. */
function openingNamed(context: Context, name: string, from: From, at: Place): Target | null {
  if (from === undefined) return null
  for (const [body, openings] of context.openings.get(keyOf(from)) ?? []) {
    const opening = name.startsWith(`${body}.`) ? name.slice(body.length + 1) : null
    if (opening !== null && openings.includes(opening))
      return { kind: 'opening', assembly: from, body, opening, at }
  }
  return null
}

function stepNamed(context: Context, name: string, from: From, at: Place): Target | 'several' | null {
  const found = context.steps.get(name) ?? []
  const own = found.find(({ assembly }) => assembly === from)
  if (own) return { kind: 'step', assembly: own.assembly, id: own.id, at }
  if (found.length > 1) return 'several'
  return found[0] ? { kind: 'step', assembly: found[0].assembly, id: found[0].id, at } : null
}

/** What a name points at: an opening or step of the own assembly first, then work, a part, any step. */
export function targetAt(context: Context, name: string, at: Place, from: From): Target | null {
  const known = context.names.all.get(name)
  if (known?.kind === 'work' || known?.kind === 'part') {
    context.names.used.add(name)
    return { kind: known.kind, id: name, at }
  }
  const opening = openingNamed(context, name, from, at)
  if (opening) return opening
  const step = stepNamed(context, name, from, at)
  if (step === 'several') {
    const assemblies = context.steps.get(name)!.map(({ assembly }) => assembly ?? 'the device')
    context.report(ref.ambiguousStep, at, { name, assemblies })
    return null
  }
  if (step) return step
  reportUnknown(context, name, at, from)
  return null
}

function reportUnknown(context: Context, name: string, at: Place, from: From): void {
  const known = context.names.all.get(name)
  const [body = '', opening = ''] = name.split('.')
  const openings = from === undefined ? undefined : context.openings.get(keyOf(from))?.get(body)
  if (known) context.report(ref.wrongKind, at, { name, wanted: 'work, part or step', is: known.kind })
  else if (openings) context.report(ref.unknownOpening, at, { body, opening, known: openings })
  else {
    const names = [...context.names.all]
      .filter(([, { kind }]) => kind === 'work' || kind === 'part')
      .map(([one]) => one)
    const all = [...names, ...context.steps.keys()]
    const near = nearNames(name, all)
    for (const one of near) context.names.suspected.add(one)
    context.report(ref.unknownName, at, {
      name,
      wanted: 'work, part or step',
      near,
      known: all,
    })
  }
}

/** Targets of a list of names. */
export function targetsAt(
  context: Context,
  spot: Spot<string | string[]> | null,
  from: From,
): readonly Target[] {
  return listed(spot).flatMap((one) => targetAt(context, one.text.trim(), one.at, from) ?? [])
}

function lagOf(context: Context, link: Spot<LinkSource>): After['lag'] {
  const spot = field(link, 'lag')
  if (!spot) return { minutes: 0 }
  const read = readAs(spot.text, ['time', 'working days'])
  if (!isFault(read) && read.dims === 'workingDays') {
    const days = threePointAt(context, 'lag', spot, 'working days')
    return { workingDays: days ? Number(days.high.ceil().valueOf()) : 0 }
  }
  const lag = threePointAt(context, 'lag', spot, 'time')?.high
  return { minutes: lag ? Number(lag.div(60).ceil().valueOf()) : 0 }
}

/** Links of `after:`: names, or a step with a lag or a longest wait. */
export function aftersAt(
  context: Context,
  spot: Spot<string | (string | LinkSource)[]> | null,
  from: From,
): readonly After[] {
  return listed(spot).flatMap((one) => {
    const link = isMapSpot(one) ? (one as Spot<LinkSource>) : null
    const name = link ? field(link, 'step') : one
    const target = name ? targetAt(context, name.text.trim(), name.at, from) : null
    if (!target) return []
    const lag = link ? lagOf(context, link) : { minutes: 0 }
    return [
      { target, lag, within: link ? minutesAt(context, 'within', field(link, 'within')) : null, at: one.at },
    ]
  })
}
