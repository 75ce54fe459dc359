import type { ModelObject, ModelText, Totals, Used } from './model-text.ts'
import { scanTags } from './scan-tags.ts'
import { isUsable } from './stl-fault.ts'
import { lineOf, pathOf, type TagValues, tagValues } from './tag-values.ts'
import type { ThreeMfBounds, ThreeMfFault } from './three-mf-fault.ts'
import type { Tag } from './xml-tag.ts'

const core = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02'
const production = 'http://schemas.microsoft.com/3dmanufacturing/production/2015/06'
/** Extensions that are read, or that change colours and groups alone. */
const understood = new Set([
  core,
  production,
  'http://schemas.microsoft.com/3dmanufacturing/material/2015/02',
  'http://schemas.microsoft.com/3dmanufacturing/trianglesets/2021/07',
])

/** Millimetres of each unit. Source: 3MF core specification 1.4.0, 3.4.1. */
const units: ReadonlyMap<string, number> = new Map([
  ['micron', 0.001],
  ['millimeter', 1],
  ['centimeter', 10],
  ['inch', 25.4],
  ['foot', 304.8],
  ['meter', 1000],
])

/** Objects of these types are no part of the device. Source: 3MF core specification 1.4.0, 4.1, ST_ObjectType. */
const asides = new Set(['support', 'solidsupport', 'other'])

interface Growing extends ModelObject {
  readonly vertices: number[]
  readonly triangles: number[]
  readonly components: Used[]
}

interface State {
  readonly path: string
  readonly values: TagValues
  readonly totals: Totals
  readonly bounds: ThreeMfBounds
  readonly objects: Map<string, Growing>
  readonly items: Used[]
  /** Namespace of the outermost element; `null` before it. */
  space: string | null
  millimetres: number
  object: Growing | null
  fault: ThreeMfFault | null
}

/**
 * The objects and build items of one model of a package, in millimetres; `path` is its own within the package.
 * Elements of other namespaces are passed over; what an extension requires that is not understood is a fault.
 * Cost: O(characters).
 */
export function readModelText(
  text: string,
  path: string,
  bounds: ThreeMfBounds,
  totals: Totals,
): ModelText | ThreeMfFault {
  const tell = (fault: ThreeMfFault) => {
    state.fault ??= fault
  }
  const state: State = {
    path,
    values: tagValues(text, path, tell),
    totals,
    bounds,
    objects: new Map(),
    items: [],
    space: null,
    millimetres: 1,
    object: null,
    fault: null,
  }
  const broken = scanTags(text, (tag) => {
    if (state.space === null) openModel(state, tag, tell)
    else if (tag.space === state.space) readers.get(tag.name)?.(state, tag, tell)
    return state.fault === null
  })
  if (broken?.documentType) tell({ fault: 'document type', path })
  if (broken) tell({ fault: 'not XML', path, line: lineOf(text, broken.at), what: broken.what })
  if (state.fault) return state.fault
  return {
    objects: new Map([...state.objects].map(([id, object]) => [id, withoutUnused(object)])),
    items: state.items,
  }
}

type Tell = (fault: ThreeMfFault) => void

/** The outermost element. A model that names no namespace is taken for one of the core. */
function openModel(state: State, { name, space, attributes, spaces }: Tag, tell: Tell): void {
  state.space = space
  if (name !== 'model' || (space !== '' && space !== core))
    tell({ fault: 'not a model', path: state.path, root: name })
  for (const prefix of attributes.get('requiredextensions')?.trim().split(/\s+/) ?? []) {
    const extension = spaces.get(prefix) ?? prefix
    if (extension !== '' && !understood.has(extension)) tell({ fault: 'extension', extension })
  }
  const unit = attributes.get('unit') ?? 'millimeter'
  state.millimetres = units.get(unit) ?? 1
  if (!units.has(unit)) tell({ fault: 'unknown unit', unit })
}

const readers: ReadonlyMap<string, (state: State, tag: Tag, tell: Tell) => void> = new Map([
  ['object', readObject],
  ['vertex', readVertex],
  ['triangle', readTriangle],
  ['component', readComponent],
  ['item', readItem],
])

function readObject(state: State, tag: Tag, tell: Tell): void {
  const { attributes, at } = tag
  const id = state.values.text(tag, 'id')
  if (id === null) return
  if (state.objects.has(id))
    tell({ fault: 'doubled object', path: state.path, line: state.values.line(at), id })
  state.object = {
    name: nameIn(tag, 'name'),
    partNumber: nameIn(tag, 'partnumber'),
    counts: !asides.has(attributes.get('type') ?? 'model'),
    vertices: [],
    triangles: [],
    components: [],
  }
  state.objects.set(id, state.object)
}

function readVertex(
  { object, values, millimetres, totals, bounds, path }: State,
  tag: Tag,
  tell: Tell,
): void {
  if (++totals.vertices > bounds.mostVertices) tell({ fault: 'too many vertices', most: bounds.mostVertices })
  for (const what of ['x', 'y', 'z']) {
    const coordinate = millimetres * (values.coordinate(tag, what) ?? 0)
    if (!isUsable(coordinate))
      tell({ fault: 'bad number', path, line: values.line(tag.at), what, found: tag.attributes.get(what)! })
    object?.vertices.push(coordinate)
  }
}

function readTriangle({ object, values, totals, bounds }: State, tag: Tag, tell: Tell): void {
  if (++totals.triangles > bounds.mostTriangles)
    tell({ fault: 'too many triangles', most: bounds.mostTriangles })
  const end = (object?.vertices.length ?? 0) / 3
  for (const key of ['v1', 'v2', 'v3']) object?.triangles.push(values.index(tag, key, end) ?? 0)
}

function readComponent({ object, values, millimetres }: State, tag: Tag): void {
  const used = usedBy(values, millimetres, tag)
  if (used) object?.components.push(used)
}

function readItem({ items, values, millimetres }: State, tag: Tag): void {
  const used = usedBy(values, millimetres, tag)
  if (used) items.push(used)
}

function usedBy(values: TagValues, millimetres: number, tag: Tag): Used | null {
  const id = values.text(tag, 'objectid')
  const transform = values.transform(tag, millimetres)
  return id === null
    ? null
    : { id, path: pathOf(tag, production), transform, partNumber: nameIn(tag, 'partnumber') }
}

/** A name in one way of writing its accents; `null` where it is missing or blank. */
function nameIn({ attributes }: Tag, key: string): string | null {
  return attributes.get(key)?.trim().normalize() || null
}

/** The object without corners that no triangle uses, where there are more than triangles could use. */
function withoutUnused(object: Growing): ModelObject {
  const { vertices, triangles } = object
  if (vertices.length <= 3 * triangles.length) return object
  const renumbered = new Map<number, number>()
  const kept: number[] = []
  const renumber = (corner: number): number => {
    const known = renumbered.get(corner)
    if (known !== undefined) return known
    renumbered.set(corner, renumbered.size)
    for (let k = 0; k < 3; k++) kept.push(vertices[3 * corner + k]!)
    return renumbered.size - 1
  }
  return { ...object, triangles: triangles.map(renumber), vertices: kept }
}
