import type { letterhead as english } from '../english/letterhead'
import type { Texts } from '../texts'

export const letterhead: Texts<typeof english> = {
  dialog: {
    title: 'Briefkopf',
    lead: 'Steht am Kopf jedes Berichts. Er wird in diesem Browser für alle Aufträge gespeichert; kein Auftrag nimmt ihn mit.',
    shopName: 'Name der Werkstatt',
    address: 'Anschrift',
    picture: 'Bild',
    pictureShown: 'Das Bild der Werkstatt',
    choose: 'Bild wählen …',
    chooseOther: 'Anderes Bild …',
    remove: 'Bild entfernen',
    removed: 'Das Bild ist entfernt.',
    putBack: 'Zurückholen',
    pictureKept: 'Wird verkleinert (auf höchstens 600 Bildpunkte) und in diesem Browser gespeichert.',
    reading: 'Das Bild wird gelesen …',
    unreadable: (file) =>
      `${file} ließ sich nicht als Bild lesen. Wählen Sie eine JPEG-, PNG- oder WebP-Datei.`,
    appAddress: 'Adresse von Borewall',
    appAddressHow:
      'Wo Ihre Werkstatt Borewall bereitstellt. Damit trägt jeder Bericht einen Code, der seinen Auftrag auf dem Telefon des Kunden öffnet.',
    thisPage: 'Die Adresse dieser Seite nehmen',
    useMended: (address) => `${address} nehmen`,
    saved: 'In diesem Browser gespeichert.',
    notKept: (why) => `Nicht gespeichert. ${why}`,
    notRead: (why) => `Der Briefkopf konnte nicht gelesen werden. ${why}`,
    again: 'Noch einmal versuchen',
    setAside:
      'Was hier gespeichert war, ließ sich nicht lesen. Es wurde beiseitegelegt: Speichern Sie es aus der Auftragsliste unter „Beiseitegelegt“ in eine Datei.',
    setAsideName: 'Briefkopf',
    newer:
      'Ein neueres Borewall hat hier einen Briefkopf gespeichert; der bleibt, wie er ist. Laden Sie die Seite neu, um dieses Borewall zu bekommen.',
  },
  problems: {
    control: 'Darin steht ein Zeichen, das sich nicht drucken lässt. Löschen Sie es, und tippen Sie es neu.',
    shopNameTooLong: (most) => `Höchstens ${most} Zeichen. Kürzen Sie ihn.`,
    addressTooLong: (most, lines) => `Höchstens ${lines} Zeilen und ${most} Zeichen. Kürzen Sie sie.`,
    appAddress: {
      'no-address': 'Das ist keine Adresse. Eine sieht so aus: https://shop.example/borewall/.',
      'no-scheme': 'Sie muss mit https:// oder http:// beginnen.',
      'other-scheme':
        'Sie muss mit https:// oder http:// beginnen; eine andere kann ein Telefon nicht öffnen.',
      password:
        'Darin steht ein Name oder ein Passwort, das dann auf jedem Bericht stünde. Lassen Sie das weg.',
      fragment: 'Lassen Sie weg, was nach dem # steht; dorthin kommt der Auftrag.',
      'too-long': 'Höchstens 200 Zeichen: Eine längere lässt dem Code keinen Platz für den Auftrag.',
    },
  },
  reach: {
    'this-machine': 'Diese Adresse kann nur dieses Gerät öffnen, das Telefon eines Kunden nicht.',
    'this-network': 'Diese Adresse kann nur öffnen, was im Netz Ihrer Werkstatt ist.',
  },
  code: {
    label: 'QR-Code, der diesen Auftrag in Borewall öffnet',
    caption:
      'Scannen, um diesen Auftrag in Borewall zu öffnen. Die Ablesungen stehen im Code selbst; nichts wird irgendwohin gesendet.',
    captionWithout: (what) =>
      `Scannen, um diesen Auftrag in Borewall zu öffnen. Die Ablesungen stehen im Code selbst; nichts wird irgendwohin gesendet. Nicht darin: ${what}.`,
    photographs: (count) => (count === 1 ? '1 Foto' : `${count} Fotos`),
    scans: (count) => (count === 1 ? 'die Radien von 1 Abtastung' : `die Radien von ${count} Abtastungen`),
    notes: (count) => (count === 1 ? '1 Notiz' : `${count} Notizen`),
    list: (parts) => parts.join(', '),
    none: {
      'no-address': 'Kein Code: Im Briefkopf steht noch keine Adresse von Borewall.',
      'too-large':
        'Kein Code: Dieser Auftrag ist größer, als ein Telefon noch vom Papier liest. Geben Sie eine Datei mit.',
      'not-loaded':
        'Kein Code: Ein Teil von Borewall ließ sich nicht laden. Laden Sie die Seite neu, um es noch einmal zu versuchen.',
    },
  },
  opening: {
    ask: (job, machine, bores, readings) =>
      `Diese Adresse enthält einen Auftrag: ${job}${machine === '' ? '' : `, ${machine}`}, ${bores}, ${readings}. Fotos und die Radien von Abtastungen kommen in einer Adresse nicht mit. Wenn Sie ihn öffnen, wird er in diesem Browser neben den anderen Aufträgen gespeichert; keiner von ihnen ändert sich.`,
    untitled: 'ohne Namen',
    bores: (count) => (count === 1 ? '1 Bohrung' : `${count} Bohrungen`),
    readings: (count) => (count === 1 ? '1 Ablesung' : `${count} Ablesungen`),
    open: 'Auftrag öffnen',
    opened: (job) => `${job} aus der Adresse geöffnet`,
    address: 'Die Adresse',
    notOpened: {
      damaged:
        'Der Auftrag in dieser Adresse ist nicht vollständig und wurde nicht geöffnet. Ein Teil der Adresse fehlt oder ist verändert: Scannen Sie den Code noch einmal, oder kopieren Sie den ganzen Link.',
      'too-large':
        'Diese Adresse wird beim Entpacken größer, als ein Bericht je enthält, und wurde nicht geöffnet. Wer sie Ihnen gegeben hat, kann Ihnen stattdessen eine Datei schicken.',
      newer:
        'Den Auftrag in dieser Adresse hat ein neueres Borewall geschrieben. Laden Sie die Seite neu, um es zu bekommen, und öffnen Sie die Adresse dann noch einmal.',
    },
    unharmed: 'Was hier gespeichert ist, wurde nicht angerührt.',
  },
}
