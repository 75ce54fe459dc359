import { defineProcess } from './process.ts'

/** Reaming holes to size. Source of the defaults: common practice, no source. */
export const ream = defineProcess({
  key: 'ream',
  title: 'Ream',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
})
