import { writeFileSync } from 'node:fs'
import { it, expect } from 'vitest'
import { plan } from '../../src/compile.ts'
import { ordersSheet } from '../../src/report/orders-sheet.ts'
import { moneySheet } from '../../src/report/money-sheet.ts'
import { partsSheet } from '../../src/report/parts-sheet.ts'
import { writeWorkbook } from '../../src/emit/workbook/write-workbook.ts'
import { expectLiveCellsAgree, expectOfficeAgrees, expectNoSlips } from '../workbook/harness.ts'
it('x', async () => {
  const planned = plan('projects/optical-chopper/optical-chopper.yaml', {effort: 5})
  if (!planned.results) { console.log(planned.diagnostics); throw new Error('none') }
  const told = { results: planned.results, findings: [], fettle: '0' }
  const bytes = await writeWorkbook({ title: 't', subject: 's', day: 20486, fingerprint: 'x', sheets: [ordersSheet(told), moneySheet(told), partsSheet(told)] })
  writeFileSync('tests/scratch-sheets/out.xlsx', bytes)
  expectNoSlips(bytes)
  console.log(await expectLiveCellsAgree(bytes))
  console.log(await expectOfficeAgrees(bytes))
})
