import type { doubt as english } from '../english/doubt'
import type { Texts } from '../texts'

export const doubt: Texts<typeof english> = {
  doubt: {
    show: 'Mostrar la incertidumbre',
    help: 'Dibuja otras paredes que encajan con las mismas lecturas, una tras otra. Esc lo termina.',
    hide: 'Volver a la pared',
    next: 'Otra pared',
    title: 'Otras paredes que encajan con las mismas lecturas',
    lead: 'Dibujadas al azar, una tras otra: los lugares medidos no se mueven más que su incertidumbre, los no medidos se mueven más.',
    eyeOnly: 'Solo para la vista: de aquí no sale ninguna cifra.',
    model: (spread, depth, around) =>
      `En torno a la pared entre las lecturas, dispersión ${spread}; dos lugares van juntos según ρ(distancia en profundidad / ${depth}) · ρ(distancia en giro / ${around}), ρ(r) = (1 + √3·r)·e^(−√3·r).`,
    none: {
      'too-few-readings': 'Se pueden dibujar otras paredes a partir de tres lecturas.',
      'two-readings-at-one-place':
        'Dos lecturas están en el mismo lugar, dado por un extremo y por el otro de su eje. Se dibujarán otras paredes cuando se borre una de ellas.',
      'wall-meets-axis':
        'Con esta exageración se dibujarían otras paredes a través del eje. Elija una menor junto a la imagen.',
    },
  },
}
