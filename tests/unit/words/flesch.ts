import { syllable } from 'syllable'

/**
 * Flesch reading ease, 206.835 − 1.015 · words per sentence − 84.6 · syllables per word (R. Flesch, "A new readability
 * yardstick", Journal of Applied Psychology 32, 1948, 221–233): 60 to 70 is plain English, 90 and more very easy.
 * Figures and abbreviations are words of one syllable, as in his "How to Write Plain English" (1979; from memory). A
 * full stop alone ends a sentence, where he lets a colon or a semicolon do so too.
 */
export function fleschReadingEase(texts: readonly string[]): number {
  const sentences = texts.flatMap((text) => text.split(/[.!?](?:\s|$)/)).filter((part) => /\p{L}/u.test(part))
  const words = sentences
    .flatMap((sentence) => sentence.split(/\s+/))
    .filter((word) => /[\p{L}\d%]/u.test(word))
  const syllables = words.reduce((sum, word) => sum + syllablesOf(word), 0)
  return 206.835 - 1.015 * (words.length / sentences.length) - 84.6 * (syllables / words.length)
}

function syllablesOf(word: string): number {
  const bare = word.replace(/^[^\p{L}]+|[^\p{L}]+$/gu, '')
  return /\d/.test(word) || ['', 'mm', 'µm', 'h'].includes(bare) ? 1 : Math.max(1, syllable(bare))
}
