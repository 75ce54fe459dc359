import { notFinite, notPositive, type OutOfDomain, outOfDomain } from './domain.ts'

/** A measured process against its limits. */
export interface Spread {
  readonly lowerMm: number
  readonly upperMm: number
  readonly meanMm: number
  readonly sigmaMm: number
}

/**
 * Cp and Cpk of a process: how many times six sigma fits between the limits, and the same as it stands off centre.
 * Source: Cp = (upper - lower)/(6 sigma), Cpk = nearer limit's distance/(3 sigma); textbook.
 */
export function processCapability(
  given: Spread,
): { readonly cp: number; readonly cpk: number } | OutOfDomain {
  const { lowerMm, upperMm, meanMm, sigmaMm } = given
  const fault = notFinite({ lowerMm, upperMm, meanMm }) ?? notPositive({ sigmaMm })
  if (fault) return fault
  if (upperMm <= lowerMm) return outOfDomain('upperMm', upperMm, `more than the lower limit ${lowerMm}`)
  return {
    cp: (upperMm - lowerMm) / (6 * sigmaMm),
    cpk: Math.min(upperMm - meanMm, meanMm - lowerMm) / (3 * sigmaMm),
  }
}

/**
 * Share of a normal spread below a value that lies `z` sigmas from the mean.
 * Method: Simpson over the density from 0 to |z|; absolute error below 1e-9 within 8 sigmas, beyond which it is 0 or 1.
 */
export function shareBelow(z: number): number {
  if (Number.isNaN(z)) return 0.5
  if (Math.abs(z) > 8) return z < 0 ? 0 : 1
  const panels = 400
  const h = Math.abs(z) / panels
  let sum = density(0) + density(Math.abs(z))
  for (let at = 1; at < panels; at++) sum += density(at * h) * (at % 2 === 1 ? 4 : 2)
  const half = (sum * h) / 3
  return z < 0 ? 0.5 - half : 0.5 + half
}

const density = (z: number): number => Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI)
