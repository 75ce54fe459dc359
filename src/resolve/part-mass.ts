import type { Material, Part } from '../model/project.ts'
import { findMaterial } from '../trade/materials/find-material.ts'
import { materialSources } from '../trade/materials/material.ts'
import { plainFigure, workedQuantity } from './worked-quantity.ts'

/** Density of a material in g/cm3 with where it is from: as stated, else that of the tables; `null`: not known. */
export function densityOf(
  material: Material | null,
): { readonly gPerCm3: number; readonly from: string } | null {
  if (!material) return null
  if (material.density)
    return { gPerCm3: material.density.value.valueOf() * 1000, from: `as stated for ${material.id}` }
  const found = material.like === null ? null : findMaterial(material.like)
  if (!found || 'fault' in found) return null
  const { value, source } = found.densityGPerCm3
  return { gPerCm3: value, from: `${material.like}, ${materialSources[source]}` }
}

/**
 * The mass of a part that states none: its volume times the density of its material, with the sum. `volumeMm3` is
 * what there is of it, which of a part printed with infill is less than its outside. As it was where either is unknown.
 */
export function withMass(part: Part, material: Material | null, volumeMm3: number | null): Part {
  const density = densityOf(material)
  if (part.mass || !density || volumeMm3 === null) return part
  const grams = (volumeMm3 * density.gPerCm3) / 1000
  if (!(grams > 0 && grams < 1e12)) return part
  const volume = `${plainFigure(volumeMm3 / 1000)} cm3`
  return {
    ...part,
    mass: workedQuantity(grams, 'mass'),
    massWorked: [
      `mass = ${volume} x ${plainFigure(density.gPerCm3)} g/cm3 (${density.from}) = ${plainFigure(grams)} g`,
    ],
  }
}
