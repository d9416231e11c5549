import type { scanMarks as english } from '../english/scan-marks'
import type { Texts } from '../texts'

/** What stands out in a scan, in French. */
export const scanMarks: Texts<typeof english> = {
  title: 'Anomalies du palpage',
  inScan: (bore, scan) => `Alésage ${bore}, palpage ${scan}`,
  notLooked: 'Ses rayons ne sont pas dans ce fichier, ou aucun axe ne peut y être ajusté.',
  working: 'Recherche de ce qui ressort…',
  none: (least) =>
    `Rien ne ressort de la forme lisse. Une anomalie de trois angles sur trois niveaux se serait montrée à partir d’environ ${least}.`,
  lead: (least) =>
    `Ce qui ressort de la forme lisse sur le rayon, au-delà du bruit ; de petites anomalies se montrent à partir d’environ ${least}.`,
  lone: (count) =>
    count === 1
      ? 'Une valeur ressort seule : en règle générale, de la saleté sur la paroi ou sur le palpeur.'
      : `${count} valeurs ressortent seules : en règle générale, de la saleté sur la paroi ou sur le palpeur.`,
  numbered: (number, shape) => `${number} ${shape}`,
  shapes: { streak: 'traînée le long de la course', band: 'bande autour', patch: 'tache' },
  line: 'ligne étroite',
  within: (number) => `le long de l’anomalie ${number}`,
  signs: { smaller: 'plus petit', larger: 'plus grand' },
  height: (sign, height, doubt) => `${sign} de ${height} ${doubt} sur le rayon`,
  size: (across, along) => `largeur ${across}, longueur ${along}`,
  onBridge: (from, to) => `sur le pontet entre deux lumières, ${from} à ${to}`,
  onBridgeNamed: (one, other) => `sur le pontet entre « ${one} » et « ${other} »`,
  besideOpening: 'le long du bord d’une lumière, où se montre aussi un chanfrein',
  text: (title, place, parts) => `${title} : ${[place, ...parts].join(' ; ')}`,
  record: 'La noter',
  recordTitle: (title) => `Noter comme constat de surface : ${title}`,
  recorded: 'notée',
  change: 'anomalie du palpage notée',
  note: (height) => `Au palpage : ${height}.`,
  more: (count) => (count === 1 ? 'Montrer l’autre' : `Montrer les ${count} autres`),
  patterns: {
    title: 'Comment elles sont placées : à vérifier',
    lead: 'Une disposition ne prouve pas une cause. Les causes habituelles sont nommées pour qu’on puisse y regarder.',
    fourCorners: (at, pin) =>
      `Quatre coins, à ${at} : des deux côtés des bossages, si l’axe du piston est vers ${pin}.`,
    bothSides: (one, other) => `Des deux côtés, vers ${one} et ${other}.`,
    oneSide: (at) => `D’un côté, vers ${at}.`,
    allRound: 'Sur tout le tour de l’alésage.',
    proudBridge: (where) => `Le pontet entre ${where} dépasse.`,
    relievedBridge: (where) => `Le pontet entre ${where} est en retrait.`,
    portsNamed: (one, other) => `« ${one} » et « ${other} »`,
    portsAt: (from, to) => `les deux lumières de ${from} à ${to}`,
    band: 'Une bande autour de l’alésage.',
    causes: {
      'four-corners':
        'Habituel avec quatre coins : trop peu de jeu du piston, chauffé trop vite, surchauffe, bossages qui ont gonflé. Vérifiez le jeu, le refroidissement et le rodage.',
      'both-sides':
        'Habituel des deux côtés : trop peu de jeu, surtout peu après une réfection, ou un alésage ovalisé par ses vis. Vérifiez le jeu et l’alésage tel qu’il est boulonné.',
      'one-side':
        'Habituel d’un seul côté : du côté de poussée, huile perdue à un endroit, ailettes bouchées ou refroidissement manquant ; du côté échappement seul, trop pauvre, trop chaud, ou calamine ; en bas du côté admission, poussière passée par le filtre ; longues lignes fines, carburant qui a lavé l’huile. Vérifiez quel côté c’est.',
      'all-round':
        'Habituel avec des marques sur tout le tour : pas d’huile, ou carburant sans huile. Vérifiez le graissage.',
      'bridge-smaller':
        'Habituel avec un pontet qui dépasse : il gonfle en chauffant, il n’a jamais été dégagé, ou le mélange était trop pauvre. Voyez ce que dit le manuel de son dégagement.',
      'bridge-larger':
        'Un pontet en retrait peut avoir été dégagé exprès, ou s’être usé. Voyez ce qu’en dit le manuel.',
      band: 'Habituel avec une bande : une marche où les segments repartent, de la rouille où un segment ou de l’eau est resté, ou un segment qui a collé. Regardez sa profondeur.',
    },
  },
  sign: {
    plated:
      'Sur une paroi revêtue, ce qui se lit plus petit peut être du métal du piston collé dessus, et ce qui s’y lit plus grand une rayure. Faites-la nettoyer, puis palpez de nouveau avant de rien décider.',
    other:
      'Ce qui se lit plus petit est posé sur la paroi ou ne s’est jamais usé ; ce qui se lit plus grand s’est usé ou est rayé. Faites enlever le métal collé, puis palpez de nouveau avant de rien décider.',
    care: 'Ce qui enlève l’aluminium attaque aussi un cylindre en aluminium, et brûle la peau et les yeux. Le nettoyage est l’affaire de quelqu’un qui connaît la paroi : suivez le manuel d’atelier.',
  },
  cleaned: {
    title: 'Avant et après nettoyage',
    against: (before, after) => `« ${before} » contre « ${after} ».`,
    turned: (degrees) =>
      `Les lumières du second palpage sont ${degrees} plus loin dans le sens horaire, rien n’est donc comparé. Donnez le même 0° aux deux palpages.`,
    taken: 'Rien dans la paroi ne montre si les deux palpages ont commencé au même 0° : c’est supposé.',
    fates: {
      gone: 'a disparu : c’était collé, ou lâche',
      less: 'est moindre qu’avant : une partie était collée',
      'as-before': 'est restée comme elle était',
      more: 'est plus forte qu’avant',
      'turned-larger': 'se lit maintenant plus grand : il y a un sillon sous ce qui était collé',
      'turned-smaller': 'se lit maintenant plus petit : quelque chose est sur la paroi',
      'not-seen': 'ne peut pas être comparée : le second palpage n’a pas de valeur là',
    },
    groove: 'est restée : un sillon, ou de l’usure',
    figures: (before, after) => `${before} avant, ${after} après`,
    line: (title, place, fate, figures) => `${title}, ${place} : ${fate} (${figures}).`,
    fresh: (titles) => `Seulement dans le second palpage : ${titles}.`,
  },
}
