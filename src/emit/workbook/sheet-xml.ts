import type { SheetData } from './sheet-data.ts'

/** Order that the children of a worksheet must have. Source: ISO/IEC 29500-4, schema sml.xsd, `CT_Worksheet`. */
const order = [
  'sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios',
  'autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations',
  'hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches',
  'ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF drawingHF picture oleObjects controls webPublishItems',
  'tableParts extLst',
].flatMap((line) => line.split(' '))

/** Order within `sheetPr`. Source: the same schema, `CT_SheetPr`. */
const propertyOrder = ['tabColor', 'outlinePr', 'pageSetUpPr']

/** An element of the sheet's XML, whole, with its name. */
interface Element {
  readonly name: string
  readonly xml: string
}

/** A jump from a cell: to a place in the workbook, or to an address outside by the id of its relationship. */
export interface Link {
  readonly cell: string
  readonly place?: string
  readonly relationship?: string
}

/** What goes into the frame of a sheet. */
export interface SheetFilling {
  readonly data: SheetData
  readonly merged: readonly string[]
  readonly links: readonly Link[]
  /** The relationship of the drawing that holds the pictures of the sheet. */
  readonly drawing?: string
}

/**
 * The XML of a worksheet as the format wants it, filled: children in their order, which the writer gets wrong, with
 * its cells, those merged, links as links (the writer puts one inside the book twice over), and text that looks like a
 * number left in peace. Needs: a frame without rows.
 */
export function mendSheet(xml: string, { data, merged, links, drawing }: SheetFilling): string {
  const open = /<worksheet[^>]*>/.exec(xml)
  if (!open) throw new Error('a sheet of the workbook has no worksheet element')
  const start = open.index + open[0].length
  const end = xml.lastIndexOf('</worksheet>')
  const children = elements(xml.slice(start, end)).map((child) => mendChild(child, data))
  if (merged.length > 0) children.push({ name: 'mergeCells', xml: mergeCells(merged) })
  if (links.length > 0) children.push({ name: 'hyperlinks', xml: hyperlinks(links) })
  if (drawing !== undefined) children.push({ name: 'drawing', xml: `<drawing r:id="${drawing}"/>` })
  children.push({ name: 'ignoredErrors', xml: codesAreText(data.used) })
  return xml.slice(0, start) + sorted(children, order).join('') + xml.slice(end)
}

/** Part numbers such as 00123 are text on purpose; without this a reader flags each as a likely slip. */
function codesAreText(range: string): string {
  return `<ignoredErrors><ignoredError sqref="${range}" numberStoredAsText="1"/></ignoredErrors>`
}

function mendChild({ name, xml }: Element, data: SheetData): Element {
  if (name === 'sheetData') return { name, xml: data.xml }
  if (name === 'dimension') return { name, xml: `<dimension ref="${data.used}"/>` }
  if (name !== 'sheetPr') return { name, xml }
  const inner = /^(<sheetPr[^>/]*>)(.*)(<\/sheetPr>)$/s.exec(xml)
  return inner
    ? { name, xml: inner[1]! + sorted(elements(inner[2]!), propertyOrder).join('') + inner[3]! }
    : { name, xml }
}

/** Splits a run of sibling elements; none of them may hold an element of its own name. */
function elements(xml: string): Element[] {
  const out: Element[] = []
  let at = xml.indexOf('<')
  while (at >= 0) {
    const name = /^<([\w:]+)/.exec(xml.slice(at, at + 60))?.[1]
    if (!name) throw new Error(`the workbook's XML cannot be read at ${xml.slice(at, at + 40)}`)
    const headEnd = xml.indexOf('>', at) + 1
    const close = `</${name}>`
    const end = xml[headEnd - 2] === '/' ? headEnd : xml.indexOf(close, headEnd) + close.length
    out.push({ name, xml: xml.slice(at, end) })
    at = xml.indexOf('<', end)
  }
  return out
}

function sorted(children: readonly Element[], names: readonly string[]): string[] {
  const rank = ({ name }: Element): number => {
    const at = names.indexOf(name)
    if (at < 0) throw new Error(`the workbook holds an element ${name} of unknown order`)
    return at
  }
  return children
    .map((child) => ({ xml: child.xml, at: rank(child) }))
    .sort((a, b) => a.at - b.at)
    .map(({ xml }) => xml)
}

function mergeCells(ranges: readonly string[]): string {
  const all = ranges.map((range) => `<mergeCell ref="${range}"/>`)
  return `<mergeCells count="${ranges.length}">${all.join('')}</mergeCells>`
}

function hyperlinks(links: readonly Link[]): string {
  const one = ({ cell, place, relationship }: Link): string =>
    place === undefined
      ? `<hyperlink ref="${cell}" r:id="${relationship}"/>`
      : `<hyperlink ref="${cell}" location="${attribute(place)}"/>`
  return `<hyperlinks>${links.map(one).join('')}</hyperlinks>`
}

/** Text as an XML attribute holds it. */
export function attribute(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')
}
