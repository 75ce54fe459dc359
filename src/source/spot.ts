import type { Node as YamlNode } from 'yaml'
import type { Place } from '../base/place.ts'

/**
 * A value of the source together with where it stands. `value` is plain data typed by the schema; `text` is a scalar
 * exactly as typed (so that `1.10` and `0.0043` are read without floating point), empty for maps and lists.
 */
export interface Spot<T> {
  readonly value: T
  readonly at: Place
  /** The key that introduces it; the value itself for list entries and the document. */
  readonly keyAt: Place
  readonly text: string
  readonly node: YamlNode | null
  readonly file: string
}
