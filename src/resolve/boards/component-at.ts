import { qty } from '../../diagnostics/catalogue/qty.ts'
import type { Attrition } from '../../model/placements.ts'
import type { BoughtWay } from '../../model/project.ts'
import type { BoughtWaySource } from '../../source/generated/project-types.ts'
import { field, type Spot } from '../../source/spot.ts'
import type { Context } from '../context.ts'
import { quantityAt, words } from '../reading.ts'
import { warnValue } from './warn-values.ts'

/** What a bought part says of itself as a component: value, package, and how many are lost. */
export function componentAt(
  context: Context,
  part: string,
  spot: Spot<BoughtWaySource>,
): Pick<BoughtWay, 'value' | 'package' | 'attrition'> {
  const value = field(spot, 'value')
  if (value)
    warnValue(context, { at: value.at, text: value.text.trim(), what: `\`${part}\``, unit: null }, null)
  return {
    value: words(value),
    package: words(field(spot, 'package')),
    attrition: attritionAt(context, field(spot, 'attrition')),
  }
}

/** Pieces lost: a whole number bare is a count, anything else a share. */
function attritionAt(context: Context, spot: Spot<string | number> | null): Attrition | null {
  const read = quantityAt(context, 'attrition', spot, 'ratio')
  if (!read) return null
  const value = read.value.valueOf()
  if (read.unit === '' && value >= 1 && Number.isInteger(value) && value <= 1e6) return { pieces: value }
  if (value <= 1) return { fraction: value }
  context.report(qty.outOfBounds, spot!.at, {
    key: 'attrition',
    text: spot!.text,
    bound: 'a whole number of pieces, or at most 100 %',
  })
  return null
}
