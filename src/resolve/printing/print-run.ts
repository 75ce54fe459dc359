import type { PrintRun } from '../../model/print.ts'
import type { PrintJob } from '../../model/project.ts'
import { duration } from '../../trade/printing/figure.ts'
import { vatFinishing } from '../../trade/printing/vat-finishing.ts'
import type { Context } from '../context.ts'
import { plainFigure } from '../worked-quantity.ts'
import { filamentSeconds } from './filament-job.ts'
import { isOutside } from './is-outside.ts'
import type { Bench, Standing } from './print-job.ts'
import { isTooLong, longestPrint } from './print-piece.ts'
import { partedLines, type Sums, solventLines, vatSeconds } from './vat-job.ts'

/** A piece on a run, worked out. */
export interface Loaded extends Standing {
  readonly materialMm3: number | null
  readonly areaMm2: number | null
}

type Timed = Sums & { readonly seconds: number | null; readonly layers: number | null }

const notTimed: Timed = { seconds: null, layers: null, worked: [], assumed: [] }

/** One run of a printer with these pieces on it: its time by the highest of them, its material and solvent. */
export function runOf(
  context: Context,
  bench: Bench,
  job: Pick<PrintJob, 'wash' | 'dry' | 'cure'>,
  loads: readonly Loaded[],
): PrintRun {
  const heights = allKnown(loads.map((load) => load.heightMm))
  const heightMm = heights && Math.max(...heights)
  const timed = heightMm === null ? notTimed : timeOf(context, bench, loads, heightMm)
  const material = totalOf(loads, ({ materialMm3 }) => materialMm3)
  const vat = bench.machine.prints === 'vat'
  const solvent = vat ? solventLines(totalOf(loads, ({ areaMm2 }) => areaMm2)) : { worked: [], assumed: [] }
  const drawn = material === null ? [] : [`material of this run ${plainFigure(material / 1000)} cm3`]
  return {
    loads: loads.map(({ part, pieces }) => ({ part: part.id, pieces })),
    heightMm,
    layers: timed.layers,
    seconds: timed.seconds,
    worked: [...timed.worked, ...drawn, ...solvent.worked],
    assumed: [...timed.assumed, ...solvent.assumed, ...(vat ? notFinished(job, loads) : [])],
  }
}

/** The numbers, where all of them are known and there is at least one. */
function allKnown(all: readonly (number | null)[]): readonly number[] | null {
  const known = all.filter((one) => one !== null)
  return known.length > 0 && known.length === all.length ? known : null
}

function totalOf(loads: readonly Loaded[], of: (load: Loaded) => number | null): number | null {
  const each = allKnown(loads.map(of))
  return each?.reduce((sum, one, at) => sum + one * loads[at]!.pieces, 0) ?? null
}

/** Finest layer that is asked for; `null`: as the printer has it. */
function layerOf(loads: readonly Loaded[]): number | null {
  const said = loads.flatMap(({ way }) => way.layer?.value.valueOf() ?? [])
  return said.length > 0 ? Math.min(...said) : null
}

function timeOf(context: Context, bench: Bench, loads: readonly Loaded[], heightMm: number): Timed {
  const of = { of: `the print of ${bench.says}`, at: bench.at }
  const { machine } = bench
  const layerMm = layerOf(loads)
  if (machine.prints === 'vat') {
    const time = vatSeconds(machine, { heightMm, layerMm })
    // What is outside for the highest piece alone has been told of that piece.
    if ('fault' in time || time.seconds > longestPrint) return notTimed
    return {
      ...time,
      ...partedLines(time.worked),
      assumed: [...time.exposureLine, ...partedLines(time.worked).assumed],
    }
  }
  const depositedMm3 = totalOf(loads, ({ materialMm3 }) => materialMm3)
  if (machine.prints === null || depositedMm3 === null) return notTimed
  const time = filamentSeconds(machine, { depositedMm3, heightMm, layerMm, heats: true })
  if (isOutside(context, of, time) || isTooLong(context, of, time.seconds)) return notTimed
  return time
}

/** What a vat print usually takes afterwards, where none of it is stated and so none of it is planned. */
function notFinished(
  { wash, dry, cure }: Pick<PrintJob, 'wash' | 'dry' | 'cure'>,
  loads: readonly Loaded[],
): readonly string[] {
  if (wash || dry || cure) return []
  const parts = loads.reduce((sum, { pieces }) => sum + pieces, 0)
  const steps = vatFinishing({ parts, partsPerWash: Math.max(1, parts), partsPerCure: Math.max(1, parts) })
  if ('fault' in steps) return []
  const minutes = (of: 'lowMinutes' | 'highMinutes') =>
    duration(60 * steps.reduce((sum, step) => sum + step[of], 0))
  return [
    `no wash, dry and cure: none is stated, so none is planned; they usually take ${minutes('lowMinutes')} to ${minutes('highMinutes')} (common practice, no source)`,
  ]
}
