import type { PlanSchedule, Session } from '../../model/schedule.ts'
import { chainFinder } from './chain-tasks.ts'
import type { DrawSource } from './draw-source.ts'
import { type Draws, drawAll } from './draws.ts'
import { type Policy, policyOf } from './policy.ts'

/** A plan to be laid out again with other times. */
export interface SampleSource extends DrawSource {
  readonly schedule: PlanSchedule
  readonly sessions: readonly Session[]
}

/** How often a plan is laid out again, and the seed of what is drawn. */
export interface SampleOptions {
  /** At least 1. */
  readonly samples: number
  readonly seed: number
}

/** Finishes of all samples, and how often each task set one. */
export interface Sampled {
  readonly draws: Draws
  readonly policy: Policy
  /** By sample; infinite where something found no place. */
  readonly finishes: Float64Array
  /** By sample and task; empty where something found no place. */
  readonly starts: readonly Int32Array[]
  /** By task: in how many samples it is on the chain. */
  readonly onChain: Int32Array
}

/** Lays the plan out once per sample. */
export function layOutSamples(source: SampleSource, { samples, seed }: SampleOptions): Sampled {
  const draws = drawAll(source, samples, seed)
  const policy = policyOf(source, draws)
  const chainOf = chainFinder(policy.problem)
  const finishes = new Float64Array(samples).fill(Number.POSITIVE_INFINITY)
  const onChain = new Int32Array(source.network.tasks.length)
  const starts: Int32Array[] = []
  for (let k = 0; k < samples; k++) {
    const laid = policy.layOut(k)
    starts.push(laid ? laid.found.start : new Int32Array())
    if (!laid) continue
    finishes[k] = laid.found.end
    for (const task of chainOf(laid)) onChain[task]!++
  }
  return { draws, policy, finishes, starts, onChain }
}
