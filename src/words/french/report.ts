import type { report as english } from '../english/report'
import type { Texts } from '../texts'

/** The findings as a page of text, and what its command says, in French. */
export const report: Texts<typeof english> = {
  report: {
    title: (job) => `Ce que prouvent les lectures : ${job}`,
    untitled: 'un dossier sans nom',
    invented: 'Un exemple : tous les chiffres sont inventés.',
    machine: (machine) => `Machine : ${machine}`,
    note: (note) => `Note : ${note}`,
    bore: (name) => `Alésage ${name}`,
    surveyOf: (bore, number, all) => `${bore}, relevé ${number} sur ${all}`,
    comparison: (name) => `Alésage ${name}, pour comparaison`,
    measured: {
      on: (day) => `Mesuré le ${day}.`,
      undated: 'Le jour de la mesure n’a pas été noté.',
      hours: (hours) => `Heures de marche : ${hours}.`,
    },
    table: 'Diamètres à 20 °C en mm, ± U (95 %)',
    depthHead: 'Profondeur',
    notMeasured: '–',
    noStations: 'Aucune lecture.',
    noBores: 'Le dossier n’a aucun alésage avec un relevé.',
  },
  inspect: {
    usage: [
      'Usage : npm run inspect -- FICHIER [--json] [--language CODE]',
      'ou : npm run inspect -- TABLEAU.csv --spec DOSSIER [--json]',
      'ou : npm run inspect -- PALPAGE.csv [--diameter 60] [--json]',
      '',
      'Écrit ce que prouvent les lectures d’un fichier de dossier. Avec --json, la même',
      'chose en un objet JSON : longueurs en mm, angles en degrés, probabilités de 0 à 1.',
      'null est mis là où un chiffre n’existe pas, et pour un nombre infini de degrés de',
      'liberté.',
      '',
      'Un tableau de lectures (csv, tsv ou txt) nomme profondeur, axe et lectures en tête',
      'de ses colonnes, chacune avec son unité : depth_mm, axis_deg, size_mm (size_in,',
      'dial_um, deviation_um). DOSSIER est un fichier de dossier sans lectures : limites,',
      'alésages et montage.',
      '',
      'Un fichier de rayons nomme profondeur, angle et rayon avec leurs unités : depth_mm,',
      'angle_deg, radius_um, une ligne pour chaque rayon ; ou il a les angles en travers et',
      'une ligne pour chaque profondeur. Avec le diamètre approximatif de l’alésage, en mm,',
      'les anomalies sont cherchées.',
      '',
      'Code de sortie : 0 lu et rapporté, 1 fichier illisible, 2 mauvais usage.',
    ].join('\n'),
    languages: (codes) => `Nommez après --language une langue qui existe : ${codes.join(', ')}.`,
    oneFile: 'Nommez un fichier de dossier.',
    specForTable:
      'Nommez le fichier de dossier qui porte limites et montage pour ce tableau : --spec DOSSIER.',
    noSpecForJob: '--spec va avec un tableau de lectures ; un fichier de dossier a ses propres limites.',
    specHasReadings:
      'Ce dossier contient des lectures. Nommez-en un sans : limites, alésages et montage seuls.',
    nothingInTable: 'Il ne contient aucune lecture.',
    openInTable: (question) => `${question} Nommez les colonnes en leur tête.`,
    unknownOption: (option) => `Il n’y a pas d’option ${option}.`,
    cannotRead: (file) => `${file} n’a pas pu être lu :`,
    fileErrors: {
      'file-not-found':
        'Il n’y a pas de tel fichier. Vérifiez le nom ; un nom relatif part du dossier où vous êtes.',
      'file-is-folder': 'C’est un répertoire. Nommez le fichier de dossier qui s’y trouve.',
      'file-not-allowed': 'Vous ne pouvez pas lire ce fichier. Vérifiez ses droits d’accès.',
      'file-unreadable': 'Le fichier n’a pas pu être lu sur le disque.',
    },
    ourMistake: 'Borewall a fait ici une faute ; le fichier est peut-être bon. Ce qui s’est passé :',
  },
}
