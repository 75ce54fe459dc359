import { defineProcess } from './process.ts'

/** Boring to size; finished in one go. Source of the defaults: common practice, no source. */
export const bore = defineProcess({
  key: 'bore',
  title: 'Bore',
  place: 'machine',
  attention: 'nearby',
  pausable: false,
  each: true,
  cautions: ['cutting'],
})
