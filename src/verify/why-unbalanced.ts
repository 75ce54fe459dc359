import { currencies } from '../base/currencies.ts'
import type { Money, Share, Total } from '../model/money.ts'
import type { Project } from '../model/project.ts'
import type { Cart, Cents, Purchase } from '../model/purchase.ts'
import { sumOf } from './exact.ts'
import { list, sameIds, whyMiscarted } from './why-miscarted.ts'
import { whyMischarged } from './why-mischarged.ts'
import { first } from './why-misplaced.ts'

interface Entry {
  readonly id: string
  readonly amount: Cents | null
}

/**
 * Why purchase and money do not add up, as one sentence, or `null`. From the lines upward in whole minor units: lines,
 * carts, charges, the five totals, the balance, and the tables by part, process, vendor and device.
 * Reading: what a line without a full landed price costs is unknown whole; `byVendor` is cash, the other tables are
 * what is charged. A charge for no part may stand under any name in the table by part.
 */
export function whyUnbalanced(project: Project, purchase: Purchase, money: Money): string | null {
  return (
    whyOtherMoney(project, money) ??
    whyMiscarted(project, purchase) ??
    whyMischarged(purchase, money) ??
    whyTotalsWrong(purchase, money) ??
    whyNoBalance(money) ??
    whySharesWrong(project, purchase, money)
  )
}

function whyOtherMoney({ device }: Project, { currency, digits }: Money): string | null {
  if (currency !== device.currency) return `the money is in ${currency}, the project in ${device.currency}`
  const own = currencies.get(currency)
  return own === digits ? null : `${currency} has ${own} minor digits, not ${digits}`
}

function whyTotalsWrong({ carts }: Purchase, money: Money): string | null {
  const lines = carts.flatMap((cart) => cart.lines.map(({ id, landed }) => ({ id, amount: landed })))
  const hours = money.charges.filter(({ from }) => from.kind === 'hours')
  return (
    whyTotalWrong('cash', money.cash, lines) ??
    whyTotalWrong('charged', money.charged, money.charges) ??
    whyTotalWrong('left over', money.leftOver, money.leftovers) ??
    whyTotalWrong('drawn from own stock', money.fromOwnStock, money.drawn) ??
    whyTotalWrong('hours at rate', money.hoursAtRate, hours)
  )
}

function whyTotalWrong(name: string, total: Total, entries: readonly Entry[]): string | null {
  const known = sumOf(entries.map(({ amount }) => amount))
  if (total.known !== known) return `${name} says ${total.known}; its lines add up to ${known}`
  const unknown = entries.filter(({ amount }) => amount === null).map(({ id }) => id)
  if (sameIds(total.unknown, unknown)) return null
  return `${name} names as unknown ${list(total.unknown)}; without an amount are ${list(unknown)}`
}

function whyNoBalance({
  cash,
  fromOwnStock,
  hoursAtRate,
  charged,
  leftOver,
  difference,
}: Money): string | null {
  const [came, went] = [cash.known + fromOwnStock.known + hoursAtRate.known, charged.known + leftOver.known]
  if (difference !== came - went) return `the difference says ${difference} and is ${came - went}`
  if (came === went) return null
  return `cash, own stock and hours make ${came}; charged and left over make ${went}`
}

function whySharesWrong(project: Project, { carts }: Purchase, money: Money): string | null {
  const parts = money.charges.flatMap(({ part, amount }) => (part === null ? [] : [{ id: part, amount }]))
  const processes = money.charges.map(({ process, amount }) => ({ id: process, amount }))
  return (
    whyTableWrong('part', money.byPart, parts) ??
    whySumWrong('part', money.byPart, money.charged.known) ??
    whyTableWrong('process', money.byProcess, processes) ??
    whySumWrong('process', money.byProcess, money.charged.known) ??
    whyTableWrong('vendor', money.byVendor, carts.flatMap(linesOfVendor)) ??
    whySumWrong('vendor', money.byVendor, money.cash.known) ??
    whyDevicesWrong(project, money)
  )
}

function linesOfVendor(cart: Cart): Entry[] {
  return cart.lines.map(({ landed }) => ({ id: cart.vendor, amount: landed }))
}

function whyTableWrong(name: string, shares: readonly Share[], entries: readonly Entry[]): string | null {
  const byId = new Map<string, Entry[]>()
  for (const entry of entries) byId.set(entry.id, [...(byId.get(entry.id) ?? []), entry])
  return first([...byId], ([id, own]) => {
    const named = shares.filter((share) => share.id === id)
    const says = `the table by ${name}: \`${id}\``
    if (named.length !== 1) return `${says} stands ${named.length} times`
    const amount = sumOf(own.map((entry) => entry.amount))
    if (named[0]!.amount !== amount) return `${says} says ${named[0]!.amount}; its lines add up to ${amount}`
    const unknown = own.some((entry) => entry.amount === null)
    if (named[0]!.unknown === unknown) return null
    return `${says} ${unknown ? 'hides an unknown price' : 'is marked unknown and is not'}`
  })
}

function whySumWrong(name: string, shares: readonly Share[], total: Cents): string | null {
  const sum = sumOf(shares.map(({ amount }) => amount))
  return sum === total ? null : `the shares by ${name} add up to ${sum}, not to ${total}`
}

function whyDevicesWrong({ device }: Project, { byDevice, charged }: Money): string | null {
  if (byDevice.length !== device.qty) return `there are ${byDevice.length} shares for ${device.qty} devices`
  const wrong = whySumWrong('device', byDevice, charged.known)
  if (wrong !== null) return wrong
  const hidden = charged.unknown.length > 0 ? byDevice.find(({ unknown }) => !unknown) : undefined
  return hidden ? `the share of device \`${hidden.id}\` hides an unknown price` : null
}
