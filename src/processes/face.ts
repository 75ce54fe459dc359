import { face as cutting } from '../trade/cutting/face.ts'
import { partOff } from '../trade/cutting/part-off.ts'
import type { Cut, CuttingFault } from '../trade/cutting/types.ts'
import { type CutBench, type CutFacts, defineProcess } from './process.ts'

/** Facing under a milling cutter in parallel passes. */
function milled(facts: CutFacts, { cutter, material, machine }: CutBench): Cut | CuttingFault {
  const { stated, number, size, block } = facts
  const [lengthMm, widthMm] = size('size') ?? block ?? []
  return cutting(
    {
      ...stated,
      lengthMm: lengthMm ?? null,
      widthMm: widthMm ?? null,
      stockMm: number('stock'),
      depthMm: number('depth'),
      stepMm: number('step'),
    },
    cutter,
    material,
    machine,
  )
}

/** Facing on the lathe: the edge goes from outside to the middle, as in parting off, and takes what is to come off. */
function turned(facts: CutFacts, { cutter, material, machine }: CutBench): Cut | CuttingFault {
  const { stated, number, bar } = facts
  return partOff(
    { ...stated, diameterMm: bar?.acrossMm ?? null, bladeMm: number('stock') },
    { ...cutter, reachMm: null },
    material,
    machine,
  )
}

/** Facing a surface flat. Source of the defaults: common practice, no source. */
export const face = defineProcess({
  key: 'face',
  title: 'Face',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
  cutting: (facts, bench) => (bench.cutter.diameterMm ? milled(facts, bench) : turned(facts, bench)),
})
