import type { crossedStudy as english } from '../english/crossed-study'
import type { Texts } from '../texts'

export const crossedStudy: Texts<typeof english> = {
  heading: 'Personenvergleiche an Messgeräten',
  help: 'Lassen Sie zwei oder drei Personen jedes von fünf bis zehn Teilen (Bohrungen oder darin markierte Stellen) zwei- oder dreimal messen, in gemischter Reihenfolge, ohne dass jemand sieht, was ein anderer abgelesen hat. Eine Zeile für jede Person und jedes Teil: Person, Teil, dann die Ablesungen. Eine Tabelle lässt sich einfügen, wie sie in einer Tabellenkalkulation steht, auch mit einer Zeile für jede Ablesung: Person, Teil, die wievielte Ablesung, Ablesung.',
  another: 'Noch ein Personenvergleich, {writtenAs}:',
  writtenAs: (gauge) => `Was die Ablesungen des Personenvergleichs sind: ${gauge}`,
  field: (gauge) => `Tabelle eines Personenvergleichs: ${gauge}`,
  again: (gauge, number) => `Tabelle des Personenvergleichs ${number}: ${gauge}`,
  date: (gauge, number) => `Tag des Personenvergleichs ${number}, Jahr-Monat-Tag: ${gauge}`,
  made: 'Gemacht {date}, {unit}:',
  add: 'Diesen Personenvergleich behalten',
  remove: (gauge, number) => `Personenvergleich ${number} herausnehmen: ${gauge}`,
  between: '; ',
  refused: {
    line: (line, why) => `Zeile ${line}: ${why}`,
    short: 'Es braucht eine Person, ein Teil und mindestens eine Ablesung.',
    unnamed: 'Die Person oder das Teil hat keinen Namen.',
    piece: (piece, why) => `„${piece}“: ${why}`,
    empty: 'Geben Sie in jeder Zeile eine Person, ein Teil und Ablesungen ein.',
    'too-large': 'Das ist mehr, als in einen Personenvergleich passt.',
    'commas-only':
      'Die Kommas lassen sich auf zwei Arten lesen. Setzen Sie Semikolons oder Tabulatoren zwischen die Zellen, oder Punkte vor die Dezimalstellen.',
    'quote-left-open': 'Ein Anführungszeichen ist nicht geschlossen.',
  },
  wanting: {
    'no-readings': 'Es stehen keine Ablesungen darin.',
    'one-part': 'Es braucht mindestens zwei Teile, ab fünf sagt es etwas aus.',
    'one-trial':
      'Jedes Teil wurde einmal gemessen. Es braucht von jeder Person zwei oder mehr Ablesungen jedes Teils.',
    'too-many': (readings, most) =>
      `Es sind ${readings} Ablesungen. Auswerten lässt sich ein Personenvergleich mit bis zu ${most}.`,
    uneven: (person, part, found, usual) =>
      `${person}, Teil ${part}: ${readingsOf(found)}, die meisten haben ${usual}. Ausgewertet wird erst, wenn jede Person jedes Teil gleich oft gemessen hat.`,
    others: (others) =>
      others === 1 ? 'So ist es an noch einer Stelle.' : `So ist es an ${others} weiteren Stellen.`,
  },
  read: (people, parts, trials) =>
    `${people === 1 ? 'Eine Person hat' : `${people} Personen haben`} ${parts} Teile je ${times(trials)} gemessen.`,
  heads: { part: 'Streuung', deviation: 'Standardabweichung', between: 'liegt zwischen', share: 'Anteil' },
  rows: {
    gauge: 'das Messgerät: Wiederholungen durch eine Person',
    people: 'die Personen: eine liest größere Werte ab als eine andere',
    peopleByPart: 'Personen je Teil: nicht an jedem Teil gleich',
    gaugeAndPeople: 'Messgerät und Personen zusammen',
    parts: 'die Teile',
    all: 'alle Ablesungen',
  },
  interval: (low, high) => `${low} bis ${high}`,
  rowText: (name, amount, interval, share) => `${name}: ${amount}, Bereich ${interval}, ${share}`,
  doubt:
    'Jede liegt in 95 von 100 solchen Vergleichen in ihrem Intervall, nach der Varianzanalyse; wenige Personen lassen das der Personen weit. Anteile beziehen sich auf die Standardabweichung aller Ablesungen: Quadriert ergeben die von Messgerät und Personen zusammen und die der Teile das Ganze.',
  pooled: (chance) =>
    `Ob eine Person größere Werte abliest als eine andere, hängt nicht vom Teil ab, soweit sich das hier zeigt: So viel käme in ${chance} solcher Vergleiche auch durch Zufall zustande. Ab 25 % wird das zum Messgerät gezählt.`,
  apart: (chance) =>
    `Ob eine Person größere Werte abliest als eine andere, hängt vom Teil ab: So viel käme in ${chance} solcher Vergleiche auch durch Zufall zustande. Unter 25 % steht das für sich.`,
  underOne: 'weniger als 1 %',
  tells: (count, low, high) =>
    `In diesen Händen unterscheidet das Messgerät ${count} Größen solcher Teile (von ${low} bis ${high}, nach den Enden der Intervalle). Üblicherweise werden fünf oder mehr verlangt.`,
  tellsNone: (low, high) =>
    `In diesen Händen kann das Messgerät solche Teile nicht unterscheiden (zwischen ${low} und ${high} Größen, nach den Enden der Intervalle). Üblicherweise werden fünf oder mehr verlangt.`,
  byRanges: ({ gauge, people, both, share, parts }) =>
    `Nach Mittelwerten und Spannweiten, dem älteren Verfahren: das Messgerät ${gauge}, die Personen ${people}, beide zusammen ${both} (${share}), die Teile ${parts}.`,
  rangesTell: (count, differs) =>
    `Nach diesem Verfahren unterscheidet es ${differs ? '' : 'ebenfalls '}${count === 1 ? '1 Größe' : `${count} Größen`}${differs ? '. Die beiden Verfahren gewichten dieselben Ablesungen verschieden und müssen nicht übereinstimmen; keines ist falsch' : ''}. Ein eigenes Intervall hat es nicht: Seine Zahlen sind nicht genauer bekannt als die darüber.`,
  share: (six, share, band) =>
    `Sechs Standardabweichungen einer Ablesung durch eine beliebige dieser Personen, ${six}, sind ${share} der Spanne von ${band} zwischen kleinstem und größtem Neumaß.`,
  good: (bore, repeats, doubt) =>
    `In der Hand jeder dieser Personen ist eine Messstelle der Bohrung ${bore}, ${times(repeats)} gemessen, auf ${doubt} genau, alles andere im Messaufbau mitgerechnet.`,
}

function times(count: number): string {
  if (count === 1) return 'einmal'
  return count === 2 ? 'zweimal' : `${count}-mal`
}

function readingsOf(found: number): string {
  if (found === 0) return 'keine Ablesung'
  return found === 1 ? 'eine Ablesung' : `${found} Ablesungen`
}
