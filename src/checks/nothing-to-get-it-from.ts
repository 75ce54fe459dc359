import { buy } from '../diagnostics/catalogue/buy.ts'
import { prc } from '../diagnostics/catalogue/prc.ts'
import type { Report } from '../diagnostics/message.ts'
import type { Project, Size } from '../model/project.ts'
import type { Missing } from '../model/purchase.ts'
import type { ModelCheck, NetworkCheck } from './check.ts'

/** BUY06: bought parts that are missing and that nobody offers. */
export const nothingToGetItFrom: ModelCheck = (project, report) => {
  for (const part of project.parts.values()) {
    const toGet = project.demand.get(part.id)?.toGet ?? 0
    if (part.way.kind === 'bought' && part.way.offers.length === 0 && toGet > 0) {
      report(buy.noWayToGet, part.at, {
        item: part.id,
        missing: toGet,
        have: part.have + toGet,
      })
    }
  }
}

/** BUY06, BUY09, PRC06, PRC07, PRC09: material and cutters that are used and cannot be got or counted, and pieces too large for their form. */
export const materialToGet: NetworkCheck = ({ project, purchase }, report) => {
  for (const missing of purchase.missing) {
    const { id, at, why, kind } = missing
    reportPrint(project, missing, report)
    // What a part or its stock lacks has been said where it was read.
    if (why === 'no offer' && kind !== 'part') report(buy.noWayToGet, at, { item: id, missing: 1, have: 1 })
  }
  for (const cut of purchase.cuts) {
    const form = project.materials.get(cut.material)!.forms.find(({ id }) => id === cut.form)!
    for (const part of cut.tooLarge) {
      const way = project.parts.get(part)?.way
      const stock = way?.kind === 'machined' ? way.stock : null
      if (stock)
        report(buy.pieceTooLarge, stock.at, {
          part,
          form: cut.form,
          needs: saySides(stock.size),
          has: saySides(form.size),
        })
    }
  }
}

/** PRC06, PRC07, PRC09: what a print is made from, where it cannot be counted. */
function reportPrint(project: Project, { kind, why, parts }: Missing, report: Report): void {
  const part = project.parts.get(parts[0]?.part ?? '')
  if (kind !== 'material' || part?.way.kind !== 'printed') return
  const { way } = part
  const plate = way.plate === null ? null : project.plates.get(way.plate)
  const material = project.materials.get(way.job.material ?? plate?.job.material ?? '')
  if (!material) report(prc.materialNotCounted, part.at, { part: part.id, missing: 'material' })
  else if (why === 'no volume') report(prc.materialNotCounted, part.at, { part: part.id, missing: 'volume' })
  else if (why === 'no form') report(prc.wrongMaterialForm, part.at, { part: part.id, material: material.id })
  else if (why === 'no density') report(prc.noDensity, material.at, { part: part.id, material: material.id })
}

function saySides(size: Size): string {
  if (size.shape === 'bar') return size.length.text
  if (size.shape === 'volume') return size.volume.text
  if (size.shape === 'mass') return size.mass.text
  return `${size.length.text} x ${size.width.text}`
}
