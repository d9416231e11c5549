import type {
  FileKind,
  Flaw,
  JsonExpectation,
  ProblemCode,
  ReferredList,
  ValueKind,
} from '../../core/problem'

type FlawOf<Code extends ProblemCode> = Extract<Flaw, { readonly code: Code }>

const kinds: Record<FileKind, string> = {
  image: 'a picture',
  pdf: 'a PDF',
  archive: 'an archive (ZIP or the like)',
  'web-page': 'a web page',
  table: 'a table (CSV)',
}

const values: Record<ValueKind, string> = {
  text: 'a text in quotation marks',
  number: 'a number without quotation marks, with a decimal point',
  'whole-number': 'a whole number without quotation marks',
  'true-or-false': 'true or false',
  list: 'a list in [ ]',
  object: 'an object in { }',
}

const lists: Record<ReferredList, string> = {
  setUps: 'set-up',
  gauges: 'gauge',
  standards: 'standard',
  thermometers: 'thermometer',
  'spec.grades': 'grade',
  bores: 'bore',
  surveys: 'survey',
  scans: 'scan',
}

const expectations: Record<JsonExpectation, string> = {
  value: 'Here a value should stand',
  key: 'Here the name of a field in quotation marks should stand',
  colon: 'Between a field and its value there must be a colon',
  'comma-or-end-of-list': 'Here a comma or ] should stand',
  'comma-or-end-of-object': 'Here a comma or } should stand',
  'end-of-text': 'The job ends before this; take out what follows',
  'end-of-string': 'A text is not closed with a quotation mark on its own line',
  escape: 'After \\ only " \\ / b f n r t or u and four hexadecimal digits may stand',
  number: 'This is no number that JSON knows; write it like 54.032 or -3',
  'finite-number': 'JSON has no such value; write a number, or leave the field out if it was not recorded',
  'no-leading-zero':
    'A number may not begin with an extra zero; decimals are written with a point (54.032, not 54,032)',
  'no-trailing-comma': 'After the last entry there must be no comma; take it out',
}

/** What is wrong in a file or a field: what, and how to mend it. The place is printed beside it. */
export const problems = {
  problems: {
    'file-too-large': ({ bytes, mostBytes }) =>
      `The file has ${megabytes(bytes)}; a job has ${megabytes(mostBytes)} at most. Is it the right file?`,
    'file-empty': () => 'The file is empty. Is there a copy of it?',
    'saved-as-utf-16': () => 'The file is saved as UTF-16. Open it in a text editor and save it as UTF-8.',
    'not-utf-8': () =>
      'The file is not plain text in UTF-8: another kind of file, damaged, or saved by an editor in another encoding. Save it as UTF-8.',
    'other-kind-of-file': ({ kind }) =>
      `This is ${kinds[kind]}, not a job file. A job file is the text that Borewall writes when a job is saved.`,
    'not-json': ({ expected, found }) =>
      found === ''
        ? `${expectations[expected]}, but the text ends. Is the file complete?`
        : `${expectations[expected]}; there is ${quoted(found)}.`,
    'too-deep': ({ most }) => `Lists and objects are nested deeper than ${most} levels, which no job needs.`,
    'duplicate-key': ({ key }) => `The field ${quoted(key)} stands here twice. Keep one of them.`,
    'not-a-job': () => 'This is JSON, but not a Borewall job: its format should be "borewall-job".',
    'newer-version': ({ found, supported }) =>
      `The file was written by a newer Borewall (format version ${found}; this one reads up to ${supported}). It is left as it is; use the newer Borewall.`,
    'unknown-version': ({ found, supported }) =>
      `The format version is ${found}; it should be a whole number from 1 to ${supported}.`,
    missing: ({ field }) => `${field} is missing.`,
    'unknown-key': ({ key, nearest }) =>
      nearest === undefined
        ? `There is no field ${quoted(key)} here. Take it out.`
        : `There is no field ${quoted(key)} here. Is ${quoted(nearest)} meant?`,
    'wrong-kind': ({ expected, found }) => `Here ${values[expected]} should stand, not ${found}.`,
    'not-one-of': ({ options, found }) =>
      `Here one of these should stand: ${options.map(quoted).join(', ')}; there is ${found}.`,
    'out-of-range': ({ found, least, most, mostExcluded, unit }) => {
      const to = mostExcluded ? 'to below' : 'to'
      return `${written(found)} is out of range: from ${written(least)} ${to} ${written(most)}${unit ? ` ${unit}` : ''}.`
    },
    'text-blank': () => 'This text must not be blank.',
    'text-too-long': ({ length, most }) =>
      length > 0
        ? `This text has ${length} characters; ${most} is the most.`
        : `This text is longer than ${most} characters.`,
    'control-character': () => 'There is an invisible control character in this text. Type it anew.',
    'not-a-date': ({ found }) => `${found} is not a date; write year, month and day as in 2024-05-31.`,
    'not-a-hash': ({ found }) =>
      `${found} names no photograph; its content hash has 64 digits from 0 to 9 and a to f.`,
    'not-base64': () => 'The content of this photograph is damaged: it is not written in base64.',
    'list-too-short': ({ least }) =>
      least === 1 ? 'This list needs at least one entry.' : `This list needs at least ${least} entries.`,
    'list-too-long': ({ length, most }) =>
      length > 0
        ? `This list has ${length} entries; ${most} is the most.`
        : `This list has more than ${most} entries.`,
    'duplicate-id': ({ id }) => `The id ${quoted(id)} is used twice. Give each its own.`,
    'duplicate-name': ({ name }) => `The name ${quoted(name)} is used twice. Give each its own.`,
    'duplicate-value': ({ value, unit }) => `${written(value)} ${unit} stands here twice. Keep one of them.`,
    'unknown-reference': ({ list, found, known }) =>
      known.length === 0
        ? `${quoted(found)} names no ${lists[list]} of this job; it lists none.`
        : `${quoted(found)} names no ${lists[list]} of this job; there is ${known.map(quoted).join(', ')}.`,
    'low-above-high': ({ lowField, low, highField, high }) =>
      `${lowField} (${written(low)}) is above ${highField} (${written(high)}). Are they swapped?`,
    'port-all-round': () =>
      'This port would go all round the bore. A band that nobody could measure is entered as a belt.',
    'deeper-than-bore': ({ depthMm, lengthMm }) =>
      `${written(depthMm)} mm is deeper than the bore is long (${written(lengthMm)} mm).`,
    'duplicate-station': ({ depthMm, axisDegrees }) =>
      `There is a reading at ${written(depthMm)} mm, ${written(axisDegrees)}° already. Put repeats into one list.`,
    'off-level': ({ depthMm, levelsMm }) =>
      levelsMm.length === 0
        ? `${written(depthMm)} mm is none of the levels of this survey; it lists none.`
        : `${written(depthMm)} mm is none of the levels of this survey (${levelsMm.map(written).join(', ')} mm).`,
    'off-axis': ({ axisDegrees, axesDegrees }) =>
      axesDegrees.length === 0
        ? `${written(axisDegrees)}° is none of the axes of this survey; it lists none.`
        : `${written(axisDegrees)}° is none of the axes of this survey (${axesDegrees.map(written).join(', ')}°).`,
    'unreachable-station': ({ found, depthMm, axisDegrees }) => {
      const place = `${written(depthMm)} mm, ${written(axisDegrees)}°`
      return found === 'twice'
        ? `${place} is named as out of reach twice. Keep one of them.`
        : `${place} is named as out of reach, but there is a reading. Take one of them out.`
    },
    'reading-values': ({ found, expected }) => {
      const should = `its set-up writes ${expected === 'sizesMm' ? 'sizes' : 'dial readings'} down, so it should have ${expected}`
      if (found === 'none') return `This reading has no values; ${should}.`
      if (found === 'both') return `This reading has both sizesMm and dialUm; ${should} alone.`
      return `This reading has ${found}; ${should}.`
    },
    'check-values': ({ found }) =>
      found === 'none'
        ? 'This check of a gauge has no readings; it should have sizesMm or dialUm.'
        : 'This check of a gauge has both sizesMm and dialUm; it should have one of them.',
    'study-values': ({ found }) =>
      found === 'none'
        ? 'A reading of this crossed study has no values; it should have sizesMm or dialUm.'
        : 'This crossed study has both sizesMm and dialUm; it should have one of them throughout.',
    'entry-does-not-fit': ({ entry }) =>
      entry === 'reverse'
        ? 'The reverse method takes a dial gauge with two contacts and a micrometer to measure over them. Choose these, or another way of writing readings down.'
        : 'Only an internal instrument is read directly: telescoping gauge, internal micrometer, three-contact micrometer. Choose one, or another way of writing readings down.',
    'read-only': () =>
      'This job is being written in another tab. Take it over at the top of this page, then change it here.',
    'more-problems': ({ count }) =>
      count === 1 ? 'There is one more problem.' : `There are ${count} more problems.`,
  } satisfies { [Code in ProblemCode]: (flaw: FlawOf<Code>) => string },
  problemPlace: {
    wholeFile: 'the file',
    line: (line: number) => `line ${line}`,
    lineColumn: (line: number, column: number) => `line ${line}, column ${column}`,
    pathAndLine: (path: string, line: string) => `${path} (${line})`,
  },
}

function quoted(text: string): string {
  return `“${text}”`
}

function megabytes(bytes: number): string {
  return bytes < 100_000 ? `${Math.ceil(bytes / 1000)} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`
}

function written(value: number): string {
  return String(value).replace('-', '−')
}
