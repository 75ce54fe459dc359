import { prcCutting } from '../diagnostics/catalogue/prc-cutting.ts'
import type { Machine, Part, Project, SetupStep, Size } from '../model/project.ts'
import { type Axes, travelShortfall } from '../trade/cutting/travel-shortfall.ts'
import type { ModelCheck } from './check.ts'

/** Height that a vice or plate takes above the table, in mm, where the set-up does not say. Source: common practice, no source. */
const usualHoldMm = 50
/** Room in mm left beside the work where a cutter runs off it. Source: common practice, no source. */
const besideMm = 2

/** The work turns and the axes are others: travel of a lathe is not asked for. */
const onTheLathe: ReadonlySet<string> = new Set(['turn', 'part off'])
/** Cutters that pass the sides of the work; others stay over it. */
const runsOff: ReadonlySet<string> = new Set(['face', 'contour'])

/** PRC29: a set-up whose stock, workholding and longest cutter need more room than the machine's axes run. */
export const travelTooShort: ModelCheck = (project, report) => {
  for (const part of project.parts.values()) {
    for (const step of setupsOf(part)) {
      const machine = step.machine === null ? undefined : project.machines.get(step.machine)
      if (!machine?.travel || step.operations.some(({ process }) => onTheLathe.has(process))) continue
      for (const short of shortestRoom(project, machine, part, step))
        report(prcCutting.travelTooShort, step.at, { part: part.id, machine: machine.id, ...short })
    }
  }
}

function setupsOf({ way }: Part): readonly SetupStep[] {
  return way.kind === 'machined' ? way.route.filter((step) => step.kind === 'setup') : []
}

interface Short {
  readonly axis: string
  readonly needs: number
  readonly has: number
  readonly sum: string
}

/** What the best way of laying the stock still lacks; none where one way fits. */
function shortestRoom(project: Project, machine: Machine, part: Part, step: SetupStep): readonly Short[] {
  const ways = laidWays(part.way.kind === 'machined' ? part.way.stock?.size : undefined)
  const answers = ways.map((stockMm) => shortOn(stockMm, machine, step, cuttersOf(project, step)))
  const lacking = (shorts: readonly Short[]): number =>
    shorts.reduce((sum, { needs, has }) => sum + needs - has, 0)
  return [...answers].sort((a, b) => lacking(a) - lacking(b))[0] ?? []
}

/** Plates and blocks lie as written, either way round; a bar lies or stands. */
function laidWays(size: Size | undefined): readonly Axes[] {
  if (size?.shape === 'bar') {
    const [across, length] = [size.across.value.valueOf(), size.length.value.valueOf()]
    return [
      { xMm: length, yMm: across, zMm: across },
      { xMm: across, yMm: length, zMm: across },
      { xMm: across, yMm: across, zMm: length },
    ]
  }
  if (size?.shape !== 'plate' && size?.shape !== 'block') return []
  const [length, width, zMm] = [size.length, size.width, size.thickness].map((one) => one.value.valueOf())
  return [
    { xMm: length!, yMm: width!, zMm: zMm! },
    { xMm: width!, yMm: length!, zMm: zMm! },
  ]
}

interface Cutters {
  /** Standing farthest out of the spindle; 0 where nobody says. */
  readonly longestMm: number
  /** Of those that run off the work. */
  readonly widestMm: number
}

function cuttersOf({ cutters }: Project, { operations }: SetupStep): Cutters {
  const numbers = operations.flatMap(({ process, cutter }) => {
    const own = cutter === null ? undefined : cutters.get(cutter)?.numbers
    const mm = (key: string): number => own?.get(key)?.value.valueOf() ?? 0
    return [{ longest: mm('stick-out') || mm('reach'), widest: runsOff.has(process) ? mm('diameter') : 0 }]
  })
  return {
    longestMm: Math.max(0, ...numbers.map(({ longest }) => longest)),
    widestMm: Math.max(0, ...numbers.map(({ widest }) => widest)),
  }
}

function shortOn(stockMm: Axes, machine: Machine, step: SetupStep, cutters: Cutters): readonly Short[] {
  const [x, y, z] = machine.travel!.map((one) => one.value.valueOf())
  const room = travelShortfall({
    stockMm,
    holdMm: { xMm: 0, yMm: 0, zMm: step.clearance?.value.valueOf() ?? usualHoldMm },
    cutterDiameterMm: cutters.widestMm,
    cutterLengthMm: cutters.longestMm,
    clearanceMm: step.operations.some(({ process }) => runsOff.has(process)) ? besideMm : 0,
    travelMm: { xMm: x!, yMm: y!, zMm: z! },
    daylightMm: machine.numbers.get('headroom')?.value.valueOf() ?? null,
  })
  if ('fault' in room) return []
  return (['x', 'y', 'z'] as const).flatMap((axis, at) => {
    const { needsMm, hasMm, shortMm } = room[axis]
    const sum = sumOf(room.worked[at]!)
    return shortMm > 0 ? [{ axis: axis.toUpperCase(), needs: needsMm, has: hasMm, sum }] : []
  })
}

/** The terms of `X: 280 stock + 0 hold + ... = 290 of 250 mm` that are more than nothing. */
function sumOf(worked: string): string {
  return worked
    .replace(/^\w: | = .*$/g, '')
    .split(' + ')
    .filter((term) => !/^(2 x )?0 /.test(term))
    .join(' + ')
}
