import type { Place } from '../base/place.ts'
import type { Diagnostic } from '../diagnostics/message.ts'
import { type Assumption, assumptionsOf } from './assumptions.ts'
import type { Block, Column, Row, Section } from './cells.ts'
import { footOf } from './foot-of.ts'
import { line, text, tick } from './make-cells.ts'
import type { SheetMaker } from './sheets.ts'

const widths = [10, 26, 26, 64, 56, 6]

const givenWords = 'What the plan takes as given'
const foundWords = (count: number): string => `What was found: ${count}`

/** What was found that deserves a look, and what the plan takes as given. */
export const findingsSheet: SheetMaker = ({ results, findings }) => ({
  name: 'Findings',
  widths,
  blocks: [
    top(results.project.device.name),
    heading('findings', foundWords(findings.length), findings.length === 0 ? 'Nothing was found.' : ''),
    ...table(
      foundWords(findings.length),
      'found',
      ['Code', 'Where', 'Level', 'What', 'What mends it', 'Seen'],
      findings.map(findingRow),
    ),
    heading('assumptions', givenWords, ''),
    ...table(
      givenWords,
      'given',
      ['Kind', 'About', 'Where', 'What is taken', 'What settles it', 'Seen'],
      assumptionsOf(results).map(assumptionRow),
    ),
  ],
  orientation: 'landscape',
  freeze: null,
  guarded: true,
  group: 'notes',
  foot: footOf(results.project.device),
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

/** The heads of a list are said again where it runs on. */
const sectionOf = (words: string): Section => ({ continued: `${words}, continued`, whole: false })

function heading(id: string, words: string, note: string): Block {
  const head: Row = {
    keep: true,
    cells: [text(words, { role: 'heading', span: widths.length, name: `${id}/head` })],
  }
  return {
    kind: 'rows',
    id,
    section: sectionOf(words),
    rows: note === '' ? [head] : [head, line(note, widths.length, 'note')],
  }
}

function table(of: string, id: string, heads: readonly string[], rows: readonly Row[]): readonly Block[] {
  if (rows.length === 0) return []
  const columns = heads.map((head, at): Column => ({ head, width: widths[at]! }))
  return [{ kind: 'table', id, section: sectionOf(of), columns, rows, totals: [], filter: false }]
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
