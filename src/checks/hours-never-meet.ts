import { type Day, weekday } from '../base/clock.ts'
import { cal } from '../diagnostics/catalogue/cal.ts'
import type { Report } from '../diagnostics/message.ts'
import type { DaySpan, Hours, Project } from '../model/project.ts'
import type { TaskNetwork } from '../model/tasks.ts'
import type { NetworkCheck } from './check.ts'

/** CAL15: work at a machine whose hours meet those of nobody who may do it. CAL16: work for people who are never there together. */
export const hoursNeverMeet: NetworkCheck = ({ project, network }, report) => {
  apart(project, network, report)
  const said = new Set<string>()
  for (const { at, title, machine, who, attention } of network.tasks) {
    const open = machine === null ? null : (project.machines.get(machine)?.hours ?? null)
    if (machine === null || open === null || attention === 'none' || who.length === 0) continue
    const people = who.map((person) => project.people.get(person)?.hours ?? null)
    if (said.has(machine) || people.some((hours) => hours !== null && meet(hours, open))) continue
    said.add(machine)
    report(cal.hoursNeverMeet, at, { what: `\`${title}\``, who, machine })
  }
}

/** Work for several people of whom no two are ever there at once; the first such task says it. */
function apart(project: Project, network: TaskNetwork, report: Report): void {
  const task = network.tasks.find(({ people, who, attention }) => {
    if (people < 2 || attention === 'none') return false
    const hours = who.map((person) => project.people.get(person)?.hours ?? null)
    return hours.every(
      (one, at) => one !== null && hours.slice(at + 1).every((other) => other !== null && !meet(one, other)),
    )
  })
  if (task)
    report(cal.peopleNeverMeet, task.at, { what: `\`${task.title}\``, who: task.who, people: task.people })
}

/** Whether two are ever open at once, by weekday or on a single date. */
function meet(one: Hours, other: Hours): boolean {
  const dates = [...one.extra.keys(), ...other.extra.keys()]
  return (
    one.weekly.some((spans, day) => overlap(spans, other.weekly[day] ?? [])) ||
    dates.some((day) => overlap(onDay(one, day), onDay(other, day)))
  )
}

const onDay = (hours: Hours, day: Day): readonly DaySpan[] =>
  hours.extra.get(day) ?? hours.weekly[weekday(day)] ?? []

const overlap = (some: readonly DaySpan[], others: readonly DaySpan[]): boolean =>
  some.some((a) => others.some((b) => Math.max(a.open, b.open) < Math.min(a.close, b.close)))
