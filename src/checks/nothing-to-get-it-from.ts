import { buy } from '../diagnostics/catalogue/buy.ts'
import type { Size } from '../model/project.ts'
import type { ModelCheck, NetworkCheck } from './check.ts'

/** BUY06: bought parts that are missing and that nobody offers. */
export const nothingToGetItFrom: ModelCheck = (project, report) => {
  for (const part of project.parts.values()) {
    const toGet = project.demand.get(part.id)?.toGet ?? 0
    if (part.way.kind === 'bought' && part.way.offers.length === 0 && toGet > 0) {
      report(buy.noWayToGet, part.at, { item: part.id, missing: toGet })
    }
  }
}

/** BUY06, BUY09: material and cutters that are used and that nobody offers, and pieces too large for their form. */
export const materialToGet: NetworkCheck = ({ project, purchase }, report) => {
  for (const { id, at, why, kind } of purchase.missing) {
    // What a part or its stock lacks has been said where it was read.
    if (why === 'no offer' && kind !== 'part') report(buy.noWayToGet, at, { item: id, missing: 1 })
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

function saySides(size: Size): string {
  if (size.shape === 'bar') return size.length.text
  if (size.shape === 'volume') return size.volume.text
  if (size.shape === 'mass') return size.mass.text
  return `${size.length.text} x ${size.width.text}`
}
