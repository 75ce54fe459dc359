import { bore as cutting } from '../trade/cutting/bore.ts'
import { defineProcess } from './process.ts'
import { withSetting } from './with-setting.ts'

/** Boring to size; finished in one go. Source of the defaults: common practice, no source. */
export const bore = defineProcess({
  key: 'bore',
  title: 'Bore',
  place: 'machine',
  attention: 'nearby',
  pausable: false,
  each: true,
  cautions: ['cutting'],
  cutting: ({ stated, number, count, featureMm }, { cutter, material, machine }) =>
    withSetting(
      cutting(
        {
          ...stated,
          fromDiameterMm: number('from'),
          diameterMm: number('diameter') ?? featureMm,
          depthMm: number('depth'),
          passes: count('passes'),
          layerMm: number('step'),
        },
        cutter,
        material,
        machine,
      ),
      number('set'),
      45,
    ),
})
