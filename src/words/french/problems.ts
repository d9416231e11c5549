import type { FileKind, JsonExpectation, ReferredList, ValueKind } from '../../core/problem'
import type { problems as english } from '../english/problems'
import type { Texts } from '../texts'

const kinds: Record<FileKind, string> = {
  image: 'une image',
  pdf: 'un PDF',
  archive: 'une archive (ZIP ou semblable)',
  'web-page': 'une page web',
  table: 'un tableau (CSV)',
}

const values: Record<ValueKind, string> = {
  text: 'un texte entre guillemets',
  number: 'un nombre sans guillemets, avec un point décimal',
  'whole-number': 'un nombre entier sans guillemets',
  'true-or-false': 'true ou false',
  list: 'une liste entre [ ]',
  object: 'un objet entre { }',
}

/** With the word for none that a sentence of refusal needs. */
const noneOf: Record<ReferredList, string> = {
  setUps: 'aucun montage',
  gauges: 'aucun appareil',
  standards: 'aucun étalon',
  thermometers: 'aucun thermomètre',
  'spec.grades': 'aucune classe',
  bores: 'aucun alésage',
  surveys: 'aucun relevé',
  scans: 'aucun palpage',
}

const expectations: Record<JsonExpectation, string> = {
  value: 'Il devrait y avoir ici une valeur',
  key: 'Il devrait y avoir ici le nom d’un champ entre guillemets',
  colon: 'Il faut deux-points entre un champ et sa valeur',
  'comma-or-end-of-list': 'Il devrait y avoir ici une virgule ou ]',
  'comma-or-end-of-object': 'Il devrait y avoir ici une virgule ou }',
  'end-of-text': 'Le dossier finit avant ; retirez ce qui suit',
  'end-of-string': 'Un texte n’est pas fermé par un guillemet sur sa propre ligne',
  escape: 'Après \\ ne peut venir que " \\ / b f n r t, ou u et quatre chiffres hexadécimaux',
  number: 'Ce n’est pas un nombre que JSON connaît ; écrivez-le comme 54.032 ou -3',
  'finite-number':
    'JSON n’a pas de telle valeur ; écrivez un nombre, ou laissez le champ de côté si rien n’a été noté',
  'no-leading-zero':
    'Un nombre ne peut pas commencer par un zéro de trop ; les décimales s’écrivent ici avec un point (54.032, pas 54,032)',
  'no-trailing-comma': 'Il ne faut pas de virgule après la dernière entrée ; retirez-la',
}

/** What is wrong in a file or a field: what, and how to mend it, in French. */
export const problems: Texts<typeof english> = {
  problems: {
    'file-too-large': ({ bytes, mostBytes }) =>
      `Le fichier fait ${megabytes(bytes)} ; un dossier fait ${megabytes(mostBytes)} au plus. Est-ce le bon fichier ?`,
    'file-empty': () => 'Le fichier est vide. Y en a-t-il une copie ?',
    'saved-as-utf-16': () =>
      'Le fichier est enregistré en UTF-16. Ouvrez-le dans un éditeur de texte et enregistrez-le en UTF-8.',
    'not-utf-8': () =>
      'Le fichier n’est pas du texte simple en UTF-8 : un autre genre de fichier, abîmé, ou enregistré par un éditeur dans un autre codage. Enregistrez-le en UTF-8.',
    'other-kind-of-file': ({ kind }) =>
      `C’est ${kinds[kind]}, non un fichier de dossier. Un fichier de dossier est le texte que Borewall écrit quand un dossier est enregistré.`,
    'not-json': ({ expected, found }) =>
      found === ''
        ? `${expectations[expected]}, mais le texte s’arrête. Le fichier est-il complet ?`
        : `${expectations[expected]} ; il y a ${quoted(found)}.`,
    'too-deep': ({ most }) =>
      `Listes et objets sont emboîtés sur plus de ${most} niveaux, ce dont aucun dossier n’a besoin.`,
    'duplicate-key': ({ key }) => `Le champ ${quoted(key)} est ici deux fois. N’en gardez qu’un.`,
    'not-a-job': () =>
      'C’est du JSON, mais pas un dossier Borewall : son champ format devrait être "borewall-job".',
    'newer-version': ({ found, supported }) =>
      `Le fichier a été écrit par un Borewall plus récent (format version ${found} ; celui-ci lit jusqu’à ${supported}). Il reste tel quel ; prenez le Borewall plus récent.`,
    'unknown-version': ({ found, supported }) =>
      `La version du format est ${found} ; ce devrait être un nombre entier de 1 à ${supported}.`,
    missing: ({ field }) => `${field} manque.`,
    'unknown-key': ({ key, nearest }) =>
      nearest === undefined
        ? `Il n’y a pas de champ ${quoted(key)} ici. Retirez-le.`
        : `Il n’y a pas de champ ${quoted(key)} ici. Est-ce ${quoted(nearest)} ?`,
    'wrong-kind': ({ expected, found }) => `Il devrait y avoir ici ${values[expected]}, et non ${found}.`,
    'not-one-of': ({ options, found }) =>
      `Il devrait y avoir ici l’un de ceux-ci : ${options.map(quoted).join(', ')} ; il y a ${found}.`,
    'out-of-range': ({ found, least, most, mostExcluded, unit }) => {
      const to = mostExcluded ? 'jusque sous' : 'à'
      return `${written(found)} est hors des bornes : de ${written(least)} ${to} ${written(most)}${unit ? ` ${unit}` : ''}.`
    },
    'text-blank': () => 'Ce texte ne doit pas être vide.',
    'text-too-long': ({ length, most }) =>
      length > 0
        ? `Ce texte a ${length} caractères ; ${most} au plus sont possibles.`
        : `Ce texte a plus de ${most} caractères.`,
    'control-character': () =>
      'Il y a un caractère de commande invisible dans ce texte. Tapez-le de nouveau.',
    'not-a-date': ({ found }) =>
      `${found} n’est pas une date ; écrivez l’année, le mois et le jour comme dans 2024-05-31.`,
    'not-a-hash': ({ found }) =>
      `${found} ne désigne aucune photo ; son empreinte a 64 chiffres de 0 à 9 et de a à f.`,
    'not-base64': () => 'Le contenu de cette photo est abîmé : il n’est pas écrit en base64.',
    'list-too-short': ({ least }) =>
      least === 1
        ? 'Cette liste demande au moins une entrée.'
        : `Cette liste demande au moins ${least} entrées.`,
    'list-too-long': ({ length, most }) =>
      length > 0
        ? `Cette liste a ${length} entrées ; ${most} au plus sont possibles.`
        : `Cette liste a plus de ${most} entrées.`,
    'duplicate-id': ({ id }) => `L’identifiant ${quoted(id)} sert deux fois. Donnez à chacun le sien.`,
    'duplicate-name': ({ name }) => `Le nom ${quoted(name)} sert deux fois. Donnez à chacun le sien.`,
    'duplicate-value': ({ value, unit }) => `${written(value)} ${unit} est ici deux fois. N’en gardez qu’un.`,
    'unknown-reference': ({ list, found, known }) =>
      known.length === 0
        ? `${quoted(found)} ne désigne ${noneOf[list]} de ce dossier ; la liste est vide.`
        : `${quoted(found)} ne désigne ${noneOf[list]} de ce dossier ; il y a ${known.map(quoted).join(', ')}.`,
    'low-above-high': ({ lowField, low, highField, high }) =>
      `${lowField} (${written(low)}) est au-dessus de ${highField} (${written(high)}). Sont-ils intervertis ?`,
    'port-all-round': () =>
      'Cette lumière ferait tout le tour de l’alésage. Une bande que personne n’a pu mesurer s’entre comme bande.',
    'deeper-than-bore': ({ depthMm, lengthMm }) =>
      `${written(depthMm)} mm, c’est plus profond que l’alésage n’est long (${written(lengthMm)} mm).`,
    'duplicate-station': ({ depthMm, axisDegrees }) =>
      `Il y a déjà une lecture à ${written(depthMm)} mm, ${written(axisDegrees)}°. Mettez les répétitions dans une seule liste.`,
    'off-level': ({ depthMm, levelsMm }) =>
      levelsMm.length === 0
        ? `${written(depthMm)} mm n’est aucun des niveaux de ce relevé ; leur liste est vide.`
        : `${written(depthMm)} mm n’est aucun des niveaux de ce relevé (${levelsMm.map(written).join(' ; ')} mm).`,
    'off-axis': ({ axisDegrees, axesDegrees }) =>
      axesDegrees.length === 0
        ? `${written(axisDegrees)}° n’est aucun des axes de ce relevé ; leur liste est vide.`
        : `${written(axisDegrees)}° n’est aucun des axes de ce relevé (${axesDegrees.map(written).join(' ; ')}°).`,
    'unreachable-station': ({ found, depthMm, axisDegrees }) => {
      const place = `${written(depthMm)} mm, ${written(axisDegrees)}°`
      return found === 'twice'
        ? `${place} est donné deux fois comme hors d’atteinte. N’en gardez qu’un.`
        : `${place} est donné comme hors d’atteinte, mais il y a une lecture. Retirez l’un des deux.`
    },
    'reading-values': ({ found, expected }) => {
      const should = `son montage note ${expected === 'sizesMm' ? 'des cotes' : 'des lectures de cadran'}, elle devrait donc avoir ${expected}`
      if (found === 'none') return `Cette lecture n’a pas de valeurs ; ${should}.`
      if (found === 'both') return `Cette lecture a à la fois sizesMm et dialUm ; ${should}, et cela seul.`
      return `Cette lecture a ${found} ; ${should}.`
    },
    'check-values': ({ found }) =>
      found === 'none'
        ? 'Ce contrôle d’un appareil n’a pas de lectures ; il devrait avoir sizesMm ou dialUm.'
        : 'Ce contrôle d’un appareil a à la fois sizesMm et dialUm ; il devrait avoir l’un des deux.',
    'study-values': ({ found }) =>
      found === 'none'
        ? 'Une lecture de cet essai croisé n’a pas de valeurs ; elle devrait avoir sizesMm ou dialUm.'
        : 'Cet essai croisé a à la fois sizesMm et dialUm ; il devrait avoir partout l’un des deux.',
    'entry-does-not-fit': ({ entry }) =>
      entry === 'reverse'
        ? 'La méthode inverse demande un comparateur à deux touches et un micromètre pour le mesurer dessus. Choisissez-les, ou une autre façon de noter les lectures.'
        : 'Seul un instrument d’intérieur se lit directement : jauge télescopique, micromètre d’intérieur, micromètre à trois touches. Choisissez-en un, ou une autre façon de noter les lectures.',
    'read-only': () =>
      'Ce dossier est en train d’être écrit dans un autre onglet. Reprenez-le en haut de cette page, puis modifiez-le ici.',
    'more-problems': ({ count }) =>
      count === 1 ? 'Il y a encore un problème.' : `Il y a encore ${count} problèmes.`,
  },
  problemPlace: {
    wholeFile: 'le fichier',
    line: (line) => `ligne ${line}`,
    lineColumn: (line, column) => `ligne ${line}, colonne ${column}`,
    pathAndLine: (path, line) => `${path} (${line})`,
  },
}

function quoted(text: string): string {
  return `« ${text} »`
}

function megabytes(bytes: number): string {
  if (bytes < 100_000) return `${Math.ceil(bytes / 1000)} ko`
  return `${(bytes / 1_000_000).toFixed(1).replace('.', ',')} Mo`
}

function written(value: number): string {
  return String(value).replace('-', '−').replace('.', ',')
}
