import { defineProcess } from './process.ts'

/** Breaking an edge with a cutter. Source of the defaults: common practice, no source. */
export const chamfer = defineProcess({
  key: 'chamfer',
  title: 'Chamfer',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
})
