// Times the relations of generated devices: parts x triangles, ms and peak MB, each in a process of its own.
import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('..', import.meta.url))
const [parts, triangles] = process.argv.slice(2).map(Number)

if (parts) await measure(parts, triangles)
else
  for (const count of [10, 30, 60])
    for (const size of [2_000, 10_000, 50_000])
      spawnSync(process.execPath, [fileURLToPath(import.meta.url), `${count}`, `${size}`], {
        stdio: 'inherit',
      })

/** A block with a tray of stepped pins and rings, refined to so many triangles a part. */
async function measure(count, size) {
  const { outputFiles } = await build({
    stdin: {
      contents:
        "export { solidOf } from './src/geometry/relations/solid.ts'; export { relateSolids } from './src/geometry/relations/relate-solids.ts'",
      resolveDir: root,
    },
    bundle: true,
    format: 'esm',
    write: false,
  })
  const { solidOf, relateSolids } = await import(
    `data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString('base64')}`
  )
  const corners = Array.from({ length: count }, (_, part) => turned(part, count, size))
  const [began, before] = [performance.now(), process.cpuUsage()]
  const relations = relateSolids(corners.map(solidOf))
  const ms = performance.now() - began
  const { user, system } = process.cpuUsage(before)
  let stopped = 0
  for (const pair of relations.pairs.values())
    for (const width of [...pair.aMm, ...pair.bMm]) if (width > pair.giveMm) stopped++
  const mb = process.resourceUsage().maxRSS / 1024
  console.log(
    `${count} parts x ${size} triangles: ${ms.toFixed(0)} ms (${((user + system) / 1000).toFixed(0)} ms of work), ${mb.toFixed(0)} MB peak, ${relations.pairs.size} pairs, ${stopped} stopped, cell ${relations.cellMm.toFixed(3)} mm`,
  )
}

/** A turned part in a tray of 150 x 100 mm: every third one is long and lies through its neighbours' bores. */
function turned(part, count, size) {
  if (part === 0) return plate(size)
  const perRow = Math.ceil(Math.sqrt(count))
  const [row, column] = [Math.floor(part / perRow), part % perRow]
  const [x, y] = [((column + 0.5) * 150) / perRow, ((row + 0.5) * 100) / perRow]
  const outline =
    part % 3 === 0
      ? [
          [0, -8],
          [3, -8],
          [3, 40],
          [5, 40],
          [5, 44],
          [0, 44],
        ]
      : [
          [3.1, 2],
          [9, 2],
          [9, 12],
          [6, 12],
          [6, 15],
          [3.1, 15],
          [3.1, 2],
        ]
  return lathe(outline, x, y, size)
}

function plate(size) {
  return lathe(
    [
      [0, -6],
      [95, -6],
      [95, 2],
      [0, 2],
    ],
    75,
    50,
    size,
  )
}

function lathe(outline, x, y, size) {
  const around = Math.max(12, Math.floor(Math.sqrt(size / 2)))
  const along = Math.max(outline.length - 1, Math.round(size / 2 / around))
  const profile = refined(outline, along)
  const corners = new Float32Array(9 * 2 * around * (profile.length - 1))
  let o = 0
  const at = ([r, z], k) => {
    const angle = (2 * Math.PI * (k % around)) / around
    return [x + r * Math.cos(angle), y + r * Math.sin(angle), z]
  }
  for (let i = 0; i + 1 < profile.length; i++)
    for (let k = 0; k < around; k++) {
      const [a, b, c, d] = [
        at(profile[i], k),
        at(profile[i], k + 1),
        at(profile[i + 1], k + 1),
        at(profile[i + 1], k),
      ]
      for (const corner of [a, b, c, a, c, d]) {
        corners.set(corner, o)
        o += 3
      }
    }
  return corners
}

function refined(outline, pieces) {
  const sides = outline.length - 1
  const each = Math.max(1, Math.round(pieces / sides))
  const points = []
  for (let s = 0; s < sides; s++)
    for (let k = 0; k < each; k++)
      points.push(outline[s].map((from, i) => from + ((outline[s + 1][i] - from) * k) / each))
  return [...points, outline[sides]]
}
