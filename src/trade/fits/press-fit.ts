import { negative, notPositive, type OutOfDomain, outOfDomain } from '../tolerances/domain.ts'
import { plain } from '../tolerances/tidy.ts'
import type { Fit } from './fit.ts'

/** What the elasticity of a material comes to. */
export interface ElasticMaterial {
  readonly modulusMpa: number
  /** Poisson's ratio, 0 to below 0.5. */
  readonly poisson: number
}

/** A ring pressed on a shaft; the bore of the shaft is 0 where it is solid. */
export interface PressJoint {
  readonly jointMm: number
  readonly hubOuterMm: number
  readonly shaftBoreMm: number
  readonly lengthMm: number
  readonly hub: ElasticMaterial
  readonly shaft: ElasticMaterial
  /** Friction between the two, along and around alike. */
  readonly friction: number
}

/** What one interference does. */
export interface PressFit {
  readonly pressureMpa: number
  /** To press together, and to press apart again. */
  readonly forceN: number
  readonly torqueNm: number
  /** Pull around the bore of the hub, its largest stress. */
  readonly hubHoopMpa: number
  /** Squeeze around the inside of a hollow shaft, or throughout a solid one; below 0. */
  readonly shaftHoopMpa: number
  readonly worked: readonly string[]
}

/**
 * Pressure, force and torque of a press fit that stays elastic, 0 where nothing overlaps. Roughness that is pressed
 * flat,
 * heat and speed are left out.
 * Source: Lamé thick cylinders: p = delta / (d (Ch/Eh + Cs/Es)), Ch = (Do^2 + d^2)/(Do^2 - d^2) + nu,
 * Cs = (d^2 + di^2)/(d^2 - di^2) - nu; F = pi d L p mu, T = F d / 2 (public engineering pages).
 */
export function pressFit(joint: PressJoint, interferenceUm: number): PressFit | OutOfDomain {
  const fault = jointFault(joint) ?? notTooMuch(joint, interferenceUm)
  if (fault) return fault
  const { jointMm: d, lengthMm, friction, hub, shaft } = joint
  const ring = (joint.hubOuterMm ** 2 + d ** 2) / (joint.hubOuterMm ** 2 - d ** 2)
  const core = (d ** 2 + joint.shaftBoreMm ** 2) / (d ** 2 - joint.shaftBoreMm ** 2)
  const [hubGives, shaftGives] = [
    (ring + hub.poisson) / hub.modulusMpa,
    (core - shaft.poisson) / shaft.modulusMpa,
  ]
  const pressureMpa = Math.max(0, interferenceUm) / 1000 / (d * (hubGives + shaftGives))
  const forceN = Math.PI * d * lengthMm * pressureMpa * friction
  const pressure = `${plain(pressureMpa, 2)} MPa`
  const squeeze = joint.shaftBoreMm > 0 ? (2 * d ** 2) / (d ** 2 - joint.shaftBoreMm ** 2) : 1
  return {
    pressureMpa,
    forceN,
    torqueNm: (forceN * d) / 2000,
    hubHoopMpa: pressureMpa * ring,
    shaftHoopMpa: -pressureMpa * squeeze + 0,
    worked: [
      `hub ${plain(ring + hub.poisson, 4)} / ${hub.modulusMpa} MPa = ${hubGives.toExponential(3)} per MPa`,
      `shaft ${plain(core - shaft.poisson, 4)} / ${shaft.modulusMpa} MPa = ${shaftGives.toExponential(3)} per MPa`,
      `p = ${plain(interferenceUm / 1000, 6)} mm / (${plain(d)} mm x both) = ${pressure}`,
      `F = pi x ${plain(d)} x ${plain(lengthMm)} mm x ${pressure} x ${friction} = ${plain(forceN, 0)} N`,
    ],
  }
}

/** A press fit at both ends of its tolerances; the looser end is all 0 where it does not overlap. */
export function pressFitRange(
  fit: Fit,
  joint: PressJoint,
): { readonly least: PressFit; readonly most: PressFit } | OutOfDomain {
  const least = pressFit(joint, -fit.largestClearanceUm + 0)
  if ('fault' in least) return least
  const most = pressFit(joint, -fit.smallestClearanceUm + 0)
  return 'fault' in most ? most : { least, most }
}

function jointFault({ hub, shaft, ...joint }: PressJoint): OutOfDomain | null {
  const { jointMm, hubOuterMm, lengthMm, shaftBoreMm, friction } = joint
  const moduli = { hubModulusMpa: hub.modulusMpa, shaftModulusMpa: shaft.modulusMpa }
  return (
    notPositive({ jointMm, hubOuterMm, lengthMm, ...moduli }) ??
    negative({ shaftBoreMm, friction }) ??
    (hubOuterMm >= jointMm * 1.0001
      ? null
      : outOfDomain('hubOuterMm', hubOuterMm, `more than the ${plain(jointMm)} mm of the joint`)) ??
    (shaftBoreMm <= jointMm * 0.9999
      ? null
      : outOfDomain('shaftBoreMm', shaftBoreMm, `less than the ${plain(jointMm)} mm of the joint`)) ??
    poissonFault('hub.poisson', hub.poisson) ??
    poissonFault('shaft.poisson', shaft.poisson)
  )
}

function poissonFault(what: string, value: number): OutOfDomain | null {
  return value >= 0 && value < 0.5 ? null : outOfDomain(what, value, 'from 0 to below 0.5')
}

/** Beyond a tenth of the diameter nothing is elastic, and a number would mislead. */
function notTooMuch({ jointMm }: PressJoint, interferenceUm: number): OutOfDomain | null {
  const sane = Math.abs(interferenceUm) <= 100 * jointMm
  return sane ? null : outOfDomain('interferenceUm', interferenceUm, 'within a tenth of the diameter')
}
