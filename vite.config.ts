import react from '@vitejs/plugin-react'
import { defineConfig } from 'vitest/config'
import { contentSecurityPolicy } from './src/cli/response-headers.mjs'

/** Full counts: slower runs with many more random cases, and the proof project. */
const full = process.env.PROOF === '1'
const testTimeout = full ? 600_000 : 10_000

function nodeTests(name: string, extensions = 'ts') {
  return {
    test: {
      name,
      include: [`tests/${name}/**/*.test.${extensions}`],
      environment: 'node' as const,
      // The tests share no state; loading every module once takes half of the time.
      isolate: false,
      testTimeout,
      hookTimeout: testTimeout,
    },
  }
}

export default defineConfig({
  base: './',
  plugins: [
    react(),
    {
      name: 'content-security-policy',
      apply: 'build',
      transformIndexHtml: () => [
        {
          tag: 'meta',
          attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
          injectTo: 'head-prepend',
        },
      ],
    },
  ],
  build: { target: 'es2022', chunkSizeWarningLimit: 1000, assetsInlineLimit: 0 },
  server: { host: '127.0.0.1' },
  test: {
    projects: [nodeTests('unit', '{ts,tsx}'), nodeTests('outside'), ...(full ? [nodeTests('proof')] : [])],
  },
})
