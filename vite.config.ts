import react from '@vitejs/plugin-react'
import { build, type Plugin } from 'vite'
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

/** What a page starts with, imported once the language is known (src/app/main.tsx), and what comes before. */
const startsWith = 'src/app/start-page.tsx'
const comesBefore = 'src/app/main.tsx'

interface Modules {
  getModuleInfo: (id: string) => { readonly importedIds: readonly string[] } | null
}

/** A module and everything that it cannot be loaded without. */
function neededBy(id: string, modules: Modules, found = new Set<string>()): Set<string> {
  if (found.has(id)) return found
  found.add(id)
  for (const next of modules.getModuleInfo(id)?.importedIds ?? []) neededBy(next, modules, found)
  return found
}

/**
 * Keeps all that the page starts with in one file: the bundler would cut it up at everything that a part loaded later
 * shares with it, though nothing is loaded later without it.
 */
function inOneFile(): (id: string, modules: Modules) => string | null {
  const root = `${import.meta.dirname}/`
  let start: Set<string> | undefined
  return (id, modules) => {
    if (!start) {
      start = neededBy(`${root}${startsWith}`, modules)
      for (const before of neededBy(`${root}${comesBefore}`, modules)) start.delete(before)
    }
    return start.has(id) ? 'start' : null
  }
}

/** Has the browser fetch at once what the page starts with: it would not know of it before the language is there. */
function fetchedAtOnce(): Plugin {
  return {
    name: 'fetched-at-once',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler(_, { bundle = {} }) {
        const chunks = Object.values(bundle).filter((one) => one.type === 'chunk')
        const start = chunks.find(({ moduleIds }) => moduleIds.some((id) => id.endsWith(startsWith)))
        if (!start) throw new Error(`There is no chunk of ${startsWith}`)
        const files = [start.fileName, ...start.imports]
        const styles = chunks
          .filter(({ fileName }) => files.includes(fileName))
          .flatMap(({ viteMetadata }) => [...(viteMetadata?.importedCss ?? [])])
        return [
          ...files.map((file) => ({ rel: 'modulepreload', file })),
          ...[...new Set(styles)].map((file) => ({ rel: 'stylesheet', file })),
        ].map(({ rel, file }) => ({
          tag: 'link',
          attrs: { rel, crossorigin: true, href: `./${file}` },
          injectTo: 'head',
        }))
      },
    },
  }
}

/**
 * `import text from './part.ts?alone'` gives the text of a script that needs nothing else: that part with all it
 * imports, built by itself. It goes into pages that are handed over, which load nothing.
 */
function scriptsAlone(): Plugin {
  const ending = '?alone'
  return {
    name: 'scripts-alone',
    enforce: 'pre',
    async load(id) {
      if (!id.endsWith(ending)) return undefined
      const built = await build({
        configFile: false,
        logLevel: 'warn',
        build: {
          write: false,
          target: 'es2022',
          modulePreload: false,
          copyPublicDir: false,
          rolldownOptions: {
            input: id.slice(0, -ending.length),
            output: { format: 'iife' },
            // What it takes from a module is all that it takes: the texts of the app would come along with a unit.
            treeshake: { moduleSideEffects: false },
            checks: { pluginTimings: false },
          },
        },
      })
      const parts = [built].flat().flatMap((one) => ('output' in one ? one.output : []))
      const [script, ...others] = parts
      if (script?.type !== 'chunk' || others.length > 0)
        this.error(`${id}: expected one script, got ${parts.map(({ fileName }) => fileName).join(', ')}`)
      return `export default ${JSON.stringify(script.code)}`
    },
  }
}

export default defineConfig({
  base: './',
  plugins: [
    react(),
    withoutShadersOfThree(),
    fetchedAtOnce(),
    scriptsAlone(),
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
  build: {
    target: 'es2022',
    chunkSizeWarningLimit: 1000,
    assetsInlineLimit: 0,
    rolldownOptions: {
      // Which callback took how long is nothing for who starts the page.
      checks: { pluginTimings: false },
      output: {
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [{ debugName: 'start', name: inOneFile() }],
        },
      },
    },
  },
  server: { host: '127.0.0.1' },
  test: {
    // Left to itself the runner leaves one of two cores idle.
    maxWorkers: '100%',
    projects: [nodeTests('unit', '{ts,tsx}'), nodeTests('outside'), ...(full ? [nodeTests('proof')] : [])],
  },
})
