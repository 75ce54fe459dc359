import { comparePlaces, type Place } from '../base/place.ts'
import type { AssemblyPlan } from '../model/assembly.ts'
import { plansAsBuilt } from '../model/assembly-plans.ts'
import type { Source } from '../model/money.ts'
import type { Project } from '../model/project.ts'
import type { Results } from '../model/results.ts'

/** Something that the plan takes as given though nobody has said or settled it. */
export interface Assumption {
  readonly kind: 'time' | 'price' | 'choice' | 'counted'
  readonly about: string
  readonly says: string
  readonly mend: string
  /** `null`: it stands nowhere in the source. */
  readonly at: Place | null
}

/** Everything that the plan assumes: times, prices, ways taken and what was left unsaid. */
export function assumptionsOf(results: Results): readonly Assumption[] {
  const { project } = results
  return [
    ...plansAsBuilt(project).flatMap(assumedTimes),
    ...unknownPrices(results),
    ...choicesTaken(project),
    ...unsaid(results),
  ]
}

function assumedTimes(plan: AssemblyPlan): readonly Assumption[] {
  return plan.steps
    .filter(({ timeAssumed }) => timeAssumed)
    .map(({ id, time, at }) => ({
      kind: 'time',
      about: `${plan.of ?? 'device'}: ${id}`,
      says: `takes ${time.text}, because no time is given`,
      mend: 'write `time:` on the step',
      at,
    }))
}

/** Amounts that are unknown: of lines, of own stock, of hours, and of what nobody is known to sell. */
function unknownPrices({ money, purchase }: Results): readonly Assumption[] {
  const places = new Map<string, Place>([
    ...purchase.carts.flatMap(({ lines }) => lines.map(({ id, at }): [string, Place] => [id, at])),
    ...purchase.missing.map(({ id, at }): [string, Place] => [id, at]),
  ])
  return money.sources
    .filter(({ amount }) => amount === null)
    .map((source) => ({
      kind: 'price',
      about: source.title,
      says: `${unknownOf(source)}; every total with it says so`,
      mend: mendOf(source),
      at: places.get(source.kind === 'line' ? source.line : source.id) ?? null,
    }))
}

function unknownOf(source: Source): string {
  switch (source.kind) {
    case 'line':
      return `price at ${source.vendor} unknown`
    case 'missing':
      return `cost unknown: ${source.why}`
    case 'own stock':
      return 'worth of own stock unknown'
    case 'hours':
      return `rate of ${source.resource} unknown`
  }
}

function mendOf({ kind }: Source): string {
  if (kind === 'own stock') return 'write `worth:` beside `have:`'
  return kind === 'hours' ? 'write `rate:`' : 'ask for the price and write it in the offer'
}

function choicesTaken(project: Project): readonly Assumption[] {
  return [...project.parts.values()].flatMap(({ id, choice, at }): readonly Assumption[] =>
    choice === null
      ? []
      : [
          {
            kind: 'choice',
            about: id,
            says: `way taken: ${choice.taken}; left: ${choice.left.join(', ')}`,
            mend: 'keep only one way where the choice is made',
            at,
          },
        ],
  )
}

function unsaid({ project, network, purchase }: Results): readonly Assumption[] {
  const vendorsUsed = new Set(purchase.carts.map(({ vendor }) => vendor))
  const machinesUsed = new Set(network.tasks.map(({ machine }) => machine))
  const vendors = [...project.vendors.values()]
    .filter(({ id }) => vendorsUsed.has(id))
    .map(
      ({ id, order, receive, at }): Assumption => ({
        kind: 'counted',
        about: id,
        says: `counts ${order.text} to order, ${receive.text} to unpack and check`,
        mend: 'write `order:` and `receive:` on the vendor',
        at,
      }),
    )
  const machines = [...project.machines.values()]
    .filter(({ id, hours }) => hours === null && machinesUsed.has(id))
    .map(
      ({ id, at }): Assumption => ({
        kind: 'counted',
        about: id,
        says: 'may run at any hour, because no hours are given',
        mend: 'write `hours:` on the machine',
        at,
      }),
    )
  return [...vendors, ...machines].sort((a, b) => comparePlaces(a.at!, b.at!) || (a.about < b.about ? -1 : 1))
}
