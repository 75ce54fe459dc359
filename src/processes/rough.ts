import { rough as cutting } from '../trade/cutting/rough.ts'
import { defineProcess } from './process.ts'

/** Removing most of the material. Source of the defaults: common practice, no source. */
export const rough = defineProcess({
  key: 'rough',
  title: 'Rough',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
  cutting: ({ stated, number, size, removedMm3 }, { cutter, material, machine }) => {
    const pocket = size('pocket')
    return cutting(
      {
        ...stated,
        volumeMm3: number('volume') ?? (pocket ? null : removedMm3),
        pocket: pocket && { lengthMm: pocket[0]!, widthMm: pocket[1]!, depthMm: pocket[2]! },
        depthMm: number('depth'),
        stepMm: number('step'),
        cornerMm: number('corner'),
      },
      cutter,
      material,
      machine,
    )
  },
})
