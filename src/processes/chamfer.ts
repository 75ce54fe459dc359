import { chamfer as cutting } from '../trade/cutting/chamfer.ts'
import { defineProcess } from './process.ts'

/** Breaking an edge with a cutter. Source of the defaults: common practice, no source. */
export const chamfer = defineProcess({
  key: 'chamfer',
  title: 'Chamfer',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
  cutting: ({ stated, number, count }, { cutter, material, machine }) =>
    cutting(
      { ...stated, lengthMm: number('length'), widthMm: number('width'), passes: count('passes') },
      cutter,
      material,
      machine,
    ),
})
