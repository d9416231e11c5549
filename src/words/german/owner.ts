import type { owner as english } from '../english/owner'
import type { Texts } from '../texts'

/** What the owner is told, in German: as plain and as short as the English. */
export const owner: Texts<typeof english> = {
  topics: {
    seen: 'Was Sie sehen',
    now: 'Neu, und jetzt',
    shape: 'Wo weit, wo eng',
    used: 'Was verbraucht ist',
    sure: 'Wie sicher wir sind',
    advice: 'Was wir vorschlagen',
    causes: 'Warum, und was es bremst',
  },
  nothing: 'In dieser Bohrung wurde noch nichts gemessen, es gibt also nichts zu erzählen.',
  scanned:
    'Die Form dieser Bohrung wurde abgetastet, ihr Maß aber nicht gemessen; niemand kann also sagen, wie weit sie verschlissen ist.',
  seen: {
    hair: {
      mm: 'Ein Haar ist etwa 70 µm dick; ein µm ist ein tausendstel Millimeter.',
      inch: 'Ein Haar ist etwa 0,003 in dick.',
    },
    drawn: (factor) =>
      `Sie schauen von oben in die Bohrung. Jede Änderung ihrer Weite ist ${factor}-mal zu groß gezeichnet.`,
    flat: 'Sie sehen die Wand der Bohrung, aufgeschnitten und flach ausgelegt.',
    colours: 'Blau heißt eng, Bernstein heißt weit.',
    hatched: 'Wo die Wand schraffiert ist, hat niemand gemessen.',
  },
  now: {
    between: (least, most, now) =>
      `Neu war sie ${least} bis ${most} weit; jetzt ist sie an der weitesten Stelle ${now} weit [Durchmesser].`,
    least: (least, now) =>
      `Neu war sie ${least} weit oder mehr; jetzt ist sie an der weitesten Stelle ${now} weit [Durchmesser].`,
    alone: (now) => `Jetzt ist sie an der weitesten Stelle ${now} weit [Durchmesser].`,
    notEntered: 'Wie weit sie neu war, ist hier nicht aufgeschrieben.',
    doubt: 'Die Zahl hinter ± sagt, wie weit es daneben liegen kann.',
    isNew: 'Sie ist noch nicht gelaufen.',
    grown: {
      whenNew: (figure) =>
        `An der Stelle mit dem meisten Verschleiß ist sie seit neu um ${figure} gewachsen.`,
      since: (figure) =>
        `An der Stelle mit dem meisten Verschleiß ist sie seit der ersten Messung um ${figure} gewachsen.`,
      land: (figure) =>
        `An der Stelle mit dem meisten Verschleiß ist sie um ${figure} gewachsen, verglichen mit der Wand, die kein Ring berührt.`,
      bore: (figure) => `An der Stelle mit dem meisten Verschleiß ist sie um ${figure} weiter als die neue.`,
      'new-band': (figure) =>
        `An der Stelle mit dem meisten Verschleiß ist sie um ${figure} gewachsen: Genauer ist nicht bekannt, wie weit sie neu war.`,
    },
    grownNot: (figure) =>
      `Nirgends ist sicher, dass sie gewachsen ist: ${figure} an der Stelle mit dem meisten Verschleiß.`,
    slip: 'Eine der Ablesungen sieht nach einem Versehen aus; diese Zahlen können sich noch ändern.',
    hairs: {
      half: 'Das ist weniger als die halbe Dicke eines Haars.',
      one: 'Das ist weniger als die Dicke eines Haars.',
      about: 'Das ist etwa die Dicke eines Haars.',
      more: (count) =>
        count === 1 ? 'Das ist mehr als die Dicke eines Haars.' : `Das ist mehr als ${count} Haare dick.`,
    },
  },
  shape: {
    places: (wide, tight) => `Am weitesten ist sie ${wide}, am engsten ${tight}.`,
    ovalOnly: (depth, wide, tight) => `In ${depth} Tiefe ist sie ${wide} weiter als ${tight}.`,
    even: 'Sie ist rund und gleichmäßig, soweit diese Ablesungen das zeigen.',
    place: (depth, across) => `in ${depth} Tiefe ${across}`,
    down: (depth) => `in ${depth} Tiefe`,
    across: {
      frontRear: 'von vorn nach hinten',
      frontRight: 'von vorn rechts nach hinten links',
      sides: 'von Seite zu Seite',
      frontLeft: 'von vorn links nach hinten rechts',
    },
    oval: (figure, depth) => `In ${depth} Tiefe ist sie um ${figure} oval [Unrundheit].`,
    ovalOpen: 'Kein Oval tritt aus der Unsicherheit des Messgeräts hervor.',
    longest: (across) => `Die lange Seite des Ovals läuft ${across}.`,
    taper: (figure) => `Von einem Ende zum anderen ändert sich ihre Weite [Konizität] um ${figure}.`,
    taperOpen: 'Von einem Ende zum anderen tritt keine Änderung hervor.',
    oneAxis: 'Ob sie oval ist, wurde nicht gemessen.',
    interval: 'Die Zahlen in Klammern sagen, wie klein und wie groß es sein kann.',
  },
  used: {
    share: (low, high) => `Von dem Verschleiß, den ihre Grenze erlaubt, sind ${low} bis ${high} verbraucht.`,
    shareOne: (share) => `Von dem Verschleiß, den ihre Grenze erlaubt, sind ${share} verbraucht.`,
    left: (low, high) => `Übrig sind also ${low} bis ${high}.`,
    leftOne: (share) => `Übrig sind also ${share}.`,
    mayBeAll: 'Es kann also sein, dass nichts mehr übrig ist.',
    over: (limit) => `Sie ist weiter als ihre Grenze von ${limit} [Verschleißgrenze].`,
    overNew: (limit) => `Sie ist weiter, als eine neue sein darf: ${limit}.`,
    under: (limit) => `Sie ist enger, als eine neue sein darf: ${limit}.`,
    insideNew: (least, most) => `Sie ist noch so weit, wie eine neue sein darf: ${least} bis ${most}.`,
    insideLimit: (limit) => `Sie liegt innerhalb ihrer Grenze von ${limit} [Verschleißgrenze].`,
    tooClose: (limit) => `Ob sie über ihrer Grenze von ${limit} liegt, ist zu knapp für ein Urteil.`,
    tooCloseNew: 'Ob sie so weit ist, wie eine neue sein darf, ist zu knapp für ein Urteil.',
    notSaid: 'Wie viel davon verbraucht ist, lässt sich nicht sagen.',
    plating: (both, one) =>
      `Von der harten Schicht [Beschichtung] sind ${both} weg, wenn beide Seiten gleich verschlissen sind, und ${one}, wenn eine Seite alles abbekommen hat.`,
    platingDoubt: (low, high) => `Mit der Unsicherheit können es ${low} bis ${high} sein.`,
    atLimit: 'Sie kann jetzt an ihrer Grenze sein.',
    earliest: (limit, hours) =>
      `Verschleißt sie weiter wie bisher, kann sie ihre Grenze von ${limit} nach ${hours} Betriebsstunden erreichen, sehr wahrscheinlich aber später.`,
    shapeOver: {
      ovality: (figure, limit) =>
        `Sie ist stärker oval [Unrundheit], als ihre Grenze von ${limit} erlaubt: ${figure}.`,
      taper: (figure, limit) =>
        `Von einem Ende zum anderen ändert sich ihre Weite stärker [Konizität], als ihre Grenze von ${limit} erlaubt: ${figure}.`,
    },
    stops: {
      'bare-aluminium': (where) =>
        `Bei ${where} scheint blankes Metall durch die harte Schicht: Das kann eine Bohrung unbrauchbar machen, deren Maß gut ist.`,
      flaking: (where) =>
        `Bei ${where} blättert die harte Schicht ab: Das kann eine Bohrung unbrauchbar machen, deren Maß gut ist.`,
      'catches-nail': (where, kind) =>
        `Bei ${where} bleibt ein Fingernagel hängen (${kind}): Das kann eine Bohrung unbrauchbar machen, deren Maß gut ist.`,
      'pits-in-ring-path': (where) =>
        `Wo die Ringe laufen, sind kleine Löcher, bei ${where}: Das kann eine Bohrung unbrauchbar machen, deren Maß gut ist.`,
      'pits-perhaps-in-ring-path': (where) =>
        `Bei ${where} sind kleine Löcher: Wenn dort die Ringe laufen, kann das eine Bohrung unbrauchbar machen, deren Maß gut ist.`,
    },
    none: {
      'no-readings': 'Es wurde noch nichts gemessen.',
      'no-size-over-contacts': 'Das Messgerät hat noch keine Maße ergeben.',
      'no-limits':
        'Es ist keine Grenze aufgeschrieben, also kann niemand sagen, wie viel davon verbraucht ist.',
      'all-blocked': 'Alles, was abgelesen ist, liegt an einer Öffnung; beurteilt ist also noch nichts.',
    },
  },
  sure: {
    inside: (chances) =>
      `Zu ihrem Maß: An der schlechtesten Stelle liegt sie, so gemessen, ${chances} innerhalb ihrer Grenze.`,
    above: (chances) =>
      `Zu ihrem Maß: An der schlechtesten Stelle liegt sie, so gemessen, ${chances} über ihrer Grenze.`,
    below: (chances) => `Zu ihrem Maß: An der schlechtesten Stelle ist sie, so gemessen, ${chances} zu eng.`,
    tooClose: 'Ob ihr Maß innerhalb der Grenze liegt, ist zu knapp für ein Urteil.',
    leans: {
      inside: (chances) => `An der schlechtesten Stelle liegt sie, so gemessen, ${chances} innerhalb.`,
      above: (chances) => `An der schlechtesten Stelle liegt sie, so gemessen, ${chances} über ihrer Grenze.`,
      below: (chances) => `An der schlechtesten Stelle ist sie, so gemessen, ${chances} zu eng.`,
      even: 'An der schlechtesten Stelle ist beides etwa gleich wahrscheinlich.',
    },
    shapeTooClose: {
      ovality: (figure, limit) =>
        `Ob sie zu oval ist, ist zu knapp für ein Urteil: ${figure}, und ihre Grenze ist ${limit}.`,
      taper: (figure, limit) =>
        `Ob sich ihre Weite von einem Ende zum anderen zu stark ändert, ist zu knapp für ein Urteil: ${figure}, und ihre Grenze ist ${limit}.`,
    },
    notJudged: 'Hier wird kein Maß beurteilt.',
    doubt: (doubt) => `In 19 von 20 Fällen stimmt eine Weite auf ${doubt}.`,
    provisional: 'Nicht alles ist aufgeschrieben, worauf das beruht; es ist also nicht das letzte Wort.',
    openQuestions: 'Eine der Ablesungen sieht nach einem Versehen aus und muss zuerst angesehen werden.',
    gap: (from, to) => `Zwischen ${from} und ${to} Tiefe hat niemand gemessen.`,
    widestGap: (from, to) =>
      `Zwischen den abgelesenen Stellen hat niemand gemessen; die größte Lücke reicht von ${from} bis ${to} Tiefe.`,
    bothSides:
      'Das Messgerät reicht von Wand zu Wand; es kann also nicht sagen, welche Seite verschlissen ist.',
    twoAxes: 'Abgelesen wurde nur in zwei Richtungen; ein Oval dazwischen würde sich nicht zeigen.',
    surfaceNote: 'Ein Messgerät sieht keine Risse und keine Riefen; die sucht man mit dem Auge.',
  },
  advice: {
    outcomes: {
      'run-on':
        'Wir schlagen vor, sie so weiterlaufen zu lassen und bei der nächsten Wartung wieder zu messen.',
      'clean-and-measure-again': 'Wir schlagen vor, sie gut zu reinigen und dann noch einmal zu messen.',
      'measure-again-better':
        'Wir schlagen vor, sie noch einmal sorgfältiger zu messen, bevor Sie entscheiden.',
      'next-piston': 'Wir schlagen einen Kolben vor, der zur Bohrung passt, wie sie jetzt ist.',
      hone: 'Wir schlagen vor, die Wand leicht zu schleifen [honen], falls das die Spuren herausnimmt.',
      'bore-oversize':
        'Wir schlagen vor, sie auf die nächste Größe aufzubohren [Übermaß], mit passendem Kolben.',
      're-plate':
        'Wir schlagen eine neue harte Schicht auf der Wand vor [Beschichtung] oder einen neuen Zylinder.',
      'replace-or-sleeve':
        'Wir schlagen einen neuen Zylinder vor oder eine neue Wand, die hineingepresst wird [Laufbuchse].',
    },
    runOnBy: (hours) =>
      `Wir schlagen vor, sie so weiterlaufen zu lassen und spätestens bei ${hours} Betriebsstunden wieder zu messen.`,
    runOnDay: (day) => `Bei den Stunden, die sie jede Woche läuft, ist das am ${day}.`,
    boreTo: (oversize) => `Wir schlagen vor, sie um ${oversize} aufzubohren [Übermaß], mit passendem Kolben.`,
    boreAlike: (oversize) =>
      `Eine andere Bohrung muss aufgebohrt werden, und alle gehen auf eine Größe: Wir schlagen es auch für diese vor, um ${oversize} [Übermaß].`,
    boreAlikeAny:
      'Eine andere Bohrung muss aufgebohrt werden, und alle gehen auf eine Größe: Wir schlagen es auch für diese vor [Übermaß].',
    alone: (suggestion) => `Für sich allein: ${suggestion}`,
    undecided: {
      'for-comparison': 'Diese hier ist zum Vergleich da; es gibt also nichts vorzuschlagen.',
      'earlier-survey': 'So war sie früher; es gibt also nichts vorzuschlagen.',
      'no-readings': 'Bevor sie gemessen ist, gibt es nichts vorzuschlagen.',
      'some-unread': 'Bevor nicht alles gemessen ist, gibt es nichts vorzuschlagen.',
      'land-alone': 'Bevor dort gemessen ist, wo die Ringe laufen, gibt es nichts vorzuschlagen.',
      'no-limits': 'Bevor ihre Grenzen aufgeschrieben sind, gibt es nichts vorzuschlagen.',
    },
    covered: 'Etwas liegt auf der Wand und verdeckt sie; das muss zuerst herunter.',
    play: {
      'too-loose': 'Der Kolben hat mehr Luft darin [Laufspiel], als er haben darf.',
      'too-tight': 'Der Kolben hat weniger Luft darin [Laufspiel], als er haben muss.',
      'too-close': 'Ob der Kolben die richtige Luft darin hat [Laufspiel], ist zu knapp für ein Urteil.',
      inside: 'Der Kolben hat die Luft darin [Laufspiel], die er haben soll.',
    },
    choices: {
      'run-on': (earliest, now) =>
        `Weiterlaufen bringt die Stunden von ${now} bis ${earliest} h, und sehr wahrscheinlich mehr.`,
      'run-on-open': 'Wie viele Stunden das Weiterlaufen bringt, ist nicht bekannt.',
      'run-on-marked':
        'Weiterlaufen mit einer solchen Spur kann noch mehr verderben; keine Zahl sagt, wie lange es gut ginge.',
      'run-on-over': 'Weiterlaufen über die Grenze hinaus gefährdet die ganze Maschine.',
      'next-piston': 'Ein passender Kolben nimmt die Luft weg; mehr Stunden gibt er der Wand nicht.',
      hone: 'Ein leichter Schliff beseitigt kleine Spuren; er nimmt Wand weg, und die Wand bleibt so oval, wie sie war.',
      'bore-oversize': 'Aufbohren macht die ganze Wand neu, und ihre Stunden beginnen von vorn.',
      're-plate': 'Eine neue Schicht macht die Wand neu, und ihre Stunden beginnen von vorn.',
      'replace-or-sleeve':
        'Ein neuer Zylinder oder eine Laufbuchse ist eine neue Wand, und ihre Stunden beginnen von vorn.',
    },
    fromNew: (hours) =>
      `Von neu an hätte diese Wand mindestens ${hours} h, wenn sie weiter verschleißt wie bisher.`,
    ifInside: (then) => `Stellt sich heraus, dass es innerhalb liegt, ${then}.`,
    ifOver: (then) => `Stellt sich heraus, dass es darüber liegt, ${then}.`,
    follows: {
      'run-on': 'kann sie weiterlaufen',
      'clean-and-measure-again': 'wird sie gereinigt und noch einmal gemessen',
      'measure-again-better': 'ist noch etwas anderes zu knapp für ein Urteil',
      'next-piston': 'braucht sie einen passenden Kolben',
      hone: 'genügt vielleicht ein leichter Schliff',
      'bore-oversize': 'wird sie aufgebohrt',
      're-plate': 'braucht sie eine neue harte Schicht [Beschichtung]',
      'replace-or-sleeve': 'braucht es einen neuen Zylinder oder eine neue Wand [Laufbuchse]',
    },
    hours: {
      'no-limit':
        'Wie viele Stunden jede Möglichkeit bringt, ist nicht bekannt: Es gibt keine Grenze, bis zu der man zählen könnte.',
      'no-hours':
        'Wie viele Stunden jede Möglichkeit bringt, ist nicht bekannt: Ihre Betriebsstunden sind nicht aufgeschrieben.',
      'nothing-to-count-from':
        'Wie viele Stunden jede Möglichkeit bringt, ist nicht bekannt: Es gibt nichts, von dem aus man zählen könnte.',
      shrunk:
        'Wie viele Stunden jede Möglichkeit bringt, ist nicht bekannt: Sie misst sich kleiner als zuvor, und das kann nicht sein.',
    },
    lastWord:
      'Das letzte Wort haben das Werkstatthandbuch und eine erfahrene Fachkraft für Motoreninstandsetzung.',
  },
  causes: {
    lead: 'Die Zahlen zeigen, was verschlissen ist, nicht warum: Alles Folgende ist etwas zum Nachsehen.',
    none: 'Keine Form tritt hervor, die auf eine Ursache hinweisen würde.',
    wideTop: 'Oben weiter: meist Hitze, Druck und ein dünner Ölfilm dort.',
    wideBottom: 'Unten weiter: manchmal Schmutz im Öl oder ein loser Kolben.',
    barrel: 'In der Mitte am weitesten: In Pumpen und Kompressoren verschleißen die meisten so.',
    waisted:
      'In der Mitte am engsten: Suchen Sie nach Metall, das an der Wand haftet, oder nach Schrauben, die an ihr ziehen.',
    bell: 'An einem Ende weiter: Manchmal wurde sie so geschliffen, oder der Kolben kippelt dort.',
    stepped: 'Eine Stufe, wo die Ringe umkehren: Die meisten Wände bekommen mit der Zeit eine.',
    oval: 'Oval: Meist drückt der Kolben auf zwei Seiten; auch Schrauben und Hitze können es sein.',
    rust: 'Rost oder kleine Löcher: Wasser, das darin stand, während sie nicht lief.',
    scratch: 'Ein Kratzer: Etwas Hartes kam vorbei; sehen Sie nach Filter und Dichtungen.',
    scuff: 'Fressspuren: Sehen Sie nach zu wenig Öl, zu viel Hitze oder harter Arbeit in kaltem Zustand.',
    flaking:
      'Eine Schicht, die abgeht: Sehen Sie nach den Kanten der Öffnungen und nach Schmutz in der Luft.',
    ridge: 'Ein Grat: Sehen Sie nach, wo die Ringe umkehren.',
    rateChanged:
      'Sie ist nicht immer gleich schnell verschlissen: Suchen Sie, was sich geändert hat, zum Beispiel Staub am Filter vorbei.',
    slow: 'Was es bremst: die Filter sauber halten, das richtige Öl nehmen und vor harter Arbeit warmlaufen lassen.',
    slowRust: 'Was es bremst: die Wand einölen, bevor sie steht, und trocken halten.',
  },
  show: {
    bore: 'Bohrung',
    step: (number, all) => `${number} von ${all}`,
    steps: 'Was erzählt wird',
    goTo: (number, topic) => `${number}: ${topic}`,
    next: 'Weiter',
    back: 'Zurück',
    leave: 'Schließen',
    fullScreen: 'Ganzer Bildschirm',
    endFullScreen: 'Ganzen Bildschirm beenden',
    fullScreenRefused: 'Der Browser gibt dieser Seite nicht den ganzen Bildschirm.',
    wall: 'Die Wand der Bohrung',
    otherWindow: 'Auf einem anderen Bildschirm zeigen',
    otherWindowBlocked:
      'Der Browser hat kein zweites Fenster geöffnet. Erlauben Sie dieser Seite Fenster und versuchen Sie es noch einmal.',
    follows: 'Dieses Fenster zeigt mit, was auf der Seite „Messen“ geschieht.',
    turn: 'Von Hand drehen',
    turnBack: 'Zurück zum Erzählten',
    turning: 'Drehen Sie sie mit dem Finger, mit der Maus oder mit den Knöpfen.',
    behind: 'Die Zahlen dahinter',
    flat: 'Dieser Browser zeichnet hier kein 3D-Bild. Die Karte zeigt dieselbe Wand, abgewickelt.',
    keys: 'Pfeiltasten, Bild auf und Bild ab oder die Leertaste gehen von einem Satz zum nächsten; Esc schließt.',
  },
}
