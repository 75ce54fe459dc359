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
  /** A whole section is no map of entries, so that none of its names is known. */
  readonly broken: boolean
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
const others = ['limits', 'assembly', 'chains']
/** What stands for a faulted or missing key of the device; nothing that is told of other entries hangs on these. */
const standIns = { name: 'device', start: '2000-01-01' }

/**
 * The project without the entries in which a fault lies, so that what is wrong elsewhere is told in the same run.
 * `null` where the device has no sound currency, or nothing can be said. Entries on one line with a faulted one go too.
 */
export function soundPart(root: Spot<unknown>, faults: readonly Place[]): SoundPart | null {
  if (!isMapSpot(root)) return null
  const top = root as Spot<Record<string, unknown>>
  const here = faults.filter(({ file }) => file === root.at.file)
  const aside: Aside[] = []
  let broken = false
  const device = soundDevice(field(top, 'device'), here)
  if (!device) return null
  const kept: Record<string, unknown> = { device }
  for (const key of [...others, ...sections]) {
    const spot = field(top, key)
    if (!spot) continue
    if (!sections.includes(key)) {
      if (faulted(spot, here)) aside.push({ section: key, name: key, at: spot.keyAt })
      else kept[key] = spot.value
    } else if (isMapSpot(spot))
      kept[key] = soundEntries(key, spot as Spot<Record<string, unknown>>, here, aside)
    else broken = true
  }
  return { project: withValue(root, kept as unknown as ProjectSource), aside, broken }
}

/** The device without the keys at fault; `null` without a currency, as no price could be read then. */
function soundDevice(
  spot: Spot<unknown> | null,
  faults: readonly Place[],
): Readonly<Record<string, unknown>> | null {
  if (!spot || !isMapSpot(spot)) return null
  const keys = entries(spot as Spot<Record<string, unknown>>)
  const sound = keys.filter(([, value]) => !faults.some((fault) => within(value, fault)))
  const device = Object.fromEntries(sound.map(([key, value]) => [key, value.value]))
  return typeof device.currency === 'string' ? { ...standIns, ...device } : null
}

/** Whether a place lies on a key or on the value behind it, where both stand on one line. */
function within({ keyAt, at }: Spot<unknown>, { line, column }: Place): boolean {
  return line === keyAt.line && column >= keyAt.column && column <= at.column + at.length
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
