import type { Place } from '../../base/place.ts'
import type { Machine, Material, Part, Plate, PrintedWay, Project } from '../../model/project.ts'

/** A printed part with its way at hand. */
export interface PrintedPart {
  readonly part: Part
  readonly way: PrintedWay
}

/** A part as it goes on a plate: how it stands there, and what it is of. */
export interface Standing extends PrintedPart {
  readonly pieces: number
  /** `null`: not known. */
  readonly heightMm: number | null
  readonly footprintMm: readonly [number, number] | null
}

/** What a print job needs to be worked out: its printer and material, and what it is called. */
export interface Bench {
  readonly at: Place
  /** `plate p1` or `shroud`, in backticks. */
  readonly says: string
  readonly machine: Machine
  readonly material: Material | null
}

/** Printer and material of a part: those of its plate where it is on one. `null`: the printer is not known. */
export function benchOf(
  { part, way }: PrintedPart,
  { plates, machines, materials }: Pick<Project, 'plates' | 'machines' | 'materials'>,
): Bench | null {
  const plate: Plate | undefined = way.plate === null ? undefined : plates.get(way.plate)
  const machine = machines.get(plate?.job.machine ?? way.job.machine ?? '')
  if (!machine) return null
  const material = materials.get(way.job.material ?? plate?.job.material ?? '') ?? null
  return plate
    ? { at: plate.at, says: `plate \`${plate.id}\``, machine, material }
    : { at: part.at, says: `\`${part.id}\``, machine, material }
}

/** How a part stands on its plate: as said, else as its finished box lies. */
export function standingOf({ part, way }: PrintedPart, pieces: number): Standing {
  const box = way.finished?.box?.map(({ value }) => value.valueOf()) ?? null
  const footprint = way.said.footprint?.map(({ value }) => value.valueOf())
  return {
    part,
    way,
    pieces,
    heightMm: way.said.height?.value.valueOf() ?? box?.[2] ?? null,
    footprintMm: footprint ? [footprint[0]!, footprint[1]!] : box ? [box[0]!, box[1]!] : null,
  }
}

/** A number that the printer is said to have, in mm and seconds; `null` where silent. */
export function printerNumber(machine: Machine, key: string): number | null {
  return machine.numbers.get(key)?.value.valueOf() ?? null
}
