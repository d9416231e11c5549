import type { shelf as english } from '../english/shelf'
import type { Texts } from '../texts'

/** The list of all jobs, and the limits kept for use in other jobs, in German. */
export const shelf: Texts<typeof english> = {
  shelf: {
    title: 'Auftragsliste',
    lead: 'Borewall speichert Aufträge nur in diesem Browser. Die sichere Kopie ist eine Datei.',
    back: 'Zurück zum Messen',
    toFirstPage: 'Zurück',
    newJob: 'Neuer Auftrag',
    open: 'Datei öffnen …',
    search: 'Suchen',
    searchHint: 'Name, Maschine, Notiz oder Person',
    filters: 'Filter',
    filtersSet: (count) => (count === 1 ? 'Filter: 1 gesetzt' : `Filter: ${count} gesetzt`),
    clear: 'Filter aufheben',
    labels: {
      machine: 'Maschine',
      from: 'Gemessen ab',
      to: 'Gemessen bis',
      standing: 'Urteil',
      check: 'Nächste Prüfung',
      where: 'Angezeigt',
      order: 'Reihenfolge',
    },
    anyMachine: 'jede Maschine',
    noMachine: 'keine Maschine eingetragen',
    anyStanding: 'jedes Urteil',
    anyCheck: 'jeder Tag',
    checks: {
      due: 'fällig',
      soon: 'fällig in 30 Tagen oder früher',
      some: 'an einem Tag',
      none: 'kein Tag bekannt',
    },
    checkOn: (day) => `Prüfung ${day}`,
    checkDue: (day) => `Prüfung fällig ${day}`,
    checkAt: (hours) => `Prüfung bei ${hours} h`,
    where: { shelf: 'die Liste', archived: 'Archiviertes', deleted: 'Gelöschtes' },
    orders: {
      changed: 'zuletzt geändert',
      surveyed: 'zuletzt gemessen',
      check: 'nächste Prüfung, früheste zuerst',
      name: 'Name',
      verdict: 'Urteil, schlechtestes zuerst',
    },
    heads: {
      name: 'Auftrag und Maschine',
      maps: 'Bohrungen',
      verdict: 'Schlechtestes',
      surveyed: 'Gemessen',
      changed: 'Geändert',
      readings: 'Ablesungen',
      more: 'Mehr',
    },
    count: (all) => (all === 1 ? '1 Auftrag' : `${grouped(all)} Aufträge`),
    found: (found, all) =>
      all === 1 ? `${grouped(found)} von 1 Auftrag` : `${grouped(found)} von ${grouped(all)} Aufträgen`,
    looking: 'Die Liste wird gelesen …',
    summing: (done, of) => `Ältere Aufträge werden ausgewertet: ${grouped(done)} von ${grouped(of)}`,
    none: {
      shelf: 'In diesem Browser ist noch kein Auftrag gespeichert.',
      archived: 'Nichts ist archiviert.',
      deleted: 'Nichts wurde gelöscht.',
      found: 'Kein Auftrag passt dazu.',
    },
    bore: (name) => `Bohrung ${name}`,
    judgedOf: (judged, bores) => `${judged} von ${bores} beurteilt`,
    surfaceMayEnd: 'Oberfläche kann das Ende sein',
    surveyed: (day) => `gemessen ${day}`,
    changed: (when) => `geändert ${when}`,
    readings: (count) => (count === 1 ? '1 Ablesung' : `${grouped(count)} Ablesungen`),
    notSurveyed: 'kein Datum',
    onBench: 'in Arbeit',
    goneOn: (day) => `gelöscht ${day}`,
    unread: {
      newer: 'Von einem neueren Borewall geschrieben. Der Auftrag bleibt, wie er ist.',
      unreadable: 'Nicht lesbar. Öffnen Sie ihn, um zu sehen, was nicht stimmt.',
      'not-summed-up': 'Ließ sich nicht auswerten. Öffnen lässt er sich.',
    },
    more: (name) => `Mehr zu ${name}`,
    acts: {
      open: 'Öffnen',
      duplicate: 'Kopieren',
      archive: 'Archivieren',
      unarchive: 'Aus dem Archiv holen',
      delete: 'Löschen',
      restore: 'Zurück in die Liste',
    },
    did: {
      duplicated: (name) => `Kopiert als ${name}.`,
      archived: (name) => `${name} ist archiviert.`,
      unarchived: (name) => `${name} ist wieder in der Liste.`,
      deleted: (name) => `${name} ist gelöscht und bleibt 30 Tage lang unter „Gelöschtes“.`,
      restored: (name) => `${name} ist wieder in der Liste.`,
    },
    undo: 'Rückgängig',
    gone: 'Dieser Auftrag ist in diesem Browser nicht mehr gespeichert.',
  },
}

/** 10 000, with a narrow space that does not break. */
function grouped(count: number): string {
  return `${count}`.replace(/\B(?=(\d{3})+$)/g, '\u202f')
}
