import { nameList } from '../../base/near-names.ts'
import { type Way, wayWords } from './way-words.ts'

/** A place in the device, mm. */
export type WhereSaid = readonly [number, number, number]

/** A straight way in words. */
export const way = wayWords

/** Straight ways in words, the last after `or`. */
export const waysList = (directions: readonly Way[]): string => nameList(directions.map(way), 'or')

/** Things to do, the last after `or`. */
export const nameOr = (all: readonly string[]): string =>
  all.length > 1 ? `${all.slice(0, -1).join(', ')}, or ${all.at(-1)}` : (all[0] ?? '')

/** A length in mm, as finely as it matters. */
export const mm = (value: number): string => `${Number(value.toFixed(value < 10 ? 1 : 0))} mm`

/** Where one of several copies is, to stand behind its name; empty for a part of which there is one. */
export const atPlace = (where: WhereSaid | null): string =>
  where ? ` at [${where.map((one) => Math.round(one) + 0).join(', ')}] mm` : ''

/** The first names of many, and how many more. */
export const firstOf = (names: readonly string[], most: number): string =>
  names.length > most
    ? `${names
        .slice(0, most)
        .map((name) => `\`${name}\``)
        .join(', ')} and ${names.length - most} more`
    : nameList(names, 'and')
