import { wayWords } from '../diagnostics/catalogue/way-words.ts'
import type { ToldWay, WayOfStep, WaysOfSteps } from '../model/from-meshes.ts'
import type { ReportWayOfStep } from './report-model.ts'

/** Sides of the device as one stands before it, by direction: they stay what they are when it is turned over. Common practice, no source. */
const sides = ['right', 'left', 'rear', 'front', 'top', 'bottom'] as const

function saySide(way: ToldWay): string {
  return typeof way === 'number' ? `the ${sides[way]} (${wayWords(way)})` : wayWords(way)
}

function saySides(all: readonly ToldWay[], word: 'from' | 'out at'): string {
  return `${word} ${all.map(saySide).join(' and ')}`
}

/** Where a step comes from: `from the top (+z), fastened from the bottom (-z), by the meshes`; `null`: nothing to say. */
export function sayWayIn(way: WayOfStep | null | undefined): string | null {
  return way ? sayWay(way, 'from', 'fastened') : null
}

/** Where what a step put goes out: `out at the rear (+y), by the meshes`; `null`: nothing to say. */
export function sayWayOut(way: WayOfStep | null | undefined): string | null {
  return way ? sayWay(way, 'out at', 'its fasteners') : null
}

function sayWay({ from, fastenedFrom }: WayOfStep, word: 'from' | 'out at', fastened: string): string {
  return [
    ...(from.length > 0 ? [saySides(from, word)] : []),
    ...(fastenedFrom.length > 0 ? [`${fastened} ${saySides(fastenedFrom, word)}`] : []),
    'by the meshes',
  ].join(', ')
}

/** The same in facts. */
export function reportWayIn(
  ways: WaysOfSteps,
  assembly: string | null,
  step: string,
): ReportWayOfStep | null {
  const way = ways.get(assembly ?? '')?.get(step)
  if (!way) return null
  return { from: way.from.map(wayWords), fastenedFrom: way.fastenedFrom.map(wayWords), says: sayWayIn(way)! }
}
