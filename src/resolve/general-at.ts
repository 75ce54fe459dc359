import { fit } from '../diagnostics/catalogue/fit.ts'
import type { GeneralClass } from '../model/project.ts'
import type { Spot } from '../source/spot.ts'
import { readGeneralClass } from '../trade/tolerances/general-tolerance.ts'
import type { Context } from './context.ts'

/** The class of general tolerances at a place: `m`, `ISO 2768-mK`; `null` where silent or unknown (reported). */
export function generalAt(context: Context, spot: Spot<string> | null): GeneralClass | null {
  if (!spot) return null
  const read = readGeneralClass(spot.text)
  if (read === null) context.report(fit.generalUnread, spot.at, { text: spot.text.trim() })
  return read
}
