import { drill as cutting } from '../trade/cutting/drill.ts'
import { defineProcess } from './process.ts'

/** Drilling holes. Source of the defaults: common practice, no source. */
export const drill = defineProcess({
  key: 'drill',
  title: 'Drill',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
  cutting: ({ stated, number, count }, { cutter, material, machine }) =>
    cutting(
      {
        ...stated,
        diameterMm: number('diameter'),
        depthMm: number('depth'),
        holes: count('holes'),
        peckMm: number('peck'),
      },
      cutter,
      material,
      machine,
    ),
})
