import { type Day, formatDay, parseDay } from '../base/clock.ts'
import type { Place } from '../base/place.ts'
import { cal } from '../diagnostics/catalogue/cal.ts'
import type { Project } from '../model/project.ts'
import type { Source } from '../source/load.ts'
import { field } from '../source/spot.ts'
import type { Context } from './context.ts'

/** CAL14: a project in which nobody works, though there is something to do. */
export function reportNobody(context: Context, project: Project): void {
  if (project.people.size > 0) return
  const first: Place | undefined = [
    ...[...project.parts.values()].filter(({ id }) => project.demand.get(id)!.toGet > 0),
    ...[...project.work.values()].filter(({ attention }) => attention !== 'none'),
    ...(project.assembly?.steps ?? []),
  ][0]?.at
  if (first) context.report(cal.nobodyThere, project.device.at, {})
}

/** CAL13: tools that are used and are never here, or only before the start. */
export function reportNeverHere(context: Context, source: Source, start: Day): void {
  for (const [id, spot] of source.sections.tools) {
    if (!context.names.used.has(id)) continue
    const [count, from, until] = [field(spot, 'qty'), field(spot, 'from'), field(spot, 'until')]
    const day = until ? parseDay(until.text) : null
    if (count?.value === 0)
      context.report(cal.toolNeverHere, count.at, { tool: id, says: 'there are 0 of it' })
    else if (day !== null && from && from.text > until!.text)
      context.report(cal.toolNeverHere, until!.at, {
        tool: id,
        says: `it comes on ${from.text} and goes on ${until!.text}`,
      })
    else if (day !== null && day < start)
      context.report(cal.toolNeverHere, until!.at, {
        tool: id,
        says: `it goes on ${until!.text}, before the start on ${formatDay(start)}`,
      })
  }
}
