import type { doubt as english } from '../english/doubt'
import type { Texts } from '../texts'

export const doubt: Texts<typeof english> = {
  doubt: {
    show: 'Unsicherheit zeigen',
    help: 'Zeichnet nacheinander andere Wände, die zu denselben Ablesungen passen. Esc beendet es.',
    hide: 'Zurück zur Wand',
    next: 'Eine andere Wand',
    title: 'Andere Wände, die zu denselben Ablesungen passen',
    lead: 'Zufällig gezogen, eine nach der anderen: Gemessene Stellen bewegen sich nur innerhalb ihrer Unsicherheit, ungemessene weiter.',
    eyeOnly: 'Nur fürs Auge: Keine Zahl kommt daraus.',
    model: (spread, depth, around) =>
      `Um die Wand zwischen den Ablesungen, Streuung ${spread}; zwei Stellen hängen zusammen nach ρ(Tiefenabstand / ${depth}) · ρ(Winkelabstand / ${around}), ρ(r) = (1 + √3·r)·e^(−√3·r).`,
    none: {
      'too-few-readings': 'Andere Wände lassen sich ab drei Ablesungen zeichnen.',
      'two-readings-at-one-place':
        'Zwei Ablesungen liegen an einer Stelle, angegeben vom einen und vom anderen Ende ihrer Achse. Andere Wände werden gezeichnet, sobald eine davon gelöscht ist.',
      'wall-meets-axis':
        'Bei dieser Überhöhung würden andere Wände durch die Mittelachse gezeichnet. Wählen Sie neben dem Bild eine kleinere.',
    },
  },
}
