import type { Results } from '../model/results.ts'
import type { TrialFit } from '../model/trial-fit.ts'
import type { Block, Row } from './cells.ts'
import { line, text } from './make-cells.ts'
import { sayTrial, sayTrialSteps, sayTrialTells } from './say-trial.ts'

/** Trial fits worth while, over `wide` columns; no block where there is none. */
export function trialBlocks({ trialFits, project }: Results, wide: number): readonly Block[] {
  if (trialFits.length === 0) return []
  const says =
    'What fits or does not is cheaper to know now. Nothing here is for good: leave adhesive and thread locker out.'
  return [
    {
      kind: 'rows',
      id: 'trial fits',
      rows: [
        line('Trial fits', wide, 'heading'),
        line(says, wide, 'note'),
        ...trialFits.flatMap((fit) => trialRows(fit, project.device.name, wide)),
      ],
    },
  ]
}

function trialRows(fit: TrialFit, device: string, wide: number): readonly Row[] {
  const chains = fit.chains.length > 0 ? [line(`Measure: ${fit.chains.join(', ')}`, wide)] : []
  return [
    { ...line(sayTrial(fit), wide, 'strong'), keep: true },
    ...fit.legs.map(
      (leg): Row => ({
        ruled: true,
        cells: [
          text(`${leg.assembly ?? device}: ${sayTrialSteps(leg)}`, { span: 2 }),
          text(sayTrialTells(leg), { span: wide - 2 }),
        ],
      }),
    ),
    ...chains,
  ]
}
