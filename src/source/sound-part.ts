import type { Place } from '../base/place.ts'
import type { ProjectSource } from './generated/project-types.ts'
import { entries, field, isMapSpot, placeOf, type Spot, withValue } from './spot.ts'

/** An entry that is at fault in its shape and was put aside: its name is still known. */
export interface Aside {
  readonly section: string
  readonly name: string
  readonly at: Place
}

/** What of a project can still be read where some of it has not the shape of one. */
export interface SoundPart {
  readonly project: Spot<ProjectSource>
  readonly aside: readonly Aside[]
}

const sections = [
  'people',
  'machines',
  'tools',
  'cutters',
  'materials',
  'vendors',
  'plates',
  'work',
  'parts',
  'exchange',
]
const others = ['device', 'limits', 'assembly', 'chains']

/**
 * The project without the entries in which a fault lies, so that what is wrong elsewhere is told in the same run.
 * `null` where the device itself is at fault, or nothing can be said. Entries on one line with a faulted one go too.
 */
export function soundPart(root: Spot<unknown>, faults: readonly Place[]): SoundPart | null {
  if (!isMapSpot(root)) return null
  const top = root as Spot<Record<string, unknown>>
  const here = faults.filter(({ file }) => file === root.at.file)
  const aside: Aside[] = []
  const kept: Record<string, unknown> = {}
  for (const key of [...others, ...sections]) {
    const spot = field(top, key)
    if (!spot) continue
    if (!sections.includes(key)) {
      if (faulted(spot, here)) aside.push({ section: key, name: key, at: spot.keyAt })
      else kept[key] = spot.value
    } else if (isMapSpot(spot))
      kept[key] = soundEntries(key, spot as Spot<Record<string, unknown>>, here, aside)
  }
  if (!('device' in kept)) return null
  return { project: withValue(root, kept as unknown as ProjectSource), aside }
}

function soundEntries(
  section: string,
  spot: Spot<Record<string, unknown>>,
  faults: readonly Place[],
  aside: Aside[],
): Record<string, unknown> {
  const sound: Record<string, unknown> = Object.create(null)
  for (const [name, entry] of entries(spot)) {
    if (faulted(entry, faults)) aside.push({ section, name, at: entry.keyAt })
    else sound[name] = entry.value
  }
  // A key with nothing behind it is no entry, yet its name is meant.
  for (const name of Object.keys(spot.value)) {
    if (spot.value[name] === null) aside.push({ section, name, at: spot.at })
  }
  return sound
}

function faulted(spot: Spot<unknown>, faults: readonly Place[]): boolean {
  const last = lastLine(spot)
  return faults.some(({ line }) => spot.keyAt.line <= line && line <= last)
}

/** The line of the last character, blank lines behind it not counted. */
function lastLine({ page, node, at }: Spot<unknown>): number {
  const range = node?.range
  if (!page || !range) return at.line
  const end = range[0] + page.text.slice(range[0], range[1]).trimEnd().length
  return Math.max(placeOf(page, node).line, page.lines.linePos(Math.max(range[0], end - 1)).line)
}
