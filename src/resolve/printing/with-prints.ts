import { prcPrint } from '../../diagnostics/catalogue/prc-print.ts'
import type { PrintRun } from '../../model/print.ts'
import type { Part, Plate, PrintedWay, PrintJob, Project } from '../../model/project.ts'
import type { Context } from '../context.ts'
import { withMass } from '../part-mass.ts'
import { workedQuantity } from '../worked-quantity.ts'
import { type Layout, layOut } from './lay-out.ts'
import { type Bench, benchOf, type PrintedPart, standingOf } from './print-job.ts'
import { bareOf, pieceOf } from './print-piece.ts'
import { type Loaded, runOf } from './print-run.ts'

/** Parts and plates with their prints worked out, and the parts of which a figure is beyond all sense (told). */
export interface Printed {
  readonly parts: ReadonlyMap<string, Part>
  readonly plates: ReadonlyMap<string, Plate>
  readonly outside: ReadonlySet<string>
}

type Made = Pick<Project, 'parts' | 'plates' | 'machines' | 'materials' | 'demand'>

/**
 * Every printed part and plate worked out: how pieces lie on the bed and so how many runs it takes, material, time and
 * mass. What a person stated stays; what is far from the sums is told.
 */
export function withPrints(context: Context, made: Made): Printed {
  const outside = new Set<string>()
  const parts = new Map(made.parts)
  const plates = new Map(made.plates)
  for (const plate of made.plates.values()) {
    const on = plate.parts.flatMap((id) => printedPart(made.parts.get(id)))
    const [job] = workOut(context, made, plate.job, on, [(one) => piecesOf(made, one)], outside)
    for (const each of job?.parts ?? on) parts.set(each.part.id, { ...each.part, way: each.way })
    plates.set(plate.id, { ...plate, runs: job?.runs[0] ?? [] })
    if (job) warnPlateTime(context, plate, job.runs[0] ?? [])
  }
  for (const one of [...made.parts.values()].flatMap(printedPart)) {
    if (one.way.plate !== null && made.plates.has(one.way.plate)) continue
    const lots = lotsOf(piecesOf(made, one), one.way.lot)
    const [job] = workOut(
      context,
      made,
      one.way.job,
      [one],
      lots.map((pieces) => () => pieces),
      outside,
    )
    const found = job?.parts[0]
    if (found) parts.set(one.part.id, { ...found.part, way: { ...found.way, runs: job.runs } })
    if (found) warnPieceTime(context, found)
  }
  return { parts, plates, outside }
}

interface Job {
  readonly parts: readonly PrintedPart[]
  /** Of each lot. */
  readonly runs: readonly (readonly PrintRun[])[]
}

/** One job, lot by lot; none where its printer is not known or does not say what it prints. */
function workOut(
  context: Context,
  made: Made,
  job: PrintJob,
  on: readonly PrintedPart[],
  lots: readonly ((one: PrintedPart) => number)[],
  outside: Set<string>,
): readonly Job[] {
  const bench = on[0] ? benchOf(on[0], made) : null
  if (!bench) return []
  const laid = lots.map((piecesIn) => laidOut(context, bench, on, piecesIn))
  const runs = laid.flatMap((layout) => layout.runs)
  const lossShare = runs.length / Math.max(1, countPieces(runs))
  const found = new Map<string, Loaded & PrintedPart>()
  for (const one of on) {
    const standing = standingOf(one, 0)
    const { piece, inPartMm3, outside: beyond } = pieceOf(context, bench, standing, Math.min(1, lossShare))
    if (beyond) outside.add(one.part.id)
    const worked = { ...bareOf(standing), ...piece }
    const way: PrintedWay = { ...one.way, piece: worked, ...volumeOf(one.way, piece.materialMm3) }
    const part = withMass({ ...one.part, way }, bench.material, inPartMm3)
    const areaMm2 = way.finished?.area?.value.valueOf() ?? null
    found.set(part.id, { ...standing, part, way, materialMm3: piece.materialMm3, areaMm2 })
  }
  return [
    {
      parts: [...found.values()].map(({ part, way }) => ({ part, way })),
      runs: laid.map((layout) => runsOf(context, bench, job, layout, found)),
    },
  ]
}

function laidOut(
  context: Context,
  bench: Bench,
  on: readonly PrintedPart[],
  piecesIn: (one: PrintedPart) => number,
): Layout {
  const standing = on.map((one) => standingOf(one, piecesIn(one))).filter(({ pieces }) => pieces > 0)
  return standing.length === 0 ? { runs: [], worked: [] } : layOut(context, bench, standing)
}

function runsOf(
  context: Context,
  bench: Bench,
  job: PrintJob,
  layout: Layout,
  found: ReadonlyMap<string, Loaded>,
): readonly PrintRun[] {
  return layout.runs.map((loads) => {
    const run = runOf(
      context,
      bench,
      job,
      loads.map(({ part, pieces }) => ({ ...found.get(part)!, pieces })),
    )
    return { ...run, worked: [...layout.worked, ...run.worked] }
  })
}

const countPieces = (runs: readonly PrintRun['loads'][]): number =>
  runs.flat().reduce((sum, { pieces }) => sum + pieces, 0)

function volumeOf(way: PrintedWay, mm3: number | null): Pick<PrintedWay, 'volume' | 'volumeFrom'> {
  return way.volume || mm3 === null
    ? { volume: way.volume, volumeFrom: way.volumeFrom }
    : { volume: workedQuantity(mm3, 'volume'), volumeFrom: 'computed' }
}

function printedPart(part: Part | undefined): readonly PrintedPart[] {
  return part?.way.kind === 'printed' ? [{ part, way: part.way }] : []
}

function piecesOf({ demand }: Made, { part }: PrintedPart): number {
  return (demand.get(part.id)?.toGet ?? 0) * part.tries
}

/** Sizes of the lots in which so many pieces are printed. */
function lotsOf(pieces: number, lot: number | null): readonly number[] {
  const size = lot ?? pieces
  return pieces === 0
    ? []
    : Array.from({ length: Math.ceil(pieces / size) }, (_, at) => Math.min(size, pieces - at * size))
}

/** A stated time this many times the computed one, or below it by as much, is likely a slip. */
const farOff = 3
/** Beyond that, a stated time may hold heating and levelling, in seconds. */
const slack = 600

const isFarOff = (stated: number, computed: number): boolean =>
  stated > computed * farOff + slack || stated < computed / farOff

/** PRC40: a plate whose stated time is far from its layers. */
function warnPlateTime(context: Context, { id, at, job }: Plate, runs: readonly PrintRun[]): void {
  const seconds = runs.map((run) => run.seconds)
  const computed = seconds.every((one) => one !== null) ? Math.max(0, ...(seconds as number[])) : 0
  const stated = job.time?.likely.valueOf() ?? null
  if (stated !== null && computed > 0 && isFarOff(stated, computed))
    context.report(prcPrint.printTimeFarOff, at, {
      of: `plate \`${id}\``,
      stated: stated / 60,
      computed: computed / 60,
    })
}

/** PRC40: a part whose stated time is far from its layers. */
function warnPieceTime(context: Context, { part, way }: PrintedPart): void {
  const stated = way.job.time?.likely.valueOf() ?? null
  const computed = way.piece.seconds
  if (stated !== null && computed !== null && isFarOff(stated, computed))
    context.report(prcPrint.printTimeFarOff, part.at, {
      of: `\`${part.id}\``,
      stated: stated / 60,
      computed: computed / 60,
    })
}
