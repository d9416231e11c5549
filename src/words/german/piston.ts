import type { PistonLack } from '../../core/piston/piston-in-bore'
import type { piston as english } from '../english/piston'
import type { Texts } from '../texts'

const lackNames: Record<PistonLack, string> = {
  size: 'sein Maß',
  height: 'die Höhe, in der es gemessen wurde',
  'crown-height': 'von der Kante des Kolbenhemds bis zum Kolbenboden',
  travel: 'der Hub',
}

/** Pistons, their clearance, the oversize to bore to, and ring gaps, in German. */
export const piston: Texts<typeof english> = {
  engineTitle: 'Kolben und Übermaß für den Motor',
  states: {
    fitted: 'lief in einer Bohrung',
    'at-hand': 'liegt bereit',
    obtainable: 'ist zu bekommen',
  },
  clearance: {
    name: (piston) => `Laufspiel, ${piston}`,
    ranHere: 'lief hier',
    range: (least, most) => `${least} bis ${most}`,
    withDoubt: (microns, doubt) => `${microns} ± ${doubt}`,
    atRest: (temperature) => `in Ruhe bei ${temperature}`,
    asMeasured: (figure, bore, piston) =>
      bore === piston
        ? `${figure}, wie bei ${bore} gemessen`
        : `${figure}, wie gemessen, die Bohrung bei ${bore} und der Kolben bei ${piston}`,
    rules: {
      'smallest-to-largest': 'kleinste Bohrung minus Kolben bis größte Bohrung minus Kolben',
      'largest-bore': 'größte Bohrung minus Kolben',
      'mean-bore': 'Mittel der Bohrung minus Kolben',
      'smallest-bore': 'kleinste Bohrung minus Kolben',
    },
    read: (size) => `Kolben ${size} bei 20 °C`,
    fromRange: (size) => `Kolben etwa ${size}, nicht gemessen`,
    window: {
      both: {
        service: (min, max) => `mindestens ${min}, im Betrieb höchstens ${max}`,
        new: (min, max) => `neu ${min} bis ${max}`,
      },
      min: (min) => `mindestens ${min}`,
      max: {
        service: (max) => `im Betrieb höchstens ${max}`,
        new: (max) => `neu höchstens ${max}`,
      },
      none: 'kein Laufspiel aus dem Handbuch eingetragen',
    },
    verdicts: {
      inside: 'passt',
      'too-tight': 'zu eng',
      'too-loose': 'zu weit',
      'too-close': 'zu knapp für ein Urteil',
    },
    leans: {
      inside: (chances) => `so gemessen passt er ${chances}`,
      'too-tight': (chances) => `so gemessen ist es ${chances} zu eng`,
      'too-loose': (chances) => `so gemessen ist es ${chances} zu weit`,
    },
    even: 'ob er passt, ist etwa gleich wahrscheinlich',
    asNew: {
      inside: 'auch im Laufspiel von Neuteilen',
      'too-tight': 'enger, als Neuteile sein dürfen',
      'too-loose': (max) => `weiter, als Neuteile sein dürfen, ${max}`,
      'too-close': (max) => `gegen die ${max} von Neuteilen zu knapp für ein Urteil`,
    },
    otherGrade: (bore, piston) => `auf der Bohrung ist ${bore} eingeschlagen, auf dem Kolben ${piston}`,
    unknown: {
      'no-size': 'niemand hat ihn gemessen, und es sind keine Maße für ihn angegeben',
      'no-readings': 'keine Ablesungen dieser Bohrung dort, wo die Ringe laufen',
      'other-oversize': 'er gehört zu einem anderen Übermaß',
      'other-height':
        'in einer anderen Höhe gemessen, als das Handbuch verlangt; dessen Grenzmaße gelten dafür nicht',
    },
    notYet: 'noch nicht',
    provisional: (gaps) => `vorläufig: nicht erfasst ${gaps.join(', ')}`,
    provisionalShort: 'vorläufig',
    gaps: {
      'no-micrometer': 'mit welcher Bügelmessschraube der Kolben gemessen wurde',
      'no-micrometer-check': 'was diese Bügelmessschraube an ihrem eigenen Einstellnormal zeigt',
      'no-piston-temperature': 'Temperatur des Kolbens',
      'no-micrometer-temperature': 'Temperatur der Bügelmessschraube',
      'no-height': 'Höhe, in der der Kolben gemessen wurde',
    },
    others: 'Andere Kolben',
    othersFit: (fitting, all) =>
      fitting === 0
        ? 'keiner passt'
        : all === fitting
          ? all === 1
            ? 'passt'
            : 'alle passen'
          : fitting === 1
            ? `1 von ${all} passt`
            : `${fitting} von ${all} passen`,
    other: (piston, figure, verdict) =>
      figure === '' ? `${piston}: ${verdict}` : `${piston}: ${figure}, ${verdict}`,
  },
  pairing: {
    name: 'Welcher Kolben in welche Bohrung',
    one: 'Kolben, der der Mitte des Bereichs am nächsten kommt',
    served: (served, all) => (served === all ? 'alle versorgt' : `${served} von ${all} Bohrungen versorgt`),
    nothing: 'keiner passt',
    pair: (bore, piston) => `${bore}: ${piston}`,
    close: (pair) => `${pair} (zu knapp für ein Urteil)`,
    worst: (departure, middle, bore) =>
      `schlimmstenfalls ${departure} neben der Mitte des Bereichs, ${middle}, in Bohrung ${bore}`,
    worstAlone: (departure, middle) => `schlimmstenfalls ${departure} daneben, ${middle}`,
    closeAlone: 'ob er passt, ist zu knapp für ein Urteil',
    fitNone: (bores) => `kein Kolben der Liste passt in: ${bores}`,
    left: (bores) => `kein Kolben ist übrig für: ${bores}`,
    notMeasured: (bores) => `nicht gemessen: ${bores}`,
    spare: (pistons) => `nicht gebraucht: ${pistons}`,
  },
  oversize: {
    name: 'Nächstes Übermaß',
    each: 'jede Bohrung ihr eigenes',
    none: 'keines',
    open: 'nicht bekannt',
    alike: 'alle Zylinder gleich',
    order: (bores) => `in dieser Reihenfolge aufbohren, die schlechteste zuerst: ${bores}`,
    bore: (bore, largest, cleanUp, needed, off) => `${bore} (${largest} + ${cleanUp} = ${needed}${off})`,
    boreTo: (bore, oversize) => `${bore} auf ${oversize}`,
    off: (least, most) => `, Abtrag ${least} bis ${most}`,
    close:
      'ob die Wand dabei sauber wird, ist zu knapp für ein Urteil: die schlechteste zuerst aufbohren und nachsehen',
    proven: 'wird sauber',
    hint: (cleanUp) =>
      `${cleanUp}, bis die Wand sauber ist, sind ein Anhalt aus der Erfahrung des Handwerks: Tragen Sie den Wert des Handbuchs ein`,
    pistons: (pistons) => `Kolben dafür: ${pistons}`,
    noPistons: 'kein Kolben dafür steht auf der Liste',
    notMeasured: (bores) => `nicht gemessen: ${bores}`,
    honed: 'das Letzte davon wird gehont; wie viel, sagt eine Fachkraft für Motoreninstandsetzung',
    liner: 'eine Laufbuchse lässt sich stattdessen ersetzen',
    why: {
      plated: (bore) =>
        `Bohrung ${bore} ist beschichtet: Für sie gibt es kein Übermaß; ein Beschichter entschichtet sie und beschichtet sie neu`,
      'own-process': (bore) =>
        `Bohrung ${bore} ist aus Aluminium-Silizium: nur das eigene Verfahren, das das Handbuch nennt`,
      'manual-forbids': (bore) => `das Handbuch verbietet, Bohrung ${bore} aufzubohren`,
      'wall-not-recorded': (bore) => `sagen Sie zuerst, woraus die Wand von Bohrung ${bore} ist`,
      'no-readings': () => 'braucht Ablesungen',
      'no-standard-size': () => 'braucht das kleinste Neumaß',
      'none-given': () => 'keine Übermaße aus dem Handbuch eingetragen',
      'none-large-enough': (bore, cleanUp) =>
        `keines im Handbuch ist groß genug für Bohrung ${bore} mit ${cleanUp}, bis die Wand sauber ist: eine Laufbuchse oder ein anderer Zylinder`,
    },
  },
  gap: {
    name: 'Stoßspiel',
    range: (least, most) => `${least} bis ${most}`,
    each: (doubt) => `jedes ± ${doubt} mit der Fühlerlehre`,
    typical: 'die Unsicherheit der Fühlerlehre ist ein typischer Wert',
    onlyLand: 'nur auf Wand, die die Ringe nie berühren: nicht beurteilt',
    window: {
      min: (min) => `mindestens ${min}`,
      max: {
        service: (max) => `im Betrieb höchstens ${max}`,
        new: (max) => `neu höchstens ${max}`,
      },
      none: 'kein Stoßspiel aus dem Handbuch eingetragen',
    },
    verdicts: {
      inside: 'innerhalb',
      'too-small': 'zu klein',
      'too-large': 'zu groß',
      'too-close': 'zu knapp für ein Urteil',
    },
    leans: {
      inside: (chances) => `so gemessen liegt es ${chances} innerhalb`,
      'too-small': (chances) => `so gemessen ist es ${chances} zu klein`,
      'too-large': (chances) => `so gemessen ist es ${chances} zu groß`,
    },
    taper: 'Konizität aus Stoßspielen',
    taperBetween: (top, bottom) => `${top} minus ${bottom}, die Stoßspiele geteilt durch π`,
    coarse: (doubt) => `zu grob, um eine Konizität unter ${doubt} zu erkennen`,
    byGauge: (figure, differs) =>
      differs
        ? `das Messgerät sagt ${figure}: Sie unterscheiden sich um mehr als ihre Unsicherheit, in einem von beiden steckt also ein Versehen`
        : `das Messgerät sagt ${figure}: Sie stimmen überein, soweit eine Fühlerlehre das zeigen kann`,
  },
  shown: {
    which: 'Kolben, der in der Bohrung gezeigt wird',
    along: 'Stelle entlang des Hubs',
    up: 'Eine Ebene höher',
    down: 'Eine Ebene tiefer',
    crown: (depth) => `Kolbenboden ${depth} unter der Zylinderoberkante.`,
    range: (least, most) => `${least} bis ${most}`,
    clearance: (depth, clearance, doubt) =>
      `Bei ${depth}, wo der Kolben quer gemessen wurde: Laufspiel ${clearance} (jeweils ${doubt}), in Ruhe.`,
    gap: {
      measured: (depth, gap, doubt) => `Ring bei ${depth}: Stoßspiel ${gap} ± ${doubt}, gemessen.`,
      bore: (depth, gap, doubt) =>
        `Ring bei ${depth}: Stoßspiel ${gap} ± ${doubt}, wie die Bohrung es öffnet.`,
    },
    between: 'Zwischen den Ebenen: gezeichnet, nicht gemessen.',
    lacks: (lacks) =>
      `Er wird gezeichnet, sobald unter „Kolben“ eingetragen ist: ${lacks.map((one) => lackNames[one]).join(', ')}.`,
  },
  panel: {
    lead: 'Aus dem Werkstatthandbuch, und wie gemessen. Ein Kolben wird quer über das Kolbenhemd gemessen, im rechten Winkel zum Kolbenbolzen.',
    window:
      'Laufspiel neu {min} bis {max} mm, im Betrieb bis {limit} mm, genommen als {rule}, bei {atC} °C. Laut Handbuch wird der Kolben {height} mm über der Unterkante seines Hemds gemessen.',
    gapWindow: 'Stoßspiel neu {min} bis {max} mm, im Betrieb bis {limit} mm.',
    boring: 'Aufbohren nimmt mindestens {cleanUp} mm weg, bis die Wand sauber ist; {alike}.',
    wall: 'Das Handbuch zu dieser Wand: {bored}; {honed}. Sie ist {liner}.',
    wallTitle: 'Aufbohren und Honen',
    pistonsTitle: 'Kolben',
    noPistons: 'Noch keiner auf der Liste.',
    what: '{name}: {state}{ranIn}, Größenklasse {grade}, für {oversize}.',
    ranIn: ', Bohrung {bore}',
    read: 'Abgelesen {read}, {height} mm über der Kante des Kolbenhemds, mit {micrometer}; der Kolben bei {temperature} °C, die Bügelmessschraube bei {micrometerTemperature} °C, gemessen mit: {thermometer}.',
    range: 'Nicht gemessen ist er von {min} bis {max} mm bei 20 °C.',
    doubt:
      'Eine Ablesung ist genau auf {doubt} µm (eine Standardunsicherheit). Er dehnt sich um {expansion} Millionstel je Kelvin.',
    shape:
      'Von der Unterkante des Kolbenhemds sind es {crown} mm bis zur Kante des Kolbenbodens und {ring} mm bis zum obersten Ring, für die Zeichnung.',
    stroke:
      'Der Hub ist {travel} mm; oben steht der Kolbenboden {crownAtTop} mm unter der Zylinderoberkante, für die Zeichnung.',
    details: 'Unsicherheit, Ausdehnung und Form',
    ofPiston: (piston, label) => `${piston}: ${label}`,
    labels: {
      min: 'Kleinstes Laufspiel neu, mm',
      max: 'Größtes Laufspiel neu, mm',
      limit: 'Größtes Laufspiel im Betrieb, mm',
      rule: 'Regel für das Laufspiel',
      atC: 'Temperatur, bei der die Laufspiele gelten, °C',
      manualHeight: 'Höhe über der Hemdkante, in der laut Handbuch gemessen wird, mm',
      gapMin: 'Kleinstes Stoßspiel neu, mm',
      gapMax: 'Größtes Stoßspiel neu, mm',
      gapLimit: 'Größtes Stoßspiel im Betrieb, mm',
      cleanUp: 'Was Aufbohren mindestens wegnimmt, mm',
      alike: 'Ob alle Zylinder auf ein Übermaß gehen',
      bored: 'Ob das Handbuch Aufbohren erlaubt',
      honed: 'Ob das Handbuch Honen erlaubt',
      liner: 'Ob es eine Laufbuchse ist',
      name: 'Name',
      state: 'wo er ist',
      ranIn: 'Bohrung, in der er lief',
      grade: 'Größenklasse',
      oversize: 'Übermaß, für das er ist, mm',
      read: 'Maß, wie die Bügelmessschraube es zeigte, mm',
      height: 'Höhe über der Hemdkante, mm',
      micrometer: 'Bügelmessschraube',
      temperature: 'Temperatur des Kolbens, °C',
      micrometerTemperature: 'Temperatur der Bügelmessschraube, °C',
      thermometer: 'Thermometer',
      crown: 'Hemdkante bis Kolbenboden, mm',
      topRing: 'Hemdkante bis oberster Ring, mm',
      travel: 'Hub des Kolbens, mm',
      crownAtTop: 'Kolbenboden oben unter der Zylinderoberkante, mm',
      rangeMin: 'kleinstes Maß, das er haben kann, mm',
      rangeMax: 'größtes Maß, das er haben kann, mm',
      doubt: 'Unsicherheit beim Ablesen, µm',
      expansion: 'Ausdehnung, Millionstel je Kelvin',
      feeler: 'Standardunsicherheit eines Stoßspiels mit der Fühlerlehre, µm',
      gapDepth: (number) => `Tiefe von Stoßspiel ${number}, mm`,
      gap: (number) => `Stoßspiel ${number}, mm`,
      newDepth: 'Tiefe eines weiteren Stoßspiels, mm',
      newGap: 'Weiteres Stoßspiel, mm',
    },
    taken: (figure) => `angenommen ${figure}`,
    hinted: (figure) => `${figure}, ein Anhalt aus Erfahrung`,
    standardSize: 'das Standardmaß',
    alike: { yes: 'alle Zylinder gehen auf ein Übermaß', no: 'jede Bohrung hat ihr eigenes Übermaß' },
    unsaid: { bored: 'nichts über das Aufbohren gesagt', honed: 'nichts über das Honen gesagt' },
    mayBeBored: { yes: 'sie darf aufgebohrt werden', no: 'sie wird nicht aufgebohrt' },
    mayBeHoned: { yes: 'sie darf gehont werden', no: 'sie wird nicht gehont' },
    liner: { yes: 'eine Laufbuchse, die sich herausnehmen lässt', no: 'keine Laufbuchse' },
    newMicrometer: 'eine andere Bügelmessschraube',
    add: {
      fitted: 'Einen hinzufügen, der hier lief',
      'at-hand': 'Einen hinzufügen, der bereitliegt',
      obtainable: 'Einen hinzufügen, der zu bekommen ist',
    },
    remove: (piston) => `${piston} entfernen`,
    gapsTitle: 'Stoßspiele dieser Messung',
    gap: 'In {depth} mm Tiefe {gap} mm.',
    newGap: 'Weiteres: in {depth} mm Tiefe {gap} mm.',
    feeler: 'Ein Stoßspiel mit der Fühlerlehre ist genau auf {feeler} µm (eine Standardunsicherheit).',
    waitsForDepth: 'Zählt als Stoßspiel, sobald seine Tiefe da ist.',
    waitsForGap: 'Zählt als Stoßspiel, sobald das Maß da ist.',
    removeGap: (depth) => `Stoßspiel bei ${depth} entfernen`,
  },
  changes: {
    piston: 'Kolben',
    added: 'Kolben hinzugefügt',
    removed: 'Kolben entfernt',
    gap: 'Stoßspiel',
    gapRemoved: 'Stoßspiel entfernt',
  },
}
