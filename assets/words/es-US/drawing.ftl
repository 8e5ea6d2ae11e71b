### The drawing, the joint under it, photos.

drawing = Dibujo
drawing-working = calculando…

# The page to start from, in place of a drawing.
start-heading = ¿Por dónde quiere empezar?
start-callback = Un reclamo
    .hint = Las tablas están puestas y las juntas se abrieron. Ponga la medida del techo o de la pared y luego escriba las aberturas.
start-next-install = La próxima instalación
    .hint = Las tablas están por llegar. Revíselas antes de instalarlas.
start-open = Abrir un trabajo
    .hint = Uno que usted guardó
start-demo = Ver un ejemplo
    .hint = Un salón de té con techo de tablas con ranura en V. La gente, los precios y las lecturas son inventados.

drawing-empty = Aquí todavía no hay nada dibujado.
drawing-legend = { $date }: aberturas dibujadas { $times } veces más anchas; los puntos son las medidas
drawing-windows = ventanas
drawing-north = N
drawing-joint-measured = Junta { $joint }, { $gap } medida
drawing-joint-estimated = Junta { $joint }, cerca de { $gap }
drawing-joint-unknown = Junta { $joint }, sin lectura
drawing-joint-kind = { $kind ->
    [board_edge] Entre tablas, { $length } de largo
    [board_end] Puntas de tabla, { $length } de largo
    [divider] Junto a una moldura divisoria, { $length } de largo
   *[perimeter] Junto a la moldura, { $length } de largo
}
drawing-joint-range = { $low } a { $high } en los próximos años

photo-name = Foto { $number }
photo-name-note = Foto { $number }: { $note }
photo-note = Nota
photo-note-field = Nota de la foto
photo-unpin = Quitar del dibujo
    .hint = El archivo se queda en la carpeta del trabajo
photo-unsaved-job = Primero guarde el trabajo: las fotos se guardan junto a su archivo.
photo-unreadable = No se puede mostrar “{ $path }”. Póngala otra vez o elija otra foto.
photo-loading = cargando…
close = Cerrar

corner-of-outline = Esquina { $number } del contorno
corner-of-opening = Esquina { $number } de { $name }
corner-of-section = Esquina { $number } de la sección { $name }
corner-at = { $name }, { $right } a la derecha, { $up } arriba
divider-start = Inicio de { $name }
divider-end = Final de { $name }
divider-new-name = moldura divisoria { $letter }
opening-new-name = ventana { $number }
edge-type-length = Borde { $number }, { $length }: haga clic para escribir su largo
edge-length = Largo del borde { $number }
undo-move-corner = Mover esquina
undo-remove-corner = Quitar esquina
undo-add-corner = Agregar esquina
undo-edge-length = Largo del borde
undo-draw-divider = Dibujar moldura divisoria
undo-draw-opening = Dibujar ventana o puerta

joint-bar-shape = Arrastre una esquina. Haga clic en un largo para escribirlo. Doble clic en un borde agrega una esquina; Supr quita una.
joint-bar-divider = Arrastre de borde a borde. Divide las secciones que cruza.
joint-bar-opening = Arrastre de esquina a esquina.
joint-bar-photo = Haga clic donde se tomó la foto.
joint-bar-click = Haga clic en una junta y escriba su abertura. Shift y arrastrar elige varias.
joint-bar-none = Todavía no hay juntas.
joint-bar-joint = Junta { $joint }
joint-bar-joints = { $count } juntas
joint-bar-joints-measured = { $count } juntas, { $measured } ya medidas
joint-bar-gap = Abertura
joint-bar-gap-field = Abertura de la junta
joint-bar-gone = Esta junta ya no está en el dibujo.
undo-gap = Abertura
undo-failure = Cómo falló el sellador

section-view = Corte de la junta
    .hint = Un corte de la junta en el día que se muestra, a escala
section-title = corte de la junta
section-shape-bead = Dar forma al cordón
    .hint = Muestra el cordón de cerca. Arrastre los cuadros para cambiar qué tan llena va la V, hasta dónde entra el cordón y qué tan hundido se alisa.
section-whole = Toda la junta
bead-handle = { $name }: { $figure }
section-name = Corte de la junta: abertura { $gap }, { $state }
section-before-sealing = antes de sellar
section-first =
    { $state }. { $place ->
        [face] Se abriría primero en el círculo: a mitad de la cara.
        [edge] Se soltaría primero en el círculo: en el borde, a la vista.
        [side] Se soltaría primero en el círculo: del costado de la tabla.
        [inside] Se rompería primero en el círculo: por dentro.
       *[back] Se soltaría primero en el círculo: por detrás, donde no se ve.
    }
section-not-sealed = sin sellar
section-paint-cracked = { $state }. La pintura que lo cubre está agrietada.
section-gap-named = { $gap } · { $name }
