import { threadMill as cutting } from '../trade/cutting/thread-mill.ts'
import { basicProfile } from '../trade/threads/basic-profile.ts'
import { defineProcess } from './process.ts'

/** Milling a thread; finished in one go. Source of the defaults: common practice, no source. */
export const threadMill = defineProcess({
  key: 'thread mill',
  title: 'Thread mill',
  place: 'machine',
  attention: 'nearby',
  pausable: false,
  each: true,
  cautions: ['cutting'],
  cutting: ({ stated, number, count, thread }, { cutter, material, machine }) => {
    const profile = thread && basicProfile(thread)
    return cutting(
      {
        ...stated,
        majorDiameterMm: thread?.majorMm ?? null,
        minorDiameterMm: profile?.minorDiameterMm ?? null,
        pitchMm: thread?.pitchMm ?? null,
        depthMm: number('depth') ?? thread?.depthMm ?? null,
        passes: count('passes'),
        isOutside: thread?.class?.gender === 'external',
      },
      cutter,
      material,
      machine,
    )
  },
})
