import { decodeXml } from './decode-xml.ts'
import { flattenModel, type NamedBody } from './flatten-model.ts'
import type { ModelText, Totals } from './model-text.ts'
import { openZip, type Zip } from './open-zip.ts'
import { packagePath } from './package-path.ts'
import { readModelText } from './read-model-text.ts'
import { scanTags } from './scan-tags.ts'
import { type ThreeMfBounds, type ThreeMfFault, usualThreeMfBounds } from './three-mf-fault.ts'
import { weldNear } from './weld-near.ts'

/**
 * The bodies of a 3MF file in their places, each with the names of the objects it lies in, in millimetres.
 * Source: 3MF core specification 1.4.0 (package, unit, objects, components, transforms, build items); 3MF production
 * extension 1.1.2 (`path`: objects in other models of the package).
 * Needs: bounds on what is unpacked and built. Gives: at least one body, or why there is none.
 */
export function readThreeMf(
  bytes: Uint8Array,
  bounds: ThreeMfBounds = usualThreeMfBounds,
): readonly NamedBody[] | ThreeMfFault {
  const zip = openZip(bytes, bounds.mostUnpackedBytes)
  if (!zip) return { fault: 'not a zip' }
  const names = new Map(zip.names.map((name) => [packagePath(name), name]))
  const modelAt = modelReader(zip, names, bounds)
  const start = startOf(zip, names)
  if (start === null) return { fault: 'no model' }
  if (typeof start !== 'string') return start
  const main = modelAt(start)
  const bodies = 'fault' in main ? main : flattenModel({ main, other: modelAt }, bounds)
  if ('fault' in bodies) return bodies
  return bodies.map((body) => ({ ...body, ...weldNear({ corners: body.corners }) }))
}

/** Reads models of the package by path, each once. */
function modelReader(zip: Zip, names: ReadonlyMap<string, string>, bounds: ThreeMfBounds) {
  const known = new Map<string, ModelText | ThreeMfFault>()
  const totals: Totals = { triangles: 0, vertices: 0 }
  const read = (path: string): ModelText | ThreeMfFault => {
    const name = names.get(path)
    if (name === undefined) return { fault: 'missing file', path }
    const text = textOf(zip, name)
    return typeof text === 'string' ? readModelText(text, name, bounds, totals) : text
  }
  return (path: string): ModelText | ThreeMfFault => {
    const model = known.get(path) ?? read(path)
    known.set(path, model)
    return model
  }
}

function textOf(zip: Zip, name: string): string | ThreeMfFault {
  const bytes = zip.unpack(name)
  if ('fault' in bytes) return bytes
  const text = decodeXml(bytes)
  return typeof text === 'string' ? text : { fault: 'other encoding', path: name, encoding: text.encoding }
}

const modelType = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel'

/** The model that the relationships of the package name, else the usual one, else the only one. */
function startOf(zip: Zip, names: ReadonlyMap<string, string>): string | ThreeMfFault | null {
  const relations = names.get('_rels/.rels')
  const text = relations === undefined ? '' : textOf(zip, relations)
  if (typeof text !== 'string') return text
  const named: string[] = []
  // A list of relationships that is broken names what stands before the break.
  scanTags(text, ({ attributes }) => {
    const target = attributes.get('Target')
    if (attributes.get('Type') === modelType && target) named.push(packagePath(target))
    return true
  })
  const models = [...names.keys()].filter((path) => path.endsWith('.model'))
  const only = models.length === 1 ? models : []
  return [...named, '3d/3dmodel.model', ...only].find((path) => names.has(path)) ?? null
}
