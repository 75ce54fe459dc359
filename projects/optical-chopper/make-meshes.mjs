// Draws the parts of the chopper head and writes one STL file each to meshes/, in millimetres.
// Run from here: node make-meshes.mjs. Needs manifold-3d (a development dependency of fettle).
// Axes: the spindle lies along y, its front (the wheel) at -y; z is up, the top of the base is z = 0.
// Single parts are drawn where they belong; what there are several of about its own origin, and placed by the project.
import { mkdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import Module from 'manifold-3d'

const wasm = await Module()
wasm.setup()
const { Manifold } = wasm

/** Height of the spindle over the base, and facets of a circle. */
const axisZ = 26
const round = 28

const box = (x0, x1, y0, y1, z0, z1) => Manifold.cube([x1 - x0, y1 - y0, z1 - z0]).translate([x0, y0, z0])
const upright = (r, x, y, z0, z1, facets = round) => Manifold.cylinder(z1 - z0, r, r, facets).translate([x, y, z0])
/** A cylinder along y, about the spindle unless said otherwise. */
const alongY = (r, y0, y1, { x = 0, z = axisZ, facets = round } = {}) =>
  Manifold.cylinder(y1 - y0, r, r, facets).rotate([-90, 0, 0]).translate([x, y0, z])
const alongX = (r, x0, x1, y, z, facets = 16) =>
  Manifold.cylinder(x1 - x0, r, r, facets).rotate([0, 90, 0]).translate([x0, y, z])
const joined = (...bodies) => Manifold.union(bodies)
const cut = (body, ...holes) => Manifold.difference([body, ...holes])

/** A socket screw: head on z = 0, shank downward. */
function screw(d, length, headD, headH, socket) {
  const head = cut(upright(headD / 2, 0, 0, 0, headH, 24), upright(socket / 2 / Math.cos(Math.PI / 6), 0, 0, headH / 2, headH + 1, 6))
  return joined(head, upright(d / 2, 0, 0, -length, 0.01, 24))
}

// --- rotor: the flange of the hub faces the wheel at y = -12 ---------------------------------------------------
const pinR = 14.8
const pinAt = [[pinR, axisZ], [-pinR, axisZ]]
const hub = cut(
  joined(alongY(20, -12, -4, { facets: 32 }), alongY(12.5, -13.5, -11.9, { facets: 32 }), alongY(12, -19.5, -13.4, { facets: 32 }), alongY(5.5, -4.1, 2)),
  alongY(4, -20, 3),
  ...pinAt.map(([x, z]) => alongY(1.5, -14, -3, { x, z, facets: 24 })),
)
const slots = Array.from({ length: 10 }, (_, k) =>
  box(-5, 5, -14, -10, 34, 46).rotate([0, 36 * k, 0]).translate([0, 0, axisZ]),
)
const wheel = cut(
  alongY(50, -12.5, -12, { facets: 72 }),
  alongY(12.53, -14, -10, { facets: 32 }),
  ...pinAt.map(([x, z]) => alongY(1.575, -14, -10, { x, z, facets: 24 })),
  ...slots,
)
const lockRing = cut(
  alongY(20, -20.5, -12.5, { facets: 32 }),
  alongY(11.46, -21, -12, { facets: 32 }),
  alongY(16.5, -14, -12, { facets: 32 }),
  ...[1, -1].map((side) => alongY(2.25, -21, -17.5, { x: 0, z: axisZ + side * 16, facets: 24 })),
)

// --- bearing block: front face y = 0, rear face y = 58 ------------------------------------------------------------
const footScrews = [[22, 10], [-22, 10], [22, 48], [-22, 48]]
const dowels = [[22, 29], [-22, 29]]
const guardScrews = [[-16, 7], [16, 7], [0, 7]]
const motorBlock = cut(
  box(-30, 30, 0, 58, 0, 51),
  alongY(8, -1, 7),
  alongY(6.5, 6, 29),
  alongY(8, 28, 37),
  alongY(11, 36, 59),
  box(-8, 8, 37, 49, 35, 52),
  box(-0.75, 0.75, 50, 59, 35, 52),
  alongX(1.65, -12, 1, 53.5, 43),
  alongX(2.25, 0.5, 11, 53.5, 43),
  alongX(4, 10, 31, 53.5, 43),
  ...footScrews.map(([x, y]) => upright(1.65, x, y, -1, 14, 12)),
  ...dowels.map(([x, y]) => upright(2, x, y, -1, 12, 12)),
  ...guardScrews.map(([x, y]) => upright(1.25, x, y, 42, 52, 12)),
)
const bearing = cut(alongY(8, 0, 5, { z: 0 }), alongY(4, -1, 6, { z: 0 }))
const washer = cut(alongY(8, 28, 29), alongY(6, 27, 30))
const coupling = cut(
  joined(alongY(5.5, 34, 36.6), alongY(8, 36.5, 50)),
  alongY(4, 33, 41),
  alongY(1.5, 40, 51, { facets: 24 }),
)
const motor = joined(alongY(11, 50, 95, { facets: 32 }), alongY(1.5, 42, 50.1, { facets: 24 }))

// --- base -------------------------------------------------------------------------------------------------------
const bellyScrews = [[35, 8], [-35, 8], [35, 122], [-35, 122]]
const feet = [[35, 22], [-35, 22], [35, 108], [-35, 108]]
const holders = [52, 66, 80]
const bracketScrews = [[35.5, 12], [35.5, 24]]
const connectorZ = -10.5
const base = cut(
  box(-40, 40, -2, 128, -19, 0),
  box(-30, 30, 4, 88, -20, -10),
  box(-12, 12, 87, 120, -20, -3),
  alongY(6, 119, 129, { z: connectorZ }),
  box(-6, 6, 119, 129, -20, connectorZ),
  ...footScrews.map(([x, y]) => upright(2.25, x, y, -11, 1, 12)),
  ...dowels.map(([x, y]) => upright(2, x, y, -11, 1, 12)),
  ...bellyScrews.map(([x, y]) => upright(1.25, x, y, -20, -11, 12)),
  ...feet.map(([x, y]) => upright(1.65, x, y, -20, -10, 12)),
  ...holders.map((y) => upright(1.25, 6.25, y, -11, -4, 12)),
  ...bracketScrews.map(([x, y]) => upright(1.25, x, y, -6, 1, 12)),
)
const holder = cut(
  box(-5, 10, -5, 5, -6.5, 0),
  box(-2.6, 2.6, -6, 6, -5.1, 1),
  upright(1.7, 6.25, 0, -7, 1, 24),
  upright(3, 6.25, 0, -7, -3.5, 24),
)
const belly = cut(
  box(-38, 38, 2, 126, -21, -19),
  ...bellyScrews.map(([x, y]) => upright(1.7, x, y, -22, -18, 24)),
  ...feet.map(([x, y]) => upright(2.25, x, y, -22, -18, 24)),
)
const foot = joined(upright(6, 0, 0, -8, 0, 32), upright(2, 0, 0, -0.1, 8, 24))
const connector = joined(
  alongY(6, 116, 141, { z: connectorZ }),
  alongY(7.5, 117, 120, { z: connectorZ, facets: 6 }),
  alongY(7.5, 128, 131, { z: connectorZ, facets: 6 }),
)
const cable = alongY(2.5, 40, 116, { z: -12.5, facets: 24 })

// --- sensor, guard, cap -------------------------------------------------------------------------------------------
const boardScrews = [[-4.5, 21], [-4.5, 31]]
const bracket = cut(
  joined(box(31, 40, -8, 30, 0, 3), box(31, 52, -8, -1, 0, 34)),
  ...bracketScrews.map(([x, y]) => upright(1.7, x, y, -1, 4, 24)),
  ...boardScrews.map(([y, z]) => alongX(0.8, 46, 53, y, z)),
)
const speedBoard = cut(
  joined(box(52, 53.6, -24.25, -0.25, 18, 34), cut(box(42, 52.1, -16.25, -8.25, 22, 30), box(41, 51, -13.75, -10.75, 21, 31))),
  ...boardScrews.map(([y, z]) => alongX(1.2, 51, 55, y, z)),
)
/** The outline of the guard seen from the front: half a disc on legs. */
const hood = (r, y0, y1) => joined(alongY(r, y0, y1, { facets: 72 }).trimByPlane([0, 0, 1], axisZ), box(-r, r, y0, y1, 0.5, axisZ))
const guard = cut(
  joined(cut(hood(55, -30, 0), hood(53, -28, -2), box(-53, 53, -28, -2, -1, 1)), box(-22, 22, -0.1, 12, 51, 54)),
  alongY(7, -3, 1),
  box(-7, 7, -3, 1, 0, axisZ),
  box(30.5, 60, -31, 1, 0, 36.5),
  alongY(6, -31, -27, { x: 36, z: 26 + 22 }),
  ...guardScrews.map(([x, y]) => upright(1.7, x, y, 50, 55, 24)),
)
const cap = joined(box(-12, 12, 34, 52.5, 51, 53), box(-7.9, 7.9, 37.1, 48.9, 47, 51.1))

const parts = {
  hub,
  'chopper-wheel': wheel,
  'lock-ring': lockRing,
  spindle: alongY(4, -19.5, 40.5),
  'drive-pin': alongY(1.5, 0, 8, { z: 0, facets: 24 }),
  'motor-block': motorBlock,
  bearing,
  'wave-washer': washer,
  'block-dowel': upright(2, 0, 0, -8, 12, 24),
  motor,
  coupling,
  base,
  'screw-m4x20': screw(4, 20, 7, 4, 3),
  'screw-m3x8': screw(3, 8, 5.5, 3, 2.5),
  'screw-m2x6': screw(2, 6, 3.8, 2, 1.5),
  foot,
  guard,
  'sensor-bracket': bracket,
  'cable-holder': holder,
  'belly-plate': belly,
  'window-cap': cap,
  'speed-board': speedBoard,
  cable,
  'panel-connector': connector,
}

const folder = fileURLToPath(new URL('meshes/', import.meta.url))
mkdirSync(folder, { recursive: true })
for (const [name, body] of Object.entries(parts)) writeFileSync(`${folder}${name}.stl`, stl(name, body))

/** A binary STL file: 80 bytes of head, the count, 50 bytes a triangle. */
function stl(name, body) {
  const { triVerts, vertProperties, numProp } = body.getMesh()
  const triangles = triVerts.length / 3
  const bytes = new Uint8Array(84 + 50 * triangles)
  bytes.set(new TextEncoder().encode(`${name}, millimetres`))
  const view = new DataView(bytes.buffer)
  view.setUint32(80, triangles, true)
  triVerts.forEach((vertex, k) => {
    for (let i = 0; i < 3; i++)
      view.setFloat32(84 + 50 * Math.floor(k / 3) + 12 + 12 * (k % 3) + 4 * i, vertProperties[numProp * vertex + i], true)
  })
  return bytes
}
