import { assemblySheet } from './assembly-sheet.ts'
import type { Workbook } from './cells.ts'
import { chainSheet } from './chain-sheet.ts'
import { findingsSheet } from './findings-sheet.ts'
import { inspectionSheet } from './inspection-sheet.ts'
import { makingSheet } from './making-sheet.ts'
import { moneySheet } from './money-sheet.ts'
import { ordersSheet } from './orders-sheet.ts'
import { overviewSheet } from './overview-sheet.ts'
import { partsSheet } from './parts-sheet.ts'
import { riskSheet } from './risk-sheet.ts'
import { scheduleSheet } from './schedule-sheet.ts'
import { sessionsSheet } from './sessions-sheet.ts'
import type { SheetMaker, Told } from './sheets.ts'
import { stepDrawings } from './told-pictures.ts'

/** Every sheet, in the order of the workbook. Adding one is a file and a line here. */
export const sheetMakers: readonly SheetMaker[] = [
  overviewSheet,
  partsSheet,
  ordersSheet,
  moneySheet,
  scheduleSheet,
  chainSheet,
  riskSheet,
  sessionsSheet,
  makingSheet,
  assemblySheet,
  inspectionSheet,
  findingsSheet,
]

/** The workbook of a plan, finished. */
export function buildWorkbook(told: Told): Workbook {
  const { project } = told.results
  const { device } = project
  const revision = device.revision === null ? '' : ` revision ${device.revision}`
  return {
    title: `${device.name}${revision}`,
    subject: `build plan for ${device.qty} ${device.qty === 1 ? 'device' : 'devices'}`,
    day: device.start,
    fingerprint: project.fingerprint,
    sheets: sheetMakers.map((make) => make(told)),
    pictures: stepDrawings(told.pictures),
  }
}
