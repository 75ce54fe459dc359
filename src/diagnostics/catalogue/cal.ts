import { nameList } from '../../base/near-names.ts'
import { message } from '../message.ts'

const hoursText = (minutes: number): string =>
  minutes % 60 === 0
    ? `${minutes / 60} h`
    : minutes < 60
      ? `${minutes} min`
      : `${Math.floor(minutes / 60)} h ${minutes % 60} min`

/** A span that runs over midnight as the two that are meant, or `null` where it is none. */
function pastMidnight(text: string): string | null {
  const [, open, close] = /^(\d\d:\d\d)-(\d\d:\d\d)$/.exec(text) ?? []
  if (open === undefined || close === undefined || close >= open || open >= '24:00') return null
  return close === '00:00'
    ? `write \`"${open}-24:00"\``
    : `write \`"${open}-24:00"\` on that day and \`"00:00-${close}"\` on the next`
}

/** CAL: hours and dates. */
export const cal = {
  nobodyHasHours: message<{ person: string }>({
    code: 'CAL01',
    level: 'error',
    says: ({ person }) => `\`${person}\` has no hours`,
    mend: ({ person }) => `add hours to \`${person}\`, such as \`hours: {mon-thu: "19:30-22:30"}\``,
    why: "Hands work happens in somebody's hours; without any, no date can be given.",
  }),
  machineWithoutUser: message<{ machine: string }>({
    code: 'CAL02',
    level: 'error',
    says: ({ machine }) => `nobody may use \`${machine}\``,
    mend: () => 'name somebody of this project under `users`, or leave `users` out',
    why: 'A machine that nobody may use can never be set up.',
  }),
  runTooLong: message<{
    what: string
    minutes: number
    machine: string
    longest: number
    print: boolean
  }>({
    code: 'CAL03',
    level: 'error',
    says: ({ what, minutes, machine, longest }) =>
      `${what} runs ${hoursText(minutes)} unattended, but \`${machine}\` is never open longer than ${hoursText(longest)}`,
    mend: ({ machine, print }) =>
      print
        ? `give \`${machine}\` longer hours, or split the print`
        : `give \`${machine}\` longer hours, split the run, or say \`attention: nearby\` if somebody stays with it`,
    why: 'A run that nobody attends cannot be stopped for the night and taken up again: it must fit one open window of its machine.',
  }),
  windowTooShort: message<{ what: string; minutes: number; longest: number; whose: string }>({
    code: 'CAL04',
    level: 'error',
    says: ({ what, minutes, longest, whose }) =>
      longest === 0
        ? `${what} can never be done: no hours of ${whose} are left open`
        : `${what} takes ${hoursText(minutes)} in one go, but ${whose} is never open longer than ${hoursText(longest)}`,
    mend: ({ longest }) =>
      longest === 0
        ? 'take days out of `off`, or give more hours'
        : 'say `pause: yes` if it may be interrupted, give a shorter `least:`, or lengthen the hours',
    why: 'Glue, potting and finishing passes must not be interrupted, so they need one unbroken window of person and machine together.',
  }),
  noSuchDay: message<{ key: string; text: string; perhaps: string | null }>({
    code: 'CAL05',
    level: 'error',
    says: ({ key, text, perhaps }) =>
      perhaps === null
        ? `\`${key}\` names a day that does not exist: \`${text}\``
        : `\`${key}\` names days that end before they begin: \`${text}\``,
    mend: ({ perhaps }) =>
      perhaps === null
        ? 'write a day of the calendar from 2000 on as YYYY-MM-DD, a range as two of them with `..` between'
        : `write \`${perhaps}\` if that is meant`,
    why: 'Dates are written the one way that cannot be misread: year, month, day.',
  }),
  hoursUnread: message<{ key: string; text: string }>({
    code: 'CAL06',
    level: 'error',
    says: ({ key, text }) => `the hours \`${key}: ${text}\` cannot be read`,
    mend: ({ text }) =>
      pastMidnight(text) ??
      'write weekdays such as `mon-fri`, `sat` or `daily` and spans such as `"19:30-22:30"`, each closing after it opens and on the same day',
    why: 'Hours are spans of clock time on weekdays, from 00:00 to 24:00; a span past midnight is two spans.',
  }),
  daysUnread: message<{ key: string; text: string }>({
    code: 'CAL07',
    level: 'error',
    says: ({ key, text }) => `\`${key}\` has weekdays that cannot be read: \`${text}\``,
    mend: () => 'write weekdays such as `mon-fri`, `mon,wed,fri` or `daily`',
    why: 'Weekdays are mon, tue, wed, thu, fri, sat, sun.',
  }),
  sessionEatenUp: message<{ person: string; lost: number; longest: number }>({
    code: 'CAL08',
    level: 'error',
    says: ({ person, lost, longest }) =>
      `setting up and cleaning up take ${hoursText(lost)} of every session, but \`${person}\` has none longer than ${hoursText(longest)}`,
    mend: () => 'shorten `setup` and `clean-up`, or lengthen the hours',
    why: 'Setting up and cleaning up come off both ends of every session; nothing is left to work in.',
  }),
  wantedBeforeStart: message<{ wanted: string; start: string }>({
    code: 'CAL09',
    level: 'error',
    says: ({ wanted, start }) => `it is wanted on ${wanted}, before it starts on ${start}`,
    mend: () => 'correct `start` or `wanted`',
    why: 'Nothing can be done before the start.',
  }),
  timeOfDayUnread: message<{ key: string; text: string }>({
    code: 'CAL10',
    level: 'error',
    says: ({ key, text }) => `\`${key}\` is not a time of day: \`${text}\``,
    mend: () => 'write it in quotes as HH:MM, such as `"12:00"`',
    why: 'Clock times run from 00:00 to 24:00.',
  }),
  nobodyEligible: message<{
    what: string
    people: number
    may: readonly string[]
    asked: readonly string[]
    machine: string | null
  }>({
    code: 'CAL11',
    level: 'error',
    says: ({ what, people, may, asked, machine }) =>
      may.length === 0 && machine !== null
        ? `${what} is for ${nameList(asked, 'or')}, who may not use \`${machine}\``
        : `${what} takes ${people} at once, but only ${may.length === 0 ? 'nobody' : nameList(may, 'and')} may do it`,
    mend: ({ may, asked, machine }) =>
      may.length === 0 && machine !== null
        ? `add ${nameList(asked, 'or')} to the \`users\` of \`${machine}\`, or name somebody who is among them`
        : 'name more people, or lower `people`',
    why: 'A step for two needs two people whose hours meet and who may use the machine.',
  }),
  toolNeverHere: message<{ tool: string; says: string }>({
    code: 'CAL13',
    level: 'error',
    says: ({ tool, says }) => `\`${tool}\` is used, but is never here: ${says}`,
    mend: () => 'correct the count or the days, or take the tool out of the work that uses it',
    why: 'A tool that is counted holds up every piece of work that names it until it is here.',
  }),
  hoursNeverMeet: message<{ what: string; who: readonly string[]; machine: string }>({
    code: 'CAL15',
    level: 'error',
    says: ({ what, who, machine }) =>
      `${what} can never be done: the hours of ${nameList(who, 'and')} and those of \`${machine}\` do not meet`,
    mend: ({ machine }) => `give \`${machine}\` hours in which somebody works, or leave its \`hours\` out`,
    why: 'Work at a machine needs both at once: a person and the machine, each within their hours.',
  }),
  nobodyThere: message<Readonly<Record<never, never>>>({
    code: 'CAL14',
    level: 'error',
    says: () => 'nobody is there to do the work: `people` is empty or missing',
    mend: () => 'add somebody with hours, such as `people: {me: {hours: {mon-thu: "19:30-22:30"}}}`',
    why: "Even ordering and unpacking is hands work, done in somebody's hours.",
  }),
  peopleNeverMeet: message<{ what: string; who: readonly string[]; people: number }>({
    code: 'CAL16',
    level: 'error',
    says: ({ what, who, people }) =>
      `${what} takes ${people} people, and ${nameList(who, 'and')} are never there together`,
    mend: () => 'give them hours on the same days, or `people: 1`',
    why: 'Work for two hands more is done only while both are there.',
  }),
} as const
