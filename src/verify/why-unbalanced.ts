import Fraction from 'fraction.js'
import { currencies } from '../base/currencies.ts'
import type { Cause, Money, Total } from '../model/money.ts'
import type { Project } from '../model/project.ts'
import type { Cents, Purchase } from '../model/purchase.ts'
import { idList, portion, sameIds, sumOf } from './exact.ts'
import { whyMisbought } from './why-misbought.ts'
import { whyMiscarted } from './why-miscarted.ts'
import { first } from './why-misplaced.ts'
import { whyMissliced } from './why-missliced.ts'

/**
 * Why purchase and money do not add up, as one sentence, or `null`. From the lines upward in whole minor units:
 * lines, carts, sources and their parts, the five totals, the balance, and the tables by part, process, vendor and
 * device. What is unknown must be named wherever it counts; it is never zero unsaid.
 */
export function whyUnbalanced(project: Project, purchase: Purchase, money: Money): string | null {
  return (
    whyOtherMoney(project, money) ??
    whyMisbought(project, purchase) ??
    whyMiscarted(project, purchase) ??
    whyMissliced(purchase, money) ??
    whyTotalsWrong(money) ??
    whyNoBalance(money) ??
    whyTablesWrong(project, money) ??
    whyLossWrong(project, money)
  )
}

/** Something that counts towards a sum: whose it is, what is known of it, and the source it hangs on if unknown. */
interface Entry {
  readonly key: string
  readonly known: Cents
  readonly unknown: string | null
}

function whyOtherMoney({ device }: Project, { currency, digits }: Money): string | null {
  if (currency !== device.currency) return `the money is in ${currency}, the project in ${device.currency}`
  const own = currencies.get(currency)
  return own === digits ? null : `${currency} has ${own} minor digits, not ${digits}`
}

function whyTotalsWrong(money: Money): string | null {
  const from = (...kinds: string[]): Entry[] =>
    money.sources
      .filter(({ kind }) => kinds.includes(kind))
      .map(({ id, known, amount }) => ({ key: id, known, unknown: amount === null ? id : null }))
  return (
    whyTotalWrong('cash', money.cash, from('line', 'missing')) ??
    whyTotalWrong('drawn from own stock', money.fromOwnStock, from('own stock')) ??
    whyTotalWrong('hours at rate', money.hoursAtRate, from('hours')) ??
    whyTotalWrong('charged', money.charged, money.charges.map(entryOf)) ??
    whyTotalWrong('left over', money.leftOver, money.leftovers.map(entryOf))
  )
}

function entryOf(part: Money['charges'][number] | Money['leftovers'][number]): Entry {
  return { key: part.id, known: part.known, unknown: part.amount === null ? part.slice.source : null }
}

function whyTotalWrong(name: string, total: Total, entries: readonly Entry[]): string | null {
  const known = sumOf(entries.map((entry) => entry.known))
  if (total.known !== known) return `${name} says ${total.known}; it adds up to ${known}`
  const unknown = entries.flatMap((entry) => entry.unknown ?? [])
  if (sameIds(total.unknown, unknown)) return null
  return `${name} names as unknown ${idList(total.unknown)}; without a price are ${idList(unknown)}`
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

interface Row extends Total {
  readonly key: string
}

function whyTablesWrong(project: Project, money: Money): string | null {
  const causes = money.charges.map((charge) => ({ ...entryOf(charge), key: causeKey(charge.cause) }))
  const processes = money.charges.map((charge) => ({ ...entryOf(charge), key: charge.process }))
  const vendors = money.sources.flatMap((source): Entry[] => {
    if (source.kind !== 'line' && source.kind !== 'missing') return []
    const key = source.kind === 'line' ? source.vendor : 'nobody known'
    return [{ key, known: source.known, unknown: source.amount === null ? source.id : null }]
  })
  return (
    whyTableWrong(
      'part',
      money.byPart.map((row) => ({ ...row, key: causeKey(row.cause) })),
      causes,
    ) ??
    whyTableWrong(
      'process',
      money.byProcess.map((row) => ({ ...row, key: row.process })),
      processes,
    ) ??
    whyTableWrong(
      'vendor',
      money.byVendor.map((row) => ({ ...row, key: row.vendor ?? 'nobody known' })),
      vendors,
    ) ??
    whyDevicesWrong(project, money)
  )
}

/** Each group of entries is one row of the table, and no row stands for none. */
function whyTableWrong(name: string, rows: readonly Row[], entries: readonly Entry[]): string | null {
  const groups = new Map<string, Entry[]>(rows.map(({ key }) => [key, []]))
  if (groups.size < rows.length) return `a row of the table by ${name} stands twice`
  for (const entry of entries) {
    const own = groups.get(entry.key)
    if (!own) return `the table by ${name} lacks \`${entry.key}\``
    own.push(entry)
  }
  return first(rows, (row) => whyTotalWrong(`\`${row.key}\` by ${name}`, row, groups.get(row.key)!))
}

function whyDevicesWrong({ device }: Project, { byDevice, charged }: Money): string | null {
  const numbers = new Set(byDevice.map((share) => share.device))
  const all = Array.from({ length: device.qty }, (_, i) => i).every((i) => numbers.has(i))
  if (!all || byDevice.length !== device.qty)
    return `the ${byDevice.length} shares are not one for each device`
  const known = sumOf(byDevice.map((share) => share.known))
  if (known !== charged.known) return `the shares by device add up to ${known}, not to ${charged.known}`
  const named = byDevice.flatMap((share) => share.unknown)
  if (sameIds(named, charged.unknown)) return null
  return `the shares by device name as unknown ${idList(named)}, not ${idList(charged.unknown)}`
}

/** Attempts x (1 / yield - 1). */
function whyLossWrong({ parts }: Project, { expectedLoss }: Money): string | null {
  return first(expectedLoss, ({ part, attempts, yield: good, amount }) => {
    const says = `the expected loss of \`${part}\``
    const own = parts.get(part)?.yield
    if (own && !own.equals(good)) return `${says} counts with a yield of ${good}, the part has ${own}`
    const loss = attempts === null ? null : portion(attempts, new Fraction(1).div(good).sub(1))
    return amount === loss ? null : `${says} says ${amount} and is ${loss}`
  })
}

function causeKey(cause: Cause): string {
  return cause.kind === 'device' ? 'the device' : `${cause.kind} ${cause.id}`
}
