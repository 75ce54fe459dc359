import type { Target } from '../model/project.ts'

/** What something waits for, as a person says it: `board layout`, `base`, `step "close"`, `base shut at top`. */
export function sayTarget(target: Target): string {
  switch (target.kind) {
    case 'work':
    case 'part':
      return target.id
    case 'step':
      return `step "${target.id}"${target.assembly === null ? '' : ` of ${target.assembly}`}`
    case 'opening':
      return `${target.body} shut at ${target.opening}`
  }
}
