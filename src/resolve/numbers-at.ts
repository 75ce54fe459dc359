import type { Quantity } from '../base/quantity.ts'
import { quantityOfKey } from '../source/quantity-of-key.ts'
import { entries, type Spot } from '../source/spot.ts'
import { quantityAt, type Reading } from './reading.ts'

/** Times that a person may say there are none of. */
const mayBeNone: ReadonlySet<string> = new Set(['tool change', 'set'])
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
      const wanted = elsewhere.has(key) ? [] : quantityOfKey(def, key)
      const least = mayBeNone.has(key) ? 'from 0' : 'above 0'
      const number = wanted.length > 0 ? quantityAt(reading, key, value, wanted, least) : null
      return number ? [[key, number]] : []
    },
  )
  return new Map(read)
}
