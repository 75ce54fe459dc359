/**
 * The part of exceljs that loads without its readers and streams; its own typings leave out this path and the
 * `dataValidations` of a sheet.
 */
declare module 'exceljs/lib/doc/workbook.js' {
  import type { Workbook } from 'exceljs'

  const Book: new () => Workbook
  export default Book
}
