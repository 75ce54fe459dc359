import type { Machine } from '../../model/project.ts'
import type { OutOfDomain } from '../../trade/printing/domain.ts'
import { resinUse, solventUse } from '../../trade/printing/resin-use.ts'
import { vatTypical } from '../../trade/printing/typical.ts'
import { type VatTime, vatTime } from '../../trade/printing/vat-time.ts'
import { printerNumber } from './print-job.ts'

/** Figures of a sum apart from the lines that say what was assumed. */
export interface Sums {
  readonly worked: readonly string[]
  readonly assumed: readonly string[]
}

/** Parts the lines of a formula into sums and what they took for granted. */
export function partedLines(lines: readonly string[]): Sums {
  const mark = 'assumed: '
  return {
    worked: lines.filter((line) => !line.startsWith(mark)),
    assumed: lines.filter((line) => line.startsWith(mark)).map((line) => line.slice(mark.length)),
  }
}

/** Time of a vat print of a height, by what its printer is said to do and the usual where it is silent. */
export function vatSeconds(
  machine: Machine,
  { heightMm, layerMm }: { readonly heightMm: number; readonly layerMm: number | null },
): (VatTime & { readonly exposureLine: readonly string[] }) | OutOfDomain {
  const said = printerNumber(machine, 'exposure')
  const usual = vatTypical.exposureMonochrome
  const time = vatTime({
    heightMm,
    layerMm: layerMm ?? printerNumber(machine, 'layer'),
    exposureSeconds: said ?? usual.usual,
    bottomLayers: machine.bottomLayers,
    bottomSeconds: printerNumber(machine, 'bottom exposure'),
    movingSecondsPerLayer: printerNumber(machine, 'lift time'),
  })
  if ('fault' in time) return time
  const exposureLine = said === null ? [`exposure ${usual.usual} ${usual.unit} (${usual.source})`] : []
  return { ...time, exposureLine }
}

/** Resin that pieces of a part draw, supports and their share of what each job loses included, mm3. */
export function resinOf(
  machine: Machine,
  part: { readonly finishedMm3: number; readonly supports: number | null; readonly lossShare: number },
): (Sums & { readonly mm3: number }) | OutOfDomain {
  const lossMm3 = printerNumber(machine, 'resin lost')
  const loss = lossMm3 === null ? vatTypical.lossCm3.usual : lossMm3 / 1000
  const use = resinUse({
    partsCm3: part.finishedMm3 / 1000,
    supportFraction: part.supports,
    lossCm3: loss * part.lossShare,
    densityGPerCm3: null,
  })
  if ('fault' in use) return use
  const { worked, assumed } = partedLines(use.worked)
  const lost =
    lossMm3 === null ? [`loss of a job ${loss} cm3, shared by its pieces (${vatTypical.lossCm3.source})`] : []
  return { mm3: use.cm3 * 1000, worked, assumed: [...assumed, ...lost] }
}

/** Alcohol for washing pieces with a surface, in words; none where the surface is not known. */
export function solventLines(areaMm2: number | null): Sums {
  const use =
    areaMm2 === null || areaMm2 <= 0
      ? null
      : solventUse({
          surfaceCm2: areaMm2 / 100,
          filmMm: null,
          fullAtFraction: null,
          dragOutMm: null,
        })
  return !use || 'fault' in use ? { worked: [], assumed: [] } : partedLines(use.worked)
}
