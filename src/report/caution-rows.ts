import type { ShownCaution } from '../model/results.ts'
import type { Row } from './cells.ts'
import { line } from './make-cells.ts'

/** A reminder in one line: what it is about, what to mind unless the step says it, the signs behind. */
export function sayCaution({ topic, says, signs }: ShownCaution): string {
  const behind = signs.length > 0 ? ` (${signs.join('; ')})` : ''
  return `Mind, ${topic}${says === '' ? '' : `: ${says}`}${behind}`
}

/** Rows of reminders over `span` columns with the papers that rule below; none where there is nothing to mind. */
export function cautionRows(all: readonly ShownCaution[], deferLine: string, span: number): readonly Row[] {
  if (all.length === 0) return []
  const rows = all.map((one): Row => ({ ...line(sayCaution(one), span, 'caution'), keep: true }))
  return [...rows, line(deferLine, span, 'note')]
}
