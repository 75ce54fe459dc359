import { dayOf } from '../../base/clock.ts'
import type { WorthWhy } from '../../model/risk.ts'
import type { Sampled, SampleSource } from './lay-out-samples.ts'

/** Least share of the samples on whose chain a task must be to be told so. */
const leastShare = 0.05

/** Least number of tasks after one that is worth telling. */
const leastAfter = 2

/** Why a task matters: what it sets going, what it frees, how often it sets the date, how much comes after it. */
export function whyWorth(
  source: SampleSource,
  { onChain, finishes }: Sampled,
  task: number,
): readonly WorthWhy[] {
  const share = onChain[task]! / finishes.length
  const after = countAfter(source, task)
  return [
    ...startsWaiting(source, task),
    ...startsRunning(source, task),
    ...frees(source, task),
    ...(share >= leastShare ? [{ kind: 'on chains', share } as const] : []),
    ...(after >= leastAfter ? [{ kind: 'opens', tasks: after } as const] : []),
  ]
}

function startsWaiting({ network, schedule }: SampleSource, task: number): readonly WorthWhy[] {
  const { id, kind } = network.tasks[task]!
  if (kind !== 'order') return []
  const next = network.links.find(({ from, why }) => from === id && why === 'ordered')?.to
  const delivery = next === undefined ? undefined : schedule.tasks.get(next)
  return delivery ? [{ kind: 'starts waiting', days: dayOf(delivery.finish) - dayOf(delivery.start) }] : []
}

/** What follows on its own, without hands: a run or a cure. */
function startsRunning({ network }: SampleSource, task: number): readonly WorthWhy[] {
  const { id } = network.tasks[task]!
  const next = network.links
    .filter(({ from }) => from === id)
    .map(({ to }) => network.tasks.find((one) => one.id === to)!)
    .find(({ attention, minutes, delivery }) => attention === 'none' && minutes > 0 && delivery === null)
  return next ? [{ kind: 'starts running', machine: next.machine, minutes: next.minutes }] : []
}

/** A machine held up to this task that others of the plan still need. */
function frees({ network, schedule }: SampleSource, task: number): readonly WorthWhy[] {
  const { id } = network.tasks[task]!
  const { finish } = schedule.tasks.get(id)!
  return network.holds.flatMap(({ kind, resource, to }): readonly WorthWhy[] => {
    if (kind !== 'machine' || to !== id) return []
    const more = network.tasks.some(
      (one) => one.machine === resource && schedule.tasks.get(one.id)!.start >= finish,
    )
    return more ? [{ kind: 'frees', machine: resource }] : []
  })
}

function countAfter({ network }: SampleSource, task: number): number {
  const after = new Map<string, string[]>()
  for (const { from, to } of network.links) after.set(from, [...(after.get(from) ?? []), to])
  const reached = new Set([network.tasks[task]!.id])
  for (const id of reached) for (const next of after.get(id) ?? []) reached.add(next)
  return reached.size - 1
}
