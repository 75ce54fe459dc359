/** Short ways to write resolved projects in tests: what a test does not say is empty, plain or free. */
import Fraction from 'fraction.js'
import { instantOf, parseDay } from '../../../src/base/clock.ts'
import type { Quantity } from '../../../src/base/quantity.ts'
import { type ThreePoint, threePoint } from '../../../src/base/three-point.ts'
import type {
  Cutter,
  DayPattern,
  Demand,
  Machine,
  MachinedWay,
  Material,
  MaterialForm,
  Offer,
  Operation,
  OutsideStep,
  Part,
  Person,
  Plate,
  PrintedWay,
  Project,
  SetupStep,
  Size,
  Stock,
  Use,
  Vendor,
} from '../../../src/model/project.ts'
import type { PlanTask, Subject, TaskNetwork } from '../../../src/model/tasks.ts'

export const here = { file: 'project.yaml', line: 1, column: 1, length: 0 }

export function frac(value: string | number): Fraction {
  return new Fraction(value)
}

/** A quantity in base units, as `mm(25)` or `quantity(9.4, 'length^3')`. */
export function quantity(value: string | number, dims: string): Quantity {
  return { value: frac(value), dims, unit: '', text: `${value}` }
}

export const mm = (value: string | number): Quantity => quantity(value, 'length')
export const mm3 = (value: string | number): Quantity => quantity(value, 'length^3')
export const grams = (value: string | number): Quantity => quantity(value, 'mass')

/** Three points in base units: seconds, or working days. */
export function points(low: number, likely = low, high = likely, dims = 'time'): ThreePoint {
  return {
    ...threePoint(frac(low), frac(likely), frac(high)),
    dims,
    unit: '',
    text: `${low}..${likely}..${high}`,
  }
}

export const days = (low: number, likely = low, high = likely): ThreePoint =>
  points(low, likely, high, 'workingDays')

const weekdays: DayPattern = { weekly: [true, true, true, true, true, false, false], off: [] }

/** A vendor that charges nothing beside the goods. */
export function aVendor(id: string, facts: Partial<Vendor> = {}): Vendor {
  return {
    id,
    at: here,
    days: weekdays,
    cutoff: 720,
    post: 1080,
    transit: days(0),
    carrier: weekdays,
    currency: 'EUR',
    freight: null,
    freeOver: null,
    minimumOrder: null,
    clearance: null,
    duty: frac(0),
    tax: frac(0),
    order: points(0),
    receive: points(0),
    url: null,
    ...facts,
  }
}

/** Prices as `{1: '2.00', 25: '1.50'}`, one price, or `null` for unknown. */
export function anOffer(
  vendor: string,
  price: string | number | Readonly<Record<number, string>> | null,
  facts: Partial<Offer> = {},
): Offer {
  const breaks = typeof price === 'object' && price !== null ? price : { 1: `${price}` }
  const prices =
    price === null
      ? null
      : Object.entries(breaks).map(([from, each]) => ({ from: Number(from), price: frac(each) }))
  return {
    at: here,
    vendor,
    prices,
    currency: 'EUR',
    lead: days(1),
    pack: 1,
    moq: 1,
    minimum: null,
    code: null,
    url: null,
    cart: null,
    needs: [],
    note: null,
    ...facts,
  }
}

const noRoute = { lot: null, features: [], model: null, finished: null, mesh: null, route: [] }
const plainly = { value: null, package: null, attrition: null }

/** A bought part, unless `way` says otherwise. */
export function aPart(id: string, offers: readonly Offer[], facts: Partial<Part> = {}): Part {
  return {
    id,
    at: here,
    role: 'device',
    qty: null,
    spares: 0,
    have: 0,
    worth: null,
    number: null,
    description: null,
    revision: null,
    drawing: null,
    general: null,
    mass: null,
    massWorked: [],
    yield: frac(1),
    tries: 1,
    wears: false,
    cautions: [],
    note: null,
    after: [],
    choice: null,
    way: { kind: 'bought', ...noRoute, ...plainly, offers },
    ...facts,
  }
}

export function aBoard(offers: readonly Offer[]): Part['way'] {
  return {
    kind: 'board',
    ...noRoute,
    offers,
    outline: null,
    layers: 2,
    thickness: null,
    made: null,
    panel: null,
    components: [],
    worked: [],
    places: [],
    solder: null,
  }
}

export function machined(
  material: string | null,
  stock: Stock | null,
  facts: Partial<MachinedWay> = {},
): MachinedWay {
  return { kind: 'machined', ...noRoute, material, stock, ...facts }
}

export function aStock(size: Size, form: string | null, facts: Partial<Stock> = {}): Stock {
  return { at: here, size, kerf: mm(2), facing: null, form, offers: [], ...facts }
}

export const bar = (across: number, length: string | number): Size => ({
  shape: 'bar',
  across: mm(across),
  length: mm(length),
})

export const plate = (length: number, width: number, thickness: number): Size => ({
  shape: 'plate',
  length: mm(length),
  width: mm(width),
  thickness: mm(thickness),
})

export function aForm(id: string, size: Size, facts: Partial<MaterialForm> = {}): MaterialForm {
  return { at: here, id, size, have: frac(0), worth: null, offers: [], ...facts }
}

export function aMaterial(
  id: string,
  forms: readonly MaterialForm[],
  facts: Partial<Material> = {},
): Material {
  return { id, at: here, density: null, like: null, kerf: mm(2), grip: mm(0), forms, cautions: [], ...facts }
}

const noJob = {
  at: here,
  machine: null,
  time: null,
  load: null,
  unload: null,
  wash: null,
  attention: null,
  dry: null,
  cure: null,
}

const nothingSaid = {
  height: null,
  footprint: null,
  supports: null,
  infill: null,
  walls: null,
  wall: null,
  hole: null,
  shrink: null,
}
const nothingKnown = {
  heightMm: null,
  footprintMm: null,
  materialMm3: null,
  seconds: null,
  worked: [],
  assumed: [],
}

export function printed(
  material: string | null,
  volume: string | number | null,
  facts: Partial<PrintedWay> = {},
): PrintedWay {
  const job = { ...noJob, material }
  return {
    kind: 'printed',
    ...noRoute,
    job,
    volume: volume === null ? null : mm3(volume),
    volumeFrom: 'stated',
    layer: null,
    plate: null,
    said: nothingSaid,
    piece: nothingKnown,
    runs: [],
    ...facts,
  }
}

export function aPlate(id: string, parts: readonly string[], material: string | null): Plate {
  return { id, at: here, job: { ...noJob, material }, after: [], parts, runs: [] }
}

export function aCutter(id: string, facts: Partial<Cutter> = {}): Cutter {
  return {
    id,
    at: here,
    have: 0,
    life: null,
    worth: null,
    offers: [],
    facts: new Map(),
    numbers: new Map(),
    ...facts,
  }
}

export function aPerson(id: string, rate: string | number): Person {
  return { id, at: here, hours: null, rate: frac(rate), setUp: 0, cleanUp: 0 }
}

export function aMachine(id: string, rate: string | number): Machine {
  return {
    id,
    at: here,
    hours: null,
    rate: frac(rate),
    capacity: 1,
    users: [],
    travel: null,
    spindle: new Map(),
    numbers: new Map(),
    prints: null,
    deposits: null,
    bed: null,
    bottomLayers: null,
    note: null,
  }
}

/** An operation with a cutter for so many seconds a piece. */
export function anOperation(
  cutter: string | null,
  seconds: number,
  facts: Partial<Operation> = {},
): Operation {
  return {
    process: 'rough',
    at: here,
    attention: 'nearby',
    who: [],
    people: 1,
    pausable: true,
    least: 15,
    time: points(seconds),
    each: true,
    machine: null,
    cutter,
    tool: null,
    fixture: null,
    features: [],
    facts: new Map(),
    numbers: new Map(),
    cutting: null,
    changeSeconds: 0,
    timeFrom: 'stated',
    worked: [],
    check: null,
    note: null,
    ...facts,
  }
}

export function aSetup(operations: readonly Operation[], facts: Partial<SetupStep> = {}): SetupStep {
  return {
    kind: 'setup',
    at: here,
    machine: null,
    hold: { kind: 'nothing' },
    on: [],
    time: null,
    load: null,
    unload: null,
    zero: null,
    changeBack: null,
    clearance: null,
    who: [],
    people: 1,
    note: null,
    operations,
    ...facts,
  }
}

export function outside(offer: Offer, facts: Partial<OutsideStep> = {}): OutsideStep {
  return { kind: 'outside', at: here, offer, what: null, needs: [], check: null, note: null, ...facts }
}

/** What is written of a project; everything else is empty. `needed` gives how many of each part are asked for. */
export interface ProjectFacts extends Partial<Pick<Project, 'limits' | 'assembly'>> {
  readonly devices?: number
  readonly currency?: string
  readonly exchange?: Readonly<Record<string, string>>
  readonly people?: readonly Person[]
  readonly machines?: readonly Machine[]
  readonly cutters?: readonly Cutter[]
  readonly materials?: readonly Material[]
  readonly vendors?: readonly Vendor[]
  readonly plates?: readonly Plate[]
  readonly parts?: readonly Part[]
  readonly needed?: Readonly<Record<string, number>>
  readonly uses?: Readonly<Record<string, readonly Use[]>>
}

/** A resolved project. Parts are needed once per device where `needed` is silent. */
export function aProject(facts: ProjectFacts): Project {
  const devices = facts.devices ?? 1
  return {
    file: 'project.yaml',
    fingerprint: '',
    device: {
      at: here,
      name: 'Stirrer',
      revision: null,
      description: null,
      qty: devices,
      currency: facts.currency ?? 'EUR',
      general: null,
      start: parseDay('2026-02-02')!,
      wanted: null,
    },
    limits: facts.limits ?? { cash: null, mass: null, envelope: null },
    exchange: new Map(Object.entries(facts.exchange ?? {}).map(([code, rate]) => [code, frac(rate)])),
    people: byId(facts.people),
    machines: byId(facts.machines),
    tools: new Map(),
    cutters: byId(facts.cutters),
    materials: byId(facts.materials),
    vendors: byId(facts.vendors),
    plates: byId(facts.plates),
    work: new Map(),
    parts: byId(facts.parts),
    assembly: facts.assembly ?? null,
    chains: new Map(),
    meshes: [],
    demand: new Map(
      (facts.parts ?? []).map((part) => [
        part.id,
        demandFor(part, facts.needed?.[part.id] ?? devices, facts.uses?.[part.id] ?? []),
      ]),
    ),
  }
}

function demandFor({ spares, have }: Part, needed: number, uses: readonly Use[]): Demand {
  const wanted = needed === 0 ? 0 : needed + spares
  const fromStock = Math.min(have, wanted)
  return { perDevice: 0, needed, spares, fromStock, toGet: wanted - fromStock, uses }
}

function byId<T extends { readonly id: string }>(all: readonly T[] = []): ReadonlyMap<string, T> {
  return new Map(all.map((each) => [each.id, each]))
}

const noSubject: Subject = {
  part: null,
  work: null,
  cart: null,
  plate: null,
  assembly: null,
  step: null,
  lot: null,
  device: null,
  routeStep: null,
}

/** A task as the money sees it: whom it is for, who and what does it, and for how many minutes. */
export function aTask(
  id: string,
  subject: Partial<Subject>,
  facts: Partial<Pick<PlanTask, 'machine' | 'machineMinutes' | 'handsMinutes' | 'who'>>,
): PlanTask {
  return {
    id,
    title: id,
    kind: 'hand',
    at: here,
    subject: { ...noSubject, ...subject },
    minutes: 0,
    likelyMinutes: 0,
    time: null,
    attention: 'hands',
    who: [],
    people: 1,
    pausable: true,
    least: 15,
    machine: null,
    takesMachine: false,
    tools: [],
    fixtures: [],
    machineMinutes: 0,
    handsMinutes: 0,
    release: instantOf(parseDay('2026-02-02')!, 0),
    delivery: null,
    ...facts,
  }
}

/** Tasks alone, as far as the money goes. */
export function tasksOnly(tasks: readonly PlanTask[]): TaskNetwork {
  return { tasks, links: [], holds: [], fixtures: new Map(), ready: new Map() }
}
