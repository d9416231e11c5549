import type { bench as english } from '../english/bench'
import type { Texts } from '../texts'

export const bench: Texts<typeof english> = {
  app: {
    name: 'Borewall',
    title: (job) => `${job} · Borewall`,
    untitled: 'Auftrag ohne Namen',
    nothingLeaves: 'Alles, was Sie eingeben, bleibt auf diesem Gerät.',
    skipToReadings: 'Weiter zu den Ablesungen',
    theme: { light: 'hell', dark: 'dunkel', asSystem: 'automatisch' },
    themeIs: (theme) => `Seite: ${theme}`,
    loading: 'Wird geöffnet …',
    crashed: 'Auf dieser Seite ist etwas schiefgegangen.',
    crashedKept: 'Was Sie eingetragen haben, ist gespeichert; laden Sie die Seite neu, um weiterzumachen.',
    crashedAgain:
      'Geht es noch einmal schief, beginnen Sie einen neuen Auftrag, oder öffnen Sie einen anderen: Dieser bleibt in der Auftragsliste.',
    reload: 'Neu laden',
    help: 'Wie diese Seite zu lesen ist',
    close: 'Schließen',
    cancel: 'Abbrechen',
    done: 'Fertig',
    notRecorded: 'nicht erfasst',
    and: (items) => {
      const last = items[items.length - 1] ?? ''
      return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} und ${last}`
    },
  },
  parts: {
    sheet: 'Ablesungen',
    wall: 'Die Wand',
    proof: 'Was die Ablesungen nachweisen',
    narrow: { enter: 'Eingeben', wall: 'Wand', findings: 'Befunde', setUp: 'Messaufbau' },
  },
  bar: {
    label: 'Auftrag',
    jobName: 'Name des Auftrags',
    machine: 'Maschine',
    note: 'Notiz',
    bores: 'Bohrungen',
    boreNamed: (name) => `Bohrung ${name}`,
    boreTab: (name, verdict) => `Bohrung ${name}: ${verdict}`,
    comparisonTab: (name) => `Zum Vergleich: ${name}`,
    boreChip: (place, all) => `Bohrung ${place} von ${all}`,
    add: 'Bohrung hinzufügen',
    addOwn: 'Noch eine Bohrung dieses Motors',
    addComparison: 'Eine Bohrung zum Vergleich',
    comparisonName: 'Neu',
    addSurvey: (name) => `${name} noch einmal messen`,
    removeSurvey: 'Diese Messung entfernen',
    removeSurveyAsk: 'Diese Messung mit allen Ablesungen entfernen? Das lässt sich wieder rückgängig machen.',
    removeBore: (name) => `${name} entfernen`,
    removeBoreAsk: (name) =>
      `${name} mit allen Ablesungen entfernen? Das lässt sich wieder rückgängig machen.`,
  },
  undo: {
    undo: 'Rückgängig',
    redo: 'Wiederherstellen',
    undoOf: (change) => `Rückgängig: ${change}`,
    redoOf: (change) => `Wiederherstellen: ${change}`,
    nothing: 'Nichts rückgängig zu machen',
    nothingToRedo: 'Nichts wiederherzustellen',
  },
  changes: {
    reading: (place) => `Ablesung bei ${place}`,
    readingOut: (place) => `Ablesung bei ${place} herausgenommen`,
    readingsOut: (stations) =>
      stations === 1
        ? 'Ablesungen einer Messstelle herausgenommen'
        : `Ablesungen von ${stations} Messstellen herausgenommen`,
    pasted: (stations) =>
      stations === 1
        ? 'eingefügte Ablesungen einer Messstelle'
        : `eingefügte Ablesungen von ${stations} Messstellen`,
    repeatsPerStation: 'Ablesungen je Messstelle',
    wantedDoubt: 'gewünschte Unsicherheit',
    outOfReach: (place) => `${place} nicht erreichbar`,
    withinReach: (place) => `${place} doch erreichbar`,
    confirmed: (place) => `Ablesung bei ${place} bestätigt`,
    jobName: 'Name des Auftrags',
    machine: 'Maschine',
    note: 'Notiz',
    setUp: 'Messaufbau',
    gauge: 'Messgerät',
    standard: 'Einstellnormal',
    instruments: 'Liste der Messgeräte',
    entry: 'wie Ablesungen aufgeschrieben werden',
    limits: 'Grenzmaße',
    bore: 'Bohrung',
    wall: 'Art der Wand',
    ports: 'Schlitze',
    belts: 'Gürtel',
    levels: 'Ebenen',
    axes: 'Achsen',
    survey: 'Datum und Betriebsstunden',
    surveyAdded: 'Messung hinzugefügt',
    surveyRemoved: 'Messung entfernt',
    boreAdded: 'Bohrung hinzugefügt',
    boreRemoved: 'Bohrung entfernt',
    restored: 'frühere Fassung zurückgeholt',
    table: (file) => `Ablesungen aus ${file}`,
  },
  file: {
    menu: 'Auftrag',
    new: 'Neu',
    open: 'Öffnen …',
    kept: 'Auftragsliste',
    examples: 'Beispiele …',
    letterhead: 'Briefkopf …',
    save: 'In Datei speichern',
    saveAs: 'In Datei speichern unter …',
    saveAll: 'Kopie aller Aufträge speichern',
    allName: 'alle-auftraege',
    savedAll: (count, name) => `${count === 1 ? '1 Auftrag' : `${count} Aufträge`} in ${name} geschrieben`,
    allNone: 'In diesem Browser ist noch kein Auftrag gespeichert.',
    allTooLarge:
      'Alle Aufträge zusammen sind größer, als Borewall wieder einlesen kann. Speichern Sie die mit Abtastungen oder Fotos einzeln, jeden in eine eigene Datei.',
    allWithoutChange:
      'Der Auftrag, an dem Sie arbeiten, steht so in der Datei, wie er zuletzt gespeichert wurde, ohne das, was noch nicht gespeichert ist.',
    allLeftOut: (names) =>
      `Diese ließen sich nicht lesen und stehen nicht in der Datei: ${names.join('; ')}.`,
    allIncomplete: (names) =>
      `Von diesen fehlen einige Abtastungen oder Fotos in der Datei: ${names.join('; ')}.`,
    duplicate: 'Als neuen Auftrag kopieren',
    copyName: (name) => `${name}, Kopie`,
    defaultName: 'auftrag',
    kind: 'Borewall-Auftrag',
    drop: 'Auftragsdatei oder Tabelle mit Ablesungen hier ablegen',
    opened: (name) => `${name} geöffnet`,
    savedFile: (name) => `In ${name} geschrieben`,
    problemsTitle: (file) => `${file} ließ sich nicht öffnen`,
    problemsLead: 'Der Auftrag, an dem Sie arbeiten, ist unberührt. Das stimmt in der Datei nicht:',
    problemsLeadNoJob: 'Es wurde nichts geöffnet. Das stimmt in der Datei nicht:',
    problemAt: (place, problem) => `${place}: ${problem}`,
    moreProblems: (count) => `und ${count} weitere`,
    notRead: (file) => `${file} ließ sich nicht vom Datenträger lesen. Ist die Datei noch dort?`,
    notWritten: (file) => `${file} ließ sich nicht schreiben. Der Auftrag ist noch auf dieser Seite.`,
    codeNotLoaded:
      'Der Auftrag in dieser Adresse konnte nicht geöffnet werden: Ein Teil von Borewall ließ sich nicht laden. Laden Sie die Seite neu, um es noch einmal zu versuchen.',
    severalDropped: 'Legen Sie immer nur eine Datei ab.',
    replaceAsk:
      'Ein Auftrag mit derselben Kennung ist schon gespeichert. Die Datei als Kopie öffnen oder den gespeicherten ersetzen?',
    openAsCopy: 'Als Kopie öffnen',
    replace: 'Ersetzen',
  },
  kept: {
    open: (name) => `${name} öffnen`,
    setAsideTitle: 'Beiseitegelegt',
    setAsideLead:
      'Einträge, die sich nicht lesen ließen oder deren Platz eine Datei oder ein anderer Tab eingenommen hat. Sie sind unverändert; speichern Sie sie, um nachzusehen.',
    setAsideWhy: {
      unreadable: 'ließ sich nicht lesen',
      replaced: 'ersetzt',
      overtaken: 'nicht gespeichert, bevor ein anderer Tab den Auftrag übernahm',
    },
    setAsideSave: 'Eintrag speichern',
  },
  demo: {
    banner: 'Ein Beispiel, alle Zahlen erfunden',
    startOwn: 'Eigenen Auftrag beginnen',
  },
  pictureTexts: {
    keys: 'Pfeiltasten drehen und kippen die Bohrung, mit Umschalt verschieben sie sie; Plus und Minus gehen näher heran und weiter weg, Pos1 geht zurück nach vorn.',
    middle: (size) => `${size} = 0`,
    next: 'nächste Ablesung',
  },
}
