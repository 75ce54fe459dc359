import Fraction from 'fraction.js'
import { roundMoney } from '../../base/money.ts'
import type { Cause, HoursSource } from '../../model/money.ts'
import type { Project } from '../../model/project.ts'
import type { PlanTask, Subject, TaskNetwork } from '../../model/tasks.ts'
import { compareIds } from '../buying/started.ts'
import { type Claim, type Claimed, partClaims } from './claim.ts'
import type { Fate } from './fates.ts'

type Fates = ReadonlyMap<string, Fate>

/** What a task's time is charged to: a cause, or all parts of one print job. */
type About = Cause | { readonly kind: 'plate'; readonly id: string }

interface Spent {
  readonly of: HoursSource['of']
  readonly resource: string
  readonly about: About
  readonly minutes: number
}

/**
 * Hours of machines and hands at their rates, one line for each resource and what it works on: minutes x rate, rounded
 * once. Hands count at the rate of whoever of those that may do the task costs least (of equals the first by name), since
 * money needs no dates; where a project has nobody they have no rate and no line. Idle holding of a machine is in no task and costs nothing.
 */
export function hoursSources(
  project: Project,
  network: TaskNetwork,
  digits: number,
  fates: Fates,
): Claimed[] {
  const lines = new Map<string, Spent>()
  for (const spent of network.tasks.flatMap((task) => spentOn(project, task))) {
    const key = idOf(spent)
    lines.set(key, { ...spent, minutes: spent.minutes + (lines.get(key)?.minutes ?? 0) })
  }
  return [...lines]
    .sort(([a], [b]) => compareIds(a, b))
    .map(([id, spent]) => ({
      source: sourceOf(project, id, spent, digits),
      claims: claimsOf(project, spent, fates),
    }))
}

/** Who is reckoned to do a task: the least dear of those who may. */
function reckoned(project: Project, { who }: PlanTask): string | null {
  const rateOf = (person: string): Fraction => project.people.get(person)?.rate ?? new Fraction(0)
  const [first] = [...who].sort((a, b) => rateOf(a).compare(rateOf(b)) || compareIds(a, b))
  return first ?? null
}

function spentOn(project: Project, task: PlanTask): Spent[] {
  const about = aboutOf(task.subject)
  const machine = { of: 'machine' as const, resource: task.machine, about, minutes: task.machineMinutes }
  const hands = { of: 'hands' as const, resource: reckoned(project, task), about, minutes: task.handsMinutes }
  return [machine, hands].flatMap(({ resource, ...spent }) =>
    resource !== null && spent.minutes > 0 ? [{ ...spent, resource }] : [],
  )
}

function aboutOf({ part, plate, work, assembly, step, cart }: Subject): About {
  if (part !== null) return { kind: 'part', id: part }
  if (plate !== null) return { kind: 'plate', id: plate }
  if (work !== null) return { kind: 'work', id: work }
  if (assembly !== null) return { kind: 'part', id: assembly }
  if (step === null && cart !== null) return { kind: 'cart', id: cart }
  return { kind: 'device' }
}

function idOf({ of, resource, about }: Spent): string {
  const name = about.kind === 'device' ? 'device' : `${about.kind} ${about.id}`
  return `${of} / ${resource} / ${name}`
}

function sourceOf(project: Project, id: string, spent: Spent, digits: number): HoursSource {
  const { of, resource, minutes } = spent
  const found = of === 'machine' ? project.machines.get(resource) : project.people.get(resource)
  const rate = found?.rate ?? null
  const amount = rate && roundMoney(rate.mul(minutes).div(60), digits)
  return { kind: 'hours', id, title: resource, amount, known: amount ?? 0, of, resource, minutes, rate }
}

function claimsOf(project: Project, { of, about, minutes }: Spent, fates: Fates): Claim[] {
  const units = new Fraction(minutes)
  if (about.kind === 'plate') return plateClaims(project, about.id, of, fates)
  if (about.kind !== 'part') return [{ units, process: of, to: { charged: about } }]
  const fate = fates.get(about.id)
  return partClaims(about.id, of, units, fate?.kept ?? new Fraction(0), fate?.why ?? 'spare')
}

/** A print job's parts by the volume printed for each; by pieces where a volume is unknown. */
function plateClaims(project: Project, plate: string, of: HoursSource['of'], fates: Fates): Claim[] {
  const parts = [...(project.plates.get(plate)?.parts ?? [])].sort(compareIds).map((id) => {
    const way = project.parts.get(id)?.way
    const fate = fates.get(id)
    return { id, fate, pieces: fate?.started ?? 0, volume: way?.kind === 'printed' ? way.volume : null }
  })
  const printed = parts.filter(({ pieces }) => pieces > 0)
  if (printed.length === 0)
    return [{ units: new Fraction(1), process: of, to: { charged: { kind: 'device' } } }]
  const measured = printed.every(({ volume }) => volume?.value.gt(0))
  return printed.flatMap(({ id, fate, pieces, volume }) => {
    const units = measured ? volume!.value.mul(pieces) : new Fraction(pieces)
    return partClaims(id, of, units, fate!.kept, fate!.why)
  })
}
