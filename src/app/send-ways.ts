import { download } from './download'

/** What is sent: the page of findings, and a picture where there is one. */
export interface Parcel {
  readonly title: string
  readonly text: string
  readonly textFile: File
  readonly picture: File | undefined
}

export const ways = ['share', 'share-text', 'copy-text', 'copy-picture', 'save-text', 'save-picture'] as const
export type Way = (typeof ways)[number]

/** What a browser may have for it; each is missing somewhere. */
export interface SendingBrowser {
  share?(data: ShareData): Promise<void>
  canShare?(data: ShareData): boolean
  readonly clipboard?: {
    writeText?(text: string): Promise<void>
    write?(items: ClipboardItem[]): Promise<void>
  }
}

export type Sent =
  | { readonly kind: 'done' }
  /** The user closed the system's share sheet. */
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed' }

/** The ways in which this browser can send a parcel. Saving as a file is always one. */
export function waysFor(browser: SendingBrowser, parcel: Parcel): readonly Way[] {
  const { picture } = parcel
  const takes = (data: ShareData) => browser.share !== undefined && browser.canShare?.(data) === true
  const sharesBoth = takes(sharedData('share', parcel))
  const possible: Record<Way, boolean> = {
    share: picture !== undefined && sharesBoth,
    'share-text': !(picture !== undefined && sharesBoth) && takes(sharedData('share-text', parcel)),
    'copy-text': browser.clipboard?.writeText !== undefined,
    'copy-picture':
      picture !== undefined && browser.clipboard?.write !== undefined && 'ClipboardItem' in globalThis,
    'save-text': true,
    'save-picture': picture !== undefined,
  }
  return ways.filter((way) => possible[way])
}

/** Sends a parcel one way. What the browser refuses is a failure to be told; closing its sheet is not. */
export async function sendBy(way: Way, browser: SendingBrowser, parcel: Parcel): Promise<Sent> {
  try {
    await handOver(way, browser, parcel)
    return { kind: 'done' }
  } catch (error) {
    // Share and clipboard refuse with one of these two; anything else is our own mistake.
    if (!(error instanceof DOMException || error instanceof TypeError)) throw error
    return error.name === 'AbortError' ? { kind: 'cancelled' } : { kind: 'failed' }
  }
}

async function handOver(way: Way, browser: SendingBrowser, parcel: Parcel): Promise<void> {
  const { text, textFile, picture } = parcel
  switch (way) {
    case 'share':
    case 'share-text':
      return browser.share?.(sharedData(way, parcel))
    case 'copy-text':
      return browser.clipboard?.writeText?.(text)
    case 'copy-picture':
      return picture && browser.clipboard?.write?.([new ClipboardItem({ [picture.type]: picture })])
    case 'save-text':
      return download(textFile)
    case 'save-picture':
      return picture && download(picture)
  }
}

function sharedData(way: 'share' | 'share-text', { title, text, picture }: Parcel): ShareData {
  return { title, text, ...(way === 'share' && picture ? { files: [picture] } : {}) }
}
