import type { firstPage as english } from '../english/first-page'
import type { Texts } from '../texts'

/** The page of a browser that has no job yet, and the examples, in French. */
export const firstPage: Texts<typeof english> = {
  firstPage: {
    heading: 'Mesurez un alésage, et voyez ce que prouvent les lectures',
    lead: 'Tapez ce que lit un comparateur d’alésage. Borewall le ramène à de vrais diamètres à 20 °C, dit ce qui est dans ses limites, ce qui est hors d’elles et ce qui est trop juste pour trancher, et dessine la paroi.',
    start: 'Par quoi commencer',
    measure: 'Mesurer un alésage',
    measureHint: 'Commence un dossier vide.',
    open: 'Ouvrir un fichier…',
    openHint: 'Un dossier enregistré par Borewall, ou un tableau de lectures.',
    dropHint: 'Ou déposez-le n’importe où sur cette page.',
    kept: 'Liste des dossiers',
    keptHint: 'Quelque chose est enregistré dans ce navigateur, mais pas le dossier ouvert en dernier.',
    manual:
      'Le manuel d’atelier du moteur sur l’établi a le dernier mot, et un rectifieur qualifié devrait voir ce qui le décide.',
  },
  examples: {
    title: 'Regarder un exemple',
    lead: 'Tous les chiffres sont inventés. Chacun s’ouvre comme copie : changez-y ce que vous voulez.',
    list: {
      A: {
        name: 'Un cylindre deux-temps usagé à côté d’un neuf',
        shows:
          'Dans sa limite d’usure ; l’ovalisation est trop juste pour trancher. Les lumières empêchent de mesurer une partie de la paroi.',
      },
      B: {
        name: 'Un bloc de quatre cylindres en fonte',
        shows:
          'Quatre alésages, un seul réglage de l’appareil. Le troisième dépasse sa conicité, le quatrième est trop juste pour trancher.',
      },
      'B-as-typed': {
        name: 'Le même bloc tel qu’il a été tapé',
        shows:
          'Avec deux erreurs parmi les lectures. Borewall demande pour les deux, et une touche corrige chacune.',
      },
      C: {
        name: 'Une chemise de diesel en quatre visites',
        shows:
          'La troisième visite a été mesurée chaude et lit partout 12 µm de trop ; les deux températures l’enlèvent.',
      },
      D1: {
        name: 'Un compresseur couché',
        shows:
          'Usé en tonneau, et dans ses limites. Sa conicité dépend de la règle ; la note parle de sa rouille.',
      },
      D2: {
        name: 'Un tube hydraulique',
        shows:
          'Toutes les lectures sont bien dans les limites, et une rayure de la paroi le condamne quand même.',
      },
      E: {
        name: 'Un cylindre deux-temps grippé, palpé sur tout le tour',
        shows:
          'Un palpeur a lu sa paroi à chaque degré : quatre bavures avec de fines rayures dedans, et un pontet qui dépasse.',
      },
      'E-72': {
        name: 'Le même cylindre, palpé tous les 5°',
        shows:
          'Aucun comparateur n’y est passé : le palpage montre la forme et aucune cote. À ce pas, la plupart des rayures sont manquées.',
      },
    },
    unknown: (name) => `Il n’y a pas d’exemple du nom de « ${name} ». Ceux qu’il y a sont sous « Exemples ».`,
    notLoaded:
      'L’exemple n’a pas pu être chargé. Borewall tourne-t-il encore sur cette machine ? Alors rechargez la page et essayez de nouveau.',
  },
  note: {
    title: 'Note',
    menu: 'Note…',
    about: 'Sur cet exemple',
    lead: 'Enregistrée avec le dossier, et imprimée avec ses constats : une place pour la rouille, les rayures et tout ce que ne montre aucun chiffre.',
  },
}
