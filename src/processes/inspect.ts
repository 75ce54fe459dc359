import { defineProcess } from './process.ts'

/** Measuring features and writing them down. Source of the defaults: common practice, no source. */
export const inspect = defineProcess({
  key: 'inspect',
  title: 'Inspect',
  place: 'bench',
  attention: 'hands',
  pausable: true,
  each: true,
  minutesPerFeature: 5,
  cautions: [],
})
