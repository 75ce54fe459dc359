import type { ThreePoint } from '../../base/three-point.ts'
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
): readonly string[] {
  const sizes = lotSizes(piecesMade(ground.project, part), lotSize)
  const firsts: string[] = []
  const ready = sizes.map((pieces, index) => {
    const lot = { part, index, pieces, name: sizes.length > 1 ? `${part.id} lot ${index + 1}` : part.id }
    let before = begin(index)
    let started = false
    let clamped: Clamped | null = null
    for (const [at, step] of route.entries()) {
      const stretch = buildStep(ground, lot, step, at)
      if (stretch.first.length === 0) continue
      clamped = keepFixture(ground, step, stretch, clamped)
      ground.build.linkAll(before, stretch.first, started ? 'route' : 'material', step.at)
      if (!started) firsts.push(...stretch.first)
      started = true
      before = stretch.last
    }
    return before
  })
  ground.ready.set(part.id, ready)
  return firsts
}

/** A fixture that a lot sits in, and the task since which. */
interface Clamped {
  readonly fixture: string
  readonly since: string
}

/** A cure done in the fixture of the step before keeps it from that step's load to the end of the cure. */
function keepFixture(
  ground: Ground,
  step: RouteStep,
  stretch: Stretch,
  before: Clamped | null,
): Clamped | null {
  if (step.kind === 'outside') return null
  const fixture =
    step.kind === 'work' ? step.operation.fixture : step.hold.kind === 'fixture' ? step.hold.part : null
  if (fixture === null) return null
  if (before?.fixture !== fixture) return { fixture, since: stretch.first[0]! }
  if (step.kind === 'work') ground.build.hold('fixture', fixture, before.since, stretch.last[0]!)
  return before
}

function buildStep(ground: Ground, lot: Lot, step: RouteStep, index: number): Stretch {
  if (step.kind === 'setup') return buildSetup(ground, lot, step, index)
  if (step.kind === 'outside') return buildOutside(ground, lot, index)
  return buildWork(ground, lot, step.operation, index)
}

function buildOutside(ground: Ground, lot: Lot, index: number): Stretch {
  const found = ground.lines.get(
    lineKey({ kind: 'outside', part: lot.part.id, routeStep: index, lot: lot.index }),
  )
  if (!found) return nothing
  const { order, received } = buildCart(ground, found.cart, found.cart.id, {
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
      fixtures: operation.fixture === null ? [] : [operation.fixture],
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

function buildSetup(ground: Ground, lot: Lot, step: SetupStep, index: number): Stretch {
  const hands: Labour = { ...anybody(ground), who: step.who, people: step.people }
  const runs = runsOf(step.operations)
  const apart = step.load !== null || step.unload !== null || runs.some((run) => !run.pausable)
  const chain: string[] = []
  const add = (
    kind: 'setup' | 'load' | 'run' | 'unload',
    label: string,
    title: string,
    time: ThreePoint,
    labour: Labour,
    tools: readonly string[] = [],
  ): void => {
    if (time.high.equals(0)) return
    chain.push(
      ground.build.task({
        id: `${lot.name} / ${index + 1} ${label}`,
        title,
        kind,
        at: step.at,
        time,
        labour,
        tools,
        subject: { part: lot.part.id, lot: lot.index, routeStep: index },
        machine: step.machine,
        takesMachine: false,
      }),
    )
  }
  const many = lot.pieces > 1
  const nth = (piece: number): string => (many && apart ? ` (${piece + 1} of ${lot.pieces})` : '')
  const mark = (piece: number): string => (many && apart ? ` ${piece + 1}` : '')
  add(
    'setup',
    'setup',
    `Set up ${step.machine ?? 'machine'} for ${lot.part.id}`,
    addTimes([[step.time, 1]]),
    hands,
  )
  for (let piece = 0; piece < (apart ? lot.pieces : 1); piece++) {
    const first = piece === 0
    add(
      'load',
      `load${mark(piece)}`,
      `${first ? 'Load' : 'Change'} ${lot.part.id}${nth(piece)}`,
      addTimes([
        [first ? null : step.unload, 1],
        [step.load, 1],
      ]),
      hands,
    )
    for (const [at, run] of runs.entries()) {
      const pieces = apart ? 1 : lot.pieces
      const once = (operation: Operation): number => (operation.each ? pieces : first ? 1 : 0)
      const label = `run${runs.length > 1 ? ` ${String.fromCharCode(97 + at)}` : ''}${mark(piece)}`
      const names = run.operations.map((one) => one.process).join(', ')
      add(
        'run',
        label,
        `${names[0]!.toUpperCase()}${names.slice(1)}: ${lot.part.id}${nth(piece)}`,
        addTimes(run.operations.map((one) => [one.time, once(one)])),
        run,
        run.operations.flatMap(toolsOf),
      )
    }
  }
  add('unload', 'unload', `Unload ${lot.part.id}`, addTimes([[step.unload, 1]]), hands)
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
    ground.build.hold('fixture', hold.part, first, last)
    ground.later.push(() => ground.build.linkAll(readyWhole(ground, hold.part), [first], 'fixture', hold.at))
  }
  linkHelpers(ground, step.operations, [first], step.at)
  return { first: [first], last: [last] }
}
