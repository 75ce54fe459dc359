import { nearNames } from '../base/near-names.ts'
import { shp } from '../diagnostics/catalogue/shp.ts'
import type { Report } from '../diagnostics/message.ts'
import type { ShapeError } from './generated/validate-project.js'
import { factOf, type ShapePlace } from './shape-place.ts'
import { boundText, foundText, wantedText, whereText } from './shape-words.ts'

/** One mismatch together with what stands there. */
export interface Mismatch {
  readonly error: ShapeError
  readonly place: ShapePlace
  readonly report: Report
}

/** Says one mismatch between file and schema in our own words, at the smallest honest place. */
export function tellMismatch(mismatch: Mismatch): void {
  const empty = mismatch.place.value === null
  const tell = empty ? tellNothing : (tellers[mismatch.error.keyword] ?? tellOther)
  tell(mismatch)
}

const tellers: Readonly<Record<string, (mismatch: Mismatch) => void>> = {
  additionalProperties: tellUnknownKey,
  required: tellMissingKey,
  type: tellType,
  enum: tellEnum,
  discriminator: tellKind,
  minimum: tellBound,
  maximum: tellBound,
  minLength: tellLength,
  maxLength: tellLength,
  minItems: tellCount,
  maxItems: tellCount,
  minProperties: tellCount,
  pattern: tellForm,
}

function tellNothing({ place, report }: Mismatch): void {
  const key = place.inList ? '' : place.key
  report(shp.nothingBehind, place.inList ? place.at : place.keyAt, {
    key,
    example: place.fact.example ?? '…',
  })
}

/** What could stand at a place, as typed. */
function exampleOf({ fact }: ShapePlace): string {
  if (fact.example) return fact.example
  if (fact.kinds) return '{kind: bought}'
  return fact.keys?.[0] ? `{${fact.keys[0]}: …}` : '…'
}

const projectOnly = new Set(['device', 'limits', 'assembly', 'chains'])

function tellUnknownKey({ error, place, report }: Mismatch): void {
  const key = String(error.params.additionalProperty)
  const at = place.into(key).keyAt
  const elsewhere = operationElsewhere(place, key)
  if (elsewhere) report(shp.operationElsewhere, at, elsewhere)
  else if (place.def === '#/$defs/shop' && projectOnly.has(key)) report(shp.onlyInProject, at, { key })
  else {
    const known = place.fact.keys ?? []
    report(shp.unknownKey, at, { key, where: whereText(place), near: nearNames(key, known), known })
  }
}

/** Known operations in the wrong list: machine work in the route, a setup among the operations of another. */
function operationElsewhere(
  place: ShapePlace,
  key: string,
): { key: string; belongs: string; example: string } | null {
  if (place.def === '#/$defs/routeItem' && isKey('#/$defs/operation', key))
    return {
      key,
      belongs: 'under `ops` beside a `setup`',
      example: `- {setup: {machine: …, hold: …}, ops: [{${key}: {…}}]}`,
    }
  if (place.def === '#/$defs/operation' && isKey('#/$defs/routeItem', key))
    return { key, belongs: 'in the route itself, beside other setups', example: `- ${key}: {…}` }
  return null
}

const isKey = (def: string, key: string): boolean => (factOf(def).keys ?? []).includes(key)

function tellMissingKey({ error, place, report }: Mismatch): void {
  const key = String(error.params.missingProperty)
  const example = factOf(`${place.def}/properties/${key}`).example ?? factOf(place.def).example ?? '…'
  report(shp.missingKey, place.keyAt, {
    key,
    where: whereText(place),
    example: key === 'kind' ? 'machined' : example,
  })
}

function tellType({ error, place, report }: Mismatch): void {
  const { key, text, value, at } = place
  const wanted = [error.params.type].flat().map(String)
  const example = exampleOf(place)
  if (wanted.includes('boolean')) report(shp.notYesOrNo, at, { key, text: text })
  else if (wanted.includes('string') && typeof value === 'number')
    report(shp.numberForText, at, { key, text })
  else if (wanted.includes('string') && typeof value === 'boolean')
    report(shp.truthForText, at, { key, text })
  else if (wanted.every((type) => type === 'integer' || type === 'number') && typeof value === 'string')
    report(shp.textForNumber, at, { key, text: text, example })
  else if (wanted.includes('integer') && typeof value === 'number')
    report(shp.outOfBounds, at, { key, text, bound: 'a whole number', example })
  else report(shp.wrongKindOfValue, at, { key, wanted: wantedText(wanted), found: foundText(value), example })
}

function tellEnum({ error, place, report }: Mismatch): void {
  const known = (error.params.allowedValues as readonly unknown[]).map(String)
  const { key, at, text } = place
  if (typeof place.value !== 'string') return
  report(shp.notOneOf, at, { key, text: text, near: nearNames(text, known), known })
}

function tellKind({ place, report }: Mismatch): void {
  const kind = (place.value as Record<string, unknown>).kind
  const known = Object.keys(place.fact.kinds ?? {})
  const spot = place.into('kind')
  if (kind === null) report(shp.nothingBehind, spot.keyAt, { key: 'kind', example: 'machined' })
  else if (typeof kind === 'string') {
    const near = nearNames(kind, known)
    report(shp.unknownKind, spot.at, { text: kind, near, known })
  } else
    report(shp.wrongKindOfValue, spot.at, {
      key: 'kind',
      wanted: 'a text',
      found: foundText(kind),
      example: 'machined',
    })
}

function tellBound({ error, place, report }: Mismatch): void {
  const { key, text, at } = place
  report(shp.outOfBounds, at, { key, text, bound: boundText(error), example: exampleOf(place) })
}

function tellLength({ error, place, report }: Mismatch): void {
  const limit = Number(error.params.limit)
  const name = nameOf(error)
  const key = name === null ? place.key : ''
  const at = name === null ? place.at : place.into(name).keyAt
  report(shp.wrongLength, at, { key, length: [...(name ?? place.text)].length, limit })
}

/** The name that is at fault where an error is about the keys of a map. */
const nameOf = (error: ShapeError): string | null =>
  'propertyName' in error && typeof error.propertyName === 'string' ? error.propertyName : null

function tellCount({ error, place, report }: Mismatch): void {
  const { key, value, at } = place
  const count = Array.isArray(value) ? value.length : Object.keys(value as object).length
  report(shp.wrongCount, at, { key, count, limit: Number(error.params.limit) })
}

function tellForm({ place, report }: Mismatch): void {
  const { key, text, at } = place
  report(shp.wrongForm, at, { key, text, example: exampleOf(place) })
}

/** What the tables above do not know: said by the value wanted, so that nothing passes in silence. */
function tellOther({ place, report }: Mismatch): void {
  const wanted = wantedText(place.fact.type ?? [])
  const { key, value, at } = place
  report(shp.wrongKindOfValue, at, { key, wanted, found: foundText(value), example: exampleOf(place) })
}
