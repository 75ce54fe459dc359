import { notPositive, type OutOfDomain } from '../tolerances/domain.ts'
import { plain } from '../tolerances/tidy.ts'
import type { Thread } from './thread.ts'

type Form = Pick<Thread, 'majorMm' | 'pitchMm' | 'system'>

/**
 * Tensile stress area of a screw. Needs: a thread as read.
 * Source: ISO 898-1: pi/4 (d - 0.9382 P)^2; unified ASME B1.1: pi/4 (D - 0.9743 p)^2.
 */
export function stressAreaMm2({ majorMm, pitchMm, system }: Form): number {
  return (Math.PI / 4) * (majorMm - (system === 'metric' ? 0.938194 : 0.9743) * pitchMm) ** 2
}

/** A property class of screws and the stress it bears without lasting stretch. */
export interface PropertyClass {
  readonly name: string
  readonly proofMpa: number
  readonly source: string
}

/** Proof stresses. Source: ISO 898-1 and ISO 3506-1; 8.8 read in a public page, the rest from memory. */
export const propertyClasses: readonly PropertyClass[] = [
  { name: '8.8', proofMpa: 580, source: 'ISO 898-1, d up to 16 mm, public page' },
  { name: '10.9', proofMpa: 830, source: 'ISO 898-1, from memory' },
  { name: '12.9', proofMpa: 970, source: 'ISO 898-1, from memory' },
  { name: 'A2-70', proofMpa: 450, source: 'ISO 3506-1, 0.2 % proof, from memory' },
  { name: 'A2-50', proofMpa: 210, source: 'ISO 3506-1, 0.2 % proof, from memory' },
]

/** Nut factors. Source: three public engineering pages. */
export const nutFactors = { plain: 0.2, oiled: 0.15, waxed: 0.12, rusty: 0.3 } as const

/** What tightening a screw asks: stress area, proof stress, share of it to use, and the nut factor. */
export interface Tightening {
  readonly majorMm: number
  readonly stressAreaMm2: number
  readonly proofMpa: number
  /** 0.7 to 0.75 for joints to be undone. */
  readonly shareOfProof: number
  readonly nutFactor: number
}

/**
 * Clamp force and torque to tighten to. Torque tells the force badly: 25 to 35 % either way (from memory), and
 * screws in
 * aluminium, brass or plastic strip first.
 * Source: T = K d F, F = x As Sp (public engineering pages).
 */
export function tighteningTorque(
  given: Tightening,
): { readonly forceN: number; readonly torqueNm: number; readonly worked: readonly string[] } | OutOfDomain {
  const fault = notPositive({ ...given })
  if (fault) return fault
  const { majorMm, stressAreaMm2: area, proofMpa, shareOfProof, nutFactor } = given
  const forceN = shareOfProof * area * proofMpa
  const torqueNm = (nutFactor * majorMm * forceN) / 1000
  return {
    forceN,
    torqueNm,
    worked: [
      `F = ${shareOfProof} x ${plain(area, 2)} mm2 x ${proofMpa} MPa = ${plain(forceN, 0)} N`,
      `T = ${nutFactor} x ${plain(majorMm)} mm x ${plain(forceN, 0)} N = ${plain(torqueNm, 2)} N m`,
    ],
  }
}
