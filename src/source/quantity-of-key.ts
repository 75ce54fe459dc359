import { type DimensionName, isDimensionName } from '../base/dimension-names.ts'
import { factOf } from './shape-place.ts'

/** The dimensions that the schemas allow behind a key of a definition, such as `#/$defs/cutter`; none: no quantity. */
export function quantityOfKey(def: string, key: string): readonly DimensionName[] {
  const from = factOf(def).ref ?? def
  const wanted = factOf(`${from}/properties/${key}`).quantity
  return wanted === undefined ? [] : wanted.split(' or ').filter(isDimensionName)
}
