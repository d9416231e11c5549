import type { photographs as english } from '../english/photographs'
import type { Texts } from '../texts'

/** Photographs of surface findings, in German. */
export const photographs: Texts<typeof english> = {
  photographs: {
    title: 'Fotos',
    add: 'Foto hinzufügen',
    camera: 'Foto aufnehmen',
    drop: 'oder hier eines ablegen',
    kept: 'Verkleinert (höchstens 1600 Bildpunkte) und in diesem Browser gespeichert. Was die Kamera neben das Bild geschrieben hat, zum Beispiel den Ort, wird weggelassen.',
    reading: 'Das Bild wird gelesen …',
    shown: (name) => `${name} zeigen`,
    large: (name, finding) => `${finding}: ${name}`,
    remove: (name) => `${name} entfernen`,
    removeShort: 'Entfernen',
    notHere: 'Foto nicht in diesem Browser',
    unreadable: (name) =>
      `${name} ließ sich nicht als Bild lesen. Wählen Sie eine Datei in JPEG, PNG oder WebP.`,
    notKept: (name, why) => `${name} ist nicht gespeichert. ${why}`,
    unnamed: 'Foto',
    leftOut: {
      notHere: (count) =>
        count === 1
          ? 'Ein Foto fehlt darin: Es ist nicht in diesem Browser.'
          : `${count} Fotos fehlen darin: Sie sind nicht in diesem Browser.`,
      noRoom: (count) =>
        count === 1
          ? 'Ein Foto fehlt darin: Die Datei würde größer, als Borewall sie liest.'
          : `${count} Fotos fehlen darin: Die Datei würde größer, als Borewall sie liest.`,
    },
    damaged: (count) =>
      count === 1
        ? 'Ein Foto in dieser Datei ist beschädigt und wurde weggelassen.'
        : `${count} Fotos in dieser Datei sind beschädigt und wurden weggelassen.`,
  },
}
