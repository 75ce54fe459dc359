// `npm run bench:schedule -- DIR [--sets j30,j60] [--every 3] [--at 1000,5000]`: the scheduler on the public text
// files in DIR (one folder per set, with best.csv), one row per set and effort. Every schedule is checked by other code.
// Times are of the processor.

import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { readBest, readInstance } from './read-instance.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const arguments_ = process.argv.slice(2)

function option(name, fallback) {
  const at = arguments_.indexOf(`--${name}`)
  return at < 0 ? fallback : arguments_[at + 1]
}

/** The scheduler and the check of the tests, which shares nothing with it, straight from their sources. */
async function loadScheduler() {
  const contents = `export { scheduleProblem } from './src/planning/schedule/index.ts'
export { whyBroken } from './tests/unit/planning/schedule/brute-check.ts'`
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root, loader: 'ts' },
    bundle: true,
    format: 'esm',
    platform: 'node',
    write: false,
  })
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString('base64')}`)
}

function instancesOf(folder) {
  const files = readdirSync(folder).filter((file) => /\.(?:sm|mm)$/.test(file))
  const byName = new Map(files.map((file) => [file.replace(/\.\w+$/, ''), file]))
  const every = Number(option('every', '1'))
  return readBest(readFileSync(join(folder, 'best.csv'), 'utf8'))
    .filter(({ name }, k) => k % every === 0 && byName.has(name))
    .map((row) => ({
      ...row,
      problem: readInstance(readFileSync(join(folder, byName.get(row.name)), 'utf8')),
    }))
}

/** Milliseconds of processor this process has used: a busy machine does not change them much. */
const worked = () => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

/**
 * What a run is allowed: so many schedules; or a second, of which breeding takes the first part and proof the rest. With
 * several modes nothing can be proved by search, so breeding has it all.
 */
function optionsAt(limit, problem) {
  if (limit !== '1 s') return { effort: Number(limit), seed: 1 }
  const end = worked() + 1000
  const single = problem.tasks.every(({ modes }) => modes.length === 1)
  const effort = single ? 10_000 : 1_000_000_000
  return { effort, nodes: 1_000_000_000, seed: 1, stop: () => worked() >= end }
}

function faultOf({ name, best, bound }, problem, outcome, whyBroken) {
  if (outcome.kind !== 'found') return `${name}: ${outcome.kind}`
  const why = whyBroken(problem, outcome.schedule)
  if (why) return `${name}: ${why}`
  if (outcome.schedule.finish < bound)
    return `${name}: ${outcome.schedule.finish} is below the known bound ${bound}`
  if (outcome.bound > best) return `${name}: bound ${outcome.bound} is above the known best ${best}`
  return outcome.proved && outcome.bound !== outcome.schedule.finish ? `${name}: proof without bound` : null
}

function measure(instances, limit, fromPath, { scheduleProblem, whyBroken }) {
  const sums = { deviation: 0, best: 0, proved: 0, took: 0, gap: 0, longest: 0 }
  const faults = []
  for (const instance of instances) {
    const start = worked()
    const outcome = scheduleProblem(instance.problem, optionsAt(limit, instance.problem))
    const took = worked() - start
    const fault = faultOf(instance, instance.problem, outcome, whyBroken)
    if (fault) faults.push(fault)
    if (outcome.kind !== 'found') continue
    const { finish } = outcome.schedule
    const base = fromPath ? instance.path : instance.best
    sums.deviation += (finish - base) / base
    sums.best += finish <= instance.best ? 1 : 0
    sums.proved += outcome.proved ? 1 : 0
    sums.gap += (instance.best - outcome.bound) / instance.best
    sums.took += took
    sums.longest = Math.max(sums.longest, took)
  }
  return { ...sums, faults }
}

const widths = [8, 8, 11, 14, 12, 14, 16, 10, 10]
const row = (cells) => console.log(cells.map((cell, k) => String(cell).padStart(widths[k])).join(''))
const percent = (share) => `${(100 * share).toFixed(2)} %`

function table(set, instances, scheduler) {
  // Small single-mode and multi-mode sets are measured from the optimum, the others from the critical path.
  const fromPath = !/^j(?:10|30)/.test(set)
  let faults = 0
  for (const limit of option('at', '1000,5000,50000,1 s').split(',')) {
    const sums = measure(instances, limit, fromPath, scheduler)
    const share = (part) => percent(part / instances.length)
    row([
      set,
      limit,
      fromPath ? 'path' : 'optimum',
      share(sums.deviation),
      share(sums.best),
      share(sums.proved),
      share(sums.gap),
      (sums.took / instances.length).toFixed(0),
      sums.longest.toFixed(0),
    ])
    for (const fault of sums.faults) console.log(`  FAULT ${fault}`)
    faults += sums.faults.length
  }
  return faults
}

const folder = arguments_[0]
if (!folder || !existsSync(folder)) {
  console.log(`skipped: no folder of public instances${folder ? ` at ${folder}` : ' named'}`)
} else {
  const scheduler = await loadScheduler()
  const wanted = option('sets', '').split(',').filter(Boolean)
  const sets = readdirSync(folder).filter((name) => existsSync(join(folder, name, 'best.csv')))
  row(['set', 'at', 'from', 'deviation', 'best', 'proved', 'bound below', 'cpu ms', 'most ms'])
  let faults = 0
  for (const set of sets) {
    if (wanted.length > 0 && !wanted.includes(set)) continue
    faults += table(set, instancesOf(join(folder, set)), scheduler)
  }
  process.exitCode = faults > 0 ? 1 : 0
}
