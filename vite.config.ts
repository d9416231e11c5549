import react from '@vitejs/plugin-react'
import type { Plugin } from 'vite'
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

/**
 * Leaves the shaders of three's own materials out of the page, a sixteenth of its bytes: ours bring their own
 * (src/scene/raw-material.ts). A material of three's fails to compile, with this text as the reason.
 */
function withoutShadersOfThree(): Plugin {
  const reason = JSON.stringify('#error The shaders of three are left out by vite.config.ts\n')
  return {
    name: 'without-shaders-of-three',
    apply: 'build',
    transform: {
      filter: { id: /\/three\/build\/three\.module\.js/ },
      handler(code) {
        const [texts, rest] = code.split(/^(?=const ShaderChunk = \{)/m)
        const short = texts?.replace(/^((?:const|var) [\w$]+ = )"(?:[^"\\]|\\.)*"/gm, `$1${reason}`)
        if (!rest || short === texts)
          this.error('three no longer keeps its shaders where they were looked for')
        return { code: `${short}${rest}`, map: null }
      },
    },
  }
}

export default defineConfig({
  base: './',
  plugins: [
    react(),
    withoutShadersOfThree(),
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
    // Left to itself the runner leaves one of two cores idle.
    maxWorkers: '100%',
    projects: [nodeTests('unit', '{ts,tsx}'), nodeTests('outside'), ...(full ? [nodeTests('proof')] : [])],
  },
})
