import { saw as cutting } from '../trade/cutting/saw.ts'
import { type CutFacts, defineProcess } from './process.ts'

/** The section of the stock that a saw goes through: of a bar the circle, of a plate or block its smaller end. */
function sectionOf({ bar, block }: CutFacts): number | null {
  if (bar) return (Math.PI / 4) * bar.acrossMm ** 2
  return block ? block[1] * block[2] : null
}

/** Sawing stock to length. Source of the defaults: common practice, no source. */
export const saw = defineProcess({
  key: 'saw',
  title: 'Saw',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['sawing'],
  cutting: (facts, { cutter, material, machine }) => {
    const rate = facts.number('rate')
    return cutting(
      { sectionMm2: facts.number('section') ?? sectionOf(facts), rateMm2PerMin: rate && 60 * rate },
      cutter,
      material,
      machine,
    )
  },
})
