// Written by `npm run generate`; do not edit.
/** One mismatch between a file and its schema. */
export interface ShapeError {
  readonly instancePath: string
  readonly schemaPath: string
  readonly keyword: string
  readonly params: Readonly<Record<string, unknown>>
  readonly message?: string
}
interface Validator {
  (data: unknown): boolean
  errors?: null | ShapeError[]
}
/** Whether the data has the shape of a project file; the mismatches are left in `errors`. */
export declare const project: Validator
/** Whether the data has the shape of a shop file; the mismatches are left in `errors`. */
export declare const shop: Validator
