import { defineProcess } from './process.ts'

/** Milling a thread; finished in one go. Source of the defaults: common practice, no source. */
export const threadMill = defineProcess({
  key: 'thread mill',
  title: 'Thread mill',
  place: 'machine',
  attention: 'nearby',
  pausable: false,
  each: true,
  cautions: ['cutting'],
})
