import type Fraction from 'fraction.js'
import { exactText } from '../base/rounding.ts'
import type { ThreePoint } from '../base/three-point.ts'
import type { JoiningMethod, Step } from '../model/assembly.ts'
import type { After } from '../model/project.ts'
import { sayMinutes } from './make-cells.ts'
import { sayTarget } from './say-target.ts'
import { sayCount, sayRange, sayTime, sentences } from './say-time.ts'

const verbs: Readonly<Record<JoiningMethod, string>> = {
  screw: 'Screw',
  thread: 'Screw',
  press: 'Press',
  seat: 'Seat',
  glue: 'Glue',
  solder: 'Solder',
  snap: 'Snap',
  crimp: 'Crimp',
  plug: 'Plug',
  magnet: 'Let the magnet hold',
  tie: 'Tie',
}

/** What a step does, in one sentence: `Screw belly plate onto base with screw M3x8 x4; this shuts base at underside`. */
export function sayAction(step: Step): string {
  const shuts = step.shuts.map(({ body, opening }) => `${body} at ${opening}`).join(' and ')
  const opens = step.opens.map(({ body, opening }) => `${body} at ${opening}`).join(' and ')
  const tail = [
    shuts === '' ? '' : `; this shuts ${shuts}`,
    opens === '' ? '' : `; this opens ${opens}`,
  ].join('')
  return `${sayDeed(step)}${tail}`
}

function sayDeed(step: Step): string {
  if (step.test !== null) return `Test: ${step.test}`
  const what = step.action ?? ''
  if (!step.put) return what === '' ? capital(step.id) : `${capital(what)}${sayWhere(step, true)}`
  const verb = step.method === null ? 'Put' : verbs[step.method]
  const as = step.instances.length > 0 ? ` (${step.instances.join(', ')})` : ''
  const own = step.method !== 'thread' ? '' : ` by ${step.put.count === 1 ? 'its' : 'their'} own thread`
  const with_ = step.fasteners.map(({ part, count }) => sayCount(part, count)).join(', ')
  return `${verb} ${sayCount(step.put.part, step.put.count)}${as}${sayWhere(step, false)}${own}${with_ === '' ? '' : ` with ${with_}`}`
}

const capital = (words: string): string => `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}`

function sayWhere({ into, onto, from }: Step, deed: boolean): string {
  const inside = deed ? 'in' : 'into'
  const place = into
    ? ` ${inside} ${into.body}${into.through === null ? '' : ` through ${into.through}`}`
    : ''
  return `${place}${onto ? ` onto ${onto.body}` : ''}${from === null ? '' : `, from ${from}`}`
}

/** How a step is done: side up, tool with size, torque, adhesive, cure, fixture, people, remarks. */
export function sayHow(step: Step): string {
  return sentences(
    step.turn === null ? null : `turn: ${step.turn}`,
    step.tool === null ? null : `tool: ${step.tool.text}`,
    step.machine === null ? null : `machine: ${step.machine}`,
    step.fixture === null ? null : `in the fixture ${step.fixture}`,
    step.torque === null ? null : `torque ${step.torque.text}`,
    step.adhesive === null ? null : `adhesive: ${step.adhesive}`,
    step.locker && step.fasteners.length === 0 ? 'with thread locker' : null,
    step.cure === null ? null : `then let it cure ${step.cure.text}: nothing touches it`,
    step.people > 1 ? `takes ${step.people} people at once` : null,
    step.attention === 'nearby' ? 'stay within earshot' : step.attention === 'none' ? 'nobody needed' : null,
    step.pausable || step.attention === 'none' ? null : 'without a break',
    step.together ? 'for all devices together, once' : null,
    sayRange(step.time) && `time ${sayRange(step.time)}`,
  )
}

/** Minutes of a step for one device; an assumed time says so. */
export function sayStepTime(step: Step): string {
  return step.timeAssumed ? `${sayTime(step.time)} (assumed)` : sayTime(step.time)
}

/** What to do when a test fails, how often that is reckoned with, and what it adds on average. Empty where nothing is said. */
export function sayFailure({ fails, rework, time }: Step): string {
  if (!fails && !rework) return ''
  const chance = fails ? ` (about ${exactText(fails.mul(100))} times in 100)` : ''
  const mend = rework ? `${sayTime(rework)} of rework, then test again` : 'test again'
  return `If it fails${chance}: ${mend}${fails ? sayMeanLoss(fails, time, rework) : ''}.`
}

/** Failures come one after another until a test passes: f / (1 - f) of them for each test. Source: textbook (geometric). */
function sayMeanLoss(fails: Fraction, time: ThreePoint, rework: ThreePoint | null): string {
  const passes = fails.neg().add(1)
  if (passes.valueOf() <= 0) return ''
  const again = rework ? time.mean.add(rework.mean) : time.mean
  return `; ${sayMinutes(Math.round(fails.div(passes).mul(again).div(60).valueOf()))} more on average`
}

/** What a step waits for or must come before, where the order of the list alone does not tell. */
export function sayWaits(step: Step, before: Step | null): string {
  const needs = step.needs.map(sayTarget)
  const last = step.beforeLastOf.map(sayTarget)
  return sentences(
    needs.length === 0 ? null : `waits for ${needs.join(', ')}`,
    ...step.after.map(sayLag),
    step.within === null || !before ? null : `begin at most ${sayMinutes(step.within)} after "${before.id}"`,
    step.looseUntil.length === 0
      ? null
      : `only lies there until ${step.looseUntil.map(sayTarget).join(', ')}: do not turn it over before`,
    last.length === 0 ? null : `do it while it can be reached: before the last of ${last.join(', ')}`,
  )
}

function sayLag({ target, lag, within }: After): string | null {
  const wait =
    'minutes' in lag
      ? lag.minutes > 0
        ? `wait ${sayMinutes(lag.minutes)} after ${sayTarget(target)}`
        : null
      : lag.workingDays > 0
        ? `wait ${lag.workingDays} working days after ${sayTarget(target)}`
        : null
  const most = within === null ? null : `begin at most ${sayMinutes(within)} after ${sayTarget(target)}`
  return [wait, most].filter((one) => one !== null).join('; ') || null
}
