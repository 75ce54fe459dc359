import { message } from '../message.ts'

/** PRC: how work is held. */
export const prcSetup = {
  heldOnFinished: message<{ part: string; feature: string; process: string; hold: string }>({
    code: 'PRC30',
    level: 'warning',
    says: (p) =>
      `\`${p.part}\` is held in \`${p.hold}\` on \`${p.feature}\`, which \`${p.process}\` has made in an earlier setup`,
    mend: () => 'hold it in soft jaws, a collet or a fixture, or on another feature',
    why: 'Hard jaws print their mark into a finished surface, and bend what is thin.',
  }),
} as const
