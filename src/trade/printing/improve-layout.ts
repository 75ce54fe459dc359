import { seededRandom } from '../../base/random.ts'
import { type Copy, fillPlates, type LaidCopy } from './fill-plates.ts'
import type { RoomRule } from './max-rects.ts'

const rules: readonly RoomRule[] = ['short side', 'area', 'lowest']
/** Work spent, as tries x copies squared. Common practice, no source: a few hundred milliseconds. */
const budget = 400_000
const mostTries = 1500

/**
 * A layout on fewer plates, looked for by exchanging parts in the order they are put down; the layout given, where none
 * is found. Method: hill climbing on plates, then on the area of the last one, from a fixed seed.
 * Gives: the same layout every time.
 */
export function improveLayout(
  copies: readonly Copy[],
  room: { readonly w: number; readonly d: number },
  start: { readonly laid: readonly LaidCopy[]; readonly least: number },
): readonly LaidCopy[] {
  const random = seededRandom(copies.length)
  const pick = (n: number) => Math.floor(random.next() * n)
  let order = [...copies].sort((a, b) => b.w * b.d - a.w * a.d || a.of - b.of || a.copy - b.copy)
  let [best, bestCost] = [start.laid, costOf(start.laid, room)]
  let orderCost = Number.POSITIVE_INFINITY
  const tries = Math.min(mostTries, Math.floor(budget / Math.max(1, copies.length ** 2)))
  for (let i = 0; i < tries && Math.ceil(bestCost) > start.least; i++) {
    const next = exchanged(order, pick(order.length), pick(order.length))
    const laid = fillPlates(next, room, rules[pick(rules.length)]!)
    const cost = costOf(laid, room)
    if (cost <= orderCost) [order, orderCost] = [next, cost]
    if (cost < bestCost) [best, bestCost] = [laid, cost]
  }
  return best
}

function exchanged(order: readonly Copy[], i: number, j: number): Copy[] {
  const next = [...order]
  const [a, b] = [next[i]!, next[j]!]
  next[i] = b
  next[j] = a
  return next
}

/** Full plates, and the share of the last one that is covered. */
function costOf(laid: readonly LaidCopy[], room: { readonly w: number; readonly d: number }): number {
  const plates = laid.reduce((most, { plate }) => Math.max(most, plate), 0)
  const last = laid.reduce((sum, { plate, w, d }) => sum + (plate === plates ? w * d : 0), 0)
  return plates === 0 ? 0 : plates - 1 + last / (room.w * room.d)
}
