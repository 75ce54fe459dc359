import type { Place } from '../base/place.ts'
import type { Diagnostic } from '../diagnostics/message.ts'
import { type Assumption, assumptionsOf } from './assumptions.ts'
import type { Block, Column, Row } from './cells.ts'
import { line, text, tick } from './make-cells.ts'
import type { SheetMaker } from './sheets.ts'

const widths = [10, 30, 30, 60, 52, 6]

/** What was found that deserves a look, and what the plan takes as given. */
export const findingsSheet: SheetMaker = ({ results, findings }) => ({
  name: 'Findings',
  widths,
  blocks: [
    top(results.project.device.name),
    heading(
      'findings',
      `What was found: ${findings.length}`,
      findings.length === 0 ? 'Nothing was found.' : '',
    ),
    ...table('found', ['Code', 'Where', 'Level', 'What', 'What mends it', 'Seen'], findings.map(findingRow)),
    heading('assumptions', 'What the plan takes as given', ''),
    ...table(
      'given',
      ['Kind', 'About', 'Where', 'What is taken', 'What settles it', 'Seen'],
      assumptionsOf(results).map(assumptionRow),
    ),
  ],
  orientation: 'landscape',
  freeze: null,
  guarded: true,
  group: 'notes',
  foot: `${results.project.device.name}: findings`,
})

function top(device: string): Block {
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      { cells: [text('Findings', { role: 'title', span: widths.length, name: 'top/findings' })] },
      line(`${device}: look at these before money is spent`, widths.length, 'subtitle'),
    ],
  }
}

function heading(id: string, words: string, note: string): Block {
  const head: Row = {
    keep: true,
    cells: [text(words, { role: 'heading', span: widths.length, name: `${id}/head` })],
  }
  return { kind: 'rows', id, rows: note === '' ? [head] : [head, line(note, widths.length, 'note')] }
}

function table(id: string, heads: readonly string[], rows: readonly Row[]): readonly Block[] {
  if (rows.length === 0) return []
  const columns = heads.map((head, at): Column => ({ head, width: widths[at]! }))
  return [{ kind: 'table', id, columns, rows, totals: [], filter: false }]
}

/** A place as an editor takes it: file, line, column. */
function sayPlace({ file, line: row, column }: Place): string {
  const short = file.split('/').at(-1) ?? file
  return `${short}:${row}:${column}`
}

function findingRow({ code, at, level, says, mend }: Diagnostic): Row {
  return {
    cells: [
      text(code, { role: 'strong' }),
      text(sayPlace(at)),
      text(level, { role: level }),
      text(says),
      text(mend),
      tick(),
    ],
  }
}

function assumptionRow({ kind, about, at, says, mend }: Assumption): Row {
  return {
    cells: [text(kind), text(about), text(at ? sayPlace(at) : ''), text(says), text(mend), tick()],
  }
}
