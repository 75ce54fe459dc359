/** How sure the date is, and what would bring it nearer. */
export { sampleProject } from './sample-project.ts'
export { samplesFor } from './samples-for.ts'
