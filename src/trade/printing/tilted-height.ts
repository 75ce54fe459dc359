import { firstOutside, type OutOfDomain } from './domain.ts'
import { figure } from './figure.ts'

/** A plate-like part leaning on the build plate. */
export interface TiltedPart {
  readonly lengthMm: number
  readonly thicknessMm: number
  /** From lying flat (0) to upright (90). */
  readonly tiltDegrees: number
  /** Raft and supports below its lowest point. */
  readonly raftMm: number
}

/** Height along the build axis of a tilted plate. Source: L sin a + t cos a + raft (geometry of a rectangle). */
export function tiltedHeight(
  part: TiltedPart,
): { readonly heightMm: number; readonly worked: readonly string[] } | OutOfDomain {
  const outside = firstOutside(part, {
    lengthMm: 'above 0',
    thicknessMm: '0 or more',
    tiltDegrees: '0 or more',
    raftMm: '0 or more',
  })
  if (outside) return outside
  const { lengthMm, thicknessMm, tiltDegrees, raftMm } = part
  if (tiltDegrees > 90)
    return { fault: 'out of domain', field: 'tiltDegrees', value: tiltDegrees, must: '0 to 90' }
  const angle = (tiltDegrees * Math.PI) / 180
  const heightMm = lengthMm * Math.sin(angle) + thicknessMm * Math.cos(angle) + raftMm
  const sum = `${figure(lengthMm)} sin ${figure(tiltDegrees)} + ${figure(thicknessMm)} cos ${figure(tiltDegrees)}`
  return { heightMm, worked: [`height = ${sum} + raft ${figure(raftMm)} = ${figure(heightMm)} mm`] }
}
