import { adjusterCovered } from './adjuster-covered.ts'
import { assemblyBodies } from './assembly-bodies.ts'
import { assemblyNoOrder } from './assembly-no-order.ts'
import { assemblyOpenings } from './assembly-openings.ts'
import { assemblyShutsNothingOut } from './assembly-shuts-nothing-out.ts'
import type { ModelCheck, NetworkCheck, ResultCheck } from './check.ts'
import { circularWaits } from './circular-waits.ts'
import { cureNotWaited } from './cure-not-waited.ts'
import { differsFromMeshes } from './differs-from-meshes.ts'
import { dimensionChains } from './dimension-chains.ts'
import { eatenSessions } from './eaten-sessions.ts'
import { fallsOut } from './falls-out.ts'
import { fastenersOff } from './fasteners-off.ts'
import { featuresUnread } from './features-unread.ts'
import { heavyPressLate } from './heavy-press-late.ts'
import { heldFeatures } from './held-features.ts'
import { hoursNeverMeet } from './hours-never-meet.ts'
import { joinedFeatures } from './joined-features.ts'
import { cashExceeded, massExceeded, wantedMissed } from './limits.ts'
import { materialToGet, nothingToGetItFrom } from './nothing-to-get-it-from.ts'
import { ownStock } from './own-stock.ts'
import { partInItself } from './part-in-itself.ts'
import { processTolerance } from './process-tolerance.ts'
import { stockTooShort } from './stock-too-short.ts'
import { testTooLate } from './test-too-late.ts'
import { threadsCut } from './threads-cut.ts'
import { tooManyTasks } from './too-many-tasks.ts'
import { travelTooShort } from './travel-too-short.ts'
import { windows } from './windows.ts'
import { wornBehindHarm } from './worn-behind-harm.ts'

export { noSchedule } from './no-schedule.ts'

/** Checks of the resolved project. */
export const modelChecks: readonly ModelCheck[] = [
  partInItself,
  nothingToGetItFrom,
  eatenSessions,
  assemblyBodies,
  assemblyOpenings,
  featuresUnread,
  fastenersOff,
  joinedFeatures,
  heldFeatures,
  processTolerance,
  dimensionChains,
  travelTooShort,
  stockTooShort,
  threadsCut,
  tooManyTasks,
]

/** ASM: what the order of each assembly shows. */
const assemblyOrders: NetworkCheck = ({ orders }, report) => {
  for (const order of orders.values()) {
    assemblyNoOrder(order, report)
    assemblyShutsNothingOut(order, report)
  }
}

/** Checks of the work laid out, before it is placed in time. */
export const networkChecks: readonly NetworkCheck[] = [
  assemblyOrders,
  adjusterCovered,
  testTooLate,
  heavyPressLate,
  cureNotWaited,
  fallsOut,
  wornBehindHarm,
  differsFromMeshes,
  circularWaits,
  materialToGet,
  ownStock,
  hoursNeverMeet,
  windows,
]

/** Checks of a finished plan. */
export const resultChecks: readonly ResultCheck[] = [wantedMissed, cashExceeded, massExceeded]
