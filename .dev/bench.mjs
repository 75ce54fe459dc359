// `npm run bench [-- --large]`: start-up against an empty node run, and growth with the size of a project. Plain tables.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { generateProject } from './generate-project.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const fettle = join(root, 'dist/fettle.js')
const chopper = join(root, 'projects/optical-chopper/optical-chopper.yaml')
const pump = join(root, 'projects/dosing-pump/dosing-pump.yaml')
const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'))
const runs = 15

/** One run of node in a child: milliseconds and exit code. */
function timed(args) {
  const start = performance.now()
  const { status, stderr } = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' })
  return { took: performance.now() - start, status, stderr }
}

function row(cells) {
  console.log(cells.map((cell, at) => (at === 0 ? cell.padEnd(26) : cell.padStart(10))).join(''))
}

const ms = (value) => value.toFixed(0)

// Taken turn by turn, so that a busy moment falls on all alike.
function coldStarts() {
  const kinds = {
    'node -e 0': ['-e', '0'],
    'check of the chopper': [fettle, 'check', chopper],
    'plan of the chopper': [fettle, 'plan', chopper, '--out', 'chopper.xlsx', '--force'],
    'check of the pump, no mesh': [fettle, 'check', pump],
    'plan of the pump, no mesh': [fettle, 'plan', pump, '--out', 'pump.xlsx', '--force'],
  }
  const times = new Map(Object.keys(kinds).map((name) => [name, []]))
  const failed = new Map()
  for (let turn = 0; turn < runs; turn++)
    for (const [name, args] of Object.entries(kinds)) {
      const { took, status } = timed(args)
      times.get(name).push(took)
      if (status !== 0) failed.set(name, status)
    }
  row([`cold, ${runs} runs, ms`, 'min', 'median', 'max', 'x empty'])
  const middle = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)]
  const empty = middle(times.get('node -e 0'))
  for (const [name, list] of times) {
    row([
      name,
      ms(Math.min(...list)),
      ms(middle(list)),
      ms(Math.max(...list)),
      (middle(list) / empty).toFixed(1),
    ])
    if (failed.has(name))
      console.log(`  (ended with exit ${failed.get(name)}: these are not times of a finished run)`)
  }
}

/** Runs a command inside a child that says its peak memory at the end. */
function measured(args) {
  const script = `process.argv.splice(1, 0, ${JSON.stringify(fettle)})
process.on('exit', () => process.stderr.write('peak ' + process.resourceUsage().maxRSS + '\\n'))
await import(${JSON.stringify(`file://${fettle}`)})`
  const { took, status, stderr } = timed(['--input-type=module', '-e', script, '--', ...args])
  return { took, status, peak: Number(/peak (\d+)\s*$/.exec(stderr)?.[1] ?? Number.NaN) / 1024 }
}

function growth(sizes) {
  row(['generated project, tasks', 'check ms', 'plan ms', 'peak MB', 'growth'])
  let before = null
  for (const tasks of sizes) {
    const file = join(folder, `tasks-${tasks}.yaml`)
    writeFileSync(file, generateProject({ tasks, seed: 1 }))
    const checked = measured(['check', file])
    const planned = measured(['plan', file, '--out', join(folder, `tasks-${tasks}.xlsx`), '--force'])
    row([
      String(tasks),
      ms(checked.took),
      ms(planned.took),
      ms(planned.peak),
      before ? `x ${(planned.took / before).toFixed(1)}` : '-',
    ])
    for (const [name, { status }] of Object.entries({ check: checked, plan: planned }))
      if (status !== 0) console.log(`  (${name} ended with exit ${status}: not the time of a finished run)`)
    before = planned.took
  }
}

try {
  coldStarts()
  console.log('')
  growth(process.argv.includes('--large') ? [100, 1000, 3000] : [100, 1000])
} finally {
  rmSync(folder, { recursive: true, force: true })
}
