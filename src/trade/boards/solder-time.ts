import { firstOutside, type OutOfDomain, wholeUp } from '../printing/domain.ts'
import { figure } from '../printing/figure.ts'
import { type PackageRead, readPackage, type SolderClass } from './read-package.ts'

/** Low, likely and high. */
export type Three = readonly [low: number, likely: number, high: number]

/** Seconds by hand for a class of package: per part and per joint, and where they come from. */
export interface HandTime {
  readonly perPart: Three
  readonly perJoint: Three
  readonly source: string
}

const practice = 'common practice, no source'
const none: Three = [0, 0, 0]

/** At the pace of a prototype, placing or inserting and trimming included. */
const prototypeTimes: Readonly<Record<Exclude<SolderClass, 'balls'>, HandTime>> = {
  chip: {
    perPart: [30, 45, 60],
    perJoint: none,
    source: 'public forum figure: 45 s placing a part; range: practice',
  },
  'small leads': { perPart: [20, 30, 45], perJoint: [5, 8, 12], source: practice },
  'wide leads': { perPart: [30, 45, 60], perJoint: [3, 5, 8], source: practice },
  'fine leads': { perPart: [120, 210, 300], perJoint: none, source: practice },
  'no leads': { perPart: [120, 210, 300], perJoint: none, source: practice },
  'through hole': { perPart: none, perJoint: [10, 15, 20], source: practice },
}

const joint: Three = [1, 2, 3]
const training = 'joint 1 to 3 s: a soldering school; handling: common practice, no source'

/** At the pace of trained hands in series work. */
const seriesTimes: Readonly<Record<Exclude<SolderClass, 'balls'>, HandTime>> = {
  chip: { perPart: [6, 6, 6], perJoint: none, source: 'public forum figure: 6 s with handling' },
  'small leads': { perPart: [3, 5, 8], perJoint: joint, source: training },
  'wide leads': { perPart: [3, 5, 8], perJoint: joint, source: training },
  'fine leads': { perPart: [60, 90, 120], perJoint: none, source: practice },
  'no leads': { perPart: [60, 90, 120], perJoint: none, source: practice },
  'through hole': { perPart: [3, 5, 8], perJoint: joint, source: training },
}

/** Paste through a stencil and heat: seconds. Source: common practice, no source. */
const stencil: Three = [300, 450, 600]
const placing: Three = [5, 8, 15]
const reflow: Three = [360, 480, 600]
/** Share of the solder time for looking and touching up. Common practice, no source. */
const inspection: Three = [0.1, 0.2, 0.3]

/** Parts of one package on a board. */
export interface PackageCount {
  readonly package: string
  readonly count: number
}

/** How a number of boards is soldered. */
export interface SolderJob {
  readonly boards: number
  readonly pace: 'prototype' | 'series'
  /** All by hand, or parts on the surface by paste and heat and the rest by hand. */
  readonly method: 'hand' | 'paste'
  /** Boards heated at once; counts for paste alone. */
  readonly boardsPerHeat: number
}

/** A line of the sum, for all boards together. */
export interface SolderLine {
  readonly what: string
  /** Hands are needed; heating needs somebody near. */
  readonly attention: 'hands' | 'nearby'
  readonly seconds: Three
  readonly source: string
  readonly worked: string
}

/** Time of soldering, the joints of a board, and packages that are not known or need heat. */
export interface SolderTime {
  readonly seconds: Three
  readonly jointsPerBoard: number
  readonly lines: readonly SolderLine[]
  /** Names that tell no joints: their time is missing. */
  readonly unknown: readonly string[]
  /** Packages that no iron reaches. */
  readonly needHeat: readonly string[]
  readonly worked: readonly string[]
}

/** Time of soldering boards by the packages on them, in three values. Source: beside each line. */
export function solderTime(parts: readonly PackageCount[], job: SolderJob): SolderTime | OutOfDomain {
  const outside =
    firstOutside(job, { boards: 'whole, 1 or more', boardsPerHeat: 'whole, 1 or more' }) ??
    parts.map((part) => firstOutside(part, { count: 'whole, 0 or more' })).find((fault) => fault !== null)
  if (outside) return outside
  const read = parts.map((part) => ({ ...part, read: readPackage(part.package) }))
  const known = read.flatMap(({ count, read: found }) => (found && count > 0 ? [{ ...found, count }] : []))
  const byHeat = job.method === 'paste' ? known.filter(({ solder }) => solder !== 'through hole') : []
  const byHand = known.filter((part) => !byHeat.includes(part) && part.solder !== 'balls')
  const work = [...handLines(byHand, job), ...heatLines(byHeat, job)]
  const lines = work.length === 0 ? [] : [...work, inspectionLine(work)]
  const seconds = sumOf(lines)
  return {
    seconds,
    jointsPerBoard: known.reduce((sum, { joints, count }) => sum + joints * count, 0),
    lines,
    unknown: read.filter(({ read: found, count }) => !found && count > 0).map((part) => part.package),
    needHeat: read
      .filter(({ read: found, count }) => job.method === 'hand' && count > 0 && found?.solder === 'balls')
      .map((part) => part.package),
    worked: [...lines.map(({ worked }) => worked), `together ${minutes(seconds)}`],
  }
}

type Counted = PackageRead & { readonly count: number }

function handLines(parts: readonly Counted[], { boards, pace }: SolderJob): SolderLine[] {
  const times = pace === 'series' ? seriesTimes : prototypeTimes
  return [...new Set(parts.map(({ solder }) => solder))].flatMap((solder) => {
    if (solder === 'balls') return []
    const members = parts.filter((part) => part.solder === solder)
    const count = members.reduce((sum, part) => sum + part.count, 0)
    const joints = members.reduce((sum, part) => sum + part.joints * part.count, 0)
    const { perPart, perJoint, source } = times[solder]
    const seconds = each((i) => boards * (count * perPart[i]! + joints * perJoint[i]!))
    const sum = `${boards} x (${count} parts x ${perPart[1]} s + ${joints} joints x ${perJoint[1]} s)`
    const worked = `${solder} by hand = ${sum}: ${minutes(seconds)} (${source})`
    return [{ what: `${solder} by hand`, attention: 'hands' as const, seconds, source, worked }]
  })
}

function heatLines(parts: readonly Counted[], { boards, boardsPerHeat }: SolderJob): SolderLine[] {
  const count = parts.reduce((sum, part) => sum + part.count, 0)
  if (count === 0) return []
  const heats = wholeUp(boards / boardsPerHeat)
  const line = (what: string, attention: 'hands' | 'nearby', n: number, time: Three): SolderLine => {
    const seconds = each((i) => n * time[i]!)
    const worked = `${what} = ${n} x ${time[1]} s: ${minutes(seconds)} (${practice})`
    return { what, attention, seconds, source: practice, worked }
  }
  return [
    line('stencil, paste, align', 'hands', boards, stencil),
    line('place parts', 'hands', boards * count, placing),
    line('heat', 'nearby', heats, reflow),
  ]
}

function inspectionLine(lines: readonly SolderLine[]): SolderLine {
  const hands = sumOf(lines.filter(({ attention }) => attention === 'hands'))
  const seconds = each((i) => hands[i]! * inspection[i]!)
  const worked = `look and touch up = 10 to 30 % of ${minutes(hands)}: ${minutes(seconds)} (${practice})`
  return { what: 'look and touch up', attention: 'hands', seconds, source: practice, worked }
}

function each(value: (i: 0 | 1 | 2) => number): Three {
  return [value(0), value(1), value(2)]
}

function sumOf(lines: readonly SolderLine[]): Three {
  return each((i) => lines.reduce((sum, { seconds }) => sum + seconds[i], 0))
}

function minutes(seconds: Three): string {
  return `${seconds.map((value) => figure(Math.round(value / 6) / 10)).join('..')} min`
}
