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
})
