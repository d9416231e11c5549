import type { keptSpecs as english } from '../english/kept-specs'
import type { Texts } from '../texts'

/** Limits that were typed once, kept for other jobs, in French. */
export const keptSpecs: Texts<typeof english> = {
  keptSpecs: {
    title: 'Limites gardées',
    lead: 'Ce que vous avez tapé d’après vos propres manuels d’atelier, enregistré dans ce navigateur pour le prochain moteur du même genre. Borewall n’apporte aucune limite à lui : comparez-les au manuel avant de vous y fier.',
    none: 'Rien n’est encore gardé. Tapez les limites d’un dossier, puis choisissez « Garder ces limites ».',
    take: 'Commencer avec des limites gardées…',
    takeHint:
      'Les limites avec leurs règles, le cylindre, ses niveaux et ses axes, et comment il est mesuré.',
    keep: 'Garder ces limites…',
    keepName: 'Nom de ces limites',
    keepDo: 'Garder',
    keptAs: (name, day) => `Limites gardées sous « ${name} » le ${day}, d’après le manuel de l’utilisateur.`,
    typedOn: (day) => `tapé le ${day}, d’après le manuel de l’utilisateur`,
    taken: (name) => `limites de « ${name} »`,
    kept: (name) => `Gardé sous le nom ${name}.`,
    replaceAsk: (name) => `Des limites sont déjà gardées sous ${name}. Mettre celles-ci à leur place ?`,
    replace: 'Mettre à leur place',
    rename: (name) => `Nom : ${name}`,
    nameNeeded: 'Il faut un nom.',
    newJob: 'Nouveau dossier',
    newJobFrom: (name) => `Nouveau dossier avec ${name}`,
    remove: 'Retirer',
    removeNamed: (name) => `Retirer ${name}`,
    removed: (name) => `${name} retiré.`,
    undo: 'Annuler',
    unread: (names) =>
      `Illisibles, et laissées telles quelles : ${names.map((name) => `« ${name} »`).join(', ')}.`,
    noName: 'sans nom',
    band: (from, to) => `neuf ${from} à ${to}`,
    bandFrom: (from) => `neuf à partir de ${from}`,
    bandTo: (to) => `neuf jusqu’à ${to}`,
    grades: (names) => `classes ${names.join(', ')}`,
    wear: (limit) => `limite d’usure ${limit}`,
    ovality: (limit) => `ovalisation ${limit}`,
    taper: (limit) => `conicité ${limit}`,
    bores: (count) => (count < 2 ? `${count} alésage` : `${count} alésages`),
  },
}
