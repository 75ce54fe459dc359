import { describe, expect, it } from 'vitest'
import { seededRandom } from '../../../../src/base/random.ts'
import {
  drawPicture,
  type Picture,
  type PictureOptions,
  scaleOfAll,
  usualPicture,
} from '../../../../src/geometry/drawing/draw-picture.ts'
import type { DrawnMesh } from '../../../../src/geometry/drawing/drawn-mesh.ts'
import type { PicturePart } from '../../../../src/geometry/drawing/picture-part.ts'
import { shapeOf, whyNotDrawn } from '../../../../src/geometry/drawing/shape.ts'
import { usualViews } from '../../../../src/geometry/drawing/view.ts'
import { boxMesh, coming, cylinderMesh, shuffled, there, tubeMesh, turnedMesh } from './drawn-solids.ts'
import { marksOf } from './svg-marks.ts'

function picture(parts: readonly PicturePart[], options: Partial<PictureOptions> = {}): Picture {
  const drawn = drawPicture(parts, { ...usualPicture, title: 'a step', ...options })
  if ('fault' in drawn) throw new Error(drawn.fault)
  return drawn
}

const block = boxMesh([-20, -20, 0], [20, 20, 20])
const cup = tubeMesh(8, 18, 20, 48)
const peg = cylinderMesh(7, 24, 48, [0, 0, 2])

describe('a picture', () => {
  const parts = [there(cup), coming(peg, [0, 0, 1])]
  const { svg } = picture(parts)

  it('is well-formed, 60 mm on a side, in black and white', () => {
    const marks = marksOf(svg)
    expect(marks.root).toMatchObject({ width: '60mm', height: '60mm', viewBox: '0 0 60 60' })
    const paints = [...svg.matchAll(/(?:fill|stroke)="([^"]*)"/g)].map(([, paint]) => paint)
    expect(new Set(paints)).toEqual(new Set(['none', '#000', '#fff']))
  })

  it('stays on its paper', () => {
    for (const { points } of marksOf(svg).paths)
      for (const at of points) {
        expect(at).toBeGreaterThan(-0.01)
        expect(at).toBeLessThan(60.01)
      }
  })

  it('has lines of the weights in use: going in 0.5, outer 0.3, border and inner finer, hatch finest', () => {
    const three = [
      there(block),
      there(tubeMesh(8, 18, 20, 48, [0, 0, 20])),
      coming(cylinderMesh(7, 24, 48, [0, 0, 22]), [0, 0, 1]),
    ]
    const widths = new Set(marksOf(picture(three).svg).paths.map(({ width }) => width))
    for (const width of [0.5, 0.3, 0.18, 0.13, 0.1]) expect(widths, `${width}`).toContain(width)
  })

  it('is the same text each time, and whatever order triangles have and however they face', () => {
    expect(picture(parts).svg).toBe(svg)
    for (const seed of [1, 2]) {
      const spoiled = [there(shuffled(cup, seed)), coming(shuffled(peg, seed), [0, 0, 1])]
      expect(picture(spoiled).svg).toBe(svg)
    }
  })

  it('holds its title as text, whatever signs are in it', () => {
    const title = 'a <b> & "c"\u0000\ud800'
    expect(marksOf(picture(parts, { title }).svg).title).toBe('a <b> & "c"')
  })

  it('hatches what goes in at 45 degrees and nothing else', () => {
    const hatch = marksOf(svg).paths.filter(({ width }) => width === 0.1)
    expect(hatch.length).toBeGreaterThan(10)
    for (const { points } of hatch) {
      const [x1, y1, x2, y2] = points as [number, number, number, number]
      expect(x2 - x1).toBeCloseTo(y1 - y2, 1)
    }
    expect(marksOf(picture([there(cup), there(peg)]).svg).paths.some(({ width }) => width === 0.1)).toBe(
      false,
    )
  })

  it('shows the way with a dashed line that ends in an arrow pointing to the seat', () => {
    const { paths, solids } = marksOf(svg)
    const [way] = paths.filter(({ dashes }) => dashes !== null)
    expect(way).toBeDefined()
    expect(solids.length).toBe(1)
    const [tipX, tipY, , tailY] = solids[0]!
    // It comes from above: the tip lies lowest, on the line.
    expect(tipY!).toBeGreaterThan(tailY!)
    expect(way!.points.at(-2)).toBeCloseTo(tipX!, 1)
    expect(way!.points.at(-1)).toBeCloseTo(tipY!, 1)
  })
})

describe('what is hidden in its seat', () => {
  const fine = (svg: string) => marksOf(svg).paths.filter(({ width }) => width === 0.18)
  const dashed = (svg: string) => fine(svg).filter(({ dashes }) => dashes !== null)
  const hollow = [boxMesh([-20, -20, 0], [20, 20, 4]), tubeMesh(7, 20, 40, 48)]
  const pin = (z: number) => coming(cylinderMesh(6, 8, 32, [0, 0, z]), [0, 0, 1], [[0, 0, z]])

  it('is drawn through what hides it, with the rest of its way, fine and dashed', () => {
    const deep = picture([...hollow.map(there), pin(4)]).svg
    expect(dashed(deep)).not.toEqual([])
    // The outline of the pin where it sits, not where it hangs: below the rim of the tube.
    const lowest = Math.max(...dashed(deep).flatMap(({ points }) => points.filter((_, i) => i % 2 === 1)))
    const arrow = marksOf(deep).solids[0]!
    expect(lowest).toBeGreaterThan(arrow[1]! + 5)
  })

  it('is not where enough of the part is seen', () => {
    expect(
      dashed(picture([...hollow.map(there), pin(36)]).svg).filter(({ points }) => points.length > 4),
    ).toEqual([])
  })
})

describe('the view', () => {
  it('shows the side a part comes from, also where the one before looked from behind', () => {
    const flange = there(cylinderMesh(16, 4, 48, [0, 0, 0]))
    const disc = coming(tubeMesh(6, 40, 2, 48, [0, 0, 4]), [0, 0, 1], [[0, 0, 4]])
    const behind = usualViews(4).find(({ heightDegrees }) => heightDegrees < 0)!
    expect(picture([flange, disc], { kept: behind }).view.heightDegrees).toBeGreaterThan(0)
  })

  it('looks at the device as it lies on the table', () => {
    const parts = [there(cup), coming(boxMesh([-18, -18, -8], [18, 18, -4]), [0, 0, -1])]
    const turned = picture(parts, { up: 5 })
    expect(turned.view).toMatchObject({ up: 5 })
    expect(turned.view.heightDegrees).toBeGreaterThan(0)
    // A view of the device as it lay before is not kept.
    expect(picture(parts, { up: 5, kept: { ...usualViews(4)[2]!, up: 4 } }).view).toEqual(turned.view)
  })

  it('is from below for what comes from below', () => {
    const closed = boxMesh([-20, -20, 0], [20, 20, 20])
    const foot = cylinderMesh(6, 4, 32, [0, 0, -4])
    expect(picture([there(closed), coming(foot, [0, 0, -1])]).view.heightDegrees).toBeLessThan(0)
  })

  it('is from above for what comes from above', () => {
    expect(
      picture([there(block), coming(cylinderMesh(6, 4, 32, [0, 0, 20]), [0, 0, 1])]).view.heightDegrees,
    ).toBeGreaterThan(0)
  })

  it('is kept where another one shows hardly more', () => {
    const parts = [there(cup), coming(peg, [0, 0, 1])]
    for (const kept of usualViews(4).slice(0, 4)) expect(picture(parts, { kept }).view).toEqual(kept)
  })

  it('is from below for a shaft from below, though most of it ends up above', () => {
    const housing = tubeMesh(7, 24, 40, 48)
    const shaft = turnedMesh(
      [
        [0, -5],
        [6, -5],
        [6, 30],
        [6, 90],
        [0, 90],
      ],
      48,
    )
    expect(picture([there(housing), coming(shaft, [0, 0, -1])]).view.heightDegrees).toBeLessThan(0)
  })

  it('looks at the side a part comes from, where it goes into a hole there', () => {
    const tube = tubeMesh(7, 12, 30, 48)
    const lying: DrawnMesh = {
      positions: tube.positions.map((_, i) => tube.positions[i - (i % 3) + ((i + 1) % 3)]!),
      triangles: tube.triangles,
    }
    const from = (x: 1 | -1) =>
      picture([
        there(boxMesh([-40, -40, -14], [40, 70, -12])),
        there(lying),
        coming(boxMesh([-4, 10, -4], [4, 24, 4]), [0, x, 0]),
      ])
    const sideOf = (x: 1 | -1): number => Math.sin((from(x).view.turnDegrees * Math.PI) / 180)
    expect(sideOf(1)).toBeGreaterThan(0)
    expect(sideOf(-1)).toBeLessThan(0)
  })

  it('is left where it hides the seat', () => {
    const tower = boxMesh([-20, -20, 0], [-10, 20, 80])
    const plate = boxMesh([-20, -20, -4], [40, 20, 0])
    const parts = [there(plate), there(tower), coming(boxMesh([-8, -5, 0], [2, 5, 8]), [1, 0, 0])]
    const behind = usualViews(4).find(({ turnDegrees }) => turnDegrees === 128)!
    expect(picture(parts, { kept: behind }).view).not.toEqual(behind)
  })
})

describe('the scale', () => {
  const parts = [there(cup), coming(peg, [0, 0, 1])]
  const large = [
    there(boxMesh([-60, -60, 0], [60, 60, 20])),
    coming(boxMesh([-30, -30, 20], [30, 30, 40]), [0, 0, 1]),
  ]

  it('fills the paper where nothing is said', () => {
    const all = marksOf(picture(parts).svg).paths.flatMap(({ points }) => points)
    expect(Math.max(...all) - Math.min(...all)).toBeGreaterThan(55)
  })

  it('is one for a whole series where it is asked for', () => {
    const scale = scaleOfAll(
      [
        { parts, up: 4 },
        { parts: large, up: 4 },
      ],
      60,
    )!
    expect(picture(parts, { scale }).scale).toBeCloseTo(scale, 9)
    expect(picture(large, { scale }).scale).toBeCloseTo(scale, 9)
    expect(picture(parts).scale).toBeGreaterThan(scale)
  })

  it('comes near for a part that would be too small to see, and says where it is', () => {
    const plate = boxMesh([0, 0, 0], [300, 200, 10])
    const pin = cylinderMesh(2, 8, 24, [20, 20, 10])
    const near = picture([there(plate), coming(pin, [0, 0, 1])])
    expect(near.near).toBe(true)
    expect(near.scale * 8).toBeGreaterThan(4)
    expect(marksOf(near.svg).boxes).toBe(1)
    expect(picture([there(block), coming(peg, [0, 0, 1])]).near).toBe(false)
  })
})

describe('what cannot be drawn', () => {
  const good = boxMesh([0, 0, 0], [1, 1, 1])
  const bad = (change: Partial<DrawnMesh>): DrawnMesh => ({ ...good, ...change })

  it('is said: nothing, bad coordinates, corners that are not there, too much', () => {
    expect(whyNotDrawn([good])).toBe(null)
    expect(whyNotDrawn([])).toEqual({ fault: 'nothing to draw' })
    const holes = Float32Array.from(good.positions)
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, 2e6]) {
      holes[4] = value
      expect(whyNotDrawn([good, bad({ positions: holes })])).toEqual({ fault: 'bad coordinate', part: 1 })
    }
    expect(whyNotDrawn([bad({ triangles: Uint32Array.from([0, 1, 99]) })])).toEqual({
      fault: 'bad triangle',
      part: 0,
    })
    expect(whyNotDrawn([bad({ triangles: Uint32Array.from([0, 1]) })])).toEqual({
      fault: 'bad triangle',
      part: 0,
    })
    expect(whyNotDrawn(Array.from({ length: 2001 }, () => good))).toMatchObject({ fault: 'too many parts' })
    const many = bad({ triangles: new Uint32Array(3 * 8_000_001) })
    expect(whyNotDrawn([many])).toMatchObject({ fault: 'too many triangles' })
  })

  it('leaves out triangles without room, and draws nothing of parts that have no others', () => {
    const flat = {
      positions: Float32Array.from([0, 0, 0, 1, 1, 1]),
      triangles: Uint32Array.from([0, 1, 1, 0, 0, 0]),
    }
    expect(drawPicture([there(flat)], usualPicture)).toEqual({ fault: 'nothing to draw' })
    const box = [there(boxMesh([0, 0, 0], [9, 9, 9]))]
    expect(picture([...box, there(flat)]).svg).toBe(picture(box).svg)
  })

  it('corners that an export rounded a hair apart are joined: no seam is seen', () => {
    const whole = boxMesh([0, 0, 0], [20, 20, 20], 4)
    const loose = {
      positions: Float32Array.from(whole.triangles, () => 0),
      triangles: Uint32Array.from(whole.triangles, (_, i) => i),
    }
    const positions = Float32Array.from(
      [...whole.triangles].flatMap((corner, i) =>
        [0, 1, 2].map((axis) => whole.positions[3 * corner + axis]! + ((i * 7 + axis) % 3) * 1e-4),
      ),
    )
    const { edges } = shapeOf({ ...loose, positions })
    expect([...edges.bend].filter((bend) => bend === 2)).toEqual([])
    expect([...edges.bend].filter((bend) => bend === 1).length).toBe(12 * 4)
  })

  it.each(Array.from({ length: 24 }, (_, i) => i + 1))(
    'draws any triangles without fault (seed %i)',
    (seed) => {
      const random = seededRandom(seed)
      const size = 10 ** (random.next() * 5 - 1)
      const at = size * (random.next() - 0.5) * 10 ** (random.next() * 2)
      const bounded = (value: number): number => Math.max(-1e6, Math.min(1e6, value))
      const soup = (): DrawnMesh => {
        const points = 3 + Math.floor(random.next() * 40)
        const positions = Float32Array.from({ length: 3 * points }, () =>
          bounded(at + size * (random.next() < 0.2 ? Math.round(random.next()) : random.next())),
        )
        const triangles = Uint32Array.from({ length: 3 * Math.floor(1 + random.next() * 60) }, () =>
          Math.floor(random.next() * points),
        )
        return { positions, triangles }
      }
      const meshes = [soup(), soup(), soup()]
      expect(whyNotDrawn(meshes)).toBe(null)
      const [a, b, c] = meshes as [DrawnMesh, DrawnMesh, DrawnMesh]
      const drawn = drawPicture([there(a), there(b), coming(c, [0, random.next() - 0.5, 1])], usualPicture)
      if ('fault' in drawn) throw new Error(drawn.fault)
      const { paths } = marksOf(drawn.svg)
      expect(paths.flatMap(({ points }) => points).every((each) => each >= -0.01 && each <= 60.01)).toBe(true)
    },
  )
})
