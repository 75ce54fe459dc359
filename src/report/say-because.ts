import { sayInstant } from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { ChainStep } from '../model/schedule.ts'
import type { LinkWhy, TaskLink } from '../model/tasks.ts'
import { sayMinutes } from './make-cells.ts'
import { titleOf } from './task-words.ts'

/** Why one task waits for another, by what the link stands for; `X` is what is waited for. */
const linkWords: Readonly<Record<LinkWhy, (before: string) => string>> = {
  route: (before) => `the step before in its route: ${before}`,
  lot: (before) => `the lot before it: ${before}`,
  material: (before) => `its material: ${before}`,
  fixture: (before) => `the fixture that holds it: ${before}`,
  ordered: (before) => `being ordered: ${before}`,
  delivered: (before) => `the parcel: ${before}`,
  cutter: (before) => `a cutter that is bought: ${before}`,
  tool: (before) => `a tool it needs: ${before}`,
  part: (before) => `a part it uses: ${before}`,
  needs: (before) => `what it needs: ${before}`,
  after: (before) => `what it comes after: ${before}`,
  assembly: (before) => `an earlier step of the assembly: ${before}`,
  cure: (before) => `the cure: ${before}`,
  load: (before) => `the same clamping: ${before}`,
  plate: (before) => `the print job: ${before}`,
  subassembly: (before) => `a subassembly: ${before}`,
}

function sayLag({ lag, within }: TaskLink): string {
  const days = 'workingDays' in lag ? lag.workingDays : 0
  const least = 'minutes' in lag ? (lag.minutes === 0 ? [] : [`${sayMinutes(lag.minutes)} after it`]) : [`${days} working ${days === 1 ? 'day' : 'days'} after it`]
  const most = within === null ? [] : [`at most ${sayMinutes(within)} after it`]
  const both = [...least, ...most]
  return both.length === 0 ? '' : ` (${both.join(', ')})`
}

/** Why `to` waits for `from`, in words. */
export function sayLink(results: Results, link: TaskLink): string {
  return `waits for ${linkWords[link.why](titleOf(results, link.from))}${sayLag(link)}`
}

function linkBetween({ network }: Results, from: string, to: string): TaskLink | undefined {
  return network.links.find((link) => link.from === from && link.to === to)
}

function sayHeld(results: Results, step: ChainStep, from: string): string {
  const link = linkBetween(results, from, step.task)
  return link ? sayLink(results, link) : `waits for ${titleOf(results, from)}`
}

/** Whose hours a calendar is, where it is one person or a machine; a long list is cut to what is common. */
function sayHours(calendar: string): string {
  return `the hours of ${calendar}`
}

/** What kept a task of the driving chain from starting earlier, in words. */
export function sayBecause(results: Results, step: ChainStep): string {
  const { because } = step
  switch (because.kind) {
    case 'start':
      return 'begins when the project begins'
    case 'link':
      return sayHeld(results, step, because.from)
    case 'resource':
      return `waits until ${because.resource} is free after ${titleOf(results, because.from)}`
    case 'calendar': {
      const before = because.from === null ? '' : `${sayHeld(results, step, because.from)}, then `
      return `${before}${before === '' ? 'waits ' : ''}for ${sayHours(because.calendar)}, open ${sayInstant(because.opened)}`
    }
    case 'block':
      return `is placed together with ${titleOf(results, because.with)}, because of a longest wait`
  }
}
