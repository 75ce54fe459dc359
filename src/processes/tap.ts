import { tap as cutting } from '../trade/cutting/tap.ts'
import { defineProcess } from './process.ts'

/** Cutting inside threads with a tap. Source of the defaults: common practice, no source. */
export const tap = defineProcess({
  key: 'tap',
  title: 'Tap',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
  cutting: ({ stated, number, count, thread }, { cutter, material, machine }) =>
    cutting(
      {
        ...stated,
        diameterMm: thread?.majorMm ?? null,
        pitchMm: thread?.pitchMm ?? null,
        depthMm: number('depth') ?? thread?.depthMm ?? null,
        holes: count('holes'),
      },
      cutter,
      material,
      machine,
    ),
})
