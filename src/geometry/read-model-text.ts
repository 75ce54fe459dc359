import { scanTags, type Tag } from './scan-tags.ts'
import { isUsable } from './stl-fault.ts'
import type { ThreeMfBounds, ThreeMfFault } from './three-mf-fault.ts'

/** Twelve numbers, row by row: the turn and scale, then the way moved. */
export type Transform = readonly number[]

/** An object used in a place. */
export interface Used {
  readonly id: string
  readonly transform: Transform | null
}

/** An object of a model: triangles, or other objects in their places. */
export interface ModelObject {
  readonly name: string | null
  /** x, y, z of each corner, and three corners a triangle. */
  readonly vertices: readonly number[]
  readonly triangles: readonly number[]
  readonly components: readonly Used[]
}

/** A model as written. */
export interface ModelText {
  readonly millimetres: number
  readonly objects: ReadonlyMap<string, ModelObject>
  readonly items: readonly Used[]
}

/** Millimetres of each unit. Source: 3MF core specification 1.4.0, 3.4.1. */
const units: Readonly<Record<string, number>> = {
  micron: 0.001,
  millimeter: 1,
  centimeter: 10,
  inch: 25.4,
  foot: 304.8,
  meter: 1000,
}

interface Growing {
  readonly name: string | null
  readonly vertices: number[]
  readonly triangles: number[]
  readonly components: Used[]
}

/** The objects, their places and the unit of the model text of a 3MF file. Cost: O(characters). */
export function readModelText(text: string, bounds: ThreeMfBounds): ModelText | ThreeMfFault {
  const objects = new Map<string, Growing>()
  const items: Used[] = []
  const state = {
    object: null as Growing | null,
    millimetres: 1,
    triangles: 0,
    fault: null as ThreeMfFault | null,
  }
  const bad = (tag: Tag, what: string): null => {
    const line = text.slice(0, tag.at).split('\n').length
    state.fault ??= { fault: 'bad number', what, found: tag.attributes.get(what) ?? '', line }
    return null
  }
  const number = (tag: Tag, key: string): number | null => {
    const written = tag.attributes.get(key)
    const value = written === undefined || written.trim() === '' ? Number.NaN : Number(written)
    return isUsable(value) ? value : bad(tag, key)
  }
  const used = (tag: Tag): Used | null => {
    const path = [...tag.attributes].find(([key]) => key.endsWith(':path'))?.[1]
    if (path !== undefined) state.fault ??= { fault: 'several files', path }
    const written = tag.attributes.get('transform')
    const transform = written?.trim().split(/\s+/).map(Number) ?? null
    if (transform && (transform.length !== 12 || !transform.every(isUsable))) return bad(tag, 'transform')
    return { id: tag.attributes.get('objectid') ?? '', transform }
  }
  const starts: Readonly<Record<string, (tag: Tag) => void>> = {
    model: ({ attributes }) => {
      const unit = attributes.get('unit') ?? 'millimeter'
      state.millimetres = units[unit] ?? 1
      if (!units[unit]) state.fault ??= { fault: 'unknown unit', unit }
    },
    object: ({ attributes }) => {
      state.object = {
        name: attributes.get('name')?.trim() || null,
        vertices: [],
        triangles: [],
        components: [],
      }
      objects.set(attributes.get('id') ?? '', state.object)
    },
    vertex: (tag) => {
      for (const key of ['x', 'y', 'z']) state.object?.vertices.push(number(tag, key) ?? 0)
    },
    triangle: (tag) => {
      if (++state.triangles > bounds.mostTriangles)
        state.fault ??= { fault: 'too many triangles', most: bounds.mostTriangles }
      if (state.fault) return
      for (const key of ['v1', 'v2', 'v3']) {
        const corner = number(tag, key) ?? 0
        if (!Number.isInteger(corner) || corner < 0 || 3 * corner >= (state.object?.vertices.length ?? 0))
          bad(tag, key)
        state.object?.triangles.push(corner)
      }
    },
    component: (tag) => {
      const one = used(tag)
      if (one) state.object?.components.push(one)
    },
    item: (tag) => {
      const one = used(tag)
      if (one) items.push(one)
    },
  }
  scanTags(
    text,
    (tag) => {
      if (!state.fault && Object.hasOwn(starts, tag.name)) starts[tag.name]!(tag)
    },
    () => {},
  )
  return state.fault ?? { millimetres: state.millimetres, objects, items }
}
