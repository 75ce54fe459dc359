import { prcPrint } from '../../diagnostics/catalogue/prc-print.ts'
import type { PrintRun } from '../../model/print.ts'
import { packPlates, plateCapacity } from '../../trade/printing/pack-plates.ts'
import { type Plate as Bed, type PlatePart, whyUnpackable } from '../../trade/printing/why-unpackable.ts'
import type { Context } from '../context.ts'
import { plainFigure } from '../worked-quantity.ts'
import { type Bench, printerNumber, type Standing } from './print-job.ts'

/** Room between parts where nothing is said, mm. Source: common practice, no source. */
const usualGap = 2
/** A height that is not known takes no room. */
const noHeight = 1e-3

/** What lies on each run of a job, with how that was found. */
export interface Layout {
  readonly runs: readonly PrintRun['loads'][]
  readonly worked: readonly string[]
}

/**
 * The pieces of a job laid out on the bed of its printer, plate after plate; one run where the bed or a footprint is
 * not known, or a piece is larger than the bed (PRC41).
 */
export function layOut(context: Context, bench: Bench, standing: readonly Standing[]): Layout {
  const together = { runs: [standing.map(({ part, pieces }) => ({ part: part.id, pieces }))], worked: [] }
  const bed = bedOf(bench)
  const parts = standing.flatMap(plated)
  if (!bed || parts.length < standing.length) {
    for (const each of standing) if (bed) warnTooLarge(context, bench, bed, each)
    return together
  }
  if (standing.map((each) => warnTooLarge(context, bench, bed, each)).some((large) => large)) return together
  const packed = packPlates(parts, bed)
  if (!('fault' in packed)) {
    if (packed.plates > 1) warnSeveral(context, bench, packed.plates, packed.proved, standing)
    const runs = Array.from({ length: packed.plates }, (_, at) =>
      standing.flatMap(({ part }) => {
        const pieces = packed.placed.filter(({ name, plate }) => name === part.id && plate === at + 1).length
        return pieces > 0 ? [{ part: part.id, pieces }] : []
      }),
    )
    return { runs: runs.length > 0 ? runs : together.runs, worked: packed.worked }
  }
  if (packed.fault !== 'too many parts') return together
  return parts.length === 1
    ? (manyAlike(context, bench, bed, parts[0]!) ?? together)
    : tooMany(context, bench, packed, together)
}

function tooMany(
  context: Context,
  bench: Bench,
  { count, most }: { readonly count: number; readonly most: number },
  together: Layout,
): Layout {
  context.report(prcPrint.notLaidOut, bench.at, { of: bench.says, count, most })
  return together
}

/** Hundreds of one part are laid out in blocks. */
function manyAlike(context: Context, bench: Bench, bed: Bed, part: PlatePart): Layout | null {
  const capacity = plateCapacity(part, bed)
  if ('fault' in capacity || capacity.count === 0) return null
  const jobs = Math.ceil(part.count / capacity.count)
  const runs = Array.from({ length: jobs }, (_, at) => [
    { part: part.name, pieces: Math.min(capacity.count, part.count - at * capacity.count) },
  ])
  if (jobs > 1)
    context.report(prcPrint.severalJobs, bench.at, {
      of: bench.says,
      machine: bench.machine.id,
      jobs,
      proved: false,
      what: `the ${part.count} pieces`,
    })
  return { runs, worked: capacity.worked }
}

function bedOf({ machine }: Bench): Bed | null {
  if (!machine.bed) return null
  const [widthMm, depthMm, heightMm] = machine.bed.map(({ value }) => value.valueOf())
  const gapMm = printerNumber(machine, 'gap') ?? usualGap
  return { widthMm: widthMm!, depthMm: depthMm!, heightMm: heightMm!, edgeMm: 0, gapMm }
}

function plated({ part, pieces, footprintMm, heightMm }: Standing): readonly PlatePart[] {
  if (!footprintMm) return []
  const [widthMm, depthMm] = footprintMm
  return [{ name: part.id, count: pieces, widthMm, depthMm, heightMm: heightMm ?? noHeight }]
}

/** PRC41: whether one piece alone is larger than the bed, or higher than there is room. */
function warnTooLarge(context: Context, { machine }: Bench, bed: Bed, one: Standing): boolean {
  const [part] = plated({ ...one, footprintMm: one.footprintMm ?? [1, 1], pieces: 1 })
  const why = whyUnpackable([part!], bed)
  if (why?.fault !== 'too large') return false
  const sides = one.footprintMm?.map(plainFigure).join(' x ')
  const flat = `${plainFigure(bed.widthMm)} x ${plainFigure(bed.depthMm)} mm`
  context.report(prcPrint.largerThanBed, one.part.at, {
    part: one.part.id,
    machine: machine.id,
    side: why.side,
    has: why.side === 'height' ? `${plainFigure(one.heightMm ?? 0)} mm` : `${sides} mm`,
    bed: why.side === 'height' ? `${plainFigure(bed.heightMm)} mm high` : flat,
    over: why.overMm,
  })
  return true
}

function warnSeveral(
  context: Context,
  { at, says, machine }: Bench,
  jobs: number,
  proved: boolean,
  standing: readonly Standing[],
): void {
  const pieces = standing.reduce((sum, each) => sum + each.pieces, 0)
  context.report(prcPrint.severalJobs, at, {
    of: says,
    machine: machine.id,
    jobs,
    proved,
    what: `the ${pieces} pieces`,
  })
}
