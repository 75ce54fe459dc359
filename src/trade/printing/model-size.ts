import { firstOutside, type OutOfDomain } from './domain.ts'
import { figure } from './figure.ts'
import { filamentTypical } from './typical.ts'

/** A size to be drawn, with the sum. */
export interface ModelSize {
  readonly modelMm: number
  readonly worked: readonly string[]
}

/**
 * The size to model so that the part has the wanted size after shrinking.
 * Source: wanted / (1 - shrink). Trade tables also multiply by (1 + shrink): the two differ by shrink squared.
 */
export function modelSize(size: {
  readonly wantedMm: number
  readonly shrinkPercent: number
}): ModelSize | OutOfDomain {
  const outside = firstOutside(size, { wantedMm: 'above 0', shrinkPercent: '0 or more' })
  if (outside) return outside
  const { wantedMm, shrinkPercent } = size
  if (shrinkPercent > 50)
    return { fault: 'out of domain', field: 'shrinkPercent', value: shrinkPercent, must: '0 to 50' }
  const modelMm = wantedMm / (1 - shrinkPercent / 100)
  const sum = `${figure(wantedMm)} mm / (1 - ${figure(shrinkPercent)} %)`
  return { modelMm, worked: [`model size = ${sum} = ${modelMm.toFixed(3)} mm`] }
}

/**
 * The hole to model in a filament part, where holes come out small. Source: public design tables: 0.1 to 0.3 mm
 * under.
 */
export function modelHole(hole: {
  readonly wantedMm: number
  readonly underMm: number | null
}): ModelSize | OutOfDomain {
  const outside = firstOutside(hole, { wantedMm: 'above 0', underMm: '0 or more' })
  if (outside) return outside
  const under = hole.underMm ?? filamentTypical.holeUndersize.usual
  const modelMm = hole.wantedMm + under
  const from = hole.underMm === null ? `assumed, ${filamentTypical.holeUndersize.source}` : 'as given'
  const line = `hole to model = ${figure(hole.wantedMm)} + ${figure(under)} (${from}) = ${figure(modelMm)} mm`
  return { modelMm, worked: [line] }
}
