import { notFinite, notPositive, type OutOfDomain } from '../tolerances/domain.ts'
import { plain } from '../tolerances/tidy.ts'

/** What warming changes in a fit; expansions per kelvin. */
export interface WarmedFit {
  readonly jointMm: number
  readonly interferenceUm: number
  readonly hubExpansionPerK: number
  readonly shaftExpansionPerK: number
}

/**
 * Change of temperature of both parts together that takes all interference away: above 0 heating, below 0 cooling;
 * `null` where both expand alike or there is no interference to lose.
 * Source: first-order expansion: interference = delta - (alpha hub - alpha shaft) d dT.
 */
export function freeingTemperatureK(
  given: WarmedFit,
): { readonly changeK: number; readonly worked: string } | OutOfDomain | null {
  const { jointMm, interferenceUm, hubExpansionPerK, shaftExpansionPerK } = given
  const fault =
    notPositive({ jointMm }) ?? notFinite({ interferenceUm, hubExpansionPerK, shaftExpansionPerK })
  if (fault) return fault
  const differencePerK = hubExpansionPerK - shaftExpansionPerK
  if (interferenceUm <= 0 || Math.abs(differencePerK) < 1e-9) return null
  const difference = `(${hubExpansionPerK} - ${shaftExpansionPerK})`
  const changeK = interferenceUm / 1000 / (differencePerK * jointMm)
  return {
    changeK,
    worked: `dT = ${plain(interferenceUm)} um / (${difference} / K x ${plain(jointMm)} mm) = ${plain(changeK, 0)} K`,
  }
}

/**
 * How much hotter the hub must be than the shaft to slide on with some play.
 * Source: first-order expansion: dT = (delta + play) / (alpha d).
 */
export function slideOnTemperatureK(given: {
  readonly jointMm: number
  readonly interferenceUm: number
  readonly playUm: number
  readonly hubExpansionPerK: number
}): { readonly hotterK: number; readonly worked: string } | OutOfDomain {
  const { jointMm, interferenceUm, playUm, hubExpansionPerK } = given
  const fault = notPositive({ jointMm, hubExpansionPerK }) ?? notFinite({ interferenceUm, playUm })
  if (fault) return fault
  const gap = `(${plain(interferenceUm)} + ${plain(playUm)})`
  const hotterK = Math.max(0, interferenceUm + playUm) / 1000 / (hubExpansionPerK * jointMm)
  return {
    hotterK,
    worked: `dT = ${gap} um / (${hubExpansionPerK} / K x ${plain(jointMm)} mm) = ${plain(hotterK, 0)} K`,
  }
}
