import type { View } from '../../../../src/geometry/drawing/view.ts'

/** The view whose three axes come out equally long. Source: isometric projection, ISO 5456-3, from memory. */
export const isometricView: View = {
  turnDegrees: -45,
  heightDegrees: (Math.asin(1 / Math.sqrt(3)) * 180) / Math.PI,
}
