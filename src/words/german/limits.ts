import type { limits as english } from '../english/limits'
import type { Texts } from '../texts'

export const limits: Texts<typeof english> = {
  limits: {
    title: 'Grenzmaße',
    source: 'Aus dem Werkstatthandbuch für diesen Motor. Borewall bringt keine Grenzmaße mit.',
    band: 'Neu {newMin} bis {newMax} mm; Verschleißgrenze {wearLimit} mm.',
    ovality: 'Unrundheit bis {ovalityLimit} mm, Regel: {ovalityRule}.',
    ovalityAxes: 'Das Werkstatthandbuch nennt die Achse bei {ovalityX}° X und die Achse bei {ovalityY}° Y.',
    taper: 'Konizität bis {taperLimit} mm, Regel: {taperRule}.',
    proportions:
      'Im Verhältnis: Unrundheit bis {ovalityPerMm} und Konizität bis {taperPerMmOfBore} mm je mm der Bohrung; Konizität bis {taperPerMmOfTravel} mm je mm Hub, der {travel} mm beträgt. Von mehreren Grenzwerten gilt der kleinste.',
    more: 'Weitere Grenzmaße',
    oversizes: 'Übermaße im Werkstatthandbuch: {oversizes} mm. Diese Bohrung ist gefertigt auf: {oversize}.',
    standardSize: 'Standardmaß',
    oversizeOf: (mm) => `+${mm}`,
    oversizeMoves: (oversize) =>
      `Auf ein Übermaß von ${oversize} gefertigt: Jedes Grenzmaß ist um ebenso viel größer.`,
    interval: 'Alle {serviceInterval} h wieder zu messen.',
    grade: 'Größenklasse {gradeName}: {gradeMin} bis {gradeMax}',
    boreGrade: 'In diese Bohrung eingeschlagen: {grade}.',
    labels: {
      newMin: 'Kleinstes Neumaß, mm',
      newMax: 'Größtes Neumaß, mm',
      wearLimit: 'Verschleißgrenze, größtes Maß im Betrieb, mm',
      ovalityLimit: 'Grenzwert der Unrundheit, mm',
      ovalityRule: 'Regel für die Unrundheit',
      ovalityX: 'Achse X des Werkstatthandbuchs, Grad',
      ovalityY: 'Achse Y des Werkstatthandbuchs, Grad',
      taperLimit: 'Grenzwert der Konizität, mm',
      taperRule: 'Regel für die Konizität',
      ovalityPerMm: 'Grenzwert der Unrundheit je mm der Bohrung, mm',
      taperPerMmOfBore: 'Grenzwert der Konizität je mm der Bohrung, mm',
      taperPerMmOfTravel: 'Grenzwert der Konizität je mm Hub, mm',
      travel: 'Hub des Kolbens, mm',
      serviceInterval:
        'Wartungsintervall, Stunden, nach denen die Bohrung laut Werkstatthandbuch wieder zu messen ist',
      gradeName: 'Name der Größenklasse',
      gradeMin: 'Kleinstes Maß der Größenklasse, mm',
      gradeMax: 'Größtes Maß der Größenklasse, mm',
      grade: 'In diese Bohrung eingeschlagene Größenklasse',
      oversizes: 'Übermaße im Werkstatthandbuch, mm, mit Leerzeichen dazwischen',
      oversize: 'Übermaß dieser Bohrung',
    },
    none: 'nicht angegeben',
    noGrade: 'keine Größenklasse',
    addGrade: 'Größenklasse hinzufügen',
    removeGrade: (name) => `Größenklasse ${name} entfernen`,
    wearAlone: 'Gibt es eine Verschleißgrenze, wird nur sie beurteilt; das Neumaß wird gezeichnet.',
    rulesDiffer:
      'Dieselben Ablesungen können nach der einen Regel bestehen und nach der anderen nicht. Wählen Sie die, die in Ihrem Werkstatthandbuch steht.',
  },
  ovalityRules: {
    'largest-less-smallest-at-a-level': 'größter minus kleinster auf einer Ebene',
    'across-less-along-at-a-level': 'X minus Y auf einer Ebene',
    pooled: 'größter auf X minus kleinster auf Y, alle Ebenen zusammen',
  },
  taperRules: {
    'between-levels-of-an-axis': 'größter minus kleinster entlang einer Achse',
    'top-less-bottom-of-an-axis': 'oben minus unten auf einer Achse',
    'largest-top-less-largest-bottom': 'größter oben minus größter unten',
    'largest-top-less-smallest-bottom': 'größter oben minus kleinster unten',
    'level-means': 'Mittel oben minus Mittel unten',
  },
}
