import { contour as cutting } from '../trade/cutting/contour.ts'
import { defineProcess } from './process.ts'

/** Following an outline. Source of the defaults: common practice, no source. */
export const contour = defineProcess({
  key: 'contour',
  title: 'Contour',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
  cutting: ({ stated, number, count }, { cutter, material, machine }) =>
    cutting(
      {
        ...stated,
        lengthMm: number('length'),
        depthMm: number('height') ?? number('depth'),
        layerMm: number('depth'),
        stepMm: number('step'),
        passes: count('passes'),
        cornerMm: number('corner'),
        wallMm: number('wall'),
      },
      cutter,
      material,
      machine,
    ),
})
