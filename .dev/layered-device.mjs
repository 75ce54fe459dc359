// Random devices for the bench and tests of assembly orders: steps in layers, each waiting for some of the layer below,
// put through two openings from two or three sides with a handful of tools; tests among them; two lids at the end.

/** A small seeded generator of its own, the same on every machine. */
function drawing(seed) {
  let state = (seed ^ 0x2545f491) >>> 0
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    const mixed = Math.imul(state ^ (state >>> 16), 0x45d9f3b)
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296
  }
  for (let warm = 0; warm < 8; warm++) next()
  return {
    chance: (share) => next() < share,
    pick: (list) => list[Math.floor(next() * list.length)],
  }
}

const at = { file: 'project.yaml', line: 1, column: 1, length: 0 }
const seconds = { text: '5 min', unit: 'min', optimistic: 300, likely: 300, pessimistic: 300, mean: 300 }

const silent = {
  at,
  attention: 'hands',
  who: [],
  people: 1,
  pausable: true,
  least: 15,
  put: null,
  instances: [],
  into: null,
  onto: null,
  method: null,
  light: false,
  lightSaid: false,
  mates: null,
  engagement: null,
  around: null,
  locker: false,
  fasteners: [],
  from: null,
  turn: null,
  tool: null,
  fixture: null,
  machine: null,
  torque: null,
  adhesive: null,
  cure: null,
  time: seconds,
  timeAssumed: false,
  check: null,
  cautions: [],
  shuts: [],
  opens: [],
  test: null,
  action: null,
  needs: [],
  reaches: [],
  after: [],
  before: [],
  beforeLastOf: [],
  looseUntil: [],
  within: null,
  fails: null,
  rework: null,
  together: false,
  note: null,
}

const toStep = (id) => ({ kind: 'step', assembly: null, id, at })
const waiting = (id) => ({ target: toStep(id), lag: { minutes: 0 }, within: null, at })

/** The plan of a device of so many steps, lids among them; each layer has about five. */
export function layeredDevice({ steps, seed }) {
  const draw = drawing(seed)
  const sides = ['top up', 'bottom up', 'side up']
  const tools = ['hex 2', 'torque driver', 'arbor press', 'tweezers']
  const layers = []
  const made = []
  for (let k = 0; k < steps - 2; k++) {
    if (k % 5 === 0) layers.push([])
    const below = layers.at(-2) ?? []
    const waits = new Set(
      below.length === 0 ? [] : [1, 2].flatMap(() => (draw.chance(0.6) ? [draw.pick(below)] : [])),
    )
    const test = draw.chance(0.12)
    const id = `step ${k}`
    made.push({
      ...silent,
      id,
      ...(test ? { test: 'works as drawn' } : { put: { part: `part ${k}`, count: 1, at } }),
      ...(test
        ? { beforeLastOf: [{ kind: 'opening', assembly: null, body: 'base', opening: 'top', at }] }
        : { into: { body: 'base', through: draw.pick(['top', 'bottom', null]), at } }),
      turn: draw.chance(0.7) ? draw.pick(sides) : null,
      tool: draw.chance(0.7) ? { text: draw.pick(tools), resource: null } : null,
      after: [...waits].map(waiting),
    })
    layers.at(-1).push(id)
  }
  const lids = ['top', 'bottom'].map((opening) => ({
    ...silent,
    id: `shut ${opening}`,
    put: { part: `${opening} lid`, count: 1, at },
    onto: { body: 'base', at },
    shuts: [{ body: 'base', opening, at }],
    turn: `${opening} up`,
    tool: { text: 'torque driver', resource: null },
  }))
  const all = [...made, ...lids].map((step, index) => ({ ...step, index }))
  return { of: null, at, openings: new Map([['base', ['top', 'bottom']]]), steps: all, ground: 'base' }
}
