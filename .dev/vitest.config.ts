import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    setupFiles: ['.dev/vitest.setup.ts'],
    isolate: false,
    maxWorkers: '100%',
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
})
