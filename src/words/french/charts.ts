import type { charts as english } from '../english/charts'
import type { Texts } from '../texts'

/** The flat views of the wall: map, section and profile, and what is saved of them, in French. */
export const charts: Texts<typeof english> = {
  charts: {
    views: {
      label: 'Vues à plat de la paroi',
      map: 'Carte',
      section: 'Coupe',
      profile: 'Profil',
      hours: 'Heures',
    },
    between: 'Ce qui est dessiné entre les lectures n’est pas mesuré.',
    save: 'Enregistrer en SVG',
    saveTitle: 'Enregistrer cette vue comme un dessin qui reste net à toute taille',
    saved: (name) => `Enregistré sous le nom ${name}`,
    notSaved: 'Cela n’a pas pu être enregistré. Essayez de nouveau, ou faites une capture d’écran.',
    noReadings: 'Cette vue apparaît avec la première lecture.',
    reading: (place, size) => `${place} : ${size}`,
    uncounted: (reading) => `${reading}, dans aucun verdict`,
    above: (reading) => `${reading}, au-dessus de la limite`,
    below: (reading) => `${reading}, au-dessous de la limite`,
  },
  section: {
    title: (depth) => `Coupe ronde à ${depth}`,
    list: (depth) =>
      `Lectures à ${depth}. Les flèches gauche et droite font le tour, haut et bas vont à un autre niveau.`,
    above: 'Niveau au-dessus',
    below: 'Niveau au-dessous',
    at: (depth) => `profondeur ${depth}`,
    mean: (size) => `Moyenne ${size}.`,
    ovalAcross: (oval, axis, doubt) => `Ovale ${oval}, grand axe ${axis} ± ${doubt}.`,
    ovalNone: (most) => `Aucun ovale ne ressort ; ${most} au plus.`,
    ovalThree: 'Trois axes ne distinguent pas un ovale d’une forme à quatre lobes.',
    ovalAtLeast: (least) => `Ovale de ${least} ou plus ; deux axes ne disent pas combien de plus.`,
    ovalTwoUnseen: 'Deux axes ne montrent pas d’ovale certain, et peuvent en manquer un qui est entre eux.',
    oneAxis: 'Un seul axe ne montre rien d’un ovale.',
    land: 'Zone sans segments : les segments ne passent pas ici.',
    notRead: 'Personne n’a mesuré à ce niveau.',
    twoContacts: 'Dessiné pareil des deux côtés : deux touches ne peuvent pas dire quelle paroi s’est usée.',
    threeContacts:
      'Trois touches lisent la moyenne d’un niveau : un anneau rond, mesuré sous chaque touche, et pas d’ovale.',
  },
  profile: {
    title: (axis) => `Profil selon ${axis}`,
    list: (axis) =>
      `Lectures selon ${axis}. Les flèches haut et bas vont en profondeur, gauche et droite à un autre axe.`,
    before: 'Axe précédent',
    after: 'Axe suivant',
    at: (axis) => `axe ${axis}`,
    largest: (size, depth) => `Le plus grand ${size} à ${depth}.`,
    smallest: (size, depth) => `Le plus petit ${size} à ${depth}.`,
    alone: (size, depth) => `Une lecture, ${size} à ${depth}.`,
    notRead: 'Personne n’a mesuré selon cet axe.',
    travel: (from, to) =>
      `Les segments passent de ${from} à ${to} ; la paroi au-delà est une zone sans segments.`,
    ringTravel: 'course des segments',
    doubt: 'Barres et ombre : ± U (95 %). Interrompu là où personne n’a mesuré.',
    round: 'Trois touches lisent la moyenne d’un niveau : chaque axe montre cette moyenne.',
  },
  savedChart: {
    fileParts: { map: 'carte', section: 'coupe', profile: 'profil', hours: 'heures' },
    map: 'La paroi déroulée, angle en travers, profondeur vers le bas.',
    drawn: (title, factor) => `${title}. ${factor}.`,
    lines: (step) => `Lignes tous les ${step} sur le diamètre.`,
    hours: 'Heures de marche en travers, cote vers le haut en mm.',
    across: 'Cote en travers en mm, profondeur vers le bas en mm.',
    marks:
      'Hachuré : personne n’a mesuré. Pointillé : trop juste pour trancher. Disques : lectures ; barres : leur ± U (95 %).',
    mapMarks: 'Hachuré : personne n’a mesuré. Pointillé : trop juste pour trancher. Disques : lectures.',
  },
}
