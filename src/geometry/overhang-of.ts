import { exactSum } from './exact-sum.ts'
import { boxOf } from './measure-mesh.ts'
import { crossOf, type Mesh } from './mesh.ts'

/** What hangs over nothing when a mesh is printed as it stands, z upward. */
export interface Overhang {
  /** Area of the faces that need support, seen from above. */
  readonly areaMm2: number
  /** Room below those faces down to the lowest point: the most that upright supports can fill. */
  readonly columnMm3: number
  readonly worked: readonly string[]
}

/** Faces this near the lowest point lie on the plate, in millimetres. Common practice, no source. */
const onPlateMm = 0.05

/**
 * The faces that look down more than an angle from the vertical allows, and the room below them.
 * Needs: `degreesFromVertical` of 0 to 90; a filament print takes 45 to 50 (four public design tables).
 * Gives: the room counts what lies between, also where the part itself stands below: an upper bound.
 */
export function overhangOf(mesh: Mesh, degreesFromVertical: number): Overhang | null {
  if (!(degreesFromVertical >= 0 && degreesFromVertical <= 90)) return null
  const { corners } = mesh
  const ground = boxOf(mesh).lowMm[2]
  const steepest = Math.sin((degreesFromVertical * Math.PI) / 180)
  const [area, column] = [exactSum(), exactSum()]
  for (let triangle = 0; 9 * triangle < corners.length; triangle++) {
    const [x, y, z] = crossOf(corners, triangle)
    const height =
      (corners[9 * triangle + 2]! + corners[9 * triangle + 5]! + corners[9 * triangle + 8]!) / 3 - ground
    // A wall leaning out by the angle has a normal that dips by the same angle: on the limit it still prints.
    if (-z <= steepest * Math.hypot(x, y, z) * (1 + 1e-9) || height <= onPlateMm) continue
    area.add(-z / 2)
    column.add((-z / 2) * height)
  }
  const [areaMm2, columnMm3] = [area.total(), column.total()]
  return {
    areaMm2,
    columnMm3,
    worked: [
      `faces past ${degreesFromVertical} deg from the vertical: ${areaMm2.toPrecision(4)} mm2 seen from above`,
      `room below them to the plate = sum of area x height = ${columnMm3.toPrecision(4)} mm3`,
    ],
  }
}
