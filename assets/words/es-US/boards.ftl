### Surfaces with their boards, sections, outlines and trim breaks, in the Measure room.

boards-begin = Empiece aquí: el tamaño del techo o de la pared, y cómo van sus tablas.
boards-add-another = Agregar otra superficie
boards-summary = { $boards ->
    [one] 1 tabla
   *[other] { $boards } tablas
}, { $run } de juntas, { $area }
boards-pattern-of = Patrón
boards-relay-as = Acomodar como…
boards-relay = Acomodar otra vez las tablas
boards-relaid = { $count ->
    [one] Ahora las tablas corren en otra dirección. 1 lectura de abertura pasó a la junta del mismo nombre: revísela. Con Deshacer vuelven las tablas de antes.
   *[other] Ahora las tablas corren en otra dirección. { $count } lecturas de aberturas pasaron a las juntas del mismo nombre: revíselas. Con Deshacer vuelven las tablas de antes.
}
boards-remove-surface = Quitar superficie
boards-removed = { $count ->
    [one] La superficie se quitó. Su lectura de abertura se queda en la lista y no cuenta. Con Deshacer vuelve la superficie.
   *[other] La superficie se quitó. Sus { $count } lecturas de aberturas se quedan en la lista y no cuentan. Con Deshacer vuelve la superficie.
}
boards-title = Tablas
boards-size = Medida
    .hint = La medida por su nombre. Pone el ancho de cara, el ancho total y el grueso; corrija los que en sus tablas sean distintos.
boards-size-other = otra
boards-of-all = Tablas de todas las secciones
boards-different-here = Otras tablas aquí
boards-sections = Secciones
boards-outline = Contorno, molduras, ventanas y puertas
boards-dividers = Molduras divisorias y cumbrera

## A surface to be added

new-surface-kind = Tipo de la superficie nueva
new-surface-width = Ancho
new-surface-depth = Fondo
new-surface-wall-length = Largo
new-surface-wall-height = Alto
new-surface-right = Alto a la derecha
    .hint = Solo para una pared con el borde de arriba inclinado. Si no, déjelo vacío.
new-surface-width-entry = Ancho de la superficie nueva
new-surface-height-entry = Alto de la superficie nueva
new-surface-right-entry = Alto de la superficie nueva a la derecha
new-surface-pattern = Patrón de la superficie nueva
new-surface-outlines = Agrega una superficie por cada contorno cerrado de un archivo DXF, SVG o CSV
new-surface-add = Agregar superficie

## What surfaces and boards are

boards-surface-kind =
    { $kind ->
        [ceiling] Techo
        [slope] Techo inclinado
       *[wall] Pared
    }
boards-pattern =
    { $pattern ->
        [straight] Derecho
        [diagonal] Diagonal
        [quarters] Cuartos en las diagonales
        [quarters_at_dividers] Cuartos con molduras cruzadas
        [chevron] Espiga
       *[upright] Vertical (lambrín)
    }
boards-profile =
    { $profile ->
        [v_groove] ranura en V
        [bead] bocel
       *[square] canto recto
    }
boards-nailing =
    { $place ->
        [tongue] lengüeta (clavo oculto)
        [middle] a media cara
        [groove] ranura
       *[both_edges] los dos cantos
    }
boards-backing =
    { $backing ->
        [cavity] aire (listones, vigas, ático)
       *[tight] pegada a tablarroca o yeso
    }
boards-divider-kind =
    { $kind ->
        [ridge] cumbrera
       *[dividing] tabla plana
    }
boards-species-movement = { $species } cambia { $share } de ancho por cada 1% de cambio de humedad.

## Sections

boards-section = Sección { $name }
boards-add-section = Agregar sección
boards-remove-section = Quitar sección

## Outlines

boards-edge = borde { $number }
boards-add-opening = Agregar ventana o puerta
boards-remove-opening = Quitar { $name }
undo-remove-opening = Quitar ventana o puerta

corners-column-corner = esquina
corners-column-right = derecha
corners-column-up = arriba
corners-right =
    { $ring ->
        [outline] Contorno, esquina { $number }, derecha
        [section] Sección { $name }, esquina { $number }, derecha
       *[opening] { $name }, esquina { $number }, derecha
    }
corners-up =
    { $ring ->
        [outline] Contorno, esquina { $number }, arriba
        [section] Sección { $name }, esquina { $number }, arriba
       *[opening] { $name }, esquina { $number }, arriba
    }
corners-add =
    { $ring ->
        [outline] Agregar esquina al contorno
        [section] Agregar esquina a la sección { $name }
       *[opening] Agregar esquina a { $name }
    }
corners-remove =
    { $ring ->
        [outline] Quitar la esquina { $number } del contorno
        [section] Quitar la esquina { $number } de la sección { $name }
       *[opening] Quitar la esquina { $number } de { $name }
    }

## Trim breaks

boards-add-divider = Agregar moldura divisoria
boards-remove-divider = Quitar { $name }
undo-remove-divider = Quitar moldura divisoria
boards-divider-end =
    { $end ->
        [from] Desde
       *[to] Hasta
    }
boards-divider-end-right =
    { $end ->
        [from] Desde, derecha
       *[to] Hasta, derecha
    }
boards-divider-end-up =
    { $end ->
        [from] Desde, arriba
       *[to] Hasta, arriba
    }
