import Fraction from 'fraction.js'
import { type Quantity, readAs, readQuantity } from '../base/quantity.ts'
import { isFault } from '../base/quantity-fault.ts'
import { buy } from '../diagnostics/catalogue/buy.ts'
import { prc } from '../diagnostics/catalogue/prc.ts'
import { prcCutting } from '../diagnostics/catalogue/prc-cutting.ts'
import type { Material, MaterialForm, Size, Stock } from '../model/project.ts'
import type { FormSource, MaterialSource, StockSource } from '../source/generated/project-types.ts'
import { field, type Spot } from '../source/spot.ts'
import { findMaterial } from '../trade/materials/find-material.ts'
import type { Context } from './context.ts'
import { offersAt, worthAt } from './offers.ts'
import { listed, quantityAt, sizeAt, words } from './reading.ts'

/** Width of a saw cut where nothing is said. Source: common practice, no source. */
const usualKerf = readQuantity('2 mm') as Quantity
const noGrip = readQuantity('0 mm') as Quantity

/** A size in words: `bar 20 mm`. */
export function saySize(size: Size): string {
  switch (size.shape) {
    case 'bar':
      return `bar ${size.across.text}`
    case 'volume':
      return `${size.volume.text}`
    case 'mass':
      return `${size.mass.text}`
    default:
      return `${size.shape} ${size.length.text.replace(/[^\d./ ]+$/, '').trim()} x ${size.width.text.replace(/[^\d./ ]+$/, '').trim()} x ${size.thickness.text}`
  }
}

function flatSize(context: Context, shape: 'plate' | 'block', spot: Spot<string> | null): Size | null {
  const sides = sizeAt(context, shape, spot, 3)
  return sides ? { shape, length: sides[0]!, width: sides[1]!, thickness: sides[2]! } : null
}

const formShapes = ['bar', 'plate', 'volume', 'mass']
const stockShapes = ['bar', 'plate', 'block']

type SizeKeys = Pick<FormSource, 'bar' | 'length' | 'plate' | 'volume' | 'mass'> & Pick<StockSource, 'block'>

/** The one size a form or piece of stock has; `null` where it has none, several or a faulted one (reported). */
function oneSize(
  context: Context,
  what: string,
  spot: Spot<SizeKeys>,
  shapes: readonly string[],
): Size | null {
  const keys = (['bar', 'plate', 'block', 'volume', 'mass'] as const).filter((key) => field(spot, key))
  const [key] = keys
  if (keys.length !== 1 || key === undefined) {
    context.report(prc.twoShapes, spot.at, { what, found: keys, shapes })
    return null
  }
  if (key === 'plate' || key === 'block') return flatSize(context, key, field(spot, key))
  if (key === 'bar') {
    const across = quantityAt(context, 'bar', field(spot, 'bar'), 'length', 'above 0')
    const length = quantityAt(context, 'length', field(spot, 'length'), 'length', 'above 0')
    const bar = field(spot, 'bar')!
    if (!field(spot, 'length')) context.report(prc.barWithoutLength, bar.at, { what, bar: bar.text })
    return across && length ? { shape: 'bar', across, length } : null
  }
  const amount = quantityAt(context, key, field(spot, key), key, 'above 0')
  if (!amount) return null
  return key === 'volume' ? { shape: 'volume', volume: amount } : { shape: 'mass', mass: amount }
}

const wholeUnit = (size: Size): Quantity | null =>
  size.shape === 'bar'
    ? size.length
    : size.shape === 'volume'
      ? size.volume
      : size.shape === 'mass'
        ? size.mass
        : null

/** What is here, in units of the form: a bare number counts units, an amount is a share of one. */
function haveOf(context: Context, size: Size, spot: Spot<string | number> | null): Fraction {
  if (!spot) return new Fraction(0)
  const unit = wholeUnit(size)
  const measure = size.shape === 'bar' ? 'length' : size.shape === 'mass' ? 'mass' : 'volume'
  const bare = readAs(spot.text, 'ratio')
  if (size.shape === 'plate' || size.shape === 'block' || (!isFault(bare) && bare.unit === ''))
    return quantityAt(context, 'have', spot, 'ratio')?.value ?? new Fraction(0)
  const amount = quantityAt(context, 'have', spot, measure)
  return amount && unit ? amount.value.div(unit.value) : new Fraction(0)
}

function formAt(context: Context, material: string, spot: Spot<FormSource>): MaterialForm | null {
  const size = oneSize(context, `a form of \`${material}\``, spot as Spot<SizeKeys>, formShapes)
  const id = size ? `${material} ${saySize(size)}` : material
  const offers = offersAt(context, id, field(spot, 'offers'))
  if (!size) {
    context.incomplete.add(material)
    return null
  }
  return {
    at: spot.at,
    id,
    size,
    have: haveOf(context, size, field(spot, 'have')),
    worth: worthAt(context, field(spot, 'worth')),
    offers,
  }
}

/** The entry of the tables of the trade that a material is: the one it is said to be like, or of its own name. */
function likeAt(context: Context, id: string, spot: Spot<string> | null): string | null {
  const found = findMaterial(spot?.text ?? id)
  if (!('fault' in found)) return found.key
  if (spot) {
    context.faulted.add(id)
    context.report(prcCutting.unknownLike, spot.at, { material: id, text: spot.text, near: found.near })
  }
  return null
}

/** Bars of one section in several lengths are named with their length. */
function toldApart(forms: readonly MaterialForm[]): readonly MaterialForm[] {
  const times = (id: string): number => forms.filter((one) => one.id === id).length
  return forms.map((form) =>
    form.size.shape === 'bar' && times(form.id) > 1
      ? { ...form, id: `${form.id}, ${form.size.length.text}` }
      : form,
  )
}

/** A material and the forms it is bought in. */
export function materialAt(context: Context, id: string, spot: Spot<MaterialSource>): Material {
  return {
    id,
    at: spot.keyAt,
    density: quantityAt(context, 'density', field(spot, 'density'), 'density', 'above 0'),
    like: likeAt(context, id, field(spot, 'like')),
    kerf: quantityAt(context, 'kerf', field(spot, 'kerf'), 'length') ?? usualKerf,
    grip: quantityAt(context, 'grip', field(spot, 'grip'), 'length') ?? noGrip,
    forms: toldApart(listed(field(spot, 'forms')).flatMap((one) => formAt(context, id, one) ?? [])),
    cautions: listed(field(spot, 'caution')).map((one) => words(one) ?? ''),
  }
}

/** Whether a piece can be cut from a form: same bar size, or a plate of the same thickness that is large enough. */
function servesPiece(form: Size, piece: Size): boolean {
  if (form.shape === 'bar' && piece.shape === 'bar') return form.across.value.equals(piece.across.value)
  if (form.shape === 'plate' && piece.shape === 'plate')
    return form.thickness.value.equals(piece.thickness.value)
  return false
}

/** The piece a part is cut from, and the form of its material that serves it. */
export function stockAt(
  context: Context,
  part: string,
  material: Material | null,
  spot: Spot<StockSource>,
): Stock | null {
  const size = oneSize(context, `the stock of \`${part}\``, spot as Spot<SizeKeys>, stockShapes)
  const offers = offersAt(context, part, field(spot, 'offers'))
  const kerf = quantityAt(context, 'kerf', field(spot, 'kerf'), 'length') ?? material?.kerf ?? usualKerf
  if (!size) return null
  const form = offers.length > 0 ? undefined : material?.forms.find((one) => servesPiece(one.size, size))
  if (!form && offers.length === 0 && material && !context.incomplete.has(material.id)) {
    const forms = material.forms.map((one) => one.id)
    context.report(buy.noForm, spot.at, { part, material: material.id, wants: saySize(size), forms })
  }
  const facing = quantityAt(context, 'facing', field(spot, 'facing'), 'length')
  return { at: spot.at, size, kerf, facing, form: form?.id ?? null, offers }
}
