import type { language as english } from '../english/language'
import type { Texts } from '../texts'

/** The language itself: how the machine knows it, what it puts before decimals, and the choice of another. */
export const language: Texts<typeof english> = {
  language: {
    locale: 'de-DE',
    decimalMark: ',',
    menu: 'Sprache (Language)',
    title: 'Sprache',
    lead: 'Nur auf diesem Gerät gespeichert. Die Seite wird dafür neu geladen; alles Eingetragene bleibt.',
    unreviewed: 'noch von niemandem durchgesehen, der sie spricht',
    waiting:
      'Einiges Getippte ist noch nicht übernommen und ginge verloren. Übernehmen Sie es oder leeren Sie das Feld, und wählen Sie die Sprache dann noch einmal.',
    notSaved:
      'Der Auftrag konnte nicht gespeichert werden, und für eine andere Sprache muss die Seite neu geladen werden. Speichern Sie ihn zuerst in eine Datei.',
    notKept:
      'Dieser Browser merkt sich auf diesem Gerät nichts; die Wahl einer Sprache ginge gleich wieder verloren.',
  },
  lengths: {
    mm: 'Längen in mm schreiben',
    inch: 'Längen in Zoll schreiben',
    change: 'Einheit der Längen',
  },
}
