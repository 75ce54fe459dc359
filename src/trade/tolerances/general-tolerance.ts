/** Classes of general tolerances: fine, medium, coarse, very coarse. */
export type GeneralClass = 'f' | 'm' | 'c' | 'v'

/** The classes, finest first. */
export const generalClasses: readonly GeneralClass[] = ['f', 'm', 'c', 'v']

const lengthEnds = [3, 6, 30, 120, 400, 1000, 2000, 4000] as const

/** Source: ISO 2768-1:1989 table 1, read in two reproductions; c up to 6 mm in one of them. */
const lengths: Readonly<Record<GeneralClass, readonly (number | null)[]>> = {
  f: [0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, null],
  m: [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2],
  c: [0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4],
  v: [null, 0.5, 1, 1.5, 2.5, 4, 6, 8],
}

/** Source: ISO 2768-1:1989 table 2, read in a reproduction. */
const radii: Readonly<Record<GeneralClass, readonly number[]>> = {
  f: [0.2, 0.5, 1],
  m: [0.2, 0.5, 1],
  c: [0.4, 1, 2],
  v: [0.4, 1, 2],
}

const legEnds = [10, 50, 120, 400] as const

/** Minutes of arc. Source: ISO 2768-1:1989 table 3, read in a reproduction. */
const angles: Readonly<Record<GeneralClass, readonly number[]>> = {
  f: [60, 30, 20, 10, 5],
  m: [60, 30, 20, 10, 5],
  c: [90, 60, 30, 15, 10],
  v: [180, 120, 60, 30, 20],
}

/**
 * Plus-minus tolerance in millimetres of a length, width or diameter without its own; `null` below 0.5 mm (state it at
 * the size), above 4000 mm, and where the class has none.
 * Source: ISO 2768-1 table 1.
 */
export function generalLengthMm(chosen: GeneralClass, nominalMm: number): number | null {
  if (!(nominalMm >= 0.5)) return null
  const step = lengthEnds.findIndex((end) => nominalMm <= end)
  return step < 0 ? null : (lengths[chosen][step] ?? null)
}

/**
 * Plus-minus tolerance in millimetres of an outer radius or chamfer; `null` below 0.5 mm. Source: ISO 2768-1 table
 * 2.
 */
export function generalRadiusMm(chosen: GeneralClass, nominalMm: number): number | null {
  if (!(nominalMm >= 0.5 && Number.isFinite(nominalMm))) return null
  return radii[chosen][nominalMm <= 3 ? 0 : nominalMm <= 6 ? 1 : 2]!
}

/**
 * Plus-minus tolerance in degrees of an angle, by the length of its shorter leg; `null` for no length.
 * Source: ISO 2768-1 table 3.
 */
export function generalAngleDegrees(chosen: GeneralClass, shorterLegMm: number): number | null {
  if (!(shorterLegMm > 0 && Number.isFinite(shorterLegMm))) return null
  const step = legEnds.findIndex((end) => shorterLegMm <= end)
  return angles[chosen][step < 0 ? legEnds.length : step]! / 60
}

/** The class a drawing note such as `ISO 2768-m`, `ISO 2768-mK` or `m` names, or `null`. */
export function readGeneralClass(text: string): GeneralClass | null {
  const found = /^(?:(?:DIN )?ISO ?2768(?:-1)? ?[- ] ?)?([fmcv])(?:-?[HKL])?$/i.exec(text.trim())
  return found ? (found[1]!.toLowerCase() as GeneralClass) : null
}
