import { drawPicture, type Picture, scaleOfAll, usualPicture } from '../../geometry/drawing/draw-picture.ts'
import type { DrawingFault, DrawnMesh } from '../../geometry/drawing/drawn-mesh.ts'
import type { PicturePart } from '../../geometry/drawing/picture-part.ts'
import { type Shape, shapeOf, whyNotDrawn } from '../../geometry/drawing/shape.ts'
import type { View } from '../../geometry/drawing/view.ts'
import type { Point } from '../../geometry/mesh.ts'
import { vectorOf } from '../../geometry/relations/directions.ts'
import type { AssemblyOrder, AssemblyPlan, Step } from '../../model/assembly.ts'
import { plansAsBuilt } from '../../model/assembly-plans.ts'
import type { FromMeshes, MeshMove, PlanMeshes } from '../../model/from-meshes.ts'
import type { LineDrawing, Pictures, StepPicture } from '../../model/pictures.ts'
import type { Project } from '../../model/project.ts'
import { layOutBodies } from '../from-meshes/lay-out-bodies.ts'
import { wayIn } from './way-in.ts'

/** Side of the picture of a whole, in millimetres: the width of a page between its rims. */
const wholeMm = 160

/** One assembly with its order and its meshes. */
interface Drawn {
  readonly plan: AssemblyPlan
  readonly order: readonly string[]
  readonly meshes: PlanMeshes
  readonly tilted: FromMeshes['tilted']
  readonly shapes: readonly Shape[]
}

/** What goes in as one, with where it comes from. */
interface Arrival {
  readonly bodies: readonly number[]
  /** `null`: nothing was there before, so it just stands there. */
  readonly from: Point | null
}

/** What is wanted besides a picture of each step as large as it fits. */
export interface WantedPictures {
  readonly oneScale?: boolean
  /** Whether the device is drawn taken apart; so where not said. */
  readonly whole?: boolean
}

/**
 * A picture of every step that puts something of which there is a mesh, and one of the device taken apart.
 * Needs: `meshes` of this project. With `oneScale` the pictures of an assembly have one scale, but for those from near. Gives: no step without order. Cost: O(triangles) a picture.
 */
export function drawPictures(
  project: Project,
  orders: ReadonlyMap<string, AssemblyOrder>,
  meshes: FromMeshes,
  { oneScale = false, whole = true }: WantedPictures = {},
): Pictures {
  const solids = layOutBodies(project).corners.map(looseMesh)
  const fault = whyNotDrawn(solids)
  if (fault) return { steps: [], whole: null, beyond: beyondOf(fault), without: [] }
  const shapes = solids.map(shapeOf)
  const drawn = plansAsBuilt(project).flatMap((plan): readonly Drawn[] => {
    const [order, own] = [orders.get(plan.of ?? '')?.order, meshes.plans.get(plan.of ?? '')]
    return order && own ? [{ plan, order, meshes: own, tilted: meshes.tilted, shapes }] : []
  })
  const device = drawn.find(({ plan }) => plan.of === null)
  return {
    steps: drawn.flatMap((one) => stepPictures(one, oneScale)),
    whole: device && whole ? wholePicture(device, project.device.name) : null,
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

function stepPictures(drawn: Drawn, oneScale: boolean): readonly StepPicture[] {
  const shown = arrivals(drawn).map(({ step, number, present, comes }) => {
    const there = present.map((body) => partOf(drawn, body))
    return { step, number, parts: [...there, ...comingParts(drawn, comes, there.length, true)] }
  })
  const { sizeMm } = usualPicture
  const scale = oneScale
    ? scaleOfAll(
        shown.map(({ parts }) => parts),
        sizeMm,
      )
    : null
  let kept: View | null = null
  return shown.flatMap(({ step, number, parts }) => {
    const picture = made(drawPicture(parts, { ...usualPicture, title: step.id, kept, scale }))
    if (!picture) return []
    kept = picture.view
    const { svg, heightMm } = picture
    return [{ of: drawn.plan.of, step: step.id, number, svg, sizeMm, heightMm }]
  })
}

function wholePicture(drawn: Drawn, title: string): LineDrawing | null {
  const there = drawn.meshes.there.map((body) => partOf(drawn, body))
  const comes = arrivals(drawn).flatMap((step) => step.comes)
  if (there.length + comes.length < 2) return null
  // What is put first of all stays where it is: the rest is taken off it.
  const first = there.length > 0 ? [] : comes.slice(0, 1).flatMap(({ bodies }) => bodies)
  const ground = [...there, ...first.map((body) => partOf(drawn, body))]
  const rest = comingParts(drawn, comes.slice(first.length > 0 ? 1 : 0), ground.length, false)
  const picture = made(drawPicture([...ground, ...rest], { ...usualPicture, sizeMm: wholeMm, title }))
  return picture && { svg: picture.svg, sizeMm: wholeMm, heightMm: picture.heightMm }
}

function made(picture: ReturnType<typeof drawPicture>): Picture | null {
  return 'fault' in picture ? null : picture
}

interface StepArrivals {
  readonly step: Step
  readonly number: number
  /** Bodies that are there before. */
  readonly present: readonly number[]
  readonly comes: readonly Arrival[]
}

/** What comes in step by step, in the order taken; steps that bring nothing with a mesh are left out. */
function arrivals({ plan, order, meshes, tilted }: Drawn): readonly StepArrivals[] {
  const steps = new Map(plan.steps.map((step) => [step.id, step]))
  const present = [...meshes.there]
  return order.flatMap((id, i) => {
    const moves = meshes.moves.filter((move) => move.step === id)
    const step = steps.get(id)
    if (!step || moves.length === 0) return []
    const before = [...present]
    const comes = arrivalsOf(moves, step, before, tilted)
    present.push(...moves.flatMap(({ bodies }) => bodies))
    return [{ step, number: i + 1, present: before, comes }]
  })
}

/** What is put comes in first, past what was there; then each fastener, past what is put as well. */
function arrivalsOf(
  moves: readonly MeshMove[],
  step: Step,
  before: readonly number[],
  tilted: FromMeshes['tilted'],
): readonly Arrival[] {
  const put = moves.filter(({ role }) => role === 'put')
  const there = new Set([...before, ...put.flatMap(({ bodies }) => bodies)])
  const fasteners = moves
    .filter(({ role }) => role === 'fastener')
    .map((move) => ({ move, from: wayIn(move, step, there) }))
  const alike = [...new Set(fasteners.map(({ from }) => from))]
  const present = new Set(before)
  const parts = put.map((move): Arrival => {
    const from = present.size > 0 ? vectorOf(wayIn(move, step, present, alike), tilted) : null
    for (const body of move.bodies) present.add(body)
    return { bodies: move.bodies, from }
  })
  return [
    ...parts,
    ...fasteners.map(({ move, from }) => ({ bodies: move.bodies, from: vectorOf(from, tilted) })),
  ]
}

function partOf({ shapes }: Drawn, body: number): PicturePart {
  return { shape: shapes[body]!, way: null, goesIn: false }
}

/** Each arrival as parts that move as one, numbered on from `first`. */
function comingParts(
  { shapes }: Drawn,
  comes: readonly Arrival[],
  first: number,
  goesIn: boolean,
): readonly PicturePart[] {
  let next = first
  return comes.flatMap(({ bodies, from }) => {
    const leader = next
    next += bodies.length
    return bodies.map((body, i): PicturePart => {
      const way = from && { from, travelMm: null, along: null }
      const own = { shape: shapes[body]!, way, goesIn }
      return i === 0 ? own : { ...own, fixedTo: leader }
    })
  })
}
