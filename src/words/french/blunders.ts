import type { blunders as english } from '../english/blunders'
import type { Texts } from '../texts'

/** Questions about readings that may be blunders, and what could not have been seen, in French. */
export const blunders: Texts<typeof english> = {
  blunders: {
    wholeTurn: (place, turns, more) =>
      `La lecture à ${place} est ${more ? 'plus grande' : 'plus petite'} de ${turns} de l’aiguille que ses voisines ne le font attendre. L’aiguille a-t-elle fait un tour inaperçu ?`,
    turns: (count) => (count < 2 ? 'un tour entier' : `${count} tours entiers`),
    digits: (place, read, likelier) => `À ${place}, ${read} est loin de ses voisines. Était-ce ${likelier} ?`,
    axesSwapped: (level, one, other) =>
      `À ${level} de profondeur, ${one} et ${other} se lisent à l’inverse d’au-dessus et d’au-dessous. Ont-ils été notés l’un à la place de l’autre ?`,
    upsideDown:
      'Le bas de cet alésage se lit plus grand que son haut. Les niveaux ont-ils été notés depuis le mauvais bout ?',
    upsideDownLand:
      'La paroi que les segments ne touchent jamais n’a pas sa cote neuve, mais le niveau à l’autre bout l’a. Les niveaux ont-ils été notés depuis le mauvais bout ?',
    sign: (read, otherwise) =>
      `La paroi non usée se lit ${read}, hors de sa cote neuve ; avec le signe inversé, ce serait ${otherwise}. L’aiguille va-t-elle dans l’autre sens ?`,
    sleeve: (by) =>
      `La paroi non usée aurait sa cote neuve si le réglage était faux de ${by}. Le tambour du micromètre a-t-il été mal lu ?`,
    turn: (by) =>
      `La paroi non usée aurait sa cote neuve si le réglage était faux de ${by}, un tour de l’aiguille. Le zéro a-t-il été pris un tour à côté ?`,
    sleeveByCaliper: (by) =>
      `Les lectures s’accorderaient avec le pied à coulisse si le réglage était faux de ${by}. Le tambour du micromètre a-t-il été mal lu ?`,
    turnByCaliper: (by) =>
      `Les lectures s’accorderaient avec le pied à coulisse si le réglage était faux de ${by}, un tour de l’aiguille. Le zéro a-t-il été pris un tour à côté ?`,
    oversize: (nearest) =>
      `Le manuel permet des cotes réparation, et celle à laquelle cet alésage a été fini n’est pas notée. D’après ses lectures, la plus proche est : ${nearest} ; un micromètre lu un demi-millimètre à côté aurait le même air.`,
    caliper: (caliper, read) =>
      `Le pied à coulisse dit ${caliper}, les lectures ${read} en moyenne. Mesurez de nouveau au pied à coulisse, et regardez le réglage.`,
    spread: (place, spread, usual) =>
      `Les répétitions à ${place} diffèrent de ${spread} ; cet appareil laisse ${usual} au plus. Essuyez la paroi et mesurez de nouveau, ou retirez-en une.`,
    drift: (by, doubt) =>
      `Les lectures changent de ${by} ${doubt} dans l’ordre où elles ont été prises. Une pièce qui refroidit fait cela, ou un appareil chauffé par la main. Laissez tout côte à côte et mesurez de nouveau.`,
    unseen: {
      'setting-and-sign':
        'un réglage faux d’un demi-millimètre ou un signe inversé (un niveau sur une paroi que les segments ne touchent jamais, ou un pied à coulisse, le montrerait)',
      'whole-turn': 'un tour entier de l’aiguille à chaque point',
      digits: 'deux chiffres intervertis dans une lecture (lire chaque point deux fois le montrerait)',
      'levels-upside-down': 'des niveaux notés depuis le mauvais bout',
      'axes-swapped': 'deux axes notés l’un à la place de l’autre',
      'drift-with-order':
        'une dérive lente pendant la mesure, car les points ont été lus ligne par ligne (relisez le premier à la fin)',
    },
    unseenSentence: (list) => `Ce que ces lectures ne montrent pas : ${list.join(' ; ')}.`,
    answered: 'question répondue : c’est juste',
    changeNames: {
      'shift-repeats': 'lecture corrigée',
      'swap-axes': 'axes échangés',
      'turn-levels-over': 'niveaux retournés',
      'turn-sign-over': 'signe inversé',
      'shift-setting': 'réglage corrigé',
      'say-oversize': 'cote réparation de l’alésage',
    },
  },
}
