import type { Place } from '../../base/place.ts'
import { prcModel } from '../../diagnostics/catalogue/prc-model.ts'
import type { OutOfDomain } from '../../trade/printing/domain.ts'
import type { Context } from '../context.ts'

/** Whether a formula said that a figure is outside what it covers; if so it is told, with the figure in words. */
export function isOutside<T extends object>(
  context: Pick<Context, 'report'>,
  { of, at }: { readonly of: string; readonly at: Place },
  answer: T | OutOfDomain,
): answer is OutOfDomain {
  if (!('fault' in answer) || answer.fault !== 'out of domain') return false
  const { field, value, must } = answer as OutOfDomain
  context.report(prcModel.figureOutside, at, { of, what: inWords(field), value, must })
  return true
}

/** `lineWidthMm` as a person says it: `line width`. */
function inWords(field: string): string {
  return field
    .replace(/(Mm3PerSecond|MmPerSecond|PerSecond|Mm|Cm3|Cm2|Mm2|Seconds|Percent|A|Oz|K)$/, '')
    .replace(/([A-Z])/g, ' $1')
    .toLowerCase()
    .trim()
}
