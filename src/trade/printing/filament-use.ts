import { firstOutside, type OutOfDomain } from './domain.ts'
import { figure } from './figure.ts'
import { type Assumed, filamentTypical, orUsual, sayAssumed } from './typical.ts'

/** A part as the filament printer lays it down. */
export interface FilamentPart {
  readonly partCm3: number
  readonly surfaceCm2: number
  /** Perimeters x line width; top and bottom layers x layer height where those differ little. */
  readonly wallMm: number
  /** Share of the inside that is filled, 0 to 1. */
  readonly infill: number
  readonly supportCm3: number
  readonly filamentMm: number
  readonly densityGPerCm3: number
}

/** Plastic laid down, and what it takes of the spool. */
export interface FilamentUse {
  readonly shellCm3: number
  readonly depositedCm3: number
  readonly grams: number
  readonly metres: number
  readonly worked: readonly string[]
}

/**
 * Plastic of a filament print by the shell and infill model.
 * Source: V_shell = min(V, A t), V_dep = V_shell + phi (V - V_shell); length by the section of the filament (geometry).
 */
export function filamentUse(part: FilamentPart): FilamentUse | OutOfDomain {
  const outside = firstOutside(part, {
    partCm3: 'above 0',
    surfaceCm2: 'above 0',
    wallMm: '0 or more',
    infill: '0 to 1',
    supportCm3: '0 or more',
    filamentMm: 'above 0',
    densityGPerCm3: 'above 0',
  })
  if (outside) return outside
  const { partCm3, surfaceCm2, wallMm, infill, supportCm3, filamentMm, densityGPerCm3 } = part
  const shellCm3 = Math.min(partCm3, (surfaceCm2 * wallMm) / 10)
  const depositedCm3 = shellCm3 + infill * (partCm3 - shellCm3) + supportCm3
  const grams = depositedCm3 * densityGPerCm3
  const sectionMm2 = (Math.PI * filamentMm ** 2) / 4
  const metres = depositedCm3 / sectionMm2
  const supports = supportCm3 === 0 ? '' : ` + ${figure(supportCm3)} supports`
  return {
    shellCm3,
    depositedCm3,
    grams,
    metres,
    worked: [
      `shell = ${figure(surfaceCm2)} cm2 x ${figure(wallMm)} mm = ${figure(shellCm3)} cm3, at most the part`,
      `plastic = ${figure(shellCm3)} + ${figure(infill)} x (${figure(partCm3)} - ${figure(shellCm3)})${supports} = ` +
        `${figure(depositedCm3)} cm3, ${figure(grams)} g`,
      `filament = ${figure(depositedCm3)} cm3 / ${figure(sectionMm2)} mm2 = ${figure(metres)} m`,
    ],
  }
}

/** Room below overhangs, and how densely supports fill it. `null` takes the usual density. */
export interface FilamentSupport {
  readonly columnCm3: number
  readonly density: number | null
}

/** Plastic of the supports below overhangs. Source: room x density; the density common practice, no source. */
export function filamentSupport(
  support: FilamentSupport,
):
  | { readonly cm3: number; readonly assumed: readonly Assumed[]; readonly worked: readonly string[] }
  | OutOfDomain {
  const outside = firstOutside(support, { columnCm3: '0 or more', density: 'above 0, to 1' })
  if (outside) return outside
  const assumed: Assumed[] = []
  const density = orUsual(support.density, 'density of supports', filamentTypical.supportDensity, assumed)
  const cm3 = support.columnCm3 * density
  const line = `supports = ${figure(support.columnCm3)} cm3 x ${figure(density)} = ${figure(cm3)} cm3`
  return { cm3, assumed, worked: [line, ...sayAssumed(assumed)] }
}
