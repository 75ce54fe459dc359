import Fraction from 'fraction.js'
import { groupBy } from '../../base/group-by.ts'
import { shareOut } from '../../base/money.ts'
import type {
  CauseShare,
  Charge,
  DeviceShare,
  ProcessShare,
  Source,
  Total,
  VendorShare,
} from '../../model/money.ts'
import type { Cents } from '../../model/purchase.ts'
import { compareIds } from '../buying/started.ts'
import { causeId } from './divide.ts'

/** An amount that may be unknown, and the source it comes from. */
interface Amount {
  readonly source: string
  readonly amount: Cents | null
  readonly known: Cents
}

/** The sum of what is known, and the sources of what is not. */
export function totalOf(amounts: readonly Amount[]): Total {
  const unknown = amounts.filter(({ amount }) => amount === null).map(({ source }) => source)
  return {
    known: amounts.reduce((sum, { known }) => sum + known, 0),
    unknown: [...new Set(unknown)].sort(compareIds),
  }
}

/** A source as an amount of itself. */
export function wholeOf({ id, amount, known }: Source): Amount {
  return { source: id, amount, known }
}

/** A charge or what is left over as an amount of its source. */
export function sliceOf<T extends Omit<Amount, 'source'> & { readonly slice: { readonly source: string } }>(
  each: T,
): Amount {
  return { source: each.slice.source, amount: each.amount, known: each.known }
}

/** Charged, by what it is for: parts, work, carts and the device itself. */
export function byCause(charges: readonly Charge[]): CauseShare[] {
  return grouped(charges, ({ cause }) => `${causeId(cause)} ${cause.kind}`).map((group) => ({
    cause: group[0]!.cause,
    ...totalOf(group.map(sliceOf)),
  }))
}

/** Charged, by kind. */
export function byProcess(charges: readonly Charge[]): ProcessShare[] {
  return grouped(charges, ({ process }) => process).map((group) => ({
    process: group[0]!.process,
    ...totalOf(group.map(sliceOf)),
  }))
}

/** Cash, by vendor; what nobody is known to sell comes first. */
export function byVendor(sources: readonly Source[]): VendorShare[] {
  const vendorOf = (source: Source): string | null => (source.kind === 'line' ? source.vendor : null)
  const cash = sources.filter(({ kind }) => kind === 'line' || kind === 'missing')
  return grouped(cash, (source) => vendorOf(source) ?? '').map((group) => ({
    vendor: vendorOf(group[0]!),
    ...totalOf(group.map(wholeOf)),
  }))
}

/** A total divided evenly, one share per device. */
export function byDevice({ known, unknown }: Total, devices: number): DeviceShare[] {
  const even = Array.from({ length: devices }, () => new Fraction(1))
  return shareOut(known, even).map((share, device) => ({ device, known: share, unknown }))
}

function grouped<T>(all: readonly T[], key: (each: T) => string): T[][] {
  return [...groupBy(all, key)].sort(([a], [b]) => compareIds(a, b)).map(([, group]) => group)
}
