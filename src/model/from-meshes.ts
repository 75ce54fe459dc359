import type { Place } from '../base/place.ts'
import type { OrderConstraint } from './assembly.ts'

/** Ways a part may move, by number: +x, -x, +y, -y, +z, -z; from 6 on to and fro along each of `FromMeshes.tilted`. */
export type MoveDirection = number

/** A direction in space, of length 1. */
export type TiltedAxis = readonly [x: number, y: number, z: number]

/** One copy of a part that has a mesh. */
export interface MeshBody {
  readonly part: string
  /** Which of its copies, from 0, in the order of their places or shells. */
  readonly copy: number
}

/** A body in the way of another. */
export interface MeshStop {
  /** Number in `FromMeshes.bodies`. */
  readonly body: number
  /** How widely it stops the other, mm. */
  readonly widthMm: number
}

/** A way as it is told: one of the six by number, or where it leads. */
export type ToldWay = MoveDirection | TiltedAxis

/** Where a step comes from by its meshes; an empty list: they leave no straight way, or nothing of it has a mesh. */
export interface WayOfStep {
  /** Of the copies of what is put, each direction once. */
  readonly from: readonly ToldWay[]
  /** Of its fasteners, where it differs. */
  readonly fastenedFrom: readonly ToldWay[]
}

/** By assembly, `''` for the device, and by step: where steps come from that type neither `from` nor `through`. */
export type WaysOfSteps = ReadonlyMap<string, ReadonlyMap<string, WayOfStep>>

/** What goes in as one in a step: a copy of what is put, an assembly with all in it, or a fastener. */
export interface MeshMove {
  readonly step: string
  /** The part put, or the fastener. */
  readonly part: string
  readonly role: 'put' | 'fastener'
  readonly bodies: readonly number[]
  /** Bodies of what it goes on or into, where one step puts that: they are there before it, whatever the order. */
  readonly seat: readonly number[]
  /** Bodies of what its step says that it goes on or into: what it bends over, if it bends. */
  readonly onto: readonly number[]
  /** Directions off x, y and z that the side typed under `from` may mean as well. */
  readonly tiltedFrom: readonly MoveDirection[]
  /** By direction of leaving: what stops it with everything in place, the widest first. */
  readonly stops: readonly (readonly MeshStop[])[]
}

/** What the meshes say of one assembly. */
export interface PlanMeshes {
  /** The part; `null`: the device. */
  readonly of: string | null
  /** Bodies that are there from the start. */
  readonly there: readonly number[]
  readonly moves: readonly MeshMove[]
  /** As in `FromMeshes`. */
  readonly tilted: readonly TiltedAxis[]
  /** What they ask of the order of its steps. */
  readonly constraints: readonly OrderConstraint[]
  /** Steps that put something of which nothing has a mesh: their place rests on typed facts alone. */
  readonly typedAlone: readonly string[]
}

/** What the meshes of a device say; only where two or more parts stand in their assembled place. */
export interface FromMeshes {
  readonly bodies: readonly MeshBody[]
  /** Cell of the columns that were compared, mm. */
  readonly cellMm: number
  /** Axes off x, y and z along which parts were tried too, the first those of most parts. */
  readonly tilted: readonly TiltedAxis[]
  /** Pairs that stop each other, touch or overlap. */
  readonly pairs: number
  /** By assembly; `''` is the device. */
  readonly plans: ReadonlyMap<string, PlanMeshes>
  readonly findings: readonly MeshFinding[]
}

/** Something in the way, with how widely. */
export interface InTheWay {
  readonly part: string
  readonly widthMm: number
}

/** How far a part can move in a direction, and what ends it; `null`: nothing does. */
export interface Travel {
  readonly direction: MoveDirection
  readonly mm: number | null
  readonly by: string | null
  /** How widely it is stopped there at the most, mm; 0: nothing stops it. */
  readonly widthMm: number
}

/** A place in the device, mm. */
export type Where = readonly [x: number, y: number, z: number]

/** A difference between what is typed and what the meshes show. */
export type MeshFinding =
  /** The direction typed under `from` is blocked when the step's turn comes. */
  | {
      readonly kind: 'from blocked'
      readonly at: Place
      readonly step: string
      readonly part: string
      readonly from: string
      readonly direction: MoveDirection
      readonly by: InTheWay
      /** The step that brings what is in the way; `null`: it is there from the start. */
      readonly broughtBy: string | null
      /** Directions in which it could go in then. */
      readonly free: readonly MoveDirection[]
    }
  /** `from` names no direction, but nearly does. */
  | {
      readonly kind: 'from misspelt'
      readonly at: Place
      readonly step: string
      readonly from: string
      readonly near: readonly string[]
    }
  /** The body itself closes the opening that a step passes. */
  | {
      readonly kind: 'no opening'
      readonly at: Place
      readonly step: string
      readonly part: string
      readonly body: string
      readonly opening: string | null
      readonly direction: MoveDirection | null
      readonly widthMm: number
    }
  /** A step that shuts an opening of a body also stops what goes there, of which nothing says so. */
  | {
      readonly kind: 'shuts more'
      readonly at: Place
      readonly lid: string
      readonly part: string
      readonly step: string
      readonly body: string
      readonly direction: MoveDirection
      readonly widthMm: number
      /** The opening it goes through, as far as its name tells; `null`: not known. */
      readonly opening: string | null
      /** Whether the lid says that it shuts that opening. */
      readonly isShut: boolean
      /** Whether the step says that it passes it; `on`: it goes on the body, which has no word for it. */
      readonly through: 'on' | 'said' | 'silent'
    }
  /** A part that what is there from the start, or what it is fastened to, keeps in in all directions tried. */
  | {
      readonly kind: 'cannot leave'
      readonly at: Place
      readonly step: string
      readonly part: string
      /** Where it is, of several copies. */
      readonly where: Where | null
      readonly travel: readonly Travel[]
      /** What could go in together with it, as one; empty: nothing helps. */
      readonly together: readonly string[]
      /** What is typed of its way in. */
      readonly from: string | null
      readonly givesMm: number | null
    }
  /** The typed order leaves a part no way in. */
  | {
      readonly kind: 'order blocked'
      readonly at: Place
      readonly step: string
      readonly part: string
      readonly where: Where | null
      readonly by: readonly (InTheWay & { readonly step: string; readonly direction: MoveDirection })[]
      /** Whether what is typed keeps it so; else the meshes themselves leave no order. */
      readonly typed: boolean
    }
  /** Parts that are joined and nowhere touch. */
  | {
      readonly kind: 'no contact'
      readonly at: Place
      readonly step: string
      readonly part: string
      readonly other: string
      /** What it touches instead. */
      readonly touches: readonly string[]
      readonly where: Where | null
      readonly gapMm: number
    }
  /** Parts that touch, of which no step says what holds them. */
  | {
      readonly kind: 'contact without join'
      readonly at: Place
      readonly step: string
      readonly part: string
      readonly touches: readonly string[]
    }
  /** Parts that lie in each other as drawn. */
  | {
      readonly kind: 'overlap'
      readonly at: Place
      readonly part: string
      readonly other: string
      readonly widthMm: number
      /** How wide an overlap their join explains, mm; `null`: none joins them. */
      readonly mostMm: number | null
      /** Those of the two whose meshes leak: the width is doubtful. */
      readonly leaking: readonly string[]
      readonly where: Where | null
    }
  /** A part that falls out of the finished device. */
  | {
      readonly kind: 'loose'
      readonly at: Place
      readonly step: string
      readonly part: string
      readonly directions: readonly MoveDirection[]
    }
  /** More or fewer copies drawn than put. */
  | {
      readonly kind: 'count'
      readonly at: Place
      readonly part: string
      readonly drawn: number
      readonly put: number
      readonly shells: boolean
    }
  /** No room for the tool on the head of a fastener. */
  | {
      readonly kind: 'tool room'
      readonly at: Place
      readonly step: string
      readonly part: string
      readonly by: readonly string[]
      readonly radiusMm: number
      readonly reachMm: number
    }
  /** A mesh that touches nothing at all: another place or unit. */
  | {
      readonly kind: 'far off'
      readonly at: Place
      readonly part: string
      /** Where those are, of several copies. */
      readonly where: readonly Where[]
      /** The part nearest to the first of them, and how far it is. */
      readonly nearest: string
      readonly gapMm: number
    }
  /** Parts without a mesh in place among others that have one. */
  | {
      readonly kind: 'no mesh'
      readonly at: Place
      readonly parts: readonly string[]
      /** The first of them, where others go on or into it: steps that do. Or it is the base. */
      readonly carries: readonly string[]
      readonly isBase: boolean
      readonly drawn: number
      readonly steps: number
    }
  /** A device of a size that none is, or of parts that do not meet: another unit, or not in assembled place. */
  | {
      readonly kind: 'odd scale'
      readonly at: Place
      readonly why: 'small' | 'large' | 'apart'
      readonly sizeMm: Where
      readonly parts: number
      readonly apart: number
    }
