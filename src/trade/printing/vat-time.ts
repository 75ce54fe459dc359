import { firstOutside, type OutOfDomain, wholeUp } from './domain.ts'
import { duration, figure } from './figure.ts'
import { type Assumed, orUsual, sayAssumed, vatTypical } from './typical.ts'

/** A print in a vat whose layers are exposed whole. `null` takes the usual value. */
export interface VatPrint {
  /** Along the build axis, after tilting, raft and supports included. */
  readonly heightMm: number
  readonly layerMm: number | null
  readonly exposureSeconds: number
  readonly bottomLayers: number | null
  readonly bottomSeconds: number | null
  /** Lift, retract and rest of one layer. */
  readonly movingSecondsPerLayer: number | null
}

/** Time on the machine, with the sum. */
export interface VatTime {
  readonly layers: number
  readonly bottomLayers: number
  readonly seconds: number
  readonly assumed: readonly Assumed[]
  readonly worked: readonly string[]
}

/**
 * Time of a vat print whose layers are exposed whole: it hangs on the height alone, not on how many parts lie on the
 * plate.
 * Source: a public worked example of masked vat time: N_b t_b + (N - N_b) t_e + N (lift + retract + rest).
 */
export function vatTime(print: VatPrint): VatTime | OutOfDomain {
  const outside = firstOutside(print, {
    heightMm: 'above 0',
    layerMm: 'above 0',
    exposureSeconds: '0 or more',
    bottomLayers: 'whole, 0 or more',
    bottomSeconds: '0 or more',
    movingSecondsPerLayer: '0 or more',
  })
  if (outside) return outside
  const assumed: Assumed[] = []
  const layerMm = orUsual(print.layerMm, 'layer height', vatTypical.layer, assumed)
  const layers = layersOf(print.heightMm, layerMm)
  const wantedBottom = orUsual(print.bottomLayers, 'bottom layers', vatTypical.bottomLayers, assumed)
  const bottomLayers = Math.min(wantedBottom, layers)
  const bottomSeconds =
    print.bottomSeconds ??
    print.exposureSeconds * orUsual(null, 'bottom exposure', vatTypical.bottomExposures, assumed)
  const moving = orUsual(print.movingSecondsPerLayer, 'lift, retract and rest', vatTypical.moving, assumed)
  const seconds =
    bottomLayers * bottomSeconds + (layers - bottomLayers) * print.exposureSeconds + layers * moving
  return {
    layers,
    bottomLayers,
    seconds,
    assumed,
    worked: [
      `layers = ${figure(print.heightMm)} mm / ${figure(layerMm)} mm, rounded up = ${layers}`,
      `time = ${bottomLayers} bottom x ${figure(bottomSeconds)} s + ${layers - bottomLayers} x ` +
        `${figure(print.exposureSeconds)} s + ${layers} x ${figure(moving)} s moving = ${figure(seconds)} s ` +
        `(${duration(seconds)})`,
      ...sayAssumed(assumed),
    ],
  }
}

/** Layers of a height: whole layers, the last one begun counts. Needs: both above zero. */
export function layersOf(heightMm: number, layerMm: number): number {
  return Math.max(1, wholeUp(heightMm / layerMm))
}

/** What a vat machine moves between two layers. */
export interface VatMoves {
  readonly liftMm: number
  readonly liftMmPerSecond: number
  readonly retractMmPerSecond: number
  readonly restSeconds: number
}

/** Seconds of lift, retract and rest for one layer. Source: as `vatTime`; acceleration is left out. */
export function vatMoving(
  moves: VatMoves,
): { readonly secondsPerLayer: number; readonly worked: readonly string[] } | OutOfDomain {
  const outside = firstOutside(moves, {
    liftMm: '0 or more',
    liftMmPerSecond: 'above 0',
    retractMmPerSecond: 'above 0',
    restSeconds: '0 or more',
  })
  if (outside) return outside
  const { liftMm, liftMmPerSecond, retractMmPerSecond, restSeconds } = moves
  const secondsPerLayer = liftMm / liftMmPerSecond + liftMm / retractMmPerSecond + restSeconds
  const lift = `${figure(liftMm)} / ${figure(liftMmPerSecond)}`
  const retract = `${figure(liftMm)} / ${figure(retractMmPerSecond)}`
  const sum = `${lift} + ${retract} + ${figure(restSeconds)} = ${figure(secondsPerLayer)} s per layer`
  return { secondsPerLayer, worked: [`moving = lift ${sum}`] }
}
