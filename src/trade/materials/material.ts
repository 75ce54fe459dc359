import type { MaterialGroup } from '../cutting/types.ts'

/** Family of work materials by their main use of cutting grades. Source: ISO 513, from memory. */
export type IsoGroup = 'P' | 'M' | 'K' | 'N' | 'S' | 'H'

/** Where a figure comes from, by the keys of `materialSources`. */
export type SourceKey = keyof typeof materialSources

/** A figure with where it comes from and, where tables differ, from what to what. */
export interface Figure {
  readonly value: number
  readonly source: SourceKey
  readonly range?: readonly [low: number, high: number]
}

/** A material of the workshop at room temperature; `null` where no table at hand gives the figure. */
export interface Material {
  /** Short name, as a bench list has it. */
  readonly key: string
  /** Other designations: standards, numbers, trade words. */
  readonly names: readonly string[]
  readonly densityGPerCm3: Figure
  readonly modulusGPa: Figure | null
  readonly poissonRatio: Figure | null
  /** Growth in millionths per kelvin, 20 to 100 C. */
  readonly expansionPerMK: Figure | null
  readonly conductivityWPerMK: Figure | null
  readonly isoGroup: IsoGroup | null
  readonly group: MaterialGroup | null
  readonly kc11NPerMm2: Figure | null
  readonly mc: Figure | null
  readonly galvanic: GalvanicKey | null
}

/** Documents behind the table. */
export const materialSources = {
  callister: 'Callister, Materials Science and Engineering, Appendix B',
  compilation: 'public compilation of important properties after Callister',
  gears: 'Elements of Metric Gear Technology, table 18-10',
  plastics: 'public plastics property table',
  statics: 'Gere-based table and a statics text, Appendix C',
  titanium: 'Isakov, Tackling Titanium, 2009',
  alloy7075: 'public table, 10.4e6 psi',
  supplier6082: 'a supplier’s data page for EN AW-6082',
  groups: 'material groups to ISO 513 / VDI 3323 of a cutter maker, k_c1 and m_c',
  like: 'as the nearest listed alloy',
  memory: 'from memory',
  seawater: 'corrosion potentials in flowing seawater, Professional Boatbuilder 100, 2006, a public copy',
} as const

/** Metals that lie together in the galvanic series. */
export type GalvanicKey =
  | 'magnesium'
  | 'zinc'
  | 'aluminium'
  | 'steel'
  | 'stainless 304'
  | 'stainless 316'
  | 'brass'
  | 'copper'
  | 'titanium'
