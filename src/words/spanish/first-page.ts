import type { firstPage as english } from '../english/first-page'
import type { Texts } from '../texts'

export const firstPage: Texts<typeof english> = {
  firstPage: {
    heading: 'Mida un cilindro y vea lo que demuestran las lecturas',
    lead: 'Escriba lo que lee el instrumento. Borewall lo convierte en diámetros verdaderos a 20 °C, dice qué está dentro de sus límites, qué está fuera y qué es demasiado justo para decidir, y dibuja la pared.',
    start: 'Con qué empezar',
    measure: 'Medir un cilindro',
    measureHint: 'Empieza un trabajo vacío.',
    open: 'Abrir un archivo…',
    openHint: 'Un trabajo guardado desde Borewall, o una tabla de lecturas.',
    dropHint: 'O suéltelo en cualquier lugar de esta página.',
    kept: 'Lista de trabajos',
    keptHint: 'En este navegador hay algo guardado, pero no el último trabajo abierto.',
    manual:
      'El manual de taller del motor que está en el banco tiene la última palabra, y un rectificador cualificado debería ver lo que sea decisivo.',
  },
  examples: {
    title: 'Ver un ejemplo',
    lead: 'Todas las cifras son inventadas. Cada uno se abre como copia: cambie lo que quiera.',
    list: {
      A: {
        name: 'Un cilindro de dos tiempos usado junto a uno nuevo',
        shows:
          'Dentro de su límite de desgaste; la ovalización es demasiado justa para decidir. Las lumbreras impiden medir parte de la pared.',
      },
      B: {
        name: 'Un bloque de cuatro cilindros de fundición',
        shows:
          'Cuatro cilindros, un solo ajuste del instrumento. El tercero supera su límite de conicidad, el cuarto está demasiado justo para decidir.',
      },
      'B-as-typed': {
        name: 'El mismo bloque tal como se escribió',
        shows:
          'Con dos errores entre las lecturas. Borewall pregunta por los dos, y un toque corrige cada uno.',
      },
      C: {
        name: 'Una camisa de diésel en cuatro visitas',
        shows:
          'En la tercera visita se midió caliente y da 12 µm de más en todas partes; las dos temperaturas lo descuentan.',
      },
      D1: {
        name: 'Un compresor tumbado',
        shows:
          'Desgastado en forma de barril, y dentro de sus límites. Su conicidad depende de la regla; de su óxido habla la nota.',
      },
      D2: {
        name: 'Un tubo hidráulico',
        shows: 'Todas las lecturas están bien dentro, y aun así una raya en la pared acaba con él.',
      },
      E: {
        name: 'Un cilindro de dos tiempos gripado, con barrido todo alrededor',
        shows:
          'Un palpador radial leyó su pared en cada grado: cuatro arrastres con rayas estrechas dentro, y un puente que sobresale.',
      },
      'E-72': {
        name: 'El mismo cilindro, con barrido cada 5°',
        shows:
          'Ningún comparador de interiores entró en él: el barrido muestra la forma y ninguna medida. Con este paso se escapan casi todas las rayas.',
      },
    },
    unknown: (name) => `No hay ningún ejemplo llamado «${name}». Los que hay están en «Ejemplos».`,
    notLoaded:
      'No se pudo cargar el ejemplo. ¿Sigue funcionando Borewall en este equipo? Entonces recargue la página e inténtelo otra vez.',
  },
  note: {
    title: 'Nota',
    menu: 'Nota…',
    about: 'Sobre este ejemplo',
    lead: 'Se guarda con el trabajo y se imprime con sus resultados: un lugar para óxido, rayas y lo que ninguna cifra muestra.',
  },
}
