import type { Quantity } from '../base/quantity.ts'
import { isFault } from '../base/quantity-fault.ts'
import { readSharing } from '../base/three-point.ts'
import { prcCutting } from '../diagnostics/catalogue/prc-cutting.ts'
import type { Report } from '../diagnostics/message.ts'
import type { Operation, Part, Size } from '../model/project.ts'
import type { ModelCheck } from './check.ts'

/** Holes that go through run on by this in mm, and by a third of the diameter for the point. Source: common practice, no source. */
const throughMm = 2
const pointRatio = 1 / 3

/** Which key of an operation says how far it goes along the work. */
const ways: Readonly<Record<string, string>> = {
  turn: 'length',
  bore: 'depth',
  drill: 'depth',
  ream: 'depth',
  tap: 'depth',
  'thread mill': 'depth',
  contour: 'height',
}

/** PRC31: an operation that goes farther, or takes off more, than the stock has. PRC36: a pocket larger than the stock. */
export const stockTooShort: ModelCheck = (project, report) => {
  for (const part of project.parts.values()) {
    for (const { operation, onLathe } of operationsOf(part)) {
      const size = part.way.kind === 'machined' ? part.way.stock?.size : undefined
      const past = size && (alongPast(operation, size, onLathe) ?? volumePast(operation, size))
      if (size) pocketPast(operation, part.id, size, report)
      if (past) report(prcCutting.pastStock, operation.at, { op: operation.process, part: part.id, ...past })
    }
  }
}

/** A pocket of which no side order fits into the stock. */
function pocketPast({ facts, process, at }: Operation, part: string, size: Size, report: Report): void {
  const pocket = facts.get('pocket')
  if (pocket === undefined || (size.shape !== 'plate' && size.shape !== 'block')) return
  const read = readSharing(pocket.split(/\s+[x×]\s+/), 'length')
  if (isFault(read)) return
  const sides = [size.length, size.width, size.thickness]
  const sorted = (all: readonly Quantity[]): number[] =>
    all.map((one) => one.value.valueOf()).sort((a, b) => b - a)
  const [asked, has] = [sorted(read), sorted(sides)]
  if (asked.every((side, k) => side <= (has[k] ?? 0))) return
  const stock = sides.map(({ text }) => text).join(' x ')
  report(prcCutting.pocketPastStock, at, { op: process, part, pocket, stock })
}

interface Standing {
  readonly operation: Operation
  /** Whether the work turns, so that a hole lies along the bar. */
  readonly onLathe: boolean
}

function operationsOf({ way }: Part): readonly Standing[] {
  if (way.kind !== 'machined') return []
  return way.route.flatMap((step) => {
    if (step.kind !== 'setup') return []
    const onLathe = step.operations.some(({ process }) => process === 'turn' || process === 'part off')
    return step.operations.map((operation) => ({ operation, onLathe }))
  })
}

interface Past {
  readonly needs: number
  readonly has: number
  readonly unit: 'mm' | 'cm3'
}

function alongPast({ process, numbers }: Operation, size: Size, onLathe: boolean): Past | null {
  const key = ways[process]
  const needs = key === undefined ? undefined : numbers.get(key)?.value.valueOf()
  const has = longest(size, onLathe)
  if (needs === undefined || has === null) return null
  const point = process === 'drill' ? pointRatio * (numbers.get('diameter')?.value.valueOf() ?? 0) : 0
  return needs > has + throughMm + point ? { needs, has, unit: 'mm' } : null
}

function longest(size: Size, onLathe: boolean): number | null {
  if (size.shape === 'bar') {
    const [across, length] = [size.across.value.valueOf(), size.length.value.valueOf()]
    return onLathe ? length : Math.max(across, length)
  }
  if (size.shape !== 'plate' && size.shape !== 'block') return null
  return Math.max(...[size.length, size.width, size.thickness].map((one) => one.value.valueOf()))
}

function volumePast({ numbers }: Operation, size: Size): Past | null {
  const needs = numbers.get('volume')?.value.valueOf()
  const has = volumeOf(size)
  if (needs === undefined || has === null || needs <= has) return null
  return { needs: needs / 1000, has: has / 1000, unit: 'cm3' }
}

function volumeOf(size: Size): number | null {
  // A bar may be square: the square about it is the most it can hold.
  if (size.shape === 'bar') return size.across.value.valueOf() ** 2 * size.length.value.valueOf()
  if (size.shape !== 'plate' && size.shape !== 'block') return null
  return size.length.value.mul(size.width.value).mul(size.thickness.value).valueOf()
}
