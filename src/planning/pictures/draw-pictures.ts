import { drawPicture, type Picture, scaleOfAll, usualPicture } from '../../geometry/drawing/draw-picture.ts'
import type { DrawingFault, DrawnMesh } from '../../geometry/drawing/drawn-mesh.ts'
import type { PicturePart } from '../../geometry/drawing/picture-part.ts'
import { type Shape, shapeOf, whyNotDrawn } from '../../geometry/drawing/shape.ts'
import { axesOf, upright, type View } from '../../geometry/drawing/view.ts'
import { contactSpots } from '../../geometry/relations/contact-spots.ts'
import { axisOf, type Direction, directions, goesUp, vectorOf } from '../../geometry/relations/directions.ts'
import { type Solid, solidOf } from '../../geometry/relations/solid.ts'
import type { AssemblyOrder, AssemblyPlan, Step } from '../../model/assembly.ts'
import { plansAsBuilt } from '../../model/assembly-plans.ts'
import type { FromMeshes, MeshMove, PlanMeshes } from '../../model/from-meshes.ts'
import type { Pictures, StepPicture, WholePicture } from '../../model/pictures.ts'
import type { Project } from '../../model/project.ts'
import { layOutBodies } from '../from-meshes/lay-out-bodies.ts'
import { sideOf } from '../from-meshes/side-of.ts'
import { wayIn } from '../from-meshes/way-in.ts'
import { attitudeOf } from './attitude-of.ts'

/** Side of the picture of a whole, in millimetres: the width of a page between its rims. */
const wholeMm = 160

/** One assembly with its order and its meshes. */
interface Drawn {
  readonly plan: AssemblyPlan
  readonly order: readonly string[]
  readonly meshes: PlanMeshes
  readonly tilted: FromMeshes['tilted']
  readonly shapes: readonly Shape[]
  /** The body of a number, for what it rests on. */
  readonly solids: (body: number) => Solid
}

/** What goes in as one, with where it comes from. */
interface Arrival {
  readonly bodies: readonly number[]
  /** `null`: nothing was there before, or there is no straight way: it just stands there. */
  readonly from: Direction | null
}

/** What is wanted besides a picture of each step as large as it fits. */
export interface WantedPictures {
  readonly oneScale?: boolean
  /** Whether assemblies are drawn taken apart; so where not said. */
  readonly whole?: boolean
}

/**
 * A picture of every step that puts something of which there is a mesh, and one of each assembly taken apart.
 * Needs: `meshes` of this project. With `oneScale` the pictures of an assembly have one scale, but for those from near. Gives: no step without order. Cost: O(triangles) a picture.
 */
export function drawPictures(
  project: Project,
  orders: ReadonlyMap<string, AssemblyOrder>,
  meshes: FromMeshes,
  { oneScale = false, whole = true }: WantedPictures = {},
): Pictures {
  const { corners } = layOutBodies(project)
  const loose = corners.map(looseMesh)
  const fault = whyNotDrawn(loose)
  if (fault) return { steps: [], wholes: [], beyond: beyondOf(fault), without: [] }
  const shapes = loose.map(shapeOf)
  const solids = solidsOf(corners)
  const drawn = plansAsBuilt(project).flatMap((plan): readonly Drawn[] => {
    const [order, own] = [orders.get(plan.of ?? '')?.order, meshes.plans.get(plan.of ?? '')]
    return order && own ? [{ plan, order, meshes: own, tilted: meshes.tilted, shapes, solids }] : []
  })
  return {
    steps: drawn.flatMap((one) => stepPictures(one, oneScale)),
    wholes: whole ? drawn.flatMap((one) => wholePicture(one, one.plan.of ?? project.device.name)) : [],
    beyond: null,
    without: drawn.flatMap(({ plan, meshes: { typedAlone } }) =>
      typedAlone.map((step) => ({ of: plan.of, step })),
    ),
  }
}

/** Coordinates and corners were checked where the meshes were read: only their number is left to be at fault. */
function beyondOf(fault: DrawingFault): Pictures['beyond'] {
  if (fault.fault === 'too many parts') return { what: 'parts', found: fault.parts, most: fault.most }
  return fault.fault === 'too many triangles'
    ? { what: 'triangles', found: fault.triangles, most: fault.most }
    : null
}

function looseMesh(corners: Float32Array): DrawnMesh {
  return {
    positions: corners,
    triangles: Uint32Array.from({ length: corners.length / 3 }, (_, corner) => corner),
  }
}

/** Bodies made ready for contacts when they are first asked for. */
function solidsOf(corners: readonly Float32Array[]): (body: number) => Solid {
  const made = new Map<number, Solid>()
  return (body) => {
    const known = made.get(body) ?? solidOf(corners[body]!)
    made.set(body, known)
    return known
  }
}

function stepPictures(drawn: Drawn, oneScale: boolean): readonly StepPicture[] {
  const shown = arrivals(drawn).map(({ step, number, up, present, comes }) => {
    const there = present.map((body) => partOf(drawn, body))
    return { step, number, up, parts: [...there, ...comingParts(drawn, comes, present, true)] }
  })
  const { sizeMm } = usualPicture
  const scale = oneScale ? scaleOfAll(shown, sizeMm) : null
  let kept: View | null = null
  return shown.flatMap(({ step, number, up, parts }) => {
    const picture = made(drawPicture(parts, { ...usualPicture, title: step.id, kept, up, scale }))
    if (!picture) return []
    kept = picture.view
    const { svg, heightMm } = picture
    const straight = parts.every(({ goesIn, way }) => !goesIn || way !== null || parts.length === 1)
    return [
      {
        of: drawn.plan.of,
        step: step.id,
        number,
        svg,
        sizeMm,
        heightMm,
        sees: sidesSeen(picture.view),
        straight,
      },
    ]
  })
}

/** A side counts as seen where it is turned to the looker by more than a few degrees. */
const leastTurned = 0.1

/** The sides of the device that a view shows, the one that is turned most to the looker first. */
function sidesSeen(view: View): readonly Direction[] {
  const { near } = axesOf(view)
  return directions
    .map((direction) => ({ direction, turned: near[axisOf(direction)]! * (goesUp(direction) ? 1 : -1) }))
    .filter(({ turned }) => turned > leastTurned)
    .sort((a, b) => b.turned - a.turned)
    .map(({ direction }) => direction)
}

function wholePicture(drawn: Drawn, title: string): readonly WholePicture[] {
  const { there } = drawn.meshes
  const comes = arrivals(drawn).flatMap(({ number, comes }) => comes.map((one) => ({ ...one, number })))
  if (there.length + comes.length < 2) return []
  // What is put first of all stays where it is: the rest is taken off it.
  const first = there.length > 0 ? [] : comes.slice(0, 1).flatMap(({ bodies }) => bodies)
  const ground = [...there, ...first]
  const rest = comingParts(drawn, comes.slice(first.length > 0 ? 1 : 0), ground, false)
  const label = first.length > 0 ? comes[0]!.number : null
  const parts = [...ground.map((body) => numbered(partOf(drawn, body), label)), ...rest]
  const picture = made(drawPicture(parts, { ...usualPicture, sizeMm: wholeMm, title }))
  if (!picture) return []
  return [{ of: drawn.plan.of, svg: picture.svg, sizeMm: wholeMm, heightMm: picture.heightMm }]
}

function made(picture: ReturnType<typeof drawPicture>): Picture | null {
  return 'fault' in picture ? null : picture
}

interface StepArrivals {
  readonly step: Step
  readonly number: number
  /** The side that lies up by then: as the last `turn` before it says. */
  readonly up: Direction
  /** Bodies that are there before. */
  readonly present: readonly number[]
  readonly comes: readonly Arrival[]
}

/** What comes in step by step, in the order taken; steps that bring nothing with a mesh are left out. */
function arrivals({ plan, order, meshes }: Drawn): readonly StepArrivals[] {
  const steps = new Map(plan.steps.map((step) => [step.id, step]))
  const present = [...meshes.there]
  let up: Direction = upright
  return order.flatMap((id, i) => {
    const moves = meshes.moves.filter((move) => move.step === id)
    const step = steps.get(id)
    if (step?.turn) up = attitudeOf(step.turn)
    if (!step || moves.length === 0) return []
    const before = [...present]
    const comes = arrivalsOf(moves, step, before)
    present.push(...moves.flatMap(({ bodies }) => bodies))
    return [{ step, number: i + 1, up, present: before, comes }]
  })
}

/** What is put comes in first, past what was there; then each fastener, past what is put as well. */
function arrivalsOf(moves: readonly MeshMove[], step: Step, before: readonly number[]): readonly Arrival[] {
  const put = moves.filter(({ role }) => role === 'put')
  const there = new Set([...before, ...put.flatMap(({ bodies }) => bodies)])
  const fasteners = moves
    .filter(({ role }) => role === 'fastener')
    .map((move) => ({ move, from: wayIn(move, step, there) }))
  const alike = [...new Set(fasteners.map(({ from }) => from))]
  const present = new Set(before)
  // Copies come in alike where they can.
  const used = [...alike]
  const parts = put.map((move): Arrival => {
    const way = wayIn(move, step, present, used)
    const from = present.size > 0 ? drawable(move, step, way, present) : null
    for (const body of move.bodies) present.add(body)
    used.push(way)
    return { bodies: move.bodies, from }
  })
  return [
    ...parts,
    ...fasteners.map(({ move, from }) => ({ bodies: move.bodies, from: drawable(move, step, from, there) })),
  ]
}

/** The way, unless something is in it: then what is typed is drawn, and else nothing, rather than a way that is none. */
function drawable(
  move: MeshMove,
  step: Step,
  from: Direction,
  present: ReadonlySet<number>,
): Direction | null {
  if (!move.stops[from]!.some(({ body }) => present.has(body))) return from
  return move.role === 'put' ? sideOf(step.from) : null
}

function partOf({ shapes }: Drawn, body: number): PicturePart {
  return { shape: shapes[body]!, way: null, goesIn: false }
}

/**
 * Each arrival as parts that move as one, numbered on from `ground`, which is there. One goes along with the arrival
 * before it that it rests on.
 */
function comingParts(
  { shapes, solids, tilted }: Drawn,
  comes: readonly (Arrival & { readonly number?: number })[],
  ground: readonly number[],
  goesIn: boolean,
): readonly PicturePart[] {
  const numbers = new Map<number, number>()
  const there = [...ground]
  let next = ground.length
  return comes.flatMap(({ bodies, from, number = null }) => {
    const leader = next
    next += bodies.length
    const seat = from === null ? null : contactSpots(bodies.map(solids), there.map(solids), from, tilted)
    const along = seat ? (numbers.get(there[seat.on]!) ?? null) : null
    for (const body of bodies) numbers.set(body, leader)
    there.push(...bodies)
    return bodies.map((body, i): PicturePart => {
      const way = from === null ? null : { from: vectorOf(from, tilted), along, seats: seat?.points ?? [] }
      const own = numbered({ shape: shapes[body]!, way, goesIn }, number)
      return i === 0 ? own : { ...own, fixedTo: leader }
    })
  })
}

function numbered(part: PicturePart, label: number | null): PicturePart {
  return label === null ? part : { ...part, label }
}
