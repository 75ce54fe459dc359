import type { Step } from '../model/assembly.ts'
import type { Pictures, StepPicture } from '../model/pictures.ts'
import type { Drawing } from './cells.ts'
import { sentences } from './say-time.ts'

/** The pictures of a plan; `no package`: what turns them into PNG is not installed, so that none was drawn. */
export type ToldPictures = Pictures | 'no package'

/** The id of the picture of a step; `of` is the assembly, `null` the device. */
export function pictureId(of: string | null, step: string): string {
  return JSON.stringify([of, step])
}

/** The pictures of steps as they were drawn. */
export function stepPictures(told: ToldPictures | undefined): readonly StepPicture[] {
  return told === undefined || told === 'no package' ? [] : told.steps
}

/** The pictures of steps by their id. */
export function stepDrawings(told: ToldPictures | undefined): ReadonlyMap<string, Drawing> {
  return new Map(
    stepPictures(told).map(({ of, step, svg, sizeMm, heightMm }) => [
      pictureId(of, step),
      { svg, sizeMm, heightMm, says: `${step}: what goes in, with the way it goes` },
    ]),
  )
}

/** Sides of a device as one stands before it, by direction. */
const sideNames = ['right', 'left', 'rear', 'front', 'top', 'underside'] as const

/** Which sides of the device a picture shows, so that nobody has to guess, and what it cannot show. */
export function saySeen({ sees, straight }: StepPicture): string {
  const sides = sees.map((direction) => sideNames[direction])
  const [last, before] = [sides.at(-1) ?? '', sides.slice(0, -1)]
  const seen = before.length > 0 ? `${before.join(', ')} and ${last}` : last
  return sentences(
    `Picture: seen are ${seen}`,
    straight ? '' : 'The meshes leave no straight way in, so it is drawn in its place',
  )
}

/** In a few words, why a step has no picture where others have. */
export function sayNoPicture(told: ToldPictures | undefined, of: string | null, { id, put }: Step): string {
  if (put === null) return 'nothing is put in place'
  const without = told === undefined || told === 'no package' ? [] : told.without
  const bare = without.some((one) => one.of === of && one.step === id)
  return bare ? `no mesh: ${put.part}` : 'not drawn'
}

/** Why a plan with meshes has no pictures; `''` where it has, or where nobody asked. */
export function sayNoPictures(told: ToldPictures | undefined): string {
  if (told === undefined) return ''
  if (told === 'no package')
    return 'Pictures of the steps are left out: the package @resvg/resvg-js is not installed here (npm install @resvg/resvg-js). `fettle pictures` draws them as SVG without it.'
  if (!told.beyond) return ''
  const { what, found, most } = told.beyond
  return `Pictures of the steps are left out: ${found} ${what} are too many to draw, at most ${most}.`
}
