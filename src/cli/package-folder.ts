import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder fettle is installed in: the nearest above this file that holds its templates. */
export function packageFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url))
  while (!existsSync(join(folder, 'templates'))) {
    const above = dirname(folder)
    if (above === folder) throw new Error('the templates folder of this installation is missing')
    folder = above
  }
  return folder
}
