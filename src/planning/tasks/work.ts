import type { Ground } from './ground.ts'
import { readyWhole } from './ground.ts'
import { addTimes } from './times.ts'

/** One task for each piece of work that is no part and no assembly. */
export function buildWork(ground: Ground): void {
  for (const work of ground.project.work.values()) {
    const tool = work.tool?.resource
    const machine = work.machine ?? (tool?.kind === 'machine' ? tool.id : null)
    const task = ground.build.task({
      id: `work ${work.id}`,
      title: `${work.id[0]!.toUpperCase()}${work.id.slice(1)}`,
      kind: 'work',
      at: work.at,
      subject: { work: work.id },
      time: addTimes([[work.time, 1]]),
      labour: work,
      machine,
      tools: tool?.kind === 'tool' ? [tool.id] : [],
    })
    if (tool?.kind === 'part')
      ground.later.push(() => ground.build.linkAll(readyWhole(ground, tool.id), [task], 'tool', work.at))
  }
}
