import type { Mesh, Point } from './mesh.ts'

/** Where a mesh stands: turned about its own origin, first about x, then y, then z of the device, then moved. */
export interface MeshPlace {
  readonly atMm: Point
  readonly turnDegrees: Point
}

/** A mesh saved where it belongs. */
export const unmoved: MeshPlace = { atMm: [0, 0, 0], turnDegrees: [0, 0, 0] }

/** The corners of a mesh in its place, in single precision. */
export function placeMesh({ corners }: Mesh, { atMm, turnDegrees }: MeshPlace): Float32Array {
  const [[cx, sx], [cy, sy], [cz, sz]] = turnDegrees.map(quarterExact) as [Turn, Turn, Turn]
  const placed = new Float32Array(corners.length)
  for (let o = 0; o < corners.length; o += 3) {
    const [x, y, z] = [corners[o]!, corners[o + 1]!, corners[o + 2]!]
    const [y1, z1] = [cx * y - sx * z, sx * y + cx * z]
    const [x2, z2] = [cy * x + sy * z1, cy * z1 - sy * x]
    placed[o] = cz * x2 - sz * y1 + atMm[0]
    placed[o + 1] = sz * x2 + cz * y1 + atMm[1]
    placed[o + 2] = z2 + atMm[2]
  }
  return placed
}

type Turn = readonly [cosine: number, sine: number]

/** Cosine and sine, exact for quarter turns, so that faces that lie flush stay flush. */
function quarterExact(degrees: number): Turn {
  const quarters = degrees / 90
  if (Number.isInteger(quarters)) {
    const turn: readonly Turn[] = [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ]
    return turn[((quarters % 4) + 4) % 4]!
  }
  const angle = (degrees * Math.PI) / 180
  return [Math.cos(angle), Math.sin(angle)]
}
