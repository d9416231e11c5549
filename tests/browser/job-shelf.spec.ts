import { createServer, type Server } from 'node:http'
import { join } from 'node:path'
import { expect, type Page, test } from '@playwright/test'
import { build } from 'vite'
import { newJob } from '../../src/job/new-job'
import type { Job } from '../../src/job/schema'
import { writeJob } from '../../src/job/write-job'

type ShelfModule = typeof import('../../src/storage/job-shelf')

declare global {
  interface Window {
    shelfModule: ShelfModule
    shelf: Awaited<ReturnType<ShelfModule['openShelf']>>
    /** What the shelf takes for the time; counts up by a second at each look. */
    seconds: number
  }
}

let script = ''
let server: Server
let address = ''

test.beforeAll(async () => {
  script = await bundled('src/storage/job-shelf.ts')
  server = createServer((_, response) => {
    response.setHeader('Content-Type', 'text/html').end('<!doctype html><title>Shelf</title>')
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const bound = server.address()
  if (bound === null || typeof bound === 'string') throw new Error('Expected a port')
  address = `http://127.0.0.1:${bound.port}/`
})

test.afterAll(() => {
  server.close()
})

/** The module as one script that puts its exports on the window. */
async function bundled(entry: string): Promise<string> {
  const results = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      minify: false,
      lib: { entry: join(import.meta.dirname, '../..', entry), formats: ['iife'], name: 'shelfModule' },
    },
  })
  const [result] = Array.isArray(results) ? results : [results]
  if (!result || !('output' in result)) throw new Error('Expected one bundle')
  return result.output[0].code.replace(/^(var|const|let) shelfModule/m, 'window.shelfModule')
}

async function openPage(page: Page): Promise<void> {
  await page.goto(address)
  await page.addScriptTag({ content: script })
}

async function openShelf(page: Page, from = 0): Promise<void> {
  await openPage(page)
  await page.evaluate(async (seconds) => {
    window.seconds = seconds
    const now = () => {
      window.seconds += 1
      return new Date(window.seconds * 1000)
    }
    window.shelf = await window.shelfModule.openShelf({ now })
  }, from)
}

function job(id: string, name: string): Job {
  let count = 0
  return { ...newJob(() => `${id}-${count++}`), id, name }
}

const save = (page: Page, saved: Job) => page.evaluate((each) => window.shelf.save(each), saved)
const read = (page: Page, id: string) => page.evaluate((each) => window.shelf.read(each), id)
const list = (page: Page) => page.evaluate(() => window.shelf.list())
const setAside = (page: Page) => page.evaluate(() => window.shelf.setAside())

/** The code of the error that saving ends with, or that it was saved. */
function savingEnds(page: Page, saved: Job): Promise<string> {
  return page.evaluate(
    (each) =>
      window.shelf.save(each).then(
        () => 'saved',
        (error: { code?: string }) => error.code ?? String(error),
      ),
    saved,
  )
}

/** What the store of jobs holds, seen past the shelf. */
function stored(page: Page, id: string): Promise<unknown> {
  return page.evaluate(
    (key) =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('borewall')
        opening.onsuccess = () => {
          const request = opening.result.transaction('jobs').objectStore('jobs').get(key)
          request.onsuccess = () => {
            opening.result.close()
            resolve(request.result)
          }
        }
        opening.onerror = () => reject(opening.error)
      }),
    id,
  )
}

/** Puts a record into the store of jobs past the shelf. */
function plant(page: Page, record: object): Promise<void> {
  return page.evaluate(
    (value) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('borewall')
        opening.onsuccess = () => {
          const writing = opening.result.transaction('jobs', 'readwrite')
          writing.objectStore('jobs').put(value)
          writing.oncomplete = () => {
            opening.result.close()
            resolve()
          }
          writing.onabort = () => reject(writing.error)
        }
        opening.onerror = () => reject(opening.error)
      }),
    record,
  )
}

const storesNow = ['aside', 'entries', 'history', 'jobs', 'marks', 'photos', 'scans', 'specs', 'versions']

function storeNames(page: Page): Promise<string[]> {
  return page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('borewall')
        opening.onsuccess = () => {
          opening.result.close()
          resolve([...opening.result.objectStoreNames])
        }
        opening.onerror = () => reject(opening.error)
      }),
  )
}

const record = (id: string, text: string) => ({
  id,
  formatVersion: 1,
  changedAt: '2024-01-01T00:00:00.000Z',
  name: id,
  text,
})

test.describe('the shelf of jobs', () => {
  test('keeps a job over a reload, equal in every part, and remembers which was open last', async ({
    page,
  }) => {
    await openShelf(page)
    await save(page, job('a', 'Saw'))
    await save(page, job('b', 'Pump'))
    await openShelf(page)
    expect(await page.evaluate(() => window.shelf.lastOpen())).toBe('b')
    const changedAt = '1970-01-01T00:00:01.000Z'
    expect(await read(page, 'a')).toEqual({ ok: true, job: job('a', 'Saw'), changedAt })
    expect(await page.evaluate(() => window.shelf.lastOpen())).toBe('a')
    expect(await read(page, 'c')).toBeUndefined()
  })

  test('lets a job be looked at without marking it, taking it for known or setting it aside', async ({
    page,
  }) => {
    const peek = (id: string) => page.evaluate((each) => window.shelf.peek(each), id)
    await openShelf(page)
    await save(page, job('a', 'Saw'))
    await save(page, job('b', 'Pump'))
    await plant(page, record('c', 'spoilt'))
    await openShelf(page)
    expect(await peek('a')).toEqual({ ok: true, job: job('a', 'Saw') })
    expect(await peek('c')).toMatchObject({ ok: false, problems: [{ code: 'not-json' }] })
    expect(await peek('d')).toBeUndefined()
    expect(await page.evaluate(() => window.shelf.lastOpen())).toBe('b')
    expect(await setAside(page)).toEqual([])
    expect(await stored(page, 'c')).toEqual(record('c', 'spoilt'))
    await save(page, job('a', 'Another saw'))
    expect(await setAside(page)).toMatchObject([{ reason: 'replaced', name: 'Saw' }])
  })

  test('lists jobs with the last changed first, by the clock it is given', async ({ page }) => {
    await openShelf(page)
    await save(page, job('a', 'Saw'))
    await save(page, job('b', 'Pump'))
    await save(page, job('a', 'Saw again'))
    expect(await list(page)).toEqual([
      { id: 'a', name: 'Saw again', changedAt: '1970-01-01T00:00:03.000Z' },
      { id: 'b', name: 'Pump', changedAt: '1970-01-01T00:00:02.000Z' },
    ])
  })

  test('forgets a job that is removed, and that it was open', async ({ page }) => {
    await openShelf(page)
    await save(page, job('a', 'Saw'))
    await page.evaluate(() => window.shelf.remove('a'))
    expect(await list(page)).toEqual([])
    expect(await page.evaluate(() => window.shelf.lastOpen())).toBeUndefined()
  })

  test('says that a job is saved only after the transaction is complete, asked for with strict durability', async ({
    page,
  }) => {
    await openShelf(page)
    const order = await page.evaluate(
      async (saved) => {
        const events: string[] = []
        const transaction = IDBDatabase.prototype.transaction
        IDBDatabase.prototype.transaction = function (stores, mode, options) {
          const made = transaction.call(this, stores, mode, options)
          if (mode === 'readwrite') {
            events.push(`durability ${options?.durability}`)
            made.addEventListener('complete', () => events.push('complete'))
          }
          return made
        }
        await window.shelf.save(saved)
        events.push('saved')
        return events
      },
      job('a', 'Saw'),
    )
    expect(order).toEqual(['durability strict', 'complete', 'saved'])
  })

  test('takes saves that overlap in their order, without taking one for a stranger', async ({ page }) => {
    await openShelf(page)
    await page.evaluate(
      (jobs) => Promise.all(jobs.map((each) => window.shelf.save(each))),
      [1, 2, 3, 4, 5].map((n) => job('a', `Saw ${n}`)),
    )
    expect(await read(page, 'a')).toMatchObject({ ok: true, job: { name: 'Saw 5' } })
    expect(await setAside(page)).toEqual([])
  })
})

test.describe('a shelf of the first arrangement', () => {
  test('loses nothing when it is brought to this one: jobs, the pile set aside, and which was open last', async ({
    page,
  }) => {
    await openPage(page)
    const kept = writeJob(job('a', 'Saw'))
    await page.evaluate(
      (records) =>
        new Promise<void>((resolve, reject) => {
          const opening = indexedDB.open('borewall', 1)
          // As the first Borewall arranged its stores.
          opening.onupgradeneeded = () => {
            opening.result.createObjectStore('jobs', { keyPath: 'id' })
            opening.result.createObjectStore('aside', { autoIncrement: true })
            opening.result.createObjectStore('marks')
          }
          opening.onerror = () => reject(opening.error)
          opening.onsuccess = () => {
            const writing = opening.result.transaction(['jobs', 'aside', 'marks'], 'readwrite')
            for (const each of records) writing.objectStore('jobs').put(each)
            const aside = { reason: 'unreadable', setAsideAt: '2024-01-01T00:00:00.000Z', record: records[1] }
            writing.objectStore('aside').add(aside)
            writing.objectStore('marks').put('a', 'last-open')
            writing.oncomplete = () => {
              opening.result.close()
              resolve()
            }
            writing.onabort = () => reject(writing.error)
          }
        }),
      [record('a', kept), record('b', 'spoilt')],
    )
    await openShelf(page)
    expect(await stored(page, 'a')).toEqual(record('a', kept))
    expect(await stored(page, 'b')).toEqual(record('b', 'spoilt'))
    expect(await setAside(page)).toMatchObject([{ reason: 'unreadable', name: 'b', text: 'spoilt' }])
    expect(await page.evaluate(() => window.shelf.lastOpen())).toBe('a')
    expect(await storeNames(page)).toEqual(storesNow)
    expect(await read(page, 'a')).toEqual({
      ok: true,
      job: job('a', 'Saw'),
      changedAt: '2024-01-01T00:00:00.000Z',
    })
    await save(page, job('a', 'Saw again'))
    expect(await read(page, 'a')).toMatchObject({ ok: true, job: { name: 'Saw again' } })
    expect(await setAside(page)).toHaveLength(1)
  })

  test('of the second arrangement loses nothing either: jobs, versions, specs, photographs and the rest', async ({
    page,
  }) => {
    await openPage(page)
    const holds = {
      jobs: record('a', writeJob(job('a', 'Saw'))),
      entries: { id: 'a', changedAt: '2024-01-01T00:00:00.000Z' },
      history: { id: 'a', kept: 'as it was' },
      specs: { id: 'spec', name: 'Saws' },
      photos: { hash: 'ab', type: 'image/jpeg', bytes: 'bytes' },
    }
    await page.evaluate(
      (records) =>
        new Promise<void>((resolve, reject) => {
          const opening = indexedDB.open('borewall', 2)
          opening.onupgradeneeded = () => {
            const database = opening.result
            // As the Borewall before scans arranged its stores.
            database.createObjectStore('jobs', { keyPath: 'id' })
            database.createObjectStore('aside', { autoIncrement: true })
            database.createObjectStore('marks')
            database.createObjectStore('entries', { keyPath: 'id' }).createIndex('by-changed', 'changedAt')
            database.createObjectStore('versions', { autoIncrement: true }).createIndex('by-job', 'jobId')
            database.createObjectStore('history', { keyPath: 'id' })
            database.createObjectStore('specs', { keyPath: 'id' })
            database.createObjectStore('photos', { keyPath: 'hash' })
          }
          opening.onerror = () => reject(opening.error)
          opening.onsuccess = () => {
            const database = opening.result
            const writing = database.transaction([...database.objectStoreNames], 'readwrite')
            for (const [store, value] of Object.entries(records)) writing.objectStore(store).put(value)
            writing.objectStore('marks').put('a', 'last-open')
            writing.objectStore('versions').add({ jobId: 'a', text: 'earlier' })
            writing.objectStore('aside').add({ reason: 'unreadable', setAsideAt: '', record: {} })
            writing.oncomplete = () => {
              database.close()
              resolve()
            }
            writing.onabort = () => reject(writing.error)
          }
        }),
      holds,
    )
    await openShelf(page)
    expect(await page.evaluate(() => window.shelf.lastOpen())).toBe('a')
    expect(await storeNames(page)).toEqual(storesNow)
    const all = await page.evaluate(
      () =>
        new Promise<Record<string, unknown[]>>((resolve, reject) => {
          const opening = indexedDB.open('borewall')
          opening.onerror = () => reject(opening.error)
          opening.onsuccess = () => {
            const database = opening.result
            const names = [...database.objectStoreNames]
            const reading = database.transaction(names)
            const found: Record<string, unknown[]> = {}
            for (const name of names) {
              const asked = reading.objectStore(name).getAll()
              asked.onsuccess = () => {
                found[name] = asked.result
              }
            }
            reading.oncomplete = () => {
              database.close()
              resolve(found)
            }
          }
        }),
    )
    expect(all).toEqual({
      ...Object.fromEntries(Object.entries(holds).map(([store, value]) => [store, [value]])),
      marks: ['a'],
      versions: [{ jobId: 'a', text: 'earlier' }],
      aside: [{ reason: 'unreadable', setAsideAt: '', record: {} }],
      scans: [],
    })
  })

  test('has the same stores as a shelf that is opened for the first time', async ({ page }) => {
    await openShelf(page)
    expect(await storeNames(page)).toEqual(storesNow)
  })
})

test('a scan is kept under the hash of its record, goes with a file as far as there is room, and is missed when it is damaged', async ({
  page,
}) => {
  await openShelf(page)
  const scanned = (hash: string): Job => {
    const base = job('a', 'Saw')
    const [bore] = base.bores
    if (!bore) throw new Error('A job has a bore')
    const scans = [{ id: 'scan', hash, levels: 1, angles: 3, values: 2 }]
    return { ...base, bores: [{ ...bore, scans }] }
  }
  const hash = await page.evaluate(() =>
    window.shelf.scans.put({
      depthsMm: [4, 8.5],
      anglesDegrees: [0, 120, 240],
      radiiUm: Float64Array.of(1, -2.5, Number.NaN, 0, 30012.345, 7),
    }),
  )
  // As tests/unit/job/scan-bytes.test.ts has it from another implementation of SHA-256.
  expect(hash).toBe('dad0cd923d10e51bbf6d5edc8b3039345fa42e13eb6847cfa7bc90407b7a0898')
  const radii = await page.evaluate(
    async (key) => [...((await window.shelf.scans.read(key))?.radiiUm ?? [])],
    hash,
  )
  expect(radii).toEqual([1, -2.5, Number.NaN, 0, 30012.345, 7])
  const [here, missing] = [scanned(hash), scanned('00'.repeat(32))]
  const file = await page.evaluate((each) => window.shelf.scans.withScans(each), here)
  expect(file).toMatchObject({ notHere: [], noRoom: [], job: { scans: [{ hash }] } })
  expect(await page.evaluate((each) => window.shelf.scans.withScans(each), missing)).toEqual({
    job: missing,
    notHere: ['00'.repeat(32)],
    noRoom: [],
  })
  const [embedded] = file.job.scans ?? []
  if (!embedded) throw new Error('Expected the scan in the file')
  const damaged = { ...embedded, base64: embedded.base64.replace(/.$/, '0') }
  const takeIn = (scans: readonly (typeof embedded)[]) =>
    page.evaluate((each) => window.shelf.scans.takeIn(each), scans)
  expect(await takeIn([embedded, damaged, { ...embedded, hash: '11'.repeat(32) }])).toEqual([
    hash,
    '11'.repeat(32),
  ])
  expect(await page.evaluate((key) => window.shelf.scans.read(key), '11'.repeat(32))).toBeUndefined()
})

test.describe('a record that cannot be read', () => {
  test('is set aside untouched, offered as a file, and no longer listed', async ({ page }) => {
    await openShelf(page)
    await plant(page, record('a', '{"format": "borewall-job", cut off'))
    expect(await read(page, 'a')).toMatchObject({ ok: false, problems: [{ code: 'not-json' }] })
    expect(await list(page)).toEqual([])
    expect(await setAside(page)).toMatchObject([
      { reason: 'unreadable', name: 'a', text: '{"format": "borewall-job", cut off' },
    ])
    expect(await stored(page, 'a')).toBeUndefined()
  })

  test('is set aside whole when it is of a shape nobody knows', async ({ page }) => {
    await openShelf(page)
    await save(page, job('b', 'Pump'))
    await plant(page, { id: 'a', odd: [1, 2, 3] })
    expect(await list(page)).toMatchObject([{ id: 'b' }])
    const [aside] = await setAside(page)
    expect(JSON.parse(aside?.text ?? '')).toEqual({ id: 'a', odd: [1, 2, 3] })
    await openShelf(page)
    expect(await setAside(page)).toHaveLength(1)
  })

  test('is set aside before a job of the same id is saved in its place', async ({ page }) => {
    await openShelf(page)
    await plant(page, record('a', 'spoilt'))
    await save(page, job('a', 'Saw'))
    expect(await read(page, 'a')).toMatchObject({ ok: true })
    expect(await setAside(page)).toMatchObject([{ reason: 'unreadable', text: 'spoilt' }])
  })

  test('goes when the user has it', async ({ page }) => {
    await openShelf(page)
    await plant(page, record('a', 'spoilt'))
    await read(page, 'a')
    const [aside] = await setAside(page)
    await page.evaluate((key) => window.shelf.discardSetAside(key), aside?.key ?? -1)
    expect(await setAside(page)).toEqual([])
  })
})

test.describe('what this page did not write', () => {
  test('stays as it is when a newer Borewall wrote it: not read, not set aside, not saved over', async ({
    page,
  }) => {
    await openShelf(page)
    const text = JSON.stringify({ format: 'borewall-job', formatVersion: 9, id: 'a', wonders: [] })
    const newer = { ...record('a', text), formatVersion: 9, wonders: true }
    await plant(page, newer)
    expect(await read(page, 'a')).toEqual({
      ok: false,
      problems: [{ code: 'newer-version', path: 'formatVersion', found: 9, supported: 2 }],
    })
    expect(await savingEnds(page, job('a', 'Saw'))).toBe('newer')
    expect(await stored(page, 'a')).toEqual(newer)
    expect(await list(page)).toMatchObject([{ id: 'a' }])
    expect(await setAside(page)).toEqual([])
  })

  test('is kept aside when another tab had saved the same job in between', async ({ page, context }) => {
    await openShelf(page)
    await save(page, job('a', 'Mine'))
    const other = await context.newPage()
    await openShelf(other, 100)
    await read(other, 'a')
    await save(other, job('a', 'Theirs'))
    await save(page, job('a', 'Mine again'))
    await save(page, job('a', 'Mine once more'))
    expect(await read(page, 'a')).toMatchObject({ ok: true, job: { name: 'Mine once more' } })
    const aside = await setAside(page)
    expect(aside).toMatchObject([{ reason: 'replaced', name: 'Theirs' }])
    expect(JSON.parse(aside[0]?.text ?? '')).toEqual(job('a', 'Theirs'))
  })
})

test.describe('what is kept with a job', () => {
  const saveWith = (page: Page, saved: Job, options: { history?: string; withoutPen?: boolean }) =>
    page.evaluate(
      ([each, how]) =>
        window.shelf.save(each, how).then(
          () => 'saved',
          (error: { code?: string }) => error.code ?? String(error),
        ),
      [saved, options] as const,
    )
  const versions = (page: Page) => page.evaluate(() => window.shelf.versions('a'))
  const later = (page: Page, minutes: number) =>
    page.evaluate((count) => {
      window.seconds += count * 60
    }, minutes)

  test('is what can be undone of it, and it goes where a job is saved without', async ({ page }) => {
    await openShelf(page)
    await saveWith(page, job('a', 'Saw'), { history: '{"past":[]}' })
    await openShelf(page)
    expect(await read(page, 'a')).toMatchObject({ job: job('a', 'Saw'), history: '{"past":[]}' })
    await save(page, job('a', 'Saw again'))
    const again = await read(page, 'a')
    expect(again).toMatchObject({ job: job('a', 'Saw again') })
    expect(again).not.toHaveProperty('history')
  })

  test('are its earlier versions: as it stood when this page began, then every ten minutes, and when asked for', async ({
    page,
  }) => {
    await openShelf(page)
    await save(page, job('a', 'First'))
    await save(page, job('a', 'Second'))
    expect(await versions(page)).toMatchObject([])
    await openShelf(page, 1000)
    await read(page, 'a')
    for (const name of ['Third', 'Fourth', 'Fifth']) await save(page, job('a', name))
    expect(await versions(page)).toMatchObject([{ why: 'session', read: { job: { name: 'Second' } } }])
    await later(page, 10)
    await save(page, job('a', 'Sixth'))
    await save(page, job('a', 'Seventh'))
    await page.evaluate(() => window.shelf.keepVersion('a', 'restore'))
    await page.evaluate(() => window.shelf.keepVersion('a', 'restore'))
    expect(await versions(page)).toMatchObject([
      { why: 'restore', read: { job: { name: 'Seventh' } } },
      { why: 'interval', read: { job: { name: 'Fifth' } } },
      { why: 'session', read: { job: { name: 'Second' } } },
    ])
    await page.evaluate(() => window.shelf.remove('a'))
    expect(await versions(page)).toEqual([])
  })

  test('stays when a tab saves that has lost the job to another: its state is set aside, once it differs', async ({
    page,
    context,
  }) => {
    await openShelf(page)
    await save(page, job('a', 'Mine'))
    const other = await context.newPage()
    await openShelf(other, 100)
    await read(other, 'a')
    expect(await saveWith(page, job('a', 'Mine'), { withoutPen: true })).toBe('saved')
    expect(await setAside(page)).toEqual([])
    await save(other, job('a', 'Theirs'))
    expect(await saveWith(page, job('a', 'Mine, later'), { withoutPen: true })).toBe('overtaken')
    expect(await read(page, 'a')).toMatchObject({ ok: true, job: { name: 'Theirs' } })
    expect(await setAside(page)).toMatchObject([{ reason: 'overtaken', name: 'Mine, later' }])
  })

  test('is missed when it is gone, until it is to be kept again', async ({ page }) => {
    const standing = () => page.evaluate(() => window.shelf.standing('a'))
    await openShelf(page)
    expect(await standing()).toBe('unknown')
    await save(page, job('a', 'Saw'))
    expect(await standing()).toBe('same')
    await plant(page, record('a', 'other'))
    expect(await standing()).toBe('changed')
    await page.evaluate(async () => {
      const done = await new Promise<string>((resolve) => {
        const deleting = indexedDB.deleteDatabase('borewall')
        deleting.onsuccess = () => resolve('deleted')
        deleting.onerror = () => resolve('failed')
      })
      if (done !== 'deleted') throw new Error(done)
    })
    expect(await standing()).toBe('gone')
    expect(await savingEnds(page, job('a', 'Saw, later'))).toBe('gone')
    await page.evaluate(() => window.shelf.keepAgain('a'))
    expect(await savingEnds(page, job('a', 'Saw, later'))).toBe('saved')
    expect(await standing()).toBe('same')
  })
})

test.describe('a shelf that fails', () => {
  test('says that the disk is full, keeps what was saved before, and can still be read', async ({ page }) => {
    await openShelf(page)
    await save(page, job('a', 'Before'))
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError')
      }
    })
    expect(await savingEnds(page, job('a', 'After'))).toBe('quota')
    expect(await read(page, 'a')).toMatchObject({ ok: true, job: { name: 'Before' } })
  })

  test('says so too when the browser itself grants no room, and saves once there is some', async ({
    page,
  }) => {
    await openPage(page)
    const session = await page.context().newCDPSession(page)
    const { origin } = new URL(address)
    // Before the first write: the browser asks for the room left only now and then.
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 })
    await openShelf(page)
    expect(await savingEnds(page, job('a', 'Saw'))).toBe('quota')
    expect(await read(page, 'a')).toBeUndefined()
    await session.send('Storage.overrideQuotaForOrigin', { origin })
    expect(await savingEnds(page, job('a', 'Saw'))).toBe('saved')
  })

  test('says that what was read back is not what was written', async ({ page }) => {
    await openShelf(page)
    await page.evaluate(() => {
      const put = IDBObjectStore.prototype.put
      IDBObjectStore.prototype.put = function (value, key) {
        return put.call(this, this.name === 'jobs' ? { ...value, text: `${value.text} ` } : value, key)
      }
    })
    expect(await savingEnds(page, job('a', 'Saw'))).toBe('mismatch')
  })

  test('says that the browser keeps nothing, where there is no database or it may not be used', async ({
    page,
  }) => {
    await openPage(page)
    const opening = () =>
      page.evaluate(() =>
        window.shelfModule.openShelf({ now: () => new Date(0) }).then(
          () => 'opened',
          (error: { code?: string }) => error.code ?? String(error),
        ),
      )
    await page.evaluate(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('not here', 'SecurityError')
      }
    })
    expect(await opening()).toBe('unavailable')
    await page.evaluate(() => Object.defineProperty(window, 'indexedDB', { value: undefined }))
    expect(await opening()).toBe('unavailable')
  })

  test('says that an older tab is in the way', async ({ page }) => {
    await openPage(page)
    const code = await page.evaluate(() => {
      const open = IDBFactory.prototype.open
      IDBFactory.prototype.open = function (name, version) {
        const request = open.call(this, name, version)
        queueMicrotask(() =>
          request.dispatchEvent(new IDBVersionChangeEvent('blocked', { oldVersion: 1, newVersion: 2 })),
        )
        return request
      }
      return window.shelfModule.openShelf({ now: () => new Date(0) }).then(
        () => 'opened',
        (error: { code?: string }) => error.code ?? String(error),
      )
    })
    expect(code).toBe('blocked')
  })

  test('makes way for a newer Borewall in another tab, and then says that it is newer', async ({
    page,
    context,
  }) => {
    await openShelf(page)
    await save(page, job('a', 'Saw'))
    const newer = await context.newPage()
    await newer.goto(address)
    const upgraded = await newer.evaluate(
      () =>
        new Promise<string>((resolve) => {
          const opening = indexedDB.open('borewall', 99)
          opening.onblocked = () => resolve('blocked')
          opening.onsuccess = () => resolve('open')
        }),
    )
    expect(upgraded).toBe('open')
    expect(await savingEnds(page, job('a', 'Saw again'))).toBe('newer-shelf')
  })

  test('works on after its database was closed', async ({ page }) => {
    await openShelf(page)
    await save(page, job('a', 'Saw'))
    await page.evaluate(() => window.shelf.close())
    expect(await savingEnds(page, job('a', 'Saw again'))).toBe('saved')
    expect(await setAside(page)).toEqual([])
  })
})
