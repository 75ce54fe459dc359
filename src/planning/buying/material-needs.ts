import Fraction from 'fraction.js'
import type { MachinedWay, Material, MaterialForm, Part, PrintedWay, Project } from '../../model/project.ts'
import type { Missing } from '../../model/purchase.ts'
import { byName, started } from './started.ts'

/** So many pieces of a part, cut from one form: a length of bar, a rectangle of plate or block. Millimetres. */
export interface CutNeed {
  readonly part: string
  readonly count: number
  readonly material: Material
  readonly form: MaterialForm
  /** With what facing takes off. */
  readonly length: Fraction
  /** `null`: a length of bar. */
  readonly width: Fraction | null
  readonly kerf: Fraction
}

/** So many pieces of a part, each taking so much of a material out of bottles, spools or bags. */
export interface AmountNeed {
  readonly part: string
  readonly count: number
  readonly material: Material
  /** Of one piece: mm3, or g where the stock was stated by mass. */
  readonly amount: Fraction
  readonly measure: 'volume' | 'mass'
}

/** What the made parts take of the materials, and which of them cannot be said. */
export interface MaterialNeeds {
  readonly cuts: readonly CutNeed[]
  readonly amounts: readonly AmountNeed[]
  readonly missing: readonly Missing[]
}

type Need = CutNeed | AmountNeed | Missing['why'] | null

/** Every made part's need of material, fixtures included, by part name. */
export function materialNeeds(project: Project): MaterialNeeds {
  const needs = byName(project.parts)
    .filter((part) => started(project, part) > 0)
    .map((part) => ({ part, need: needOf(project, part) }))
  const told = needs.map(({ need }) => need).filter((need) => need !== null && typeof need !== 'string')
  return {
    cuts: told.filter((need) => 'form' in need),
    amounts: told.filter((need) => 'amount' in need),
    missing: needs.flatMap(({ part, need }) =>
      typeof need === 'string' ? [missingMaterial(part, need, started(project, part))] : [],
    ),
  }
}

/** A material that cannot be planned for a part. */
export function missingMaterial(part: Part, why: Missing['why'], pieces: number): Missing {
  const id = `${part.id} / material`
  return {
    id,
    title: id,
    at: part.at,
    why,
    kind: 'material',
    parts: [{ part: part.id, weight: new Fraction(pieces) }],
  }
}

function needOf(project: Project, part: Part): Need {
  if (part.way.kind === 'machined') return machinedNeed(project, part, part.way)
  if (part.way.kind === 'printed') return printedNeed(project, part, part.way)
  return null
}

function machinedNeed(project: Project, part: Part, way: MachinedWay): Need {
  if (!way.stock) return 'no stock'
  if (way.stock.offers.length > 0) return null
  const material = way.material === null ? undefined : project.materials.get(way.material)
  if (!material) return 'no form'
  const { size } = way.stock
  const common = { part: part.id, count: started(project, part), material }
  if (size.shape === 'volume') return { ...common, amount: size.volume.value, measure: 'volume' }
  if (size.shape === 'mass') return { ...common, amount: size.mass.value, measure: 'mass' }
  const form = material.forms.find(({ id }) => id === way.stock!.form)
  if (!form || (form.size.shape === 'bar') !== (size.shape === 'bar')) return 'no form'
  const width = size.shape === 'bar' ? null : size.width.value
  const length = size.length.value.add(way.stock.facing?.value ?? 0)
  return { ...common, form, length, width, kerf: way.stock.kerf.value }
}

function printedNeed(project: Project, part: Part, way: PrintedWay): Need {
  const plate = way.plate === null ? undefined : project.plates.get(way.plate)
  const name = way.job.material ?? plate?.job.material ?? null
  const material = name === null ? undefined : project.materials.get(name)
  if (!material) return 'no form'
  if (!way.volume) return 'no volume'
  return {
    part: part.id,
    count: started(project, part),
    material,
    amount: way.volume.value,
    measure: 'volume',
  }
}
