import { expect, test } from '@playwright/test'
import { complaintsOf, openApp } from './bench-fixture'

test('the guard of the browser tests sees errors, warnings, throws, foreign requests and breaches of the policy', async ({
  page,
  context,
  baseURL,
}) => {
  const complaints = complaintsOf(context, baseURL ?? '', [/expected/])
  await openApp(page)
  expect(complaints).toEqual([])

  await page.evaluate(() => {
    console.error('an expected error')
    console.error('made-up error')
    console.warn('made-up warning')
    setTimeout(() => Promise.reject(new Error('made-up throw')))
    const script = document.createElement('script')
    script.textContent = 'document.title = "breached"'
    document.head.append(script)
  })
  // What is thrown a moment later must be thrown before the page is left.
  await expect.poll(() => complaints.join('\n')).toContain('made-up throw')
  await page.route('http://elsewhere.example/', (route) => route.fulfill({ body: '<h1>Elsewhere</h1>' }))
  await page.goto('http://elsewhere.example/')

  // The policy is sent twice, by the server and in the page, so its breach is reported twice.
  await expect.poll(() => new Set(complaints).size).toBe(5)
  const text = complaints.join('\n')
  expect(text).toContain('error: made-up error')
  expect(text).toContain('warning: made-up warning')
  expect(text).toContain('thrown: Error: made-up throw')
  expect(text).toContain('violates the following Content Security Policy directive')
  expect(text).toContain('request to another host: http://elsewhere.example/')
})
