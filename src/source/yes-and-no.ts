import { isMap, isScalar } from 'yaml'
import type { ShapeError } from './generated/validate-project.js'
import { pathOf } from './shape-place.ts'
import { behind, type Spot, textOf } from './spot.ts'

/**
 * Turns bare `yes` and `no` into truth values where the language asks for one; YAML 1.2 itself reads them as texts.
 * Gives: whether anything was turned. Words in quotes stay texts.
 */
export function settleYesAndNo(root: Spot<unknown>, errors: readonly ShapeError[]): boolean {
  let turned = false
  for (const { keyword, params, instancePath } of errors) {
    if (keyword !== 'type' || params.type !== 'boolean') continue
    const path = pathOf(instancePath)
    const key = path.at(-1) ?? ''
    const holder = follow(root, path.slice(0, -1))
    const word = holder ? holder.value[key] : null
    if (!holder || !isBare(root, holder.node, key) || (word !== 'yes' && word !== 'no')) continue
    holder.value[key] = word === 'yes'
    turned = true
  }
  return turned
}

/** The map at a path, as data and in the source. */
function follow(
  root: Spot<unknown>,
  path: readonly string[],
): { value: Record<string, unknown>; node: unknown } | null {
  let value = root.value as Record<string, unknown>
  let node = behind(root.page, root.node)
  for (const step of path) {
    const items: readonly unknown[] =
      node && typeof node === 'object' && 'items' in node ? (node.items as unknown[]) : []
    const found = isMap(node)
      ? node.items.find((pair) => textOf(pair.key) === step)?.value
      : items[Number(step)]
    node = behind(root.page, found)
    value = value[step] as Record<string, unknown>
    if (value === null || typeof value !== 'object') return null
  }
  return { value, node }
}

function isBare(root: Spot<unknown>, map: unknown, key: string): boolean {
  const pair = isMap(map) ? map.items.find((each) => textOf(each.key) === key) : undefined
  const content = behind(root.page, pair?.value)
  return isScalar(content) && content.type === 'PLAIN'
}
