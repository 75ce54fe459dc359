import { defineProcess } from './process.ts'

/** Curing, drying or ageing: nobody needed, not interrupted. Source of the defaults: common practice, no source. */
export const cure = defineProcess({
  key: 'cure',
  title: 'Cure',
  place: 'bench',
  attention: 'none',
  pausable: false,
  each: false,
  cautions: [],
})
