import type { Cause, Money, Source } from '../model/money.ts'
import type { CellName, Expression } from './cells.ts'
import { isUnknown, sumOf, words } from './expressions.ts'
import { lineNames } from './line-names.ts'
import { ref } from './make-cells.ts'

/** The cell that holds what a source of money amounts to. */
export function sourceCell(source: Source): CellName {
  return source.kind === 'line' ? lineNames(source.line).landed : `source/${source.id}`
}

/** What is known of a source's amount now. */
export function sourceAmount(source: Source): Expression {
  return sumOf(sourceCell(source))
}

/** Whether a source's amount is not, or not wholly, known now. */
export function sourceOpen(source: Source): Expression {
  if (source.kind !== 'line') return isUnknown(sourceCell(source))
  return { op: '<>', left: ref(lineNames(source.line).state), right: words('') }
}

/** The cell with what a cause was charged. */
export function causeCell(cause: Cause): CellName {
  return `charged/${causeKey(cause)}`
}

/** A key of a cause, unique over all kinds of causes. */
export function causeKey(cause: Cause): string {
  return cause.kind === 'device' ? 'device' : `${cause.kind}/${cause.id}`
}

/** A cause in words. */
export function sayCause(cause: Cause): string {
  if (cause.kind === 'device') return 'the device: assembly and tests'
  if (cause.kind === 'cart') return `order ${cause.id}`
  return cause.kind === 'work' ? `${cause.id} (work)` : cause.id
}

/** Cells of a charge or of what is left over, by its place in the list, and of its flag. */
export function amountCell(list: 'charge' | 'left', at: number): CellName {
  return `${list}/${at + 1}`
}

/** The cell that holds 1 while a charge or what is left over is unknown. */
export function flagCell(list: 'charge' | 'left', at: number): CellName {
  return `${list} unknown/${at + 1}`
}

/** Sources by id. */
export function sourcesById({ sources }: Money): ReadonlyMap<string, Source> {
  return new Map(sources.map((source) => [source.id, source]))
}
