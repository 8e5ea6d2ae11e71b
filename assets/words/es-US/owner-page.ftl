### The homeowner's page for a phone, a desktop or paper. What it shares with the letter and the window's
### homeowner pages is said by their messages.

## In short

owner-page-short = En pocas palabras
owner-page-repair = La reparación
owner-page-when = Cuándo
owner-page-when-seal = { $when ->
    [on] { $from }
    [between] del { $from } al { $to }
   *[any_time] Cualquier época del año
}
owner-page-starts = Desde el { $date }
owner-page-days = { $days ->
    [one] 1 día de trabajo
   *[other] { $days } días de trabajo
}
owner-page-days-from = { $days ->
    [one] 1 día de trabajo, previsto desde el { $date }
   *[other] { $days } días de trabajo, previstos desde el { $date }
}
owner-page-of-total = de { $total }
owner-page-you-pay = { $owner } para usted, de { $total }
owner-page-reopening = Probabilidad de que se vuelvan a ver grietas o aberturas
owner-page-within = { $years ->
    [one] en 1 año
   *[other] en { $years } años
}
owner-page-within-range = { $years ->
    [one] en 1 año; podría ser de { $low } a { $high }
   *[other] en { $years } años; podría ser de { $low } a { $high }
}

## What happened

owner-page-no-blame = Aquí se explica qué le pasó a la madera, no quién tiene la culpa.

## The joint through the seasons

owner-page-either = Con o sin la reparación
owner-page-after = Con la reparación
owner-page-before = Si no se hace nada
owner-page-strip = Una docena de sus tablas, vistas desde el cuarto
owner-page-strip-note = Arriba: una docena de tablas vistas desde el cuarto; las aberturas están dibujadas 10 veces más anchas. Todas las juntas están dibujadas como la típica; las suyas varían.
owner-page-cut = Corte de una junta entre dos tablas
owner-page-cut-note = Corte de una junta, a escala, con el lado del cuarto hacia arriba.
owner-page-key-wood = madera
owner-page-key-paint = pintura
owner-page-key-bead = cordón nuevo
owner-page-key-gap = abertura
owner-page-slider = Fecha
owner-page-play = Ver movimiento
owner-page-pause = Pausa
owner-page-installed = Instaladas
owner-page-today = Hoy
owner-page-sealed = Selladas
owner-page-repaired = Reparadas
owner-page-widest = Más abierta
owner-page-still-before = { $month }, si no se hace nada
owner-page-still-after = { $month }, con la reparación

owner-page-closed = La junta está cerrada.
owner-page-open = La junta está abierta { $gap }.
owner-page-bead-holds = Las tablas están separadas { $gap }. El cordón nuevo se mueve con ellas y aguanta.
owner-page-bead-holds-here = Las tablas están separadas { $gap }. Este cordón aguanta; otros, no.
owner-page-just-sealed = Recién sellada, con las tablas a { $gap } de distancia.
owner-page-bead-torn = El cordón se rompió y se ve una grieta de { $open }.
owner-page-bead-torn-closed = El cordón se rompió. Por ahora la grieta está cerrada.
owner-page-bead-squeezed = El cordón se apretó demasiado y se sale de la junta.
owner-page-too-narrow = La junta es demasiado angosta para sellarla. Se pinta y se deja abierta; ahora mide { $gap }.
owner-page-line = Una línea limpia de { $gap } de ancho. La madera de atrás está pintada, así que no se ve madera cruda.
owner-page-line-closed = La línea está cerrada. Se abre otra vez en la temporada seca, con madera pintada atrás.
owner-page-covered = Un tapajuntas cubre la junta. Detrás, las tablas están separadas { $gap }.
owner-page-covered-closed = Un tapajuntas cubre la junta. Detrás, las tablas están juntas.
owner-page-glued = Aquí las tablas están pegadas entre sí y no se ve ninguna abertura.
owner-page-laid = Tablas puestas bien juntas y secadas al nivel de su cuarto: la junta está abierta { $gap }.
owner-page-laid-closed = Tablas puestas bien juntas y secadas al nivel de su cuarto: la junta está cerrada.
owner-page-within-open = { $years ->
    [one] en 1 año
   *[other] en { $years } años
}, pero eso está lejos de ser seguro: { $why ->
    [paint] nadie sabe cuánto se estira la pintura antes de mostrar grietas finas
   *[house] no se sabe todo de la casa
}
