import type { scans as english } from '../english/scans'
import type { Texts } from '../texts'

/** Scans of radii: keeping them with a bore, looking at them, in French. */
export const scans: Texts<typeof english> = {
  scans: {
    title: 'Palpages',
    importTitle: (file) => `Un palpage de ${file}`,
    asScan: 'Ce sont les rayons d’un palpage',
    shown: 'Dessiné d’après',
    readings: 'Lectures',
    unnamed: (index) => `Palpage ${index}`,
    local: 'Sans la forme lisse',
    localTitle:
      'Enlève la forme qui va sans à-coups autour et le long de l’alésage, pour que ressorte ce qui est local',
    status: {
      fetching: 'Recherche du palpage…',
      fitting: 'Ajustement de l’axe du palpage…',
      'not-here':
        'Les rayons de ce palpage ne sont pas dans ce navigateur. Ouvrez le fichier du dossier qui les contient, ou importez de nouveau le palpage.',
      'no-axis':
        'Aucun axe ne peut être ajusté : aucun niveau de ce palpage n’a six rayons sans un vide d’un demi-tour. Palpez tout le tour.',
      failed:
        'Ce navigateur n’a pas pu ajuster le palpage. Fermez d’autres pages et ouvrez de nouveau le dossier.',
    },
    noSize: 'pas de cote : 0 est le milieu du palpage',
    noForm: '0 est la forme lisse',
    onRadius: (micrometres) => `${micrometres} sur le rayon`,
    noVerdict: 'Forme autour de l’axe ajusté, sur le rayon. Pas de cote : ni limites ni verdict.',
    localSaid: 'Ce qui ressort de la forme lisse, sur le rayon. Pas de limites ici.',
    sized: 'Deux fois le rayon autour de l’axe ajusté ; des lectures lui donnent sa cote.',
    pastEnd: (scanned, length) =>
      `Le palpage descend jusqu’à ${scanned}, au-delà des ${length} donnés comme longueur de l’alésage.`,
    picture: 'L’alésage tel qu’un palpeur l’a parcouru, en trois dimensions',
    nothing: 'Montrez la paroi pour la lire.',
    at: (depth, angle) => `${depth} · ${angle}`,
    noRadius: 'pas de rayon : une lumière, ou non mesuré',
    port: (name) => `lumière « ${name} »`,
    radius: (radius) => `rayon ${radius} depuis le milieu`,
    over: (over) => `${over} par rapport à la forme lisse`,
    twiceRadius: (size) => `deux fois le rayon ${size}`,
    radii: (count) => `${count} rayons`,
    twiceRadii: (count) => `${count} rayons, doublés,`,
    levelText: (radii, place, least, most) => `${radii} à ${place}, de ${least} à ${most}.`,
    oneWall: 'Un palpeur lit une seule paroi : ce qui est en face se lit à part.',
    list: {
      levels: (levels, angles) => `${levels} niveaux × ${angles} angles`,
      missing: (count) => (count === '1' ? '1 endroit vide' : `${count} endroits vides`),
      look: (name) => `Regarder ${name}`,
      remove: (name) => `Retirer ${name}`,
      cleaning: (name) => `${name} : avant ou après nettoyage`,
      tie: (name) => `${name} : cote d’après`,
      noTie: 'pas de cote',
      tieSurvey: (survey) => `cote d’après ${survey}`,
      survey: (index) => `relevé ${index}`,
      noTies: 'Aucun de ses points de mesure n’est sur du métal dans le palpage, qui n’a donc pas de cote.',
      tied: (count, doubt) =>
        count === '1'
          ? `Cote d’après 1 point de raccordement, ${doubt} sur le rayon.`
          : `Cote d’après ${count} points de raccordement, ${doubt} sur le rayon.`,
      tiesDisagree:
        'Ils diffèrent de plus que leur incertitude n’explique : est-ce le même alésage, inchangé ?',
    },
    changes: {
      taken: (name) => `palpage ${name} pris`,
      removed: (name) => `palpage ${name} retiré`,
      cleaning: 'avant ou après nettoyage',
      tie: 'ce qui donne sa cote au palpage',
    },
    leftOut: {
      notHere: (count) =>
        count === 1
          ? 'Un palpage n’y est pas : il n’est pas dans ce navigateur.'
          : `${count} palpages n’y sont pas : ils ne sont pas dans ce navigateur.`,
      noRoom: (count) =>
        count === 1
          ? 'Un palpage n’y est pas : le fichier serait plus grand que Borewall n’en lit.'
          : `${count} palpages n’y sont pas : le fichier serait plus grand que Borewall n’en lit.`,
    },
    damaged: (count) =>
      count === 1
        ? 'Un palpage de ce fichier est endommagé et a été laissé de côté.'
        : `${count} palpages de ce fichier sont endommagés et ont été laissés de côté.`,
  },
}
