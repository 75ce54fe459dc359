import { defineProcess } from './process.ts'

/** Turning a diameter. Source of the defaults: common practice, no source. */
export const turn = defineProcess({
  key: 'turn',
  title: 'Turn',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
})
