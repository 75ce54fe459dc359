/** Where each number stands in an order of the numbers below its length: `places[order[k]] === k`. */
export function placesOf(order: ArrayLike<number>): Int32Array {
  const places = new Int32Array(order.length)
  for (let k = 0; k < order.length; k++) places[order[k]!] = k
  return places
}
