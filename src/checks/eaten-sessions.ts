import { cal } from '../diagnostics/catalogue/cal.ts'
import type { ModelCheck } from './check.ts'

/** CAL08: sessions that setting up and cleaning up leave nothing of. */
export const eatenSessions: ModelCheck = (project, report) => {
  for (const person of project.people.values()) {
    const spans = [
      ...(person.hours?.weekly.flat() ?? []),
      ...(person.hours ? [...person.hours.extra.values()].flat() : []),
    ]
    const longest = spans.reduce((most, { open, close }) => Math.max(most, close - open), 0)
    const lost = person.setUp + person.cleanUp
    if (longest > 0 && longest <= lost)
      report(cal.sessionEatenUp, person.at, { person: person.id, lost, longest })
  }
}
