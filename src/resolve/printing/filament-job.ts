import type { Machine } from '../../model/project.ts'
import type { OutOfDomain } from '../../trade/printing/domain.ts'
import { filamentFlow, filamentTime } from '../../trade/printing/filament-time.ts'
import { filamentUse } from '../../trade/printing/filament-use.ts'
import { filaments, filamentTypical } from '../../trade/printing/typical.ts'
import { layersOf } from '../../trade/printing/vat-time.ts'
import { printerNumber } from './print-job.ts'
import { partedLines, type Sums } from './vat-job.ts'

/** Where nothing is said. Source: common practice, no source. */
const usual = { walls: 3, infill: 0.2, filamentMm: 1.75, heatSeconds: 300 } as const
const practice = 'common practice, no source'

/** What is known of a part that filament is laid for. */
export interface FilamentPiece {
  readonly finishedMm3: number
  /** `null`: not known, that of a cube is taken, the least a block can have. */
  readonly areaMm2: number | null
  readonly supportsMm3: number
  readonly infill: number | null
  readonly walls: number | null
  /** `null`: not known. */
  readonly gPerCm3: number | null
}

/** Plastic of a piece: drawn from the spool, and what of it stays in the part, mm3. */
export interface FilamentTaken extends Sums {
  readonly mm3: number
  readonly inPartMm3: number
}

/** Plastic that a piece takes, by its shell and infill. */
export function filamentOf(machine: Machine, piece: FilamentPiece): FilamentTaken | OutOfDomain {
  const line = printerNumber(machine, 'line width') ?? filamentTypical.lineWidth.usual
  const walls = piece.walls ?? usual.walls
  const infill = piece.infill ?? usual.infill
  const diameter = printerNumber(machine, 'filament') ?? usual.filamentMm
  const use = filamentUse({
    partCm3: piece.finishedMm3 / 1000,
    surfaceCm2: (piece.areaMm2 ?? 6 * piece.finishedMm3 ** (2 / 3)) / 100,
    wallMm: walls * line,
    infill,
    supportCm3: piece.supportsMm3 / 1000,
    filamentMm: diameter,
    densityGPerCm3: piece.gPerCm3 ?? filaments.pla.gPerCm3,
  })
  if ('fault' in use) return use
  const assumed = [
    piece.walls === null ? `${walls} walls (${practice})` : null,
    piece.infill === null ? `infill ${infill * 100} % (${practice})` : null,
    piece.areaMm2 === null ? 'surface as of a cube: no surface is known' : null,
    piece.gPerCm3 === null ? `density ${filaments.pla.gPerCm3} g/cm3 (as of pla, from memory)` : null,
    printerNumber(machine, 'filament') === null ? `filament ${diameter} mm (${practice})` : null,
  ].filter((one) => one !== null)
  return {
    mm3: use.depositedCm3 * 1000,
    inPartMm3: use.depositedCm3 * 1000 - piece.supportsMm3,
    worked: use.worked,
    assumed,
  }
}

/** What a filament job lays down, and how high it grows. */
export interface FilamentJob {
  readonly depositedMm3: number
  readonly heightMm: number
  readonly layerMm: number | null
  /** Heating counts once a job. */
  readonly heats: boolean
}

/** Time of a filament job: what the hot end melts sets its pace. */
export function filamentSeconds(
  machine: Machine,
  { depositedMm3, heightMm, layerMm, heats }: FilamentJob,
): (Sums & { readonly seconds: number; readonly layers: number }) | OutOfDomain {
  const layer = layerMm ?? printerNumber(machine, 'layer')
  const flow = filamentFlow({
    lineWidthMm: printerNumber(machine, 'line width'),
    layerMm: layer,
    speedMmPerSecond: printerNumber(machine, 'print speed'),
    mostMm3PerSecond: printerNumber(machine, 'flow'),
  })
  if ('fault' in flow) return flow
  const layers = layersOf(heightMm, layer ?? filamentTypical.layer.usual)
  const said = printerNumber(machine, 'heat')
  const time = filamentTime({
    depositedCm3: depositedMm3 / 1000,
    flowMm3PerSecond: flow.mm3PerSecond,
    efficiency: null,
    layers,
    secondsPerLayer: null,
    heatSeconds: heats ? (said ?? usual.heatSeconds) : 0,
  })
  if ('fault' in time) return time
  const { worked, assumed } = partedLines([...flow.worked, ...time.worked])
  const heating = heats && said === null ? [`heating ${usual.heatSeconds / 60} min (${practice})`] : []
  return { seconds: time.seconds, layers, worked, assumed: [...assumed, ...heating] }
}
