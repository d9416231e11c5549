import type { scanForm as english } from '../english/scan-form'
import type { Texts } from '../texts'

/** What form a scan proves, and what a file of radii says by itself, in French. */
export const scanForm: Texts<typeof english> = {
  title: 'Forme du palpage',
  aboutFile: (file) => `Palpage dans ${file}`,
  roundness: 'Circularité, pire niveau',
  roundnessDetail: (depth) =>
    `à ${depth} ; une différence de rayons par la zone minimale (ISO 12181), moitié d’une ovalisation pour un ovale simple`,
  roundnessSquares: (depth) => `à ${depth} ; une différence de rayons autour du cercle des moindres carrés`,
  noRoundness: 'Aucun niveau n’a de rayons sur tout le tour, aucune circularité n’est donc donnée.',
  cylindricity: 'Cylindricité',
  cylindricityDetail: 'zone minimale (ISO 12180), de tous les niveaux autour d’un seul axe droit',
  noCylindricity:
    'Moins de deux niveaux ont des rayons sur tout le tour, aucune cylindricité n’est donc donnée.',
  oval: 'Ovale, niveau le plus large',
  ovalDetail: (depth, axis) => `à ${depth}, le plus grand selon ${axis} ; une différence de diamètres`,
  ovalNone: (depth, most) => `à ${depth} ; aucune direction ne ressort, ${most} au plus`,
  twoContact: 'Comme deux touches le trouveraient',
  twoContactDetail: (depth) =>
    `plus grand moins plus petit diamètre à ${depth}, sur les axes qui ont du métal aux deux bouts`,
  axis: 'Axe du palpeur',
  axisFigure: (farthest) => `décalé de ${farthest}`,
  axisDetail: 'au niveau où il l’est le plus ; retiré de tous les chiffres ici',
  range: (value, low, high) => `${value} (${low} à ${high})`,
  probeShows: (round, cylinder) =>
    `Un palpeur qui répète comme celui-ci montre jusqu’à ${round} à un niveau parfaitement rond, et ${cylinder} sur un cylindre parfait.`,
  nearGaps: (count) =>
    `Le filtre ne s’appuie que d’un côté à ${count} valeurs, près de lumières : prenez-les avec prudence.`,
  noSize: 'Un palpage montre la forme et aucune cote : rien ici ne dit si l’alésage est dans ses limites.',
  noDiameter:
    'Nommez le diamètre approximatif de l’alésage (--diameter 60, en mm) pour qu’on y cherche des anomalies : leur largeur en mm en dépend.',
  diameterRange: 'Un diamètre est un nombre de 1 à 2000, en mm.',
  diameterForScan: '--diameter va avec un fichier de rayons.',
}
