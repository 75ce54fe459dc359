import type { Thread } from './thread.ts'

/**
 * The usual spelling of a thread, without depth: `M14x1-6H`, `M16xPh3P1.5-LH`, `#4-40 UNC-2A`.
 * Source: designations of ISO 965-1 and ASME B1.1, from memory.
 */
export function spellThread(thread: Omit<Thread, 'text'>): string {
  const tail = [thread.class?.text, thread.engagement, thread.hand === 'left' ? 'LH' : null]
  const head = thread.system === 'metric' ? metricHead(thread) : unifiedHead(thread)
  return [head, ...tail.filter((part) => part !== null && part !== undefined)].join('-')
}

function metricHead({ size, pitchMm, leadMm, starts, coarseByDefault }: Omit<Thread, 'text'>): string {
  if (starts > 1) return `${size}xPh${leadMm}P${pitchMm}`
  return coarseByDefault ? size : `${size}x${pitchMm}`
}

function unifiedHead({ size, threadsPerInch, series }: Omit<Thread, 'text'>): string {
  return `${size}-${threadsPerInch}${series === null ? '' : ` ${series}`}`
}
