import type { keyList as english } from '../english/key-list'
import type { Texts } from '../texts'

export const keyList: Texts<typeof english> = {
  keyList: {
    menu: 'Teclas',
    title: 'Teclas',
    groups: [
      {
        name: 'En cualquier lugar',
        keys: [
          ['Ctrl Z', 'Deshacer'],
          ['Ctrl Y, o Mayús Ctrl Z', 'Rehacer'],
          ['?', 'Esta lista'],
          ['un número, después Intro', 'La siguiente lectura, también de un instrumento que escribe'],
        ],
      },
      {
        name: 'El campo de la siguiente lectura',
        keys: [
          ['Intro', 'Tomarla y seguir'],
          ['Esc', 'Dejarlo'],
        ],
      },
      {
        name: 'Las lecturas',
        keys: [
          ['flechas, Inicio, Fin', 'De celda en celda; con Mayús, elegir varias'],
          ['Ctrl Inicio, Ctrl Fin', 'Primera y última celda'],
          ['Intro, F2', 'Corregir lo que hay'],
          ['Supr', 'Borrarlo'],
          ['Tab, después Intro', 'La pregunta sobre ella, donde hay una marcada'],
          ['Ctrl C, Ctrl X, Ctrl V', 'A una hoja de cálculo y desde ella'],
        ],
      },
      {
        name: 'La imagen',
        keys: [
          ['flechas', 'Girar e inclinar'],
          ['Mayús y flechas', 'Desplazar'],
          ['+ y −', 'Más cerca y más lejos'],
          ['Inicio', 'Volver al frente'],
          ['Esc', 'Volver a la pared, mientras se dibujan otras'],
        ],
      },
      {
        name: 'Mostrar',
        keys: [
          ['flechas, RePág, AvPág, barra espaciadora', 'De una frase a la siguiente, y atrás'],
          ['Inicio, Fin', 'Primera y última'],
          ['Esc', 'Volver a lo que se dice; después, a Medir'],
        ],
      },
      {
        name: 'El mapa plano y los gráficos',
        keys: [['flechas', 'De lectura en lectura']],
      },
    ],
  },
}
