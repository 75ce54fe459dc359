import type { NoThreadLimits, ThreadLimits } from './limits-of-size.ts'
import { metricLimits } from './metric-limits.ts'
import type { Thread, ThreadGender } from './thread.ts'
import { usualMetricClass, usualUnifiedClass } from './thread-class.ts'
import { unifiedLimits } from './unified-limits.ts'

/**
 * Limits of size of a thread. Without a written class the usual one is taken: 6H and 6g (to 1.4 mm 5H and 6h), 2B
 * and 2A.
 * Needs: a class, or a gender.
 */
export function threadLimits(
  thread: Thread,
  gender: ThreadGender | null = null,
): ThreadLimits | NoThreadLimits {
  const side = thread.class?.gender ?? gender
  if (side === null) return { fault: 'gender unknown' }
  if (gender !== null && side !== gender) return { fault: 'gender differs' }
  const usual = thread.system === 'metric' ? usualMetricClass(side, thread.majorMm) : usualUnifiedClass(side)
  const chosen = thread.class ?? usual
  const limits = chosen.system === 'metric' ? metricLimits(thread, chosen) : unifiedLimits(thread, chosen)
  if (limits === null) return { fault: 'outside the tables' }
  return { gender: side, class: chosen, classFrom: thread.class ? 'written' : 'usual', ...limits }
}
