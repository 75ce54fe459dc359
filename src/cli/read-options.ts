import { readFileSync } from 'node:fs'
import { type Day, parseDay } from '../base/clock.ts'
import type { CompileOptions } from '../compile.ts'
import { UsageError } from './terminal.ts'

/** Options that commands share, as commander hands them over. */
export interface SharedOptions {
  readonly root?: string
  readonly date?: string
  readonly effort?: string
  readonly seed?: string
  readonly samples?: string
}

function dayOption(text: string): Day {
  const day = parseDay(text)
  if (day === null) throw new UsageError(`--date wants a day such as 2026-02-02, not ${text}`)
  return day
}

function wholeOption(name: string, text: string, least: number, most: number): number {
  const value = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN
  if (!(value >= least && value <= most))
    throw new UsageError(`--${name} wants a whole number from ${least} to ${most}, not ${text}`)
  return value
}

/** Options for compiling `file`; standard input is read where the file is `-`. */
export function compileOptions(file: string, shared: SharedOptions, folder: string): CompileOptions {
  return {
    folder,
    ...(shared.root === undefined ? {} : { root: shared.root }),
    ...(shared.date === undefined ? {} : { date: dayOption(shared.date) }),
    ...(shared.effort === undefined ? {} : { effort: wholeOption('effort', shared.effort, 1, 1_000_000) }),
    ...(shared.seed === undefined ? {} : { seed: wholeOption('seed', shared.seed, 0, 999_999_999) }),
    ...(shared.samples === undefined ? {} : { samples: wholeOption('samples', shared.samples, 0, 100_000) }),
    ...(file === '-' ? { stdin: readFileSync(0) } : {}),
  }
}
