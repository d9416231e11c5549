import type { FileKind, JsonExpectation, ReferredList, ValueKind } from '../../core/problem'
import type { problems as english } from '../english/problems'
import type { Texts } from '../texts'

const kinds: Record<FileKind, string> = {
  image: 'una imagen',
  pdf: 'un PDF',
  archive: 'un archivo comprimido (ZIP o similar)',
  'web-page': 'una página web',
  table: 'una tabla (CSV)',
}

const values: Record<ValueKind, string> = {
  text: 'un texto entre comillas',
  number: 'un número sin comillas, con punto decimal',
  'whole-number': 'un número entero sin comillas',
  'true-or-false': 'true o false',
  list: 'una lista entre [ ]',
  object: 'un objeto entre { }',
}

/** Each with the word for none of it, which follows its gender. */
const lists: Record<ReferredList, string> = {
  setUps: 'ningún montaje',
  gauges: 'ningún instrumento',
  standards: 'ningún patrón',
  thermometers: 'ningún termómetro',
  'spec.grades': 'ninguna clase',
  bores: 'ningún cilindro',
  surveys: 'ninguna medición',
  scans: 'ningún barrido',
}

const expectations: Record<JsonExpectation, string> = {
  value: 'Aquí debería haber un valor',
  key: 'Aquí debería haber el nombre de un campo entre comillas',
  colon: 'Entre un campo y su valor debe haber dos puntos',
  'comma-or-end-of-list': 'Aquí debería haber una coma o ]',
  'comma-or-end-of-object': 'Aquí debería haber una coma o }',
  'end-of-text': 'El trabajo acaba antes de esto; quite lo que sigue',
  'end-of-string': 'Un texto no se cierra con comillas en su misma línea',
  escape: 'Después de \\ solo puede ir " \\ / b f n r t, o u y cuatro cifras hexadecimales',
  number: 'Esto no es un número que JSON conozca; escríbalo como 54.032 o -3',
  'finite-number': 'JSON no tiene ese valor; escriba un número, o quite el campo si no se anotó',
  'no-leading-zero':
    'Un número no puede empezar por un cero de más; los decimales van con punto (54.032, no 54,032)',
  'no-trailing-comma': 'Después del último elemento no debe haber coma; quítela',
}

export const problems: Texts<typeof english> = {
  problems: {
    'file-too-large': ({ bytes, mostBytes }) =>
      `El archivo tiene ${megabytes(bytes)}; un trabajo tiene ${megabytes(mostBytes)} como mucho. ¿Es el archivo correcto?`,
    'file-empty': () => 'El archivo está vacío. ¿Hay alguna copia de él?',
    'saved-as-utf-16': () =>
      'El archivo está guardado como UTF-16. Ábralo en un editor de texto y guárdelo como UTF-8.',
    'not-utf-8': () =>
      'El archivo no es texto simple en UTF-8: es de otro tipo, está dañado o lo guardó un editor con otra codificación. Guárdelo como UTF-8.',
    'other-kind-of-file': ({ kind }) =>
      `Esto es ${kinds[kind]}, no un archivo de trabajo. Un archivo de trabajo es el texto que escribe Borewall cuando se guarda un trabajo.`,
    'not-json': ({ expected, found }) =>
      found === ''
        ? `${expectations[expected]}, pero el texto acaba. ¿Está completo el archivo?`
        : `${expectations[expected]}; hay ${quoted(found)}.`,
    'too-deep': ({ most }) =>
      `Las listas y los objetos están anidados a más de ${most} niveles, que ningún trabajo necesita.`,
    'duplicate-key': ({ key }) => `El campo ${quoted(key)} está aquí dos veces. Deje uno de ellos.`,
    'not-a-job': () => 'Esto es JSON, pero no un trabajo de Borewall: su formato debería ser "borewall-job".',
    'newer-version': ({ found, supported }) =>
      `El archivo lo escribió un Borewall más nuevo (versión de formato ${found}; este lee hasta la ${supported}). Se deja como está; use el Borewall más nuevo.`,
    'unknown-version': ({ found, supported }) =>
      `La versión de formato es ${found}; debería ser un número entero de 1 a ${supported}.`,
    missing: ({ field }) => `Falta ${field}.`,
    'unknown-key': ({ key, nearest }) =>
      nearest === undefined
        ? `Aquí no hay ningún campo ${quoted(key)}. Quítelo.`
        : `Aquí no hay ningún campo ${quoted(key)}. ¿Quiere decir ${quoted(nearest)}?`,
    'wrong-kind': ({ expected, found }) => `Aquí debería haber ${values[expected]}, no ${found}.`,
    'not-one-of': ({ options, found }) =>
      `Aquí debería haber uno de estos: ${options.map(quoted).join(', ')}; hay ${found}.`,
    'out-of-range': ({ found, least, most, mostExcluded, unit }) => {
      const to = mostExcluded ? 'a menos de' : 'a'
      return `${written(found)} se sale del margen: de ${written(least)} ${to} ${written(most)}${unit ? ` ${unit}` : ''}.`
    },
    'text-blank': () => 'Este texto no puede estar en blanco.',
    'text-too-long': ({ length, most }) =>
      length > 0
        ? `Este texto tiene ${length} caracteres; puede tener ${most} como mucho.`
        : `Este texto tiene más de ${most} caracteres.`,
    'control-character': () => 'Hay un carácter de control invisible en este texto. Escríbalo de nuevo.',
    'not-a-date': ({ found }) => `${found} no es una fecha; escriba año, mes y día como en 2024-05-31.`,
    'not-a-hash': ({ found }) =>
      `${found} no nombra ninguna fotografía; su huella de contenido tiene 64 cifras de 0 a 9 y de a a f.`,
    'not-base64': () => 'El contenido de esta fotografía está dañado: no está escrito en base64.',
    'list-too-short': ({ least }) =>
      least === 1
        ? 'Esta lista necesita al menos un elemento.'
        : `Esta lista necesita al menos ${least} elementos.`,
    'list-too-long': ({ length, most }) =>
      length > 0
        ? `Esta lista tiene ${length} elementos; puede tener ${most} como mucho.`
        : `Esta lista tiene más de ${most} elementos.`,
    'duplicate-id': ({ id }) => `El id ${quoted(id)} se usa dos veces. Dé a cada uno el suyo.`,
    'duplicate-name': ({ name }) => `El nombre ${quoted(name)} se usa dos veces. Dé a cada uno el suyo.`,
    'duplicate-value': ({ value, unit }) =>
      `${written(value)} ${unit} está aquí dos veces. Deje uno de los dos.`,
    'unknown-reference': ({ list, found, known }) =>
      known.length === 0
        ? `${quoted(found)} no nombra ${lists[list]} de este trabajo; no tiene.`
        : `${quoted(found)} no nombra ${lists[list]} de este trabajo; hay ${known.map(quoted).join(', ')}.`,
    'low-above-high': ({ lowField, low, highField, high }) =>
      `${lowField} (${written(low)}) es más que ${highField} (${written(high)}). ¿Están cambiados?`,
    'port-all-round': () =>
      'Esta lumbrera daría toda la vuelta al cilindro. Una franja que nadie pudo medir se introduce como banda.',
    'deeper-than-bore': ({ depthMm, lengthMm }) =>
      `${written(depthMm)} mm es más hondo que la longitud del cilindro (${written(lengthMm)} mm).`,
    'duplicate-station': ({ depthMm, axisDegrees }) =>
      `Ya hay una lectura en ${written(depthMm)} mm, ${written(axisDegrees)}°. Ponga las repeticiones en una sola lista.`,
    'off-level': ({ depthMm, levelsMm }) =>
      levelsMm.length === 0
        ? `${written(depthMm)} mm no es ninguno de los niveles de esta medición; no tiene.`
        : `${written(depthMm)} mm no es ninguno de los niveles de esta medición (${levelsMm.map(written).join('; ')} mm).`,
    'off-axis': ({ axisDegrees, axesDegrees }) =>
      axesDegrees.length === 0
        ? `${written(axisDegrees)}° no es ninguno de los ejes de esta medición; no tiene.`
        : `${written(axisDegrees)}° no es ninguno de los ejes de esta medición (${axesDegrees.map(written).join('; ')}°).`,
    'unreachable-station': ({ found, depthMm, axisDegrees }) => {
      const place = `${written(depthMm)} mm, ${written(axisDegrees)}°`
      return found === 'twice'
        ? `${place} se nombra dos veces como fuera de alcance. Deje una de las dos.`
        : `${place} se nombra como fuera de alcance, pero hay una lectura. Quite una de las dos cosas.`
    },
    'reading-values': ({ found, expected }) => {
      const should = `su montaje anota ${expected === 'sizesMm' ? 'medidas' : 'lecturas del comparador'}, así que debería tener ${expected}`
      if (found === 'none') return `Esta lectura no tiene valores; ${should}.`
      if (found === 'both') return `Esta lectura tiene a la vez sizesMm y dialUm; ${should} y nada más.`
      return `Esta lectura tiene ${found}; ${should}.`
    },
    'check-values': ({ found }) =>
      found === 'none'
        ? 'Esta comprobación de un instrumento no tiene lecturas; debería tener sizesMm o dialUm.'
        : 'Esta comprobación de un instrumento tiene a la vez sizesMm y dialUm; debería tener uno de los dos.',
    'study-values': ({ found }) =>
      found === 'none'
        ? 'Una lectura de este estudio con varias personas no tiene valores; debería tener sizesMm o dialUm.'
        : 'Este estudio con varias personas tiene a la vez sizesMm y dialUm; debería tener siempre el mismo.',
    'entry-does-not-fit': ({ entry }) =>
      entry === 'reverse'
        ? 'El método inverso pide un instrumento con comparador y dos palpadores, y un micrómetro para medir sobre ellos. Elija estos, u otra manera de anotar las lecturas.'
        : 'Solo se lee directamente un instrumento de interiores: calibre telescópico, micrómetro de interiores, micrómetro de tres palpadores. Elija uno, u otra manera de anotar las lecturas.',
    'read-only': () =>
      'Este trabajo se está escribiendo en otra pestaña. Tómelo arriba en esta página y después cámbielo aquí.',
    'more-problems': ({ count }) => (count === 1 ? 'Hay un problema más.' : `Hay ${count} problemas más.`),
  },
  problemPlace: {
    wholeFile: 'el archivo',
    line: (line) => `línea ${line}`,
    lineColumn: (line, column) => `línea ${line}, columna ${column}`,
    pathAndLine: (path, line) => `${path} (${line})`,
  },
}

function quoted(text: string): string {
  return `«${text}»`
}

function megabytes(bytes: number): string {
  if (bytes < 100_000) return `${Math.ceil(bytes / 1000)} kB`
  return `${(bytes / 1_000_000).toFixed(1).replace('.', ',')} MB`
}

function written(value: number): string {
  return String(value).replace('-', '−').replace('.', ',')
}
