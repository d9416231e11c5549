import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { type StandalonePage, standalonePage } from '../../../src/app/standalone-page'
import { element } from '../../../src/formats/html-text'

const plain: StandalonePage = {
  language: 'en',
  title: 'A saw',
  generator: 'Borewall',
  style: 'p{color:#000}',
  body: [element('p', {}, 'text')],
  kept: {},
  script: "alert('Hello, world.');",
}

describe('a page that needs nothing but itself', () => {
  it('lets run the one script by the digest that the standard gives for it', async () => {
    // Content Security Policy Level 3, W3C, 2.3.1 and its example for hash sources.
    expect(await standalonePage(plain)).toContain(
      "script-src 'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='",
    )
  })

  it('allows one script and one style sheet as they stand in it, and no address but data', async () => {
    const page = await standalonePage({
      ...plain,
      script: 'const é = "ü ≥ \u{1f527}"',
      style: 'p::before{content:"→"}',
    })
    const digest = (text: string | undefined) =>
      `'sha256-${createHash('sha256')
        .update(text ?? '', 'utf8')
        .digest('base64')}'`
    const policy = page.match(/http-equiv="Content-Security-Policy" content="([^"]*)"/)?.[1]
    const scripts = [...page.matchAll(/<script>([\s\S]*?)<\/script>/g)]
    const styles = [...page.matchAll(/<style>([\s\S]*?)<\/style>/g)]
    expect(scripts).toHaveLength(1)
    expect(styles).toHaveLength(1)
    expect(policy).toBe(
      `default-src 'none'; script-src ${digest(scripts[0]?.[1])}; style-src ${digest(styles[0]?.[1])}; ` +
        "font-src data:; img-src data:; base-uri 'none'; form-action 'none'",
    )
    expect(page).not.toMatch(/\b(?:https?|wss?|ftp):|\bsrc=|@import|url\(/)
    expect([...page.matchAll(/\bhref="([^"]*)"/g)].map(([, address]) => address)).toEqual(['data:,'])
  })

  it('takes title, language and kept texts as text', async () => {
    const page = await standalonePage({
      ...plain,
      title: '</title><script>1</script>',
      language: '"><script>',
      kept: { held: '</template><script>2</script>' },
    })
    expect(page.match(/<script/g)).toHaveLength(1)
    expect(page.match(/<\/template>/g)).toHaveLength(1)
    expect(page).toContain('<title>&lt;/title&gt;&lt;script&gt;1&lt;/script&gt;</title>')
    expect(page).toContain('&lt;/template&gt;&lt;script&gt;2&lt;/script&gt;</template>')
  })

  it('is not made with a script or a style sheet that would end early or be read as another', async () => {
    for (const text of ['"</script>"', '"</SCRIPT "', '"<!--"', 'a\r\nb', '</style>']) {
      await expect(standalonePage({ ...plain, script: text }), text).rejects.toThrow(RangeError)
      await expect(standalonePage({ ...plain, style: text }), text).rejects.toThrow(RangeError)
    }
  })
})
