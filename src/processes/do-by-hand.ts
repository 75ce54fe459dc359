import { defineProcess } from './process.ts'

/** Any other hand work with a stated time. Source of the defaults: common practice, no source. */
export const doByHand = defineProcess({
  key: 'do',
  title: 'Do',
  place: 'bench',
  attention: 'hands',
  pausable: true,
  each: true,
  cautions: [],
})
