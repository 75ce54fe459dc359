// Random but sensible projects for benches and property tests: every one can be built, in the order written.
// One seed, one text. Only what is used is written down, so that nothing earns a warning.

/** A small seeded generator of its own: no clock and no Math.random, the same on every machine. */
function drawing(seed) {
  let state = (seed ^ 0x5bd1e995) >>> 0
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    // The low bits of a congruential generator repeat soon: the high half is folded in.
    const mixed = Math.imul(state ^ (state >>> 16), 0x45d9f3b)
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296
  }
  for (let warm = 0; warm < 8; warm++) next()
  const whole = (from, to) => from + Math.floor(next() * (to - from + 1))
  return {
    whole,
    chance: (share) => next() < share,
    pick: (list) => list[whole(0, list.length - 1)],
    euros: (from, to) => whole(from * 20, to * 20) / 20,
  }
}

const cutter = (diameter, tool, worth) => ({ diameter: `${diameter} mm`, tool, life: '4 h', worth })

const bench = {
  machines: {
    mill: { hours: { daily: '09:00-22:00' }, rate: '6 EUR/h' },
    lathe: { hours: { daily: '09:00-22:00' }, rate: '5 EUR/h' },
    'resin printer': { prints: 'vat', rate: '1.50 EUR/h' },
    oven: { capacity: 4 },
    'arbor press': {},
  },
  tools: { 'torque driver': { qty: 1 }, 'bore gauge': { qty: 1 } },
  cutters: {
    'flat-6': cutter(6, 'carbide', 19),
    'flat-3': cutter(3, 'carbide', 14),
    'drill 2.5': cutter(2.5, 'hss', 1.4),
    'reamer 4': cutter(4, 'hss', 12),
    'tap M3': { thread: 'M3', tool: 'hss', life: '1 h', worth: 6 },
    'turning tool': { tool: 'carbide', life: '4 h', worth: 7 },
  },
}

const vendorNames = ['metal yard', 'bolt counter', 'chip store', 'board works', 'gear shelf', 'colour bath']

/** The project as it grows, with about how many tasks it has by now. */
function begin({ tasks, seed }) {
  const draw = drawing(seed)
  const qty = tasks < 60 ? draw.whole(1, 2) : draw.whole(1, 3)
  const project = {
    device: { name: `Random device ${seed >>> 0}`, qty, currency: 'EUR', start: '2026-03-02' },
    people: {
      ana: {
        hours: { 'mon-thu': '19:30-22:30', sat: '10:00-16:00' },
        off: [`2026-03-${draw.whole(10, 28)}`],
        setup: '5 min',
        'clean-up': '10 min',
      },
      ben: { hours: { 'mon-fri': '19:00-22:00', sun: '14:00-18:00' } },
    },
    machines: {},
    tools: {},
    cutters: {},
    materials: {},
    vendors: {},
    plates: {},
    work: {},
    parts: {},
  }
  return { draw, qty, project, wanted: tasks, count: 0, number: 0, loose: [], onPlate: 0, fixtures: [] }
}

/** Takes a thing of the bench into the project and gives its name. */
function use(plan, section, name) {
  plan.project[section][name] = bench[section][name]
  return name
}

function numbered(plan, noun) {
  plan.number += 1
  return `${noun} ${plan.number}`
}

/** Three points or one value, in minutes. */
function minutes({ draw }, from, to) {
  const likely = draw.whole(from, to)
  if (draw.chance(0.6)) return `${likely} min`
  return `${Math.max(1, Math.floor(likely * 0.7))}..${likely}..${likely + draw.whole(1, likely + 1)} min`
}

function workingDays({ draw }, from, to) {
  const likely = draw.whole(from, to)
  return draw.chance(0.3)
    ? `${likely} wd`
    : `${Math.max(1, likely - 1)}..${likely}..${likely + draw.whole(1, 4)} wd`
}

function vendor(plan, name) {
  const { draw, project } = plan
  if (project.vendors[name]) return name
  plan.count += 4
  const foreign = name === 'chip store' && draw.chance(0.5)
  if (foreign) project.exchange = { USD: '0.92 EUR' }
  project.vendors[name] = {
    transit: workingDays(plan, 1, 4),
    freight: draw.euros(4, 14),
    ...(foreign ? { currency: 'USD', duty: '2.7 %', tax: '19 %' } : {}),
    ...(draw.chance(0.4) ? { 'free over': draw.whole(40, 120) } : {}),
    ...(draw.chance(0.3) ? { 'minimum order': draw.whole(10, 25) } : {}),
    ...(draw.chance(0.3) ? { cutoff: '15:00' } : {}),
    ...(draw.chance(0.3) ? { off: ['2026-04-03', '2026-04-06'] } : {}),
    ...(draw.chance(0.2) ? { carrier: { days: 'mon-sat' } } : {}),
  }
  return name
}

function offer(plan, from, to, name = plan.draw.pick(vendorNames)) {
  const { draw } = plan
  const price = draw.euros(from, to)
  return {
    vendor: vendor(plan, name),
    price: draw.chance(0.3) ? { 1: price, 10: Math.round(price * 80) / 100 } : price,
    lead: workingDays(plan, 1, 6),
    ...(draw.chance(0.25) && to < 5 ? { pack: draw.pick([5, 10]) } : {}),
  }
}

function bought(plan, noun = plan.draw.pick(['bearing', 'spring', 'magnet', 'motor', 'window', 'seal'])) {
  const { draw } = plan
  const name = numbered(plan, noun)
  const small = draw.chance(0.6)
  plan.project.parts[name] = {
    kind: 'bought',
    offers: [offer(plan, small ? 1 : 8, small ? 4 : 40)],
    ...(draw.chance(0.2) ? { have: draw.whole(1, 3), worth: draw.euros(1, 4) } : {}),
    ...(draw.chance(0.2) ? { spares: 1 } : {}),
  }
  return name
}

function screw(plan) {
  const { parts } = plan.project
  const name = plan.draw.pick(['screw M2x6', 'screw M3x8'])
  parts[name] ??= { kind: 'bought', offers: [{ ...offer(plan, 1, 2, 'bolt counter'), pack: 20 }] }
  return name
}

function metal(plan, name) {
  const { draw, project } = plan
  project.materials[name] ??= {
    density: name === 'brass' ? '8.5 g/cm3' : '2.7 g/cm3',
    forms: [
      { bar: '30 mm', length: '500 mm', offers: [offer(plan, 12, 30, 'metal yard')] },
      { plate: '300 x 200 x 15 mm', offers: [offer(plan, 30, 60, 'metal yard')] },
    ],
    ...(draw.chance(0.3) ? { kerf: '1.5 mm' } : {}),
  }
  return name
}

function operation(plan, turned) {
  const { draw } = plan
  if (turned)
    return {
      turn: { cutter: use(plan, 'cutters', 'turning tool'), time: minutes(plan, 6, 25), attention: 'hands' },
    }
  return draw.pick([
    () => ({ face: { cutter: use(plan, 'cutters', 'flat-6'), stock: '0.5 mm', time: minutes(plan, 4, 10) } }),
    () => ({ rough: { cutter: use(plan, 'cutters', 'flat-6'), depth: '1 mm', time: minutes(plan, 10, 60) } }),
    () => ({ finish: { cutter: use(plan, 'cutters', 'flat-3'), time: minutes(plan, 8, 30) } }),
    () => ({
      drill: {
        cutter: use(plan, 'cutters', 'drill 2.5'),
        holes: draw.whole(1, 8),
        time: minutes(plan, 3, 10),
      },
    }),
    () => ({
      ream: { cutter: use(plan, 'cutters', 'reamer 4'), time: minutes(plan, 2, 5), attention: 'hands' },
    }),
    () => ({
      tap: { cutter: use(plan, 'cutters', 'tap M3'), time: minutes(plan, 2, 8), attention: 'hands' },
    }),
  ])()
}

function setup(plan, hold, turned) {
  const { draw } = plan
  const pieces = draw.chance(0.5)
  const ops = Array.from({ length: draw.whole(1, 3) }, () => operation(plan, turned))
  plan.count += 2 + (pieces ? plan.qty * 2 : ops.length)
  return {
    setup: {
      machine: use(plan, 'machines', turned ? 'lathe' : 'mill'),
      hold,
      time: minutes(plan, 10, 30),
      ...(pieces ? { load: '2 min', unload: '1 min' } : {}),
    },
    ops,
  }
}

/** Mostly a fixture made for one part; sometimes one that serves several. */
function fixture(plan) {
  const { draw } = plan
  if (plan.fixtures.length > 0 && draw.chance(0.4)) return draw.pick(plan.fixtures)
  const name = numbered(plan, 'fixture')
  plan.project.parts[name] = {
    kind: 'machined',
    role: 'fixture',
    material: metal(plan, 'brass'),
    stock: { bar: '30 mm', length: '40 mm' },
    route: [setup(plan, 'chuck', true), { deburr: { time: '5 min' } }],
    ...(draw.chance(0.2) ? { qty: 2 } : {}),
  }
  plan.count += 1
  plan.fixtures.push(name)
  return name
}

function machined(plan, noun) {
  const { draw, qty } = plan
  const name = numbered(plan, noun)
  const turned = draw.chance(0.3)
  const route = [setup(plan, turned ? 'chuck' : 'vice', turned)]
  const more = draw.whole(0, 2)
  for (let at = 0; at < more; at++)
    route.push(setup(plan, draw.chance(0.4) ? fixture(plan) : 'soft jaws', false))
  route.push({ deburr: { time: minutes(plan, 4, 12) } })
  if (draw.chance(0.25)) route.push({ cure: { time: '2 h', machine: use(plan, 'machines', 'oven') } })
  if (draw.chance(0.6))
    route.push({ inspect: { time: minutes(plan, 4, 12), tool: use(plan, 'tools', 'bore gauge') } })
  if (draw.chance(0.2))
    route.push({
      outside: { what: 'black anodise', offer: { ...offer(plan, 4, 9, 'colour bath'), minimum: 30 } },
    })
  plan.count += route.length - 1 - more
  plan.project.parts[name] = {
    kind: 'machined',
    material: metal(plan, draw.pick(['al-6082', 'brass'])),
    stock: turned
      ? { bar: '30 mm', length: `${draw.whole(15, 60)} mm` }
      : { plate: `${draw.whole(30, 90)} x ${draw.whole(20, 60)} x 15 mm` },
    ...(draw.chance(0.3) ? { after: [someWork(plan)] } : {}),
    ...(qty > 1 && draw.chance(0.2) ? { lot: 1 } : {}),
    route,
  }
  return name
}

const afterPrint = { load: '10 min', unload: '5 min', wash: '10 min', dry: '30 min', cure: '20 min' }

function printed(plan, noun) {
  const { draw, project } = plan
  const name = numbered(plan, noun)
  const job = { machine: use(plan, 'machines', 'resin printer'), material: resin(plan) }
  const shared = draw.chance(0.6)
  if (shared && plan.onPlate % 4 === 0) {
    project.plates[`plate ${plan.onPlate / 4 + 1}`] = { ...job, time: minutes(plan, 120, 500), ...afterPrint }
    plan.count += 6
  }
  const own = shared
    ? { plate: `plate ${Math.floor(plan.onPlate / 4) + 1}` }
    : { time: minutes(plan, 60, 400), ...afterPrint }
  if (shared) plan.onPlate += 1
  else plan.count += 6
  project.parts[name] = { kind: 'printed', ...job, volume: `${draw.whole(1, 30)} cm3`, ...own }
  return name
}

function resin(plan) {
  plan.project.materials.resin ??= {
    density: '1.15 g/cm3',
    forms: [{ volume: '500 mL', have: '100 mL', offers: [offer(plan, 20, 40, 'gear shelf')] }],
  }
  return 'resin'
}

function board(plan) {
  const { draw } = plan
  const name = numbered(plan, 'board')
  const places = Array.from({ length: draw.whole(1, 4) }, () => {
    const component = bought(plan, draw.pick(['resistor', 'chip', 'plug']))
    return draw.chance(0.5) ? component : `${component} x${draw.whole(2, 5)}`
  })
  plan.project.parts[name] = {
    kind: 'board',
    outline: '30 x 20 mm',
    layers: 2,
    offers: [
      { ...offer(plan, 1, 4, 'board works'), ...(draw.chance(0.6) ? { needs: [someWork(plan)] } : {}) },
    ],
    places,
    solder: { time: minutes(plan, 15, 60) },
  }
  plan.count += 1
  return name
}

/** Work that is here already or new work after it. */
function someWork(plan) {
  const { draw, project } = plan
  const known = Object.keys(project.work)
  if (known.length > 0 && draw.chance(0.6)) return draw.pick(known)
  const name = numbered(plan, draw.pick(['drawing', 'firmware', 'toolpaths']))
  project.work[name] = {
    time: minutes(plan, 30, 240),
    ...(known.length > 0 && draw.chance(0.5) ? { after: [draw.pick(known)] } : {}),
    ...(draw.chance(0.3) ? { who: draw.pick(['ana', 'ben']) } : {}),
  }
  plan.count += 1
  return name
}

function child(plan) {
  return plan.draw.pick([
    () => machined(plan, 'ring'),
    () => printed(plan, 'holder'),
    () => board(plan),
    () => bought(plan),
    () => bought(plan),
  ])()
}

function joined(plan) {
  const { draw } = plan
  return draw.pick([
    () => ({
      by: 'screw',
      with: `${screw(plan)} x${draw.whole(2, 4)}`,
      tool: use(plan, 'tools', 'torque driver'),
      torque: '0.5 N m',
    }),
    () => ({ by: 'press', light: true, machine: use(plan, 'machines', 'arbor press') }),
    () => ({ by: 'glue', adhesive: 'epoxy', cure: draw.pick(['30 min', '4 h', '12 h']) }),
    () => ({ by: 'seat' }),
    () => ({ by: 'snap' }),
  ])()
}

/**
 * Steps that fill a body through its openings, test it and shut it. Each step may wait for earlier ones only, and all
 * that shuts comes last, so the order written is one that can be done.
 */
function stepsFor(plan, body, inside, openings, lids) {
  const { draw } = plan
  const steps = []
  const names = () => steps.map(({ name }) => name)
  for (const part of inside) {
    const add = joined(plan)
    if (add.by === 'glue' && draw.chance(0.5)) {
      steps.push({ name: numbered(plan, 'wipe'), do: 'wipe the bond faces', time: '5 min' })
      add.within = '45 min'
    }
    steps.push({
      name: numbered(plan, 'fit'),
      put: part,
      in: body,
      ...(draw.chance(0.5) ? { through: draw.pick(openings) } : {}),
      ...add,
      ...(steps.length > 0 && !add.within && draw.chance(0.4) ? { after: [waitFor(plan, names())] } : {}),
      ...(draw.chance(0.08) ? { people: 2 } : {}),
      time: minutes(plan, 3, 20),
    })
  }
  if (draw.chance(0.6)) steps.push(testOf(plan, `${body}.${openings[0]}`, names()))
  openings.forEach((opening, at) => {
    steps.push({
      name: numbered(plan, 'shut'),
      put: lids[at],
      on: body,
      by: 'snap',
      shut: `${body}.${opening}`,
      time: '3 min',
    })
  })
  const cures = steps.filter(({ cure }) => cure).length
  plan.count += (steps.length + cures) * plan.qty
  return steps
}

function waitFor(plan, names) {
  const step = plan.draw.pick(names)
  return plan.draw.chance(0.2) ? { step, lag: plan.draw.pick(['2 h', '1 wd']) } : step
}

function testOf(plan, opening, names) {
  const { draw } = plan
  return {
    name: numbered(plan, 'check'),
    test: 'works as drawn',
    ...(names.length > 0 && draw.chance(0.5) ? { after: [draw.pick(names)] } : {}),
    ...(draw.chance(0.5) ? { needs: [someWork(plan)] } : {}),
    before_last_of: [opening],
    time: minutes(plan, 10, 30),
    fails: `${draw.whole(1, 5) * 5} %`,
    rework: minutes(plan, 15, 40),
  }
}

/** A unit built apart: a body, what goes in, and lids. */
function unit(plan) {
  const { draw } = plan
  const name = numbered(plan, 'unit')
  const body = draw.chance(0.6) ? machined(plan, 'body') : printed(plan, 'shell')
  const openings = draw.chance(0.5) ? ['top'] : ['top', 'bottom']
  const inside = Array.from({ length: draw.whole(1, 4) }, () => child(plan))
  const lids = openings.map(() => printed(plan, 'lid'))
  plan.project.parts[name] = {
    kind: 'assembly',
    openings: { [body]: openings },
    steps: stepsFor(plan, body, inside, openings, lids),
  }
  return name
}

/** A random but sensible project as YAML text; see the declaration beside this file. */
export function generateProject(settings) {
  const plan = begin(settings)
  const base = machined(plan, 'base')
  const lid = printed(plan, 'cover')
  // The steps at the end come on top of what is counted here.
  while (plan.count + (plan.loose.length + 2) * plan.qty < plan.wanted || plan.loose.length === 0) {
    const left = plan.wanted - plan.count
    plan.loose.push(left > 40 && plan.draw.chance(0.7) ? unit(plan) : child(plan))
  }
  const steps = stepsFor(plan, base, plan.loose, ['top'], [lid])
  const shut = steps.at(-1).name
  steps.push({
    name: numbered(plan, 'run'),
    test: 'runs for half an hour',
    after: [shut],
    together: true,
    time: '40 min',
    fails: '10 %',
    rework: '30 min',
  })
  const used = Object.entries(plan.project).filter(([, section]) => Object.keys(section).length > 0)
  return write({
    ...Object.fromEntries(used),
    assembly: { ground: base, openings: { [base]: ['top'] }, steps },
  })
}

const plain = /^[A-Za-z][A-Za-z0-9 ._-]*$/
const taken = new Set(['yes', 'no', 'true', 'false', 'null', 'on', 'off', 'y', 'n'])

function word(value) {
  if (typeof value !== 'string') return String(value)
  return plain.test(value) && !value.endsWith(' ') && !taken.has(value.toLowerCase())
    ? value
    : JSON.stringify(value)
}

/** `off` and `on` are keys of the language; in YAML 1.2 they are texts, so keys stay bare. */
const key = (name) => (plain.test(name) || /^\d+$/.test(name) ? name : JSON.stringify(name))

function flow(value) {
  if (Array.isArray(value)) return `[${value.map(flow).join(', ')}]`
  if (typeof value !== 'object') return word(value)
  return `{${Object.entries(value)
    .map(([name, inner]) => `${key(name)}: ${flow(inner)}`)
    .join(', ')}}`
}

/** Lines of block YAML; what fits a line stays on one. */
function block(value, pad) {
  if (Array.isArray(value)) {
    return value
      .map((item) => {
        const line = `${pad}- ${flow(item)}`
        if (typeof item !== 'object' || line.length <= 110) return line
        return `${pad}- ${block(item, `${pad}  `).trimStart()}`
      })
      .join('\n')
  }
  return Object.entries(value)
    .map(([name, inner]) => {
      const line = `${pad}${key(name)}: ${flow(inner)}`
      if (typeof inner !== 'object' || (pad !== '' && line.length <= 110)) return line
      return `${pad}${key(name)}:\n${block(inner, `${pad}  `)}`
    })
    .join('\n')
}

function write(project) {
  return `${block(project, '')}\n`
}
