import { defineProcess } from './process.ts'

/** Drilling holes. Source of the defaults: common practice, no source. */
export const drill = defineProcess({
  key: 'drill',
  title: 'Drill',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
})
