import { partOff as cutting } from '../trade/cutting/part-off.ts'
import { defineProcess } from './process.ts'

/** Parting from the bar in the lathe. Source of the defaults: common practice, no source. */
export const partOff = defineProcess({
  key: 'part off',
  title: 'Part off',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
  cutting: ({ stated, number, bar }, { cutter, material, machine }) =>
    cutting(
      {
        ...stated,
        diameterMm: number('diameter') ?? bar?.acrossMm ?? null,
        innerDiameterMm: number('bore'),
      },
      cutter,
      material,
      machine,
    ),
})
