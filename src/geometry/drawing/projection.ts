import type { Point } from '../mesh.ts'
import type { ViewAxes } from './view.ts'

/**
 * From the device to the cells of a picture: x to the right, y downward, z towards the looker, all to one scale, so
 * that a cell is as deep as it is wide.
 */
export interface Projection {
  readonly axes: ViewAxes
  /** Cells for each millimetre of the device. */
  readonly cellsPerMm: number
  /** The point of the device that lies in the middle of the picture, at depth 0. */
  readonly middle: Point
  /** Cells of the picture across and down. */
  readonly across: number
}

/** Where points lie in a picture: x, y and depth of each, in cells. */
export interface Projected {
  readonly x: Float32Array
  readonly y: Float32Array
  readonly z: Float32Array
}

/** Where one point of the device lies in the picture: x, y and depth in cells. */
export function projectPoint({ axes, cellsPerMm, middle, across }: Projection, point: Point): Point {
  const [x, y, z] = [point[0] - middle[0], point[1] - middle[1], point[2] - middle[2]]
  const along = ([ax, ay, az]: Point): number => cellsPerMm * (ax * x + ay * y + az * z)
  return [across / 2 + along(axes.right), across / 2 - along(axes.up), along(axes.near)]
}

/** Where the points of a part lie in the picture, the part moved by `moved` millimetres. Cost: O(points). */
export function projectPoints(projection: Projection, points: Float32Array, moved: Point): Projected {
  const { axes, cellsPerMm: s } = projection
  const [right, up, near] = [axes.right, axes.up, axes.near]
  const [ox, oy, oz] = projectPoint(projection, moved)
  const count = points.length / 3
  const [x, y, z] = [new Float32Array(count), new Float32Array(count), new Float32Array(count)]
  const [rx, ry, rz] = [s * right[0], s * right[1], s * right[2]]
  const [ux, uy, uz] = [s * up[0], s * up[1], s * up[2]]
  const [nx, ny, nz] = [s * near[0], s * near[1], s * near[2]]
  for (let i = 0, at = 0; i < count; i++, at += 3) {
    const px = points[at]!
    const py = points[at + 1]!
    const pz = points[at + 2]!
    x[i] = ox + rx * px + ry * py + rz * pz
    y[i] = oy - ux * px - uy * py - uz * pz
    z[i] = oz + nx * px + ny * py + nz * pz
  }
  return { x, y, z }
}
