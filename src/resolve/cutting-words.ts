import type { CuttingFault } from '../trade/cutting/types.ts'

/** Endings of the names of figures, longest first, with the unit a person knows them by. */
const units: readonly (readonly [ending: string, unit: string])[] = [
  ['Mm2PerMin', ' mm2/min'],
  ['MmPerMin', ' mm/min'],
  ['MmPerRev', ' mm/rev'],
  ['MPerMin', ' m/min'],
  ['Mm3', ' mm3'],
  ['Mm2', ' mm2'],
  ['Mm', ' mm'],
  ['Rpm', ' rpm'],
  ['W', ' W'],
  ['Nm', ' N m'],
  ['Deg', ' deg'],
  ['Seconds', ' s'],
]

/** Names of figures that a person would not know by the words in them. */
const named: Readonly<Record<string, string>> = {
  pitchFrom: 'pitch',
  pitchTo: 'pitch',
  fromDiameter: 'diameter before',
  toDiameter: 'diameter after',
  innerDiameter: 'bore',
  majorDiameter: 'diameter of the thread',
  minorDiameter: 'core of the thread',
  least: 'slowest turning of the spindle',
  most: 'fastest turning of the spindle',
  mostFeed: 'fastest feed',
  layer: 'depth of a layer',
}

/** A figure that no bench has, in words, with the bounds in its unit. */
export function sayOutside({ what, least, most }: Extract<CuttingFault, { fault: 'out of domain' }>) {
  const [ending, unit] =
    what === 'rpm' ? ['', ' rpm'] : (units.find(([each]) => what.endsWith(each)) ?? ['', ''])
  const name = what === 'rpm' ? 'speed' : what.slice(0, what.length - ending.length)
  return {
    what: named[name] ?? name.replace(/([A-Z])/g, ' $1').toLowerCase(),
    least: `${least}${unit}`,
    most: `${most}${unit}`,
  }
}

/** What a person types to give a figure that is missing. */
export const asTyped: Readonly<Record<string, string>> = {
  'cutter diameter': '`diameter` of the cutter',
  flutes: '`flutes` of the cutter',
  tool: '`tool` of the cutter',
  'material group': '`like` of the material',
  'cutting speed': '`speed`',
  'chip load': '`feed`',
  feed: '`feed`',
  depth: '`depth`',
  'depth of a layer': '`depth`',
  volume: '`volume`',
  area: '`area`',
  length: '`length`',
  width: '`width`',
  'step-over': '`step`',
  'step-over (a ridge gives it for a ball alone)': '`step` (`scallop` gives it for a ball alone)',
  'stock to take off': '`stock`',
  diameter: '`diameter`',
  'diameter before': '`from`',
  'diameter after': '`diameter`',
  passes: '`passes`',
  pitch: '`thread`',
  'thread diameter': '`thread`',
  'major diameter': '`thread`',
  'minor diameter': '`thread`',
  'length of thread': '`depth`',
  section: '`section`',
  'sawing rate': '`rate`',
}
