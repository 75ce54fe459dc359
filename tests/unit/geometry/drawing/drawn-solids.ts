/** Solids for pictures, made of triangles by hand, and ways to spoil them. */
import { seededRandom } from '../../../../src/base/random.ts'
import type { DrawnMesh } from '../../../../src/geometry/drawing/drawn-mesh.ts'
import { projectionOf, wholeFrame } from '../../../../src/geometry/drawing/frame-picture.ts'
import { pictureLines } from '../../../../src/geometry/drawing/picture-lines.ts'
import type { PicturePart } from '../../../../src/geometry/drawing/picture-part.ts'
import { posedParts } from '../../../../src/geometry/drawing/picture-part.ts'
import { shapeOf } from '../../../../src/geometry/drawing/shape.ts'
import { axesOf, type View } from '../../../../src/geometry/drawing/view.ts'

type Xyz = readonly [number, number, number]
type Xy = readonly [number, number]

function meshOf(points: readonly Xyz[], triangles: readonly Xyz[]): DrawnMesh {
  return { positions: Float32Array.from(points.flat()), triangles: Uint32Array.from(triangles.flat()) }
}

/** A box from one corner to another; each face cut into `cuts` x `cuts` squares of two triangles. */
export function boxMesh(low: Xyz, high: Xyz, cuts = 1): DrawnMesh {
  const points: Xyz[] = []
  const triangles: Xyz[] = []
  for (const axis of [0, 1, 2] as const)
    for (const end of [0, 1]) {
      const [u, v] = [(axis + 1) % 3, (axis + 2) % 3] as const
      const first = points.length
      for (let i = 0; i <= cuts; i++)
        for (let j = 0; j <= cuts; j++) {
          const point: [number, number, number] = [0, 0, 0]
          point[axis] = end === 0 ? low[axis] : high[axis]
          point[u] = low[u]! + (i / cuts) * (high[u]! - low[u]!)
          point[v] = low[v]! + (j / cuts) * (high[v]! - low[v]!)
          points.push(point)
        }
      for (let i = 0; i < cuts; i++)
        for (let j = 0; j < cuts; j++) {
          const [a, b] = [first + i * (cuts + 1) + j, first + (i + 1) * (cuts + 1) + j]
          const both: Xyz[] = [
            [a, b, b + 1],
            [a, b + 1, a + 1],
          ]
          for (const [p, q, r] of both) triangles.push(end === 1 ? [p, q, r] : [p, r, q])
        }
    }
  return meshOf(points, triangles)
}

/** A body turned about z: `outline` of radius and height, closed by itself; points on the axis close it too. */
export function turnedMesh(
  outline: readonly Xy[],
  facets: number,
  at: Xyz = [0, 0, 0],
  phase = 0,
): DrawnMesh {
  const points: Xyz[] = outline.flatMap(([radius, height]) =>
    Array.from({ length: facets }, (_, i): Xyz => {
      const angle = (2 * Math.PI * (i + phase)) / facets
      const r = radius === 0 ? 0 : radius
      return [at[0] + r * Math.cos(angle), at[1] + r * Math.sin(angle), at[2] + height]
    }),
  )
  const triangles: Xyz[] = outline.flatMap((_, ring) => {
    const next = (ring + 1) % outline.length
    return Array.from({ length: facets }, (__, i): readonly Xyz[] => {
      const j = (i + 1) % facets
      const [a, b, c, d] = [ring * facets + i, ring * facets + j, next * facets + i, next * facets + j]
      return [
        [a, b, d],
        [a, d, c],
      ]
    }).flat()
  })
  return meshOf(points, triangles)
}

/** A cylinder standing on `at`. */
export function cylinderMesh(
  radius: number,
  height: number,
  facets: number,
  at: Xyz = [0, 0, 0],
  phase = 0,
): DrawnMesh {
  const outline: readonly Xy[] = [
    [0, 0],
    [radius, 0],
    [radius, height],
    [0, height],
  ]
  return turnedMesh(outline, facets, at, phase)
}

/** A tube standing on `at`. */
export function tubeMesh(
  inner: number,
  outer: number,
  height: number,
  facets: number,
  at: Xyz = [0, 0, 0],
): DrawnMesh {
  const outline: readonly Xy[] = [
    [inner, 0],
    [outer, 0],
    [outer, height],
    [inner, height],
  ]
  return turnedMesh(outline, facets, at)
}

/** A ball about `at`. */
export function ballMesh(radius: number, facets: number, at: Xyz = [0, 0, 0]): DrawnMesh {
  const rings = facets / 2
  const outline = Array.from({ length: rings + 1 }, (_, i): Xy => {
    const angle = (Math.PI * i) / rings
    const across = i === 0 || i === rings ? 0 : radius * Math.sin(angle)
    return [across, -radius * Math.cos(angle)]
  })
  return turnedMesh(outline, facets, at)
}

/** The same triangles in another order, each begun at another corner, some turned over. */
export function shuffled({ positions, triangles }: DrawnMesh, seed: number, turnOver = true): DrawnMesh {
  const random = seededRandom(seed)
  const list = Array.from({ length: triangles.length / 3 }, (_, i) => [
    ...triangles.subarray(3 * i, 3 * i + 3),
  ])
  for (let i = list.length - 1; i > 0; i--) {
    const j = Math.floor(random.next() * (i + 1))
    ;[list[i], list[j]] = [list[j]!, list[i]!]
  }
  const turned = list.map((corners) => {
    const start = Math.floor(random.next() * 3)
    const [a, b, c] = [corners[start]!, corners[(start + 1) % 3]!, corners[(start + 2) % 3]!]
    return turnOver && random.next() < 0.3 ? [a, c, b] : [a, b, c]
  })
  return { positions, triangles: Uint32Array.from(turned.flat()) }
}

/** A part that is there. */
export function there(mesh: DrawnMesh): PicturePart {
  return { shape: shapeOf(mesh), way: null, goesIn: false }
}

/** A part that goes in, coming from a direction. */
export function coming(mesh: DrawnMesh, from: Xyz, seats: readonly Xyz[] = []): PicturePart {
  return { shape: shapeOf(mesh), way: { from, along: null, seats }, goesIn: true }
}

/** What is seen of parts from a view, in cells of a picture of 60 mm, and the cells of one millimetre. */
export function seenFrom(parts: readonly PicturePart[], view: View, across = 960) {
  const posed = posedParts(parts)
  const axes = axesOf(view)
  const projection = projectionOf(posed, axes, wholeFrame(posed, axes, 60), across)
  return { ...pictureLines(posed, projection), projection }
}

/** Length of a line given as x and y in turn. */
export function lengthOf(points: readonly number[]): number {
  let sum = 0
  for (let i = 2; i < points.length; i += 2)
    sum += Math.hypot(points[i]! - points[i - 2]!, points[i + 1]! - points[i - 1]!)
  return sum
}
