import type { findings as english } from '../english/findings'
import type { Texts } from '../texts'

/** Rows of findings, what the method cannot see, cautions, in French. */
export const findings: Texts<typeof english> = {
  findings: {
    title: 'Constats',
    largest: 'Plus grand diamètre',
    smallest: 'Plus petit diamètre',
    ovality: 'Ovalisation',
    taper: 'Conicité',
    fittedOval: 'Ovale ajusté',
    fittedAcross: (axis, doubt, axes) => `le plus grand selon ${axis} ± ${doubt}, d’après ${axes} axes`,
    fittedNoDirection: (most) => `aucune direction ne ressort ; ${most} au plus`,
    fittedThree: 'trois axes ne le distinguent pas d’une forme à quatre lobes',
    ovalAtLeast: 'Ovale vrai',
    ovalAtLeastFigure: (least) => `${least} ou plus`,
    ovalAtLeastDetail: 'deux axes ne disent pas combien de plus',
    depthForm: 'Forme en profondeur',
    depthForms: {
      straight: 'droite',
      tapered: 'conique',
      barrel: 'en tonneau',
      waisted: 'à taille serrée',
      'bell-mouthed': 'évasée au bout',
      stepped: 'à marche',
    },
    depthStraight: 'autant que ces lectures le montrent',
    depthEnds: (difference) => `haut moins bas ${difference}`,
    depthMiddle: (depth, difference) => `${depth} à ${difference} de la droite entre les bouts`,
    depthBell: {
      top: (difference) => `haut plus large de ${difference}`,
      bottom: (difference) => `bas plus large de ${difference}`,
    },
    depthStep: (depth, land, difference) => `${depth} moins la zone sans segments à ${land} ${difference}`,
    grades: {
      name: 'Classes de cote',
      inside: (grades) => `dans : ${listed(grades)}`,
      insideNone: 'hors de toutes',
      undecided: 'aucune prouvée',
      tooClose: (grades) => `trop juste pour trancher : ${listed(grades)}`,
      tooNarrow: (grades) => `trop étroites pour cet appareil : ${listed(grades)}`,
      above: (grades) => `au-dessus de : ${listed(grades)}`,
      below: (grades) => `au-dessous de : ${listed(grades)}`,
      rule: (stations) =>
        stations < 2 ? `d’après le seul point (${stations})` : `dedans si les ${stations} points y sont`,
      information: 'pour information : la limite d’usure seule est jugée',
    },
    byRule: (rule) => `selon ${rule}`,
    widestMean: 'Moyenne du niveau le plus large',
    difference: (bore) => `Plus grande différence, contre ${bore}`,
    meanDifference: (bore) => `Différence moyenne, contre ${bore}`,
    limits: {
      wear: (size) => `limite d’usure ${size}`,
      max: (size) => `plus grande cote neuve ${size}`,
      min: (size) => `plus petite cote neuve ${size}`,
      gradeMax: (grade, size) => `plus grande de la classe ${grade} ${size}`,
      gradeMin: (grade, size) => `plus petite de la classe ${grade} ${size}`,
      minNotJudged: (size) => `plus petite cote neuve ${size}, non jugée à côté d’une limite d’usure`,
      shape: (microns) => `limite ${microns}`,
      share: {
        bore: (microns, share, size) => `limite ${microns} = ${share} de ${size}`,
        travel: (microns, share, travel) => `limite ${microns} = ${share} de ${travel} de course`,
      },
      smallestOf: (limit, count) => `${limit}, la plus petite de ${count} données`,
      noTravel: 'une limite dépend de la course : entrez-la parmi les limites',
      none: 'aucune limite entrée',
    },
    chance: {
      inside: (chances) => `${chances} qu’il soit dans les limites`,
      above: (chances) => `${chances} qu’il soit au-dessus`,
      below: (chances) => `${chances} qu’il soit au-dessous`,
      even: 'à peu près autant de chances d’être dans les limites ou non',
    },
    leans: { inside: 'plutôt dedans', above: 'plutôt au-dessus' },
    between: (larger, smaller) => `plus grand à ${larger} ; plus petit à ${smaller}`,
    meanOf: (axes) => (axes < 2 ? 'un axe' : `moyenne de ${axes} axes`),
    stationsBoth: (count) => (count < 2 ? 'un point que les deux ont' : `${count} points que les deux ont`),
    largestRead: 'le plus grand lu, non une borne',
    asMade: (microns) => `deux alésages neufs peuvent différer de ${microns} de fabrication`,
    madeSo: {
      beyond: 'plus que deux alésages neufs ne peuvent différer, ce n’est donc pas la fabrication seule',
      within: 'pas plus que deux alésages neufs ne peuvent différer : ils ont peut-être été faits ainsi',
    },
    clampingsApart: (one, other) =>
      `l’un mesuré ${one}, l’autre ${other} : les vis déforment un alésage, ce n’est donc pas de l’usure`,
    otherRules: 'Selon d’autres règles',
    notYet: 'pas encore',
    why: {
      'no-readings': 'pas encore de lectures hors d’une zone sans segments',
      'one-axis-at-every-level': 'demande un second axe à un niveau',
      'one-level-on-every-axis': 'demande un second niveau sur un axe',
      'axes-not-named': 'nommez parmi les limites les axes X et Y du manuel',
      'named-axis-not-measured': 'demande des lectures sur les axes X et Y que nomment les limites',
      'no-common-axis': 'demande un axe lu en haut et en bas',
      'three-contacts-see-no-oval': 'trois touches lisent la moyenne d’un niveau et ne voient pas d’ovale',
    },
    point: (name) => `Montrer sur la paroi : ${name}`,
    barLabel: (low, high, limit) => `de ${low} à ${high}, limite ${limit}`,
  },
  notes: {
    title: 'Ce que ces lectures ne peuvent pas montrer',
    cannotProve: (doubt, needed) =>
      `Cet appareil ne peut rien prouver dans cette plage : il est juste à ${doubt} près. Ce qui le pourrait : ${needed}, et seulement au milieu de la plage.`,
    lessThanAnyGauge: 'moins que n’atteint aucun appareil d’alésage',
    belowNew: (place) =>
      `À ${place}, l’alésage est plus petit que la plus petite cote neuve, au-delà de l’incertitude. Vérifiez la lecture, la classe et la limite ; sur une paroi revêtue, ce peut être du métal du piston collé.`,
    blocked: (place, by) =>
      `La lecture à ${place} est ici : ${by}. Elle est gardée, mais dans aucun verdict tant que vous ne dites pas que les deux touches étaient sur le métal.`,
    soakedApart: (bore, standard, reference) =>
      `L’alésage est noté à ${bore}, et l’étalon (${standard}) à ${reference}, alors qu’ils sont restés côte à côte jusqu’à être égaux. Les deux ne peuvent être vrais ; la différence entre dans chaque cote telle qu’elle est notée.`,
    temperatureDecides: {
      inside: (place, doubt, without) =>
        `${temperatureKeepsOpen(place, doubt, without)} le prouveraient dans les limites.${sideBySide}`,
      above: (place, doubt, without) =>
        `${temperatureKeepsOpen(place, doubt, without)} le prouveraient au-dessus.${sideBySide}`,
      below: (place, doubt, without) =>
        `${temperatureKeepsOpen(place, doubt, without)} le prouveraient au-dessous.${sideBySide}`,
    },
    largeCorrection: (correction, half) =>
      `La correction de température, ${correction}, dépasse la moitié de l’écart entre les limites (${half}). Mesurez plus près de 20 °C.`,
    apart: {
      warmer: (kelvin) => `L’alésage était ${kelvin} K plus chaud que ${apartAdvice}`,
      colder: (kelvin) => `L’alésage était ${kelvin} K plus froid que ${apartAdvice}`,
    },
    evenLobes:
      'Deux touches ne voient que des formes à nombre pair de lobes : une forme à trois coins passe inaperçue. Elles ne peuvent pas dire laquelle des deux parois s’est usée ; les deux sont dessinées pareilles.',
    twoAxes: (between) =>
      `Deux axes peuvent manquer un ovale qui est entre eux, et ne lui mettent pas de borne. Une lecture à ${between} le montrerait.`,
    oneAxis: 'Un seul axe ne montre rien d’un ovale. Mesurez-en un second en travers.',
    gaps: (gaps) => `Personne n’a mesuré ici : ${gaps}.`,
    gap: (from, to) => `de ${from} à ${to}`,
    moreGaps: (count) => (count < 2 ? 'dans un vide de plus' : `dans ${count} vides de plus`),
    notRead: (places) => `Pas encore lus : ${places}.`,
    outOfReach: (places) => `Hors d’atteinte de l’appareil, personne n’y a donc mesuré : ${places}.`,
    places: (shown, more) => (more > 0 ? `${shown.join(' ; ')} ; et encore ${more}` : shown.join(' ; ')),
    lengthNotKnown: (depth) =>
      `La longueur de l’alésage est inconnue : il est dessiné jusqu’à ${depth}, 10 mm après le niveau ou la marque le plus profond.`,
    differenceOfDiameters:
      'L’ovalisation et la conicité sont ici des différences de diamètres. La circularité et la cylindricité d’un dessin sont des différences de rayons : moitié pour un ovale simple ou un cône simple.',
    threeContacts:
      'Trois touches lisent la moyenne d’un niveau : un ovale passe inaperçu, l’ovalisation ne dit donc rien ici, et « dans les limites » ne vaut que pour la moyenne.',
    threeContactsBounded:
      'Trois touches lisent la moyenne d’un niveau. Des lectures à deux touches faites à la même occasion montrent que l’ovale de chaque niveau est trop petit pour changer le verdict.',
    uncertainty: 'Le vrai diamètre est à ± près de son chiffre dans 95 de 100 cas pareils.',
  },
  cautions: {
    title: 'Avant de décider',
    manual:
      'Le manuel d’atelier de ce moteur a le dernier mot, et un rectifieur qualifié devrait voir ce qui le décide.',
    surface:
      'Les chiffres seuls ne décident pas : une rayure ou un bourrelet qui accroche l’ongle, des piqûres sur le passage des segments ou une fissure peuvent condamner un alésage dont la cote est bonne.',
    surfacePlated:
      'Les chiffres seuls ne décident pas : de l’aluminium à nu, un écaillage, une rayure qui accroche l’ongle ou des piqûres sur le passage des segments peuvent condamner un alésage dont la cote est bonne.',
    warm: 'Ne mesurez jamais une pièce encore chaude d’avoir tourné, d’avoir été lavée ou honée.',
    walls: {
      'plated-aluminium':
        'Une paroi revêtue ne peut être ni réalésée ni honée à une cote réparation : elle est revêtue à neuf ou remplacée.',
      'aluminium-silicon':
        'Cette paroi demande une finition à elle : un honage ordinaire la ruine. Laissez-la à un atelier qui fait ce genre.',
    },
    provisional:
      'Ne décidez pas d’un moteur sur un verdict provisoire : notez ce qui manque, puis regardez de nouveau.',
  },
}

const sideBySide =
  ' Laissez l’alésage et la bague ou le micromètre côte à côte jusqu’à être égaux, lisez les deux avec un seul thermomètre, et mesurez de nouveau.'
const apartAdvice =
  'la bague ou le micromètre. Au-delà de 3 K, une pièce a rarement la même température partout : laissez-les côte à côte et mesurez de nouveau.'

function temperatureKeepsOpen(place: string, doubt: string, without: string): string {
  return `La seule incertitude des températures laisse cela ouvert : sans elle, ${doubt} à ${place} serait ${without}, et les mêmes lectures`
}

/** The first few, and how many more there are. */
function listed(names: readonly string[]): string {
  const most = 6
  const shown = names.slice(0, most).join(', ')
  return names.length > most ? `${shown} et ${names.length - most} de plus` : shown
}
