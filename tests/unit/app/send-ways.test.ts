import { afterEach, describe, expect, it, vi } from 'vitest'
import { type Parcel, type SendingBrowser, sendBy, ways, waysFor } from '../../../src/app/send-ways'

afterEach(() => vi.unstubAllGlobals())

const picture = new File(['png'], 'saw.png', { type: 'image/png' })
const parcel: Parcel = {
  title: 'Saw',
  text: 'Inside.',
  textFile: new File(['Inside.'], 'saw.txt', { type: 'text/plain' }),
  picture,
}
const withoutPicture: Parcel = { ...parcel, picture: undefined }

function refusing(error: unknown): SendingBrowser {
  const refuse = () => Promise.reject(error)
  return { share: refuse, canShare: () => true, clipboard: { writeText: refuse, write: refuse } }
}

class StubbedItem {
  readonly parts: Record<string, Blob>
  constructor(parts: Record<string, Blob>) {
    this.parts = parts
  }
}

describe('the ways to send', () => {
  it('are files alone in a browser that has neither share sheet nor clipboard', () => {
    expect(waysFor({}, parcel)).toEqual(['save-text', 'save-picture'])
    expect(waysFor({}, withoutPicture)).toEqual(['save-text'])
  })

  it('hold one button to share: for both where files can be shared, else for the text', () => {
    const share = () => Promise.resolve()
    expect(waysFor({ share, canShare: () => true }, parcel)).toEqual(['share', 'save-text', 'save-picture'])
    const textOnly = { share, canShare: ({ files }: ShareData) => files === undefined }
    expect(waysFor(textOnly, parcel)).toEqual(['share-text', 'save-text', 'save-picture'])
    expect(waysFor({ share, canShare: () => true }, withoutPicture)).toEqual(['share-text', 'save-text'])
    expect(waysFor({ share, canShare: () => false }, parcel)).not.toContain('share-text')
  })

  it('are all but sharing the text alone where the browser has everything', () => {
    vi.stubGlobal('ClipboardItem', StubbedItem)
    const all = refusing(undefined)
    expect(waysFor(all, parcel)).toEqual(ways.filter((way) => way !== 'share-text'))
  })
})

describe('sending', () => {
  it('shares title, text and picture, and copies text and picture as they are', async () => {
    vi.stubGlobal('ClipboardItem', StubbedItem)
    const taken: unknown[] = []
    const take = (what: unknown) => {
      taken.push(what)
      return Promise.resolve()
    }
    const browser = { share: take, canShare: () => true, clipboard: { writeText: take, write: take } }
    for (const way of ['share', 'share-text', 'copy-text', 'copy-picture'] as const) {
      expect(await sendBy(way, browser, parcel)).toEqual({ kind: 'done' })
    }
    expect(taken).toEqual([
      { title: 'Saw', text: 'Inside.', files: [picture] },
      { title: 'Saw', text: 'Inside.' },
      'Inside.',
      [new StubbedItem({ 'image/png': picture })],
    ])
  })

  it('counts a share sheet that was closed as no failure', async () => {
    const browser = refusing(new DOMException('closed', 'AbortError'))
    expect(await sendBy('share', browser, parcel)).toEqual({ kind: 'cancelled' })
  })

  it.each([
    ['a refused permission', new DOMException('no', 'NotAllowedError')],
    ['data that the system does not take', new TypeError('no')],
  ])('reports %s as a failure', async (_, error) => {
    expect(await sendBy('share', refusing(error), parcel)).toEqual({ kind: 'failed' })
    expect(await sendBy('copy-text', refusing(error), parcel)).toEqual({ kind: 'failed' })
  })

  it('does not swallow a mistake of our own', async () => {
    await expect(sendBy('share', refusing(new RangeError('ours')), parcel)).rejects.toThrow('ours')
  })
})
