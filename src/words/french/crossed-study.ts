import type { crossedStudy as english } from '../english/crossed-study'
import type { Texts } from '../texts'

/** What several people reading several parts show of a gauge in their hands, in French. */
export const crossedStudy: Texts<typeof english> = {
  heading: 'Essais croisés d’appareils',
  help: 'Faites lire par deux ou trois personnes chacune de cinq à dix pièces (des alésages, ou des endroits qui y sont marqués) deux ou trois fois, dans un ordre mêlé, sans que personne voie ce qu’un autre a lu. Une ligne pour chaque personne et chaque pièce : personne, pièce, puis les lectures. Un tableau peut être collé tel qu’il est dans un tableur, aussi avec une ligne pour chaque lecture : personne, pièce, quelle lecture, lecture.',
  another: 'Un autre essai, {writtenAs} :',
  writtenAs: (gauge) => `Ce que sont les lectures de l’essai : ${gauge}`,
  field: (gauge) => `Tableau d’un essai : ${gauge}`,
  again: (gauge, number) => `Tableau de l’essai ${number} : ${gauge}`,
  date: (gauge, number) => `Jour de l’essai ${number}, année-mois-jour : ${gauge}`,
  made: 'Fait {date}, {unit} :',
  add: 'Garder cet essai',
  remove: (gauge, number) => `Retirer l’essai ${number} : ${gauge}`,
  between: ' ; ',
  refused: {
    line: (line, why) => `Ligne ${line} : ${why}`,
    short: 'Il faut une personne, une pièce et au moins une lecture.',
    unnamed: 'La personne ou la pièce n’a pas de nom.',
    piece: (piece, why) => `« ${piece} » : ${why}`,
    empty: 'Entrez une personne, une pièce et des lectures à chaque ligne.',
    'too-large': 'C’est plus que n’en contient un essai.',
    'commas-only':
      'Les virgules se lisent de deux façons. Mettez des points-virgules ou des tabulations entre les cellules, ou des points devant les décimales.',
    'quote-left-open': 'Un guillemet est resté ouvert.',
  },
  wanting: {
    'no-readings': 'Il ne contient aucune lecture.',
    'one-part': 'Il faut au moins deux pièces ; à partir de cinq, cela dit quelque chose.',
    'one-trial':
      'Chaque pièce a été lue une fois. Il faut deux lectures de chaque pièce par chaque personne, ou plus.',
    'too-many': (readings, most) => `Il a ${readings} lectures. Un essai peut être calculé jusqu’à ${most}.`,
    uneven: (person, part, found, usual) =>
      `${person}, pièce ${part} : ${readingsOf(found)}, alors que la plupart en ont ${usual}. Rien n’est calculé avant que chaque personne ait lu chaque pièce aussi souvent.`,
    others: (others) =>
      others === 1 ? 'Il en est ainsi à un autre endroit.' : `Il en est ainsi à ${others} autres endroits.`,
  },
  read: (people, parts, trials) =>
    `${people < 2 ? 'Une personne a lu' : `${people} personnes ont lu`} ${parts} pièces, chacune ${times(trials)}.`,
  heads: { part: 'Dispersion', deviation: 'écart type', between: 'se trouve entre', share: 'proportion' },
  rows: {
    gauge: 'l’appareil : répétitions par une personne',
    people: 'les personnes : l’une lit plus grand qu’une autre',
    peopleByPart: 'personnes selon la pièce : pas ainsi sur chaque pièce',
    gaugeAndPeople: 'appareil et personnes ensemble',
    parts: 'les pièces',
    all: 'toutes les lectures',
  },
  interval: (low, high) => `${low} à ${high}`,
  rowText: (name, amount, interval, share) => `${name} : ${amount}, entre ${interval}, ${share}`,
  doubt:
    'Chacune est dans son intervalle dans 95 de 100 essais pareils, d’après l’analyse de la variance ; peu de personnes laissent large celui des personnes. Les proportions sont de l’écart type de toutes les lectures : au carré, celles de l’appareil et des personnes ensemble et celle des pièces font le tout.',
  pooled: (chance) =>
    `Qu’une personne lise plus grand qu’une autre ne dépend pas de la pièce, autant que cela se voie : autant viendrait par hasard dans ${chance} de tels essais. À partir de 25 %, cela est compté avec l’appareil.`,
  apart: (chance) =>
    `Qu’une personne lise plus grand qu’une autre dépend de la pièce : autant viendrait par hasard dans ${chance} de tels essais. Au-dessous de 25 %, cela reste à part.`,
  underOne: 'moins de 1 %',
  tells: (count, low, high) =>
    `Dans ces mains, l’appareil distingue ${count} cotes de telles pièces (de ${low} à ${high}, d’après les bouts des intervalles). On en demande d’ordinaire cinq ou plus.`,
  tellsNone: (low, high) =>
    `Dans ces mains, l’appareil ne peut pas distinguer de telles pièces (entre ${low} et ${high} cotes, d’après les bouts des intervalles). On en demande d’ordinaire cinq ou plus.`,
  byRanges: ({ gauge, people, both, share, parts }) =>
    `Par moyennes et étendues, l’ancienne façon : l’appareil ${gauge}, les personnes ${people}, les deux ensemble ${both} (${share}), les pièces ${parts}.`,
  rangesTell: (count, differs) =>
    `De cette façon, il distingue ${differs ? '' : 'aussi '}${count < 2 ? `${count} cote` : `${count} cotes`}${differs ? '. Les deux façons pèsent autrement les mêmes lectures et n’ont pas à concorder ; aucune n’est fausse' : ''}. Elle n’a pas d’intervalle à elle : ses chiffres ne sont pas mieux connus que ceux d’au-dessus.`,
  share: (six, share, band) =>
    `Six écarts types d’une lecture par n’importe laquelle de ces personnes, ${six}, font ${share} de la plage de ${band} de la plus petite à la plus grande cote neuve.`,
  good: (bore, repeats, doubt) =>
    `Dans les mains de n’importe laquelle d’entre elles, un point de l’alésage ${bore}, lu ${times(repeats)}, est juste à ${doubt} près, avec tout le reste de son montage.`,
}

function times(count: number): string {
  return count === 1 ? 'une fois' : `${count} fois`
}

function readingsOf(found: number): string {
  if (found === 0) return 'aucune lecture'
  return found === 1 ? 'une lecture' : `${found} lectures`
}
