/** Pieces that come out bad, and the work or the parcels that replace them. */
import type { Random } from '../../base/random.ts'
import type { Part } from '../../model/project.ts'
import type { PlanTask } from '../../model/tasks.ts'
import type { DrawSource } from './draw-source.ts'

/** Bad pieces of every part whose tries do not all come out good. */
export interface BadPieces {
  /** Pieces made or bought again in each sample, by part. */
  readonly parts: readonly { readonly part: string; readonly values: Float64Array }[]
  /** By task number: how much of its time it takes more in each sample; of a delivery, how many ways more. */
  readonly more: ReadonlyMap<number, Float64Array>
}

/** What had to be started again of one part: how many pieces, in how many goes. */
interface Again {
  readonly pieces: number
  readonly rounds: number
}

/** A piece that came out bad so many times over is taken to be good. Source: common practice, no source. */
const mostRounds = 20

/** Tasks done once a go, whatever the number of pieces. */
const onceAGo: readonly PlanTask['kind'][] = [
  'setup',
  'load',
  'unload',
  'cure',
  'order',
  'receive',
  'delivery',
]

/**
 * Draws how many pieces of each part come out bad. Where fewer good ones are left than are needed (spares and further
 * tries cover first), the missing ones are made again until they are good: setups, cures and parcels once for each go,
 * other work in proportion to the pieces, in the part's last lot. What is bought by the piece is ordered again, and its
 * whole cart is taken to wait for that.
 */
export function drawBadPieces(
  source: DrawSource,
  samples: number,
  chanceOf: (name: string) => Random,
): BadPieces {
  const { project } = source
  const parts: { part: string; values: Float64Array }[] = []
  const more = new Map<number, Float64Array>()
  for (const part of project.parts.values()) {
    const good = part.yield.valueOf()
    const { started, needed } = countsOf(source, part)
    if (good >= 1 || started === 0) continue
    const random = chanceOf(`${part.id} / bad`)
    const again = Array.from({ length: samples }, () => drawAgain(good, started, needed, random))
    parts.push({ part: part.id, values: Float64Array.from(again, ({ pieces }) => pieces) })
    for (const { at, kind, pieces } of affected(source, part, started)) {
      const whole = onceAGo.includes(kind)
      const sum = more.get(at) ?? new Float64Array(samples)
      for (const [k, one] of again.entries()) sum[k]! += whole ? one.rounds : one.pieces / pieces
      more.set(at, sum)
    }
  }
  return { parts, more }
}

function countsOf({ project, purchase }: DrawSource, part: Part): { started: number; needed: number } {
  const { toGet, needed, fromStock } = project.demand.get(part.id) ?? { toGet: 0, needed: 0, fromStock: 0 }
  const line = purchase.carts
    .flatMap(({ lines }) => lines)
    .find(({ what }) => what.kind === 'part' && what.part === part.id)
  const started = toGet === 0 ? 0 : (line?.quantity ?? toGet * part.tries)
  return { started, needed: Math.max(0, needed - fromStock) }
}

function drawAgain(good: number, started: number, needed: number, random: Random): Again {
  let missing = needed
  for (let piece = 0; piece < started; piece++) if (random.next() < good) missing--
  let [pieces, rounds] = [0, 0]
  while (missing > 0 && rounds < mostRounds) {
    pieces += missing
    rounds++
    let still = 0
    for (let piece = 0; piece < missing; piece++) if (random.next() >= good) still++
    missing = still
  }
  return { pieces, rounds }
}

/** The tasks that make a part, in its last lot or copy; where nothing makes it, the parcel it comes in. */
function affected(
  { project, purchase, network }: DrawSource,
  part: Part,
  started: number,
): readonly { readonly at: number; readonly kind: PlanTask['kind']; readonly pieces: number }[] {
  const tasks = network.tasks.map((task, at) => ({ task, at }))
  const plate = part.way.kind === 'printed' ? part.way.plate : null
  const own = tasks.filter(
    ({ task: { subject } }) => subject.part === part.id || (plate !== null && subject.plate === plate),
  )
  if (own.length > 0) {
    const last = Math.max(0, ...own.map(({ task }) => task.subject.lot ?? 0))
    const lot = 'lot' in part.way ? part.way.lot : null
    const copies = part.way.kind === 'assembly'
    const size = copies ? 1 : lot === null ? started : started - lot * last
    // Preparing tool paths is not done again; a shared plate is printed again whole.
    return own
      .filter(({ task: { subject } }) => (subject.lot ?? last) === last)
      .filter(({ task }) => !isPreparing(project, task))
      .map(({ at, task }) => ({
        at,
        kind: task.subject.plate !== null && plate !== null ? 'load' : task.kind,
        pieces: Math.max(1, size),
      }))
  }
  const cart = purchase.carts.find(({ lines }) =>
    lines.some(({ what }) => what.kind === 'part' && what.part === part.id),
  )
  return tasks
    .filter(({ task }) => task.subject.cart === cart?.id && task.kind !== 'order')
    .map(({ at, task }) => ({ at, kind: task.kind, pieces: 1 }))
}

/** Whether a task is the preparing of tool paths along the route of a part. */
function isPreparing({ parts }: DrawSource['project'], { subject, at }: PlanTask): boolean {
  const way = subject.part === null ? undefined : parts.get(subject.part)?.way
  if (!way || !('route' in way)) return false
  return way.route.some(
    (step) => step.kind === 'work' && step.operation.at === at && step.operation.process === 'prepare',
  )
}
