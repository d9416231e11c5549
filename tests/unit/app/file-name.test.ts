import { expect, test } from 'vitest'
import { fileName } from '../../../src/app/file-name'

const day = new Date(2026, 2, 9, 23, 59)

test('a file is named after the job and the day on this machine', () => {
  expect(fileName('Garden saw (invented)', day, 'job')).toBe('garden-saw-invented-2026-03-09.json')
})

test('accents, slashes and dots in a name of a job make no folders and no odd files', () => {
  expect(fileName('../Säge №1: 54,0 / hinten..', day, 'job')).toBe('sage-no1-54-0-hinten-2026-03-09.json')
  expect(fileName('Бензопила', day, 'job')).toBe('бензопила-2026-03-09.json')
})

test('a job without a name, or with nothing but signs, gets a plain one', () => {
  expect(fileName('', day, 'job')).toBe('job-2026-03-09.json')
  expect(fileName('???', day, 'job')).toBe('job-2026-03-09.json')
})

test('a very long name is cut, never in the middle of a character', () => {
  const name = fileName('𝒳'.repeat(30) + '汉'.repeat(200), day, 'job')
  expect([...name].length).toBeLessThanOrEqual(60 + '-2026-03-09.json'.length)
  expect(name).not.toMatch(/\p{Cs}/u)
})
