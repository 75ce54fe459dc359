/** What a random project is drawn from. */
export interface GenerateSettings {
  /** About so many tasks in the plan; at least some 30 come out. */
  readonly tasks: number
  /** Any whole number, of which the lower 32 bits count: the same seed gives the same text. */
  readonly seed: number
}

/** A random but sensible project as YAML text, one file without `use`, for benches and property tests. */
export declare function generateProject(settings: GenerateSettings): string
