import { defineProcess } from './process.ts'

/** Polishing by hand. Source of the defaults: common practice, no source. */
export const polish = defineProcess({
  key: 'polish',
  title: 'Polish',
  place: 'bench',
  attention: 'hands',
  pausable: true,
  each: true,
  cautions: ['abrasives'],
})
