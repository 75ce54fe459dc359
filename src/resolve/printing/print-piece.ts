import { prcModel } from '../../diagnostics/catalogue/prc-model.ts'
import { prcPrint } from '../../diagnostics/catalogue/prc-print.ts'
import type { PrintPiece } from '../../model/print.ts'
import { modelHole, modelSize } from '../../trade/printing/model-size.ts'
import { printLimits, printTroubles } from '../../trade/printing/print-limits.ts'
import { filamentTypical } from '../../trade/printing/typical.ts'
import type { Context } from '../context.ts'
import { densityOf } from '../part-mass.ts'
import { plainFigure } from '../worked-quantity.ts'
import { filamentOf, filamentSeconds } from './filament-job.ts'
import { isOutside } from './is-outside.ts'
import type { Bench, Standing } from './print-job.ts'
import { partedLines, resinOf, vatSeconds } from './vat-job.ts'

/** One piece worked out, and what of its material stays in it, mm3. */
export interface PieceFound {
  readonly piece: PrintPiece
  readonly inPartMm3: number | null
  /** A figure of it is beyond all sense (told). */
  readonly outside: boolean
}

/** A print longer than this, in seconds, is a slip of a unit: some four months. */
export const longestPrint = 1e7

/** How one piece prints by itself; `lossShare`: its share of the resin that a job loses. */
export function pieceOf(context: Context, bench: Bench, standing: Standing, lossShare: number): PieceFound {
  warnTooFine(context, bench, standing)
  const { prints } = bench.machine
  const found =
    prints === 'vat'
      ? vatPiece(context, bench, standing, lossShare)
      : prints === 'filament'
        ? filamentPiece(context, bench, standing)
        : { piece: bareOf(standing), inPartMm3: null, outside: false }
  const worked = [...found.piece.worked, ...sizesToModel(context, standing, prints)]
  const assumed = found.piece.seconds === null ? [] : heightLine(standing)
  return { ...found, piece: { ...found.piece, worked, assumed: [...found.piece.assumed, ...assumed] } }
}

/** What stands of a piece without any sum. */
export function bareOf({ heightMm, footprintMm, way }: Standing): PrintPiece {
  const materialMm3 = way.volumeFrom === 'stated' ? (way.volume?.value.valueOf() ?? null) : null
  return { heightMm, footprintMm, materialMm3, seconds: null, worked: [], assumed: [] }
}

const mm3Of = ({ way }: Standing): number | null => way.finished?.volume?.value.valueOf() ?? null
const ratioOf = (ratio: { readonly value: { valueOf(): number } } | null): number | null =>
  ratio?.value.valueOf() ?? null

function vatPiece(context: Context, { machine }: Bench, standing: Standing, lossShare: number): PieceFound {
  const { part, way, heightMm } = standing
  const of = { of: `the print of \`${part.id}\``, at: part.at }
  const bare = bareOf(standing)
  const inPartMm3 = mm3Of(standing)
  const resin =
    bare.materialMm3 !== null || inPartMm3 === null
      ? null
      : resinOf(machine, { finishedMm3: inPartMm3, supports: ratioOf(way.said.supports), lossShare })
  const layerMm = way.layer?.value.valueOf() ?? null
  const time = heightMm === null ? null : vatSeconds(machine, { heightMm, layerMm })
  if (resin && isOutside(context, of, resin)) return { piece: bare, inPartMm3: null, outside: true }
  if (time && (isOutside(context, of, time) || isTooLong(context, of, time.seconds)))
    return { piece: bare, inPartMm3, outside: true }
  const lines = time ? partedLines(time.worked) : { worked: [], assumed: [] }
  const piece = {
    ...bare,
    materialMm3: bare.materialMm3 ?? resin?.mm3 ?? null,
    seconds: time?.seconds ?? null,
    worked: [...(resin?.worked ?? []), ...lines.worked],
    assumed: [...(resin?.assumed ?? []), ...(time?.exposureLine ?? []), ...lines.assumed],
  }
  return { piece, inPartMm3, outside: false }
}

function filamentPiece(context: Context, bench: Bench, standing: Standing): PieceFound {
  const { machine } = bench
  const { part, way, heightMm } = standing
  const of = { of: `the print of \`${part.id}\``, at: part.at }
  const bare = bareOf(standing)
  const taken = plasticOf(bench, standing)
  if (taken && isOutside(context, of, taken)) return { piece: bare, inPartMm3: null, outside: true }
  const depositedMm3 = bare.materialMm3 ?? taken?.mm3 ?? null
  const layerMm = way.layer?.value.valueOf() ?? null
  const time =
    heightMm === null || depositedMm3 === null
      ? null
      : filamentSeconds(machine, { depositedMm3, heightMm, layerMm, heats: false })
  const inPartMm3 = taken?.inPartMm3 ?? null
  if (time && (isOutside(context, of, time) || isTooLong(context, of, time.seconds)))
    return { piece: bare, inPartMm3, outside: true }
  const piece = {
    ...bare,
    materialMm3: depositedMm3,
    seconds: time?.seconds ?? null,
    worked: [...(taken?.worked ?? []), ...overhangLine(standing), ...(time?.worked ?? [])],
    assumed: [...(taken?.assumed ?? []), ...(time?.assumed ?? [])],
  }
  return { piece, inPartMm3, outside: false }
}

function plasticOf({ machine, material }: Bench, standing: Standing): ReturnType<typeof filamentOf> | null {
  const { way } = standing
  const finishedMm3 = mm3Of(standing)
  if (finishedMm3 === null) return null
  return filamentOf(machine, {
    finishedMm3,
    areaMm2: way.finished?.area?.value.valueOf() ?? null,
    supportsMm3: finishedMm3 * (ratioOf(way.said.supports) ?? 0),
    infill: way.said.infill?.valueOf() ?? null,
    walls: way.said.walls,
    gPerCm3: densityOf(material)?.gPerCm3 ?? null,
  })
}

/** Where a height that nobody stated comes from. */
function heightLine({ way, heightMm }: Standing): readonly string[] {
  if (way.said.height || heightMm === null) return []
  return [`height ${plainFigure(heightMm)} mm as its box lies, with no supports below it`]
}

/** Sizes to model where the part shrinks, and the hole where filament closes it a little. */
function sizesToModel(
  context: Context,
  { part, way }: Standing,
  prints: Bench['machine']['prints'],
): readonly string[] {
  const of = { of: `the size to model of \`${part.id}\``, at: part.at }
  const shrink = way.said.shrink
  const sides = shrink ? (way.finished?.box ?? []) : []
  const sizes = sides.map(({ value }) =>
    modelSize({ wantedMm: value.valueOf(), shrinkPercent: shrink!.value.valueOf() * 100 }),
  )
  const wantedMm = way.said.hole?.value.valueOf()
  const hole = prints === 'filament' && wantedMm !== undefined ? [modelHole({ wantedMm, underMm: null })] : []
  const outside = sizes.find((one) => 'fault' in one)
  if (outside) isOutside(context, of, outside)
  return [...sizes, ...hole].flatMap((one) => ('fault' in one ? [] : one.worked))
}

/** What supports might take, where the mesh hangs over and nothing is said of supports. */
function overhangLine({ way }: Standing): readonly string[] {
  const below = way.mesh?.belowMm3 ?? 0
  if (way.said.supports || below < 1) return []
  const { usual } = filamentTypical.supportDensity
  const cm3 = plainFigure((below * usual) / 1000)
  return [`supports are not stated and not counted; below its overhangs they would take up to ${cm3} cm3`]
}

/** PRC64: whether a print takes months. */
export function isTooLong(
  context: Context,
  { of, at }: { readonly of: string; readonly at: Bench['at'] },
  seconds: number,
): boolean {
  if (seconds <= longestPrint) return false
  const must = `at most ${Math.round(longestPrint / 3600)} h`
  context.report(prcModel.figureOutside, at, { of, what: 'print time in hours', value: seconds / 3600, must })
  return true
}

/** PRC43: walls and holes finer than the process prints. */
function warnTooFine(context: Context, { machine }: Bench, { part, way }: Standing): void {
  if (machine.prints === null) return
  const mm = (said: { readonly value: { valueOf(): number } } | null): number | null =>
    said?.value.valueOf() ?? null
  const features = { wall: mm(way.said.wall), hole: mm(way.said.hole), clearance: null, pin: null }
  const troubles = printTroubles(features, machine.prints)
  if (isOutside(context, { of: `\`${part.id}\``, at: part.at }, troubles)) return
  for (const { feature, hasMm, wouldDo } of troubles as Exclude<typeof troubles, { fault: string }>) {
    const { low, high } = printLimits[machine.prints][feature]
    context.report(prcPrint.tooFineToPrint, part.at, {
      part: part.id,
      feature,
      has: hasMm,
      low,
      high,
      process: machine.prints,
      wouldDo,
    })
  }
}
