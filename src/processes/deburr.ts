import { defineProcess } from './process.ts'

/** Breaking edges by hand. Source of the defaults: common practice, no source. */
export const deburr = defineProcess({
  key: 'deburr',
  title: 'Deburr',
  place: 'bench',
  attention: 'hands',
  pausable: true,
  each: true,
  cautions: ['edges'],
})
