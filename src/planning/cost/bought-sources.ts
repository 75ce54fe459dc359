import Fraction from 'fraction.js'
import type { ChargeKind, LineSource, MissingSource } from '../../model/money.ts'
import type { Cart, CartLine, Missing, Purchase } from '../../model/purchase.ts'
import { type Claim, type Claimed, overClaim, partClaims, unitsOf } from './claim.ts'
import type { Fate } from './fates.ts'

type Fates = ReadonlyMap<string, Fate>

/**
 * Every landed line, and every thing that should be a line and cannot be, with who used it. The units are pieces, whole
 * bars or bottles, or cutters; what is bought beyond the use is left over.
 */
export function boughtSources(purchase: Purchase, fates: Fates): Claimed[] {
  return [
    ...purchase.carts.flatMap((cart) => cart.lines.map((line) => lineSource(cart, line, purchase, fates))),
    ...purchase.missing.map((missing) => missingSource(missing, fates)),
  ]
}

function lineSource(cart: Cart, line: CartLine, purchase: Purchase, fates: Fates): Claimed {
  const { id, title, landed: amount, known } = line
  const source: LineSource = {
    kind: 'line',
    id,
    title,
    amount,
    known,
    cart: cart.id,
    vendor: cart.vendor,
    line: id,
  }
  const process = processOf[line.what.kind]
  const used = usedBy(line, purchase).flatMap(({ part, units }) => takes(part, process, units, fates))
  return { source, claims: [...used, overClaim(process, new Fraction(line.quantity).sub(unitsOf(used)))] }
}

const processOf: Readonly<Record<CartLine['what']['kind'], ChargeKind>> = {
  part: 'bought',
  form: 'material',
  stock: 'material',
  cutter: 'cutter',
  outside: 'outside',
}

interface Used {
  readonly part: string
  readonly units: Fraction
}

function usedBy(line: CartLine, { cuts, wear }: Purchase): Used[] {
  const { what } = line
  if (what.kind === 'form') {
    const cut = cuts.find(({ form }) => form === what.form)
    return cut?.pieces.map(({ part, fromBought }) => ({ part, units: fromBought })) ?? []
  }
  if (what.kind === 'cutter') {
    const worn = wear.find(({ cutter }) => cutter === what.cutter)
    if (!worn?.life) return []
    return worn.parts.map(({ part, seconds }) => ({ part, units: seconds.div(worn.life!) }))
  }
  // An outside lot's price is for that lot: a least quantity above it buys nothing that could be left over.
  return [{ part: what.part, units: new Fraction(what.kind === 'outside' ? line.quantity : line.needed) }]
}

function takes(part: string, process: ChargeKind, units: Fraction, fates: Fates): Claim[] {
  const fate = fates.get(part)
  return partClaims(part, process, units, fate?.kept ?? new Fraction(0), fate?.why ?? 'spare')
}

const missingProcess: Readonly<Record<Missing['kind'], ChargeKind>> = {
  part: 'bought',
  material: 'material',
  cutter: 'cutter',
  outside: 'outside',
}

function missingSource({ id, title, why, kind, parts }: Missing, fates: Fates): Claimed {
  const source: MissingSource = { kind: 'missing', id, title, amount: null, known: 0, why }
  const weights = unitsOf(parts.map(({ weight }) => ({ units: weight }))).equals(0) ? null : parts
  const used = (weights ?? parts.map(({ part }) => ({ part, weight: new Fraction(1) }))).flatMap(
    ({ part, weight }) => takes(part, missingProcess[kind], weight, fates),
  )
  return { source, claims: used }
}
