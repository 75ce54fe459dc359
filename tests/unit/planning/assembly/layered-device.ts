/**
 * Random devices for the bench and tests of assembly orders: steps in layers, each waiting for some of the layer below,
 * put through two openings from two or three sides with a handful of tools; tests among them; two lids at the end.
 */
import type { AssemblyPlan, Step } from '../../../../src/model/assembly.ts'
import { into, onto, plan, put, shuts, step, toOpening, toStep, waiting } from './bench-steps.ts'

/** A small seeded generator of its own, the same on every machine. */
function drawing(seed: number) {
  let state = (seed ^ 0x2545f491) >>> 0
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    const mixed = Math.imul(state ^ (state >>> 16), 0x45d9f3b)
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296
  }
  for (let warm = 0; warm < 8; warm++) next()
  return {
    chance: (share: number) => next() < share,
    pick: <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)]!,
  }
}

/** The plan of a device of so many steps, lids among them; each layer has about five. */
export function layeredDevice({
  steps,
  seed,
}: {
  readonly steps: number
  readonly seed: number
}): AssemblyPlan {
  const draw = drawing(seed)
  const sides = ['top up', 'bottom up', 'side up']
  const tools = ['hex 2', 'torque driver', 'arbor press', 'tweezers']
  const layers: string[][] = []
  const made: Step[] = []
  for (let k = 0; k < steps - 2; k++) {
    if (k % 5 === 0) layers.push([])
    const below = layers.at(-2) ?? []
    const waits = new Set(
      below.length === 0 ? [] : [1, 2].flatMap(() => (draw.chance(0.6) ? [draw.pick(below)] : [])),
    )
    const test = draw.chance(0.12)
    const id = `step ${k}`
    made.push(
      step(id, {
        ...(test ? { test: 'works as drawn' } : put(`part ${k}`)),
        ...(test
          ? { beforeLastOf: [toOpening('base', 'top')] }
          : into('base', draw.pick(['top', 'bottom', null]))),
        turn: draw.chance(0.7) ? draw.pick(sides) : null,
        tool: draw.chance(0.7) ? { text: draw.pick(tools), resource: null } : null,
        after: [...waits].map((other) => waiting(toStep(other))),
      }),
    )
    layers.at(-1)!.push(id)
  }
  const lids = ['top', 'bottom'].map((opening) =>
    step(`shut ${opening}`, {
      ...put(`${opening} lid`),
      ...onto('base'),
      ...shuts('base', opening),
      turn: `${opening} up`,
      tool: { text: 'torque driver', resource: null },
    }),
  )
  return { ...plan([...made, ...lids], { base: ['top', 'bottom'] }), ground: 'base' }
}
