// `npm run bench:assembly [-- --each 5]`: the order of assembly on random layered devices of 10 to 40 steps: states gone
// into, milliseconds, megabytes, whether the order was proved best, and whether its feasible orders could be counted.
// Times are of the processor, memory is what the heap grew by.

import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('..', import.meta.url))
const at = process.argv.indexOf('--each')
const each = at < 0 ? 5 : Number(process.argv[at + 1])

async function loadPlanner() {
  const { outputFiles } = await build({
    stdin: {
      contents: `export { orderAssembly } from './src/planning/assembly/index.ts'
export { whyDisordered } from './src/verify/why-disordered.ts'
export { layeredDevice } from './tests/unit/planning/assembly/layered-device.ts'`,
      resolveDir: root,
      loader: 'ts',
    },
    bundle: true,
    format: 'esm',
    platform: 'node',
    write: false,
  })
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString('base64')}`)
}

/** Milliseconds of processor this process has used: a busy machine does not change them much. */
const worked = () => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

const middle = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)]
const megabytes = () => process.memoryUsage().heapUsed / 1e6 + process.memoryUsage().arrayBuffers / 1e6

const { layeredDevice, orderAssembly, whyDisordered } = await loadPlanner()
orderAssembly(layeredDevice({ steps: 12, seed: 99 }))

const head = ['steps', 'proved', 'nearest', 'counted', 'states', 'most states', 'ms', 'most ms', 'MB']
process.stdout.write(`${head.join('\t')}\n`)
for (const steps of [10, 20, 30, 40]) {
  const runs = Array.from({ length: each }, (_, k) => {
    const plan = layeredDevice({ steps, seed: 1000 * steps + k })
    globalThis.gc?.()
    const [before, start] = [megabytes(), worked()]
    const order = orderAssembly(plan)
    const ms = worked() - start
    const broken = whyDisordered(plan, order.order ?? [])
    if (broken) throw new Error(`${steps} steps, device ${k}: ${broken}`)
    return { ...order, ms, mb: Math.max(0, megabytes() - before) }
  })
  const share = (holds) => `${runs.filter(holds).length}/${runs.length}`
  const row = [
    steps,
    share(({ proved }) => proved),
    share(({ nearest }) => nearest),
    share(({ feasibleOrders }) => feasibleOrders !== null),
    middle(runs.map(({ states }) => states)),
    Math.max(...runs.map(({ states }) => states)),
    middle(runs.map(({ ms }) => ms)).toFixed(0),
    Math.max(...runs.map(({ ms }) => ms)).toFixed(0),
    Math.max(...runs.map(({ mb }) => mb)).toFixed(1),
  ]
  process.stdout.write(`${row.join('\t')}\n`)
}
