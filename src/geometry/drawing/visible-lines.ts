import { type ChainLink, chainEdges } from './chain-edges.ts'
import { drawnEdges } from './drawn-edges.ts'
import type { Projected } from './projection.ts'
import { type LineKind, type Sample, type Sight, sampleChain } from './sample-chain.ts'
import type { Shape } from './shape.ts'

/** A line on the paper: x and y in turn, in cells. */
export type Polyline = readonly number[]

/** A line of a picture that is seen. */
export interface VisibleLine {
  /** The part whose edge it is. */
  readonly part: number
  readonly kind: LineKind
  readonly points: Polyline
}

/** Gaps and scraps shorter than this are no facts of the device but of the cells, in cells. */
const scrapCells = 3

/**
 * The lines of a part that are seen, hidden ones left out.
 * Needs: `sight` filled with every part of the picture. Gives: the same whatever the order of triangles.
 */
export function visibleLines(
  sight: Sight,
  part: number,
  shape: Shape,
  at: Projected,
): readonly VisibleLine[] {
  return chainEdges(drawnEdges(shape, at)).flatMap((links) =>
    runsOf(smoothed(sampleChain(sight, part, links, at))).map(({ kind, start, end }) => ({
      part,
      kind,
      points: pointsBetween(links, at, start, end),
    })),
  )
}

interface Run {
  readonly kind: LineKind | null
  readonly length: number
  readonly samples: readonly Sample[]
}

/** Short gaps closed, short scraps dropped or told as what they hang on. */
function smoothed(samples: readonly Sample[]): readonly Run[] {
  const told = joined(
    groups(samples).map((run, i, all) => ({ ...run, kind: kindAmong(run, all[i - 1], all[i + 1]) })),
  )
  return joined(
    told.map((run, i) => {
      const alone = (told[i - 1]?.kind ?? null) === null && (told[i + 1]?.kind ?? null) === null
      return alone && run.length < scrapCells && told.length > 1 ? { ...run, kind: null } : run
    }),
  )
}

function kindAmong(run: Run, before: Run | undefined, after: Run | undefined): LineKind | null {
  if (run.length >= scrapCells) return run.kind
  const seen = [before, after].flatMap((each) => (each && each.kind !== null ? [each] : []))
  const [first, second] = seen
  if (run.kind === null) return first && second ? longer(first, second).kind : null
  const long = first && second ? longer(first, second) : first
  return long && long.length > run.length ? long.kind : run.kind
}

function longer(a: Run, b: Run): Run {
  return b.length > a.length ? b : a
}

function groups(samples: readonly Sample[]): readonly Run[] {
  return joined(samples.map((sample) => ({ kind: sample.kind, length: sample.length, samples: [sample] })))
}

function joined(runs: readonly Run[]): readonly Run[] {
  const list: { kind: LineKind | null; length: number; samples: Sample[] }[] = []
  for (const run of runs) {
    const last = list.at(-1)
    if (last && last.kind === run.kind) {
      last.length += run.length
      for (const sample of run.samples) last.samples.push(sample)
    } else list.push({ ...run, samples: [...run.samples] })
  }
  return list
}

interface Along {
  readonly link: number
  readonly share: number
}

function runsOf(runs: readonly Run[]): readonly { kind: LineKind; start: Along; end: Along }[] {
  let start: Along = { link: 0, share: 0 }
  return runs.flatMap(({ kind, samples }) => {
    const from = start
    const last = samples.at(-1)!
    start = { link: last.link, share: last.until }
    return kind === null ? [] : [{ kind, start: from, end: start }]
  })
}

function pointsBetween(links: readonly ChainLink[], at: Projected, start: Along, end: Along): Polyline {
  const points = [...pointAt(links, at, start)]
  for (let link = start.link; link < end.link; link++)
    if (link > start.link || start.share < 1) points.push(...pointAt(links, at, { link, share: 1 }))
  points.push(...pointAt(links, at, end))
  return points
}

function pointAt(links: readonly ChainLink[], { x, y }: Projected, { link, share }: Along): [number, number] {
  const { edge, backward } = links[link]!
  const [a, b] = backward ? [edge.to, edge.from] : [edge.from, edge.to]
  if (share === 1) return [x[b]!, y[b]!]
  return [x[a]! + share * (x[b]! - x[a]!), y[a]! + share * (y[b]! - y[a]!)]
}
