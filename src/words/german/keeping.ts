import type { keeping as english } from '../english/keeping'
import type { Texts } from '../texts'

export const keeping: Texts<typeof english> = {
  saving: {
    saved: (time) => `Gespeichert ${time}`,
    saving: 'Wird gespeichert …',
    notYet: 'Unverändert',
    failed: 'Nicht gespeichert',
    failedKept:
      'Nicht gespeichert. Was Sie eingetragen haben, ist noch auf dieser Seite; speichern Sie es in eine Datei.',
    retry: 'Noch einmal versuchen',
    toFile: 'In eine Datei speichern',
    keepAgain: 'Wieder speichern',
    errors: {
      quota:
        'Dieser Browser hat keinen Platz mehr für Borewall. Speichern Sie den Auftrag in eine Datei, und schaffen Sie dann Platz.',
      blocked:
        'Ein anderer Tab hält die gespeicherten Aufträge in einer älteren Fassung offen. Schließen Sie die anderen Borewall-Tabs, und versuchen Sie es noch einmal.',
      unavailable:
        'Dieser Browser speichert hier nichts (ein privates Fenster, oder das Speichern ist abgeschaltet). Speichern Sie den Auftrag in eine Datei, bevor Sie die Seite schließen.',
      mismatch:
        'Was der Browser gespeichert hat, ist nicht das, was ihm übergeben wurde. Speichern Sie den Auftrag in eine Datei; verlassen Sie sich nicht auf diesen Browser.',
      newer:
        'Ein neueres Borewall hat hier einen Auftrag mit derselben Kennung gespeichert; der bleibt, wie er ist. Speichern Sie diesen in eine Datei.',
      'newer-shelf':
        'Ein neueres Borewall hat die gespeicherten Aufträge neu geordnet, und diese ältere Seite kommt nicht an sie heran. Speichern Sie diesen Auftrag in eine Datei, und laden Sie dann die Seite neu.',
      gone: 'Der Auftrag ist nicht mehr unter den in diesem Browser gespeicherten: Die Daten des Browsers wurden gelöscht, oder der Auftrag wurde in einem anderen Tab gelöscht. Auch andere Aufträge können fehlen.',
      overtaken:
        'Ein anderer Tab hat diesen Auftrag übernommen, bevor die letzte Änderung gespeichert war. Die Änderung wurde in der Auftragsliste beiseitegelegt.',
    },
    unreachable: 'Die in diesem Browser gespeicherten Aufträge sind jetzt nicht zu erreichen.',
    unreachableWhy: {
      quota:
        'Dieser Browser hat keinen Platz mehr für Borewall. Schaffen Sie Platz, und versuchen Sie es noch einmal.',
      blocked:
        'Ein anderer Tab hält sie in einer älteren Fassung offen. Schließen Sie die anderen Borewall-Tabs, und versuchen Sie es noch einmal.',
      unavailable:
        'Dieser Browser speichert hier nichts (ein privates Fenster, oder das Speichern ist abgeschaltet). Was Sie eingeben, hält nur so lange wie diese Seite: Speichern Sie es in eine Datei, bevor Sie sie schließen.',
      mismatch: 'Was der Browser gespeichert hat, ist nicht das, was ihm übergeben wurde.',
      newer: 'Ein neueres Borewall hat sie gespeichert. Laden Sie die Seite neu, um es zu bekommen.',
      'newer-shelf': 'Ein neueres Borewall hat sie neu geordnet. Laden Sie die Seite neu, um es zu bekommen.',
      gone: 'Sie wurden gelöscht.',
      overtaken: 'Ein anderer Tab hat sie übernommen.',
    },
    leaving: 'Die letzte Änderung ist noch nicht gespeichert.',
    leaveAnyway: 'Ungespeichert verlassen',
  },
  jobsTaken: {
    title: (file) => `Aufträge aus ${file}`,
    taken: (count) => `Übernommen: ${count}`,
    copied: (count) => `Als Kopie übernommen, weil hier ein anderer Stand gespeichert ist: ${count}`,
    same: (count) => `Hier schon gespeichert, gleich: ${count}`,
    refused: (count) => `Nicht zu lesen: ${count}`,
    limits: (count) => `Grenzmaße für andere Aufträge, übernommen: ${count}`,
    limitsUnread: (count) => `Grenzmaße für andere Aufträge, nicht zu lesen: ${count}`,
  },
  keeping: {
    title: 'Wie dieser Auftrag gespeichert ist',
    details: (state) => `${state}: wie dieser Auftrag gespeichert ist`,
    inBrowser:
      'Nur in diesem Browser; nichts wird irgendwohin gesendet. Sicher ist die Kopie in einer Datei außerhalb.',
    reminder: {
      'never-copied': 'Nur in diesem Browser.',
      'changed-since': 'Seit der letzten Datei geändert.',
    },
    dismiss: 'Heute nicht',
    dismissLabel: 'Heute nicht mehr daran erinnern',
    copied: (when) => `Zuletzt in eine Datei gespeichert: ${when}.`,
    notCopied: 'Noch nicht in eine Datei gespeichert.',
    persistence: {
      'not-asked':
        'Bei der ersten Änderung, die gespeichert wird, wird der Browser gebeten, die Aufträge dauerhaft zu behalten.',
      granted: 'Der Browser hat zugesagt, die Aufträge nicht von sich aus zu löschen.',
      refused:
        'Der Browser hat nicht zugesagt, die Aufträge zu behalten: Wird der Speicher voll, kann er sie von sich aus löschen. Eine Datei ist davor sicher.',
      unknown: 'Dieser Browser sagt nicht, ob er die Aufträge von sich aus löschen kann.',
    },
    used: (used, of) => `Borewall belegt ${used} von den ${of}, die dieser Browser ihm zugesteht.`,
    megabytes: (count) =>
      count < 1000
        ? `${count < 10 ? count.toFixed(1).replace('.', ',') : Math.round(count)} MB`
        : `${Math.round(count / 1000)} GB`,
    pen: {
      held: 'Dieser Tab schreibt den Auftrag; andere Tabs, die ihn zeigen, folgen.',
      following: 'Ein anderer Tab schreibt den Auftrag; dieser folgt.',
    },
  },
  folder: {
    label: 'Kopien in einem Ordner',
    impossible:
      'Dieser Browser lässt keine Seite in einen Ihrer Ordner schreiben; speichern Sie stattdessen Dateien.',
    off: 'Jeder Auftrag kann auch in einen Ihrer Ordner geschrieben werden, nach jedem Speichern neu.',
    pick: 'Ordner wählen …',
    pickOther: 'Anderer Ordner …',
    allow: 'Weiterschreiben',
    leave: 'Keine Kopien mehr schreiben',
    asks: (folder) =>
      `Kopien kommen in den Ordner ${folder}, sobald Sie dem Browser das Schreiben dort wieder erlauben.`,
    on: (folder) => `Kopien kommen in den Ordner ${folder}.`,
    written: (folder, file) =>
      `Dieser Auftrag liegt im Ordner ${folder} als ${file}, wie er zuletzt gespeichert wurde.`,
    failed: {
      gone: (folder) =>
        `Den Ordner ${folder} gibt es nicht mehr, also wurde keine Kopie geschrieben. Wählen Sie einen anderen.`,
      refused: (folder) =>
        `Der Browser lässt Borewall nicht in den Ordner ${folder} schreiben. Wählen Sie ihn noch einmal, um es zu erlauben.`,
      'no-room': (folder) => `Im Ordner ${folder} ist kein Platz, also wurde keine Kopie geschrieben.`,
      'not-written': (folder) =>
        `Die Kopie im Ordner ${folder} ließ sich nicht vollständig schreiben. Beim nächsten Speichern wird es noch einmal versucht.`,
    },
  },
  versions: {
    menu: 'Frühere Fassungen …',
    title: 'Frühere Fassungen dieses Auftrags',
    lead: (most) =>
      `In diesem Browser gespeichert, wenn eine Sitzung beginnt, alle zehn Minuten bei der Arbeit und bevor zu einer von ihnen zurückgegangen wird: höchstens ${most}, je älter, desto weniger.`,
    none: 'Noch keine. Die erste wird gespeichert, sobald der Auftrag in einer späteren Sitzung oder nach zehn Minuten geändert wird.',
    why: {
      session: 'wie er war, als eine Sitzung begann',
      interval: 'im Lauf der Arbeit',
      restore: 'bevor eine frühere Fassung zurückgeholt wurde',
      'take-over': 'bevor ein anderer Tab ihn übernahm',
      replace: 'bevor eine Datei an seine Stelle trat',
    },
    held: (name, readings) => `${name}, ${readings}`,
    unreadable: 'Diese Fassung kann dieses Borewall nicht lesen.',
    look: 'Ansehen',
    lookAt: (when) => `Fassung ansehen: ${when}`,
    textOf: (when) => `Befunde der Fassung: ${when}`,
    restore: 'Zurückholen',
    restoreOf: (when) => `Fassung zurückholen: ${when}`,
    restored: (when) => `Zurück zur Fassung ${when}; das lässt sich rückgängig machen`,
  },
  pen: {
    label: 'Welcher Tab schreibt',
    following:
      'Ein anderer Tab schreibt diesen Auftrag. Hier sehen Sie jede Änderung, sobald sie gespeichert ist.',
    handingOver: 'Ein anderer Tab übernimmt diesen Auftrag …',
    lost: {
      saved:
        'Ein anderer Tab hat diesen Auftrag übernommen. Was Sie hier eingetragen haben, ist gespeichert.',
      'set-aside':
        'Ein anderer Tab hat diesen Auftrag übernommen. Ihre letzte Änderung kam zu spät, um gespeichert zu werden; sie wurde in der Auftragsliste beiseitegelegt.',
      unsaved:
        'Ein anderer Tab hat diesen Auftrag übernommen. Ihre letzte Änderung ließ sich nicht speichern; sie ist noch auf dieser Seite.',
    },
    takeOver: 'Stattdessen hier schreiben',
    unsavedAsk:
      'Der andere Tab hat eine Änderung, die er nicht speichern konnte. Sehen Sie zuerst dort nach, oder übernehmen Sie den Auftrag, wie er zuletzt gespeichert wurde.',
    takeOverAnyway: 'Trotzdem übernehmen',
    unguarded:
      'Dieser Browser kann nicht feststellen, ob ein anderer Tab denselben Auftrag schreibt. Halten Sie ihn nur in einem Tab offen.',
    replaced:
      'Was ein anderer Tab oder eine Datei an die Stelle dieses Auftrags gesetzt hatte, wurde in der Auftragsliste beiseitegelegt.',
    notReplaced:
      'Ein anderer Tab schreibt diesen Auftrag, deshalb wurde er nicht ersetzt. Übernehmen Sie ihn zuerst, oder öffnen Sie die Datei als Kopie.',
  },
}
