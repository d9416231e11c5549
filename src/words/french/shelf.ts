import type { shelf as english } from '../english/shelf'
import type { Texts } from '../texts'

/** The list of all jobs, and the limits kept for use in other jobs, in French. */
export const shelf: Texts<typeof english> = {
  shelf: {
    title: 'Liste des dossiers',
    lead: 'Borewall enregistre les dossiers dans ce navigateur seulement. La copie sûre est un fichier.',
    back: 'Retour à la page Mesurer',
    toFirstPage: 'Retour',
    newJob: 'Nouveau dossier',
    open: 'Ouvrir un fichier…',
    search: 'Chercher',
    searchHint: 'Nom, machine, note ou personne',
    filters: 'Filtres',
    filtersSet: (count) => (count === 1 ? 'Filtres : 1 actif' : `Filtres : ${count} actifs`),
    clear: 'Enlever les filtres',
    labels: {
      machine: 'Machine',
      from: 'Relevé depuis le',
      to: 'Relevé jusqu’au',
      standing: 'Verdict',
      check: 'Prochain contrôle',
      where: 'Affichés',
      order: 'Ordre',
    },
    anyMachine: 'toute machine',
    noMachine: 'aucune machine entrée',
    anyStanding: 'tout verdict',
    anyCheck: 'tout jour',
    checks: { due: 'dû', soon: 'dû dans les 30 jours', some: 'à un jour donné', none: 'aucun jour connu' },
    checkOn: (day) => `contrôle ${day}`,
    checkDue: (day) => `contrôle dû ${day}`,
    checkAt: (hours) => `contrôle à ${hours} h`,
    where: { shelf: 'la liste', archived: 'les archives', deleted: 'les supprimés' },
    orders: {
      changed: 'dernière modification',
      surveyed: 'dernier relevé',
      check: 'prochain contrôle, le plus proche d’abord',
      name: 'nom',
      verdict: 'verdict, le pire d’abord',
    },
    heads: {
      name: 'Dossier et machine',
      maps: 'Alésages',
      verdict: 'Le pire',
      surveyed: 'Relevé',
      changed: 'Modifié',
      readings: 'Lectures',
      more: 'Plus',
    },
    count: (all) => (all < 2 ? `${all} dossier` : `${grouped(all)} dossiers`),
    found: (found, all) =>
      all < 2 ? `${grouped(found)} sur ${all} dossier` : `${grouped(found)} sur ${grouped(all)} dossiers`,
    looking: 'Lecture de la liste…',
    summing: (done, of) => `Résumé des dossiers plus anciens : ${grouped(done)} sur ${grouped(of)}`,
    none: {
      shelf: 'Aucun dossier n’est encore enregistré dans ce navigateur.',
      archived: 'Rien n’est archivé.',
      deleted: 'Rien n’a été supprimé.',
      found: 'Aucun dossier ne correspond.',
    },
    bore: (name) => `Alésage ${name}`,
    judgedOf: (judged, bores) => `${judged} sur ${bores} jugés`,
    surfaceMayEnd: 'la surface peut le condamner',
    surveyed: (day) => `relevé ${day}`,
    changed: (when) => `modifié ${when}`,
    readings: (count) => (count < 2 ? `${count} lecture` : `${grouped(count)} lectures`),
    notSurveyed: 'pas de date',
    onBench: 'en cours',
    goneOn: (day) => `supprimé ${day}`,
    unread: {
      newer: 'Écrit par un Borewall plus récent. Il reste tel quel.',
      unreadable: 'Illisible. Ouvrez-le pour voir ce qui ne va pas.',
      'not-summed-up': 'N’a pas pu être résumé. Il peut être ouvert.',
    },
    more: (name) => `Plus sur ${name}`,
    acts: {
      open: 'Ouvrir',
      duplicate: 'Copier',
      archive: 'Archiver',
      unarchive: 'Sortir des archives',
      delete: 'Supprimer',
      restore: 'Remettre dans la liste',
    },
    did: {
      duplicated: (name) => `Copié sous le nom ${name}.`,
      archived: (name) => `${name} est archivé.`,
      unarchived: (name) => `${name} est de nouveau dans la liste.`,
      deleted: (name) => `${name} est supprimé. Il reste 30 jours parmi les dossiers supprimés.`,
      restored: (name) => `${name} est de nouveau dans la liste.`,
    },
    undo: 'Annuler',
    gone: 'Ce dossier n’est plus enregistré dans ce navigateur.',
  },
}

/** 10 000, with a narrow space that does not break. */
function grouped(count: number): string {
  return `${count}`.replace(/\B(?=(\d{3})+$)/g, '\u202f')
}
