import { plain, signed, tidyMm } from '../tolerances/tidy.ts'
import { basicProfile } from './basic-profile.ts'
import type { ThreadLimits } from './limits-of-size.ts'
import { crestTolerance, pitchTolerance, positionOffset, type TableFigure } from './metric-tolerances.ts'
import type { MetricThreadClass, Thread } from './thread.ts'

type Limits = Pick<ThreadLimits, 'major' | 'pitch' | 'minor' | 'from' | 'worked'>

interface Figures {
  readonly d2Mm: number
  readonly d1Mm: number
  readonly pitchOffset: TableFigure
  readonly crestOffset: TableFigure
  readonly pitchWidth: TableFigure
  readonly crestWidth: TableFigure
}

/**
 * Limits of a metric thread in one class, in millimetres to 0.001; `null` below 1 mm and above 355 mm.
 * Source: ISO 965-1; basic diameters rounded to 0.001 as in ISO 724; the largest screw root d1 + es is from memory.
 */
export function metricLimits(thread: Thread, chosen: MetricThreadClass): Limits | null {
  const { majorMm, pitchMm } = thread
  const basic = basicProfile(thread)
  const pitchWidth = pitchTolerance({ gender: chosen.gender, grade: chosen.pitch.grade }, majorMm, pitchMm)
  if (pitchWidth === null) return null
  const figures: Figures = {
    d2Mm: micrometre(basic.pitchDiameterMm),
    d1Mm: micrometre(basic.minorDiameterMm),
    pitchOffset: positionOffset(chosen.pitch.position, pitchMm),
    crestOffset: positionOffset(chosen.crest.position, pitchMm),
    pitchWidth,
    crestWidth: crestTolerance(chosen.gender, chosen.crest.grade, pitchMm),
  }
  const sizes = chosen.gender === 'internal' ? nut(majorMm, figures) : screw(majorMm, figures)
  const { pitchOffset, crestOffset, crestWidth } = figures
  const byFormula = [pitchOffset, crestOffset, pitchWidth, crestWidth].some(({ from }) => from === 'formula')
  return { ...sizes, from: byFormula ? 'formula' : 'table', worked: worked(thread, chosen, figures) }
}

function nut(majorMm: number, figures: Figures): Pick<Limits, 'major' | 'pitch' | 'minor'> {
  const { d2Mm, d1Mm, pitchOffset, crestOffset, pitchWidth, crestWidth } = figures
  return {
    major: { minMm: above(majorMm, pitchOffset.um), maxMm: null },
    pitch: { minMm: above(d2Mm, pitchOffset.um), maxMm: above(d2Mm, pitchOffset.um + pitchWidth.um) },
    minor: { minMm: above(d1Mm, crestOffset.um), maxMm: above(d1Mm, crestOffset.um + crestWidth.um) },
  }
}

function screw(majorMm: number, figures: Figures): Pick<Limits, 'major' | 'pitch' | 'minor'> {
  const { d2Mm, d1Mm, pitchOffset, crestOffset, pitchWidth, crestWidth } = figures
  return {
    major: { minMm: above(majorMm, -crestOffset.um - crestWidth.um), maxMm: above(majorMm, -crestOffset.um) },
    pitch: { minMm: above(d2Mm, -pitchOffset.um - pitchWidth.um), maxMm: above(d2Mm, -pitchOffset.um) },
    minor: { minMm: null, maxMm: above(d1Mm, -pitchOffset.um) },
  }
}

function worked({ majorMm, pitchMm }: Thread, chosen: MetricThreadClass, figures: Figures): string[] {
  const { d2Mm, d1Mm, pitchOffset, crestOffset, pitchWidth, crestWidth } = figures
  const inside = chosen.gender === 'internal'
  const way = inside ? 1 : -1
  const [d2, crest] = inside ? ['D2', 'D1'] : ['d2', 'd']
  const crestBasic = inside ? d1Mm : majorMm
  return [
    `${d2} = ${majorMm} - 0.649519 x ${pitchMm} = ${plain(d2Mm)} mm`,
    `D1 = ${majorMm} - 1.082532 x ${pitchMm} = ${plain(d1Mm)} mm`,
    say(d2, d2Mm, way * pitchOffset.um, pitchWidth),
    say(crest, crestBasic, way * crestOffset.um, crestWidth),
  ]
}

const say = (name: string, basicMm: number, offsetUm: number, { um, from }: TableFigure): string =>
  `${name}: ${plain(basicMm)} ${signed(offsetUm)} um, tolerance ${um} um (${from})`

const micrometre = (mm: number): number => Math.round(mm * 1000) / 1000

const above = (mm: number, um: number): number => tidyMm(mm + um / 1000)
