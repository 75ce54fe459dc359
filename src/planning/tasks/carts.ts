import type { Place } from '../../base/place.ts'
import type { Target } from '../../model/project.ts'
import type { Cart } from '../../model/purchase.ts'
import { anybody, type Ground, lineKey, nobody } from './ground.ts'
import { sayList } from './say-list.ts'
import { addTimes } from './times.ts'

/** Order, delivery and receiving check of every cart that is not outside work. */
export function buildCarts(ground: Ground): void {
  for (const cart of ground.purchase.carts) {
    if (!cart.outside) buildCart(ground, cart, {})
  }
}

/** One order: placing it, its way here, the receiving check. Gives the ids of the first and the last task. */
export function buildCart(
  ground: Ground,
  cart: Cart,
  subject: { readonly part?: string; readonly lot?: number | null; readonly routeStep?: number },
): { readonly order: string; readonly received: string } {
  const vendor = ground.project.vendors.get(cart.vendor)!
  const { build } = ground
  const id = cartPrefix(cart)
  const about = { ...subject, cart: cart.id }
  const lines = sayList(cart.lines.map((line) => line.title))
  const order = build.task({
    id: orderTask(cart),
    kind: 'order',
    at: cart.at,
    subject: about,
    labour: anybody(ground),
    title: cart.outside ? `Send out: ${lines}` : `Order from ${cart.vendor}: ${lines}`,
    time: addTimes([[vendor.order, 1]]),
  })
  const delivery = build.task({
    id: `${id} / delivery`,
    kind: 'delivery',
    at: cart.at,
    subject: about,
    labour: nobody,
    time: null,
    title: cart.outside ? `Away at ${cart.vendor}` : `Coming from ${cart.vendor}`,
    delivery: {
      cart: cart.id,
      vendor: cart.vendor,
      leadDays: cart.leadDays,
      transitDays: cart.transitDays,
      outDays: cart.outside ? cart.transitDays : 0,
      spreadDays: spreadDays(cart),
    },
  })
  const received = build.task({
    id: `${id} / receive`,
    kind: 'receive',
    at: cart.at,
    subject: about,
    labour: anybody(ground),
    title: `Unpack and check: ${lines}`,
    time: addTimes([[vendor.receive, 1]]),
  })
  build.link(order, delivery, 'ordered', cart.at)
  build.link(delivery, received, 'delivered', cart.at)
  ground.received.set(cart.id, received)
  return { order, received }
}

/** Days between the shortest and the longest time that a cart may be on its way. */
function spreadDays({ leads, transit }: Cart): number {
  const longest = (of: 'low' | 'high') => leads.reduce((most, lead) => Math.max(most, lead[of].valueOf()), 0)
  return longest('high') - longest('low') + transit.high.valueOf() - transit.low.valueOf()
}

/** The task after which something bought is here; `null` where it is not bought. */
export function receivedTask(ground: Ground, what: Parameters<typeof lineKey>[0]): string | null {
  const found = ground.lines.get(lineKey(what))
  return found ? (ground.received.get(found.cart.id) ?? null) : null
}

/** What each order waits for: the needs of its offers, and what its parts must come after. */
export function linkCarts(
  ground: Ground,
  finished: (target: Target, device: number | null) => readonly string[],
): void {
  for (const cart of ground.purchase.carts) {
    const order = [orderTask(cart)]
    for (const need of cart.needs) ground.build.linkAll(finished(need, null), order, 'needs', need.at)
    if (!cart.outside) linkPartsAfter(ground, cart, order, finished)
  }
}

function linkPartsAfter(
  ground: Ground,
  cart: Cart,
  order: readonly string[],
  finished: (target: Target, device: number | null) => readonly string[],
): void {
  for (const { what } of cart.lines) {
    const part = what.kind === 'part' ? ground.project.parts.get(what.part) : undefined
    for (const after of part?.after ?? [])
      linkAfter(ground, finished(after.target, null), order, after.at, after.lag, after.within)
  }
}

/** What the tasks of a cart are called by: outside work is named after its lot. */
function cartPrefix(cart: Cart): string {
  return cart.outside ? cart.id : `cart ${cart.id}`
}

/** The task in which a cart is ordered or sent out. */
export function orderTask(cart: Cart): string {
  return `${cartPrefix(cart)} / order`
}

/** Links of one `after`, with its lag and longest wait. */
export function linkAfter(
  ground: Ground,
  from: readonly string[],
  to: readonly string[],
  at: Place,
  lag: { readonly minutes: number } | { readonly workingDays: number },
  within: number | null,
): void {
  for (const one of from) for (const other of to) ground.build.link(one, other, 'after', at, lag, within)
}
