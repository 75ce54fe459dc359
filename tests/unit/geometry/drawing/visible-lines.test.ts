import { describe, expect, it } from 'vitest'
import type { View } from '../../../../src/geometry/drawing/view.ts'
import type { VisibleLine } from '../../../../src/geometry/drawing/visible-lines.ts'
import {
  ballMesh,
  boxMesh,
  cylinderMesh,
  lengthOf,
  seenFrom,
  shuffled,
  there,
  tubeMesh,
  turnedMesh,
} from './drawn-solids.ts'
import { isometricView } from './isometric-view.ts'

const degrees = Math.PI / 180
const sum = (lines: readonly VisibleLine[]): number =>
  lines.reduce((total, { points }) => total + lengthOf(points), 0)
const ofKind = (lines: readonly VisibleLine[], kind: string): readonly VisibleLine[] =>
  lines.filter((line) => line.kind === kind)

/** Perimeter of an ellipse. Source: Ramanujan's second approximation, 1914, from memory; exact to 1e-6 here. */
function ellipse(a: number, b: number): number {
  const h = ((a - b) / (a + b)) ** 2
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)))
}

describe('the lines of a cube in isometric view', () => {
  const { lines, projection } = seenFrom([there(boxMesh([0, 0, 0], [20, 20, 20]))], isometricView)

  it('are nine of its twelve edges: six around it and three inside', () => {
    expect(lines.length).toBe(9)
    expect(ofKind(lines, 'outer').length).toBe(6)
    expect(ofKind(lines, 'inner').length).toBe(3)
  })

  it('are each as long as the edge times the root of two thirds', () => {
    // Foreshortening of isometric projection: ISO 5456-3 gives 0,816, from memory.
    for (const { points } of lines)
      expect(lengthOf(points) / projection.cellsPerMm).toBeCloseTo(20 * Math.sqrt(2 / 3), 3)
  })

  it('are the same where each face is cut into many triangles', () => {
    const fine = seenFrom([there(boxMesh([0, 0, 0], [20, 20, 20], 7))], isometricView)
    expect(fine.lines.length).toBe(9)
    expect(sum(fine.lines)).toBeCloseTo(sum(lines), 1)
  })
})

describe('the lines of a cylinder', () => {
  const view: View = { turnDegrees: 0, heightDegrees: 30 }
  const [radius, height, facets] = [8, 20, 128]
  const { lines, projection } = seenFrom([there(cylinderMesh(radius, height, facets))], view)
  const mm = (cells: number): number => cells / projection.cellsPerMm
  const straight = lines.flatMap(({ points }) =>
    points.flatMap((x, i) => {
      const long = i % 2 === 0 && i + 3 < points.length ? Math.abs(points[i + 3]! - points[i + 1]!) : 0
      return mm(long) > 5 ? [{ x, long: mm(long) }] : []
    }),
  )

  it('are two straight sides, a diameter apart, as long as the height times the cosine of the view', () => {
    expect(straight.length).toBe(2)
    for (const { long } of straight) expect(long).toBeCloseTo(height * Math.cos(30 * degrees), 3)
    expect(mm(Math.abs(straight[0]!.x - straight[1]!.x))).toBeCloseTo(2 * radius, 2)
  })

  it('are the whole ellipse of its top and the front half of its foot', () => {
    const curved = mm(sum(lines)) - 2 * height * Math.cos(30 * degrees)
    const round = ellipse(radius, radius * Math.sin(30 * degrees))
    expect(curved).toBeGreaterThan(1.5 * round * 0.998)
    expect(curved).toBeLessThan(1.5 * round * 1.002)
  })

  it('hold no line of its facets', () => {
    expect(mm(sum(ofKind(lines, 'inner')))).toBeLessThan(0.51 * ellipse(radius, radius / 2))
  })
})

describe('round bodies', () => {
  it('a ball is one circle and nothing inside', () => {
    const { lines, projection } = seenFrom([there(ballMesh(10, 96))], isometricView)
    expect(ofKind(lines, 'inner')).toEqual([])
    const round = sum(lines) / projection.cellsPerMm
    expect(round).toBeGreaterThan(2 * Math.PI * 10 * 0.985)
    expect(round).toBeLessThan(2 * Math.PI * 10 * 1.015)
  })

  it('a body with a gentle wave shows no fold where it hides nothing', () => {
    // Slopes of 20 degrees at most, seen at 31 degrees: the surface never turns away.
    const wave = Array.from({ length: 41 }, (_, i): [number, number] => [i / 2, 0.5 * Math.sin(i / 3)])
    const outline: readonly (readonly [number, number])[] = [[0, -5], ...wave, [20, -5]]
    const { lines, projection } = seenFrom([there(turnedMesh(outline, 96))], {
      turnDegrees: 10,
      heightDegrees: 31,
    })
    const rim = ellipse(20, 20 * Math.sin(31 * degrees))
    expect(sum(ofKind(lines, 'inner')) / projection.cellsPerMm).toBeLessThan(0.55 * rim)
  })
})

describe('what stands in front', () => {
  const view: View = { turnDegrees: 0, heightDegrees: 0 }
  const wall = boxMesh([10, -20, -20], [12, 20, 20])

  it('hides a body behind it wholly', () => {
    const alone = seenFrom([there(wall)], view)
    const both = seenFrom([there(wall), there(boxMesh([-20, -12, -9], [0, 11, 13]))], view)
    expect(both.lines).toEqual(alone.lines)
  })

  it('hides a bar where it passes behind and nowhere else', () => {
    const bar = boxMesh([-3, -40, -4], [3, 40, 4])
    const { lines, projection } = seenFrom([there(wall), there(bar)], view)
    const seen = sum(lines.filter(({ part }) => part === 1)) / projection.cellsPerMm
    // Two edges of 80 mm of which the wall hides 40, and two ends of 8 mm.
    expect(seen).toBeGreaterThan(2 * 40 + 2 * 8 - 4 / projection.cellsPerMm - 0.01)
    expect(seen).toBeLessThan(2 * 40 + 2 * 8 + 8 / projection.cellsPerMm)
  })

  it('leaves to be seen what stands before it, with a border against it', () => {
    const { lines, projection } = seenFrom([there(wall), there(boxMesh([20, -5, -5], [30, 5, 5]))], view)
    const front = lines.filter(({ part }) => part === 1)
    expect(front.every(({ kind }) => kind === 'border')).toBe(true)
    expect(sum(front) / projection.cellsPerMm).toBeCloseTo(40, 3)
  })
})

describe('flush faces', () => {
  // A ring of two tubes whose circles have different facets, their faces in one plane.
  const inner = tubeMesh(4, 10, 6, 60)
  const outer = tubeMesh(10, 16, 6, 88)
  const view: View = { turnDegrees: 20, heightDegrees: 50 }

  it('meet in one line that does not flicker', () => {
    const { lines, projection } = seenFrom([there(outer), there(inner)], view)
    const round = ellipse(10, 10 * Math.sin(50 * degrees))
    // The bore is seen through, a border too, but shorter.
    const long = ofKind(lines, 'border').filter(
      ({ part, points }) => part === 1 && lengthOf(points) > 12 * projection.cellsPerMm,
    )
    expect(sum(long) / projection.cellsPerMm).toBeGreaterThan(0.995 * round)
    expect(sum(long) / projection.cellsPerMm).toBeLessThan(1.005 * round)
    expect(long.length).toBe(2)
  })

  it('of two parts over each other in one plane, both outlines are seen', () => {
    const plate = boxMesh([-20, -20, 0], [20, 20, 4])
    const label = boxMesh([-6, -5, 3], [6, 5, 4])
    const { lines, projection } = seenFrom([there(plate), there(label)], {
      turnDegrees: 0,
      heightDegrees: 90,
    })
    expect(sum(lines.filter(({ part }) => part === 1)) / projection.cellsPerMm).toBeCloseTo(44, 2)
  })
})

describe('the order of triangles', () => {
  it.each([1, 2, 3])('changes nothing, nor does which way they face (seed %i)', (seed) => {
    const meshes = [
      boxMesh([-20, -20, -5], [20, 20, 0], 3),
      tubeMesh(3, 9, 12, 40),
      ballMesh(5, 32, [12, 12, 6]),
    ]
    const view: View = { turnDegrees: -52, heightDegrees: 31 }
    const as = (list: typeof meshes) => seenFrom(list.map(there), view).lines
    const rounded = (lines: readonly VisibleLine[]) =>
      lines.map(({ part, kind, points }) => ({ part, kind, points: points.map((at) => at.toFixed(2)) }))
    expect(rounded(as(meshes.map((mesh) => shuffled(mesh, seed))))).toEqual(rounded(as(meshes)))
  })
})
