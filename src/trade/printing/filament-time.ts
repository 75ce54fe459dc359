import { firstOutside, type OutOfDomain } from './domain.ts'
import { duration, figure } from './figure.ts'
import { type Assumed, filamentTypical, orUsual, sayAssumed } from './typical.ts'

/** How fast plastic is laid. `null` takes the usual value. */
export interface FilamentFlow {
  readonly lineWidthMm: number | null
  readonly layerMm: number | null
  readonly speedMmPerSecond: number | null
  /** What the hot end can melt. */
  readonly mostMm3PerSecond: number | null
}

/** Plastic a second, and the speed that is left when the hot end sets the limit. */
export interface FlowFound {
  readonly mm3PerSecond: number
  readonly limited: boolean
  readonly speedMmPerSecond: number
  readonly assumed: readonly Assumed[]
  readonly worked: readonly string[]
}

/**
 * Plastic a second: line width x layer height x speed, at most what the hot end melts. Source: geometry of the
 * line.
 */
export function filamentFlow(flow: FilamentFlow): FlowFound | OutOfDomain {
  const outside = firstOutside(flow, {
    lineWidthMm: 'above 0',
    layerMm: 'above 0',
    speedMmPerSecond: 'above 0',
    mostMm3PerSecond: 'above 0',
  })
  if (outside) return outside
  const assumed: Assumed[] = []
  const width = orUsual(flow.lineWidthMm, 'line width', filamentTypical.lineWidth, assumed)
  const layer = orUsual(flow.layerMm, 'layer height', filamentTypical.layer, assumed)
  const speed = orUsual(flow.speedMmPerSecond, 'speed', filamentTypical.speed, assumed)
  const most = orUsual(flow.mostMm3PerSecond, 'most the hot end melts', filamentTypical.mostFlow, assumed)
  const wanted = width * layer * speed
  const limited = wanted > most
  const mm3PerSecond = Math.min(wanted, most)
  const speedLeft = limited ? most / (width * layer) : speed
  const product = `${figure(width)} mm x ${figure(layer)} mm x ${figure(speed)} mm/s = ${figure(wanted)} mm3/s`
  const limit = limited ? `, limited to ${figure(most)} mm3/s by the hot end (${figure(speedLeft)} mm/s)` : ''
  return {
    mm3PerSecond,
    limited,
    speedMmPerSecond: speedLeft,
    assumed,
    worked: [`flow = ${product}${limit}`, ...sayAssumed(assumed)],
  }
}

/** A filament print to be timed. `null` takes the usual value. */
export interface FilamentPrint {
  readonly depositedCm3: number
  readonly flowMm3PerSecond: number
  /** Share of the flow that acceleration, travel and small features leave. */
  readonly efficiency: number | null
  readonly layers: number
  readonly secondsPerLayer: number | null
  readonly heatSeconds: number
}

/**
 * Time of a filament print.
 * Source: V / (Q eta) + N t_layer + t_heat; eta and t_layer common practice, no source.
 */
export function filamentTime(
  print: FilamentPrint,
):
  | { readonly seconds: number; readonly assumed: readonly Assumed[]; readonly worked: readonly string[] }
  | OutOfDomain {
  const outside = firstOutside(print, {
    depositedCm3: 'above 0',
    flowMm3PerSecond: 'above 0',
    efficiency: 'above 0, to 1',
    layers: 'whole, 1 or more',
    secondsPerLayer: '0 or more',
    heatSeconds: '0 or more',
  })
  if (outside) return outside
  const assumed: Assumed[] = []
  const efficiency = orUsual(print.efficiency, 'share of the flow', filamentTypical.efficiency, assumed)
  const perLayer = orUsual(print.secondsPerLayer, 'change of layer', filamentTypical.perLayer, assumed)
  const laying = (print.depositedCm3 * 1000) / (print.flowMm3PerSecond * efficiency)
  const seconds = laying + print.layers * perLayer + print.heatSeconds
  const flow = `(${figure(print.flowMm3PerSecond)} mm3/s x ${figure(efficiency)})`
  return {
    seconds,
    assumed,
    worked: [
      `laying = ${figure(print.depositedCm3 * 1000)} mm3 / ${flow} = ${figure(laying)} s`,
      `time = ${figure(laying)} + ${print.layers} layers x ${figure(perLayer)} + ` +
        `${figure(print.heatSeconds)} heating = ${figure(seconds)} s (${duration(seconds)})`,
      ...sayAssumed(assumed),
    ],
  }
}
