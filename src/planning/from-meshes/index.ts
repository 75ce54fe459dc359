export { studyMeshes } from './study-meshes.ts'
export { withFindings } from './with-findings.ts'
