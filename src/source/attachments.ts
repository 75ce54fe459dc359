import { dirname, resolve } from 'node:path'
import { src } from '../diagnostics/catalogue/src.ts'
import type {
  ChoicePartSource,
  DeviceSource,
  MachinedWaySource,
  PartSource,
  PlacementsSource,
} from './generated/project-types.ts'
import { type Budget, bytesOf, type NamedFor, type Reading, realPath, shownName } from './read-bytes.ts'
import { isAbsolutePath } from './root.ts'
import { entries, field, isMapSpot, type Spot } from './spot.ts'

/** A file that a part names: a mesh, or a list of placements. */
export interface Attached {
  readonly shown: string
  readonly bytes: Uint8Array
}

/** Bounds on meshes and lists. */
const bounds = { fileBytes: 64_000_000, allBytes: 256_000_000 } as const

/** Keys behind which a part names a file, and for what. */
const keys = { model: 'mesh', placements: 'table' } as const

interface Named {
  readonly spot: Spot<string>
  readonly namedFor: NamedFor
}

type Naming = Pick<MachinedWaySource, 'model'> & { readonly placements?: string | PlacementsSource }

/**
 * The files that parts and the device name, by the name as written, each read once; whatever is wrong is reported where it is named.
 * Needs: `path` is the absolute path of the project file, from whose folder names count.
 */
export function readAttachments(
  parts: ReadonlyMap<string, Spot<PartSource>>,
  device: Spot<DeviceSource> | null,
  { shown, path }: { readonly shown: string; readonly path: string },
  reading: Reading,
): ReadonlyMap<string, Attached> {
  const budget: Budget = { ...reading, bounds, bytes: 0 }
  const read = new Map<string, Attached | null>()
  const assembled = device ? field(device, 'assembled') : null
  const named = [...parts.values()].flatMap(waysOf).flatMap(namedIn)
  const whole: readonly Named[] = assembled ? [{ spot: assembled, namedFor: 'device' }] : []
  for (const { spot, namedFor } of [...named, ...whole]) {
    const written = spot.text.trim()
    if (read.has(written)) continue
    if (isAbsolutePath(written)) {
      reading.report(src.useAbsolute, spot.at, { file: written, namedFor })
      read.set(written, null)
      continue
    }
    const use = {
      shown: shownName(shown, written),
      path: realPath(reading.disk, resolve(dirname(path), written)),
      at: spot.at,
      namedFor,
    }
    const bytes = bytesOf(budget, use)
    read.set(written, bytes ? { shown: use.shown, bytes } : null)
  }
  return new Map([...read].flatMap(([name, file]) => (file ? [[name, file] as const] : [])))
}

/** A list longer than this is not shown beside a message. */
const longestShown = 2_000_000

/** The attached files that are texts, by name as shown, for the line at fault beside a message. */
export function textsOf(attached: ReadonlyMap<string, Attached>): ReadonlyMap<string, string> {
  const texts = [...attached.values()].filter(
    ({ bytes }) => bytes.length <= longestShown && !bytes.includes(0),
  )
  return new Map(texts.map(({ shown, bytes }) => [shown, new TextDecoder().decode(bytes)]))
}

function waysOf(part: Spot<PartSource>): readonly Spot<Naming>[] {
  const choices = field(part as Spot<ChoicePartSource>, 'choices')
  return choices ? entries(choices).map(([, way]) => way as Spot<Naming>) : [part as Spot<Naming>]
}

function namedIn(way: Spot<Naming>): readonly Named[] {
  return (['model', 'placements'] as const).flatMap((key) => {
    const named = field(way, key)
    const spot = named && isMapSpot(named) ? field(named as Spot<PlacementsSource>, 'file') : named
    return spot ? [{ spot: spot as Spot<string>, namedFor: keys[key] }] : []
  })
}
