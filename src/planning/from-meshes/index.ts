export { studyMeshes } from './study-meshes.ts'
export { waysOfSteps } from './ways-of-steps.ts'
export { withFindings } from './with-findings.ts'
