import type { Results } from '../model/results.ts'
import type { Block, Column, Row } from './cells.ts'
import { footOf } from './foot-of.ts'
import { instant, line, minutes, text } from './make-cells.ts'
import { leverBlocks } from './risk-sheet.ts'
import { sayBecause, sayTask } from './say-because.ts'
import { sayGap } from './say-gap.ts'
import type { SheetMaker } from './sheets.ts'
import { groupLabel } from './task-groups.ts'

const columns: readonly Column[] = [
  { head: 'Start', width: 20 },
  { head: 'Finish', width: 20 },
  { head: 'Work', width: 10, align: 'right' },
  { head: 'What', width: 46 },
  { head: 'About', width: 28 },
  { head: 'Why it did not begin earlier', width: 70 },
]

/** What sets the date, from the start of the project to its finish, each element with its reason. */
export const chainSheet: SheetMaker = ({ results }) => ({
  name: 'What sets the date',
  widths: columns.map(({ width }) => width),
  blocks: [
    top(results),
    { kind: 'table', id: 'chain', columns, rows: chainRows(results), totals: [], filter: false },
    ...leverBlocks(results, columns.length),
  ],
  orientation: 'landscape',
  freeze: { block: 'chain', columns: 0 },
  guarded: true,
  group: 'time',
  foot: footOf(results.project.device),
})

function top({ schedule, project }: Results): Block {
  const wide = columns.length
  const chains = schedule.criticalChainCount
  const says =
    chains === 1n
      ? 'One chain of waits alone, without regard to who or what is busy, is as long as any can be.'
      : `${chains} chains of waits alone, without regard to who or what is busy, are as long as any can be.`
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      { cells: [text('What sets the date', { role: 'title', span: wide, name: 'top/chain' })] },
      line(`${project.device.name}: shorten something in this list, or the date stays`, wide, 'subtitle'),
      line(`How good the date is: ${sayGap(schedule).says}. ${says}`, wide, 'note'),
    ],
  }
}

function chainRows(results: Results): readonly Row[] {
  const tasks = new Map(results.network.tasks.map((task) => [task.id, task]))
  return results.schedule.drivingChain.map((step) => {
    const task = tasks.get(step.task)
    return {
      cells: [
        instant(step.start),
        instant(step.finish),
        task && task.minutes > 0 ? minutes(task.minutes) : text(''),
        text(sayTask(results, step.task)),
        text(task ? groupLabel(task) : ''),
        text(sayBecause(results, step)),
      ],
    }
  })
}
