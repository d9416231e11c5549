import type { send as english } from '../english/send'
import type { Texts } from '../texts'

/** Sending the findings: what is sent, in which ways, and what was done, in French. */
export const send: Texts<typeof english> = {
  send: {
    open: 'Envoyer',
    title: 'Envoyer ce que prouvent les lectures',
    lead: 'Rien ne quitte cette machine avant que vous ne choisissiez un moyen. Le texte porte sur tous les alésages, l’image sur celui de la page Mesurer.',
    text: 'Texte',
    picture: 'Image',
    pictureOf: (bore, verdict) => `Image à envoyer. ${bore} : ${verdict}`,
    drawing: 'L’image se dessine…',
    flat: 'Ce navigateur ne dessine pas d’image en 3D ici, la carte à plat est donc envoyée.',
    noPicture: {
      'no-readings': 'Il n’y a rien à dessiner avant la première lecture. Le texte peut être envoyé.',
      failed: 'L’image n’a pas pu être dessinée dans ce navigateur. Le texte peut être envoyé quand même.',
    },
    ways: {
      share: 'Partager texte et image…',
      'share-text': 'Partager le texte…',
      'copy-text': 'Copier le texte',
      'copy-picture': 'Copier l’image',
      'save-text': 'Enregistrer le texte',
      'save-picture': 'Enregistrer l’image',
    },
    saveForPrint: 'Enregistrer l’image à imprimer',
    done: {
      share: 'Remis à l’endroit choisi',
      copiedText: 'Texte copié',
      copiedPicture: 'Image copiée',
      saved: (name) => `Enregistré sous le nom ${name}, là où ce navigateur met ses téléchargements`,
    },
    handOver: {
      title: 'Un fichier pour le propriétaire',
      lead: 'Une page qui s’ouvre dans tout navigateur, sans réseau : ce que cela veut dire en mots simples, l’image à tourner, tous les chiffres et lectures. Borewall la rouvre comme un dossier.',
      make: 'Enregistrer le fichier pour le propriétaire',
      making: 'Le fichier se prépare…',
      failed:
        'Le fichier n’a pas pu être fait dans ce navigateur. Enregistrez le texte et l’image à la place.',
    },
    cancelled: 'Fermé sans rien partager',
    failed: {
      share:
        'Le système ne l’a pas pris pour le partage. Enregistrez le texte et l’image, et envoyez les fichiers.',
      'share-text': 'Le système ne l’a pas pris pour le partage. Enregistrez le texte et envoyez le fichier.',
      'copy-text':
        'Ce navigateur n’a pas permis de copier le texte. Sélectionnez-le ci-dessus et copiez-le, ou enregistrez-le.',
      'copy-picture': 'Ce navigateur n’a pas permis de copier l’image. Enregistrez-la à la place.',
      'save-text': 'Le fichier n’a pas pu être enregistré. Sélectionnez le texte ci-dessus et copiez-le.',
      'save-picture': 'Le fichier n’a pas pu être enregistré. Essayez de copier l’image à la place.',
    },
  },
  sentPicture: {
    bore: (name, survey) => `${name}. ${survey}`,
    questionsOpen: (count) =>
      count === 1
        ? 'Une question sur une lecture est ouverte.'
        : `${count} questions sur des lectures sont ouvertes.`,
    betweenReadings:
      'Entre les lectures, la paroi est dessinée pour l’œil ; le verdict vient des lectures seules.',
    madeWith: (app) => `Dessiné par ${app}.`,
  },
}
