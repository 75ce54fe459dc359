// Times the pictures of a generated device: parts x triangles, edges once, then a picture a step; each in a process of its own.
import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('..', import.meta.url))
const [parts, triangles] = process.argv.slice(2).map(Number)

if (parts) await measure(parts, triangles)
else
  for (const [count, size] of [
    [10, 10_000],
    [30, 10_000],
    [60, 2_000],
    [60, 10_000],
    [60, 50_000],
  ])
    spawnSync(process.execPath, [fileURLToPath(import.meta.url), `${count}`, `${size}`], { stdio: 'inherit' })

async function measure(count, size) {
  const { outputFiles } = await build({
    stdin: {
      contents:
        "export { shapeOf } from './src/geometry/drawing/shape.ts'; export { drawPicture, usualPicture } from './src/geometry/drawing/draw-picture.ts'",
      resolveDir: root,
    },
    bundle: true,
    format: 'esm',
    write: false,
  })
  const { shapeOf, drawPicture, usualPicture } = await import(
    `data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString('base64')}`
  )
  const meshes = Array.from({ length: count }, (_, part) => turned(part, count, size))
  const ready = timed(() => meshes.map(shapeOf))
  const shapes = ready.value
  const upTo = (last) =>
    shapes.slice(0, last + 1).map((shape, i) => ({
      shape,
      way: i === last ? { from: [0, 0, 1], along: null, seats: [] } : null,
      goesIn: i === last,
    }))
  const first = timed(() => drawPicture(upTo(count - 1), usualPicture))
  const again = timed(() => drawPicture(upTo(count - 1), usualPicture))
  const kept = timed(() => drawPicture(upTo(count - 1), { ...usualPicture, view: first.value.view }))
  const apart = timed(() =>
    drawPicture(
      shapes.map((shape, i) => ({
        shape,
        way: i === 0 ? null : { from: [0, 0, 1], along: null, seats: [] },
        goesIn: false,
      })),
      { ...usualPicture, sizeMm: 160 },
    ),
  )
  const mb = process.resourceUsage().maxRSS / 1024
  console.log(
    `${count} parts x ${meshes[1].triangles.length / 3} triangles: edges once ${ready.ms} ms; a picture ${first.ms} ms cold, ${again.ms} ms warm, ${kept.ms} ms with the view given; taken apart ${apart.ms} ms; ${first.value.svg.length} bytes; ${mb.toFixed(0)} MB peak`,
  )
}

/** Milliseconds of processor, so that a busy machine shows the same. */
function timed(run) {
  const began = process.cpuUsage()
  const value = run()
  const { user, system } = process.cpuUsage(began)
  return { value, ms: ((user + system) / 1000).toFixed(0) }
}

/** A turned part on a plate of 150 x 100 mm, refined to about so many triangles. */
function turned(part, count, size) {
  if (part === 0)
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
  const perRow = Math.ceil(Math.sqrt(count))
  const [row, column] = [Math.floor(part / perRow), part % perRow]
  const [x, y] = [((column + 0.5) * 150) / perRow, ((row + 0.5) * 100) / perRow]
  const radius = Math.min(150, 100) / perRow / 2.4
  const outline =
    part % 3 === 0
      ? [
          [0, -8],
          [radius / 3, -8],
          [radius / 3, 40],
          [radius / 2, 40],
          [radius / 2, 44],
          [0, 44],
        ]
      : [
          [radius / 3, 2],
          [radius, 2],
          [radius, 12],
          [radius * 0.7, 12],
          [radius * 0.7, 15],
          [radius / 3, 15],
        ]
  return lathe(outline, x, y, size)
}

/** An outline turned about an upright axis; long sides are cut so that the triangles come out about alike. */
function lathe(outline, x, y, size) {
  const facets = Math.round(Math.sqrt(size))
  const rings = Math.max(outline.length, Math.round(size / 2 / facets))
  const fine = []
  for (let i = 0; i < rings; i++) {
    const at = (i / rings) * outline.length
    const [a, b] = [outline[Math.floor(at)], outline[(Math.floor(at) + 1) % outline.length]]
    const t = at - Math.floor(at)
    fine.push([a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])])
  }
  const positions = new Float32Array(3 * fine.length * facets)
  const triangles = []
  for (const [ring, [r, z]] of fine.entries())
    for (let i = 0; i < facets; i++) {
      const angle = (2 * Math.PI * i) / facets
      const own = ring * facets + i
      positions.set([x + r * Math.cos(angle), y + r * Math.sin(angle), z], 3 * own)
      const [next, beside] = [(ring + 1) % fine.length, (i + 1) % facets]
      triangles.push(own, ring * facets + beside, next * facets + beside)
      triangles.push(own, next * facets + beside, next * facets + i)
    }
  return { positions, triangles: Uint32Array.from(triangles) }
}
