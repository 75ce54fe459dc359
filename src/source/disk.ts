/** What stands at a path. */
export type Standing =
  | { readonly what: 'file'; readonly size: number }
  | { readonly what: 'folder' | 'special' | 'missing' | 'denied' }

/** What the loader asks of a disk; paths are absolute. */
export interface Disk {
  readonly standing: (path: string) => Standing
  /** The bytes of an ordinary file; `null` when they may not be read. */
  readonly bytes: (path: string) => Uint8Array | null
  /** The path with every link followed; `null` when it leads nowhere. */
  readonly real: (path: string) => string | null
  /** Names in a folder; none when it may not be read. */
  readonly names: (folder: string) => readonly string[]
}
