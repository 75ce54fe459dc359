import type { Span } from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { Cell, Mark } from './cells.ts'
import type { ChartColumn } from './chart-scale.ts'
import { blank } from './make-cells.ts'
import type { PlacedTask } from './task-groups.ts'

/** A stretch of time with what it is. */
export interface Stretch extends Span {
  readonly mark: Mark
}

/** Of several in one column the first is shown. */
const order: readonly Mark[] = ['critical', 'work', 'unattended', 'away', 'held']

/** The stretches of a task: its work, and where it pauses the machine or fixture that it keeps. */
export function stretchesOf({ task, at }: PlacedTask): readonly Stretch[] {
  const whole = { open: at.start, close: at.finish }
  if (task.kind === 'delivery') return [{ ...whole, mark: 'away' }]
  if (task.attention === 'none') return [{ ...whole, mark: 'unattended' }]
  const mark: Mark = at.critical ? 'critical' : 'work'
  const kept = task.machine !== null || task.fixtures.length > 0
  const held: readonly Stretch[] = kept && at.pieces.length > 1 ? [{ ...whole, mark: 'held' }] : []
  return [...at.pieces.map((piece): Stretch => ({ ...piece, mark })), ...held]
}

/** Machines and fixtures kept from one task of a group to another. */
export function heldIn({ network, schedule }: Results, ids: ReadonlySet<string>): readonly Stretch[] {
  return network.holds.flatMap(({ from, to }): readonly Stretch[] => {
    if (!ids.has(from)) return []
    const [first, last] = [schedule.tasks.get(from), schedule.tasks.get(to)]
    return first && last ? [{ open: first.start, close: last.finish, mark: 'held' }] : []
  })
}

/** One chart cell for every column. Cost: O(stretches + columns) cells touched, by walking each stretch's columns. */
export function chartCells(columns: readonly ChartColumn[], stretches: readonly Stretch[]): readonly Cell[] {
  const best = columns.map(() => order.length)
  const [zero, step] = [columns[0]?.open ?? 0, (columns[0]?.close ?? 1) - (columns[0]?.open ?? 0)]
  for (const { open, close, mark } of stretches) {
    if (close <= open) continue
    const rank = order.indexOf(mark)
    const last = Math.min(columns.length - 1, Math.floor((close - 1 - zero) / step))
    for (let at = Math.max(0, Math.floor((open - zero) / step)); at <= last; at++)
      best[at] = Math.min(best[at]!, rank)
  }
  return columns.map((column, at) => cellOf(column, order[best[at]!] ?? null))
}

function cellOf({ closed, wanted }: ChartColumn, mark: Mark | null): Cell {
  const shown = mark ?? (wanted ? 'wanted' : closed ? 'closed' : null)
  return shown === null ? blank() : blank({ mark: shown })
}
