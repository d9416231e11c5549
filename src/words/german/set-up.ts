import type { setUp as english } from '../english/set-up'
import type { Texts } from '../texts'

/** The set-up sentences and what belongs to them, in German. */
export const setUp: Texts<typeof english> = {
  setUp: {
    title: 'Messaufbau',
    which: '{setUp}:',
    sizes:
      '{gauge}, Ablesung auf {step} {dialUnit}, eingestellt auf {size} {sizeUnit} mit {standard}. Aufgeschrieben: {entry}. Null {zeroOpen} zu Beginn, {zeroClose} am Ende. Bohrung {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    deviations:
      '{gauge}, Ablesung auf {step} {dialUnit}, eingestellt auf {size} {sizeUnit} mit {standard}. Aufgeschrieben: {entry}; {direction} ist größer ({directionTest}). Null {zeroOpen} zu Beginn, {zeroClose} am Ende. Bohrung {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    reverse:
      '{gauge}, Ablesung auf {step} {dialUnit}. Aufgeschrieben: {entry}; {direction} ist größer ({directionTest}). Über die Messbolzen gemessen zeigte die Bügelmessschraube {overContacts} {sizeUnit}, die Messuhr dabei {dialOverContacts}. Zurück an der Nullstellung in der Bohrung zeigte die Messuhr {zeroOpen} zu Beginn, {zeroClose} am Ende. Bohrung {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    direct:
      '{gauge}, Ablesung auf {step} {dialUnit}, in einer Bohrung von etwa {size}. Aufgeschrieben: {entry}. Bohrung {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    directChecked:
      '{gauge}, Ablesung auf {step} {dialUnit}. Geprüft mit {standard}, {size}; zu viel angezeigt: {micrometerError} davor, {zeroClose} danach. Aufgeschrieben: {entry}. Bohrung {boreTemperature}, {reference} {referenceTemperature}, {thermometers}.',
    micrometerCheck:
      'An ihrem eigenen Einstellnormal zeigt die Bügelmessschraube zu viel: {micrometerError}.',
    labels: {
      gauge: 'Messgerät',
      step: 'Schritt, auf den abgelesen wird, µm',
      size: 'Einstellmaß, mm',
      standard: 'Eingestellt mit',
      entry: 'Ablesungen sind aufgeschrieben als',
      direction: 'So geht der Zeiger, wenn die Bohrung größer ist',
      zeroOpen: 'Null zu Beginn, µm, im Uhrzeigersinn positiv',
      zeroClose: 'Null am Ende, µm, im Uhrzeigersinn positiv',
      boreTemperature: 'Temperatur der Bohrung, °C',
      referenceTemperature: 'Temperatur von Ring oder Bügelmessschraube, °C',
      thermometers: 'Wie die Temperaturen gemessen wurden',
      micrometerError: 'Was die Bügelmessschraube an ihrem eigenen Einstellnormal zu viel zeigt, µm',
      setUp: 'Messaufbau dieser Messung',
      dialUnit: 'Teilung des Messgeräts',
      sizeUnit: 'Teilung von Ring oder Bügelmessschraube',
      directionTest: 'Herausfinden, in welche Richtung der Zeiger geht',
      overContacts: 'Bügelmessschraube über die Messbolzen des Messgeräts, mm',
      dialOverContacts:
        'Messuhr, während die Bügelmessschraube das Messgerät hielt, µm, im Uhrzeigersinn positiv',
      roughSize: 'Ungefähres Maß der Bohrung, mm',
      reference: 'Wovon die Temperatur neben der Bohrung ist',
    },
    inchLabels: {
      step: 'Schritt, auf den abgelesen wird, 0,0001 in',
      size: 'Einstellmaß, in',
      zeroOpen: 'Null zu Beginn, 0,0001 in, im Uhrzeigersinn positiv',
      zeroClose: 'Null am Ende, 0,0001 in, im Uhrzeigersinn positiv',
      micrometerError: 'Was die Bügelmessschraube an ihrem eigenen Einstellnormal zu viel zeigt, 0,0001 in',
      overContacts: 'Bügelmessschraube über die Messbolzen des Messgeräts, in',
      dialOverContacts:
        'Messuhr, während die Bügelmessschraube das Messgerät hielt, 0,0001 in, im Uhrzeigersinn positiv',
      roughSize: 'Ungefähres Maß der Bohrung, in',
    },
    units: {
      size: { mm: 'mm', inch: 'in' },
      dial: { mm: 'µm', inch: '× 0,0001 in' },
    },
    withUnit: (figure, unit) => `${figure} ${unit}`,
    notRecorded: (taken) => `nicht erfasst (${taken})`,
    taken: {
      zero: 'angenommen 0',
      size: (size) => `angenommen ${size}`,
      drift: (halfWidth) => `angenommen ± ${halfWidth}`,
      temperature: 'angenommen 20 ± 5',
      sameTemperature: (celsius) => `angenommen ${celsius} ± 1`,
      micrometer: (halfWidth) => `angenommen 0 ± ${halfWidth}`,
      clockwise: 'angenommen im Uhrzeigersinn',
      nothing: 'nichts angenommen',
    },
    noSizesYet:
      'Diese Ablesungen haben noch kein Maß: Tragen Sie zuerst ein, was die Bügelmessschraube über die Messbolzen zeigte.',
    references: { ring: 'Ring', micrometer: 'Bügelmessschraube' },
    gauges: {
      'dial-0.001-ring': 'Innenmessgerät mit Messuhr 0,001, im Ring eingestellt',
      'dial-0.001-micrometer': 'Innenmessgerät mit Messuhr 0,001, mit Bügelmessschraube eingestellt',
      'dial-0.01': 'Innenmessgerät mit Messuhr 0,01',
      'dial-0.01-simple': 'Innenmessgerät mit Messuhr 0,01, einfache Ausführung',
      telescoping: 'Teleskoplehre und Bügelmessschraube',
      'internal-micrometer-rods': 'Innenmessschraube mit Verlängerungen',
      'three-contact-micrometer': 'Innenmessschraube mit drei Messbolzen',
      'air-plug': 'Pneumatischer Messdorn',
      'radial-probe': 'Radialtaster an einer Spindel',
    },
    standards: { ring: 'Einstellring', micrometer: 'Bügelmessschraube' },
    entries: {
      size: 'Maße in mm',
      deviation: 'Abweichungen der Messuhr',
      reverse: 'Messuhr, in der Bohrung auf null gestellt',
      direct: 'direkt abgelesene Maße',
    },
    directions: { clockwise: 'im Uhrzeigersinn', anticlockwise: 'gegen den Uhrzeigersinn' },
    thermometers: {
      one: 'mit einem Thermometer',
      two: 'mit zwei Thermometern',
      soaked: 'nebeneinander gelegen, bis beide gleich warm waren',
    },
    directionTest: {
      open: 'prüfen',
      title: 'In welche Richtung geht der Zeiger?',
      close: (by) =>
        `Halten Sie das Messgerät zwischen die Messflächen der Bügelmessschraube. Drehen Sie die Bügelmessschraube um ${by} zu und beobachten Sie den Zeiger: In welche Richtung ging er?`,
      push: 'Lassen Sie das Messgerät in seinem Ring. Drücken Sie einen Messbolzen um eine Haaresbreite hinein und beobachten Sie den Zeiger: In welche Richtung ging er?',
      why: 'Dadurch wurde das Maß kleiner; bei einer größeren Bohrung geht der Zeiger also andersherum. Messuhren sind darin verschieden, und eine falsch angenommene Richtung spiegelt jede Zahl.',
      by: { mm: '0,01 mm', inch: '0,0005 in' },
      went: { clockwise: 'Er ging im Uhrzeigersinn', anticlockwise: 'Er ging gegen den Uhrzeigersinn' },
      stayed: 'Er hat sich nicht bewegt',
      stayedHelp:
        'Dann wird nichts erfasst. Achten Sie darauf, dass die Messbolzen zwischen den Messflächen liegen, nicht das Gehäuse, und dass der Zeiger nicht am Ende seines Weges steht; versuchen Sie es dann noch einmal.',
    },
    more: {
      title: 'Mehr',
      survey:
        'Bohrung mit dem Messschieber: {caliper}. Gemessen: {clamping}; von: {measuredBy}. Stunden seit dem letzten Laufen, Waschen oder Honen: {rested}. Messbolzen des Messgeräts nach dem Einstellen: {contact}.',
      surveyPlate:
        'Bohrung mit dem Messschieber: {caliper}. Gemessen: {clamping}, angezogen mit {torque} N·m; von: {measuredBy}. Stunden seit dem letzten Laufen, Waschen oder Honen: {rested}. Messbolzen des Messgeräts nach dem Einstellen: {contact}.',
      setUp:
        'Letzte Kalibrierung des Messgeräts: {calibrated}; eine Umdrehung des Zeigers: {turn}. Mögliche Erwärmung seit dem Einstellen: {warmed} K. Bei der Null am Ende, {reference}: {referenceClose}.',
      setUpDirect: 'Letzte Kalibrierung des Messgeräts: {calibrated}.',
      labels: {
        caliper: 'Die Bohrung mit dem Messschieber',
        clamping: 'Was an die Bohrung geschraubt war',
        torque: 'Anzugsmoment der Schrauben der Spannplatte, N·m',
        measuredBy: 'Wer gemessen hat',
        rested: 'Stunden seit dem letzten Laufen, Waschen oder Honen',
        contact: 'Messbolzen des Messgeräts nach dem Einstellen',
        calibrated: 'Tag der letzten Kalibrierung, Jahr-Monat-Tag',
        turn: 'Eine Umdrehung des Zeigers',
        warmed: 'Wie weit sich das Messgerät seit dem Einstellen erwärmt haben kann, K',
        reference: 'Wovon die Temperatur neben der Bohrung ist',
        referenceClose: 'Temperatur von Ring oder Bügelmessschraube bei der Null am Ende, °C',
      },
      caliperHelp:
        'Ein Messschieber ist grob, doch er zeigt, ob an der Messschraube eine Umdrehung falsch gelesen wurde oder der Zeiger einmal herumging.',
      clampings: {
        bare: 'ohne Anbauteile',
        'torque-plate': 'mit Spannplatte',
        assembled: 'zusammengebaut',
      },
      contacts: { kept: 'nicht gewechselt', changed: 'gewechselt' },
      turnTaken: (typical) => `angenommen ${typical}`,
      warmedNone: 'keine angenommen',
      referenceCloseTaken: 'wie zu Beginn',
    },
    closing: {
      deviation:
        'Prüfen Sie das Messgerät jetzt noch einmal an seinem Einstellmaß: Die Messuhr zeigt {zeroClose}.',
      reverse:
        'Bringen Sie das Messgerät jetzt in der Bohrung wieder dorthin, wo Sie es auf null gestellt haben: Die Messuhr zeigt {zeroClose}.',
      direct: 'Lesen Sie jetzt am Normal noch einmal ab ({standard}). Zu viel angezeigt: {zeroClose}.',
      overContacts:
        'Messen Sie das Messgerät jetzt über seine Messbolzen: Die Bügelmessschraube zeigt {overContacts}, die Messuhr dabei {dialOverContacts}.',
      labels: {
        zeroClose: 'Null am Ende',
        overContacts: 'Über die Messbolzen',
        dialOverContacts: 'Messuhr dabei',
        standard: 'Woran geprüft wurde',
      },
    },
    typicalTitle: 'Typische Werte',
    typical:
      'Typische Werte für diese Art von Messgerät, aus der Erfahrung des Handwerks; ändern Sie, was Sie besser wissen. Alle sind Standardunsicherheiten, nur die Drift ist eine Halbbreite.',
    typicalSentence:
      'Wiederholungen streuen um {repeatability} µm, bekannt aus {repeatabilityFreedom} Freiheitsgraden. Einstellung genau auf {setting} µm, Messuhr oder Skale auf {scale} µm, Schwenken auf {rocking} µm; Drift ohne Null am Ende ± {drift} µm. {standardKind}: für sich genau auf {standardDoubt} µm; Thermometer: auf {thermometerDoubt} K. Messbolzen reichen nach jeder Seite {contact} mm (Füße einer Zentrierbrücke: {feet} mm von einem Messbolzen); die Tiefe wird auf {depthDoubt} mm gehalten.',
    typicalLabels: {
      repeatability: 'Standardabweichung der Wiederholungen, µm',
      repeatabilityFreedom: 'Freiheitsgrade, auf denen sie beruht',
      setting: 'Standardunsicherheit der Einstellung, µm',
      scale: 'Standardunsicherheit von Messuhr oder Skale, µm',
      rocking: 'Standardunsicherheit durch Schräglage, die beim Schwenken blieb, µm',
      drift: 'Halbbreite der Drift ohne Null am Ende, µm',
      standardKind: 'Womit das Messgerät eingestellt wurde',
      standardDoubt: 'Standardunsicherheit von Ring oder Bügelmessschraube selbst, µm',
      thermometerDoubt: 'Standardunsicherheit eines Thermometers, K',
      contact: 'Halbe Breite eines Messbolzens auf der Wand, mm',
      feet: 'Von einem Messbolzen zu jedem Fuß der Zentrierbrücke, mm entlang der Wand',
      depthDoubt: 'Standardunsicherheit der Tiefe, mm',
    },
    noFigure: 'keine',
    temperatureEffect: {
      short: (effect) => `Jede wegen der Temperatur um ${effect} korrigiert.`,
      none: 'Bei diesen Temperaturen wird nichts korrigiert.',
      sum: (effect) => `Bei diesen Temperaturen wird jede Ablesung um ${effect} korrigiert.`,
      parts: (bore, boreC, standard, reference, referenceC) =>
        `Davon kommen: Bohrung bei ${boreC} ${bore}, ${reference} bei ${referenceC} ${standard}.`,
      doubt: (doubt) => `Das ist auf ${doubt} genau.`,
      notRecorded:
        'Nicht beide Temperaturen sind erfasst: Was fehlt, ist angenommen, und seine Unsicherheit ist mitgezählt.',
    },
    survey: 'Gemessen: {date}; Betriebsstunden: {hours}.',
    surveyOfSeveral: 'Messung {which}, gemessen: {date}; Betriebsstunden: {hours}.',
    surveyNumber: (number, all) => `${number} von ${all}`,
    surveyLabels: {
      which: 'Welche Messung gezeigt wird',
      date: 'Tag der Messung, Jahr-Monat-Tag',
      hours: 'Betriebsstunden',
    },
  },
}
