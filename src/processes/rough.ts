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
})
