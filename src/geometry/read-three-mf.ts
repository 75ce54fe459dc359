import { strFromU8, unzipSync } from 'fflate'
import { flattenModel, type NamedBody } from './flatten-model.ts'
import { readModelText } from './read-model-text.ts'
import { scanTags } from './scan-tags.ts'
import { type ThreeMfBounds, type ThreeMfFault, usualThreeMfBounds } from './three-mf-fault.ts'
import { weldNear } from './weld-near.ts'

/**
 * The bodies of a 3MF file in their places, each with the names of the objects it lies in, in millimetres.
 * Source: 3MF core specification 1.4.0 (package, unit, objects, components, transforms, build items).
 * Needs: bounds on the unpacked size and the triangles. Gives: at least one body, or why there is none.
 */
export function readThreeMf(
  bytes: Uint8Array,
  bounds: ThreeMfBounds = usualThreeMfBounds,
): readonly NamedBody[] | ThreeMfFault {
  const files = unpack(bytes, bounds)
  if ('fault' in files) return files
  const path = modelPath(files.of)
  const model = path === null ? undefined : files.of[path]
  if (!model) return { fault: 'no model' }
  const read = readModelText(new TextDecoder().decode(model), bounds)
  const bodies = 'fault' in read ? read : flattenModel(read, bounds)
  if ('fault' in bodies) return bodies
  return bodies.map((body) => ({ ...body, ...weldNear({ corners: body.corners }) }))
}

function unpack(
  bytes: Uint8Array,
  { mostUnpackedBytes }: ThreeMfBounds,
): { readonly of: Readonly<Record<string, Uint8Array>> } | ThreeMfFault {
  const sizes = { sum: 0 }
  try {
    const of = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        if (!/\.(?:model|rels)$/i.test(name)) return false
        sizes.sum += originalSize
        return sizes.sum <= mostUnpackedBytes
      },
    })
    return sizes.sum > mostUnpackedBytes
      ? { fault: 'too large', bytes: sizes.sum, most: mostUnpackedBytes }
      : { of }
  } catch {
    return { fault: 'not a zip' }
  }
}

const modelType = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel'

/** The model that the relationships of the package name, else the usual one. */
function modelPath(files: Readonly<Record<string, Uint8Array>>): string | null {
  const rels = files['_rels/.rels']
  const named: string[] = []
  if (rels)
    scanTags(
      strFromU8(rels),
      ({ attributes }) => {
        const target = attributes.get('Target')
        if (attributes.get('Type') === modelType && target) named.push(target.replace(/^\//, ''))
      },
      () => {},
    )
  return [...named, '3D/3dmodel.model'].find((path) => files[path]) ?? null
}
