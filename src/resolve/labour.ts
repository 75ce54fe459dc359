import { nearNames } from '../base/near-names.ts'
import type { Place } from '../base/place.ts'
import { cal } from '../diagnostics/catalogue/cal.ts'
import { ref } from '../diagnostics/catalogue/ref.ts'
import type { Attention, Labour, NamedTool } from '../model/project.ts'
import { field, type Spot } from '../source/spot.ts'
import type { Context } from './context.ts'
import { nameAt } from './names.ts'
import { listed, minutesAt } from './reading.ts'

/** A piece of work shorter than this is not begun, unless said. Source: design of this project. */
const usualLeast = 15

/** The keys that say who works and how it may be interrupted. */
export interface LabourKeys {
  readonly who?: string | string[]
  readonly people?: number
  readonly attention?: Attention
  readonly pause?: boolean
  readonly least?: string | number
}

/** People who may do it: those named, else those who may use the machine, else everybody; `null` where a name was faulted. */
function whoAt(
  context: Context,
  spot: Spot<string | string[]> | null,
  machine: string | null,
): readonly string[] | null {
  const users = (machine === null ? undefined : context.users.get(machine)) ?? context.people
  if (!spot) return users
  const named = listed(spot)
  const wanted = named.flatMap((one) => nameAt(context.names, context.report, one, ['person']) ?? [])
  if (wanted.length < named.length) return null
  return [...new Set(wanted)].filter((person) => users.includes(person))
}

/** Whether there is anybody for a machine, or for work without one; where not, that is said of the machine or the project. */
function someoneMay(context: Context, machine: string | null): boolean {
  if (context.people.length === 0) return false
  return machine === null || (context.users.get(machine) ?? context.people).length > 0
}

/** Who does it and how, with the defaults of its process where the person is silent. */
export function labourAt(
  context: Context,
  spot: Spot<LabourKeys>,
  machine: string | null,
  usual: { readonly attention: Attention; readonly pausable: boolean },
  what: string,
): Labour {
  const attention = field(spot, 'attention')?.value ?? usual.attention
  const named = whoAt(context, field(spot, 'who'), machine)
  const who = named ?? []
  const people = field(spot, 'people')?.value ?? 1
  if (named && attention !== 'none' && who.length < people && someoneMay(context, machine)) {
    context.report(cal.nobodyEligible, (field(spot, 'people') ?? field(spot, 'who') ?? spot).at, {
      what,
      people,
      may: who,
      asked: listed(field(spot, 'who')).map((one) => one.text.trim()),
      machine,
    })
  }
  return {
    attention,
    who,
    people,
    // A run that nobody attends must fit one window, whatever is said.
    pausable: attention === 'none' ? false : (field(spot, 'pause')?.value ?? usual.pausable),
    least: minutesAt(context, 'least', field(spot, 'least')) ?? usualLeast,
  }
}

/** A machine named at a place. */
export function machineNamed(context: Context, spot: Spot<string> | null): string | null {
  return nameAt(context.names, context.report, spot, ['machine'])
}

/** A fixture named at a place: a part with that role. */
export function fixtureNamed(context: Context, spot: Spot<string> | null): string | null {
  const part = nameAt(context.names, context.report, spot, ['part'])
  if (part === null || context.fixtures.has(part)) return part
  context.report(ref.wrongKind, spot!.at, {
    name: part,
    wanted: 'part with `role: fixture`',
    is: 'part of another role',
  })
  return null
}

/** A tool in words; where a tool, machine or part has exactly that name, the resource too. A near miss is warned of. */
export function toolNamed(context: Context, spot: Spot<string> | null): NamedTool | null {
  if (!spot) return null
  const text = spot.text.trim()
  const known = context.names.all.get(text)
  if (known && (known.kind === 'tool' || known.kind === 'machine' || known.kind === 'part')) {
    context.names.used.add(text)
    return { text, resource: { kind: known.kind, id: text } }
  }
  warnNearMiss(context, text, spot.at, 'tool', (kind) => kind === 'tool')
  return { text, resource: null }
}

/** Warns where words are spelled nearly like a name of a kind. */
export function warnNearMiss(
  context: Context,
  text: string,
  at: Place,
  kind: string,
  fits: (kind: string, name: string) => boolean,
): void {
  const names = [...context.names.all].filter(([name, named]) => fits(named.kind, name)).map(([name]) => name)
  const near = nearNames(text, names)
  for (const name of near) context.names.suspected.add(name)
  if (near.length > 0) context.report(ref.nearMiss, at, { text, near, kind })
}
