/** Every project that is shipped under `projects/`, by its path from the root; each has a golden. */
export const shippedProjects: readonly string[] = [
  'projects/optical-chopper/optical-chopper.yaml',
  'projects/dosing-pump/dosing-pump.yaml',
  'projects/worked-numbers/worked-numbers.yaml',
]

/** The project file of every template, by its path from the root; each plans without an error or a warning. */
export const shippedTemplates: readonly string[] = [
  'templates/minimal/project.yaml',
  'templates/board/project.yaml',
  'templates/shop/project.yaml',
]
