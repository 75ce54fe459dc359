import type { ModelObject, ModelText, Transform, Used } from './read-model-text.ts'
import { isUsable } from './stl-fault.ts'
import type { ThreeMfBounds, ThreeMfFault } from './three-mf-fault.ts'

/** An object that a body lies in; two uses of one object are two instances. */
export interface Holder {
  readonly name: string | null
  readonly instance: number
}

/** Triangles of one object in its place, in millimetres. */
export interface NamedBody {
  /** The object itself, then what it lies in, outward. */
  readonly holders: readonly Holder[]
  readonly corners: Float64Array
}

/** Components nested deeper than this are taken for a ring. */
const deepest = 32

/** Every mesh of a model as often as it is used, in its place; a component is placed in its object, that in the build. */
export function flattenModel(model: ModelText, bounds: ThreeMfBounds): readonly NamedBody[] | ThreeMfFault {
  const bodies: NamedBody[] = []
  const state = { instances: 0, triangles: 0 }
  const use = (
    { id, transform }: Used,
    around: readonly Transform[],
    holders: readonly Holder[],
  ): ThreeMfFault | null => {
    const object = model.objects.get(id)
    if (!object) return { fault: 'unknown object', id }
    if (holders.length >= deepest) return { fault: 'in itself', id }
    const placed = transform ? [transform, ...around] : around
    const within = [{ name: object.name, instance: state.instances++ }, ...holders]
    state.triangles += object.triangles.length / 3
    if (state.triangles > bounds.mostTriangles || state.instances > bounds.mostTriangles)
      return { fault: 'too many triangles', most: bounds.mostTriangles }
    if (object.triangles.length > 0) {
      const corners = cornersOf(object, placed, model.millimetres)
      if (!corners.every(isUsable)) return { fault: 'bad number', what: 'transform', found: id, line: 1 }
      bodies.push({ holders: within, corners })
    }
    return firstFault(object.components, (one) => use(one, placed, within))
  }
  // A file that builds nothing is taken as all its objects that are no component.
  const components = new Set([...model.objects.values()].flatMap((one) => one.components.map(({ id }) => id)))
  const loose = [...model.objects.keys()].filter((id) => !components.has(id))
  const items = model.items.length > 0 ? model.items : loose.map((id): Used => ({ id, transform: null }))
  const fault = firstFault(items, (one) => use(one, [], []))
  if (fault) return fault
  return bodies.length > 0 ? bodies : { fault: 'no triangles' }
}

function firstFault<T>(all: readonly T[], look: (one: T) => ThreeMfFault | null): ThreeMfFault | null {
  for (const one of all) {
    const fault = look(one)
    if (fault) return fault
  }
  return null
}

function cornersOf(object: ModelObject, transforms: readonly Transform[], millimetres: number): Float64Array {
  const { vertices, triangles } = object
  const placed = Float64Array.from(vertices)
  for (const t of transforms) {
    for (let o = 0; o < placed.length; o += 3) {
      const [x, y, z] = [placed[o]!, placed[o + 1]!, placed[o + 2]!]
      for (let k = 0; k < 3; k++) placed[o + k] = x * t[k]! + y * t[3 + k]! + z * t[6 + k]! + t[9 + k]!
    }
  }
  const corners = new Float64Array(3 * triangles.length)
  for (const [k, corner] of triangles.entries())
    for (let i = 0; i < 3; i++) corners[3 * k + i] = millimetres * placed[3 * corner + i]!
  return corners
}
