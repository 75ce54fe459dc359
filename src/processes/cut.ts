import { defineProcess } from './process.ts'

/** Any other machine run with a stated time. Source of the defaults: common practice, no source. */
export const cut = defineProcess({
  key: 'cut',
  title: 'Cut',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['machine'],
})
