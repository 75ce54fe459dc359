import type { ModelCheck, NetworkCheck, ResultCheck } from './check.ts'
import { circularWaits } from './circular-waits.ts'
import { eatenSessions } from './eaten-sessions.ts'
import { cashExceeded, massExceeded, wantedMissed } from './limits.ts'
import { materialToGet, nothingToGetItFrom } from './nothing-to-get-it-from.ts'
import { partInItself } from './part-in-itself.ts'
import { windows } from './windows.ts'

export { noSchedule } from './no-schedule.ts'

/** Checks of the resolved project. */
export const modelChecks: readonly ModelCheck[] = [partInItself, nothingToGetItFrom, eatenSessions]

/** Checks of the work laid out, before it is placed in time. */
export const networkChecks: readonly NetworkCheck[] = [circularWaits, materialToGet, windows]

/** Checks of a finished plan. */
export const resultChecks: readonly ResultCheck[] = [wantedMissed, cashExceeded, massExceeded]
