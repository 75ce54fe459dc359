import { defineProcess } from './process.ts'

/** Facing a surface flat. Source of the defaults: common practice, no source. */
export const face = defineProcess({
  key: 'face',
  title: 'Face',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
})
