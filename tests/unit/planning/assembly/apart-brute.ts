import type { Random } from '../../../../src/base/random.ts'
import type { AssemblyOrder, AssemblyPlan, JoiningMethod, Step } from '../../../../src/model/assembly.ts'
import type { FromMeshes, MeshMove, MeshStop, PlanMeshes } from '../../../../src/model/from-meshes.ts'
import type { Part, Project } from '../../../../src/model/project.ts'
import type { Assembled } from '../../../../src/planning/assembly/plan-apart.ts'
import { into, onto, plan, put, shuts, step, toStep, waiting } from './bench-steps.ts'

const by = (method: JoiningMethod, light = false) => ({ method, light, lightSaid: light })

/** A project of the device and parts of kind assembly, each built in the order as written. */
export function assembled(
  device: AssemblyPlan,
  subs: Readonly<Record<string, AssemblyPlan>> = {},
  meshes: PlanMeshes | null = null,
): Assembled {
  const parts = new Map(
    Object.entries(subs).map(([id, sub]) => [
      id,
      { id, way: { kind: 'assembly', plan: { ...sub, of: id } } } as unknown as Part,
    ]),
  )
  const project = { parts, assembly: device, demand: new Map() } as unknown as Project
  const orders = new Map(
    [device, ...[...parts.values()].flatMap(({ way }) => (way.kind === 'assembly' ? [way.plan] : []))].map(
      (one) => [one.of ?? '', { order: one.steps.map(({ id }) => id) } as unknown as AssemblyOrder],
    ),
  )
  return {
    project,
    orders,
    joins: [],
    meshes: meshes && ({ plans: new Map([['', meshes]]) } as unknown as FromMeshes),
  }
}

const methods: readonly JoiningMethod[] = ['screw', 'seat', 'snap', 'glue', 'press', 'plug']

/** Steps that put `p0`, `p1`, ... on or into the base or one another; some shut an opening, some come after others. */
export function randomPlan(random: Random, size: number): AssemblyPlan {
  const pick = (count: number): number => Math.floor(random.next() * count)
  const openings = { base: ['top', 'bottom'], p0: ['side'] }
  const steps = Array.from({ length: size }, (_, at): Step => {
    const body = at === 0 || pick(2) === 0 ? 'base' : `p${pick(at)}`
    const inside = body === 'base' || body === 'p0' ? pick(2) === 0 : false
    const shut =
      pick(3) > 0 ? {} : pick(4) === 0 ? shuts('p0', 'side') : shuts('base', pick(2) === 0 ? 'top' : 'bottom')
    return step(`s${at}`, {
      ...put(`p${at}`),
      ...(inside ? into(body, body === 'base' && pick(3) === 0 ? 'top' : null) : onto(body)),
      ...by(methods[pick(methods.length)]!, pick(2) === 0),
      ...shut,
      ...(at > 0 && pick(3) === 0 ? { after: [waiting(toStep(`s${pick(at)}`))] } : {}),
    })
  })
  return plan(steps, openings)
}

const costs: Readonly<Record<string, number>> = { glue: 2, press: 2, snap: 1 }
const costOf = ({ method, light }: Step): number =>
  method === 'press' && light ? 1 : (costs[method ?? ''] ?? 0)

/** The rules of undoing told once more, straight from the steps; the order of building is as written. */
export function mayUndo({ steps, openings }: AssemblyPlan, at: number, gone: number): boolean {
  const one = steps[at]!
  const part = `p${at}`
  const there = (other: number): boolean => (gone & (1 << other)) === 0
  const bodyOf = (each: Step): string => (each.onto ?? each.into)!.body
  const blocked = steps.some((later, other) => {
    if (other <= at || !there(other)) return false
    if (costOf(later) === 2 && bodyOf(later) === part) return false
    const waits = later.after.some(({ target }) => target.kind === 'step' && target.id === one.id)
    return waits || bodyOf(later) === part || later.shuts.some(({ body }) => body === part)
  })
  const isOpen = (body: string, opening: string): boolean => {
    const shutting = steps.flatMap(({ shuts: all }, other) =>
      all.some((each) => each.body === body && each.opening === opening) ? [other] : [],
    )
    return shutting.length === 0 || shutting.some((other) => other === at || !there(other))
  }
  const passable = (body: string, through: string | null): boolean => {
    const names = through === null ? (openings.get(body) ?? []) : [through]
    const around = steps.findIndex(({ put: each }) => each?.part === body)
    const outside = around >= 0 && around < at ? steps[around]!.into : null
    return (
      (names.length === 0 || names.some((name) => isOpen(body, name))) &&
      (outside === null || passable(outside.body, null))
    )
  }
  return !blocked && (one.into === null || passable(one.into.body, one.into.through))
}

/** Least harm over every set of steps that can be undone one by one; `null`: the way as written cannot be built. */
export function bruteHarm(
  device: AssemblyPlan,
  target: number,
  may: (at: number, gone: number) => boolean = (at, gone) => mayUndo(device, at, gone),
): readonly number[] | null {
  const { steps } = device
  const all = (1 << steps.length) - 1
  const laterThan = (at: number): number => all & ~((1 << (at + 1)) - 1)
  if (!steps.every((_, at) => may(at, laterThan(at)))) return null
  const reachable = new Set([0])
  for (const gone of reachable)
    for (const [at] of steps.entries())
      if ((gone & (1 << at)) === 0 && may(at, gone)) reachable.add(gone | (1 << at))
  const harms = [...reachable]
    .filter((gone) => (gone & (1 << target)) !== 0)
    .map((gone) => {
      const undo = steps.filter((_, at) => (gone & (1 << at)) !== 0)
      return [2, 1].map((cost) => undo.filter((one) => costOf(one) === cost).length).concat(undo.length)
    })
  return harms.sort((a, b) => a[0]! - b[0]! || a[1]! - b[1]! || a[2]! - b[2]!)[0]!
}

const base = 90
const fastenerOf = (at: number): number => 30 + at
const stepOf = (body: number): number => (body >= 30 ? body - 30 : body)

/** What of a random plan has a mesh, and what stops what: a pair in one direction as often as the other way round in the opposite. */
export function randomMeshes({ steps }: AssemblyPlan, random: Random): PlanMeshes {
  const chance = (share: number): boolean => random.next() < share
  const bodies = steps.flatMap((_, at) => [
    ...(chance(0.85) ? [at] : []),
    ...(chance(0.2) ? [fastenerOf(at)] : []),
  ])
  const sparse = 0.1 + 0.35 * random.next()
  const stops = new Map(bodies.map((body) => [body, Array.from({ length: 6 }, (): MeshStop[] => [])]))
  for (const [k, a] of bodies.entries())
    for (let direction = 0; direction < 6; direction++) {
      if (chance(0.4)) stops.get(a)![direction]!.push({ body: base, widthMm: 1 })
      for (const b of bodies.slice(k + 1)) {
        if (!chance(sparse)) continue
        stops.get(a)![direction]!.push({ body: b, widthMm: 1 })
        stops.get(b)![direction ^ 1]!.push({ body: a, widthMm: 1 })
      }
    }
  const moves = bodies.map((body): MeshMove => {
    const own = steps[stepOf(body)]!
    const seat = Number((own.onto ?? own.into)!.body.slice(1))
    return {
      step: own.id,
      part: `b${body}`,
      role: body >= 30 ? 'fastener' : 'put',
      bodies: [body],
      seat: bodies.includes(seat) ? [seat] : [],
      onto: [],
      tiltedFrom: [],
      stops: stops.get(body)!,
    }
  })
  return { of: null, there: [base], moves, tilted: [], constraints: [], typedAlone: [] }
}

const words: Readonly<Record<string, number>> = { right: 0, left: 1, rear: 2, front: 3, top: 4, bottom: 5 }

/**
 * Whether all that a step brought has a straight way out while these are gone, told from where every part is: in the
 * device, or on the bench with what it is glued to. What could not be built but past something passes that again.
 */
export function hasWayOut({ steps }: AssemblyPlan, { moves }: PlanMeshes, at: number, gone: number): boolean {
  const isGone = (one: number, set = gone): boolean => (set & (1 << one)) !== 0
  const carrierOf = (one: number): number | null => {
    const body = (steps[one]!.onto ?? steps[one]!.into)!.body
    return costOf(steps[one]!) === 2 && body !== 'base' ? Number(body.slice(1)) : null
  }
  /** Up what it is glued to: the first that is gone, or `null` in the device. */
  const whereIs = (one: number, set: number): number | null => {
    for (let k: number | null = one; k !== null; k = carrierOf(k)) if (isGone(k, set)) return k
    return null
  }
  const rides = (one: number, on: number, set: number): boolean => {
    for (let k = carrierOf(one); k !== null && !isGone(one, set); k = carrierOf(k)) {
      if (k === on) return true
      if (isGone(k, set)) return false
    }
    return false
  }
  const bodyOf = (move: MeshMove): number => move.bodies[0]!
  const lasting = (move: MeshMove, body: number): boolean =>
    body === base || move.seat.includes(body) || (move.role === 'fastener' && body === at)
  const openOf = (move: MeshMove): number[] => {
    const open = [0, 1, 2, 3, 4, 5].filter((d) => !move.stops[d]!.some(({ body }) => lasting(move, body)))
    const typed = move.role === 'put' ? words[steps[at]!.from ?? ''] : undefined
    return typed !== undefined && open.includes(typed) ? [typed] : open
  }
  const blocks = (own: MeshMove, mover: MeshMove, body: number, set: number, passes: boolean): boolean => {
    if (body === base) return whereIs(stepOf(bodyOf(mover)), set) === null
    const other = stepOf(body)
    if (other === at || (own.role === 'put' && rides(other, at, set))) return false
    if (passes && other < at) return false
    return whereIs(other, set) === whereIs(at, set)
  }
  const isFree = (own: MeshMove, direction: number, set: number, passes: boolean): boolean =>
    moves
      .filter((move) => move === own || (own.role === 'put' && rides(stepOf(bodyOf(move)), at, set)))
      .every((mover) => mover.stops[direction]!.every(({ body }) => !blocks(own, mover, body, set, passes)))
  const later = ((1 << steps.length) - 1) & ~((1 << (at + 1)) - 1)
  return moves
    .filter((move) => stepOf(bodyOf(move)) === at)
    .every((own) => {
      const open = openOf(own)
      const passes = !open.some((direction) => isFree(own, direction, later, false))
      return open.length === 0 || open.some((direction) => isFree(own, direction, gone, passes))
    })
}
