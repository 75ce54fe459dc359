import { sayInstant } from '../base/clock.ts'
import type { Part } from '../model/project.ts'
import type { Results } from '../model/results.ts'
import type { Row } from './cells.ts'
import { line, text } from './make-cells.ts'
import { sayMaterial, sayRemark, sayTechnical } from './say-part.ts'
import { sayCount } from './say-time.ts'

/** How many pieces of a part are made, in lots of these sizes. */
export function lotsOf({ project }: Results, part: Part): readonly number[] {
  const pieces = (project.demand.get(part.id)?.toGet ?? 0) * part.tries
  const size = (part.way.kind === 'assembly' ? null : part.way.lot) ?? Math.max(1, pieces)
  return Array.from({ length: Math.ceil(pieces / size) }, (_, at) => Math.min(size, pieces - at * size))
}

/** How many and in how many lots, and why: `3 pieces in one lot (2 needed, 1 spare)`. */
export function sayPieces(results: Results, part: Part): string {
  const lots = lotsOf(results, part)
  const pieces = lots.reduce((sum, each) => sum + each, 0)
  const { needed, spares, fromStock } = results.project.demand.get(part.id)!
  const why = [
    `${needed} needed`,
    spares > 0 ? `${spares} spare` : '',
    fromStock > 0 ? `${fromStock} here already` : '',
    part.tries > 1 ? `${part.tries} started for each` : '',
  ].filter((one) => one !== '')
  const how = lots.length === 1 ? 'in one lot' : `in ${lots.length} lots (${lots.join(', ')})`
  return `${pieces} ${pieces === 1 ? 'piece' : 'pieces'} ${how}: ${why.join(', ')}`
}

/** A label and what it says, over a sheet of `span` columns; none where there is nothing to say. */
export function pair(label: string, says: string, span: number): readonly Row[] {
  if (says === '') return []
  const cells = [text(label, { span: 2, role: 'label' }), text(says, { span: span - 2 })]
  return [{ cells, keep: true }]
}

/** The head of a route sheet: which part, from what, how many and until when. */
export function routeSheetHead(results: Results, part: Part, span: number): readonly Row[] {
  const { project, readyAt } = results
  const { way } = part
  const at = readyAt.get(part.id)
  const kerf = way.kind === 'machined' && way.stock ? way.stock.kerf.text : ''
  const material = [sayMaterial(part, project), kerf === '' ? '' : `kerf ${kerf}`].filter((one) => one !== '')
  const places = way.kind === 'board' ? way.places.map((one) => sayCount(one.part, one.count)).join(', ') : ''
  const identity = [part.number, part.revision === null ? null : `revision ${part.revision}`]
  return [
    ...pair('Number', identity.filter((one) => one !== null).join(', '), span),
    ...pair('Facts', sayTechnical(part), span),
    ...pair('Role', part.role === 'device' ? '' : `${part.role}, counted once for the project`, span),
    ...pair('Material', material.join(', '), span),
    ...pair('Model', way.kind === 'assembly' ? '' : (way.model ?? ''), span),
    ...pair('Panel', way.kind === 'board' && way.panel ? `${way.panel.boards} boards on one` : '', span),
    ...pair('Soldered on', places, span),
    ...pair('How many', sayPieces(results, part), span),
    ...pair('All finished', at === undefined ? '' : sayInstant(at), span),
    ...pair('Remark', sayRemark(part), span),
  ]
}

/** The title of a sheet's block: it starts a printed page unless it is the first thing. */
export function blockTitle(words: string, name: string, span: number): Row {
  const title = line(words, span, 'title')
  return { ...title, cells: [{ ...title.cells[0]!, name }], pageBreak: true, keep: true }
}
