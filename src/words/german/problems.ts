import type { FileKind, JsonExpectation, ReferredList, ValueKind } from '../../core/problem'
import type { problems as english } from '../english/problems'
import type { Texts } from '../texts'

const kinds: Record<FileKind, string> = {
  image: 'ein Bild',
  pdf: 'ein PDF',
  archive: 'ein Archiv (ZIP oder Ähnliches)',
  'web-page': 'eine Webseite',
  table: 'eine Tabelle (CSV)',
}

const values: Record<ValueKind, string> = {
  text: 'ein Text in Anführungszeichen',
  number: 'eine Zahl ohne Anführungszeichen, mit Dezimalpunkt',
  'whole-number': 'eine ganze Zahl ohne Anführungszeichen',
  'true-or-false': 'true oder false',
  list: 'eine Liste in [ ]',
  object: 'ein Objekt in { }',
}

/** With the article that a sentence of refusal needs. */
const noneOf: Record<ReferredList, string> = {
  setUps: 'keinen Messaufbau',
  gauges: 'kein Messgerät',
  standards: 'kein Einstellnormal',
  thermometers: 'kein Thermometer',
  'spec.grades': 'keine Größenklasse',
  bores: 'keine Bohrung',
  surveys: 'keine Messung',
  scans: 'keine Abtastung',
}

const expectations: Record<JsonExpectation, string> = {
  value: 'Hier sollte ein Wert stehen',
  key: 'Hier sollte der Name eines Feldes in Anführungszeichen stehen',
  colon: 'Zwischen einem Feld und seinem Wert muss ein Doppelpunkt stehen',
  'comma-or-end-of-list': 'Hier sollte ein Komma oder ] stehen',
  'comma-or-end-of-object': 'Hier sollte ein Komma oder } stehen',
  'end-of-text': 'Der Auftrag endet davor; nehmen Sie heraus, was danach kommt',
  'end-of-string': 'Ein Text ist nicht in seiner eigenen Zeile mit einem Anführungszeichen geschlossen',
  escape: 'Nach \\ darf nur " \\ / b f n r t stehen, oder u und vier Hexadezimalziffern',
  number: 'Das ist keine Zahl, die JSON kennt; schreiben Sie sie wie 54.032 oder -3',
  'finite-number':
    'Einen solchen Wert hat JSON nicht; schreiben Sie eine Zahl, oder lassen Sie das Feld weg, wenn nichts erfasst wurde',
  'no-leading-zero':
    'Eine Zahl darf nicht mit einer zusätzlichen Null beginnen; Dezimalstellen stehen hier hinter einem Punkt (54.032, nicht 54,032)',
  'no-trailing-comma': 'Nach dem letzten Eintrag darf kein Komma stehen; nehmen Sie es heraus',
}

/** What is wrong in a file or a field: what, and how to mend it, in German. */
export const problems: Texts<typeof english> = {
  problems: {
    'file-too-large': ({ bytes, mostBytes }) =>
      `Die Datei hat ${megabytes(bytes)}; ein Auftrag hat höchstens ${megabytes(mostBytes)}. Ist es die richtige Datei?`,
    'file-empty': () => 'Die Datei ist leer. Gibt es eine Kopie davon?',
    'saved-as-utf-16': () =>
      'Die Datei ist als UTF-16 gespeichert. Öffnen Sie sie in einem Texteditor und speichern Sie sie als UTF-8.',
    'not-utf-8': () =>
      'Die Datei ist kein reiner Text in UTF-8: eine andere Art von Datei, beschädigt, oder von einem Editor in einer anderen Kodierung gespeichert. Speichern Sie sie als UTF-8.',
    'other-kind-of-file': ({ kind }) =>
      `Das ist ${kinds[kind]}, keine Auftragsdatei. Eine Auftragsdatei ist der Text, den Borewall schreibt, wenn ein Auftrag gespeichert wird.`,
    'not-json': ({ expected, found }) =>
      found === ''
        ? `${expectations[expected]}, aber der Text hört auf. Ist die Datei vollständig?`
        : `${expectations[expected]}; da steht ${quoted(found)}.`,
    'too-deep': ({ most }) =>
      `Listen und Objekte sind tiefer als ${most} Stufen ineinander geschachtelt; das braucht kein Auftrag.`,
    'duplicate-key': ({ key }) => `Das Feld ${quoted(key)} steht hier zweimal. Behalten Sie eines davon.`,
    'not-a-job': () =>
      'Das ist JSON, aber kein Auftrag von Borewall: Im Feld format sollte "borewall-job" stehen.',
    'newer-version': ({ found, supported }) =>
      `Die Datei hat ein neueres Borewall geschrieben (Formatversion ${found}; dieses hier liest bis ${supported}). Sie bleibt, wie sie ist; nehmen Sie das neuere Borewall.`,
    'unknown-version': ({ found, supported }) =>
      `Die Formatversion ist ${found}; es sollte eine ganze Zahl von 1 bis ${supported} sein.`,
    missing: ({ field }) => `${field} fehlt.`,
    'unknown-key': ({ key, nearest }) =>
      nearest === undefined
        ? `Ein Feld ${quoted(key)} gibt es hier nicht. Nehmen Sie es heraus.`
        : `Ein Feld ${quoted(key)} gibt es hier nicht. Ist ${quoted(nearest)} gemeint?`,
    'wrong-kind': ({ expected, found }) => `Hier sollte ${values[expected]} stehen, nicht ${found}.`,
    'not-one-of': ({ options, found }) =>
      `Hier sollte eines davon stehen: ${options.map(quoted).join(', ')}; da steht ${found}.`,
    'out-of-range': ({ found, least, most, mostExcluded, unit }) => {
      const to = mostExcluded ? 'bis unter' : 'bis'
      return `${written(found)} liegt außerhalb des Bereichs: von ${written(least)} ${to} ${written(most)}${unit ? ` ${unit}` : ''}.`
    },
    'text-blank': () => 'Dieser Text darf nicht leer sein.',
    'text-too-long': ({ length, most }) =>
      length > 0
        ? `Dieser Text hat ${length} Zeichen; höchstens ${most} sind möglich.`
        : `Dieser Text ist länger als ${most} Zeichen.`,
    'control-character': () =>
      'In diesem Text steht ein unsichtbares Steuerzeichen. Schreiben Sie den Text neu.',
    'not-a-date': ({ found }) =>
      `${found} ist kein Datum; schreiben Sie Jahr, Monat und Tag wie in 2024-05-31.`,
    'not-a-hash': ({ found }) =>
      `${found} bezeichnet kein Foto; seine Prüfsumme hat 64 Stellen aus 0 bis 9 und a bis f.`,
    'not-base64': () => 'Der Inhalt dieses Fotos ist beschädigt: Er ist nicht in base64 geschrieben.',
    'list-too-short': ({ least }) =>
      least === 1
        ? 'Diese Liste braucht mindestens einen Eintrag.'
        : `Diese Liste braucht mindestens ${least} Einträge.`,
    'list-too-long': ({ length, most }) =>
      length > 0
        ? `Diese Liste hat ${length} Einträge; höchstens ${most} sind möglich.`
        : `Diese Liste hat mehr als ${most} Einträge.`,
    'duplicate-id': ({ id }) =>
      `Die Kennung ${quoted(id)} ist zweimal vergeben. Geben Sie jedem seine eigene.`,
    'duplicate-name': ({ name }) =>
      `Der Name ${quoted(name)} ist zweimal vergeben. Geben Sie jedem seinen eigenen.`,
    'duplicate-value': ({ value, unit }) =>
      `${written(value)} ${unit} steht hier zweimal. Behalten Sie eines davon.`,
    'unknown-reference': ({ list, found, known }) =>
      known.length === 0
        ? `${quoted(found)} bezeichnet ${noneOf[list]} dieses Auftrags; die Liste ist leer.`
        : `${quoted(found)} bezeichnet ${noneOf[list]} dieses Auftrags; es gibt ${known.map(quoted).join(', ')}.`,
    'low-above-high': ({ lowField, low, highField, high }) =>
      `${lowField} (${written(low)}) liegt über ${highField} (${written(high)}). Sind sie vertauscht?`,
    'port-all-round': () =>
      'Dieser Schlitz ginge rings um die Bohrung. Ein Streifen, den niemand messen konnte, wird als Gürtel eingetragen.',
    'deeper-than-bore': ({ depthMm, lengthMm }) =>
      `${written(depthMm)} mm ist tiefer, als die Bohrung lang ist (${written(lengthMm)} mm).`,
    'duplicate-station': ({ depthMm, axisDegrees }) =>
      `Bei ${written(depthMm)} mm, ${written(axisDegrees)}° gibt es schon eine Ablesung. Setzen Sie Wiederholungen in eine Liste.`,
    'off-level': ({ depthMm, levelsMm }) =>
      levelsMm.length === 0
        ? `${written(depthMm)} mm ist keine Ebene dieser Messung; die Liste der Ebenen ist leer.`
        : `${written(depthMm)} mm ist keine Ebene dieser Messung (${levelsMm.map(written).join('; ')} mm).`,
    'off-axis': ({ axisDegrees, axesDegrees }) =>
      axesDegrees.length === 0
        ? `${written(axisDegrees)}° ist keine Achse dieser Messung; die Liste der Achsen ist leer.`
        : `${written(axisDegrees)}° ist keine Achse dieser Messung (${axesDegrees.map(written).join('; ')}°).`,
    'unreachable-station': ({ found, depthMm, axisDegrees }) => {
      const place = `${written(depthMm)} mm, ${written(axisDegrees)}°`
      return found === 'twice'
        ? `${place} ist zweimal als nicht erreichbar genannt. Behalten Sie eines davon.`
        : `${place} ist als nicht erreichbar genannt, doch es gibt dort eine Ablesung. Nehmen Sie eines von beiden heraus.`
    },
    'reading-values': ({ found, expected }) => {
      const should = `ihr Messaufbau schreibt ${expected === 'sizesMm' ? 'Maße' : 'Werte der Messuhr'} auf, sie sollte also ${expected} haben`
      if (found === 'none') return `Diese Ablesung hat keine Werte; ${should}.`
      if (found === 'both') return `Diese Ablesung hat sizesMm und dialUm zugleich; ${should}, und nur das.`
      return `Diese Ablesung hat ${found}; ${should}.`
    },
    'check-values': ({ found }) =>
      found === 'none'
        ? 'Diese Prüfung eines Messgeräts hat keine Ablesungen; sie sollte sizesMm oder dialUm haben.'
        : 'Diese Prüfung eines Messgeräts hat sizesMm und dialUm zugleich; sie sollte eines davon haben.',
    'study-values': ({ found }) =>
      found === 'none'
        ? 'Eine Ablesung dieses Personenvergleichs hat keine Werte; sie sollte sizesMm oder dialUm haben.'
        : 'Dieser Personenvergleich hat sizesMm und dialUm zugleich; er sollte durchweg eines davon haben.',
    'entry-does-not-fit': ({ entry }) =>
      entry === 'reverse'
        ? 'Für das umgekehrte Verfahren braucht es ein Messgerät mit Messuhr und zwei Messbolzen und eine Bügelmessschraube, um darüber zu messen. Wählen Sie diese, oder eine andere Art, Ablesungen aufzuschreiben.'
        : 'Direkt abgelesen werden nur Innenmessgeräte: Teleskoplehre, Innenmessschraube, Innenmessschraube mit drei Messbolzen. Wählen Sie eines davon, oder eine andere Art, Ablesungen aufzuschreiben.',
    'read-only': () =>
      'Dieser Auftrag wird gerade in einem anderen Tab geschrieben. Übernehmen Sie ihn oben auf dieser Seite, dann ändern Sie ihn hier.',
    'more-problems': ({ count }) =>
      count === 1 ? 'Es gibt noch einen weiteren Fehler.' : `Es gibt noch ${count} weitere Fehler.`,
  },
  problemPlace: {
    wholeFile: 'die Datei',
    line: (line) => `Zeile ${line}`,
    lineColumn: (line, column) => `Zeile ${line}, Spalte ${column}`,
    pathAndLine: (path, line) => `${path} (${line})`,
  },
}

function quoted(text: string): string {
  return `„${text}“`
}

function megabytes(bytes: number): string {
  if (bytes < 100_000) return `${Math.ceil(bytes / 1000)} kB`
  return `${(bytes / 1_000_000).toFixed(1).replace('.', ',')} MB`
}

function written(value: number): string {
  return String(value).replace('-', '−').replace('.', ',')
}
