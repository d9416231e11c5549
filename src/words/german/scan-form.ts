import type { scanForm as english } from '../english/scan-form'
import type { Texts } from '../texts'

/** What form a scan proves, and what a file of radii says by itself, in German. */
export const scanForm: Texts<typeof english> = {
  title: 'Form der Abtastung',
  aboutFile: (file) => `Abtastung in ${file}`,
  roundness: 'Rundheit, schlechteste Ebene',
  roundnessDetail: (depth) =>
    `bei ${depth}; ein Unterschied von Radien nach der kleinsten Ringzone (ISO 12181), bei einem einfachen Oval die Hälfte der Unrundheit`,
  roundnessSquares: (depth) => `bei ${depth}; ein Unterschied von Radien um den Kreis der kleinsten Quadrate`,
  noRoundness: 'Keine Ebene hat ringsum Radien, deshalb ist keine Rundheit angegeben.',
  cylindricity: 'Zylindrizität',
  cylindricityDetail: 'kleinste Zone (ISO 12180), aller Ebenen um eine gerade Achse',
  noCylindricity: 'Weniger als zwei Ebenen haben ringsum Radien, deshalb ist keine Zylindrizität angegeben.',
  oval: 'Oval, weiteste Ebene',
  ovalDetail: (depth, axis) => `bei ${depth}, am größten bei ${axis}; ein Unterschied von Durchmessern`,
  ovalNone: (depth, most) => `bei ${depth}; keine Richtung tritt hervor, höchstens ${most}`,
  twoContact: 'Wie zwei Messbolzen es fänden',
  twoContactDetail: (depth) =>
    `größter minus kleinster Durchmesser bei ${depth}, auf Achsen mit Metall an beiden Enden`,
  axis: 'Achse des Tasters',
  axisFigure: (farthest) => `${farthest} daneben`,
  axisDetail: 'auf der Ebene, wo es am meisten ist; aus jeder Zahl hier herausgerechnet',
  range: (value, low, high) => `${value} (${low} bis ${high})`,
  probeShows: (round, cylinder) =>
    `Ein Taster, der so wiederholt wie dieser, zeigt bis zu ${round} an einer vollkommen runden Ebene und ${cylinder} an einem vollkommenen Zylinder.`,
  nearGaps: (count) =>
    `Das Filter stützt sich bei ${count} Werten neben Schlitzen nur auf eine Seite: Nehmen Sie diese mit Vorsicht.`,
  noSize:
    'Eine Abtastung zeigt Form und kein Maß: Nichts hier sagt, ob die Bohrung innerhalb ihrer Grenzmaße liegt.',
  noDiameter:
    'Nennen Sie den ungefähren Durchmesser der Bohrung (--diameter 60, in mm), damit nach Auffälligkeiten gesucht wird: Ihre Breite in mm richtet sich danach.',
  diameterRange: 'Ein Durchmesser ist eine Zahl von 1 bis 2000, in mm.',
  diameterForScan: '--diameter gehört zu einer Datei mit Radien.',
}
