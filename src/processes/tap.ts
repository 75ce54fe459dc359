import { defineProcess } from './process.ts'

/** Cutting inside threads with a tap. Source of the defaults: common practice, no source. */
export const tap = defineProcess({
  key: 'tap',
  title: 'Tap',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
})
