import type { report as english } from '../english/report'
import type { Texts } from '../texts'

/** The findings as a page of text, and what its command says, in German. */
export const report: Texts<typeof english> = {
  report: {
    title: (job) => `Was die Ablesungen nachweisen: ${job}`,
    untitled: 'ein Auftrag ohne Namen',
    invented: 'Ein Beispiel: Alle Zahlen sind erfunden.',
    machine: (machine) => `Maschine: ${machine}`,
    note: (note) => `Notiz: ${note}`,
    bore: (name) => `Bohrung ${name}`,
    surveyOf: (bore, number, all) => `${bore}, Messung ${number} von ${all}`,
    comparison: (name) => `Bohrung ${name}, zum Vergleich`,
    measured: {
      on: (day) => `Gemessen am ${day}.`,
      undated: 'Der Tag der Messung ist nicht erfasst.',
      hours: (hours) => `Betriebsstunden: ${hours}.`,
    },
    table: 'Durchmesser bei 20 °C in mm, ± U (95 %)',
    depthHead: 'Tiefe',
    notMeasured: '–',
    noStations: 'Keine Ablesungen.',
    noBores: 'Der Auftrag hat keine Bohrung mit einer Messung.',
  },
  inspect: {
    usage: [
      'Aufruf: npm run inspect -- DATEI [--json] [--language CODE]',
      'oder: npm run inspect -- TABELLE.csv --spec AUFTRAG [--json]',
      'oder: npm run inspect -- ABTASTUNG.csv [--diameter 60] [--json]',
      '',
      'Gibt aus, was die Ablesungen einer Auftragsdatei nachweisen. Mit --json dasselbe',
      'als ein JSON-Objekt: Längen in mm, Winkel in Grad, Wahrscheinlichkeiten von 0 bis',
      '1. Wo es eine Zahl nicht gibt, und für unendlich viele Freiheitsgrade, steht null.',
      '',
      'Eine Tabelle mit Ablesungen (csv, tsv oder txt) nennt Tiefe, Achse und Ablesungen',
      'über ihren Spalten, jeweils mit Einheit: depth_mm, axis_deg, size_mm (size_in,',
      'dial_um, deviation_um). AUFTRAG ist eine Auftragsdatei ohne Ablesungen:',
      'Grenzmaße, Bohrungen und Messaufbau.',
      '',
      'Eine Datei mit Radien nennt Tiefe, Winkel und Radius mit ihren Einheiten: depth_mm,',
      'angle_deg, radius_um, eine Zeile für jeden Radius; oder sie hat die Winkel quer und',
      'eine Zeile für jede Tiefe. Mit dem ungefähren Durchmesser der Bohrung, in mm,',
      'werden Auffälligkeiten gesucht.',
      '',
      'Rückgabewert: 0 gelesen und berichtet, 1 die Datei war nicht lesbar, 2 falscher',
      'Aufruf.',
    ].join('\n'),
    languages: (codes) => `Nennen Sie hinter --language eine Sprache, die es gibt: ${codes.join(', ')}.`,
    oneFile: 'Nennen Sie eine Auftragsdatei.',
    specForTable:
      'Nennen Sie die Auftragsdatei mit Grenzmaßen und Messaufbau für diese Tabelle: --spec AUFTRAG.',
    noSpecForJob:
      '--spec gehört zu einer Tabelle mit Ablesungen; eine Auftragsdatei hat ihre eigenen Grenzmaße.',
    specHasReadings:
      'In diesem Auftrag stehen Ablesungen. Nennen Sie einen ohne: nur Grenzmaße, Bohrungen und Messaufbau.',
    nothingInTable: 'Darin steht keine Ablesung.',
    openInTable: (question) => `${question} Benennen Sie die Spalten in ihrer Kopfzeile.`,
    unknownOption: (option) => `Eine Option ${option} gibt es nicht.`,
    cannotRead: (file) => `${file} ließ sich nicht lesen:`,
    fileErrors: {
      'file-not-found':
        'Eine solche Datei gibt es nicht. Prüfen Sie den Namen; ein relativer geht von dem Ordner aus, in dem Sie sind.',
      'file-is-folder': 'Das ist ein Ordner. Nennen Sie die Auftragsdatei darin.',
      'file-not-allowed': 'Sie dürfen diese Datei nicht lesen. Prüfen Sie ihre Zugriffsrechte.',
      'file-unreadable': 'Die Datei ließ sich nicht vom Datenträger lesen.',
    },
    ourMistake: 'Hier hat Borewall einen Fehler gemacht; die Datei kann in Ordnung sein. Was geschehen ist:',
  },
  printing: {
    usage: [
      'Aufruf: npm run report -- DATEI -o BERICHT.pdf [--letter]',
      'oder: npm run report -- DATEI DATEI … -o ORDNER [--letter]',
      '',
      'Druckt den Bericht einer Auftragsdatei als PDF, auf A4 oder Letter. Von mehreren',
      'Dateien kommt jede unter ihrem Namen in den Ordner. Dafür braucht es Chromium; wo',
      'keines ist, wird eines eingerichtet.',
      '',
      'Rückgabewert: 0 gedruckt, 1 eine Datei war nicht lesbar oder nicht zu drucken,',
      '2 falscher Aufruf.',
    ].join('\n'),
    nameTarget: 'Nennen Sie die Datei, in die der Bericht kommt: -o BERICHT.pdf.',
    folderForSeveral: 'Mehrere Berichte kommen in einen Ordner: Nennen Sie hinter -o einen, den es gibt.',
    sameName: (file) => `Zwei der Dateien heißen ${file}: Drucken Sie sie in zwei Ordner.`,
    written: (file) => `Gedruckt: ${file}`,
    notPrinted: (file) => `Der Bericht von ${file} ließ sich nicht drucken.`,
  },
}
