import Fraction from 'fraction.js'
import type { Cutter, Operation, Part, Project, RouteStep } from '../../model/project.ts'
import type { CutterWear } from '../../model/purchase.ts'
import { byName, lotSizes, routedWay, started } from './started.ts'

/**
 * How long each cutter of the project cuts, by part, and how many must be bought. Times are in cut where they are worked out, else the
 * plan's mean, exact.
 * Only where none is here is one bought, and then as many as wear out.
 * Gives: only cutters that some operation uses, by name.
 */
export function cutterWear(project: Project): CutterWear[] {
  const cuts = byName(project.parts).flatMap((part) => cutsOf(part, started(project, part)))
  return byName(project.cutters)
    .filter(({ id }) => cuts.some(({ cutter }) => cutter === id))
    .map((cutter) =>
      wearOf(
        cutter,
        cuts.filter((cut) => cut.cutter === cutter.id),
      ),
    )
}

interface Cut {
  readonly part: string
  readonly cutter: string
  readonly seconds: Fraction
}

function wearOf(cutter: Cutter, cuts: readonly Cut[]): CutterWear {
  const names = [...new Set(cuts.map(({ part }) => part))]
  const parts = names.map((part) => ({ part, seconds: total(cuts.filter((cut) => cut.part === part)) }))
  const seconds = total(cuts)
  const life = cutter.life?.mean.gt(0) ? cutter.life.mean : null
  const worn = life ? seconds.div(life) : new Fraction(0)
  const toBuy = cutter.have > 0 ? 0 : Math.max(1, Number(worn.ceil().n))
  return { cutter: cutter.id, parts, seconds, life, worn, have: cutter.have, toBuy }
}

function total(cuts: readonly Cut[]): Fraction {
  return cuts.reduce((sum, { seconds }) => sum.add(seconds), new Fraction(0))
}

function cutsOf(part: Part, pieces: number): Cut[] {
  const way = routedWay(part.way)
  if (!way || pieces === 0) return []
  const lots = lotSizes(pieces, way.lot).length
  const solder = way.kind === 'board' && way.solder ? [way.solder] : []
  return [...way.route.flatMap(operationsOf), ...solder].flatMap((operation) =>
    operation.cutter === null
      ? []
      : [{ part: part.id, cutter: operation.cutter, seconds: cuttingTime(operation, pieces, lots) }],
  )
}

function operationsOf(step: RouteStep): readonly Operation[] {
  if (step.kind === 'setup') return step.operations
  return step.kind === 'work' ? [step.operation] : []
}

/** Seconds in which chips are made, where cutting data say so; else the whole time of the operation. */
function cuttingTime({ time, timeFrom, cutting, each }: Operation, pieces: number, lots: number): Fraction {
  const one = cutting && timeFrom === 'computed' ? new Fraction(Math.ceil(cutting.inCutSeconds)) : time?.mean
  return one ? one.mul(each ? pieces : lots) : new Fraction(0)
}
