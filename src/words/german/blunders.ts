import type { blunders as english } from '../english/blunders'
import type { Texts } from '../texts'

export const blunders: Texts<typeof english> = {
  blunders: {
    wholeTurn: (place, turns, more) =>
      `Die Ablesung bei ${place} ist um ${turns} des Zeigers ${more ? 'größer' : 'kleiner'}, als die Nachbarn erwarten lassen. Ist der Zeiger einmal unbemerkt herumgelaufen?`,
    turns: (count) => (count === 1 ? 'eine ganze Umdrehung' : `${count} ganze Umdrehungen`),
    digits: (place, read, likelier) =>
      `Bei ${place} liegt ${read} weit ab von den Nachbarn. War es ${likelier}?`,
    axesSwapped: (level, one, other) =>
      `In ${level} Tiefe stehen ${one} und ${other} umgekehrt zueinander als darüber und darunter. Wurden sie vertauscht aufgeschrieben?`,
    upsideDown:
      'Diese Bohrung ist unten größer gemessen als oben. Wurden die Ebenen vom falschen Ende her aufgeschrieben?',
    upsideDownLand:
      'Die Wand, die kein Ring berührt, hat nicht ihr Neumaß, wohl aber die Ebene am anderen Ende. Wurden die Ebenen vom falschen Ende her aufgeschrieben?',
    sign: (read, otherwise) =>
      `Die unverschlissene Wand ist mit ${read} gemessen, außerhalb ihres Neumaßes; mit umgekehrtem Vorzeichen wären es ${otherwise}. Läuft der Zeiger andersherum?`,
    sleeve: (by) =>
      `Die unverschlissene Wand hätte ihr Neumaß, wenn die Einstellung um ${by} falsch wäre. Wurde die Skalenhülse der Bügelmessschraube falsch abgelesen?`,
    turn: (by) =>
      `Die unverschlissene Wand hätte ihr Neumaß, wenn die Einstellung um ${by} falsch wäre, eine Umdrehung des Zeigers. Wurde die Null um eine Umdrehung falsch genommen?`,
    sleeveByCaliper: (by) =>
      `Die Ablesungen würden zum Messschieber passen, wenn die Einstellung um ${by} falsch wäre. Wurde die Skalenhülse der Bügelmessschraube falsch abgelesen?`,
    turnByCaliper: (by) =>
      `Die Ablesungen würden zum Messschieber passen, wenn die Einstellung um ${by} falsch wäre, eine Umdrehung des Zeigers. Wurde die Null um eine Umdrehung falsch genommen?`,
    oversize: (nearest) =>
      `Das Werkstatthandbuch lässt Übermaße zu, und auf welches diese Bohrung gefertigt wurde, ist nicht erfasst. Nach ihren Ablesungen liegt am nächsten: ${nearest}. Eine um einen halben Millimeter falsch abgelesene Bügelmessschraube sähe genauso aus.`,
    caliper: (caliper, read) =>
      `Der Messschieber zeigt ${caliper}, die Ablesungen ergeben im Mittel ${read}. Messen Sie noch einmal mit dem Messschieber, und prüfen Sie die Einstellung.`,
    spread: (place, spread, usual) =>
      `Die Wiederholungen bei ${place} liegen ${spread} auseinander; bei diesem Messgerät sind es höchstens ${usual}. Wischen Sie die Wand ab und messen Sie noch einmal, oder nehmen Sie eine heraus.`,
    drift: (by, doubt) =>
      `Die Ablesungen ändern sich um ${by} ${doubt} in der Reihenfolge, in der sie genommen wurden. Das tut ein Teil, das abkühlt, oder ein Messgerät, das sich in der Hand erwärmt. Lassen Sie alles nebeneinander liegen und messen Sie noch einmal.`,
    unseen: {
      'setting-and-sign':
        'eine um einen halben Millimeter falsche Einstellung oder ein umgekehrtes Vorzeichen (eine Ebene auf Wand, die kein Ring berührt, oder ein Messschieber würde es zeigen)',
      'whole-turn': 'eine ganze Umdrehung des Zeigers an jeder Messstelle',
      digits:
        'zwei vertauschte Ziffern in einer Ablesung (jede Messstelle zweimal zu messen würde es zeigen)',
      'levels-upside-down': 'Ebenen, die vom falschen Ende her aufgeschrieben wurden',
      'axes-swapped': 'zwei Achsen, die vertauscht aufgeschrieben wurden',
      'drift-with-order':
        'eine langsame Drift während der Messung, denn die Messstellen wurden Zeile für Zeile gemessen (messen Sie die erste am Ende noch einmal)',
    },
    unseenSentence: (list) => `Diese Ablesungen zeigen nicht: ${list.join('; ')}.`,
    answered: 'Rückfrage beantwortet: es stimmt',
    changeNames: {
      'shift-repeats': 'Ablesung berichtigt',
      'swap-axes': 'Achsen getauscht',
      'turn-levels-over': 'Ebenen umgedreht',
      'turn-sign-over': 'Vorzeichen umgedreht',
      'shift-setting': 'Einstellung berichtigt',
      'say-oversize': 'Übermaß der Bohrung',
    },
  },
}
