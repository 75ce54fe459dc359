import type { ThreePoint } from '../base/three-point.ts'
import type { Hold, Operation, Part, Project, RouteStep, SetupStep } from '../model/project.ts'
import type { Cell, Row } from './cells.ts'
import { blank, text, tick } from './make-cells.ts'
import { sayCutting, saySettings, setKeys } from './say-cutting.ts'
import { sayPrice } from './say-price.ts'
import { sayTarget } from './say-target.ts'
import { sayRange, sayTime, sentences } from './say-time.ts'

/** One step of a route sheet. */
export interface RouteStand {
  readonly project: Project
  readonly part: Part
  readonly number: number
  readonly planned: string
  readonly pieces: number
  readonly lots: number
}

const capital = (words: string): string => `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}`

const stay: Readonly<Record<Operation['attention'], string>> = {
  hands: 'stay at it',
  nearby: 'stay within earshot',
  none: 'nobody needed',
}

/** The rows of a step: the setup and its operations, work at the bench, or work sent out. */
export function routeRows(stand: RouteStand, step: RouteStep): readonly Row[] {
  if (step.kind === 'setup') return setupRows(stand, step)
  if (step.kind === 'outside') return [outsideRow(stand, step), ...lotsRow(stand)]
  return [workRow(stand, step.operation), ...lotsRow(stand)]
}

interface Said {
  readonly number: string
  readonly what: Cell
  /** What to set on the machine. */
  readonly set?: string
  readonly how: string
  readonly time: string
  readonly planned: string
}

function row({ number, what, set = '', how, time, planned }: Said): Row {
  return {
    cells: [text(number), what, text(set), text(how), text(time, { indent: 1 }), text(planned), tick()],
  }
}

function setupRows(stand: RouteStand, step: SetupStep): readonly Row[] {
  const { number } = stand
  const what = text(`Set up${step.machine === null ? '' : `: ${step.machine}`}`, { role: 'strong' })
  const head = {
    ...row({
      number: `${number}`,
      what,
      how: sayClamping(stand.project, step),
      time: once(step.time),
      planned: stand.planned,
    }),
    keep: true,
  }
  const operations = step.operations.map((operation, at): Row => {
    const name = text(titleOf(operation), { indent: 1 })
    return row({
      number: `${number}.${at + 1}`,
      what: name,
      set: saySettings(operation),
      how: sayOperation(stand.part, operation),
      time: timeOf(operation),
      planned: '',
    })
  })
  return [head, ...operations, ...lotsRow(stand)]
}

const once = (time: ThreePoint | null): string => (time === null ? '' : `${sayTime(time)} once a lot`)

const timeOf = ({ time, each }: Operation): string =>
  time === null ? 'not stated' : `${sayTime(time)} ${each ? 'a piece' : 'a lot'}`

/** Where several lots pass, a box for each below the step. */
function lotsRow({ lots }: RouteStand): readonly Row[] {
  if (lots < 2) return []
  const boxes = Array.from({ length: lots }, (_, at) => `☐ ${at + 1}`).join('   ')
  return [{ cells: [blank(), text(`Lots done:   ${boxes}`, { span: 6 })] }]
}

function titleOf(operation: Operation): string {
  return capital(operation.facts.get('what') ?? operation.process)
}

function sayHold(hold: Hold): string | null {
  if (hold.kind === 'fixture') return `held in the fixture ${hold.part}`
  if (hold.kind === 'tool') return `held by ${hold.tool}`
  return hold.kind === 'words' ? `held by ${hold.text}` : null
}

function sayClamping(project: Project, step: SetupStep): string {
  const cutters = [...new Set(step.operations.flatMap(({ cutter }) => (cutter === null ? [] : [cutter])))]
  const load = step.load === null ? null : `load ${sayTime(step.load)}`
  const unload = step.unload === null ? null : `unload ${sayTime(step.unload)}`
  const change = [load, unload].filter((one) => one !== null).join(', ')
  return sentences(
    sayHold(step.hold),
    step.zero === null ? null : `zero: ${step.zero}`,
    change === '' ? null : `${change} a piece`,
    sayPeople(step.who, step.people, project),
    sayRange(step.time) && `setting up takes ${sayRange(step.time)}`,
    cutters.length === 0 ? null : `cutters: ${cutters.map((one) => sayCutter(project, one)).join('; ')}`,
    step.note,
  )
}

function sayCutter(project: Project, id: string): string {
  const cutter = project.cutters.get(id)
  const facts = [...(cutter?.facts ?? [])].map(([key, said]) => sayFact(key, said))
  return facts.length === 0 ? id : `${id} (${facts.join(', ')})`
}

/** Of what it is made, and remarks, speak for themselves. */
const plainFacts: ReadonlySet<string> = new Set(['tool', 'note'])

const sayFact = (key: string, said: string): string =>
  plainFacts.has(key) ? said : `${key.replace(/_/g, ' ')} ${said}`

/** Who and how many, where it is not simply anybody. */
function sayPeople(who: readonly string[], people: number, project: Project): string | null {
  const all = who.length === 0 || who.length === project.people.size
  if (people > 1) return `takes ${people} people at once${all ? '' : ` of ${who.join(', ')}`}`
  return all ? null : `by ${who.join(' or ')}`
}

function sayFeatures(part: Part, names: readonly string[]): string | null {
  if (names.length === 0) return null
  const known = part.way.kind === 'assembly' ? [] : part.way.features
  const said = names.map((name) =>
    [name, known.find((one) => one.name === name)?.text].filter(Boolean).join(' '),
  )
  return `for ${said.join(', ')}`
}

function sayOperation(part: Part, operation: Operation): string {
  const facts = [...operation.facts]
    .filter(([key]) => key !== 'what' && !setKeys.has(key))
    .map(([key, said]) => sayFact(key, said))
  const computed = sayCutting(operation)
  return sentences(
    operation.cutter === null ? null : `cutter ${operation.cutter}`,
    sayFeatures(part, operation.features),
    facts.length === 0 ? null : facts.join(', '),
    computed.length === 0 ? null : `worked out: ${computed.join(', ')}`,
    operation.tool === null ? null : `tool: ${operation.tool.text}`,
    operation.fixture === null ? null : `in the fixture ${operation.fixture}`,
    sayRange(operation.time) && `time ${sayRange(operation.time)}`,
    operation.changeSeconds > 0 ? `changing the cutter is in the time, ${operation.changeSeconds} s` : null,
    operation.pausable ? stay[operation.attention] : `${stay[operation.attention]}, without a break`,
    operation.check === null ? null : `check: ${operation.check}`,
    operation.note,
  )
}

function workRow(stand: RouteStand, operation: Operation): Row {
  const { project, part, number, planned } = stand
  const says = sentences(
    sayOperation(part, operation),
    sayPeople(operation.who, operation.people, project),
    operation.machine === null ? null : `machine: ${operation.machine}`,
  )
  const name = text(titleOf(operation), { role: 'strong' })
  return row({ number: `${number}`, what: name, how: says, time: timeOf(operation), planned })
}

function outsideRow(stand: RouteStand, step: Extract<RouteStep, { kind: 'outside' }>): Row {
  const { offer, needs } = step
  const says = sentences(
    step.what,
    `by ${offer.vendor}`,
    sayPrice(offer, stand.pieces),
    offer.lead === null ? null : `lead ${offer.lead.text}`,
    needs.length === 0 ? null : `first needs ${needs.map(sayTarget).join(', ')}`,
    step.check === null ? null : `check when back: ${step.check}`,
    step.note,
    offer.note,
  )
  const name = text('Send out', { role: 'strong' })
  return row({ number: `${stand.number}`, what: name, how: says, time: 'away', planned: stand.planned })
}
