import type { AssemblyOrder, Step } from '../model/assembly.ts'

/**
 * How sure an order is, what it costs in turning and changing tools, and of how many orders it was taken; and whether
 * the steps as planned by their times go another way.
 */
export function sayOrder(order: AssemblyOrder, planned: readonly Step[]): string {
  const { proved, nearest, turns, toolChanges } = order
  const effort = `turnings over ${turns}${sayCounted(order)}, tool changes ${toolChanges}`
  const written = nearest ? '' : '; an equal one may have its tests earlier or be nearer to the order written'
  const sure = proved
    ? `no order needs less turning over, then fewer tool changes (proved): ${effort}${written}`
    : `this order works, but not all orders were tried, so a better one may exist: ${effort}`
  const follows = planned.every(({ id }, at) => order.order?.[at] === id)
  const other = follows ? '' : '; the steps below follow their planned times, which differ from it'
  return `${sure}; ${sayCount(order)}${other}`
}

/** Which directions the turnings count; `''`: all are typed. */
function sayCounted({ sidesByMeshes: { steps, counted } }: AssemblyOrder): string {
  if (steps === 0) return ''
  if (!counted) return ' (as `turn` says, which goes before the meshes)'
  return steps === 1
    ? ' (the direction of one step by the meshes)'
    : ` (the directions of ${steps} steps by the meshes)`
}

function sayCount({ feasibleOrders }: AssemblyOrder): string {
  if (feasibleOrders === null) return 'the orders that keep all statements are too many to count'
  if (feasibleOrders === 1n) return 'it is the only order that keeps all statements'
  return `${sayLarge(feasibleOrders)} orders keep all statements`
}

/** Digits by threes: `1 680 384`. */
const sayLarge = (count: bigint): string => count.toString().replace(/\B(?=(\d{3})+$)/g, ' ')
