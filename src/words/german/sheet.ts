import type { sheet as english } from '../english/sheet'
import type { Texts } from '../texts'

/** The grid of readings, the field for the next one, and questions about readings, in German. */
export const sheet: Texts<typeof english> = {
  grid: {
    title: 'Ablesungen',
    depthHead: 'Tiefe',
    depthUnit: 'mm unter der Zylinderoberkante',
    axisHead: (degrees) => degrees,
    axisSides: { frontRear: 'vorn–hinten', rightLeft: 'rechts–links' },
    meanHead: 'Mittel',
    ovalityHead: 'Unrundheit',
    station: (place) => `Messstelle bei ${place}`,
    stationRead: (place, figure, mark) => `${place}: ${figure}, ${mark}`,
    stationSizeless: (place, typed) => `${place}: ${typed} auf der Messuhr, noch kein Maß`,
    stationEmpty: (place) => `${place}: keine Ablesung`,
    stationBlocked: (place, by) => `${place}: keine Ablesung, im Weg: ${by}`,
    withQuestion: (station) => `${station}, mit einer Rückfrage`,
    questionAt: (place) => `Rückfrage zu ${place}`,
    keys: 'Die Pfeiltasten gehen von Zelle zu Zelle, mit der Umschalttaste wählen sie mehrere aus. Entf leert sie; Kopieren, Ausschneiden und Einfügen gehen auch mit einer Tabellenkalkulation.',
    headIn: (head, unit) => `${head}, ${unit}`,
    stationOutOfReach: (place) => `${place}: keine Ablesung, nicht erreichbar`,
    outOfReach: 'nicht erreichbar',
    repeats: (count) => `${count} ×`,
    spread: (microns) => `Spanne ${microns}`,
    blockedBy: (by) => by,
    land: 'Rand',
    addLevel: 'Ebene hinzufügen',
    addAxis: 'Achse hinzufügen',
    newLevel: 'Tiefe der neuen Ebene, mm',
    newAxis: 'Richtung der neuen Achse, Grad',
    editLevel: (depth) => `Ebene bei ${depth} ändern`,
    editAxis: (axis) => `Achse bei ${axis} ändern`,
    removeLevel: (depth) => `Ebene bei ${depth} entfernen`,
    removeAxis: (axis) => `Achse bei ${axis} entfernen`,
    removeLevelAsk: (depth, readings) =>
      readings === 1
        ? `An der Ebene bei ${depth} hängt eine Ablesung. Beides entfernen? Das lässt sich rückgängig machen.`
        : `An der Ebene bei ${depth} hängen ${readings} Ablesungen. Die Ebene samt Ablesungen entfernen? Das lässt sich rückgängig machen.`,
    removeAxisAsk: (axis, readings) =>
      readings === 1
        ? `An der Achse bei ${axis} hängt eine Ablesung. Beides entfernen? Das lässt sich rückgängig machen.`
        : `An der Achse bei ${axis} hängen ${readings} Ablesungen. Die Achse samt Ablesungen entfernen? Das lässt sich rückgängig machen.`,
    remove: 'Entfernen',
    levelThere: (depth) => `Bei ${depth} gibt es schon eine Ebene.`,
    axisThere: (axis) => `Bei ${axis} gibt es schon eine Achse.`,
    axisTwice: (axis, same) =>
      `Die Achse bei ${axis} ist dieselbe wie die bei ${same}: Geben Sie sie mit einem Winkel unter 180° ein.`,
    noLevels: 'Geben Sie die Tiefen ein, in denen Sie messen.',
    tooDeep: (length) => `Die Bohrung ist ${length} lang.`,
  },
  next: {
    label: 'Nächste Ablesung',
    next: (place) => `Als Nächstes: ${place}`,
    correcting: (place) => `Wird berichtigt: ${place}`,
    repeat: (number, all) => `Ablesung ${number} von ${all}`,
    inBore: (bore, place) => `${bore}, ${place}`,
    order: 'Ablesen',
    orderLabel: 'Reihenfolge, in der mehrere Bohrungen abgelesen werden',
    orders: { 'bore-by-bore': 'Bohrung für Bohrung', 'level-by-level': 'Ebene für Ebene' },
    repeatsPerStation: 'Ablesungen je Messstelle',
    allRead: 'Alle erreichbaren Messstellen sind abgelesen.',
    sizeField: 'Maß, mm',
    deviationField: 'Abweichung auf der Messuhr, µm',
    inchSizeField: 'Maß, in',
    inchDeviationField: 'Abweichung auf der Messuhr, 0,0001 in',
    take: 'Übernehmen',
    back: 'Zurück',
    skip: 'Überspringen',
    cannotReach: 'Nicht erreichbar',
    inReach: 'Doch erreichbar',
    again: 'Noch einmal',
    clear: 'Leeren',
    sign: '±',
    same: (figure) => `= ${figure}`,
    noSizeYet: 'Ein Maß gibt es, sobald das Messgerät über seine Messbolzen gemessen ist.',
    asDeviation: (microns) => `= ${microns} gegenüber dem Einstellmaß`,
    direction: {
      clockwise: 'Zeiger im Uhrzeigersinn über null hinaus: größer. Mit + eingeben.',
      anticlockwise:
        'Zeiger gegen den Uhrzeigersinn über null hinaus: größer. Geben Sie ein, was die Messuhr zeigt, im Uhrzeigersinn mit +.',
      unknown:
        'In welcher Richtung es größer wird, ist nicht erfasst: angenommen ist im Uhrzeigersinn, und das Urteil bleibt vorläufig.',
    },
    farFromSetting: (found, setting) =>
      `${found} liegt weit weg vom Einstellmaß ${setting}. Berichtigen Sie die Zahl oder oben im Messaufbau das Maß.`,
    farFromTaken: (found, taken) =>
      `${found} liegt weit weg von ${taken}. Dieses Maß ist nur angenommen, bis das Einstellmaß eingetragen ist. Berichtigen Sie die Zahl oder tragen Sie das Einstellmaß im Messaufbau ein.`,
    settingFirst:
      'Tragen Sie zuerst im Messaufbau ein, auf welches Maß das Messgerät eingestellt war: Ohne das gibt die Messuhr kein Maß.',
    severalHint: 'Mehrere Ablesungen einer Messstelle: mit Leerzeichen dazwischen eingeben.',
    noStation:
      'Alle erreichbaren Messstellen sind abgelesen. Wählen Sie die Messstelle, zu der diese Zahl gehört.',
    notTaken: (typed, place) =>
      place === '' ? `Nicht übernommen: ${typed}` : `Bei ${place} nicht übernommen: ${typed}`,
    putBack: (typed) => `${typed} zurückholen`,
    putBackShort: 'Zurückholen',
    forget: (typed) => `Verwerfen: ${typed}`,
    forgetShort: 'Verwerfen',
    taken: (place, figure) => `${place}: ${figure} übernommen`,
    deepAcross: (depth, axis) => `${depth} tief, Achse ${axis}`,
  },
  questions: {
    title: 'Rückfragen zu Ablesungen',
    blocked: (place, by) =>
      `Bei ${place} stünde ein Messbolzen nicht auf messbarer Wand: ${by}. Standen beide Messbolzen auf Metall?`,
    belowNew: (place) =>
      `Bei ${place} ist die Bohrung kleiner als das kleinste Neumaß. Stimmen Ablesung, Größenklasse und Grenzmaß?`,
    settingTaken: (size) =>
      `Auf welches Maß war das Messgerät eingestellt? Bis es im Messaufbau steht, sind ${size} angenommen, wie in jedem neuen Auftrag.`,
    roughSizeTaken: (size) =>
      `Wie groß ist die Bohrung ungefähr? Bis es im Messaufbau steht, sind ${size} angenommen, wie in jedem neuen Auftrag.`,
    itIs: (size) => `Es sind ${size}`,
    soakedApart: (bore, standard, reference) =>
      `Bohrung ${bore}, ${standard} ${reference}, und doch lagen beide bis zum Temperaturausgleich nebeneinander? Was davon stimmt?`,
    bothAt: (temperature) => `Beide ${temperature}`,
    notYetEqual: 'Noch nicht ausgeglichen',
    farOff: (place, from) => `Die Ablesung bei ${place} liegt ${from} neben dem Einstellmaß. Stimmt sie?`,
    spread: (place, spread) =>
      `Die Wiederholungen bei ${place} liegen ${spread} auseinander. Wischen Sie die Wand ab und messen Sie noch einmal, oder nehmen Sie eine heraus.`,
    itIsRight: 'Sie stimmt',
    takeItOut: 'Herausnehmen',
    mend: 'Richtigstellen',
    confirmed: 'bestätigt',
    keptOut: 'gespeichert, aber in keinem Urteil, bis Sie sagen, dass sie stimmt',
  },
  marks: {
    inside: 'innerhalb',
    above: 'darüber',
    below: 'darunter',
    'too-close': 'zu knapp',
    blocked: 'Schlitz?',
    none: 'kein Grenzmaß',
  },
  marksSpoken: {
    inside: 'innerhalb der Grenzmaße',
    above: 'über dem Grenzmaß',
    below: 'unter dem Grenzmaß',
    'too-close': 'zu knapp für ein Urteil',
    blocked: 'an einem Schlitz, in keinem Urteil',
    none: 'kein Urteil',
  },
}
