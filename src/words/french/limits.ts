import type { limits as english } from '../english/limits'
import type { Texts } from '../texts'

/** The sentences about limits, and the names of the rules they are judged by, in French. */
export const limits: Texts<typeof english> = {
  limits: {
    title: 'Limites',
    source: 'D’après le manuel d’atelier de ce moteur. Borewall ne fournit aucune limite.',
    band: 'Neuf {newMin} à {newMax} mm ; limite d’usure {wearLimit} mm.',
    ovality: 'Ovalisation jusqu’à {ovalityLimit} mm, jugée ainsi : {ovalityRule}.',
    ovalityAxes: 'Le manuel appelle X l’axe à {ovalityX}° et Y l’axe à {ovalityY}°.',
    taper: 'Conicité jusqu’à {taperLimit} mm, jugée ainsi : {taperRule}.',
    proportions:
      'En proportion : ovalisation jusqu’à {ovalityPerMm} et conicité jusqu’à {taperPerMmOfBore} mm par mm d’alésage ; conicité jusqu’à {taperPerMmOfTravel} mm par mm de course, qui est de {travel} mm. De plusieurs limites, la plus petite est jugée.',
    more: 'Plus de limites',
    oversizes: 'Cotes réparation du manuel : {oversizes} mm. Cet alésage a été fini à : {oversize}.',
    standardSize: 'la cote d’origine',
    oversizeOf: (mm) => `+${mm}`,
    oversizeMoves: (oversize) =>
      `Fini à une cote réparation de ${oversize} : chaque cote des limites est plus grande d’autant.`,
    interval: 'À mesurer de nouveau toutes les {serviceInterval} h.',
    grade: 'Classe {gradeName} : {gradeMin} à {gradeMax}',
    boreGrade: 'Marqué sur cet alésage : {grade}.',
    labels: {
      newMin: 'Plus petite cote neuve, mm',
      newMax: 'Plus grande cote neuve, mm',
      wearLimit: 'Limite d’usure, plus grande cote en service, mm',
      ovalityLimit: 'Limite d’ovalisation, mm',
      ovalityRule: 'Règle d’ovalisation',
      ovalityX: 'Axe X du manuel, degrés',
      ovalityY: 'Axe Y du manuel, degrés',
      taperLimit: 'Limite de conicité, mm',
      taperRule: 'Règle de conicité',
      ovalityPerMm: 'Limite d’ovalisation par mm d’alésage, mm',
      taperPerMmOfBore: 'Limite de conicité par mm d’alésage, mm',
      taperPerMmOfTravel: 'Limite de conicité par mm de course, mm',
      travel: 'Course du piston, mm',
      serviceInterval:
        'Intervalle d’entretien, heures après lesquelles le manuel fait mesurer l’alésage de nouveau',
      gradeName: 'Nom de la classe',
      gradeMin: 'Plus petite cote de la classe, mm',
      gradeMax: 'Plus grande cote de la classe, mm',
      grade: 'Classe marquée sur cet alésage',
      oversizes: 'Cotes réparation du manuel, mm, avec des espaces entre elles',
      oversize: 'Cote réparation de cet alésage',
    },
    none: 'aucune donnée',
    noGrade: 'aucune classe',
    addGrade: 'Ajouter une classe',
    removeGrade: (name) => `Retirer la classe ${name}`,
    wearAlone: 'S’il y a une limite d’usure, elle seule est jugée ; la cote neuve est dessinée.',
    rulesDiffer:
      'Les mêmes lectures peuvent passer une règle et non une autre. Choisissez celle qu’imprime votre manuel.',
  },
  ovalityRules: {
    'largest-less-smallest-at-a-level': 'plus grand moins plus petit à un niveau',
    'across-less-along-at-a-level': 'X moins Y à un niveau',
    pooled: 'plus grand sur X moins plus petit sur Y, tous niveaux ensemble',
  },
  taperRules: {
    'between-levels-of-an-axis': 'plus grand moins plus petit le long d’un axe',
    'top-less-bottom-of-an-axis': 'haut moins bas sur un axe',
    'largest-top-less-largest-bottom': 'plus grand en haut moins plus grand en bas',
    'largest-top-less-smallest-bottom': 'plus grand en haut moins plus petit en bas',
    'level-means': 'moyenne en haut moins moyenne en bas',
  },
}
