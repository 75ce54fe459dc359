import { src } from '../diagnostics/catalogue/src.ts'
import type { Report } from '../diagnostics/message.ts'
import type {
  CutterSource,
  MachineSource,
  MaterialSource,
  PartSource,
  PersonSource,
  PlateSource,
  ProjectSource,
  ShopSource,
  ToolSource,
  VendorSource,
  WorkSource,
} from './generated/project-types.ts'
import { entries, field, type Spot } from './spot.ts'

/** Named entries of one section, the shops' and the project's together. */
export type Section<T> = ReadonlyMap<string, Spot<T>>

/** The sections that a project and its shops share. */
export interface Sections {
  readonly people: Section<PersonSource>
  readonly machines: Section<MachineSource>
  readonly tools: Section<ToolSource>
  readonly cutters: Section<CutterSource>
  readonly materials: Section<MaterialSource>
  readonly vendors: Section<VendorSource>
  readonly plates: Section<PlateSource>
  readonly work: Section<WorkSource>
  readonly parts: Section<PartSource>
  readonly exchange: Section<string | number>
}

/**
 * The project's entries over those of the shops. A project entry replaces a shop entry of the same name whole and takes
 * its place; one name in two shops is an error, unless the project says what it is.
 * Gives: shop entries in the order used, then what only the project has.
 */
export function mergeSections(
  project: Spot<ProjectSource>,
  shops: readonly Spot<ShopSource>[],
  report: Report,
): Sections {
  const merged = (section: keyof Sections): ReadonlyMap<string, never> =>
    mergeOne(section, project, shops, report) as ReadonlyMap<string, never>
  return {
    people: merged('people'),
    machines: merged('machines'),
    tools: merged('tools'),
    cutters: merged('cutters'),
    materials: merged('materials'),
    vendors: merged('vendors'),
    plates: merged('plates'),
    work: merged('work'),
    parts: merged('parts'),
    exchange: merged('exchange'),
  }
}

type Named = Readonly<Record<string, unknown>>

function mergeOne(
  section: keyof Sections,
  project: Spot<ProjectSource>,
  shops: readonly Spot<ShopSource>[],
  report: Report,
): ReadonlyMap<string, Spot<unknown>> {
  const own = new Map(sectionOf(project, section))
  const merged = new Map<string, Spot<unknown>>()
  for (const shop of shops) {
    for (const [name, spot] of sectionOf(shop, section)) {
      const first = merged.get(name)
      if (first && !own.has(name))
        report(src.doubledName, spot.keyAt, { first: { id: name, at: first.keyAt }, section })
      if (!first) merged.set(name, own.get(name) ?? spot)
    }
  }
  for (const [name, spot] of own) merged.set(name, spot)
  return merged
}

function sectionOf(
  spot: Spot<ProjectSource | ShopSource>,
  section: keyof Sections,
): readonly (readonly [string, Spot<unknown>])[] {
  const found = field(spot, section) as Spot<Named> | null
  return found ? entries(found) : []
}
