import { fit } from '../diagnostics/catalogue/fit.ts'
import type { Report } from '../diagnostics/message.ts'
import { type FeatureOf, featuresOf } from '../model/features.ts'
import { sizeLimits } from '../trade/fits/size-limits.ts'
import type { ReadSize, SizeFault } from '../trade/fits/size-text.ts'
import { readFeature } from '../trade/joins/read-feature.ts'
import type { Thread, ThreadFault } from '../trade/threads/thread.ts'
import { threadSelection } from '../trade/threads/thread-selection.ts'
import type { ModelCheck } from './check.ts'

/**
 * FIT01, FIT02: features that are nearly a thread or a size. FIT03: more is said than a size. FIT04: no limits are
 * held here. FIT05: threads that no standard lists.
 */
export const featuresUnread: ModelCheck = (project, report) => {
  for (const part of project.parts.values()) {
    if (part.way.kind === 'assembly') continue
    for (const feature of featuresOf(project, part.id)) look(feature, report)
  }
}

function look(feature: FeatureOf, report: Report): void {
  const read = readFeature(feature)
  if (read.kind === 'thread') reportUnlisted(feature, read.thread, report)
  else if (read.kind === 'size') reportNoLimits(feature, read.size, report)
  else if (read.kind !== 'words') reportFault(feature, read, report)
}

const saidOf = ({ part, name, text }: FeatureOf) => ({ of: `${part}.${name}`, text })

function reportUnlisted(feature: FeatureOf, thread: Thread, report: Report): void {
  const { listed, list, toCheck, listedNear } = threadSelection(thread)
  if (!listed)
    report(fit.threadUnlisted, feature.at, { ...saidOf(feature), list, toCheck, listed: listedNear })
}

function reportNoLimits(feature: FeatureOf, size: ReadSize, report: Report): void {
  const limits = sizeLimits(size)
  if (!('fault' in limits) || limits.fault === 'no tolerance') return
  const [because, mend] =
    size.kind === 'fit'
      ? [
          'it names the classes of two parts',
          `write the class of this part alone, \`${size.nominalMm} ${size.hole.text}\` or \`${size.nominalMm} ${size.shaft.text}\``,
        ]
      : ['size or class is beyond the tables held here', 'write the limits, such as `150 +0.04/0 mm`']
  report(fit.noLimitsHere, feature.at, { ...saidOf(feature), because, mend })
}

const threadFaults: Readonly<Record<ThreadFault['fault'], string>> = {
  empty: 'says nothing',
  'not a thread': 'names no diameter and pitch',
  comma: 'is a decimal comma, where a point belongs',
  'no coarse pitch': 'has no pitch, and the standard has no coarse one for this diameter',
  pitch: 'gives no pitch that this diameter can have',
  lead: 'has a lead that is no whole number of pitches, or other starts than it says',
  class: 'is no tolerance class of this thread',
  'pair of classes': 'is the classes of two parts, and this is one of them',
  series: 'is not the series of this diameter and pitch',
  depth: 'is no depth',
  twice: 'is said a second time',
  'left over': 'is left over',
}

const sizeFaults: Readonly<Record<SizeFault['fault'], string>> = {
  empty: 'says nothing',
  'not a size': 'is no size',
  comma: 'is a decimal comma, where a point belongs',
  letter: 'has a letter that no tolerance class has',
  grade: 'has a grade that no tolerance class has',
  'same gender': 'is two holes or two shafts',
  'order of fit': 'has the shaft before the hole',
  'one deviation': 'gives one deviation and leaves the other open',
  'limits crossed': 'has its lower limit above the upper',
  'left over': 'is left over',
}

/** Positions of ISO 286-1 of which no table is held here. */
const otherLetters = /^(?:a|b|c|cd|ef|fg|j|t|u|v|x|y|z|za|zb|zc)\d+$/i

function reportFault(
  feature: FeatureOf,
  read: Extract<ReturnType<typeof readFeature>, { kind: 'thread fault' | 'size fault' }>,
  report: Report,
): void {
  const said = saidOf(feature)
  const { fault, text: part, near } = read.fault
  if (fault === 'left over') report(fit.saysMore, feature.at, { ...said, rest: part, near })
  else if (read.kind === 'thread fault')
    report(fit.threadUnread, feature.at, { ...said, part, because: threadFaults[read.fault.fault], near })
  else if (fault === 'letter' && otherLetters.test(part)) reportNoTable(feature, part, near, report)
  else report(fit.sizeUnread, feature.at, { ...said, part, because: sizeFaults[read.fault.fault], near })
}

function reportNoTable(feature: FeatureOf, part: string, near: readonly string[], report: Report): void {
  const instead = near.length > 0 ? `, or take ${near.map((one) => `\`${one}\``).join(' or ')}` : ''
  report(fit.noLimitsHere, feature.at, {
    ...saidOf(feature),
    because: `no table of \`${part}\` is held here`,
    mend: `write its limits in figures${instead}`,
  })
}
