import { figure } from './notebook.ts'

/** Three lengths along the axes of a machine. */
export interface Axes {
  readonly xMm: number
  readonly yMm: number
  readonly zMm: number
}

/** A set-up as it stands on the table. */
export interface TravelQuestion {
  readonly stockMm: Axes
  /** What holds it: how far the cutter must pass over it sideways, and how high the stock sits on it. */
  readonly holdMm: Axes
  readonly cutterDiameterMm: number
  /** From the spindle nose to the tip, holder and all. */
  readonly cutterLengthMm: number
  readonly clearanceMm: number
  readonly travelMm: Axes
  /** From the table to the spindle nose at the top; the travel in Z when silent, which is on the safe side. */
  readonly daylightMm?: number | null
}

/** What one axis must run, what it has, and by how much it falls short (0 where it does not). */
export interface AxisRoom {
  readonly needsMm: number
  readonly hasMm: number
  readonly shortMm: number
}

/** Room of a set-up on the three axes. */
export interface TravelRoom {
  readonly x: AxisRoom
  readonly y: AxisRoom
  readonly z: AxisRoom
  readonly fits: boolean
  readonly worked: readonly string[]
}

/** Why room cannot be worked out. */
export interface TravelFault {
  readonly fault: 'out of domain'
  readonly what: string
}

/**
 * Whether a set-up fits between the ends of a machine's travels, and by how much it fails on each axis.
 * X and Y: the cutter runs off the stock on both sides; Z: hold, stock, clearance and cutter stand on one another.
 * Source: geometry, with the cutter beside the work on both sides as common practice, no source.
 */
export function travelShortfall(question: TravelQuestion): TravelRoom | TravelFault {
  const { stockMm, holdMm, cutterDiameterMm, cutterLengthMm, clearanceMm, travelMm, daylightMm } = question
  const bad = outOfDomain(question)
  if (bad !== null) return { fault: 'out of domain', what: bad }
  const beside = cutterDiameterMm + 2 * clearanceMm
  const x = room(stockMm.xMm + holdMm.xMm + beside, travelMm.xMm)
  const y = room(stockMm.yMm + holdMm.yMm + beside, travelMm.yMm)
  const z = room(holdMm.zMm + stockMm.zMm + clearanceMm + cutterLengthMm, daylightMm ?? travelMm.zMm)
  const sides = `${figure(cutterDiameterMm)} cutter + 2 x ${figure(clearanceMm)} clearance`
  const side = (axis: 'x' | 'y', { needsMm, hasMm }: AxisRoom): string => {
    const [stock, hold] = [figure(stockMm[`${axis}Mm`]), figure(holdMm[`${axis}Mm`])]
    const sum = `${stock} stock + ${hold} hold + ${sides}`
    return `${axis.toUpperCase()}: ${sum} = ${figure(needsMm)} of ${figure(hasMm)} mm`
  }
  const tower = `${figure(holdMm.zMm)} hold + ${figure(stockMm.zMm)} stock + ${figure(clearanceMm)} clearance`
  return {
    x,
    y,
    z,
    fits: [x, y, z].every(({ shortMm }) => shortMm === 0),
    worked: [
      side('x', x),
      side('y', y),
      `Z: ${tower} + ${figure(cutterLengthMm)} cutter = ${figure(z.needsMm)} of ${figure(z.hasMm)} mm`,
    ],
  }
}

function room(needsMm: number, hasMm: number): AxisRoom {
  // Sums of decimals may stray in the last digit; a nanometre is nobody's shortfall.
  const short = needsMm - hasMm
  return { needsMm, hasMm, shortMm: short > 1e-6 ? short : 0 }
}

function outOfDomain(question: TravelQuestion): string | null {
  const { stockMm, holdMm, travelMm, cutterDiameterMm, cutterLengthMm, clearanceMm, daylightMm } = question
  const above = (axes: Axes, of: string): [string, number][] =>
    Object.entries(axes).map(([axis, value]) => [`${of} ${axis.charAt(0)}`, value as number])
  const positive: [string, number][] = [
    ...above(stockMm, 'stock'),
    ...above(travelMm, 'travel'),
    ['daylight', daylightMm ?? 1],
  ]
  const notNegative: [string, number][] = [
    ...above(holdMm, 'hold'),
    ['cutter diameter', cutterDiameterMm],
    ['cutter length', cutterLengthMm],
    ['clearance', clearanceMm],
  ]
  const inside = (value: number): boolean => Number.isFinite(value) && value <= 1e6
  return (
    positive.find(([, value]) => !inside(value) || value <= 0)?.[0] ??
    notNegative.find(([, value]) => !inside(value) || value < 0)?.[0] ??
    null
  )
}
