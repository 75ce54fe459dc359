/**
 * Spindle speed in rpm for a cutting speed at a diameter: n = 1000 v_c / (pi D). Source: makers' catalogues,
 * milling formulas.
 */
export function rpmAt(speedMPerMin: number, diameterMm: number): number {
  return (1000 * speedMPerMin) / (Math.PI * diameterMm)
}

/**
 * Cutting speed in m/min of a diameter at a spindle speed: v_c = pi D n / 1000. Source: makers' catalogues,
 * milling formulas.
 */
export function speedAt(rpm: number, diameterMm: number): number {
  return (Math.PI * diameterMm * rpm) / 1000
}

/**
 * Share of the tooth feed that the thickest chip reaches: sqrt(1 - (1 - 2 a_e/D)^2) below half the diameter, else 1.
 * Source: geometry of a straight tooth; a public page gives 0.6 at a_e/D = 0.1.
 */
export function thinning(stepMm: number, diameterMm: number): number {
  const share = Math.min(stepMm / diameterMm, 1)
  // 1 - (1 - 2 s)^2 is 4 s (1 - s), which keeps its digits where the step is small.
  return share >= 0.5 ? 1 : 2 * Math.sqrt(share * (1 - share))
}

/** Angle in radians over which a tooth cuts, cutting at the side: arccos(1 - 2 a_e/D). Source: geometry. */
export function sideArc(stepMm: number, diameterMm: number): number {
  // The same angle by its half, which keeps its digits where the step is small.
  return 2 * Math.asin(Math.sqrt(Math.min(1, stepMm / diameterMm)))
}

/** Angle in radians over which a tooth cuts, cutter centred over the width: 2 arcsin(w/D). Source: geometry. */
export function centredArc(widthMm: number, diameterMm: number): number {
  return 2 * Math.asin(Math.min(1, widthMm / diameterMm))
}

/**
 * Mean chip of a straight tooth in mm: h_m = 2 f_z a_e / (D phi). Needs: arc above 0. Source: milling
 * formulas, exact form.
 */
export function meanChip(chipLoadMm: number, stepMm: number, diameterMm: number, arcRad: number): number {
  return (2 * chipLoadMm * Math.min(stepMm, diameterMm)) / (diameterMm * arcRad)
}

/**
 * Specific cutting force in N/mm2: k_c = k_c1.1 h^(-m_c), rake 0. Source: Kienzle's law, as makers' knowledge
 * pages give it.
 */
export function specificForce(kc11NPerMm2: number, mc: number, chipMm: number): number {
  return kc11NPerMm2 * chipMm ** -mc
}

/**
 * Power at the cut in W of a removal rate: P = Q k_c / 60e3 with Q in mm3/min. Source: milling formulas, P =
 * a_p a_e v_f k_c / 60e6 kW.
 */
export function powerOf(removalMm3PerMin: number, forceNPerMm2: number): number {
  return (removalMm3PerMin * forceNPerMm2) / 60_000
}

/** Torque in N m of a power at a spindle speed: M = 9549 P / n with P in kW. Source: mechanics, 60000 / (2 pi). */
export function torqueOf(powerW: number, rpm: number): number {
  return (60 * powerW) / (2 * Math.PI * rpm)
}

/**
 * Length in mm of the point of a drill: 0.5 D tan(90 - theta/2). Source: Groover, drilling time (blind hole to
 * full diameter).
 */
export function pointAllowance(diameterMm: number, pointAngleDeg: number): number {
  return 0.5 * diameterMm * Math.tan(((90 - pointAngleDeg / 2) * Math.PI) / 180)
}

/** Run-in in mm of a cutter that cuts at its side: sqrt(d (D - d)). Source: Groover, peripheral milling time. */
export function sideApproach(stepMm: number, diameterMm: number): number {
  return Math.sqrt(Math.max(0, stepMm * (diameterMm - stepMm)))
}

/**
 * Run-in in mm of a face cutter centred over a width: 0.5 (D - sqrt(D^2 - w^2)). Source: Groover, face milling
 * time.
 */
export function faceApproach(widthMm: number, diameterMm: number): number {
  return 0.5 * (diameterMm - Math.sqrt(Math.max(0, diameterMm ** 2 - widthMm ** 2)))
}

/**
 * Height in mm of the ridge a ball leaves on a flat: R - sqrt(R^2 - (s/2)^2). Needs: s at most 2 R. Source:
 * geometry.
 */
export function scallopHeight(radiusMm: number, stepMm: number): number {
  const half = Math.min(stepMm / 2, radiusMm)
  // The plain difference loses its digits where the step is small.
  return half ** 2 / (radiusMm + Math.sqrt(radiusMm ** 2 - half ** 2))
}

/** Step-over in mm for a wanted ridge: 2 sqrt(2 R h - h^2). Needs: h at most R. Source: geometry. */
export function stepForScallop(radiusMm: number, scallopMm: number): number {
  const height = Math.min(scallopMm, radiusMm)
  return 2 * Math.sqrt(2 * radiusMm * height - height ** 2)
}

/** Height in mm of turned ridges, in theory: R_t = f^2 / (8 r). Source: geometry of a round nose. */
export function turnedRidge(feedMmPerRev: number, noseRadiusMm: number): number {
  return feedMmPerRev ** 2 / (8 * noseRadiusMm)
}

/** Length in mm of one turn of a helix about a circle: sqrt((pi d)^2 + P^2). Source: geometry. */
export function helixTurn(circleMm: number, pitchMm: number): number {
  return Math.hypot(Math.PI * circleMm, pitchMm)
}

/**
 * How many cuts of at most a part take a whole off; one at least, and none for the last binary digit. Source:
 * counting.
 */
export function howMany(whole: number, part: number): number {
  return Math.max(1, Math.ceil(whole / part - 1e-9))
}
