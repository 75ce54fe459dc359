/** Amounts of several resources side by side in one number, so that all are compared at once. */
import type { PlainProblem } from './plain-problem.ts'

/**
 * Every resource has a field of bits with a guard bit above it. With all guards set in what is free, taking an amount
 * leaves every guard set exactly where every resource had enough: no borrow passes a guard.
 */
export interface PackedNeeds {
  readonly words: number
  /** Free of everything, guards set; one number per word. */
  readonly full: Int32Array
  readonly guard: Int32Array
  /** Needs of way `w` are `need[w * words]` and on. */
  readonly need: Int32Array
  /** Whether each way stays within every capacity at all. */
  readonly possible: Uint8Array
}

interface Field {
  readonly resource: number
  readonly word: number
  readonly shift: number
  readonly bits: number
}

function fieldsOf(plain: PlainProblem, ways: number): readonly Field[] {
  const resources = plain.capacity.length
  const fields: Field[] = []
  let [word, shift] = [0, 0]
  for (let resource = 0; resource < resources; resource++) {
    let used = false
    for (let way = 0; way < ways; way++) used ||= plain.need[way * resources + resource]! > 0
    if (!used) continue
    const bits = 33 - Math.clz32(plain.capacity[resource]!)
    if (shift + bits > 32) [word, shift] = [word + 1, 0]
    fields.push({ resource, word, shift, bits })
    shift += bits
  }
  return fields
}

/** The needs of all ways, packed. Needs: capacities below 2^31. */
export function packedNeeds(plain: PlainProblem): PackedNeeds {
  const ways = plain.duration.length
  const resources = plain.capacity.length
  const fields = fieldsOf(plain, ways)
  const words = Math.max(1, ...fields.map(({ word }) => word + 1))
  const [full, guard] = [new Int32Array(words), new Int32Array(words)]
  const [need, possible] = [new Int32Array(ways * words), new Uint8Array(ways).fill(1)]
  for (const { resource, word, shift, bits } of fields) {
    const top = 1 << (shift + bits - 1)
    guard[word]! |= top
    full[word]! |= top | (plain.capacity[resource]! << shift)
    for (let way = 0; way < ways; way++) {
      const amount = plain.need[way * resources + resource]!
      if (amount > plain.capacity[resource]!) possible[way] = 0
      else need[way * words + word]! |= amount << shift
    }
  }
  return { words, full, guard, need, possible }
}
