import type { surface as english } from '../english/surface'
import type { Texts } from '../texts'

/** What was seen or felt on the wall, in German. */
export const surface: Texts<typeof english> = {
  surface: {
    title: 'Oberfläche',
    kinds: {
      scratch: 'Riefe',
      scuff: 'Fressspur',
      'stuck-metal': 'angeriebenes Metall',
      'bare-aluminium': 'blankes Aluminium',
      flaking: 'Abblättern',
      ridge: 'Grat am Umkehrpunkt',
      pits: 'Löcher',
      rust: 'Rost',
      glaze: 'verglaste Wand',
      'cross-hatch-worn-off': 'Kreuzschliff verschwunden',
      'cross-hatch-seen': 'Kreuzschliff sichtbar',
    },
    shapes: { patch: 'Fleck', streak: 'Streifen in Hubrichtung' },
    nail: {
      yes: 'der Fingernagel bleibt hängen',
      no: 'der Fingernagel bleibt nicht hängen',
      notTried: 'Fingernagelprobe nicht gemacht',
    },
    numbered: (number, kind) => `${number} ${kind}`,
    place: (depths, angles) => `${depths}, ${angles}`,
    between: (from, to) => `${from} bis ${to}`,
    allRound: 'ringsum',
    line: (title, place, parts) => `${title}: ${[place, ...parts].join('; ')}`,
    across: {
      measured: (length) => `${length} breit, gemessen`,
      place: (length) => `${length} breit, nach der Lage`,
    },
    along: {
      measured: (length) => `${length} lang, gemessen`,
      place: (length) => `${length} lang, nach der Lage`,
    },
    photographs: (count) => (count === 1 ? 'ein Foto' : `${count} Fotos`),
    add: 'Oberflächenbefund hinzufügen',
    orDrag: 'Geben Sie die Lage eines Oberflächenbefunds ein, oder ziehen Sie auf der flachen Karte darüber',
    mark: 'Markieren',
    markHelp: 'Einen Oberflächenbefund mit dem Finger auf der flachen Karte einzeichnen',
    marking: 'Zeichnen Sie mit dem Finger über das, was Sie gefunden haben.',
    record: 'Erfassen',
    remove: (title) => `${title} entfernen`,
    sentence:
      'Was: {kind}, Form: {shape}, Tiefe von {fromDepthMm} bis {toDepthMm} mm, Winkel von {fromDegrees} bis {toDegrees}°; {nail}. Breite {acrossMm} mm, Länge {alongMm} mm. Notiz: {note}',
    draft:
      'Was: {kind}, Tiefe von {fromDepthMm} bis {toDepthMm} mm, Winkel von {fromDegrees} bis {toDegrees}°, von oben gesehen im Uhrzeigersinn.',
    drawHelp:
      'Oder ziehen Sie auf der flachen Karte darüber; ein Finger zeichnet dort, sobald „Markieren“ gedrückt ist.',
    angleHelp:
      'Winkel dürfen über 0° gehen: 350 bis 10 sind zwanzig Grad um die Vorderseite. Zweimal derselbe ist eine Linie, 0 bis 360 ringsum.',
    labels: {
      kind: 'Art',
      shape: 'Form',
      fromDepthMm: 'Von Tiefe, mm',
      toDepthMm: 'Bis Tiefe, mm',
      fromDegrees: 'Von Winkel, Grad',
      toDegrees: 'Bis Winkel, Grad',
      nail: 'Fingernagelprobe',
      acrossMm: 'Breite um die Bohrung herum, mm',
      alongMm: 'Länge entlang der Bohrung, mm',
      note: 'Notiz',
    },
    ends: { fromDepthMm: 'oben', toDepthMm: 'unten', fromDegrees: 'von', toDegrees: 'bis' },
    missing: (labels) => `Noch einzugeben: ${labels.join('; ')}.`,
    byPlace: (length) => `${length} nach der Lage`,
    noNote: 'keine',
    changes: {
      added: 'Oberflächenbefund hinzugefügt',
      changed: 'Oberflächenbefund',
      removed: 'Oberflächenbefund entfernt',
      photograph: 'Foto hinzugefügt',
      photographRemoved: 'Foto entfernt',
    },
    lead: 'Oberfläche: Zahlen allein entscheiden nicht.',
    stops: {
      'bare-aluminium': (where) =>
        `Blankes Aluminium bei ${where} kann eine maßhaltige Bohrung unbrauchbar machen.`,
      flaking: (where) => `Abblättern bei ${where} kann eine maßhaltige Bohrung unbrauchbar machen.`,
      'catches-nail': (where, kind) =>
        `Bei ${where} bleibt der Fingernagel hängen (${kind}): Das kann eine maßhaltige Bohrung unbrauchbar machen.`,
      'pits-in-ring-path': (where) =>
        `Löcher im Ringlauf bei ${where} können eine maßhaltige Bohrung unbrauchbar machen.`,
      'pits-perhaps-in-ring-path': (where) =>
        `Löcher bei ${where} können eine maßhaltige Bohrung unbrauchbar machen, wenn dort die Ringe laufen: Tragen Sie ein, wo die Ringe laufen.`,
    },
    decides: 'Was daraus wird, sagen das Werkstatthandbuch und eine Fachkraft für Motoreninstandsetzung.',
    nailWouldTell: (where) =>
      `Ziehen Sie bei ${where} den Fingernagel über die Stelle: Ob er hängen bleibt, sagt mehr als ihr Aussehen.`,
    hereToo: (titles) => `hier: ${titles}`,
  },
}
