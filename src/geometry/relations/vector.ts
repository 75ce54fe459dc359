/** A direction in space. */
export type Vector = readonly [x: number, y: number, z: number]

/** The vector at right angles to two others. */
export function cross([ax, ay, az]: Vector, [bx, by, bz]: Vector): Vector {
  return [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx]
}

/** A vector at length 1. Needs: not all zero. */
export function unit([x, y, z]: Vector): Vector {
  const length = Math.hypot(x, y, z)
  return [x / length, y / length, z / length]
}

/** The cosine of the angle between two directions. */
export function dot([ax, ay, az]: Vector, [bx, by, bz]: Vector): number {
  return ax * bx + ay * by + az * bz
}
