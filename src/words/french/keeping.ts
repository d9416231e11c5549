import type { keeping as english } from '../english/keeping'
import type { Texts } from '../texts'

/** Whether the job is kept, where, by which tab, and what to do when it is not, in French. */
export const keeping: Texts<typeof english> = {
  saving: {
    saved: (time) => `Enregistré ${time}`,
    saving: 'Enregistrement…',
    notYet: 'Inchangé',
    failed: 'Non enregistré',
    failedKept:
      'Non enregistré. Ce que vous avez entré est encore sur cette page ; enregistrez-le dans un fichier.',
    retry: 'Essayer de nouveau',
    toFile: 'Enregistrer dans un fichier',
    keepAgain: 'L’enregistrer de nouveau',
    errors: {
      quota:
        'Ce navigateur n’a plus de place pour Borewall. Enregistrez le dossier dans un fichier, puis faites de la place.',
      blocked:
        'Un autre onglet tient les dossiers enregistrés dans une version plus ancienne. Fermez les autres onglets de Borewall, puis essayez de nouveau.',
      unavailable:
        'Ce navigateur ne garde rien ici (une fenêtre privée, ou le stockage coupé). Enregistrez le dossier dans un fichier avant de fermer la page.',
      mismatch:
        'Ce que le navigateur a gardé n’est pas ce qui lui a été remis. Enregistrez le dossier dans un fichier ; ne vous fiez pas à ce navigateur.',
      newer:
        'Un Borewall plus récent garde ici un dossier de même identité ; il reste tel quel. Enregistrez celui-ci dans un fichier.',
      'newer-shelf':
        'Un Borewall plus récent a rangé autrement les dossiers enregistrés, et cette page plus ancienne ne peut pas les atteindre. Enregistrez ce dossier dans un fichier, puis rechargez la page.',
      gone: 'Le dossier n’est plus parmi ceux qui sont enregistrés dans ce navigateur : ses données ont été effacées, ou le dossier a été supprimé dans un autre onglet. D’autres dossiers manquent peut-être aussi.',
      overtaken:
        'Un autre onglet a repris ce dossier avant que la dernière modification soit enregistrée. Elle a été mise de côté dans la liste des dossiers.',
    },
    unreachable: 'Les dossiers enregistrés dans ce navigateur ne peuvent pas être atteints maintenant.',
    unreachableWhy: {
      quota: 'Ce navigateur n’a plus de place pour Borewall. Faites de la place, puis essayez de nouveau.',
      blocked:
        'Un autre onglet les tient dans une version plus ancienne. Fermez les autres onglets de Borewall, puis essayez de nouveau.',
      unavailable:
        'Ce navigateur ne garde rien ici (une fenêtre privée, ou le stockage coupé). Ce que vous tapez ne dure qu’autant que cette page : enregistrez-le dans un fichier avant de la fermer.',
      mismatch: 'Ce que le navigateur a gardé n’est pas ce qui lui a été remis.',
      newer: 'Un Borewall plus récent les garde. Rechargez la page pour l’obtenir.',
      'newer-shelf': 'Un Borewall plus récent les a rangés autrement. Rechargez la page pour l’obtenir.',
      gone: 'Ils ont été supprimés.',
      overtaken: 'Un autre onglet les a repris.',
    },
    leaving: 'La dernière modification n’est pas encore enregistrée.',
    leaveAnyway: 'Quitter sans enregistrer',
  },
  jobsTaken: {
    title: (file) => `Dossiers de ${file}`,
    taken: (count) => `Pris : ${count}`,
    copied: (count) => `Pris comme copies, car un autre état est enregistré ici : ${count}`,
    same: (count) => `Déjà enregistrés ici, identiques : ${count}`,
    refused: (count) => `Illisibles : ${count}`,
    limits: (count) => `Limites pour d’autres dossiers, prises : ${count}`,
    limitsUnread: (count) => `Limites pour d’autres dossiers, illisibles : ${count}`,
  },
  keeping: {
    title: 'Comment ce dossier est enregistré',
    details: (state) => `${state} : comment ce dossier est enregistré`,
    inBrowser:
      'Dans ce navigateur seulement ; rien n’est envoyé nulle part. La copie sûre est un fichier au-dehors.',
    reminder: {
      'never-copied': 'Dans ce navigateur seulement.',
      'changed-since': 'Modifié depuis son dernier fichier.',
    },
    dismiss: 'Pas aujourd’hui',
    dismissLabel: 'Ne plus le rappeler aujourd’hui',
    copied: (when) => `Enregistré en dernier dans un fichier : ${when}.`,
    notCopied: 'Pas encore enregistré dans un fichier.',
    persistence: {
      'not-asked':
        'Le navigateur est prié de garder les dossiers pour de bon à la première modification enregistrée.',
      granted: 'Le navigateur a promis de ne pas effacer les dossiers de lui-même.',
      refused:
        'Le navigateur n’a pas promis de garder les dossiers : quand le disque se remplit, il peut les effacer de lui-même. Un fichier en est à l’abri.',
      unknown: 'Ce navigateur ne dit pas s’il peut effacer les dossiers de lui-même.',
    },
    used: (used, of) => `Borewall utilise ${used} sur les ${of} que ce navigateur lui accorde.`,
    megabytes: (count) =>
      count < 1000
        ? `${count < 10 ? count.toFixed(1).replace('.', ',') : Math.round(count)} Mo`
        : `${Math.round(count / 1000)} Go`,
    pen: {
      held: 'Cet onglet écrit le dossier ; les autres onglets qui le montrent suivent.',
      following: 'Un autre onglet écrit le dossier ; celui-ci suit.',
    },
  },
  folder: {
    label: 'Copies dans un répertoire',
    impossible:
      'Ce navigateur ne laisse aucune page écrire dans un de vos répertoires ; enregistrez plutôt des fichiers.',
    off: 'Chaque dossier peut aussi être écrit dans un de vos répertoires, de nouveau après chaque enregistrement.',
    pick: 'Choisir un répertoire…',
    pickOther: 'Un autre répertoire…',
    allow: 'Continuer avec lui',
    leave: 'Ne plus écrire de copies',
    asks: (folder) =>
      `Les copies vont dans le répertoire ${folder} dès que vous permettez de nouveau au navigateur d’y écrire.`,
    on: (folder) => `Les copies vont dans le répertoire ${folder}.`,
    written: (folder, file) =>
      `Ce dossier est dans le répertoire ${folder} sous le nom ${file}, tel qu’il a été enregistré en dernier.`,
    failed: {
      gone: (folder) =>
        `Le répertoire ${folder} n’est plus là, aucune copie n’a donc été écrite. Choisissez-en un autre.`,
      refused: (folder) =>
        `Le navigateur ne laisse pas Borewall écrire dans le répertoire ${folder}. Choisissez-le de nouveau pour le permettre.`,
      'no-room': (folder) =>
        `Il n’y a pas de place dans le répertoire ${folder}, aucune copie n’a donc été écrite.`,
      'not-written': (folder) =>
        `La copie dans le répertoire ${folder} n’a pas pu être écrite en entier. Un nouvel essai aura lieu au prochain enregistrement.`,
    },
  },
  versions: {
    menu: 'Versions antérieures…',
    title: 'Versions antérieures de ce dossier',
    lead: (most) =>
      `Enregistrées dans ce navigateur quand une séance commence, toutes les dix minutes de travail, et avant qu’on revienne à l’une d’elles : ${most} au plus, d’autant moins qu’elles sont anciennes.`,
    none: 'Aucune encore. La première est enregistrée quand le dossier est modifié dans une séance ultérieure ou après dix minutes.',
    why: {
      session: 'tel qu’il était quand une séance a commencé',
      interval: 'au cours du travail',
      restore: 'avant qu’une version antérieure soit reprise',
      'take-over': 'avant qu’un autre onglet le reprenne',
      replace: 'avant qu’un fichier prenne sa place',
    },
    held: (name, readings) => `${name}, ${readings}`,
    unreadable: 'Ce Borewall ne peut pas lire cette version.',
    look: 'Regarder',
    lookAt: (when) => `Regarder la version : ${when}`,
    textOf: (when) => `Constats de la version : ${when}`,
    restore: 'Reprendre',
    restoreOf: (when) => `Reprendre la version : ${when}`,
    restored: (when) => `Retour à la version ${when} ; vous pouvez l’annuler`,
  },
  pen: {
    label: 'Quel onglet écrit',
    following:
      'Un autre onglet écrit ce dossier. Vous voyez ici chaque modification dès qu’elle est enregistrée.',
    handingOver: 'Un autre onglet reprend ce dossier…',
    lost: {
      saved: 'Un autre onglet a repris ce dossier. Ce que vous avez entré ici est enregistré.',
      'set-aside':
        'Un autre onglet a repris ce dossier. Votre dernière modification est venue trop tard pour être enregistrée ; elle a été mise de côté dans la liste des dossiers.',
      unsaved:
        'Un autre onglet a repris ce dossier. Votre dernière modification n’a pas pu être enregistrée ; elle est encore sur cette page.',
    },
    takeOver: 'Écrire plutôt ici',
    unsavedAsk:
      'L’autre onglet a une modification qu’il n’a pas pu enregistrer. Regardez-y d’abord ; ou reprenez le dossier tel qu’il a été enregistré en dernier.',
    takeOverAnyway: 'Le reprendre quand même',
    unguarded:
      'Ce navigateur ne peut pas dire si un autre onglet écrit le même dossier. Ne le gardez ouvert que dans un onglet.',
    replaced:
      'Ce qu’un autre onglet ou un fichier avait mis à la place de ce dossier a été mis de côté dans la liste des dossiers.',
    notReplaced:
      'Un autre onglet écrit ce dossier, il n’a donc pas été remplacé. Reprenez-le d’abord, ou ouvrez le fichier comme copie.',
  },
}
