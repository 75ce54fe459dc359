import { defineProcess } from './process.ts'

/** Sawing stock to length. Source of the defaults: common practice, no source. */
export const saw = defineProcess({
  key: 'saw',
  title: 'Saw',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['sawing'],
})
