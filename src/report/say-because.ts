import type { Instant } from '../base/clock.ts'
import { sayInstant } from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { ChainReason, ChainStep, HoursOf } from '../model/schedule.ts'
import type { LinkWhy, PlanTask, TaskLink } from '../model/tasks.ts'
import { sayMinutes } from './make-cells.ts'

/** A task as a sentence names it: its title, else its id. */
export function sayTask(results: Results, id: string): string {
  const task = taskOf(results, id)
  return task === null ? id : nameOf(task)
}

const nameOf = ({ id, title }: PlanTask): string => (title === '' ? id : title)

/** All tasks as sentences name them, for where many are named. */
export function taskNames({ network }: Results): ReadonlyMap<string, string> {
  return new Map(network.tasks.map((task) => [task.id, nameOf(task)]))
}

function taskOf(results: Results, id: string): PlanTask | null {
  return results.network.tasks.find((task) => task.id === id) ?? null
}

/** Why an element of the driving chain did not begin earlier, in plain words: all that it waited for, one after the other. */
export function sayBecause(results: Results, step: ChainStep): string {
  return step.because
    .filter((reason, at) => tells(results, step, reason, at))
    .map((reason) => sayReason(results, step, reason))
    .join('; then ')
}

/** Whether a reason tells more than those around it: not the bare start of the project, nor the same opening twice. */
function tells(results: Results, { because }: ChainStep, reason: ChainReason, at: number): boolean {
  if (reason.kind === 'start') return because.length === 1 || isRelease(results, reason)
  return at === 0 || reason.kind !== 'hours' || reason.at !== because[at - 1]!.at
}

/** One stretch of waiting of an element of the driving chain, in plain words. */
export function sayReason(results: Results, step: ChainStep, reason: ChainReason): string {
  const said = sayHeld(results, reason)
  if (reason.task === step.task) return said
  const within = linkBetween(results, step.task, reason.task)?.within ?? null
  const close = within === null || within === 0 ? 'at once' : `within ${sayMinutes(within)}`
  return `"${sayTask(results, reason.task)}" must follow ${close}, and for that: ${said}`
}

function sayHeld(results: Results, reason: ChainReason): string {
  switch (reason.kind) {
    case 'start':
      return sayStart(results, reason)
    case 'link':
      return sayWait(results, reason.from, reason.task)
    case 'resource': {
      const by = reason.from === null ? '' : ` by "${sayTask(results, reason.from)}"`
      return `${reason.resource} was taken until then${by}`
    }
    case 'hours':
      return `waits for ${sayHours(reason.closed)}, open again ${sayInstant(reason.at)}`
    case 'no room':
      return sayNoRoom(reason)
    case 'idle':
      return `it could begin earlier; the plan keeps an evening free and leaves it until ${sayInstant(reason.until)}`
  }
}

function isRelease({ project }: Results, { at }: ChainReason): boolean {
  return at > project.device.start * 1440
}

function sayStart(results: Results, reason: ChainReason): string {
  return isRelease(results, reason)
    ? `not before ${sayInstant(reason.at)}`
    : 'nothing before it: it starts with the project'
}

/** Whose hours: `the hours of ana or ben and of the mill together`. */
function sayHours(hours: readonly HoursOf[]): string {
  const said = hours.map(({ kind, names }) => `${kind === 'people' ? '' : 'the '}${names.join(' or ')}`)
  return `the hours of ${said.join(' and of ')}${said.length > 1 ? ' together' : ''}`
}

function sayNoRoom({ asks, pause, whose, at }: ChainReason & { readonly kind: 'no room' }): string {
  return pause
    ? `less than ${sayMinutes(asks)} is left of ${sayHours(whose)}, and it is not begun for less; again ${sayInstant(at)}`
    : `it takes ${sayMinutes(asks)} without a pause, and ${sayHours(whose)} have no stretch as long before ${sayInstant(at)}`
}

function linkBetween(results: Results, from: string, to: string): TaskLink | null {
  return results.network.links.find((link) => link.from === from && link.to === to) ?? null
}

function sayWait(results: Results, from: string, to: string): string {
  const link = linkBetween(results, from, to)
  return link === null ? `waits for "${sayTask(results, from)}"` : sayLink(results, link)
}

/** What is said of the task waited for, by the reason for the wait. */
const reasons: Readonly<Record<LinkWhy, (from: string) => string>> = {
  route: (from) => `the part's route: first ${from}`,
  material: (from) => `the material must be here: ${from}`,
  fixture: (from) => `the fixture must be made first: ${from}`,
  ordered: (from) => `comes only after it is ordered: ${from}`,
  delivered: (from) => `must arrive first: ${from}`,
  cutter: (from) => `the cutter must be here: ${from}`,
  tool: (from) => `the tool must be there: ${from}`,
  part: (from) => `uses a part that must be ready: ${from}`,
  needs: (from) => `needs this done first: ${from}`,
  after: (from) => `is to come after ${from}`,
  assembly: (from) => `the order of assembly: first ${from}`,
  cure: (from) => `stays untouched until hard or dry: ${from}`,
  load: (from) => `on the same machine, straight after ${from}`,
}

/**
 * Why the later task of a link waits for the earlier one, with the time between them and the longest wait. `from` is the
 * earlier one's name where it is at hand.
 */
export function sayLink(results: Results, link: TaskLink, from = sayTask(results, link.from)): string {
  const said = reasons[link.why](`"${from}"`)
  return [said, ...sayLag(link), ...sayLongest(link)].join(', ')
}

function sayLag({ lag }: TaskLink): readonly string[] {
  if ('minutes' in lag) return lag.minutes > 0 ? [`then ${sayMinutes(lag.minutes)} of waiting`] : []
  if (lag.workingDays === 0) return []
  return [`then ${lag.workingDays} working ${lag.workingDays === 1 ? 'day' : 'days'} of waiting`]
}

function sayLongest({ within }: TaskLink): readonly string[] {
  return within === null ? [] : [`but no later than ${sayMinutes(within)} after it`]
}

/** An instant without its year, month before day as in full dates: `Mon 02-23 19:30`. */
export function sayShort(instant: Instant): string {
  const said = sayInstant(instant)
  return `${said.slice(0, 4)}${said.slice(9)}`
}
