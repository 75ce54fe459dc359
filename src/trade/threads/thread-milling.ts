import { notPositive, type OutOfDomain, outOfDomain } from '../tolerances/domain.ts'
import { plain } from '../tolerances/tidy.ts'
import type { ThreadGender } from './thread.ts'

/** A thread cut by a mill that runs along a helix. */
export interface ThreadMilling {
  readonly gender: ThreadGender
  /** Major diameter of an internal thread; of an external one the diameter cut. */
  readonly diameterMm: number
  readonly cutterMm: number
}

/**
 * Feed at the centre of the cutter for a feed at its edge, in whatever unit the edge feed has.
 * Source: a tool maker's threading handbook: v_f = v_fe (D - d)/D inside, v_fe (D + d)/D outside.
 */
export function centreFeed(
  { gender, diameterMm, cutterMm }: ThreadMilling,
  edgeFeed: number,
): number | OutOfDomain {
  const fault = notPositive({ diameterMm, cutterMm, edgeFeed }) ?? tooWide({ gender, diameterMm, cutterMm })
  if (fault) return fault
  return (edgeFeed * (diameterMm + (gender === 'internal' ? -cutterMm : cutterMm))) / diameterMm
}

function tooWide({ gender, diameterMm, cutterMm }: ThreadMilling): OutOfDomain | null {
  const fits = gender === 'external' || cutterMm < diameterMm
  return fits
    ? null
    : outOfDomain('cutterMm', cutterMm, `less than the ${plain(diameterMm)} mm of the thread`)
}

/** One thread milled with a cutter of a single profile. */
export interface ThreadMillingJob extends ThreadMilling {
  readonly pitchMm: number
  readonly lengthMm: number
  readonly teeth: number
  readonly cuttingMPerMin: number
  readonly feedPerToothMm: number
  readonly passes: number
  /** Lead-in and lead-out of each pass. */
  readonly linkSecondsPerPass: number
  readonly spindleMaxRpm: number | null
}

/** Speed, feeds and time of a milled thread. */
export interface ThreadMillingTime {
  readonly rpm: number
  readonly edgeFeedMmPerMin: number
  readonly feedMmPerMin: number
  readonly turns: number
  readonly turnMm: number
  readonly seconds: number
  readonly worked: readonly string[]
}

/**
 * Time to mill a thread turn by turn with a single-profile cutter, one turn more for running in and out.
 * Source: helix length sqrt((pi (D -/+ d))^2 + P^2), turns L/P + 1, time passes x (turns x s / v_f + link): geometry.
 */
export function threadMillingTime(job: ThreadMillingJob): ThreadMillingTime | OutOfDomain {
  const { gender, linkSecondsPerPass, spindleMaxRpm, ...sizes } = job
  const fault =
    notPositive({ ...sizes, ...(spindleMaxRpm === null ? {} : { spindleMaxRpm }) }) ??
    (linkSecondsPerPass >= 0 && linkSecondsPerPass < 1e9
      ? null
      : outOfDomain('linkSecondsPerPass', linkSecondsPerPass, '0 or more'))
  if (fault) return fault
  const wanted = (1000 * job.cuttingMPerMin) / (Math.PI * job.cutterMm)
  const rpm = Math.min(wanted, spindleMaxRpm ?? wanted)
  const edgeFeedMmPerMin = rpm * job.teeth * job.feedPerToothMm
  const feedMmPerMin = centreFeed(job, edgeFeedMmPerMin)
  if (typeof feedMmPerMin !== 'number') return feedMmPerMin
  const circleMm = Math.PI * (job.diameterMm + (gender === 'internal' ? -job.cutterMm : job.cutterMm))
  const turnMm = Math.hypot(circleMm, job.pitchMm)
  const turns = job.lengthMm / job.pitchMm + 1
  const seconds = job.passes * ((60 * turns * turnMm) / feedMmPerMin + linkSecondsPerPass)
  const [sign, centre] = [gender === 'internal' ? '-' : '+', `${plain(feedMmPerMin, 2)} mm/min`]
  const path = `${plain(turns, 2)} turns x ${plain(turnMm)} mm`
  const limited = rpm < wanted ? `, limited to ${plain(rpm, 0)} rpm by the spindle` : ''
  return {
    ...{ rpm, edgeFeedMmPerMin, feedMmPerMin, turns, turnMm, seconds },
    worked: [
      `n = 1000 x ${job.cuttingMPerMin} m/min / (pi x ${job.cutterMm} mm) = ${plain(wanted, 0)} rpm${limited}`,
      `edge feed = ${plain(rpm, 0)} x ${job.teeth} x ${job.feedPerToothMm} mm = ${plain(edgeFeedMmPerMin, 1)} mm/min`,
      `centre feed = edge feed x (${job.diameterMm} ${sign} ${job.cutterMm}) / ${job.diameterMm} = ${centre}`,
      `${job.passes} x (${path} / ${centre} + ${linkSecondsPerPass} s) = ${plain(seconds, 1)} s`,
    ],
  }
}

/**
 * Radial engagement the cutter feels going from one diameter to another; below 0 where nothing is cut.
 * Source: a tool maker's threading handbook: (Dm^2 - Dw^2)/(4 (Dm - d)) inside, (Dw^2 - Dm^2)/(4 (Dm + d)) outside.
 */
export function threadMillEngagementMm(
  { gender, diameterMm, cutterMm }: ThreadMilling,
  beforeMm: number,
): number | OutOfDomain {
  const fault = notPositive({ diameterMm, cutterMm, beforeMm }) ?? tooWide({ gender, diameterMm, cutterMm })
  if (fault) return fault
  return gender === 'internal'
    ? (diameterMm ** 2 - beforeMm ** 2) / (4 * (diameterMm - cutterMm))
    : (beforeMm ** 2 - diameterMm ** 2) / (4 * (diameterMm + cutterMm))
}
