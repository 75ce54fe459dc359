import type { Quantity } from '../base/quantity.ts'
import { quantityOfKey } from '../source/quantity-of-key.ts'
import { entries, type Spot } from '../source/spot.ts'
import { quantityAt, type Reading } from './reading.ts'

const none: ReadonlySet<string> = new Set()

/**
 * Every quantity among the keys of a map, as the schemas name them, by key; what is faulted is reported and left out.
 * `elsewhere`: keys that another reader reads.
 */
export function numbersAt(
  reading: Reading,
  def: string,
  spot: Spot<object>,
  elsewhere: ReadonlySet<string> = none,
): ReadonlyMap<string, Quantity> {
  const read = entries(spot as Spot<Record<string, string | number>>).flatMap(
    ([key, value]): readonly (readonly [string, Quantity])[] => {
      const wanted = elsewhere.has(key) ? null : quantityOfKey(def, key)
      const number = wanted ? quantityAt(reading, key, value, wanted, 'above 0') : null
      return number ? [[key, number]] : []
    },
  )
  return new Map(read)
}
