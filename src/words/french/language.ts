import type { language as english } from '../english/language'
import type { Texts } from '../texts'

/** The language itself: how the machine knows it, what it puts before decimals, and the choice of another. */
export const language: Texts<typeof english> = {
  language: {
    locale: 'fr-FR',
    decimalMark: ',',
    menu: 'Langue (Language)',
    title: 'Langue',
    lead: 'Enregistrée sur cette machine seulement. La page se recharge pour elle ; tout ce qui est entré reste.',
    unreviewed: 'pas encore relu par une personne qui le parle',
    waiting:
      'Une partie de ce qui a été tapé n’est pas encore prise et serait perdue. Prenez-la ou videz son champ, puis choisissez de nouveau la langue.',
    notSaved:
      'Le dossier n’a pas pu être enregistré, et la page doit se recharger pour une autre langue. Enregistrez-le d’abord dans un fichier.',
    notKept:
      'Ce navigateur ne garde rien sur cette machine, le choix d’une langue serait donc aussitôt perdu.',
  },
  lengths: {
    mm: 'Écrire les longueurs en mm',
    inch: 'Écrire les longueurs en pouces',
    change: 'unité des longueurs',
  },
}
