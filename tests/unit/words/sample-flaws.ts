import type { Flaw, ProblemCode } from '../../../src/core/problem'

type Samples = { readonly [Code in ProblemCode]: readonly [Extract<Flaw, { readonly code: Code }>, string] }

/** A flaw of each code, and what English says to it. */
export const sampleFlaws: Samples = {
  'file-too-large': [
    { code: 'file-too-large', bytes: 12_000_000, mostBytes: 8_000_000 },
    'The file has 12.0 MB; a job has 8.0 MB at most. Is it the right file?',
  ],
  'file-empty': [{ code: 'file-empty' }, 'The file is empty. Is there a copy of it?'],
  'saved-as-utf-16': [
    { code: 'saved-as-utf-16' },
    'The file is saved as UTF-16. Open it in a text editor and save it as UTF-8.',
  ],
  'not-utf-8': [
    { code: 'not-utf-8' },
    'The file is not plain text in UTF-8: another kind of file, damaged, or saved by an editor in another encoding. Save it as UTF-8.',
  ],
  'other-kind-of-file': [
    { code: 'other-kind-of-file', kind: 'pdf' },
    'This is a PDF, not a job file. A job file is the text that Borewall writes when a job is saved.',
  ],
  'not-json': [
    { code: 'not-json', expected: 'colon', found: '54' },
    'Between a field and its value there must be a colon; there is “54”.',
  ],
  'too-deep': [
    { code: 'too-deep', most: 32 },
    'Lists and objects are nested deeper than 32 levels, which no job needs.',
  ],
  'duplicate-key': [
    { code: 'duplicate-key', key: 'depthMm' },
    'The field “depthMm” stands here twice. Keep one of them.',
  ],
  'not-a-job': [
    { code: 'not-a-job' },
    'This is JSON, but not a Borewall job: its format should be "borewall-job".',
  ],
  'newer-version': [
    { code: 'newer-version', found: 3, supported: 1 },
    'The file was written by a newer Borewall (format version 3; this one reads up to 1). It is left as it is; use the newer Borewall.',
  ],
  'unknown-version': [
    { code: 'unknown-version', found: '"one"', supported: 1 },
    'The format version is "one"; it should be a whole number from 1 to 1.',
  ],
  missing: [{ code: 'missing', field: 'settingSizeMm' }, 'settingSizeMm is missing.'],
  'unknown-key': [
    { code: 'unknown-key', key: 'depth', nearest: 'depthMm' },
    'There is no field “depth” here. Is “depthMm” meant?',
  ],
  'wrong-kind': [
    { code: 'wrong-kind', expected: 'number', found: '"54,0"' },
    'Here a number without quotation marks, with a decimal point should stand, not "54,0".',
  ],
  'not-one-of': [
    { code: 'not-one-of', options: ['ring', 'micrometer'], found: '"disc"' },
    'Here one of these should stand: “ring”, “micrometer”; there is "disc".',
  ],
  'out-of-range': [
    { code: 'out-of-range', found: 180, least: 0, most: 180, mostExcluded: true, unit: '°' },
    '180 is out of range: from 0 to below 180 °.',
  ],
  'text-blank': [{ code: 'text-blank' }, 'This text must not be blank.'],
  'text-too-long': [
    { code: 'text-too-long', length: 200, most: 120 },
    'This text has 200 characters; 120 is the most.',
  ],
  'control-character': [
    { code: 'control-character' },
    'There is an invisible control character in this text. Type it anew.',
  ],
  'not-a-date': [
    { code: 'not-a-date', found: '"31.5.2024"' },
    '"31.5.2024" is not a date; write year, month and day as in 2024-05-31.',
  ],
  'not-a-hash': [
    { code: 'not-a-hash', found: '"photo.jpg"' },
    '"photo.jpg" names no photograph; its content hash has 64 digits from 0 to 9 and a to f.',
  ],
  'not-base64': [
    { code: 'not-base64' },
    'The content of this photograph is damaged: it is not written in base64.',
  ],
  'list-too-short': [{ code: 'list-too-short', least: 1 }, 'This list needs at least one entry.'],
  'list-too-long': [
    { code: 'list-too-long', length: 70, most: 64 },
    'This list has 70 entries; 64 is the most.',
  ],
  'duplicate-id': [{ code: 'duplicate-id', id: 'b1' }, 'The id “b1” is used twice. Give each its own.'],
  'duplicate-name': [{ code: 'duplicate-name', name: 'A' }, 'The name “A” is used twice. Give each its own.'],
  'duplicate-value': [
    { code: 'duplicate-value', value: 8, unit: 'mm' },
    '8 mm stands here twice. Keep one of them.',
  ],
  'unknown-reference': [
    { code: 'unknown-reference', list: 'gauges', found: 'g9', known: ['g1', 'g2'] },
    '“g9” names no gauge of this job; there is “g1”, “g2”.',
  ],
  'low-above-high': [
    { code: 'low-above-high', lowField: 'newMinMm', low: 54.1, highField: 'newMaxMm', high: 54 },
    'newMinMm (54.1) is above newMaxMm (54). Are they swapped?',
  ],
  'port-all-round': [
    { code: 'port-all-round' },
    'This port would go all round the bore. A band that nobody could measure is entered as a belt.',
  ],
  'deeper-than-bore': [
    { code: 'deeper-than-bore', depthMm: 90, lengthMm: 88 },
    '90 mm is deeper than the bore is long (88 mm).',
  ],
  'duplicate-station': [
    { code: 'duplicate-station', depthMm: 8, axisDegrees: 0 },
    'There is a reading at 8 mm, 0° already. Put repeats into one list.',
  ],
  'off-level': [
    { code: 'off-level', depthMm: 9, levelsMm: [8, 16] },
    '9 mm is none of the levels of this survey (8, 16 mm).',
  ],
  'off-axis': [
    { code: 'off-axis', axisDegrees: 30, axesDegrees: [] },
    '30° is none of the axes of this survey; it lists none.',
  ],
  'check-values': [
    { code: 'check-values', found: 'both' },
    'This check of a gauge has both sizesMm and dialUm; it should have one of them.',
  ],
  'unreachable-station': [
    { code: 'unreachable-station', found: 'read', depthMm: 8, axisDegrees: 90 },
    '8 mm, 90° is named as out of reach, but there is a reading. Take one of them out.',
  ],
  'study-values': [
    { code: 'study-values', found: 'none' },
    'A reading of this crossed study has no values; it should have sizesMm or dialUm.',
  ],
  'reading-values': [
    { code: 'reading-values', found: 'dialUm', expected: 'sizesMm' },
    'This reading has dialUm; its set-up writes sizes down, so it should have sizesMm.',
  ],
  'entry-does-not-fit': [
    { code: 'entry-does-not-fit', entry: 'reverse' },
    'The reverse method takes a dial gauge with two contacts and a micrometer to measure over them. Choose these, or another way of writing readings down.',
  ],
  'read-only': [
    { code: 'read-only' },
    'This job is being written in another tab. Take it over at the top of this page, then change it here.',
  ],
  'more-problems': [{ code: 'more-problems', count: 4 }, 'There are 4 more problems.'],
}
