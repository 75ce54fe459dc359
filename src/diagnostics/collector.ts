import { comparePlaces } from '../base/place.ts'
import type { Diagnostic, Message, Report } from './message.ts'

/** What gathers findings while the stages run. */
export interface Collector {
  readonly report: Report
  /** Sorted by file, line, column and code; what was said twice is there once. */
  readonly diagnostics: () => readonly Diagnostic[]
}

/** A new, empty collector of findings. */
export function collect(): Collector {
  const found: Diagnostic[] = []
  return {
    report: (entry, at, facts) => {
      found.push(worded(entry, at, facts))
    },
    diagnostics: () => inOrder(found),
  }
}

/** Findings sorted by file, line, column and code, exact repetitions dropped. */
export function inOrder(found: readonly Diagnostic[]): readonly Diagnostic[] {
  const once = new Map(found.map((each) => [JSON.stringify(each), each]))
  return [...once]
    .sort(([textA, a], [textB, b]) => compareDiagnostics(a, b) || (textA < textB ? -1 : 1))
    .map(([, each]) => each)
}

function compareDiagnostics(a: Diagnostic, b: Diagnostic): number {
  return comparePlaces(a.at, b.at) || (a.code === b.code ? 0 : a.code < b.code ? -1 : 1)
}

function worded<Facts>(entry: Message<Facts>, at: Diagnostic['at'], facts: Facts): Diagnostic {
  return {
    code: entry.code,
    level: entry.level,
    at,
    says: entry.says(facts),
    mend: entry.mend(facts),
    notes: entry.notes?.(facts) ?? [],
  }
}
