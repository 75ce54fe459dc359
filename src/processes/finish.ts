import { defineProcess } from './process.ts'

/** Finishing a surface in one go: a stop would leave a mark. Source of the defaults: common practice, no source. */
export const finish = defineProcess({
  key: 'finish',
  title: 'Finish',
  place: 'machine',
  attention: 'nearby',
  pausable: false,
  each: true,
  cautions: ['cutting'],
})
