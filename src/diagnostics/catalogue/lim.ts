import { nameList } from '../../base/near-names.ts'
import { message } from '../message.ts'

/** LIM: limits the person set. */
export const lim = {
  wantedMissed: message<{ finish: string; wanted: string; days: number; drivers: readonly string[] }>({
    code: 'LIM01',
    level: 'warning',
    says: ({ finish, wanted, days, drivers }) =>
      `it works on ${finish}, ${days} ${days === 1 ? 'day' : 'days'} after ${wanted}; the date is set by ${drivers.join(', then ')}`,
    mend: () =>
      'see what sets the date in the workbook: order earlier, add hours, or shorten what is named here',
    why: 'The wanted date is yours; the plan says by how much it is missed and what drives it.',
  }),
  cashExceeded: message<{
    cash: string
    limit: string
    over: string
    largest: readonly string[]
    incomplete: boolean
  }>({
    code: 'LIM02',
    level: 'warning',
    says: ({ cash, limit, over, largest, incomplete }) =>
      `it costs ${cash}${incomplete ? ' or more' : ''} in cash, ${over} over ${limit}; most of it goes to ${largest.join(', ')}`,
    mend: () => 'raise `limits: cash`, or change what is named here',
    why: 'Cash is what leaves the wallet: whole packs, minimum orders, freight, duty and tax.',
  }),
  massExceeded: message<{ mass: string; limit: string; unknown: readonly string[] }>({
    code: 'LIM03',
    level: 'warning',
    says: ({ mass, limit, unknown }) =>
      `one device weighs ${mass}, over ${limit}${unknown.length > 0 ? `, and that is without ${nameList(unknown.slice(0, 3), 'and')}${unknown.length > 3 ? ' and others' : ''}, which ${unknown.length === 1 ? 'has' : 'have'} no mass` : ''}`,
    mend: () => 'lighten the parts, or raise `limits: mass`',
    why: 'Masses of parts times their number in one device.',
  }),
  tooManyTasks: message<{ tasks: number; limit: number; about: string; most: number }>({
    code: 'LIM04',
    level: 'error',
    says: ({ tasks, limit, about, most }) =>
      `this comes to about ${tasks} tasks, ${most} of them for \`${about}\`; at most ${limit} are planned`,
    mend: () => 'check `qty`, `spares` and `lot`; plan one batch at a time',
    why: 'Plans are for one-off instruments and small batches. Ten thousands of tasks are more evenings than anybody has.',
  }),
} as const
