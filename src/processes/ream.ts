import { ream as cutting } from '../trade/cutting/ream.ts'
import { defineProcess } from './process.ts'

/** Reaming holes to size. Source of the defaults: common practice, no source. */
export const ream = defineProcess({
  key: 'ream',
  title: 'Ream',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
  cutting: ({ stated, number, count, featureMm }, { cutter, material, machine }) =>
    cutting(
      {
        ...stated,
        diameterMm: number('diameter') ?? featureMm,
        depthMm: number('depth'),
        holes: count('holes'),
      },
      cutter,
      material,
      machine,
    ),
})
