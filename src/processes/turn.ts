import { turn as cutting } from '../trade/cutting/turn.ts'
import { turnThread } from '../trade/cutting/turn-thread.ts'
import { defineProcess } from './process.ts'
import { withSetting } from './with-setting.ts'

/** Turning a diameter. Source of the defaults: common practice, no source. */
export const turn = defineProcess({
  key: 'turn',
  title: 'Turn',
  place: 'machine',
  attention: 'nearby',
  pausable: true,
  each: true,
  cautions: ['cutting'],
  cutting: (facts, { cutter, material, machine }) => {
    const { stated, number, count, bar, thread, featureMm } = facts
    if (thread)
      return turnThread(
        {
          ...stated,
          diameterMm: thread.majorMm,
          pitchMm: thread.pitchMm,
          lengthMm: number('length') ?? thread.depthMm,
          passes: count('passes'),
        },
        cutter,
        material,
        machine,
      )
    return withSetting(
      cutting(
        {
          ...stated,
          fromDiameterMm: number('from') ?? bar?.acrossMm ?? null,
          toDiameterMm: number('diameter') ?? featureMm,
          lengthMm: number('length'),
          depthMm: number('depth'),
        },
        cutter,
        material,
        machine,
      ),
      number('set'),
      10,
    )
  },
})
