import type { ModelObject, ModelText, Used } from './model-text.ts'
import { isUsable } from './stl-fault.ts'
import type { ThreeMfBounds, ThreeMfFault } from './three-mf-fault.ts'
import { kindOfTransform, movePoints, type Transform } from './transform.ts'

/** An object that a body lies in; two uses of one object are two instances. */
export interface Holder {
  readonly id: string
  readonly name: string | null
  readonly instance: number
}

/** Triangles of one object in its place, in millimetres. */
export interface NamedBody {
  /** The object itself, then what it lies in, outward. */
  readonly holders: readonly Holder[]
  readonly corners: Float64Array
}

/** The models of a package: the one that is built, and the others as they are asked for. */
export interface Models {
  readonly main: ModelText
  readonly other: (path: string) => ModelText | ThreeMfFault
}

/** Components nested deeper than this are taken for a ring. */
const deepest = 32

/**
 * Every mesh of a model as often as it is used, in its place; a component is placed in its object, that in the build.
 * What a mirroring transform turns over is turned back, so that faces look outward as in the object itself.
 */
export function flattenModel(models: Models, bounds: ThreeMfBounds): readonly NamedBody[] | ThreeMfFault {
  const bodies: NamedBody[] = []
  const state = { instances: 0, triangles: 0 }
  const use = (
    used: Used,
    from: ModelText,
    around: readonly Transform[],
    holders: readonly Holder[],
  ): ThreeMfFault | null => {
    const { id, path, transform } = used
    const model = path === null ? from : models.other(path)
    if ('fault' in model) return model
    const object = model.objects.get(id)
    if (!object) return { fault: 'unknown object', id }
    if (holders.length >= deepest) return { fault: 'in itself', id }
    if (!object.counts) return null
    if (object.triangles.length + object.components.length === 0) return { fault: 'empty object', id }
    const placed = transform ? [transform, ...around] : around
    const name = object.name ?? used.partNumber ?? object.partNumber
    const within = [{ id, name, instance: state.instances++ }, ...holders]
    state.triangles += object.triangles.length / 3
    const most = beyond(state, bounds)
    if (most) return most
    if (object.triangles.length > 0) {
      const corners = cornersOf(object, placed)
      if (!corners) return { fault: 'too far', id }
      bodies.push({ holders: within, corners })
    }
    return firstFault(object.components, (one) => use(one, model, placed, within))
  }
  const fault = firstFault(builtOf(models.main), (one) => use(one, models.main, [], []))
  if (fault) return fault
  return bodies.length > 0 ? bodies : { fault: 'no triangles' }
}

function beyond(
  { instances, triangles }: { readonly instances: number; readonly triangles: number },
  { mostTriangles, mostBodies }: ThreeMfBounds,
): ThreeMfFault | null {
  if (triangles > mostTriangles) return { fault: 'too many triangles', most: mostTriangles }
  return instances > mostBodies ? { fault: 'too many bodies', most: mostBodies } : null
}

/** What is built. A file that builds nothing is taken as all its objects that are no component. */
function builtOf({ items, objects }: ModelText): readonly Used[] {
  if (items.length > 0) return items
  const components = new Set<string>()
  for (const object of objects.values())
    for (const { id, path } of object.components) if (path === null) components.add(id)
  return [...objects.keys()]
    .filter((id) => !components.has(id))
    .map((id) => ({ id, path: null, transform: null, partNumber: null }))
}

function firstFault<T>(all: readonly T[], look: (one: T) => ThreeMfFault | null): ThreeMfFault | null {
  for (const one of all) {
    const fault = look(one)
    if (fault) return fault
  }
  return null
}

/** Nine numbers a triangle; `null` where one lies too far off to be used. */
function cornersOf(
  { vertices, triangles }: ModelObject,
  transforms: readonly Transform[],
): Float64Array | null {
  const placed = Float64Array.from(vertices)
  for (const transform of transforms) movePoints(placed, transform)
  if (!placed.every(isUsable)) return null
  const mirrors = transforms.filter((transform) => kindOfTransform(transform) === 'mirrors').length
  const order = mirrors % 2 === 1 ? [0, 2, 1] : [0, 1, 2]
  const corners = new Float64Array(3 * triangles.length)
  let at = 0
  for (let triangle = 0; triangle < triangles.length; triangle += 3)
    for (const k of order) {
      const from = 3 * triangles[triangle + k]!
      for (let i = 0; i < 3; i++) corners[at++] = placed[from + i]!
    }
  return corners
}
