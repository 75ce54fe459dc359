import { notPositive, type OutOfDomain } from '../tolerances/domain.ts'
import { plain } from '../tolerances/tidy.ts'
import { basicProfile } from './basic-profile.ts'
import type { ThreadLimits } from './limits-of-size.ts'
import { stressAreaMm2 } from './screw-strength.ts'
import type { Thread } from './thread.ts'

/** Diameters on which the sheared area rests; the limits of size give the least area, basic sizes a round figure. */
export interface ShearDiameters {
  /** Smallest major diameter of the screw. */
  readonly screwMajorMm: number
  /** Smallest pitch diameter of the screw. */
  readonly screwPitchMm: number
  /** Largest pitch diameter of the hole. */
  readonly holePitchMm: number
  /** Largest minor diameter of the hole. */
  readonly holeMinorMm: number
}

/**
 * Diameters for the least area that limits of size allow; `null` where a limit is open or the two are not screw and
 * hole.
 */
export function shearDiameters(screw: ThreadLimits, hole: ThreadLimits): ShearDiameters | null {
  const [screwMajorMm, screwPitchMm] = [screw.major.minMm, screw.pitch.minMm]
  const [holePitchMm, holeMinorMm] = [hole.pitch.maxMm, hole.minor.maxMm]
  if (screw.gender !== 'external' || hole.gender !== 'internal') return null
  if (screwMajorMm === null || screwPitchMm === null || holePitchMm === null || holeMinorMm === null)
    return null
  return { screwMajorMm, screwPitchMm, holePitchMm, holeMinorMm }
}

/** A screw in a tapped hole: lengths in full threads, strengths in tension. */
export interface ScrewedJoint {
  readonly thread: Thread
  /** `null`: basic sizes. */
  readonly diameters: ShearDiameters | null
  readonly engagementMm: number
  readonly screwStrengthMpa: number
  readonly holeStrengthMpa: number
  /** Shear strength as a share of tensile strength, usually 0.6 for ductile metals. */
  readonly shearShare: number
}

/** Loads at which a screwed joint gives way, and where first. */
export interface StripStrength {
  readonly holeStripsN: number
  readonly screwStripsN: number
  readonly screwBreaksN: number
  readonly first: 'hole strips' | 'screw strips' | 'screw breaks'
  /** Full threads from which on the screw breaks before the hole strips. */
  readonly enoughEngagementMm: number
  readonly worked: readonly string[]
}

/**
 * What lets go first when a screw in a tapped hole is pulled. Countersinks, first turns, inserts and thin walls are
 * left out.
 * Source: shear areas of FED-STD-H28 (formulas read in public reprints): hole pi n Le d (1/(2n) + 0.57735 (d - D2)),
 * screw
 * pi n Le D1 (1/(2n) + 0.57735 (d2 - D1)), n = 1/P.
 */
export function stripStrength(joint: ScrewedJoint): StripStrength | OutOfDomain {
  const { thread, engagementMm, screwStrengthMpa, holeStrengthMpa, shearShare } = joint
  const fault = notPositive({ engagementMm, screwStrengthMpa, holeStrengthMpa, shearShare })
  if (fault) return fault
  const sizes = joint.diameters ?? basicDiameters(thread)
  const wrong = notPositive({ ...sizes })
  if (wrong) return wrong
  const holePerMm = perMm(thread.pitchMm, sizes.screwMajorMm, sizes.screwMajorMm - sizes.holePitchMm)
  const screwPerMm = perMm(thread.pitchMm, sizes.holeMinorMm, sizes.screwPitchMm - sizes.holeMinorMm)
  const notOverlapping = notPositive({ holePerMm, screwPerMm })
  if (notOverlapping) return notOverlapping
  const holeStripsN = holePerMm * engagementMm * shearShare * holeStrengthMpa
  const screwStripsN = screwPerMm * engagementMm * shearShare * screwStrengthMpa
  const area = stressAreaMm2(thread)
  const screwBreaksN = area * screwStrengthMpa
  return {
    holeStripsN,
    screwStripsN,
    screwBreaksN,
    first: firstToGo(holeStripsN, screwStripsN, screwBreaksN),
    enoughEngagementMm: (engagementMm * screwBreaksN) / holeStripsN,
    worked: [
      sayStrip('hole', holePerMm, joint, holeStrengthMpa),
      sayStrip('screw', screwPerMm, joint, screwStrengthMpa),
      `screw breaks at ${plain(area, 2)} mm2 x ${screwStrengthMpa} MPa = ${plain(screwBreaksN, 0)} N`,
    ],
  }
}

function sayStrip(
  what: string,
  areaPerMm: number,
  { engagementMm, shearShare }: ScrewedJoint,
  strengthMpa: number,
): string {
  const force = areaPerMm * engagementMm * shearShare * strengthMpa
  const area = `${plain(areaPerMm, 2)} mm2/mm x ${plain(engagementMm)} mm`
  return `${what} strips at ${area} x ${shearShare} x ${strengthMpa} MPa = ${plain(force, 0)} N`
}

/** Area sheared in each millimetre of engagement on a cylinder of this diameter. */
const perMm = (pitchMm: number, diameterMm: number, overlapMm: number): number =>
  ((Math.PI * diameterMm) / pitchMm) * (pitchMm / 2 + overlapMm / Math.sqrt(3))

function basicDiameters(thread: Thread): ShearDiameters {
  const { pitchDiameterMm, minorDiameterMm } = basicProfile(thread)
  return {
    screwMajorMm: thread.majorMm,
    screwPitchMm: pitchDiameterMm,
    holePitchMm: pitchDiameterMm,
    holeMinorMm: minorDiameterMm,
  }
}

function firstToGo(hole: number, screw: number, breaks: number): StripStrength['first'] {
  if (breaks <= hole && breaks <= screw) return 'screw breaks'
  return hole <= screw ? 'hole strips' : 'screw strips'
}
