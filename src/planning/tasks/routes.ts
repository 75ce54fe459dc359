import { readThreePoint, type ThreePoint } from '../../base/three-point.ts'
import type { Labour, Operation, Part, RouteStep, SetupStep } from '../../model/project.ts'
import { buildCart, receivedTask } from './carts.ts'
import { anybody, type Ground, lineKey, lotSizes, piecesMade, readyWhole } from './ground.ts'
import { addTimes } from './times.ts'

/** One lot on its way through a route. */
interface Lot {
  readonly part: Part
  readonly index: number
  readonly pieces: number
  /** `base` or `base lot 2`. */
  readonly name: string
  /** Steps put ahead of the route as written: soldering a board. */
  readonly ahead: number
}

/** First and last tasks of a stretch; empty where it takes no time. */
interface Stretch {
  readonly first: readonly string[]
  readonly last: readonly string[]
}

const nothing: Stretch = { first: [], last: [] }

/**
 * The route of every lot of a part, one step after the other.
 * Gives: the last tasks of each lot, set down as ready; `begin` gives the tasks a lot's first step waits for.
 */
export function buildRoute(
  ground: Ground,
  part: Part,
  route: readonly RouteStep[],
  lotSize: number | null,
  begin: (lot: number) => readonly string[],
  ahead = 0,
): readonly string[] {
  const sizes = lotSizes(piecesMade(ground.project, part), lotSize)
  const firsts: string[] = []
  const ready = sizes.map((pieces, index) => {
    const name = sizes.length > 1 ? `${part.id} lot ${index + 1}` : part.id
    const lot = { part, index, pieces, name, ahead }
    let before = begin(index)
    let started = false
    const passed: (readonly [RouteStep, Stretch])[] = []
    for (const [at, step] of route.entries()) {
      const stretch = buildStep(ground, lot, step, at)
      if (stretch.first.length === 0) continue
      passed.push([step, stretch])
      ground.build.linkAll(before, stretch.first, started ? 'route' : 'material', step.at)
      if (!started) firsts.push(...stretch.first)
      started = true
      before = stretch.last
    }
    for (const { fixture, since, until } of clampings(passed))
      ground.build.hold('fixture', fixture, since, until)
    return before
  })
  ground.ready.set(part.id, ready)
  return firsts
}

/** A fixture that a lot sits in, from one task to another. */
interface Clamped {
  readonly fixture: string
  readonly since: string
  readonly until: string
}

const fixtureOf = (step: RouteStep): string | null => {
  if (step.kind === 'outside') return null
  if (step.kind === 'work') return step.operation.fixture
  return step.hold.kind === 'fixture' ? step.hold.part : null
}

/** Each clamping keeps its fixture from load to unload; hand work and cures done in it go on holding it. */
function clampings(steps: readonly (readonly [RouteStep, Stretch])[]): readonly Clamped[] {
  const all: Clamped[] = []
  let open = false
  for (const [step, stretch] of steps) {
    const fixture = fixtureOf(step)
    const last = all.at(-1)
    if (fixture === null) open = false
    else if (open && last?.fixture === fixture && step.kind === 'work')
      all[all.length - 1] = { ...last, until: stretch.last[0]! }
    else {
      all.push({ fixture, since: stretch.first[0]!, until: stretch.last[0]! })
      open = true
    }
  }
  return all
}

function buildStep(ground: Ground, lot: Lot, step: RouteStep, index: number): Stretch {
  if (step.kind === 'setup') return buildSetup(ground, lot, step, index)
  if (step.kind === 'outside') return buildOutside(ground, lot, index)
  return buildWork(ground, lot, step.operation, index)
}

function buildOutside(ground: Ground, lot: Lot, index: number): Stretch {
  const found = ground.lines.get(
    lineKey({ kind: 'outside', part: lot.part.id, routeStep: index - lot.ahead, lot: lot.index }),
  )
  if (!found) return nothing
  const { order, received } = buildCart(ground, found.cart, {
    part: lot.part.id,
    lot: lot.index,
    routeStep: index,
  })
  return { first: [order], last: [received] }
}

/** Seconds of an operation for a lot. */
function lotTime(operation: Operation, pieces: number): ThreePoint {
  return addTimes([[operation.time, operation.each ? pieces : 1]])
}

function buildWork(ground: Ground, lot: Lot, operation: Operation, index: number): Stretch {
  // What may not be interrupted is done piece by piece, so that it need not fit one window for the whole lot.
  const split = !operation.pausable && operation.each && operation.attention === 'hands' && lot.pieces > 1
  const ids = Array.from({ length: split ? lot.pieces : 1 }, (_, piece) =>
    ground.build.task({
      id: `${lot.name} / ${index + 1} ${operation.process}${split ? ` ${piece + 1}` : ''}`,
      title: `${titleOf(operation)} ${lot.part.id}${split ? ` (${piece + 1} of ${lot.pieces})` : ''}`,
      kind: operation.attention === 'none' ? 'cure' : 'hand',
      at: operation.at,
      subject: { part: lot.part.id, lot: lot.index, routeStep: index },
      time: lotTime(operation, split ? 1 : lot.pieces),
      labour: operation,
      machine: operation.machine,
      tools: toolsOf(operation),
    }),
  )
  for (let at = 1; at < ids.length; at++) ground.build.link(ids[at - 1]!, ids[at]!, 'route', operation.at)
  linkHelpers(ground, [operation], [ids[0]!], operation.at)
  return { first: [ids[0]!], last: [ids.at(-1)!] }
}

const titleOf = (operation: Operation): string => {
  const what = operation.facts.get('what')
  if (what !== undefined) return `${what[0]?.toUpperCase() ?? ''}${what.slice(1)}:`
  return `${operation.process[0]!.toUpperCase()}${operation.process.slice(1)}`
}

function toolsOf(operation: Operation): readonly string[] {
  return operation.tool?.resource?.kind === 'tool' ? [operation.tool.resource.id] : []
}

/** Cutters that are bought, and tools that are made or bought, must be here. */
function linkHelpers(
  ground: Ground,
  operations: readonly Operation[],
  first: readonly string[],
  at: Part['at'],
): void {
  for (const operation of operations) {
    const cutter =
      operation.cutter === null ? null : receivedTask(ground, { kind: 'cutter', cutter: operation.cutter })
    if (cutter !== null) ground.build.linkAll([cutter], first, 'cutter', operation.at)
    const tool = operation.tool?.resource
    if (tool?.kind === 'part')
      ground.later.push(() => ground.build.linkAll(readyWhole(ground, tool.id), first, 'tool', at))
    const { fixture } = operation
    if (fixture !== null)
      ground.later.push(() =>
        ground.build.linkAll(readyWhole(ground, fixture), first, 'fixture', operation.at),
      )
  }
}

/** Operations of a setup that run on without a change of attention. */
interface Run extends Labour {
  readonly operations: readonly Operation[]
}

function runsOf(operations: readonly Operation[]): readonly Run[] {
  const runs: Run[] = []
  for (const operation of operations) {
    const last = runs.at(-1)
    const alike =
      last &&
      last.attention === operation.attention &&
      last.pausable &&
      operation.pausable &&
      last.people === operation.people &&
      last.who.join() === operation.who.join()
    if (alike)
      runs[runs.length - 1] = {
        ...last,
        least: Math.max(last.least, operation.least),
        operations: [...last.operations, operation],
      }
    else
      runs.push({
        attention: operation.attention,
        who: operation.who,
        people: operation.people,
        pausable: operation.pausable,
        least: operation.least,
        operations: [operation],
      })
  }
  return runs
}

/** Taking a piece off that ran with nobody there, where nothing is said. Source: common practice, no source. */
const usualUnload = readThreePoint('2 min', 'time') as ThreePoint

/** A stretch of work in one setup, before neighbours of one person are joined. */
interface Bit {
  readonly kind: 'setup' | 'load' | 'run' | 'unload'
  /** For ids and for words: `run b 2`; `drill, ream`. */
  readonly label: string
  readonly doing: string
  readonly piece: number | null
  readonly time: ThreePoint
  readonly labour: Labour
  readonly tools: readonly string[]
}

/** Set-up, then for each piece loading (with taking off the one before), the runs, and unloading the last. */
function bitsOf(ground: Ground, lot: Lot, step: SetupStep): readonly Bit[] {
  const hands: Labour = { ...anybody(ground), who: step.who, people: step.people }
  const runs = runsOf(step.operations)
  // Pieces go one by one where each is clamped, or where one may not be interrupted.
  const apart = step.load !== null || step.unload !== null || runs.some((run) => !run.pausable)
  const rounds = apart ? lot.pieces : 1
  const bits: Bit[] = [
    {
      kind: 'setup',
      label: 'setup',
      doing: `set up ${step.machine ?? 'the machine'}`,
      piece: null,
      time: addTimes([[step.time, 1]]),
      labour: hands,
      tools: [],
    },
  ]
  for (let piece = 0; piece < rounds; piece++) {
    const mark = rounds > 1 ? ` ${piece + 1}` : ''
    const change = addTimes([
      [piece === 0 ? null : step.unload, 1],
      [step.load, 1],
      [piece === 0 ? null : step.changeBack, 1],
    ])
    bits.push({
      kind: 'load',
      label: `load${mark}`,
      doing: piece === 0 ? 'load' : 'change',
      piece,
      time: change,
      labour: hands,
      tools: [],
    })
    for (const [at, run] of runs.entries()) {
      const times = (operation: Operation): number =>
        operation.each ? (apart ? 1 : lot.pieces) : piece === 0 ? 1 : 0
      bits.push({
        kind: 'run',
        label: `run${runs.length > 1 ? ` ${String.fromCharCode(97 + at)}` : ''}${mark}`,
        doing: [...new Set(run.operations.map((one) => one.process))].join(', '),
        piece,
        time: addTimes(run.operations.map((one) => [one.time, times(one)])),
        labour: run,
        tools: run.operations.flatMap(toolsOf),
      })
    }
  }
  const alone = runs.at(-1)?.attention === 'none' && step.unload === null
  bits.push({
    kind: 'unload',
    label: 'unload',
    doing: 'unload',
    piece: rounds - 1,
    time: alone ? usualUnload : addTimes([[step.unload, 1]]),
    labour: hands,
    tools: [],
  })
  return bits.filter(({ time }) => !time.high.equals(0))
}

const samePeople = (a: Labour, b: Labour): boolean => a.people === b.people && a.who.join() === b.who.join()

/** Neighbours that take the same hands are one task: one person sets up, loads and turns without handing over. */
function joinHands(bits: readonly Bit[]): readonly (readonly Bit[])[] {
  const joined: Bit[][] = []
  for (const bit of bits) {
    const last = joined.at(-1)?.at(-1)
    const both = last && [last, bit].every(({ labour }) => labour.attention === 'hands' && labour.pausable)
    if (both && samePeople(last.labour, bit.labour)) joined.at(-1)!.push(bit)
    else joined.push([bit])
  }
  return joined
}

function titleOfBits(lot: Lot, bits: readonly Bit[]): string {
  const doing = [...new Set(bits.map((bit) => bit.doing))].join(', ')
  const pieces = new Set(bits.flatMap(({ piece }) => (piece === null ? [] : [piece])))
  const [only] = pieces
  const which =
    lot.pieces === 1 || only === undefined
      ? ''
      : pieces.size === 1 && bits.some(({ label }) => /\d$/.test(label))
        ? ` (${only + 1} of ${lot.pieces})`
        : ` (${lot.pieces} pieces)`
  return `${doing[0]!.toUpperCase()}${doing.slice(1)}: ${lot.part.id}${which}`
}

function buildSetup(ground: Ground, lot: Lot, step: SetupStep, index: number): Stretch {
  const chain = joinHands(bitsOf(ground, lot, step)).map((bits) => {
    const [first] = bits
    const runs = bits.filter(({ kind }) => kind === 'run')
    return ground.build.task({
      id: `${lot.name} / ${index + 1} ${first!.label}`,
      title: titleOfBits(lot, bits),
      kind: runs.length > 0 ? 'run' : first!.kind,
      at: step.at,
      time: addTimes(bits.map(({ time }) => [time, 1])),
      labour: { ...first!.labour, least: Math.max(...bits.map(({ labour }) => labour.least)) },
      tools: [...new Set(bits.flatMap(({ tools }) => tools))],
      subject: { part: lot.part.id, lot: lot.index, routeStep: index },
      machine: step.machine,
      takesMachine: false,
    })
  })
  return closeSetup(ground, step, chain)
}

function closeSetup(ground: Ground, step: SetupStep, chain: readonly string[]): Stretch {
  const [first] = chain
  const last = chain.at(-1)
  if (first === undefined || last === undefined) return nothing
  for (let at = 1; at < chain.length; at++) ground.build.link(chain[at - 1]!, chain[at]!, 'load', step.at)
  if (step.machine !== null) ground.build.hold('machine', step.machine, first, last)
  const { hold } = step
  if (hold.kind === 'tool') ground.build.hold('tool', hold.tool, first, last)
  if (hold.kind === 'fixture') {
    ground.later.push(() => ground.build.linkAll(readyWhole(ground, hold.part), [first], 'fixture', hold.at))
  }
  linkHelpers(ground, step.operations, [first], step.at)
  return { first: [first], last: [last] }
}
