import { firstOutside, type OutOfDomain } from './domain.ts'
import { duration, figure } from './figure.ts'
import { layersOf } from './vat-time.ts'

/** A print in a vat whose layers a point of light fills line by line. */
export interface ScannedPrint {
  readonly heightMm: number
  readonly layerMm: number
  /** All parts of the plate with their supports. */
  readonly volumeCm3: number
  readonly scanMmPerSecond: number
  /** Distance from line to line. */
  readonly hatchMm: number
  readonly movingSecondsPerLayer: number
}

/**
 * Time of a vat print filled line by line: unlike the masked kind it grows with the volume on the plate.
 * Source: area / (scan speed x hatch) a layer (from memory); the areas of all layers together are volume / layer
 * height.
 * Outlines and jumps are left out.
 */
export function scannedTime(
  print: ScannedPrint,
): { readonly layers: number; readonly seconds: number; readonly worked: readonly string[] } | OutOfDomain {
  const outside = firstOutside(print, {
    heightMm: 'above 0',
    layerMm: 'above 0',
    volumeCm3: 'above 0',
    scanMmPerSecond: 'above 0',
    hatchMm: 'above 0',
    movingSecondsPerLayer: '0 or more',
  })
  if (outside) return outside
  const { heightMm, layerMm, volumeCm3, scanMmPerSecond, hatchMm, movingSecondsPerLayer } = print
  const layers = layersOf(heightMm, layerMm)
  const scanning = (volumeCm3 * 1000) / layerMm / (scanMmPerSecond * hatchMm)
  const seconds = scanning + layers * movingSecondsPerLayer
  return {
    layers,
    seconds,
    worked: [
      `layers = ${figure(heightMm)} mm / ${figure(layerMm)} mm, rounded up = ${layers}`,
      `scanning = ${figure(volumeCm3 * 1000)} mm3 / ${figure(layerMm)} mm / (${figure(scanMmPerSecond)} mm/s x ` +
        `${figure(hatchMm)} mm) = ${figure(scanning)} s (from memory)`,
      `time = ${figure(scanning)} s + ${layers} x ${figure(movingSecondsPerLayer)} s = ${figure(seconds)} s ` +
        `(${duration(seconds)})`,
    ],
  }
}
