import { type DimensionName, isDimensionName } from '../base/dimension-names.ts'
import { factOf } from './shape-place.ts'

/** The dimension that the schemas want behind a key of a definition, such as `#/$defs/cutter`; `null`: no quantity. */
export function quantityOfKey(def: string, key: string): DimensionName | null {
  const from = factOf(def).ref ?? def
  const wanted = factOf(`${from}/properties/${key}`).quantity
  return wanted !== undefined && isDimensionName(wanted) ? wanted : null
}
