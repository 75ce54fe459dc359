import { firstOutside, type OutOfDomain } from '../printing/domain.ts'
import { figure } from '../printing/figure.ts'

/** Where a trace lies: on the outside of the board or between its layers. */
export type TraceLayer = 'external' | 'internal'

interface FitConstants {
  readonly k: number
  readonly b: number
  readonly c: number
}

/**
 * Constants of the fit I = k dT^b A^c, A in square mil.
 * Source: `IPC-2221` as printed on a manufacturer's design page and two other public pages; `older fit` from an older
 * public hardware page (2006), kept to compare. The standard itself was not read.
 */
export const traceConstants: Readonly<Record<TraceSet, Readonly<Record<TraceLayer, FitConstants>>>> = {
  'IPC-2221': { external: { k: 0.048, b: 0.44, c: 0.725 }, internal: { k: 0.024, b: 0.44, c: 0.725 } },
  'older fit': {
    external: { k: 0.0647, b: 0.4281, c: 0.6732 },
    internal: { k: 0.015, b: 0.5453, c: 0.7349 },
  },
}

/** Name of a set of constants. */
export type TraceSet = 'IPC-2221' | 'older fit'

/** What a trace is and how warm it may get. */
export interface TraceConditions {
  readonly layer: TraceLayer
  readonly riseK: number
  /** 1 oz/ft2 is 0.035 mm. */
  readonly copperOz: number
  readonly set: TraceSet
}

/** A trace and the current it carries, with the sum and reasons for doubt. */
export interface TraceFound {
  readonly currentA: number
  readonly widthMm: number
  readonly areaMil2: number
  readonly doubts: readonly string[]
  readonly worked: readonly string[]
}

const [milPerOz, mmPerMil] = [1.378, 0.0254]
const rules = { riseK: 'above 0', copperOz: 'above 0' } as const

/**
 * Width of a trace for a current. Source: A = (I / (k dT^b))^(1/c), width = A / (1.378 t); constants as
 * `traceConstants`.
 * A rough rule: planes, neighbours and board thickness are left out; add margin.
 */
export function traceWidth(trace: TraceConditions & { readonly currentA: number }): TraceFound | OutOfDomain {
  const outside = firstOutside(trace, { ...rules, currentA: 'above 0' }) ?? tooWide(trace)
  if (outside) return outside
  const { layer, riseK, copperOz, set, currentA } = trace
  const { k, b, c } = traceConstants[set][layer]
  const areaMil2 = (currentA / (k * riseK ** b)) ** (1 / c)
  const widthMil = areaMil2 / (milPerOz * copperOz)
  const widthMm = widthMil * mmPerMil
  const fit = `(${figure(currentA)} / (${k} x ${figure(riseK)}^${b}))^(1/${c})`
  return {
    currentA,
    widthMm,
    areaMil2,
    doubts: doubtsOf(trace, currentA, widthMm),
    worked: [
      `A = ${fit} = ${figure(areaMil2)} mil2 (${set}, ${layer})`,
      `width = ${figure(areaMil2)} / (1.378 x ${figure(copperOz)} oz) = ${figure(widthMil)} mil = ` +
        `${figure(widthMm)} mm`,
    ],
  }
}

/** Current that a trace of a width carries. Source: as `traceWidth`, the other way round. */
export function traceCurrent(
  trace: TraceConditions & { readonly widthMm: number },
): TraceFound | OutOfDomain {
  const outside = firstOutside(trace, { ...rules, widthMm: 'above 0' }) ?? tooWide(trace)
  if (outside) return outside
  const { layer, riseK, copperOz, set, widthMm } = trace
  const { k, b, c } = traceConstants[set][layer]
  const areaMil2 = (widthMm / mmPerMil) * milPerOz * copperOz
  const currentA = k * riseK ** b * areaMil2 ** c
  const area = `${figure(widthMm / mmPerMil)} mil x 1.378 x ${figure(copperOz)} oz = ${figure(areaMil2)} mil2`
  return {
    currentA,
    widthMm,
    areaMil2,
    doubts: doubtsOf(trace, currentA, widthMm),
    worked: [
      `A = ${area}`,
      `I = ${k} x ${figure(riseK)}^${b} x ${figure(areaMil2)}^${c} = ${figure(currentA)} A (${set}, ${layer})`,
    ],
  }
}

function tooWide({ riseK, copperOz }: TraceConditions): OutOfDomain | null {
  if (riseK > 1000) return { fault: 'out of domain', field: 'riseK', value: riseK, must: 'at most 1000' }
  if (copperOz > 100)
    return { fault: 'out of domain', field: 'copperOz', value: copperOz, must: 'at most 100' }
  return null
}

/**
 * Ends of the charts behind the fit. From memory: to 35 A outside, half inside, 10 to 100 K, 0.5 to 3 oz, to 10.16
 * mm.
 */
function doubtsOf({ layer, riseK, copperOz }: TraceConditions, currentA: number, widthMm: number): string[] {
  const most = layer === 'external' ? 35 : 17.5
  return [
    currentA > most ? `current past the ${most} A of the chart` : null,
    riseK < 10 || riseK > 100 ? 'rise outside the 10 to 100 K of the chart' : null,
    copperOz < 0.5 || copperOz > 3 ? 'copper outside the 0.5 to 3 oz of the chart' : null,
    widthMm > 10.16 ? 'width past the 10.16 mm of the chart' : null,
  ].filter((doubt) => doubt !== null)
}
