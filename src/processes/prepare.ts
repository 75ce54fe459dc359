import { defineProcess } from './process.ts'

/** Drawing, toolpaths, setting out: hands, once for the lot. Source of the defaults: common practice, no source. */
export const prepare = defineProcess({
  key: 'prepare',
  title: 'Prepare',
  place: 'bench',
  attention: 'hands',
  pausable: true,
  each: false,
  cautions: [],
})
