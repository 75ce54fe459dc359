import { type Instant, instantOf } from '../../base/clock.ts'
import type { Project } from '../../model/project.ts'
import type { ChanceDate, Risk } from '../../model/risk.ts'
import { layOutSamples, type SampleOptions, type SampleSource } from './lay-out-samples.ts'
import { leversOf } from './levers-of.ts'
import { safeDates } from './safe-dates.ts'
import { spreadOf } from './spread-of.ts'
import { quantile, shareBy } from './statistics.ts'
import { tonightByValue } from './tonight-by-value.ts'

/** Chances that dates are told for. */
const chances = [0.5, 0.8, 0.95]

/**
 * How sure the date is: the plan laid out in its own order with all times, parcels, failing tests and bad pieces drawn
 * anew, so many times. Gives: the same for the same plan, samples and seed.
 */
export function sampleProject(source: SampleSource, options: SampleOptions): Risk {
  const sampled = layOutSamples(source, options)
  const { finishes, onChain, draws } = sampled
  const { samples } = options
  const wanted = wantedBy(source.project)
  const dates = chances.map((chance) => ({ chance, finish: finiteOf(quantile(finishes, chance)) }))
  return {
    samples,
    unplaced: finishes.filter((at) => at === Number.POSITIVE_INFINITY).length,
    finishBy: dates,
    asPlanned: shareBy(finishes, source.schedule.finish),
    wanted: wanted === null ? null : shareBy(finishes, wanted),
    critical: new Map(source.network.tasks.map(({ id }, at) => [id, onChain[at]! / samples])),
    spread: spreadOf(draws.inputs, finishes),
    safe: safeDates(source, sampled, wanted),
    ...leversOf(source, (task) => onChain[task]! / samples),
    tonight: tonightByValue(source, sampled),
  }
}

/** The end of the wanted day; `null` where none is wanted. */
export function wantedBy({ device }: Project): Instant | null {
  return device.wanted ? instantOf(device.wanted.day + 1, 0) : null
}

function finiteOf(value: number): ChanceDate['finish'] {
  return Number.isFinite(value) ? value : null
}
