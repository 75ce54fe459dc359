import type { Trouble } from './trouble.ts'
import type { Assumed } from './types.ts'

/** What is written down while one cut is worked out. Needs: lives inside one operation and is not kept. */
export interface Notebook {
  readonly worked: string[]
  readonly assumed: Assumed[]
  readonly troubles: Trouble[]
  readonly missing: string[]
}

/** An empty notebook for one cut. */
export function notebook(): Notebook {
  return { worked: [], assumed: [], troubles: [], missing: [] }
}

/** A number as a person writes it beside a sum: four figures, whole from a thousand up. */
export function figure(value: number): string {
  return Math.abs(value) >= 1000 ? String(Math.round(value)) : String(Number(value.toPrecision(4)))
}

/** The stated figure, else the usual one, noted with its unit and source. */
export function statedOr(
  stated: number | null | undefined,
  usual: { readonly what: string; readonly value: number; readonly unit: string; readonly source: string },
  note: Notebook,
): number {
  if (stated !== null && stated !== undefined) return stated
  const { what, value, unit, source } = usual
  note.assumed.push({ what, value: unit === '' ? figure(value) : `${figure(value)} ${unit}`, source })
  return value
}

/** The figure where it is known; else `null`, and its name goes on the list of what is missing. */
export function needed(value: number | null | undefined, what: string, note: Notebook): number | null {
  if (value !== null && value !== undefined) return value
  note.missing.push(what)
  return null
}
