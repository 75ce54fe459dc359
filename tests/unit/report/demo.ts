/** The project that ships with fettle, planned once for a test file. */
import { plan } from '../../../src/compile.ts'
import type { Cell, Sheet } from '../../../src/report/cells.ts'
import type { Told } from '../../../src/report/sheets.ts'

/** Needs: the project has no error. */
export function demoTold(): Told {
  const { results, diagnostics } = plan('projects/optical-chopper/optical-chopper.yaml', { effort: 20 })
  if (!results) throw new Error('the demonstration project has errors')
  return { results, findings: diagnostics, fettle: '0' }
}

/** Texts of a sheet's rows, cells parted by bars. */
export function rowTexts({ blocks }: Sheet): readonly string[] {
  return blocks.flatMap((block) => [...block.rows].map(({ cells }) => cells.map(shown).join(' | ')))
}

function shown({ value }: Cell): string {
  return value.type === 'text' || value.type === 'unknown' ? value.text : ''
}
