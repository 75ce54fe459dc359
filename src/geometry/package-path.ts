/**
 * The path of a part of a package as it is compared: from the root, `/` between folders, `.` and `..` followed,
 * `%20` and its like read, letters small.
 * Source: ECMA-376 part 2 (open packaging conventions), part names are alike without regard to case; from memory.
 */
export function packagePath(written: string): string {
  const path: string[] = []
  for (const step of unescaped(written).replaceAll('\\', '/').split('/')) {
    if (step === '..') path.pop()
    else if (step !== '' && step !== '.') path.push(step)
  }
  return path.join('/').toLowerCase()
}

function unescaped(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    return text
  }
}
