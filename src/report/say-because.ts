import type { Instant } from '../base/clock.ts'
import { sayInstant } from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { ChainStep } from '../model/schedule.ts'
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

/** Why an element of the driving chain did not begin earlier, in plain words. */
export function sayBecause(results: Results, step: ChainStep): string {
  const { because } = step
  switch (because.kind) {
    case 'start':
      return sayStart(results, step)
    case 'link':
      return sayWait(results, because.from, step.task)
    case 'resource':
      return `${because.resource} was taken until then by "${sayTask(results, because.from)}"`
    case 'calendar':
      return sayOpening(results, because, step)
    case 'block':
      return `held back so that it stays close to "${sayTask(results, because.with)}"`
  }
}

function sayStart(results: Results, step: ChainStep): string {
  const release = taskOf(results, step.task)?.release ?? step.start
  return release > results.project.device.start * 1440
    ? `not before ${sayInstant(release)}`
    : 'nothing before it: it starts with the project'
}

function sayOpening(
  results: Results,
  because: ChainStep['because'] & { readonly kind: 'calendar' },
  step: ChainStep,
): string {
  const { from, calendar, opened } = because
  const wait = `waits for the hours of ${calendar}, open again ${sayInstant(opened)}`
  if (from === null) return wait
  const link = linkBetween(results, from, step.task)
  return link === null
    ? `${wait}, after "${sayTask(results, from)}"`
    : `${sayLink(results, link)}; then ${wait}`
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
