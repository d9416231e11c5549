import react from '@vitejs/plugin-react'
import { defineConfig } from 'vitest/config'

/** The page may load from its own host only, run no inline script, and be framed by nobody. */
const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' blob: data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')

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
    projects: [
      { test: { name: 'unit', include: ['tests/unit/**/*.test.{ts,tsx}'], environment: 'node' } },
      { test: { name: 'outside', include: ['tests/outside/**/*.test.ts'], environment: 'node' } },
    ],
  },
})
