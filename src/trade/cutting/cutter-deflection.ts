import { speedAt } from './formulas.ts'
import type { CutterTool } from './types.ts'

/** Modulus of elasticity of the shank in N/mm2. Source: carbide 580 GPa, HSS 200 GPa, a public deflection page. */
const modulus: Readonly<Record<CutterTool, number>> = { hss: 200_000, carbide: 580_000 }
/**
 * Diameter of the round bar that bends like the cutter, over its diameter. Source: 0.7 to 0.8, a cutter
 * maker's course; 0.8 by a public study.
 */
const barRatio = 0.8
/**
 * Bend in mm that shows in the work. Source: 0.02 mm, least position error of a small mill, common practice,
 * no source.
 */
export const mostBendMm = 0.02

/** A cutter under load. */
export interface BentCutter {
  readonly diameterMm: number
  readonly stickOutMm: number
  readonly tool: CutterTool
  readonly powerW: number
  readonly rpm: number
}

/**
 * How far in mm the tip of an end mill gives way: F l^3 / (3 E I) for a round bar of 0.8 D, with the mean tangential
 * force at the edge, F = P / v_c, taken as the side force.
 * Source: cantilever formula, a cutter maker's course on end mill rigidity; the force is an estimate.
 */
export function cutterDeflection({ diameterMm, stickOutMm, tool, powerW, rpm }: BentCutter): number {
  const forceN = (60 * powerW) / speedAt(rpm, diameterMm)
  const inertia = (Math.PI * (barRatio * diameterMm) ** 4) / 64
  return (forceN * stickOutMm ** 3) / (3 * modulus[tool] * inertia)
}
