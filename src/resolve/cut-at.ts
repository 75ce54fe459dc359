import { measures } from '../base/dimension-names.ts'
import type { Quantity } from '../base/quantity.ts'
import { prcCutting } from '../diagnostics/catalogue/prc-cutting.ts'
import type { Cutting } from '../model/cutting.ts'
import type { Cutter, Machine, Size } from '../model/project.ts'
import type { CutFacts, Process } from '../processes/process.ts'
import { reportTroubles } from '../processes/report-troubles.ts'
import { field, type Spot } from '../source/spot.ts'
import type { Cut, CuttingFault, StatedCut, WorkMaterial } from '../trade/cutting/types.ts'
import { readSize } from '../trade/fits/read-size.ts'
import { isThreadFault, readThread } from '../trade/threads/read-thread.ts'
import type { Thread } from '../trade/threads/thread.ts'
import type { Context } from './context.ts'
import { cuttingBench } from './cutting-bench.ts'
import { asTyped, sayOutside } from './cutting-words.ts'
import { numberOf, perMinute } from './plain-number.ts'
import { sizeAt } from './reading.ts'

/** A volume that is cut away, and the sum behind it. */
export interface Removed {
  readonly mm3: number
  readonly worked: string
}

/** One operation as far as its cut goes. */
export interface CutSpot {
  readonly process: Process
  readonly spot: Spot<object>
  readonly numbers: ReadonlyMap<string, Quantity>
  /** Texts of the features it makes. */
  readonly features: readonly string[]
  readonly cutter: Cutter | null
  readonly machine: Machine | null
  readonly work: WorkMaterial
  readonly stock: Size | null
  /** Stock less the finished part, where one operation clears it away. */
  readonly removed: Removed | null
  readonly part: string
}

/** The cut of an operation, or what is missing to work it out; `null`: it cuts nothing, or not by a formula. */
export type CutAt = { readonly cutting: Cutting } | { readonly missing: readonly string[] } | null

/** Works out the cut of an operation, and says what stands against it. */
export function cutAt(context: Context, one: CutSpot): CutAt {
  const { process, spot, part } = one
  if (!process.cutting || !one.cutter) return process.cutting ? { missing: ['`cutter`'] } : null
  const unread = new Set<string>()
  const facts = factsOf(context, one, unread)
  const cut = process.cutting(facts, cuttingBench(one.cutter, one.work, one.machine))
  // Lengths that could not be read have been told; that they are missing would only follow.
  if (unread.size > 0) return { missing: [] }
  const of = { op: process.key, part, at: spot.keyAt }
  if ('fault' in cut) return faulted(context, cut, of)
  reportTroubles(cut.troubles, of, context.report)
  const cutting = cuttingOf(cut)
  const clears =
    process.key === 'rough' &&
    !one.numbers.has('volume') &&
    !field(spot as Spot<Record<string, never>>, 'pocket')
  return clears && one.removed
    ? { cutting: { ...cutting, worked: [one.removed.worked, ...cutting.worked] } }
    : { cutting }
}

function faulted(
  context: Context,
  fault: CuttingFault,
  { at, ...of }: { op: string; part: string; at: Spot<object>['keyAt'] },
): CutAt {
  if (fault.fault === 'missing')
    return { missing: [...new Set(fault.what.map((what) => asTyped[what] ?? what))] }
  if (fault.fault === 'no such shape') context.report(prcCutting.noSuchCut, at, { ...of, what: fault.what })
  else context.report(prcCutting.cutOutside, at, { ...of, ...sayOutside(fault) })
  return { missing: [] }
}

function cuttingOf(cut: Cut): Cutting {
  const { rpm, feedMmPerMin, chipMm, powerW, torqueNm, seconds, passes, worked, assumed, timeSeconds } = cut
  const inCutSeconds = timeSeconds.inCut
  return { rpm, feedMmPerMin, chipMm, powerW, torqueNm, inCutSeconds, seconds, passes, worked, assumed }
}

/** Speed and feed as typed: turns or a cutting speed, a feed rate or a feed for each turn. */
function statedOf(numbers: ReadonlyMap<string, Quantity>): StatedCut {
  const speed = numbers.get('speed')
  const feed = numbers.get('feed')
  const turns = speed ? measures('rotational speed', speed.dims) : false
  const perTurn = feed ? measures('length per turn', feed.dims) : false
  return {
    ...(speed ? (turns ? { rpm: perMinute(speed)! } : { speedMPerMin: perMinute(speed)! / 1000 }) : {}),
    ...(feed ? (perTurn ? { feedMmPerRev: numberOf(feed)! } : { feedMmPerMin: perMinute(feed)! }) : {}),
  }
}

function factsOf(
  context: Context,
  { spot, numbers, features, cutter, stock, removed }: CutSpot,
  unread: Set<string>,
): CutFacts {
  const keys = spot as Spot<Record<string, never>>
  const chip = numberOf(cutter?.numbers.get('chip'))
  const edgeSpeed = perMinute(cutter?.numbers.get('cutting speed'))
  const stated = statedOf(numbers)
  const silent = stated.rpm === undefined && stated.speedMPerMin === undefined
  return {
    stated: {
      ...stated,
      ...(silent && edgeSpeed ? { speedMPerMin: edgeSpeed / 1000 } : {}),
      ...(stated.feedMmPerMin === undefined && chip ? { chipLoadMm: chip } : {}),
    },
    number: (key) => numberOf(numbers.get(key)),
    count: (key) => {
      const value: unknown = field(keys, key)?.value
      return typeof value === 'number' ? value : null
    },
    size: (key) => {
      const found = sizesAt(context, key, field(keys, key))
      if (field(keys, key) && !found) unread.add(key)
      return found
    },
    bar:
      stock?.shape === 'bar'
        ? { acrossMm: numberOf(stock.across)!, lengthMm: numberOf(stock.length)! }
        : null,
    block:
      stock && 'thickness' in stock
        ? [numberOf(stock.length)!, numberOf(stock.width)!, numberOf(stock.thickness)!]
        : null,
    removedMm3: removed?.mm3 ?? null,
    thread: threadOf(field(keys, 'thread')?.text, features, cutter),
    featureMm: nominalOf(features),
  }
}

function sizesAt(context: Context, key: string, spot: Spot<string> | null): readonly number[] | null {
  if (!spot) return null
  return sizeAt(context, key, spot, key === 'pocket' ? 3 : 2)?.map((one) => numberOf(one)!) ?? null
}

function threadOf(
  stated: string | undefined,
  features: readonly string[],
  cutter: Cutter | null,
): Thread | null {
  const read = [stated, ...features, cutter?.facts.get('thread')].flatMap((text) => {
    const thread = text === undefined ? null : readThread(text)
    return thread && !isThreadFault(thread) ? [thread] : []
  })
  const [first, ...others] = read
  // A thread that is stated without its depth is as deep as the feature says.
  const depthMm = first?.depthMm ?? others.find((one) => one.depthMm !== null)?.depthMm ?? null
  return first ? { ...first, depthMm } : null
}

function nominalOf(features: readonly string[]): number | null {
  for (const text of features) {
    const read = readSize(text)
    if (!('fault' in read) && 'nominalMm' in read) return read.nominalMm
  }
  return null
}
