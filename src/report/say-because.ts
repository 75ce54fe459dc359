// Stand-in, minutes only.
import type { Results } from '../model/results.ts'
import type { ChainStep } from '../model/schedule.ts'
import type { TaskLink } from '../model/tasks.ts'
export const sayBecause = (_results: Results, step: ChainStep): string => step.because.kind
export const sayLink = (_results: Results, link: TaskLink): string => `${link.why}: ${link.from}`
