import { finish as cutting } from '../trade/cutting/finish.ts'
import { defineProcess } from './process.ts'

/** Finishing a surface in one go: a stop would leave a mark. Source of the defaults: common practice, no source. */
export const finish = defineProcess({
  key: 'finish',
  title: 'Finish',
  place: 'machine',
  attention: 'nearby',
  pausable: false,
  each: true,
  cautions: ['cutting'],
  cutting: ({ stated, number }, { cutter, material, machine }) =>
    cutting(
      {
        ...stated,
        areaMm2: number('area'),
        stepMm: number('step'),
        scallopMm: number('scallop'),
        stockMm: number('depth'),
      },
      cutter,
      material,
      machine,
    ),
})
