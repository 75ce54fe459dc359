import { msh } from '../diagnostics/catalogue/msh.ts'
import { mshFile } from '../diagnostics/catalogue/msh-file.ts'
import type { NamedBody } from '../geometry/flatten-model.ts'
import { measureMesh } from '../geometry/measure-mesh.ts'
import type { Mesh, Point } from '../geometry/mesh.ts'
import { type MeshPlace, placeMesh, unmoved } from '../geometry/place-mesh.ts'
import { readStl } from '../geometry/read-stl.ts'
import { readThreeMf } from '../geometry/read-three-mf.ts'
import type { PlacedMesh } from '../model/mesh.ts'
import type { DeviceSource, MachinedWaySource, MeshPlaceSource } from '../source/generated/project-types.ts'
import type { Source } from '../source/load.ts'
import { field, items, type Spot } from '../source/spot.ts'
import type { Context } from './context.ts'
import { troublesOf } from './mesh-at.ts'
import { wayOf } from './parts.ts'
import { quantityAt } from './reading.ts'

/**
 * The meshes of which it is said where they stand in the device: those with a `place`, and the objects of the
 * `assembled` file. A mesh without a place gives volume and size alone: it may lie as it is printed.
 */
export function placedMeshes(
  context: Context,
  source: Source,
  device: Spot<DeviceSource>,
): readonly PlacedMesh[] {
  const own = [...source.sections.parts].flatMap(([part, spot]) =>
    placesOf(context, part, wayOf(spot) as Spot<MachinedWaySource>),
  )
  const placed = new Set(own.map(({ part }) => part))
  const all = [...own, ...assembledAt(context, source, device).filter(({ part }) => !placed.has(part))]
  return isTooMany(context, all) ? [] : all
}

/** Most bodies in one device that are compared. Common practice, no source. */
const mostBodies = 1000

function isTooMany(context: Context, all: readonly PlacedMesh[]): boolean {
  if (all.length <= mostBodies) return false
  const times = new Map<string, number>()
  for (const { part } of all) times.set(part, (times.get(part) ?? 0) + 1)
  const [part, most] = [...times].reduce((a, b) => (b[1] > a[1] ? b : a))
  const { at } = all.find((one) => one.part === part)!
  context.report(mshFile.tooManyBodies, at, { bodies: all.length, most: mostBodies, part, times: most })
  return true
}

function placesOf(context: Context, part: string, way: Spot<MachinedWaySource>): readonly PlacedMesh[] {
  const place = field(way, 'place')
  if (!place) return []
  const model = field(way, 'model')
  if (!model) {
    context.report(msh.placeOfNothing, place.keyAt, { part })
    return []
  }
  const file = context.attached.get(model.text.trim())
  const mesh = file ? readStl(file.bytes) : null
  // A mesh that cannot be read was told of where its volume is taken.
  if (!mesh || 'fault' in mesh) return []
  const at = place.at
  if (place.value === 'assembled')
    return [{ part, corners: placeMesh(mesh, unmoved), mayHoldCopies: true, at }]
  return items(place as Spot<MeshPlaceSource | MeshPlaceSource[]>).flatMap((one) =>
    placedBy(context, part, mesh, one as Spot<MeshPlaceSource>),
  )
}

function placedBy(
  context: Context,
  part: string,
  mesh: Mesh,
  spot: Spot<MeshPlaceSource>,
): readonly PlacedMesh[] {
  const place: MeshPlace = {
    atMm: threeAt(context, 'at', spot, 'length', 1),
    turnDegrees: threeAt(context, 'turn', spot, 'angle', 360),
  }
  return [{ part, corners: placeMesh(mesh, place), mayHoldCopies: false, at: spot.at }]
}

/** Three quantities, `scale` to the base unit; zero where silent or faulted (reported). */
function threeAt(
  context: Context,
  key: 'at' | 'turn',
  spot: Spot<MeshPlaceSource>,
  wanted: 'length' | 'angle',
  scale: number,
): Point {
  const list = field(spot, key)
  const read = (list ? items(list) : []).map(
    (one) =>
      scale * (quantityAt(context, key, one as Spot<string | number>, wanted, 'any')?.value.valueOf() ?? 0),
  )
  return [read[0] ?? 0, read[1] ?? 0, read[2] ?? 0]
}

function assembledAt(context: Context, source: Source, device: Spot<DeviceSource>): readonly PlacedMesh[] {
  const named = field(device, 'assembled')
  const file = named ? context.attached.get(named.text.trim()) : null
  if (!named || !file) return []
  const bodies = readThreeMf(file.bytes)
  const shown = named.text.trim()
  if ('fault' in bodies) {
    context.report(mshFile.assembledUnread, named.at, { file: shown, why: bodies })
    return []
  }
  const parts = [...source.sections.parts.keys()]
  const { found, strange } = byPart(bodies, new Map(parts.map((part) => [part.normalize(), part])))
  if (strange.length > 0) context.report(msh.noSuchPart, named.at, { file: shown, objects: strange, parts })
  const told = new Set<string>()
  for (const { part, corners } of found) {
    if (told.has(part)) continue
    told.add(part)
    const troubles = troublesOf(measureMesh({ corners: Float64Array.from(corners) }))
    if (troubles.length > 0)
      context.report(msh.objectLeaks, named.at, { file: shown, object: part, found: troubles })
  }
  return found.map((one) => ({ ...one, mayHoldCopies: true, at: named.at }))
}

/** A name without what programs do to it: case, `_` and `-` for spaces. */
const plain = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')

/** The number that programs put behind the name of a copy: `.001`, ` (2)`, `:2`, `#2`, `_2`. */
const copyNumber = /[\s._:#-]*(?:\(\d+\)|[\s._:#-]\d+)$/

/** The part that an object stands for: of that name; else the only one of a name as good as that; `null`: none. */
function partNamed(parts: ReadonlyMap<string, string>): (name: string | null) => string | null {
  const byPlain = new Map<string, string[]>()
  for (const [name, part] of parts) byPlain.set(plain(name), [...(byPlain.get(plain(name)) ?? []), part])
  return (name) => {
    if (name === null) return null
    const found = [name, name.replace(copyNumber, '')].map((one) => {
      const exact = parts.get(one)
      return exact === undefined ? (byPlain.get(plain(one)) ?? []) : [exact]
    })
    const near = found.find((all) => all.length > 0) ?? []
    return near.length === 1 ? near[0]! : null
  }
}

/** Bodies gathered by the nearest object around them that has the name of a part; parts by name in one way of accents. */
function byPart(
  bodies: readonly NamedBody[],
  parts: ReadonlyMap<string, string>,
): { found: readonly { part: string; corners: Float32Array }[]; strange: readonly string[] } {
  const gathered = new Map<number, { part: string; corners: Float64Array[] }>()
  const partOf = partNamed(parts)
  const strange = new Set<string>()
  for (const { holders, corners } of bodies) {
    const isExact = ({ name }: { readonly name: string | null }) => name !== null && parts.has(name)
    const holder = holders.find(isExact) ?? holders.find(({ name }) => partOf(name) !== null)
    if (!holder) {
      strange.add(nameOf(holders))
      continue
    }
    const known = gathered.get(holder.instance) ?? { part: partOf(holder.name)!, corners: [] }
    gathered.set(holder.instance, known)
    known.corners.push(corners)
  }
  const found = [...gathered.values()].map(({ part, corners }) => ({ part, corners: joined(corners) }))
  return { found, strange: [...strange] }
}

/** What an object of no part is called: by its own name, that of the nearest around it, or its number. */
function nameOf(holders: NamedBody['holders']): string {
  const named = holders.find(({ name }) => name !== null)
  return named?.name ?? `object ${holders.at(-1)?.id ?? ''} without a name`
}

function joined(all: readonly Float64Array[]): Float32Array {
  const one = new Float32Array(all.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const corners of all) {
    one.set(corners, at)
    at += corners.length
  }
  return one
}
