import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { cpus, totalmem } from 'node:os'
import { join } from 'node:path'
import { root } from './step.mjs'

const recordsFolder = join(root, 'tests/proof/output')
const resultsFile = 'tests/proof/RESULTS.md'

/** Forgets the figures of an earlier run. */
export function emptyRecords() {
  rmSync(recordsFolder, { recursive: true, force: true })
  mkdirSync(recordsFolder, { recursive: true })
}

/**
 * Writes what the proof tests recorded; returns the file's name.
 * @param {{ chromium: string, passed: number, failed: number }} run
 */
export function writeResults({ chromium, passed, failed }) {
  const records = readRecords()
  const lines = [
    '# What the full-count run found',
    '',
    'Written by `npm run proof`; do not edit by hand.',
    '',
    `- Outcome: ${passed} passed, ${failed} failed`,
    `- Commit: ${commit()}`,
    `- Machine: ${cpus().length} × ${cpus()[0]?.model ?? 'unknown processor'}, ${Math.round(totalmem() / 2 ** 30)} GiB, ${process.platform} ${process.arch}`,
    `- Node ${process.version}; ${firstLineOf(chromium, ['--version'])}`,
    `- Seeds: ${seedsOf(records)}`,
    ...records.flatMap(({ name, seed, figures }) => ['', `## ${name}`, '', ...table(seed, figures)]),
    '',
  ]
  writeFileSync(join(root, resultsFile), lines.join('\n'))
  return resultsFile
}

/**
 * @typedef {{ name: string, seed: number | undefined, figures: Record<string, string | number> }} ProofRecord
 * @returns {ProofRecord[]}
 */
function readRecords() {
  if (!existsSync(recordsFolder)) return []
  return readdirSync(recordsFolder)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .map((file) => JSON.parse(readFileSync(join(recordsFolder, file), 'utf8')))
}

/** @param {ProofRecord[]} records */
function seedsOf(records) {
  const seeds = new Set(records.flatMap(({ seed }) => (seed === undefined ? [] : [seed])))
  return seeds.size === 0 ? 'none recorded' : [...seeds].sort((a, b) => a - b).join(', ')
}

/**
 * @param {number | undefined} seed
 * @param {Record<string, string | number>} figures
 */
function table(seed, figures) {
  const rows = Object.entries(figures).map(([name, value]) => `| ${name} | ${value} |`)
  const seedRow = seed === undefined ? [] : [`| seed | ${seed} |`]
  return ['| figure | value |', '|---|---|', ...seedRow, ...rows]
}

function commit() {
  const revision = firstLineOf('git', ['rev-parse', 'HEAD'])
  const changed = firstLineOf('git', ['status', '--porcelain', '--', '.', `:!${resultsFile}`])
  return changed === '' ? revision : `${revision}, with changes not committed`
}

/**
 * @param {string} command
 * @param {string[]} parameters
 */
function firstLineOf(command, parameters) {
  const answer = spawnSync(command, parameters, { cwd: root, encoding: 'utf8' })
  if (answer.error || answer.status !== 0) return 'unknown'
  return (answer.stdout.split('\n', 1)[0] ?? '').trim()
}
