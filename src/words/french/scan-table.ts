import type { scanTable as english } from '../english/scan-table'
import type { Texts } from '../texts'

/** A file of radii before it is taken: what it holds, and what is wrong in it, in French. */
export const scanTable: Texts<typeof english> = {
  reading: 'Lecture du palpage…',
  progress: (percent) => `${percent} % du fichier`,
  lead: 'Vérifiez ce que contient le fichier. Rien n’est pris avant que vous ne le disiez.',
  notRead: {
    empty: 'Il n’y a rien dans ce fichier.',
    'no-text':
      'Ce n’est pas un fichier de texte. Enregistrez le palpage en CSV ou en texte avec tabulations, puis ouvrez celui-là.',
    'too-large':
      'Ce fichier contient plus d’un million de rayons. Laissez de côté un niveau ou un angle sur deux.',
    'commas-only':
      'Les virgules peuvent séparer les cellules ou être décimales. Dites quel signe sépare les cellules.',
    'no-heads':
      'Aucune ligne ne nomme ce que contiennent les colonnes. Donnez soit une liste avec les têtes « depth mm, angle °, radius µm », une ligne pour chaque rayon, soit un tableau avec « depth mm / radius µm » dans sa première cellule, les angles en travers et une ligne pour chaque profondeur.',
    diameters:
      'Les têtes parlent de diamètres. Un palpage contient des rayons : à quelle distance de l’axe du palpeur se trouve une paroi.',
    'no-values': 'Aucun rayon de ce fichier n’a pu être lu.',
    'too-few-angles': 'Il y a moins de trois angles dans ce fichier : aucun cercle n’y passe.',
    'too-many-places': 'Profondeurs et angles font plus d’un million d’endroits. Laissez-en de côté.',
    'angles-differ': (line, depth) =>
      `Les niveaux n’ont pas été mesurés aux mêmes angles : la ligne ${line} a un angle qui manque au niveau à ${depth}. Mettez d’abord tous les niveaux aux mêmes angles.`,
  },
  open: {
    'value-unit': 'Les têtes ne disent pas dans quelle unité sont les rayons. Dites-la.',
    'depth-unit': 'Les têtes ne disent pas dans quelle unité sont les profondeurs. Dites-la.',
    decimal: 'Certains nombres ont une virgule et d’autres un point. Dites quel est le signe décimal.',
  },
  problems: {
    letters: (text) =>
      `« ${text} » contient des lettres. Un rayon est un nombre ; laissez la cellule vide là où il y a une lumière.`,
    'other-sign': (text) => `« ${text} » n’est pas un nombre.`,
    'inner-space': (text) => `« ${text} » contient une espace.`,
    'sign-place': (text) => `« ${text} » a un signe là où il n’en faut pas.`,
    'both-marks': (text) => `« ${text} » a une virgule et un point. Écrivez-le sans signe pour les milliers.`,
    'several-marks': (text) => `« ${text} » a plus d’un signe décimal.`,
    'too-long': (text) => `« ${text} » est plus long que tout chiffre d’un palpeur.`,
    'too-large': (text) => `« ${text} » est plus grand que tout ce qui se mesure ici.`,
    'other-mark': (text) => `« ${text} » a un autre signe décimal que le reste du fichier.`,
    'mark-open': (text) =>
      `« ${text} » : personne n’a encore dit si c’est la virgule ou le point qui est décimal.`,
    'no-depth': () => 'Il n’y a pas de profondeur.',
    'no-angle': () => 'Il n’y a pas d’angle.',
    'radius-too-large': (text) => `« ${text} » est un rayon de plus de 2 m. L’unité est-elle la bonne ?`,
    'cells-missing': (text, other) =>
      `Cette ligne a ${text} cellules là où les têtes en ont ${other}. Écrivez des cellules vides là où il y a une lumière.`,
    'cells-left-over': (text, other) => `Cette ligne a ${text} cellules là où les têtes en ont ${other}.`,
    'read-twice': (_text, other) =>
      `L’endroit est aussi à la ligne ${other}, avec un autre chiffre. C’est celui de la ligne ${other} qui est pris.`,
    'quote-left-open': () => 'Un guillemet de cette ligne n’est jamais fermé.',
  },
  place: (line, column) => `Ligne ${line}, colonne ${column}`,
  line: (line) => `Ligne ${line}`,
  moreProblems: (count) => `et encore ${count}`,
  problemsTitle: (count) => `Illisibles : ${count}`,
  problem: 'un endroit',
  manyProblems: (count) => `${count} endroits`,
  problemsKept: 'Tout le reste a été lu. Ces endroits restent vides si vous prenez le palpage tel quel.',
  labels: {
    separator: 'Les cellules sont séparées par',
    decimal: 'Signe décimal',
    depthUnit: 'Unité des profondeurs',
    valueUnit: 'Unité des rayons',
    sign: 'Un chiffre plus grand est',
    turn: 'Les angles, vus du plan de joint, vont dans le sens',
    name: 'Nom',
    date: 'Date',
    hours: 'Heures de marche',
    cleaning: 'Pris',
  },
  units: { mm: 'mm', um: 'µm', inch: 'pouce', 'ten-thousandth': '0,0001 in' },
  signs: { outward: 'plus loin de l’axe', inward: 'plus près de l’axe' },
  turns: { clockwise: 'horaire', 'counter-clockwise': 'antihoraire' },
  cleaning: { before: 'avant nettoyage', after: 'après nettoyage' },
  cleaningOpen: 'non dit',
  choose: 'À préciser',
  rows: {
    levels: 'Niveaux',
    angles: 'Angles',
    values: 'Rayons',
    missing: 'Endroits vides',
    range: 'Étendue',
    layout: 'Disposition',
  },
  layouts: {
    list: 'une liste, une ligne pour chaque rayon',
    table: 'un tableau, profondeur vers le bas et angle en travers',
  },
  levels: (count, from, to) => `${count}, de ${from} à ${to}`,
  angles: (count, step) => `${count}, tous les ${step}`,
  anglesUneven: (count, least, most) => `${count}, écartés de ${least} à ${most}`,
  missing: (count, share) => `${count} (${share} %) : pris comme lumières ou non mesurés`,
  range: (least, most) => `${least} à ${most}`,
  closing: (count, farthest) =>
    `Lectures de fin, un tour entier plus loin, laissées de côté : ${count}. Elles diffèrent de la première de ${farthest} au plus : le palpeur ou la pièce a bougé d’autant.`,
  repeated: (count) => `Endroits qui sont deux fois dans le fichier avec le même chiffre : ${count}.`,
  map: 'Le palpage tel qu’il est dans le fichier, déroulé : angle en travers, profondeur vers le bas. Sombre est plus près de l’axe, clair plus loin ; hachuré est vide.',
  noSize:
    'Un palpage montre la forme et aucune cote : le palpeur compte à partir d’un zéro à lui. Les lectures d’un comparateur d’alésage aux mêmes endroits lui en donnent une.',
  take: (bore) => `Prendre le palpage dans l’alésage ${bore}`,
  takeWith: (count, bore) => `Le prendre dans l’alésage ${bore}, laissés vides : ${count}`,
  newJob: 'Commencer un nouveau dossier avec lui',
  taken: (bore) => `Pris dans l’alésage ${bore}.`,
  asReadings: 'Ce sont des lectures à travers l’alésage',
  refusedJob: 'Le palpage ne peut pas être pris dans ce dossier :',
  notKept: (why) => `Le palpage n’est pas enregistré. ${why}`,
  change: (name) => `Palpage ${name}`,
}
