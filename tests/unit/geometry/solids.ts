import type { Mesh, Point } from '../../../src/geometry/mesh.ts'

/** Faces with any number of corners as a mesh of triangles, counter-clockwise seen from outside. */
export function meshOf(faces: readonly (readonly Point[])[]): Mesh {
  const corners = faces.flatMap((face) =>
    face.slice(2).flatMap((corner, i) => [...face[0]!, ...face[i + 1]!, ...corner]),
  )
  return { corners: Float64Array.from(corners) }
}

/** A box from the origin. */
export function box(x: number, y: number, z: number): Mesh {
  return prism(
    [
      [0, 0],
      [x, 0],
      [x, y],
      [0, y],
    ],
    z,
  )
}

/** A prism upward from a polygon in the plane z = 0, counter-clockwise. */
export function prism(base: readonly (readonly [number, number])[], height: number): Mesh {
  const n = base.length
  const low = base.map(([x, y]): Point => [x, y, 0])
  const high = base.map(([x, y]): Point => [x, y, height])
  const walls = low.map((corner, i): Point[] => [corner, low[(i + 1) % n]!, high[(i + 1) % n]!, high[i]!])
  return meshOf([[...low].reverse(), high, ...walls])
}

/** A regular polygon of n corners on a circle. */
export function ring(n: number, radius: number): [number, number][] {
  return Array.from({ length: n }, (_, i) => [
    radius * Math.cos((2 * Math.PI * i) / n),
    radius * Math.sin((2 * Math.PI * i) / n),
  ])
}

/** A grid of points that closes on itself in both senses, as four-cornered faces cut in two. */
export function torus(large: number, small: number, n: number, m: number): Mesh {
  const at = (i: number, j: number): Point => {
    const [u, v] = [(2 * Math.PI * (i % n)) / n, (2 * Math.PI * (j % m)) / m]
    const r = large + small * Math.cos(v)
    return [r * Math.cos(u), r * Math.sin(u), small * Math.sin(v)]
  }
  return meshOf(
    Array.from({ length: n * m }, (_, k) => {
      const [i, j] = [Math.floor(k / m), k % m]
      return [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)]
    }),
  )
}

/** A sphere by latitude rings and meridians. */
export function sphere(radius: number, rings: number, meridians: number): Mesh {
  const at = (i: number, j: number): Point => {
    if (i === 0) return [0, 0, -radius]
    if (i === rings) return [0, 0, radius]
    const [a, b] = [(Math.PI * i) / rings - Math.PI / 2, (2 * Math.PI * (j % meridians)) / meridians]
    return [radius * Math.cos(a) * Math.cos(b), radius * Math.cos(a) * Math.sin(b), radius * Math.sin(a)]
  }
  const faces = Array.from({ length: rings * meridians }, (_, k): Point[] => {
    const [i, j] = [Math.floor(k / meridians), k % meridians]
    if (i === 0) return [at(0, j), at(1, j + 1), at(1, j)]
    if (i === rings - 1) return [at(i, j), at(i, j + 1), at(rings, j)]
    return [at(i, j), at(i, j + 1), at(i + 1, j + 1), at(i + 1, j)]
  })
  return meshOf(faces)
}

/** A tetrahedron on the three axes. */
export function corner(x: number, y: number, z: number): Mesh {
  const [o, a, b, c]: Point[] = [
    [0, 0, 0],
    [x, 0, 0],
    [0, y, 0],
    [0, 0, z],
  ] as Point[]
  return meshOf([
    [o!, b!, a!],
    [o!, a!, c!],
    [o!, c!, b!],
    [a!, b!, c!],
  ])
}

/** Every corner of a mesh passed through a map. */
export function moved({ corners }: Mesh, map: (p: Point) => Point): Mesh {
  const out = new Float64Array(corners.length)
  for (let i = 0; i < corners.length; i += 3) out.set(map([corners[i]!, corners[i + 1]!, corners[i + 2]!]), i)
  return { corners: out }
}

/** Several meshes as one. */
export function together(...meshes: readonly Mesh[]): Mesh {
  return { corners: Float64Array.from(meshes.flatMap(({ corners }) => [...corners])) }
}

/** A mesh with some triangles turned over, or left out. */
export function spoiled(mesh: Mesh, turn: readonly number[], drop: readonly number[] = []): Mesh {
  const out: number[] = []
  for (let t = 0; 9 * t < mesh.corners.length; t++) {
    const c = [...mesh.corners.subarray(9 * t, 9 * t + 9)]
    if (drop.includes(t)) continue
    out.push(...(turn.includes(t) ? [...c.slice(0, 3), ...c.slice(6), ...c.slice(3, 6)] : c))
  }
  return { corners: Float64Array.from(out) }
}

/** The bytes of a binary STL file. */
export function binaryStl(
  { corners }: Mesh,
  header = 'made for a test',
  declared = corners.length / 9,
): Uint8Array {
  const n = corners.length / 9
  const bytes = new Uint8Array(84 + 50 * n)
  bytes.set(new TextEncoder().encode(header).subarray(0, 80))
  const view = new DataView(bytes.buffer)
  view.setUint32(80, declared, true)
  for (let t = 0; t < n; t++)
    for (let i = 0; i < 9; i++) view.setFloat32(84 + 50 * t + 12 + 4 * i, corners[9 * t + i]!, true)
  return bytes
}

/** The text of an STL file. */
export function textStl({ corners }: Mesh, name = 'made for a test', lineEnd = '\n'): Uint8Array {
  const lines = [`solid ${name}`]
  for (let t = 0; 9 * t < corners.length; t++) {
    lines.push('  facet normal 0 0 0', '    outer loop')
    for (let i = 0; i < 3; i++) {
      const [x, y, z] = corners.subarray(9 * t + 3 * i, 9 * t + 3 * i + 3)
      lines.push(`      vertex ${x!.toExponential()} ${y!.toExponential()} ${z!.toExponential()}`)
    }
    lines.push('    endloop', '  endfacet')
  }
  return new TextEncoder().encode([...lines, `endsolid ${name}`, ''].join(lineEnd))
}
