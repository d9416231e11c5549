import type { send as english } from '../english/send'
import type { Texts } from '../texts'

/** Sending the findings: what is sent, in which ways, and what was done, in German. */
export const send: Texts<typeof english> = {
  send: {
    open: 'Senden',
    title: 'Senden, was die Ablesungen nachweisen',
    lead: 'Nichts verlässt dieses Gerät, bevor Sie einen Weg wählen. Der Text behandelt alle Bohrungen, das Bild die auf der Seite „Messen“ gewählte.',
    text: 'Text',
    picture: 'Bild',
    pictureOf: (bore, verdict) => `Bild zum Senden. ${bore}: ${verdict}`,
    drawing: 'Das Bild wird gezeichnet …',
    flat: 'Dieser Browser zeichnet hier kein 3D-Bild, deshalb wird die flache Karte gesendet.',
    noPicture: {
      'no-readings': 'Vor der ersten Ablesung gibt es nichts zu zeichnen. Der Text lässt sich senden.',
      failed: 'Das Bild ließ sich in diesem Browser nicht zeichnen. Der Text lässt sich trotzdem senden.',
    },
    ways: {
      share: 'Text und Bild teilen …',
      'share-text': 'Text teilen …',
      'copy-text': 'Text kopieren',
      'copy-picture': 'Bild kopieren',
      'save-text': 'Text speichern',
      'save-picture': 'Bild speichern',
    },
    saveForPrint: 'Bild zum Drucken speichern',
    done: {
      share: 'An das von Ihnen gewählte Ziel übergeben',
      copiedText: 'Text kopiert',
      copiedPicture: 'Bild kopiert',
      saved: (name) => `Gespeichert als ${name}, dort, wo dieser Browser seine Downloads ablegt`,
    },
    handOver: {
      title: 'Eine Datei für den Eigentümer',
      lead: 'Eine Seite, die sich in jedem Browser ohne Netz öffnet: was es heißt, in einfachen Worten, das Bild zum Drehen, alle Zahlen und Ablesungen. Borewall öffnet sie wieder als Auftrag.',
      make: 'Datei für den Eigentümer speichern',
      making: 'Die Datei wird erstellt …',
      failed:
        'Die Datei ließ sich in diesem Browser nicht erstellen. Speichern Sie stattdessen Text und Bild.',
    },
    cancelled: 'Geschlossen, ohne etwas zu teilen',
    failed: {
      share:
        'Das System hat es nicht zum Teilen angenommen. Speichern Sie Text und Bild und senden Sie die Dateien.',
      'share-text':
        'Das System hat ihn nicht zum Teilen angenommen. Speichern Sie den Text und senden Sie die Datei.',
      'copy-text':
        'Dieser Browser ließ den Text nicht kopieren. Markieren Sie ihn oben und kopieren Sie ihn, oder speichern Sie ihn.',
      'copy-picture': 'Dieser Browser ließ das Bild nicht kopieren. Speichern Sie es stattdessen.',
      'save-text': 'Die Datei ließ sich nicht speichern. Markieren Sie den Text oben und kopieren Sie ihn.',
      'save-picture': 'Die Datei ließ sich nicht speichern. Versuchen Sie stattdessen, das Bild zu kopieren.',
    },
  },
  sentPicture: {
    bore: (name, survey) => `${name}. ${survey}`,
    questionsOpen: (count) =>
      count === 1
        ? 'Eine Rückfrage zu einer Ablesung ist offen.'
        : `${count} Rückfragen zu Ablesungen sind offen.`,
    betweenReadings:
      'Zwischen den Ablesungen ist die Wand für das Auge gezeichnet; das Urteil kommt allein aus den Ablesungen.',
    madeWith: (app) => `Gezeichnet von ${app}.`,
  },
}
