import type { Charge, LeftOver, Money, Slice, Source } from '../model/money.ts'
import type { Cents, Purchase } from '../model/purchase.ts'
import { minorUnits, portion, signed } from './exact.ts'
import { first } from './why-misplaced.ts'

/**
 * Why a source of money is not what it comes from, or is not divided whole into charges and left-overs, or `null`.
 * Each source lies as an interval from 0 to 1, and its slices must lie on it end to end.
 */
export function whyMissliced(purchase: Purchase, money: Money): string | null {
  const doubled = firstDouble(money.sources.map(({ id }) => id))
  if (doubled !== undefined) return `source \`${doubled}\` stands twice`
  const slices = slicesBySource(money)
  const bySource = new Map(money.sources.map((source) => [source.id, source]))
  return (
    whyNotAllBought(purchase, money) ??
    first(money.sources, (source) => whySourceWrong(source, money.currency)) ??
    first([...money.charges, ...money.leftovers], (part) =>
      whyPartWrong(part, bySource.get(part.slice.source)),
    ) ??
    first(money.sources, (source) => whyNotWhole(source, slices.get(source.id) ?? []))
  )
}

/** Every line of every cart, and everything missing, is one source. */
function whyNotAllBought({ carts, missing }: Purchase, { sources }: Money): string | null {
  const lines = carts.flatMap((cart) =>
    cart.lines.map((line) => ({ ...line, cart: cart.id, vendor: cart.vendor })),
  )
  const bySource = sources.filter((source) => source.kind === 'line')
  if (bySource.length !== lines.length)
    return `${bySource.length} sources stand for ${lines.length} lines of carts`
  const absent = first(lines, (line) => {
    const source = bySource.find((one) => one.cart === line.cart && one.line === line.id)
    if (!source || source.vendor !== line.vendor)
      return `no source stands for line \`${line.id}\` of \`${line.cart}\``
    if (source.amount === line.landed && source.known === line.known) return null
    return `source \`${source.id}\` says ${source.amount}; its line lands at ${line.landed}`
  })
  if (absent !== null) return absent
  const unsold = sources.filter((source) => source.kind === 'missing').length
  return unsold === missing.length
    ? null
    : `${unsold} sources stand for ${missing.length} things that nobody sells`
}

function whySourceWrong(source: Source, currency: string): string | null {
  const says = `source \`${source.id}\` says ${source.amount}`
  if (source.kind !== 'line') {
    const own = amountOf(source, currency)
    if (source.amount !== own) return `${says} and is ${own}`
    return source.known === (own ?? 0) ? null : `${says} and knows ${source.known} of it`
  }
  return source.amount === null || source.known === source.amount
    ? null
    : `${says} and knows ${source.known} of it`
}

/** Without a price `null`: what is missing, has no worth or no rate costs something nobody knows. */
function amountOf(source: Exclude<Source, { kind: 'line' }>, currency: string): Cents | null {
  if (source.kind === 'missing') return null
  if (source.kind === 'hours') {
    const { minutes, rate } = source
    return rate && minorUnits(BigInt(minutes) * signed(rate), 60n * rate.d, currency)
  }
  const { units, worth } = source
  return worth && minorUnits(signed(units) * signed(worth), units.d * worth.d, currency)
}

function whyPartWrong({ id, slice, ...part }: Charge | LeftOver, source: Source | undefined): string | null {
  if (!source) return `\`${id}\` comes from source \`${slice.source}\`, which is none`
  if (slice.of.s > 0n && !slice.upTo.sub(slice.after).equals(slice.units.div(slice.of))) {
    return `\`${id}\` takes ${slice.units} of ${slice.of} and is charged for another share`
  }
  const amount = source.amount === null ? null : cut(source.amount, slice)
  if (part.amount !== amount)
    return `\`${id}\` says ${part.amount}; its part of \`${source.id}\` is ${amount}`
  const known = cut(source.known, slice)
  return part.known === known
    ? null
    : `\`${id}\` knows ${part.known}; its part of \`${source.id}\` is ${known}`
}

function cut(cents: Cents, { after, upTo }: Slice): Cents {
  return portion(cents, upTo) - portion(cents, after)
}

function whyNotWhole(source: Source, slices: readonly Slice[]): string | null {
  if (slices.length === 0) {
    const nothing = source.amount !== null && source.known === 0
    return nothing ? null : `source \`${source.id}\` is charged to nothing and is not left over`
  }
  const inOrder = [...slices].sort((a, b) => a.after.compare(b.after) || a.upTo.compare(b.upTo))
  let end = inOrder[0]!.after.mul(0)
  for (const { after, upTo } of inOrder) {
    if (!after.equals(end) || upTo.lt(after))
      return `the parts of source \`${source.id}\` do not lie end to end`
    end = upTo
  }
  return end.equals(1) ? null : `the parts of source \`${source.id}\` end at ${end} of it`
}

function slicesBySource({ charges, leftovers }: Money): Map<string, Slice[]> {
  const result = new Map<string, Slice[]>()
  for (const { slice } of [...charges, ...leftovers]) {
    const own = result.get(slice.source) ?? []
    own.push(slice)
    result.set(slice.source, own)
  }
  return result
}

function firstDouble(ids: readonly string[]): string | undefined {
  const seen = new Set<string>()
  return ids.find((id) => seen.size === seen.add(id).size)
}
