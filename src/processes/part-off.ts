import { defineProcess } from './process.ts'

/** Parting from the bar in the lathe. Source of the defaults: common practice, no source. */
export const partOff = defineProcess({
  key: 'part off',
  title: 'Part off',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
})
